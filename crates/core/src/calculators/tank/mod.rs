//! From a tube's load to the antenna.

mod netlist;
mod say;
mod standard;
mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Condition, Field, Start},
};

use super::Calculator;

/// From a tube's load to the antenna.
pub(super) static TANK: Calculator =
    Calculator { id: "tank", group: "networks", inputs: INPUTS, answers: ANSWERS, work: work::work };

const PI_L: &[Condition] = &[Condition::is("network", "pi-l")];
const LINK: &[Condition] = &[Condition::is("network", "parallel-link")];
const NOT_LINK: &[Condition] = &[Condition::is_not("network", "parallel-link")];

/// What `tank` takes.
static INPUTS: &[Field] = &[
    Field::choice("network", &["pi", "pi-l", "parallel-link"]).group("network").start_with(Start::Text("pi")),
    Field::hertz("hertz").group("network").start(3.885e6).usual(1.8e6, 30e6),
    Field::ohms("rf_load_ohms").group("tube").start(2700.0).usual(1000.0, 6000.0),
    Field::farads("tube_farads").or_none().group("tube").start(10e-12).usual(3e-12, 20e-12),
    Field::volts("plate_volts", 1.0).group("tube").start(600.0).usual(250.0, 1500.0),
    Field::quantity("carrier_watts", Unit::Watt, 1e-6, 1e6).group("tube").start(50.0).usual(5.0, 250.0),
    Field::flag("modulated").group("tube").start_with(Start::Flag(true)),
    Field::quantity("q", Unit::One, 0.1, 1e4).group("network").start(12.0).usual(10.0, 15.0),
    Field::choice("q_counts", &["input-side", "both-sides"])
        .group("network")
        .start_with(Start::Text("both-sides"))
        .when(NOT_LINK),
    Field::ohms("middle_ohms").group("network").start(300.0).usual(200.0, 300.0).when(PI_L),
    Field::quantity("link_q", Unit::One, 1e-2, 1e3).group("network").start(2.0).usual(1.5, 4.0).when(LINK),
    Field::quantity("coil_q", Unit::One, 1.0, 1e12).group("network").start(200.0).usual(100.0, 400.0),
    Field::ohms("antenna_ohms").group("antenna").start(50.0).usual(30.0, 100.0),
    Field::quantity("antenna_reactance", Unit::Ohm, -1e6, 1e6).group("antenna").start(0.0).usual(-30.0, 30.0),
];

/// What `tank` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("input_farads", Unit::Farad),
    Answer::quantity("henries", Unit::Henry),
    Answer::quantity("output_farads", Unit::Farad),
    Answer::quantity("second_henries", Unit::Henry).optional(),
    Answer::quantity("link_henries", Unit::Henry).optional(),
    Answer::quantity("link_coupling", Unit::One).optional(),
    Answer::quantity("loss_percent", Unit::Percent),
    Answer::quantity("loss_watts", Unit::Watt),
    Answer::quantity("harmonic_db", Unit::Decibel).each("harmonics").null_means("nothing_passes"),
    Answer::quantity("coil_amps", Unit::Ampere),
    Answer::quantity("input_peak_volts", Unit::Volt),
    Answer::quantity("output_peak_volts", Unit::Volt),
    Answer::quantity("antenna_peak_volts", Unit::Volt),
    Answer::quantity("gap_metres", Unit::Metre),
    Answer::quantity("output_gap_metres", Unit::Metre),
    Answer::quantity("standard_input_farads", Unit::Farad).optional(),
    Answer::quantity("standard_output_farads", Unit::Farad).optional(),
    Answer::quantity("standard_henries", Unit::Henry).optional(),
    Answer::quantity("standard_load_ohms", Unit::Ohm).optional(),
    Answer::quantity("output_pad_farads", Unit::Farad).optional(),
    Answer::quantity("output_trim_farads", Unit::Farad).optional(),
    Answer::quantity("blocking_farads", Unit::Farad),
];
