use alloc::{vec, vec::Vec};
use core::f64::consts::{FRAC_PI_2, LN_10};

/// Places of the pass band that are looked at, closer together towards its edge, where a ladder is touchiest.
const PLACES: usize = 25;
/// The same where a deviation is told: so many that none worth telling hides between two.
const FINE: usize = 160;
/// Steps of least squares, then steps that lean on what is worst.
const SQUARES: usize = 3;
const WORST: usize = 8;
/// The most that a coil may change in one step, by ratio (natural logarithm).
const LEAST_STEP: f64 = 1e-5;
const MOST_STEP: f64 = 0.3;
/// Under this many decibels a deviation is none.
const NOTHING: f64 = 1e-9;
/// What keeps coils in place that the deviations say nothing of.
const RIDGE: f64 = 1e-6;
/// Coils of a ladder of order 9 that begins with one.
const COILS: usize = 5;

/// How far a ladder's loss is from that of the exact one, in decibels, up or down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Deviation {
    /// The farthest in the pass band, up to 1 rad/s.
    pub pass: f64,
    /// At the harmonic asked about.
    pub harmonic: f64,
}

/// A ladder of normal elements, source to load, between ends of 1 Ω, and whether the first is a capacitor to ground.
#[derive(Clone, Copy)]
struct Ladder<'a> {
    elements: &'a [f64],
    capacitor_first: bool,
}

impl Ladder<'_> {
    fn is_coil(&self, index: usize) -> bool {
        index.is_multiple_of(2) != self.capacitor_first
    }

    /// Loss at a frequency, by the chain of its elements: with ends alike and parts without loss two of the four figures
    /// are real and two imaginary.
    fn loss_db(&self, omega: f64) -> f64 {
        let (mut a, mut b, mut c, mut d) = (1.0, 0.0, 0.0, 1.0);
        for (index, element) in self.elements.iter().enumerate() {
            let x = omega * element;
            if self.is_coil(index) {
                b += a * x;
                d -= c * x;
            } else {
                a -= b * x;
                c += d * x;
            }
        }
        10.0 / LN_10 * libm::log(((a + d) * (a + d) + (b + c) * (b + c)) / 4.0)
    }
}

/// The places looked at: the pass band's, then the harmonic.
fn places(count: usize, harmonic: f64) -> impl Iterator<Item = f64> {
    let pass = (1..=count).map(move |place| libm::sin(FRAC_PI_2 * place as f64 / count as f64));
    pass.chain(core::iter::once(harmonic))
}

/// How far `elements` are from `exact`, both normal and both with a capacitor first or not; `harmonic` in units of the
/// pass band's edge.
#[must_use]
pub fn deviation(exact: &[f64], elements: &[f64], capacitor_first: bool, harmonic: f64) -> Deviation {
    let (exact, ours) = (Ladder { elements: exact, capacitor_first }, Ladder { elements, capacitor_first });
    let off = |omega: f64| libm::fabs(ours.loss_db(omega) - exact.loss_db(omega));
    let pass = places(FINE, harmonic).take(FINE).map(off).fold(0.0, f64::max);
    Deviation { pass, harmonic: off(harmonic) }
}

/// `rounded` with its coils fitted again, so that the loss is as near to that of `exact` as its capacitors allow: never
/// farther off than with the exact ladder's coils, in the pass band and at the harmonic each.
///
/// Both deviations are taken against what rounding alone gives, and the greater is made small: a few Gauss-Newton steps on
/// all of them, then with more weight on the worst each time. Where the last is no better than rounding alone, as much of
/// the way there is taken as is. The steps are always as many, and the same inputs give the same coils.
///
/// # Source
/// C. L. Lawson, *Contributions to the Theory of Linear Least Maximum Approximation* (1961), for the weights.
#[must_use]
pub fn refitted(exact: &[f64], rounded: &[f64], capacitor_first: bool, harmonic: f64) -> Vec<f64> {
    let start = deviation(exact, rounded, capacitor_first, harmonic);
    let mut fit = Fit {
        exact: Ladder { elements: exact, capacitor_first },
        rounded,
        coils: Vec::with_capacity(COILS),
        omegas: places(PLACES, harmonic).collect(),
        aims: Vec::with_capacity(PLACES + 1),
        scale: [1.0 / f64::max(start.pass, NOTHING), 1.0 / f64::max(start.harmonic, NOTHING)],
    };
    fit.coils = (0..exact.len()).filter(|index| fit.exact.is_coil(*index)).collect();
    fit.aims = fit.omegas.iter().map(|omega| fit.exact.loss_db(*omega)).collect();
    let change = fit.change();
    let share = fit.share(&change);
    fit.elements(&change.iter().map(|change| share * change).collect::<Vec<_>>())
}

