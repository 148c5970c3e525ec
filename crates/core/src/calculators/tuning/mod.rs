//! What a coil and a variable capacitor reach.

mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Field},
};

use super::Calculator;

/// What a coil and a variable capacitor reach.
pub(super) static TUNING: Calculator =
    Calculator { id: "tuning", group: "networks", inputs: INPUTS, answers: ANSWERS, work: work::work };

/// What `tuning` takes.
static INPUTS: &[Field] = &[
    Field::henries("henries").group("tank").start(9e-6).usual(0.5e-6, 60e-6),
    Field::quantity("turns", Unit::One, 0.1, 10e3).optional().group("tank").usual(5.0, 50.0),
    Field::farads("capacitor_least").below("capacitor_most").group("tank").start(15e-12).usual(5e-12, 30e-12),
    Field::farads("capacitor_most").group("tank").start(365e-12).usual(50e-12, 400e-12),
    Field::farads("stray_farads").or_none().group("tank").start(20e-12).usual(5e-12, 40e-12),
    Field::hertz("target_hertz").group("question").start(3.885e6).usual(1.8e6, 30e6),
    Field::hertz("crystal_hertz").optional().group("question").usual(1.8e6, 15e6),
];

/// What `tuning` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("hertz_low", Unit::Hertz),
    Answer::quantity("hertz_high", Unit::Hertz),
    Answer::quantity("needed_farads", Unit::Farad).null_means("strays_alone"),
    Answer::other("in_range", "flag"),
    Answer::quantity("pad_farads", Unit::Farad).optional(),
    Answer::quantity("pad_most_farads", Unit::Farad).optional(),
    Answer::quantity("series_farads", Unit::Farad).optional(),
    Answer::quantity("series_least_farads", Unit::Farad).optional(),
    Answer::quantity("henries_change", Unit::Henry).optional(),
    Answer::quantity("turns_percent", Unit::Percent).optional(),
    Answer::quantity("turns_change", Unit::One).optional(),
    Answer::quantity("harmonics_in_range", Unit::One).each("free"),
    Answer::quantity("harmonic_hertz", Unit::Hertz).each("free"),
];
