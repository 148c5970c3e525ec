//! Tubes: current laws, the table of tubes, fitting to data-sheet points.
//!
//! Volts are to the cathode, currents into the electrodes. The laws are static: what a tube's capacitances do belongs
//! to the circuit around it.

mod emission;
mod knee;
mod spread;
mod triode;

pub use triode::{GridAndPlate, PlateCurrent, Triode};
