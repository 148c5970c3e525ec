//! What calculators of transmitter networks share: what parts that carry the carrier must stand.

mod buying;
mod stress;

use super::{
    Curve, Line,
    swept::{response_curve, swept_by},
};
use crate::circuit::Fault;

pub(super) use buying::{gap_metres, parts};
pub(super) use stress::Stressed;

/// More radio-frequency volts than this, peak, burn skin at a touch and draw an arc. Common practice, no source; the
/// figure is where direct volts begin to count as dangerous (IEC 62368-1, ES1 limit).
pub(super) const BURN_VOLTS: f64 = 60.0;

/// What a spurious emission of a transmitter under 30 MHz must be under its carrier, in decibels (47 CFR 97.307(d), for
/// one installed after 1 January 2003).
pub(super) const SPURIOUS_DB: f64 = 43.0;

/// The harmonics that are told.
pub(super) const HARMONICS: core::ops::RangeInclusive<u32> = 2..=7;

/// A level over frequency, the carrier and its first harmonics marked.
pub(super) fn harmonic_curve(
    carrier: f64,
    range: (f64, f64),
    points: u32,
    level: &mut dyn FnMut(f64) -> Result<Option<f64>, Fault>,
) -> Result<Curve, Fault> {
    let line = Line { label: "response".into(), ..swept_by(range, points, level)? };
    let mut curve = response_curve(alloc::vec![line]);
    for (label, order) in [("carrier", 1.0), ("second", 2.0), ("third", 3.0)] {
        if let Some(db) = level(order * carrier)? {
            curve.marks.push((label.into(), order * carrier, db));
        }
    }
    Ok(curve)
}
