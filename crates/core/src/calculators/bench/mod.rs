//! What a builder takes to the bench from any circuit: what to expect, what to buy, what to join.

mod bands;
mod buying;
mod netlist;
mod wiring;

pub(super) use bands::{Point, test_points};
pub(super) use buying::{Buying, HIGH_LINE, parts};
pub(super) use netlist::{TubeAtSocket, describe};
pub(super) use wiring::{pin_at, wiring};
