//! What is thrown at the engine, and what counts as a fault.

mod options;
mod run;
mod targets;

pub use options::Options;
pub use run::{Tally, run, tell_of_panics};
pub use targets::{calculator, reader};
