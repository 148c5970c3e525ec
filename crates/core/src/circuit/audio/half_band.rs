//! Twice the samples and back: a half-band filter of 47 taps.

use core::f64::consts::PI;

/// Taps to either side of the middle one; every second is zero.
const SIDE: usize = 23;

/// The odd taps of one side.
const TAPS: usize = SIDE.div_ceil(2);

/// Both filters together, in samples of the lower rate.
pub(super) const DELAY: usize = SIDE;

/// Kaiser's parameter: about 75 dB down, flat to 0.39 of the lower rate.
const BETA: f64 = 7.0;

/// A low-pass at a quarter of the higher rate, with what it remembers.
///
/// Source: J. F. Kaiser, "Nonrecursive digital filter design using the I0-sinh window function", ISCAS (1974), from memory.
#[derive(Clone, Debug)]
pub(super) struct HalfBand {
    /// Of the samples 1, 3, … 23 away from the middle.
    taps: [f64; TAPS],
    /// The last samples of the branch that is filtered, newest first from `newest`; they stand twice, so that they are
    /// one run wherever they begin.
    filtered: [f64; 4 * TAPS],
    newest: usize,
    /// Of the branch that is only delayed, the oldest at `oldest`.
    delayed: [f64; TAPS],
    oldest: usize,
}

impl HalfBand {
    pub(super) fn new() -> Self {
        let tap = |k: usize| {
            let away = (2 * k + 1) as f64;
            let share = away / (SIDE as f64 + 1.0);
            libm::sin(0.5 * PI * away) / (PI * away) * bessel(BETA * crate::root::sqrt(1.0 - share * share))
                / bessel(BETA)
        };
        let mut taps: [f64; TAPS] = core::array::from_fn(tap);
        // at rest exactly as much comes out as goes in
        let sum: f64 = taps.iter().sum();
        for tap in &mut taps {
            *tap *= 0.25 / sum;
        }
        HalfBand { taps, filtered: [0.0; 4 * TAPS], newest: 0, delayed: [0.0; TAPS], oldest: 0 }
    }

    fn take(&mut self, sample: f64) {
        self.newest = self.newest.checked_sub(1).unwrap_or(2 * TAPS - 1);
        self.filtered[self.newest] = sample;
        self.filtered[self.newest + 2 * TAPS] = sample;
    }

    fn between(&self) -> f64 {
        let (newer, older) = self.filtered[self.newest..self.newest + 2 * TAPS].split_at(TAPS);
        let pairs = newer.iter().rev().zip(older);
        self.taps.iter().zip(pairs).map(|(tap, (newer, older))| tap * (newer + older)).sum()
    }

    /// Two samples for one.
    pub(super) fn doubled(&mut self, sample: f64) -> (f64, f64) {
        self.take(sample);
        (2.0 * self.between(), self.filtered[self.newest + TAPS - 1])
    }

    /// One sample for two.
    pub(super) fn halved(&mut self, first: f64, second: f64) -> f64 {
        self.take(first);
        let middle = core::mem::replace(&mut self.delayed[self.oldest], second);
        self.oldest = (self.oldest + 1) % TAPS;
        self.between() + 0.5 * middle
    }
}

/// The modified Bessel function I0, by its series.
fn bessel(x: f64) -> f64 {
    let (mut sum, mut term) = (1.0, 1.0);
    for k in 1..=30_u32 {
        let half = 0.5 * x / f64::from(k);
        term *= half * half;
        sum += term;
    }
    sum
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A tone below 0.39 of the lower rate comes back as it went in, [`DELAY`] samples later.
    #[test]
    fn a_tone_comes_back_through_both_filters() {
        for share in [0.02, 0.1, 0.25, 0.37] {
            let (mut up, mut down) = (HalfBand::new(), HalfBand::new());
            let tone = |n: f64| libm::sin(2.0 * PI * share * n);
            let out: alloc::vec::Vec<f64> = (0..200)
                .map(|n| {
                    let (first, second) = up.doubled(tone(f64::from(n)));
                    down.halved(first, second)
                })
                .collect();
            for (n, out) in out.iter().enumerate().skip(80) {
                let want = tone((n - DELAY) as f64);
                assert!((out - want).abs() < 1e-3, "{share} at {n}: {out} for {want}");
            }
        }
    }
}
