//! A lower voltage from a higher one: a dropping resistor, or one with a gas regulator.

mod cautions;
mod work;

use crate::{
    quantity::Unit,
    tube::REGULATOR_NAMES,
    value::{Answer, Condition, Field},
};

use super::{Calculator, fields};

/// A lower voltage from a higher one.
pub(super) static RAIL: Calculator =
    Calculator { id: "rail", group: "power", inputs: INPUTS, answers: ANSWERS, work: work::work };

const DROPPED: &[Condition] = &[Condition::given("volts_in")];
const REGULATED: &[Condition] = &[Condition::given("regulator")];

/// What `rail` takes.
static INPUTS: &[Field] = &[
    Field::volts("volts_in", 1e-3).one_of("rail").group("rail").start(250.0).usual(60.0, 500.0),
    Field::volts("volts_out", 1e-3).group("rail").start(150.0).usual(60.0, 250.0).when(DROPPED).below("volts_in"),
    Field::choice("regulator", REGULATOR_NAMES).one_of("rail").group("rail").optional(),
    Field::volts("source_volts_least", 1e-3).group("rail").start(225.0).usual(150.0, 400.0).when(REGULATED),
    Field::volts("source_volts_most", 1e-3).group("rail").start(275.0).usual(150.0, 500.0).when(REGULATED),
    Field::quantity("amps", Unit::Ampere, 1e-9, 100.0).group("load").start(5e-3).usual(0.1e-3, 50e-3),
    Field::quantity("amps_least", Unit::Ampere, 1e-9, 100.0).or_none().optional().group("load").usual(0.0, 10e-3),
    Field::quantity("amps_most", Unit::Ampere, 1e-9, 100.0).optional().group("load").usual(1e-3, 50e-3),
    Field::farads("farads").or_none().optional().group("load").usual(0.1e-6, 50e-6),
    fields::METER,
];

/// What `rail` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("dropper_ohms", Unit::Ohm),
    Answer::quantity("dropper_watts", Unit::Watt),
    Answer::quantity("dropper_preferred_ohms", Unit::Ohm).null_means("no_dropper"),
    Answer::quantity("dropper_least_ohms", Unit::Ohm).optional(),
    Answer::quantity("rail_volts", Unit::Volt),
    Answer::quantity("open_volts", Unit::Volt),
    Answer::quantity("volts_least", Unit::Volt).optional(),
    Answer::quantity("volts_most", Unit::Volt).optional(),
    Answer::other("strikes", "flag").optional(),
    Answer::quantity("strike_volts", Unit::Volt).optional(),
    Answer::quantity("regulator_amps_least", Unit::Ampere).optional(),
    Answer::quantity("regulator_amps_most", Unit::Ampere).optional(),
    Answer::quantity("ripple_corner_hertz", Unit::Hertz).optional(),
];
