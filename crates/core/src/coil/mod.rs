//! Single-layer coils of round wire: inductance, loss, self-capacitance and mutual inductance.

mod elliptic;
mod loss;
mod mutual;
mod round_wire;
mod self_capacitance;
mod sheet;
mod skin;
mod winding;

pub use loss::phi;
pub use mutual::{MU, loops};
pub use round_wire::{gap_term, turns_term};
pub use self_capacitance::self_farads;
pub use sheet::nagaoka;
pub use skin::{Skin, copper_ohm_metres, skin, skin_depth};
pub use winding::Winding;
