//! Low-pass ladders between a transmitter and its antenna.

mod ladder;
mod say;
mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Condition, Field, Start},
};

use super::Calculator;

/// Low-pass ladders between a transmitter and its antenna.
pub(super) static LOWPASS: Calculator =
    Calculator { id: "lowpass", group: "networks", inputs: INPUTS, answers: ANSWERS, work: work::work };

const CHEBYSHEV: &[Condition] = &[Condition::is("family", "chebyshev")];

/// What `lowpass` takes.
static INPUTS: &[Field] = &[
    Field::choice("family", &["butterworth", "chebyshev"]).group("filter").start_with(Start::Text("chebyshev")),
    Field::quantity("ripple_db", Unit::Decibel, 1e-4, 6.0).group("filter").start(0.01).usual(0.01, 0.5).when(CHEBYSHEV),
    Field::quantity("order", Unit::One, 2.0, 9.0).whole().group("filter").start(7.0).usual(3.0, 9.0),
    Field::hertz("cutoff_hertz").group("filter").start(4.2e6).usual(1.8e6, 60e6),
    Field::ohms("ohms").group("filter").start(50.0).usual(50.0, 75.0),
    Field::choice("first", &["capacitor", "coil"]).group("filter").start_with(Start::Text("capacitor")),
    Field::choice("series", &["exact", "E12", "E24"]).group("parts").start_with(Start::Text("exact")),
    Field::quantity("coil_q", Unit::One, 1.0, 1e12).group("parts").start(200.0).usual(50.0, 400.0),
    Field::hertz("carrier_hertz").group("carrier").start(3.885e6).usual(1.8e6, 54e6),
    Field::quantity("carrier_watts", Unit::Watt, 1e-6, 1e6).group("carrier").start(100.0).usual(1.0, 400.0),
];

/// What `lowpass` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("capacitors", Unit::Farad).each("free"),
    Answer::quantity("coils", Unit::Henry).each("free"),
    Answer::quantity("loss_db", Unit::Decibel).null_means("nothing_passes"),
    Answer::quantity("return_loss_db", Unit::Decibel),
    Answer::quantity("harmonic_db", Unit::Decibel).each("harmonics").null_means("nothing_passes"),
    Answer::quantity("capacitor_peak_volts", Unit::Volt).each("free").null_means("nothing_passes"),
    Answer::quantity("coil_amps", Unit::Ampere).each("free").null_means("nothing_passes"),
    Answer::quantity("loss_watts", Unit::Watt).null_means("nothing_passes"),
    Answer::quantity("pass_deviation_db", Unit::Decibel).optional(),
    Answer::quantity("rounded_pass_deviation_db", Unit::Decibel).optional(),
    Answer::quantity("harmonic_deviation_db", Unit::Decibel).optional(),
    Answer::quantity("rounded_harmonic_deviation_db", Unit::Decibel).optional(),
];
