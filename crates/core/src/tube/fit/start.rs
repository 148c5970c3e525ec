//! Where a fit begins: the amplification on a coarse ladder, the perveance from the currents.

use alloc::vec::Vec;

use super::{
    levenberg::N,
    recipe::{self, CONTACT_VOLTS, MU_SPREAD},
};
use crate::tube::Sheet;

/// Amplification factors from power triodes to the highest of the voltage amplifiers.
const LADDER: [f64; 9] = [2.0, 4.0, 8.0, 16.0, 32.0, 64.0, 100.0, 150.0, 300.0];

/// The best place of the ladder, which a stated amplification joins.
pub(super) fn start(sheet: &Sheet, bounds: &[(f64, f64); N]) -> [f64; N] {
    let stated = sheet.points.iter().find_map(recipe::amplification);
    let mut best = ([0.0; N], f64::INFINITY);
    let mut residuals = Vec::new();
    for mu in LADDER.into_iter().chain(stated) {
        let mut at = [0.0, libm::log(mu), libm::log(MU_SPREAD.0), CONTACT_VOLTS.0];
        at[0] = perveance(sheet, &at);
        for (value, bound) in at.iter_mut().zip(bounds) {
            *value = value.clamp(bound.0, bound.1);
        }
        recipe::weighted(&at, sheet, &mut residuals);
        let cost = residuals.iter().map(|r| r * r).sum();
        if cost < best.1 {
            best = (at, cost);
        }
    }
    best.0
}

/// ln of the perveance that puts the points' currents right on average, every other figure being as in `at`.
fn perveance(sheet: &Sheet, at: &[f64; N]) -> f64 {
    let (mut sum, mut count) = (0.0, 0.0);
    recipe::residuals(&recipe::law(at), sheet, |residual| {
        if residual.kind == recipe::Kind::Current {
            sum -= residual.log_ratio;
            count += 1.0;
        }
    });
    if count > 0.0 { sum / count } else { 0.0 }
}
