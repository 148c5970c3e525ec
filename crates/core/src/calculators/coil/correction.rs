use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::{make::Make, turns::Amount};
use crate::{
    coil::self_farads,
    value::{Inputs, Problem},
};

/// What a measured resonance says of the coil that was wound.
pub(super) struct Correction {
    /// Measured inductance over computed.
    pub factor: f64,
    /// What stood across the coil beside the capacitor, from two readings.
    pub stray: Option<f64>,
}

/// 1/ω².
fn period_square(hertz: f64) -> f64 {
    let omega = 2.0 * PI * hertz;
    1.0 / (omega * omega)
}

/// From one resonance with the computed self-capacitance, or from two with whatever was across the coil:
/// 1/ω² = L·(C + C₀).
///
/// # Errors
/// `no_solution` where two readings contradict each other.
pub(super) fn correction(inputs: &Inputs, make: &Make, turns: f64) -> Result<Option<Correction>, Vec<Problem>> {
    let Some(hertz) = inputs.maybe("measured_hertz") else { return Ok(None) };
    let farads = inputs.number("measured_farads");
    let computed = Amount::new(make, make.skin(hertz).inner).henries(turns);
    if let Some(second) = inputs.maybe("second_hertz") {
        let other = inputs.number("second_farads");
        let henries = (period_square(second) - period_square(hertz)) / (other - farads);
        if !henries.is_finite() || henries <= 0.0 {
            return Err(vec![Problem::no_solution("second_hertz", "readings_disagree")]);
        }
        let stray = period_square(hertz) / henries - farads;
        return Ok(Some(Correction { factor: henries / computed, stray: Some(stray) }));
    }
    let own = self_farads(make.mean(), turns * make.pitch(turns));
    let henries = period_square(hertz) / (farads + own);
    Ok(Some(Correction { factor: henries / computed, stray: None }))
}
