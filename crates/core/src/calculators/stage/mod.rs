//! A resistance-coupled triode stage.

mod netlist;
mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Field},
};

use super::{Calculator, fields};

/// A resistance-coupled triode stage.
pub(super) static STAGE: Calculator =
    Calculator { id: "stage", group: "audio", inputs: INPUTS, answers: ANSWERS, work: work::work };

/// What `stage` takes.
static INPUTS: &[Field] = &[
    fields::TUBE,
    fields::SUPPLY_VOLTS,
    fields::PLATE_OHMS,
    fields::CATHODE_OHMS,
    fields::CATHODE_FARADS,
    fields::GRID_OHMS,
    fields::GRID_VOLTS,
    Field::ohms("source_ohms").or_none().group("source").start(10e3).usual(100.0, 1e6),
    Field::farads("coupling_farads").group("load").start(20e-9).usual(100e-12, 1e-6),
    Field::ohms("load_ohms").group("load").start(470e3).usual(10e3, 2e6),
    Field::farads("load_farads").or_none().group("load").start(100e-12).usual(10e-12, 1e-9),
    fields::DECOUPLING_OHMS,
    fields::DECOUPLING_FARADS,
    Field::volts("output_volts", 1e-6).optional().group("load").usual(0.1, 50.0),
    fields::RIPPLE_VOLTS,
    fields::RIPPLE_HERTZ,
    fields::METER,
];

/// What `stage` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("gain", Unit::One).null_means("nothing_passes"),
    Answer::quantity("gain_db", Unit::Decibel).null_means("nothing_passes"),
    Answer::quantity("plate_amps", Unit::Ampere),
    Answer::quantity("plate_volts", Unit::Volt),
    Answer::quantity("cathode_volts", Unit::Volt),
    Answer::quantity("bias_volts", Unit::Volt),
    Answer::quantity("plate_watts", Unit::Watt),
    Answer::quantity("gm", Unit::Siemens),
    Answer::quantity("plate_resistance", Unit::Ohm).null_means("no_current"),
    Answer::quantity("mu", Unit::One).null_means("no_current"),
    Answer::quantity("output_ohms", Unit::Ohm),
    Answer::quantity("input_farads", Unit::Farad).null_means("nothing_passes"),
    Answer::quantity("low_corner_hertz", Unit::Hertz).null_means("outside_range"),
    Answer::quantity("high_corner_hertz", Unit::Hertz).null_means("outside_range"),
    Answer::quantity("max_output_volts", Unit::Volt).null_means("no_swing"),
    Answer::quantity("distortion_percent", Unit::Percent).null_means("not_reached"),
    Answer::quantity("harmonics_db", Unit::Decibel).each("harmonics").null_means("not_reached"),
    Answer::quantity("hum_volts", Unit::Volt),
    Answer::quantity("hum_db", Unit::Decibel).optional().null_means("no_output"),
    Answer::quantity("hiss_volts", Unit::Volt),
    Answer::quantity("hiss_db", Unit::Decibel).null_means("no_output"),
    Answer::quantity("hum_cure_farads", Unit::Farad).optional().null_means("no_cure"),
    Answer::quantity("hum_cure_ohms", Unit::Ohm).optional(),
    Answer::quantity("hum_cure_db", Unit::Decibel).optional(),
];
