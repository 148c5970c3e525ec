//! How much each datum of a sheet is believed, and what the law makes of it.

use alloc::vec::Vec;

use super::levenberg::N;
use crate::tube::{Cutoff, Point, Reading, Sheet, Triode};

/// Standard deviations, of logarithms: printed figures are rounded averages of many tubes.
const CURRENT: f64 = 0.05;
const TRANSCONDUCTANCE: f64 = 0.04;
const AMPLIFICATION: f64 = 0.03;
const RESISTANCE: f64 = 0.05;
/// A cut-off is the bend of a curve on a plot.
const CUTOFF: f64 = 0.7;
const CUTOFF_AMPS: f64 = 10e-6;
/// A point read by eye: the larger of a share and a width of the pen.
const READING: f64 = 0.12;
const READING_AMPS: f64 = 0.1e-3;

/// What is known of any receiving triode before its sheet is read: contact volts and their standard deviation.
pub(super) const CONTACT_VOLTS: (f64, f64) = (0.31, 0.04);
/// The spread before the sheet is read, and the standard deviation of its logarithm: it is a positive ratio, and those
/// that sheets do determine lie from 0.20 to 0.51.
pub(super) const MU_SPREAD: (f64, f64) = (0.25, 0.45);

/// What kind of datum a residual belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Plate current of a point.
    Current,
    /// Transconductance of a point.
    Gm,
    /// Amplification factor of a point: `gm` times `plate_resistance`, or as given.
    Mu,
    /// Plate resistance of a point, where neither of the others is given.
    PlateResistance,
    /// Current at a cut-off, against 10 µA.
    Cutoff,
    /// A point read off the curves.
    Reading,
}

/// One datum: the logarithm of what the law makes of it over what the sheet says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Residual {
    /// What was compared.
    pub kind: Kind,
    /// Which point, cut-off or reading, from 0.
    pub index: usize,
    /// ln(law/sheet).
    pub log_ratio: f64,
    /// Its standard deviation in the fit.
    pub deviation: f64,
}

/// The parameters as they are fitted: ln perveance, ln mu, ln spread, contact volts.
pub(super) fn law(at: &[f64; N]) -> Triode {
    Triode { perveance: libm::exp(at[0]), mu: libm::exp(at[1]), mu_spread: libm::exp(at[2]), contact_volts: at[3] }
}

/// Every datum of `sheet` against `law`.
pub(super) fn residuals(law: &Triode, sheet: &Sheet, mut each: impl FnMut(Residual)) {
    let mut put = |kind, index, law: f64, sheet: f64, deviation| {
        each(Residual { kind, index, log_ratio: log(law) - log(sheet), deviation });
    };
    for (index, point) in sheet.points.iter().enumerate() {
        let got = law.plate(point.grid_volts, point.plate_volts);
        put(Kind::Current, index, got.amps, point.plate_amps, CURRENT);
        if let Some(gm) = point.gm {
            put(Kind::Gm, index, got.gm, gm, TRANSCONDUCTANCE);
        }
        match (amplification(point), point.plate_resistance) {
            (Some(mu), _) => put(Kind::Mu, index, got.gm / got.gp.max(TINY), mu, AMPLIFICATION),
            (None, Some(ohms)) => put(Kind::PlateResistance, index, 1.0 / got.gp.max(TINY), ohms, RESISTANCE),
            (None, None) => {}
        }
    }
    for (index, Cutoff { plate_volts, grid_volts, .. }) in sheet.cutoffs.iter().enumerate() {
        put(Kind::Cutoff, index, law.plate(*grid_volts, *plate_volts).amps, CUTOFF_AMPS, CUTOFF);
    }
    for (index, Reading { plate_volts, grid_volts, plate_amps }) in sheet.readings.iter().enumerate() {
        let deviation = READING.max(READING_AMPS / plate_amps);
        put(Kind::Reading, index, law.plate(*grid_volts, *plate_volts).amps, *plate_amps, deviation);
    }
}

/// The amplification factor that a point states.
pub(super) fn amplification(point: &Point) -> Option<f64> {
    match (point.gm, point.plate_resistance) {
        (Some(gm), Some(ohms)) => Some(gm * ohms),
        _ => point.mu,
    }
}

/// The weighted residuals, the priors last.
pub(super) fn weighted(at: &[f64; N], sheet: &Sheet, into: &mut Vec<f64>) {
    into.clear();
    residuals(&law(at), sheet, |residual| into.push(residual.log_ratio / residual.deviation));
    into.push((at[2] - log(MU_SPREAD.0)) / MU_SPREAD.1);
    into.push((at[3] - CONTACT_VOLTS.0) / CONTACT_VOLTS.1);
}

/// Smaller than any conductance or current that a logarithm is asked of.
const TINY: f64 = 1e-30;

fn log(figure: f64) -> f64 {
    libm::log(figure.max(TINY))
}
