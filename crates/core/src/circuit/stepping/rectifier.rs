/// How a rectifier (or two in series) passes current forward; backward it passes none.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rectifier {
    /// A constant drop, in V, of everything in the path.
    Drop(f64),
    /// Child's law turned about: so many V over A^(2/3) of everything in the path.
    Vacuum(f64),
}

/// Steps of Newton's method at most; from above on a convex function it comes down without fail.
const STEPS: usize = 60;

/// Over the cube root of a figure that is not subnormal, by a tenth at most: a third of its exponent and of its
/// mantissa as they stand, raised by what that can be short.
fn over_cube_root(figure: f64) -> f64 {
    1.06 * f64::from_bits(figure.to_bits() / 3 + 0x2A9F_7893_0000_0000)
}

impl Rectifier {
    /// Child's law, i = k·v^1.5, with the same current through `in_series` plates; k in A/V^1.5.
    #[must_use]
    pub fn vacuum(perveance: f64, in_series: f64) -> Self {
        Rectifier::Vacuum(in_series / libm::cbrt(perveance * perveance))
    }

    /// Volts dropped by the whole path at a current, in V.
    #[must_use]
    pub fn volts(self, amps: f64) -> f64 {
        match self {
            Rectifier::Drop(volts) => volts,
            Rectifier::Vacuum(bend) => {
                let root = libm::cbrt(f64::max(amps, 0.0));
                bend * root * root
            }
        }
    }

    /// Volts that do not depend on the current.
    pub(super) fn threshold(self) -> f64 {
        match self {
            Rectifier::Drop(volts) => volts,
            Rectifier::Vacuum(_) => 0.0,
        }
    }

    /// The current at which `ohms`·i and the rectifier's rise over its threshold make `drive` together, and the
    /// slope d i/d drive. None flows for a drive of 0 or less.
    pub(super) fn amps(self, ohms: f64, drive: f64) -> (f64, f64) {
        // A NaN must not pass for a drive.
        if drive.partial_cmp(&0.0) != Some(core::cmp::Ordering::Greater) {
            return (0.0, 0.0);
        }
        let Rectifier::Vacuum(bend) = self else {
            return (drive / ohms, 1.0 / ohms);
        };
        // ohms·u³ + bend·u² = drive; either term alone bounds u from above.
        let mut u = f64::min(crate::root::sqrt(drive / bend), over_cube_root(drive / ohms));
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
