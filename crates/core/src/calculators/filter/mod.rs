//! Ladders of resistors, capacitors and coils.

mod netlist;
mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Field, Start},
};

use super::Calculator;

/// Ladders of resistors, capacitors and coils.
pub(super) static FILTER: Calculator =
    Calculator { id: "filter", group: "networks", inputs: INPUTS, answers: ANSWERS, work: work::work };

static BRANCH_FIELDS: [Field; 5] = [
    Field::choice("place", &["series", "shunt"]),
    Field::ohms("ohms").optional(),
    Field::farads("farads").optional(),
    Field::henries("henries").optional(),
    Field::choice("together", &["series", "parallel"]).start_with(Start::Text("series")),
];
static BRANCH: Field = Field::record("branch", &BRANCH_FIELDS);

/// What `filter` takes.
static INPUTS: &[Field] = &[
    Field::ohms("source_ohms").or_none().group("ends").start(50e3).usual(1.0, 1e6),
    Field::ohms("load_ohms").group("ends").start(1e6).usual(1.0, 10e6),
    Field::list("branches", &BRANCH, 1, 12).group("branches").start_with(Start::List(&[
        Start::Record(&[("place", Start::Text("series")), ("farads", Start::Number(1e-9))]),
        Start::Record(&[("place", Start::Text("shunt")), ("ohms", Start::Number(470e3))]),
    ])),
    Field::hertz("hertz").group("question").start(1000.0).usual(20.0, 20e3),
    Field::hertz("want_corner_hertz").optional().together("solve").group("question").usual(20.0, 20e3),
    Field::text("solve", 40).optional().together("solve").group("question"),
];

/// What `filter` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("gain_db", Unit::Decibel).null_means("nothing_passes"),
    Answer::quantity("phase_degrees", Unit::Degree).null_means("nothing_passes"),
    Answer::quantity("best_gain_db", Unit::Decibel).null_means("nothing_passes"),
    Answer::quantity("best_hertz", Unit::Hertz).null_means("no_bound"),
    Answer::quantity("corners_hertz", Unit::Hertz).each("free"),
    Answer::quantity("input_ohms", Unit::Ohm),
    Answer::quantity("solved", Unit::One).optional(),
    Answer::quantity("time_seconds", Unit::Second).optional(),
];
