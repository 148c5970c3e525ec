use alloc::vec::Vec;
use core::f64::consts::{FRAC_1_SQRT_2, LN_10};

use super::{Fault, root::crossing};

/// How much passes at one frequency, and how that changes with it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Level {
    /// Natural logarithm of the magnitude; 20/ln(10) times it is decibels.
    pub ln_gain: f64,
    /// d `ln_gain` / d ln(frequency): 1 is 6 dB an octave.
    pub slope: f64,
}

/// Where most passes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Peak {
    /// The frequency.
    pub hertz: f64,
    /// Natural logarithm of the magnitude there.
    pub ln_gain: f64,
}

/// Where the response has fallen by half its power, seen from where most passes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corners {
    /// Below; `None` where it does not fall so far.
    pub low: Option<f64>,
    /// Above; `None` likewise.
    pub high: Option<f64>,
}

/// One place of the scan.
#[derive(Clone, Copy, Debug)]
struct Knot {
    ln_hertz: f64,
    level: Level,
    /// Put in where the slope is zero and falling.
    top: bool,
}

/// A slope that is rounding and nothing else.
const FLAT: f64 = 1e-14;

/// Two levels that differ by rounding and nothing else.
const EQUAL: f64 = 1e-13;

/// A cell's middle this near to the cubic through its ends hides nothing: a third of a decibel.
const SMOOTH: f64 = 0.04;

/// How often a cell is halved: to a 256th.
const DEEPEST: u32 = 8;

impl Knot {
    fn steep(&self) -> bool {
        self.level.slope.abs() > FLAT
    }
}

/// A response scanned over a range of frequencies, for its greatest and its crossings.
///
/// The scan takes level and slope at points spread evenly over ln(frequency); between two points whose slopes differ in
/// sign the extreme is found where the slope is zero. A cell whose middle is not where its ends lead one to expect is
/// halved, up to eight times, so that a peak beside a null is not stepped over. All results are carried to rounding, so they follow the inputs smoothly.
///
/// ```
/// use tagstrip_core::circuit::{Level, Sweep};
///
/// // a first-order low-pass with its corner at 1 kHz
/// let low_pass = |hertz: f64| {
///     let square = (hertz / 1e3) * (hertz / 1e3);
///     Ok(Level { ln_gain: -0.5 * square.ln_1p(), slope: -square / (1.0 + square) })
/// };
/// let mut sweep = Sweep::new(0.01, 100e6, 6, &[], low_pass).unwrap();
/// let corners = sweep.corners().unwrap();
/// assert_eq!(corners.low, None);
/// assert!((corners.high.unwrap() - 1e3).abs() < 1e-6);
/// ```
#[derive(Clone, Debug)]
pub struct Sweep<F> {
    level: F,
    /// The scan, with every extreme between its points put in.
    knots: Vec<Knot>,
}

impl<F: FnMut(f64) -> Result<Level, Fault>> Sweep<F> {
    /// Scans from `least` to `most` hertz with `per_decade` points, and the frequencies of `also` where something may be
    /// narrow.
    pub fn new(least: f64, most: f64, per_decade: u32, also: &[f64], level: F) -> Result<Self, Fault> {
        let mut sweep = Sweep { level, knots: Vec::new() };
        let (first, last) = (libm::log(least), libm::log(most));
        let cells = libm::ceil((last - first) / LN_10 * f64::from(per_decade) - 1e-9).clamp(1.0, 1e4);
        let mut places: Vec<f64> = (0..=10_000).map(f64::from).take_while(|k| *k <= cells).collect();
        for place in &mut places {
            *place = first + (last - first) * (*place / cells);
        }
        for at in also.iter().map(|hertz| libm::log(*hertz)).filter(|at| *at > first && *at < last) {
            places.insert(places.partition_point(|place| *place <= at), at);
        }
        places.dedup();
        let mut before: Option<Knot> = None;
        for at in places {
            let knot = sweep.knot(at)?;
            if let Some(before) = before {
                sweep.fill(before, knot, DEEPEST)?;
            }
            sweep.take(knot)?;
            before = Some(knot);
        }
        Ok(sweep)
    }

    fn knot(&mut self, ln_hertz: f64) -> Result<Knot, Fault> {
        Ok(Knot { ln_hertz, level: self.at(ln_hertz)?, top: false })
    }

    fn take(&mut self, knot: Knot) -> Result<(), Fault> {
        self.refine(&knot)?;
        self.knots.push(knot);
        Ok(())
    }

