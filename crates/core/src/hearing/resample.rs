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
    // how much wider than a sinc of the samples' own spacing
    let wide = f64::max(pace, 1.0) / CUT;
    let reach = SIDE as f64 * wide;
    let count = index(samples.len() as f64 / pace);
    let value = |n: usize| {
        let at = n as f64 * pace;
        let (first, end) = (index(libm::ceil(at - reach)), index(at + reach) + 1);
        let within = samples.get(first..end.min(samples.len())).unwrap_or_default();
        let weighed = within.iter().enumerate().map(|(k, sample)| {
            let place = ((first + k) as f64 - at).abs() / wide * FINE as f64;
            let below = index(place).min(kernel.len() - 2);
            sample * (kernel[below] + (place - below as f64) * (kernel[below + 1] - kernel[below]))
        });
        weighed.sum::<f64>() / wide
    };
    (0..count).map(value).collect()
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
