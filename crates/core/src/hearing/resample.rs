use alloc::vec::Vec;
use core::f64::consts::PI;

/// Zero crossings of the kernel to either side.
const SIDE: usize = 24;

/// Places of the kernel from one to the next.
const FINE: usize = 256;

/// The cut-off, as a share of half the lower rate.
const CUT: f64 = 0.93;

/// Samples at `rate` a second brought to `wanted` a second: the same sound, as far as it fits under half the lower rate.
///
/// A sinc under Blackman's window, flat to 0.87 of half the lower rate and 74 dB down beyond it. Equal rates leave the
/// samples as they are.
#[must_use]
pub fn resample(samples: &[f64], rate: f64, wanted: f64) -> Vec<f64> {
    if rate.to_bits() == wanted.to_bits() {
        return samples.to_vec();
    }
    let kernel = kernel();
    let pace = rate / wanted;
    let count = index(samples.len() as f64 / pace);
    // how much wider than a sinc of the samples' own spacing, and silence before them for as far as it reaches
    let wide = f64::max(pace, 1.0) / CUT;
    let ahead = index(SIDE as f64 * wide) + 1;
    let padded: Vec<f64> = core::iter::repeat_n(0.0, ahead).chain(samples.iter().copied()).collect();
    let taps = |n: usize| Taps::at(&kernel, ahead as f64 + n as f64 * pace, wide);
    let Some((turn, over)) = turn(rate, wanted) else {
        return (0..count).map(|n| taps(n).of(&padded)).collect();
    };
    let taps: Vec<Taps> = (0..turn.min(count)).map(taps).collect();
    (0..count).map(|n| taps[n % turn].of(padded.get(n / turn * over..).unwrap_or_default())).collect()
}

/// More places between two samples than this are worked one by one.
const PLACES: usize = 1024;

/// After how many new samples, and how many old ones, the places between the old ones come again.
fn turn(rate: f64, wanted: f64) -> Option<(usize, usize)> {
    let (old, new) = (index(rate), index(wanted));
    if (old as f64, new as f64) != (rate, wanted) {
        return None;
    }
    let (mut common, mut rest) = (old, new);
    while rest > 0 {
        (common, rest) = (rest, common % rest);
    }
    (new / common <= PLACES).then_some((new / common, old / common))
}

/// What a new sample takes of the old ones around it, from the first of them on.
struct Taps {
    first: usize,
    weights: Vec<f64>,
}

impl Taps {
    fn at(kernel: &[f64], at: f64, wide: f64) -> Self {
        let reach = SIDE as f64 * wide;
        let (first, last) = (index(libm::ceil(at - reach)), index(at + reach));
        let weight = |k: usize| {
            let place = (k as f64 - at).abs() / wide * FINE as f64;
            let below = index(place).min(kernel.len() - 2);
            (kernel[below] + (place - below as f64) * (kernel[below + 1] - kernel[below])) / wide
        };
        Taps { first, weights: (first..=last).map(weight).collect() }
    }

    fn of(&self, samples: &[f64]) -> f64 {
        let within = samples.get(self.first..).unwrap_or_default();
        self.weights.iter().zip(within).map(|(weight, sample)| weight * sample).sum()
    }
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // below zero is the first one
fn index(figure: f64) -> usize {
    figure as usize
}

/// One side of the windowed sinc, from its middle to where it is zero.
fn kernel() -> Vec<f64> {
    let at = |k: usize| {
        let crossings = k as f64 / FINE as f64;
        let turn = PI * crossings / SIDE as f64;
        let window = 0.42 + 0.5 * libm::cos(turn) + 0.08 * libm::cos(2.0 * turn);
        let x = PI * crossings;
        if k == 0 { 1.0 } else { libm::sin(x) / x * window }
    };
    (0..SIDE * FINE + 2).map(at).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The same tone comes out, at rates whose places come again and at one whose do not.
    #[test]
    fn a_tone_stays_a_tone() {
        for rate in [8000.0, 12e3, 44.1e3, 44_100.5, 96e3] {
            let tone: Vec<f64> =
                (0..index(0.1 * rate)).map(|n| libm::sin(2.0 * PI * 700.0 * n as f64 / rate)).collect();
            let out = resample(&tone, rate, 48e3);
            assert!(out.len().abs_diff(4800) <= 1, "{rate}: {}", out.len());
            // without the ends, where the kernel reaches over what there is
            for (n, out) in out.iter().enumerate().skip(400).take(4000) {
                let want = libm::sin(2.0 * PI * 700.0 * n as f64 / 48e3);
                assert!((out - want).abs() < 1e-3, "{rate} at {n}: {out} for {want}");
            }
        }
    }
}
