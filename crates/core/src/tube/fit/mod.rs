//! Fitting the law of a triode to what its data sheet says.

mod answer;
mod levenberg;
mod matrix;
mod recipe;
mod start;

pub use answer::{Fit, Parameter, Spread, Unfit, fit};
pub use recipe::{Kind, Residual};
