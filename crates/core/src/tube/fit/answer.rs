//! A fit and how far to trust it.

use alloc::vec::Vec;

use super::{
    levenberg::{self, N},
    matrix::{Square, inverse},
    recipe::{self, CONTACT_VOLTS, MU_SPREAD, Residual},
    start::start,
};
use crate::tube::{Sheet, Triode};

/// Where a law of a triode is looked for: ln perveance (A/V^1.5), ln mu, ln spread, contact volts.
const BOUNDS: [(f64, f64); N] = [
    (LN_MICRO, 0.0),
    (0.405_465_108_108_164_4, 6.214_608_098_422_191), // 1.5 to 500
    (-4.605_170_185_988_091, -0.510_825_623_767),     // 0.01 to a hair under 0.6
    (-2.0, 2.0),
];

/// ln 1e-6.
const LN_MICRO: f64 = -13.815_510_557_964_274;

/// A parameter whose deviation is still this share of its prior's was not learnt from the data.
const UNLEARNT: f64 = 0.9;

/// Beyond these deviations of ln perveance and ln mu the data do not say what the tube is. The perveance may be open
/// by a factor of several near cut-off, where the spread and it make up for each other.
const VAGUE: [f64; 2] = [1.5, 0.5];

/// Why there is no fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unfit {
    /// The data leave mu or the perveance open: too few, too much alike, or without gm, rp or mu.
    Undetermined,
    /// The best law lies at the edge of what a triode can be: a figure is probably in a wrong unit or of a wrong sign.
    OutsideLaw,
}

/// One fitted parameter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parameter {
    /// Its standard error, in its own unit.
    pub error: f64,
    /// Whether the data did not determine it and it stayed where any tube's lies.
    pub at_prior: bool,
}

/// How far predictions are open where a resistance-coupled stage rests: at half the plate volts and a quarter of the
/// current of the first point. Standard deviations, as fractions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Of plate current at given volts.
    pub plate_amps: f64,
    /// Of gm at given volts.
    pub gm: f64,
    /// Of the amplification factor, and so about of the gain.
    pub mu: f64,
}

/// A law with all that is known about its making.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// The law.
    pub law: Triode,
    /// The perveance.
    pub perveance: Parameter,
    /// The amplification factor.
    pub mu: Parameter,
    /// Its spread.
    pub mu_spread: Parameter,
    /// The contact volts.
    pub contact_volts: Parameter,
    /// Every datum against the law, in the sheet's order.
    pub residuals: Vec<Residual>,
    /// How far predictions are open.
    pub spread: Spread,
}

/// Fits a triode's law to `sheet` by least squares, each datum weighted as its kind deserves.
///
/// Residuals are logarithms of law over sheet: current 5 %, gm 4 %, gm·rp 3 %, rp alone 5 %, points read by eye 12 % or
/// 0.1 mA, 10 µA cut-offs 0.7. Priors: contact volts 0.31 ± 0.04, spread 0.25 within a factor of e^0.45. Currents and resistances must be
/// over 0.
///
/// # Errors
/// [`Unfit`] where the data do not determine a tube.
pub fn fit(sheet: &Sheet) -> Result<Fit, Unfit> {
    let minimum = levenberg::minimise(start(sheet, &BOUNDS), &BOUNDS, |at, into| recipe::weighted(at, sheet, into));
    if !minimum.cost.is_finite() {
        return Err(Unfit::OutsideLaw);
    }
    let covariance = inverse(&minimum.information).ok_or(Unfit::Undetermined)?;
    let error: [f64; N] = core::array::from_fn(|k| crate::root::sqrt(covariance[k][k].max(0.0)));
    if error[0] > VAGUE[0] || error[1] > VAGUE[1] {
        return Err(Unfit::Undetermined);
    }
    let edge = |k: usize| {
        let (least, most) = BOUNDS[k];
        minimum.at[k] <= least || minimum.at[k] >= most
    };
    if edge(0) || edge(1) || edge(3) {
        return Err(Unfit::OutsideLaw);
    }
    let law = recipe::law(&minimum.at);
    let mut residuals = Vec::new();
    recipe::residuals(&law, sheet, |residual| residuals.push(residual));
    Ok(Fit {
        law,
        perveance: Parameter { error: error[0] * law.perveance, at_prior: false },
        mu: Parameter { error: error[1] * law.mu, at_prior: false },
        mu_spread: Parameter { error: error[2] * law.mu_spread, at_prior: error[2] > UNLEARNT * MU_SPREAD.1 },
        contact_volts: Parameter { error: error[3], at_prior: error[3] > UNLEARNT * CONTACT_VOLTS.1 },
        residuals,
        spread: spread(&minimum.at, sheet, &covariance),
    })
}

/// The spread of predictions, by the covariance and the predictions' slopes.
fn spread(at: &[f64; N], sheet: &Sheet, covariance: &Square) -> Spread {
    let Some(point) = sheet.points.first() else {
        return Spread { plate_amps: 0.0, gm: 0.0, mu: 0.0 };
    };
    let plate_volts = 0.5 * point.plate_volts;
    let law = recipe::law(at);
    let grid_volts = bias(&law, plate_volts, 0.25 * point.plate_amps);
    let logs = |at: &[f64; N]| {
        let got = recipe::law(at).plate(grid_volts, plate_volts);
        [got.amps, got.gm, got.gm / got.gp].map(|figure| libm::log(figure.max(1e-30)))
    };
    let half = 1e-4;
    let slopes: [[f64; 3]; N] = core::array::from_fn(|k| {
        let shifted = |by: f64| core::array::from_fn(|j| if j == k { at[j] + by } else { at[j] });
        let (low, high) = (logs(&shifted(-half)), logs(&shifted(half)));
        core::array::from_fn(|j| (high[j] - low[j]) / (2.0 * half))
    });
    let deviation = |j: usize| {
        let mut variance = 0.0;
        for (a, row) in covariance.iter().enumerate() {
            for (b, value) in row.iter().enumerate() {
                variance += slopes[a][j] * value * slopes[b][j];
            }
        }
        crate::root::sqrt(variance.max(0.0))
    };
    Spread { plate_amps: deviation(0), gm: deviation(1), mu: deviation(2) }
}

/// The grid volts at which `law` passes `amps`, by halving; current rises with the grid all the way.
fn bias(law: &Triode, plate_volts: f64, amps: f64) -> f64 {
    let (mut low, mut high) = (-plate_volts - 10.0, 10.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if law.plate(middle, plate_volts).amps < amps { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}
