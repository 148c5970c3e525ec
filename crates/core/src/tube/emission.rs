//! Space charge that starts from electrons with the speeds of a hot cathode.
//!
//! Child's three-halves law takes electrons that start from rest. Those of an oxide cathode at about 1100 K do not:
//! their mean energy adds a linear term to the current and lets some pass where the field says none should, which is
//! the rounded foot of every tube's curve.
//!
//! Source: I. Langmuir, "The effect of space charge and initial velocities on the potential distribution and thermionic
//! current between parallel plane electrodes", Phys. Rev. 21, 419 (1923): the correction 2.66·√(kT/e·V) beside V^1.5.

/// kT/e of the emitted electrons, in volts; about 1160 K.
pub(super) const THERMAL: f64 = 0.10;

/// 2.66·√[`THERMAL`], in √V: how much of the current is linear in the volts.
pub(super) const LINEAR: f64 = 0.841_165_857_604_788_9;

/// ln [`LINEAR`].
const LN_LINEAR: f64 = -0.172_966_423_703_415_14;

/// Newton's steps are quadratic: once one is this small, relative to the root, the next would not show.
const SETTLED: f64 = 1e-8;

/// More steps than any start below needs (eight).
const STEPS: usize = 24;

/// Where emissions come from: worked out, or looked up.
pub(super) trait Emissions {
    /// F and dF/dU.
    fn current_and_slope(&self, drive: f64) -> (f64, f64);
    /// F, Φ and Ψ.
    fn sums(&self, drive: f64) -> [f64; 3];
}

/// Worked out.
pub(super) struct Exact;

impl Emissions for Exact {
    fn current_and_slope(&self, drive: f64) -> (f64, f64) {
        Emission::at(drive).current_and_slope()
    }

    fn sums(&self, drive: f64) -> [f64; 3] {
        Emission::at(drive).sums()
    }
}

/// The emission at one field, as powers of the root r = √E of the effective volts E.
///
/// E answers `E + τ·ln(E·(√E + c)) = U`, with U the volts that draw the current: near U where there is plenty, and
/// falling as exp(U/τ) below cut-off.
#[derive(Clone, Copy)]
pub(super) struct Emission {
    root: f64,
    volts: f64,
}

impl Emission {
    /// The emission drawn by `drive` volts.
    pub(super) fn at(drive: f64) -> Self {
        if drive > 1.0 { Self::plenty(drive) } else { Self::scarce(drive) }
    }

    /// F and dF/dU.
    pub(super) fn current_and_slope(self) -> (f64, f64) {
        (self.current(), self.slope())
    }

    /// F, Φ and Ψ.
    pub(super) fn sums(self) -> [f64; 3] {
        [self.current(), self.once_summed(), self.twice_summed()]
    }

    /// By Newton in E, from one step to the left of the root; the left side is concave there, so no step overshoots.
    fn plenty(drive: f64) -> Self {
        let mut volts = drive;
        for _ in 0..STEPS {
            let root = crate::root::sqrt(volts);
            let current = volts * (root + LINEAR);
            let off = volts + THERMAL * libm::log(current) - drive;
            let slope = 1.0 + THERMAL * (1.5 * root + LINEAR) / current;
            let step = off / slope;
            volts -= step;
            if libm::fabs(step) <= SETTLED * volts {
                break;
            }
        }
        Self { root: crate::root::sqrt(volts), volts }
    }

    /// By Newton in ln E, which the exponential foot makes nearly straight.
    fn scarce(drive: f64) -> Self {
        let mut ln_volts = (drive / THERMAL - LN_LINEAR).min(0.0);
        let mut root = libm::exp(0.5 * ln_volts);
        for _ in 0..STEPS {
            let volts = root * root;
            let off = volts + THERMAL * (ln_volts + libm::log(root + LINEAR)) - drive;
            let slope = volts + THERMAL * (1.5 * root + LINEAR) / (root + LINEAR);
            let step = (off / slope).clamp(-1.5, 1.5);
            ln_volts -= step;
            root = libm::exp(0.5 * ln_volts);
            if libm::fabs(step) <= SETTLED {
                break;
            }
        }
        Self { root, volts: root * root }
    }

    /// F = E·(√E + c): the current for a perveance of 1, in V^1.5.
    fn current(self) -> f64 {
        self.volts * (self.root + LINEAR)
    }

    /// dF/dU, in √V.
    fn slope(self) -> f64 {
        let steep = 1.5 * self.root + LINEAR;
        let current = self.current();
        if current > 0.0 { steep * current / (current + THERMAL * steep) } else { 0.0 }
    }

    /// Φ, with dΦ/dU = F, in V^2.5.
    fn once_summed(self) -> f64 {
        let (r, e) = (self.root, self.volts);
        let e_three_halves = e * r;
        e * e_three_halves / 2.5 + LINEAR * e * e / 2.0 + THERMAL * (e_three_halves + LINEAR * e)
    }

    /// Ψ, with dΨ/dU = Φ, in V^3.5.
    fn twice_summed(self) -> f64 {
        let (r, r2) = (self.root, self.volts);
        let (r3, r4, r5) = (r2 * r, r2 * r2, r2 * r2 * r);
        let straight = 2.0 * (r5 * r2 / 17.5 + LINEAR * r3 * r3 / 12.0 + THERMAL * (r5 / 5.0 + LINEAR * r4 / 4.0));
        let b = 1.5 * (r5 / 12.5 + LINEAR * r4 / 8.0 + THERMAL * (r3 / 3.0 + LINEAR * r2 / 2.0));
        let cubed = LINEAR * LINEAR * LINEAR;
        let inner = 0.1 * r4 + 0.1 * LINEAR * cubed * log_remainder(r / LINEAR) + THERMAL * r2 / 2.0;
        straight + 2.0 * THERMAL * (b - 0.5 * LINEAR * inner)
    }
}

/// x − x²/2 + x³/3 − ln(1 + x) for x ≥ 0, without the cancellation the plain form has for small x.
fn log_remainder(x: f64) -> f64 {
    if x >= 0.1 {
        return x * (1.0 - x * (0.5 - x / 3.0)) - libm::log1p(x);
    }
    // x⁴/4 − x⁵/5 + …; at x = 0.1 the fourteenth term is below the last bit of the first
    let mut sum = 0.0;
    for power in (4..=18_u32).rev() {
        sum = 1.0 / f64::from(power) - x * sum;
    }
    x * x * x * x * sum
}