    /// Halves a cell for as long as its middle is not where the cubic through both ends' levels and slopes has it: a peak
    /// beside a null turns both ends' slopes the same way and would be stepped over.
    fn fill(&mut self, start: Knot, end: Knot, deep: u32) -> Result<(), Fault> {
        let width = end.ln_hertz - start.ln_hertz;
        let middle = self.knot(0.5 * (start.ln_hertz + end.ln_hertz))?;
        let smooth =
            0.5 * (start.level.ln_gain + end.level.ln_gain) + 0.125 * width * (start.level.slope - end.level.slope);
        let plain = (middle.level.ln_gain - smooth).abs() < SMOOTH;
        if !plain && deep > 0 {
            self.fill(start, middle, deep - 1)?;
        }
        self.take(middle)?;
        if !plain && deep > 0 {
            self.fill(middle, end, deep - 1)?;
        }
        Ok(())
    }

    fn at(&mut self, ln_hertz: f64) -> Result<Level, Fault> {
        (self.level)(libm::exp(ln_hertz))
    }

    /// Puts in the extreme between the last knot with a slope and a new one, if there is one.
    fn refine(&mut self, end: &Knot) -> Result<(), Fault> {
        let Some(start) = self.knots.iter().rfind(|knot| knot.steep()).copied() else { return Ok(()) };
        let top = start.level.slope > 0.0;
        if !end.steep() || top == (end.level.slope > 0.0) {
            return Ok(());
        }
        let ends = ((start.ln_hertz, start.level.slope), (end.ln_hertz, end.level.slope));
        let ln_hertz = crossing(ends, |at| Ok(self.at(at)?.slope))?;
        let extreme = Knot { ln_hertz, level: self.at(ln_hertz)?, top };
        let index = self.knots.partition_point(|knot| knot.ln_hertz < ln_hertz);
        self.knots.insert(index, extreme);
        Ok(())
    }

    /// Where most passes: a top, or an end of the range that the response rises towards. Told by the slopes, since on a
    /// plateau the levels differ by rounding alone.
    fn best(&self) -> usize {
        let last = self.knots.len() - 1;
        let steep = |knot: &&Knot| knot.steep();
        let falls_first = self.knots.iter().find(steep).is_none_or(|knot| knot.level.slope < 0.0);
        let rises_last = self.knots.iter().rfind(steep).is_some_and(|knot| knot.level.slope > 0.0);
        let candidate = |at: &usize| self.knots[*at].top || *at == 0 && falls_first || *at == last && rises_last;
        let mut best = None;
        for at in (0..=last).filter(candidate) {
            let higher = |best: usize| self.knots[at].level.ln_gain > self.knots[best].level.ln_gain + EQUAL;
            best = best.filter(|best| !higher(*best)).or(Some(at));
        }
        best.unwrap_or(0)
    }

    /// Where most passes; of equals the lowest frequency.
    #[must_use]
    pub fn greatest(&self) -> Peak {
        let knot = &self.knots[self.best()];
        Peak { hertz: libm::exp(knot.ln_hertz), ln_gain: knot.level.ln_gain }
    }

    /// The nearest frequencies below and above the greatest where the response is `1/√2` of it.
    pub fn corners(&mut self) -> Result<Corners, Fault> {
        let best = self.best();
        let level = self.knots[best].level.ln_gain + libm::log(FRAC_1_SQRT_2);
        let under = |knot: &Knot| knot.level.ln_gain < level;
        let low = self.knots[..best].iter().rposition(under);
        let high = self.knots[best..].iter().position(under).map(|at| at + best);
        Ok(Corners {
            low: low.map(|at| self.cross(at, at + 1, level)).transpose()?,
            high: high.map(|at| self.cross(at - 1, at, level)).transpose()?,
        })
    }

    /// Every frequency at which the response crosses a level (natural logarithm), rising.
    pub fn crossings(&mut self, ln_gain: f64) -> Result<Vec<f64>, Fault> {
        let under = |knot: &Knot| knot.level.ln_gain < ln_gain;
        let cells = (1..self.knots.len()).filter(|at| under(&self.knots[*at]) != under(&self.knots[at - 1]));
        let cells: Vec<usize> = cells.collect();
        cells.into_iter().map(|at| self.cross(at - 1, at, ln_gain)).collect()
    }

    fn cross(&mut self, from: usize, to: usize, ln_gain: f64) -> Result<f64, Fault> {
        let (from, to) = (self.knots[from], self.knots[to]);
        let ends = ((from.ln_hertz, from.level.ln_gain - ln_gain), (to.ln_hertz, to.level.ln_gain - ln_gain));
        Ok(libm::exp(crossing(ends, |at| Ok(self.at(at)?.ln_gain - ln_gain))?))
    }
}