struct Fit<'a> {
    exact: Ladder<'a>,
    rounded: &'a [f64],
    /// Places of the coils in the ladder.
    coils: Vec<usize>,
    omegas: Vec<f64>,
    /// The exact ladder's loss at each.
    aims: Vec<f64>,
    /// One over what rounding alone deviates: in the pass band, at the harmonic.
    scale: [f64; 2],
}

impl Fit<'_> {
    /// The ladder with its coils changed by that much, each by ratio.
    fn elements(&self, change: &[f64]) -> Vec<f64> {
        let mut elements = self.rounded.to_vec();
        for (index, change) in self.coils.iter().zip(change) {
            elements[*index] *= libm::exp(*change);
        }
        elements
    }

    /// Deviation at each place, against what rounding alone gives.
    fn off(&self, change: &[f64]) -> Vec<f64> {
        let elements = self.elements(change);
        let ladder = Ladder { elements: &elements, ..self.exact };
        let places = self.omegas.iter().zip(&self.aims).enumerate();
        places.map(|(place, (omega, aim))| (ladder.loss_db(*omega) - aim) * self.scale[place / PLACES]).collect()
    }

    /// The last of the steps.
    fn change(&self) -> Vec<f64> {
        let mut change = vec![0.0; self.coils.len()];
        let mut weights = vec![1.0; PLACES + 1];
        let mut off = self.off(&change);
        for step in 0..SQUARES + WORST {
            let worst = greatest(&off);
            if worst <= 0.0 {
                break;
            }
            if step >= SQUARES {
                for (weight, off) in weights.iter_mut().zip(&off) {
                    *weight = *weight * (libm::fabs(*off) / worst) + 1e-4 / PLACES as f64;
                }
                let sum: f64 = weights.iter().sum();
                for weight in &mut weights {
                    *weight /= sum;
                }
            }
            let by = self.step(&change, &off, &weights);
            let short = MOST_STEP / f64::max(greatest(&by), MOST_STEP);
            change.iter_mut().zip(&by).for_each(|(change, by)| *change += short * by);
            off = self.off(&change);
        }
        change
    }

    /// The step of least squares from `change`.
    fn step(&self, change: &[f64], off: &[f64], weights: &[f64]) -> Vec<f64> {
        let slopes: Vec<Vec<f64>> = (0..change.len())
            .map(|coil| {
                let mut moved = change.to_vec();
                moved[coil] += LEAST_STEP;
                self.off(&moved).iter().zip(off).map(|(moved, off)| (moved - off) / LEAST_STEP).collect()
            })
            .collect();
        let product = |a: &[f64], b: &[f64]| -> f64 { a.iter().zip(b).zip(weights).map(|((a, b), w)| a * b * w).sum() };
        let mut matrix = [[0.0; COILS]; COILS];
        let mut right = [0.0; COILS];
        let trace: f64 = slopes.iter().map(|slope| product(slope, slope)).sum();
        for (row, slope) in slopes.iter().enumerate() {
            for (column, other) in slopes.iter().enumerate() {
                matrix[row][column] = product(slope, other);
            }
            matrix[row][row] += RIDGE * trace + f64::MIN_POSITIVE;
            right[row] = -product(slope, off);
        }
        solve(&mut matrix, &mut right, slopes.len());
        right[..slopes.len()].to_vec()
    }

    /// How much of the way to `change` is no worse than none of it: all, or the most that is.
    fn share(&self, change: &[f64]) -> f64 {
        let harmonic = self.omegas[PLACES];
        let off = |share: f64| {
            let elements = self.elements(&change.iter().map(|change| share * change).collect::<Vec<_>>());
            let off = deviation(self.exact.elements, &elements, self.exact.capacitor_first, harmonic);
            f64::max(off.pass * self.scale[0], off.harmonic * self.scale[1])
        };
        if off(1.0) <= 1.0 {
            return 1.0;
        }
        let (mut good, mut bad) = (0.0, 1.0);
        for _ in 0..20 {
            let middle = 0.5 * (good + bad);
            if off(middle) <= 1.0 {
                good = middle;
            } else {
                bad = middle;
            }
        }
        good
    }
}

fn greatest(figures: &[f64]) -> f64 {
    figures.iter().fold(0.0, |most, figure| f64::max(most, libm::fabs(*figure)))
}

/// Solves a symmetric, positive definite matrix by elimination without exchange.
fn solve(matrix: &mut [[f64; COILS]; COILS], right: &mut [f64; COILS], count: usize) {
    for pivot in 0..count {
        let (above, below) = matrix.split_at_mut(pivot + 1);
        let top = above[pivot];
        for (row, other) in below.iter_mut().enumerate().take(count - pivot - 1) {
            let share = other[pivot] / top[pivot];
            for (figure, over) in other.iter_mut().zip(top) {
                *figure -= share * over;
            }
            right[pivot + 1 + row] -= share * right[pivot];
        }
    }
    for row in (0..count).rev() {
        let known: f64 = (row + 1..count).map(|column| matrix[row][column] * right[column]).sum();
        right[row] = (right[row] - known) / matrix[row][row];
    }
}
