//! Field tables that more than one calculator takes.

use crate::{
    quantity::Unit,
    tube,
    value::{Condition, Field, Start},
};

/// A triode of the person's own, in the law's parameters.
pub(super) static OWN_TUBE: &[Field] = &[
    Field::text("name", 24).optional(),
    Field::quantity("perveance", Unit::Perveance, 1e-6, 1.0).usual(0.1e-3, 20e-3),
    Field::quantity("mu", Unit::One, 1.5, 500.0).usual(2.0, 120.0),
    Field::quantity("mu_spread", Unit::One, 1e-6, 0.6).start(0.25).usual(0.1, 0.5),
    Field::quantity("contact_volts", Unit::Volt, -2.0, 2.0).start(0.31).usual(0.2, 0.4),
    Field::farads("grid_plate_farads").or_none().start(2e-12).usual(0.5e-12, 10e-12),
    Field::farads("grid_cathode_farads").or_none().start(2e-12).usual(0.5e-12, 10e-12),
    Field::farads("plate_cathode_farads").or_none().start(1e-12).usual(0.2e-12, 10e-12),
];

static TUBE_OPTIONS: [Field; 2] = [Field::choice("type", tube::NAMES), Field::record("own", OWN_TUBE)];

/// A tube: a type from the table or the person's own.
pub(super) const TUBE: Field = Field::either("tube", &TUBE_OPTIONS).group("stage").start_with(Start::Text("6SL7GT"));

static METER_FIELDS: [Field; 3] = [
    Field::ohms("ohms").one_of("meter").start(10e6).usual(1e6, 100e6),
    Field::quantity("ohms_per_volt", Unit::OhmPerVolt, 1.0, 1e9)
        .one_of("meter")
        .together("sensitivity")
        .optional()
        .usual(1e3, 100e3),
    Field::volts("range", 1e-3).together("sensitivity").optional().usual(2.5, 1000.0),
];

/// The meter that the test points are read with.
pub(super) const METER: Field = Field::record("meter", &METER_FIELDS).group("meter");

const DECOUPLED: &[Condition] = &[Condition::given("decoupling_ohms")];

/// The parts around a triode with its cathode at (or near) ground.
pub(super) const SUPPLY_VOLTS: Field = Field::volts("supply_volts", 1.0).group("stage").start(250.0).usual(60.0, 400.0);
pub(super) const PLATE_OHMS: Field = Field::ohms("plate_ohms").group("stage").start(220e3).usual(10e3, 470e3);
pub(super) const CATHODE_OHMS: Field =
    Field::ohms("cathode_ohms").or_none().group("stage").start(2200.0).usual(100.0, 10e3);
pub(super) const CATHODE_FARADS: Field =
    Field::farads("cathode_farads").or_none().group("stage").start(25e-6).usual(0.1e-6, 100e-6);
pub(super) const GRID_OHMS: Field = Field::ohms("grid_ohms").group("stage").start(1e6).usual(47e3, 10e6);
pub(super) const GRID_VOLTS: Field =
    Field::quantity("grid_volts", Unit::Volt, -1e3, 1e3).group("stage").start(0.0).usual(-10.0, 10.0);
pub(super) const DECOUPLING_OHMS: Field =
    Field::ohms("decoupling_ohms").or_none().group("stage").start(0.0).usual(1e3, 100e3);
pub(super) const DECOUPLING_FARADS: Field =
    Field::farads("decoupling_farads").or_none().group("stage").start(0.0).usual(1e-6, 50e-6).when(DECOUPLED);

const RIPPLED: &[Condition] = &[Condition::given("ripple_volts")];

/// What is left on the supply of the mains, rms.
pub(super) const RIPPLE_VOLTS: Field =
    Field::volts("ripple_volts", 1e-6).or_none().group("hum").start(0.0).usual(1e-3, 5.0);
pub(super) const RIPPLE_HERTZ: Field =
    Field::hertz("ripple_hertz").group("hum").start(120.0).usual(50.0, 120.0).when(RIPPLED);
