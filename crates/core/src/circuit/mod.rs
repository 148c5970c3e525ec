//! Parts between named nodes, and what they do: the one engine under every calculator that has a schematic.
//!
//! - [`Circuit`]: the netlist; [`Part`], [`Kind`];
//! - [`DcPoint`]: direct volts, currents, watts, and how each follows each part;
//! - [`Response`]: small signals at a frequency, and noise; [`Sweep`]: its greatest and its corners;
//! - [`Periodic`]: the steady state under a drive that the tubes distort;
//! - [`Audio`]: a sampled emf sent through, step by step in time;
//! - [`Chain`]: a rectifier and the chain it feeds, in time; [`Cycle`], [`Start`].
//!
//! Nodal analysis with one unknown per node: wires, closed switches and sources merge nodes, so no branch current is an
//! unknown. Place is kept for what later issues bring: another two-terminal part is a `Law` of a branch, another kind of
//! tube a valve with its own law, and a step in time a capacitor's `Law` with its companion conductance.

mod audio;
mod complex;
mod currents;
mod dc_point;
mod dc_sensitivity;
mod dense;
mod elimination;
mod fault;
mod footing;
mod islands;
mod level;
mod netlist;
mod network;
mod newton;
mod noise;
mod order;
mod parameter;
mod part;
mod periodic;
mod response;
mod response_sensitivity;
mod rigid;
mod root;
mod scalar;
mod sets;
mod stepping;
mod sums;
mod sweep;

pub use audio::Audio;
pub use complex::Complex;
pub use dc_point::{DcPoint, TubePoint};
pub use fault::Fault;
pub use netlist::Circuit;
pub use parameter::{Parameter, PartDerivative, ResponseDerivative};
pub use part::{GROUND, Kind, NodeId, Part, PartId};
pub use periodic::{Bound, Periodic, Steady, Unreached};
pub use response::{Phasors, Response};
pub use stepping::{
    Chain, Connection, Cycle, Reading, Rectifier, Rung, Series, Start, Steps, Trace, discharge_seconds, turn_on_peak,
};
pub use sweep::{Corners, Level, Peak, Sweep};
