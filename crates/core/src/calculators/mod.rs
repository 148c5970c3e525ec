//! The calculators: each one a field table, a circuit or a formula, and an outcome.

mod bench;
mod coil;
mod fields;
mod filter;
mod heater;
mod lowpass;
mod marking;
mod outcome;
mod picture;
mod rail;
mod rf;
mod solve;
mod stage;
mod supply;
mod swept;
mod tank;
mod transformer;
mod triode;
mod tube;
mod tuning;
mod voice;

use outcome::finite;
pub use outcome::{Caution, Outcome, Severity, Want};
pub use picture::{Curve, Line, PartRow, TestPoint, WiringStep};
pub use supply::work_at as supply_at;
pub use voice::{Rendered, render};

use alloc::{vec, vec::Vec};

use crate::circuit::Fault;
use crate::value::{Answer, Field, Inputs, Problem, Value, check, code, describe_answers, describe_fields};

/// One calculator, whole: what it takes, what it answers, and how.
pub struct Calculator {
    /// The contract's name.
    pub id: &'static str,
    /// The shelf it stands on.
    pub group: &'static str,
    /// What it takes.
    pub inputs: &'static [Field],
    /// What it answers.
    pub answers: &'static [Answer],
    /// The work itself, on checked inputs.
    pub work: fn(&Inputs, Want) -> Result<Outcome, Vec<Problem>>,
}

/// Every calculator, in the order of the shelf.
pub static CALCULATORS: &[&Calculator] = &[
    #[cfg(feature = "parts")]
    &marking::MARKING,
    #[cfg(feature = "networks")]
    &filter::FILTER,
    #[cfg(feature = "audio")]
    &stage::STAGE,
    #[cfg(feature = "audio")]
    &voice::VOICE,
    #[cfg(feature = "power")]
    &supply::SUPPLY,
    #[cfg(feature = "parts")]
    &tube::TUBE,
    #[cfg(feature = "networks")]
    &coil::COIL,
    #[cfg(feature = "networks")]
    &tuning::TUNING,
    #[cfg(feature = "networks")]
    &tank::TANK,
    #[cfg(feature = "networks")]
    &lowpass::LOWPASS,
    #[cfg(feature = "power")]
    &transformer::TRANSFORMER,
    #[cfg(feature = "power")]
    &rail::RAIL,
    #[cfg(feature = "power")]
    &heater::HEATER,
];

/// The whole catalogue, without the words: `[{id, group, inputs[], answers[]}]`.
#[must_use]
pub fn catalogue() -> Value {
    let rows = CALCULATORS.iter().map(|calculator| {
        Value::record([
            ("id", calculator.id.into()),
            ("group", calculator.group.into()),
            ("inputs", describe_fields(calculator.inputs)),
            ("answers", describe_answers(calculator.answers)),
        ])
    });
    Value::List(rows.collect())
}

/// Works the calculator `id` on `inputs` as given: checks them, then answers what is wanted.
///
/// # Errors
/// Every wrong field at once; `no_calculator` for an id that is none; `no_solution` with its reason where the inputs
/// fit their ranges and nothing satisfies them.
pub fn work(id: &str, inputs: &Value, want: Want) -> Result<Value, Vec<Problem>> {
    let Some(calculator) = CALCULATORS.iter().find(|calculator| calculator.id == id) else {
        return Err(vec![Problem::new("", code::NO_CALCULATOR).about(id)]);
    };
    let checked = check(calculator.inputs, inputs)?;
    (calculator.work)(&checked, want).map(|outcome| outcome.describe(want))
}

/// A circuit's answer, or why there is none in the contract's terms: `no_solution` at the node that the solver names.
fn solved<T>(answer: Result<T, Fault>) -> Result<T, Vec<Problem>> {
    answer.map_err(|fault| {
        let why = match fault {
            Fault::NoConvergence { .. } => "no_convergence",
            Fault::Singular { .. } => "undamped",
            Fault::Shorted { .. } => "shorted",
        };
        vec![Problem { node: Some(fault.node()), ..Problem::no_solution("", why) }]
    })
}
