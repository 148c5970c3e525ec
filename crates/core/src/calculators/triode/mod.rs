//! A triode with its cathode at or near ground and what stands around it: shared by `stage` and `voice`.

mod cautions;
mod hum;
mod netlist;
mod plate_curves;
mod rest;
mod swing;

pub(super) use cautions::cautions;
pub(super) use hum::{Murmur, Trial, under};
pub(super) use netlist::{Amplifier, Feed};
pub(super) use plate_curves::{family, plate_curves};
pub(super) use rest::{Rest, answer_rest, bench};
pub(super) use swing::Swing;
