//! Values, the tables that describe them, and what is said when one cannot be used.

mod answer;
mod check;
mod describe;
mod field;
mod inputs;
mod kinds;
mod problem;
mod shape;

pub use answer::Answer;
pub use check::check;
pub use describe::{describe_answers, describe_fields};
pub use field::{Field, Start};
pub use inputs::Inputs;
pub use kinds::Value;
pub use problem::{Problem, code};
pub use shape::{Condition, Counts, Range, Scale, Shape, Test};
