//! What a builder takes to the bench from any circuit: what to expect, what to buy, what to join.

mod bands;
mod buying;
mod netlist;
mod wiring;

pub(super) use bands::{Point, banded, meter_ohms, test_points};
pub(super) use buying::{Buying, HIGH_LINE, parts, standard_volts, standard_watts};
pub(super) use netlist::{Socket, TubeAtSocket, describe, describe_with};
pub(super) use wiring::{is_built, is_fed, join_parts, pin_at, wiring};
