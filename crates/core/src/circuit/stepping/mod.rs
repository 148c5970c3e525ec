//! A rectifier and what it feeds, followed in time: a chain of chokes, resistors and capacitors with its loads.
//!
//! - [`Chain`]: the description; [`Rung`], [`Series`], [`Connection`], [`Rectifier`];
//! - [`Cycle`]: the cycle that repeats, found by shooting, and what a meter reads in it;
//! - [`Start`]: from switching on, and [`discharge_seconds`] after switching off.
//!
//! The chain between two samples is stepped exactly (its matrix exponential, once for all steps), the rectifier's
//! current being taken as straight from sample to sample; the rectifier is one scalar equation a step. That is the
//! trapezoidal rule where the chain is slow, and does not ring where a part of it is quick.

mod advance;
mod chain;
mod discharge;
mod flow;
mod matrix;
mod measure;
mod rectifier;
mod rough;
mod sense;
mod shoot;
mod start;

pub use chain::{Chain, Connection, Rung, Series};
pub use discharge::discharge_seconds;
pub use measure::{Reading, Trace};
pub use rectifier::Rectifier;
pub use shoot::{Cycle, Steps};
pub use start::{Start, turn_on_peak};
