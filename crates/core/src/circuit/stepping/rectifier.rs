/// How a rectifier (or two in series) passes current forward; backward it passes none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rectifier {
    /// A constant drop, in V, of everything in the path.
    Drop(f64),
    /// Child's law, i = k·v^1.5, the same current through `in_series` plates.
    Vacuum {
        /// k, in A/V^1.5.
        perveance: f64,
        /// Tubes in the path of the current.
        in_series: f64,
    },
}

/// Steps of Newton's method at most; from above on a convex function it comes down without fail.
const STEPS: usize = 60;

impl Rectifier {
    /// Volts dropped by the whole path at a current, in V.
    #[must_use]
    pub fn volts(self, amps: f64) -> f64 {
        match self {
            Rectifier::Drop(volts) => volts,
            Rectifier::Vacuum { .. } => {
                let root = libm::cbrt(f64::max(amps, 0.0));
                self.bend() * root * root
            }
        }
    }

    /// Volts that do not depend on the current.
    pub(super) fn threshold(self) -> f64 {
        match self {
            Rectifier::Drop(volts) => volts,
            Rectifier::Vacuum { .. } => 0.0,
        }
    }

    /// The factor a of a·i^(2/3).
    fn bend(self) -> f64 {
        match self {
            Rectifier::Drop(_) => 0.0,
            Rectifier::Vacuum { perveance, in_series } => in_series / libm::cbrt(perveance * perveance),
        }
    }

    /// The current at which `ohms`·i and the rectifier's rise over its threshold make `drive` together, and the
    /// slope d i/d drive. None flows for a drive of 0 or less.
    pub(super) fn amps(self, ohms: f64, drive: f64) -> (f64, f64) {
        // A NaN must not pass for a drive.
        if drive.partial_cmp(&0.0) != Some(core::cmp::Ordering::Greater) {
            return (0.0, 0.0);
        }
        let bend = self.bend();
        if bend == 0.0 {
            return (drive / ohms, 1.0 / ohms);
        }
        // ohms·u³ + bend·u² = drive; either term alone bounds u from above.
        let mut u = f64::min(libm::sqrt(drive / bend), libm::cbrt(drive / ohms));
        for _ in 0..STEPS {
            let slope = u * (3.0 * ohms * u + 2.0 * bend);
            let next = u - (u * u * (ohms * u + bend) - drive) / slope;
            let settled = libm::fabs(next - u) <= 1e-15 * u;
            u = if next > 0.0 { next } else { 0.5 * u };
            if settled {
                break;
            }
        }
        (u * u * u, 3.0 * u / (3.0 * ohms * u + 2.0 * bend))
    }
}
