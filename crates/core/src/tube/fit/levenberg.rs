//! Damped least squares for a handful of parameters.
//!
//! Source: K. Levenberg, "A method for the solution of certain problems in least squares", Quart. Appl. Math. 2 (1944);
//! D. Marquardt's scaling of the damping by the diagonal, J. SIAM 11 (1963).

use alloc::vec::Vec;

use super::matrix::{Square, solve};

/// How many parameters a tube's law has.
pub(super) const N: usize = 4;

/// Half the step of the differences that make the Jacobian, in logarithms and volts: the law is good to about 1e-10
/// and its third derivatives are of order 1, so both errors stay near 1e-7.
const HALF_STEP: f64 = 1e-4;

/// More rounds than any fit of sane data needs (about 15).
const ROUNDS: usize = 200;

/// A minimum, and how the residuals lie around it.
pub(super) struct Minimum {
    pub(super) at: [f64; N],
    /// Sum of the squared residuals.
    pub(super) cost: f64,
    /// The Jacobian's transpose times itself, there.
    pub(super) information: Square,
}

/// The minimum of Σr² near `start`, within `bounds`, with `residuals` filling in the weighted residuals at a place.
pub(super) fn minimise(
    start: [f64; N],
    bounds: &[(f64, f64); N],
    residuals: impl Fn(&[f64; N], &mut Vec<f64>),
) -> Minimum {
    let mut here = Minimum { at: start, cost: 0.0, information: [[0.0; N]; N] };
    let (mut now, mut tried) = (Vec::new(), Vec::new());
    residuals(&here.at, &mut now);
    here.cost = square(&now);
    let mut damping = 1e-3;
    for _ in 0..ROUNDS {
        let columns = jacobian(&here.at, &residuals);
        here.information = normal(&columns);
        let downhill: [f64; N] = core::array::from_fn(|k| -dot(&columns[k], &now));
        let mut settled = true;
        // a step that does not help is tried shorter; the damping that helped is kept for the next round
        while damping < 1e12 {
            let mut damped = here.information;
            for (k, row) in damped.iter_mut().enumerate() {
                row[k] += damping * row[k].max(1e-12);
            }
            let Some(step) = solve(&damped, &downhill) else {
                damping *= 10.0;
                continue;
            };
            let at: [f64; N] = core::array::from_fn(|k| (here.at[k] + step[k]).clamp(bounds[k].0, bounds[k].1));
            residuals(&at, &mut tried);
            let cost = square(&tried);
            if cost < here.cost {
                let moved = (0..N).any(|k| libm::fabs(at[k] - here.at[k]) > 1e-9);
                settled = !moved;
                (here.at, here.cost) = (at, cost);
                core::mem::swap(&mut now, &mut tried);
                damping = (damping / 10.0).max(1e-12);
                break;
            }
            damping *= 10.0;
        }
        if settled {
            break;
        }
    }
    here.information = normal(&jacobian(&here.at, &residuals));
    here
}

fn jacobian(at: &[f64; N], residuals: &impl Fn(&[f64; N], &mut Vec<f64>)) -> [Vec<f64>; N] {
    core::array::from_fn(|k| {
        let (mut low, mut high) = (Vec::new(), Vec::new());
        let shifted = |by: f64| core::array::from_fn(|j| if j == k { at[j] + by } else { at[j] });
        residuals(&shifted(-HALF_STEP), &mut low);
        residuals(&shifted(HALF_STEP), &mut high);
        low.iter().zip(&high).map(|(low, high)| (high - low) / (2.0 * HALF_STEP)).collect()
    })
}

fn normal(columns: &[Vec<f64>; N]) -> Square {
    core::array::from_fn(|i| core::array::from_fn(|j| dot(&columns[i], &columns[j])))
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn square(residuals: &[f64]) -> f64 {
    dot(residuals, residuals)
}
