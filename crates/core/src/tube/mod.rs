//! Tubes: current laws, the table of tubes, fitting to data-sheet points.
//!
//! Volts are to the cathode, currents into the electrodes. The laws are static: what a tube's capacitances do belongs
//! to the circuit around it.

mod drawn;
mod emission;
mod fit;
mod knee;
mod rectifiers;
mod regulators;
mod spread;
mod table;
mod triode;

pub(crate) use drawn::Drawn;
pub use fit::{Fit, Kind, Parameter, Residual, Spread, Unfit, fit};
pub use rectifiers::{RECTIFIER_NAMES, RectifierTube, rectifier, rectifiers};
pub use regulators::{REGULATOR_FARADS, REGULATOR_NAMES, Regulator, regulator, regulators};
pub use table::{Cutoff, Electrode, Heater, NAMES, Pin, Point, Ratings, Reading, Sheet, Tube, tube, tubes};
pub use triode::{GridAndPlate, PlateCurrent, Triode};
