//! The table of tubes, as data.
//!
//! Each row carries the data-sheet points that its law was fitted to, and where every figure was read. Triodes here;
//! beam tubes and pentodes will have files and a law of their own beside them.

mod basing;
mod high_mu;
mod high_slope;
mod low_mu;
mod ratings;
mod row;
mod sheet;

pub use basing::{Electrode, Pin};
pub use ratings::{Heater, Ratings};
pub use row::Tube;
pub use sheet::{Cutoff, Point, Reading, Sheet};

/// Every tube of the table.
static TUBES: [Tube; 10] = [
    high_mu::T_6SL7GT,
    high_mu::T_12AX7,
    low_mu::T_6SN7GT,
    low_mu::T_6J5,
    low_mu::T_12AU7,
    low_mu::T_6C4,
    low_mu::T_12AY7,
    high_slope::T_12AT7,
    high_slope::T_ECC81,
    high_slope::T_6DJ8,
];

/// Every name that [`tube`] knows, aliases beside the name they stand for.
pub const NAMES: &[&str] =
    &["6SL7GT", "12AX7", "ECC83", "6SN7GT", "6J5", "12AU7", "ECC82", "6C4", "12AY7", "12AT7", "ECC81", "6DJ8", "ECC88"];

/// Every tube of the table.
#[must_use]
pub fn tubes() -> &'static [Tube] {
    &TUBES
}

/// The tube of that name or alias, in capitals or not.
#[must_use]
pub fn tube(name: &str) -> Option<&'static Tube> {
    let name = name.trim();
    TUBES.iter().find(|tube| core::iter::once(&tube.name).chain(tube.aliases).any(|own| own.eq_ignore_ascii_case(name)))
}
