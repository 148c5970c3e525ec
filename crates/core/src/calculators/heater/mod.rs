//! Heaters on a winding, side by side or in a string.

mod cautions;
mod string;
mod work;

use crate::{
    quantity::Unit,
    tube::NAMES,
    value::{Answer, Field, Start},
};

use super::Calculator;

/// Heaters on a winding.
pub(super) static HEATER: Calculator =
    Calculator { id: "heater", group: "power", inputs: INPUTS, answers: ANSWERS, work: work::work };

static HEATER_FIELDS: [Field; 5] = [
    Field::choice("tube", NAMES).one_of("heater").optional(),
    Field::volts("volts", 0.1).one_of("heater").together("own").optional().usual(1.4, 50.0),
    Field::quantity("amps", Unit::Ampere, 1e-3, 100.0).together("own").optional().usual(0.05, 3.0),
    Field::flag("tapped").start_with(Start::Flag(false)),
    Field::quantity("cathode_volts", Unit::Volt, -10e3, 10e3).start(0.0).usual(-100.0, 200.0),
];
static ONE: Field = Field::record("heater", &HEATER_FIELDS);

/// What `heater` takes.
static INPUTS: &[Field] = &[
    Field::list("heaters", &ONE, 1, 12).group("heaters").start_with(Start::List(&[
        Start::Record(&[("tube", Start::Text("6SL7GT"))]),
        Start::Record(&[("tube", Start::Text("12AX7"))]),
        Start::Record(&[("tube", Start::Text("12AU7")), ("cathode_volts", Start::Number(90.0))]),
    ])),
    Field::choice("arrangement", &["parallel", "series"]).group("heaters").start_with(Start::Text("parallel")),
    Field::volts("winding_volts", 0.1).group("winding").start(6.3).usual(2.5, 120.0),
    Field::quantity("winding_amps", Unit::Ampere, 1e-3, 1e3).group("winding").start(2.0).usual(0.3, 10.0),
    Field::ohms("winding_ohms").or_none().group("winding").start(0.0).usual(0.02, 2.0),
    Field::ohms("lead_ohms").or_none().group("winding").start(0.0).usual(0.01, 0.5),
    Field::ohms("series_ohms").or_none().group("winding").start(0.0).usual(0.1, 500.0),
    Field::quantity("elevate_volts", Unit::Volt, -10e3, 10e3).group("winding").start(0.0).usual(0.0, 100.0),
];

/// What `heater` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("amps", Unit::Ampere),
    Answer::quantity("volts_at_heater", Unit::Volt),
    Answer::quantity("series_resistor_ohms", Unit::Ohm),
    Answer::quantity("series_resistor_watts", Unit::Watt),
    Answer::quantity("heater_volts", Unit::Volt).each("heaters"),
    Answer::quantity("heater_rated_volts", Unit::Volt).each("heaters"),
    Answer::other("heater_way", "text").each("heaters"),
    Answer::quantity("heater_cathode_volts", Unit::Volt).each("heaters"),
    Answer::quantity("heater_cathode_peak_volts", Unit::Volt).each("heaters"),
];
