//! What is in a stretch of sound, band by band.

use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::{bands::decibels, weighting::a_weighting_db};

/// Samples of a piece; at 48 kHz its lines are 11.7 Hz apart.
const PIECE: usize = 4096;

/// Nominal middles of the bands that are told, in hertz.
pub const HEARD: [f64; 21] = [
    100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0, 630.0, 800.0, 1000.0, 1250.0, 1600.0, 2000.0, 2500.0,
    3150.0, 4000.0, 5000.0, 6300.0, 8000.0, 10000.0,
];

/// The mean square of a sound, in dB.
#[derive(Clone, Debug, PartialEq)]
pub struct Heard {
    /// Of all, A-weighted.
    pub loudness_db: f64,
    /// In each one-third octave of [`HEARD`].
    pub bands_db: [f64; HEARD.len()],
}

/// Analyses a sound of `rate` samples a second: the mean of overlapping pieces under Hann's window.
///
/// # Source
/// P. D. Welch, IEEE Trans. Audio Electroacoust. 15 (1967), from memory.
#[must_use]
pub fn heard(samples: &[f32], rate: f64) -> Heard {
    let window: Vec<f64> = (0..PIECE).map(|n| 0.5 - 0.5 * libm::cos(2.0 * PI * n as f64 / PIECE as f64)).collect();
    let turns: Vec<(f64, f64)> = (0..PIECE / 2)
        .map(|n| 2.0 * PI * n as f64 / PIECE as f64)
        .map(|turn| (libm::cos(turn), -libm::sin(turn)))
        .collect();
    let mut power = vec![0.0; PIECE / 2];
    let mut first = 0;
    while first == 0 || first + PIECE / 2 < samples.len() {
        let taken = samples.iter().skip(first).take(PIECE).map(|sample| f64::from(*sample));
        let mut wave: Vec<(f64, f64)> =
            taken.chain(core::iter::repeat(0.0)).zip(&window).map(|(sample, window)| (sample * window, 0.0)).collect();
        transform(&mut wave, &turns);
        for (sum, (re, im)) in power.iter_mut().zip(&wave) {
            *sum += re * re + im * im;
        }
        first += PIECE / 2;
    }
    // half-overlapped Hann: each sample's square is counted 3/4 times in all; two lines, above and below zero
    let scale = 2.0 / (0.75 * PIECE as f64 * samples.len().max(1) as f64);
    let line = rate / PIECE as f64;
    let mut bands = [0.0; HEARD.len()];
    let mut weighted = 0.0;
    for (k, power) in power.iter().enumerate().skip(2) {
        let hertz = k as f64 * line;
        weighted += power * scale * libm::pow(10.0, 0.1 * a_weighting_db(hertz));
        let band = 10.0 * libm::log10(hertz) - 19.5;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // looked at before
        if let Some(sum) = (band >= 0.0).then_some(band as usize).and_then(|band| bands.get_mut(band)) {
            *sum += power * scale;
        }
    }
    Heard { loudness_db: decibels(weighted), bands_db: bands.map(decibels) }
}

/// The discrete Fourier transform in place.
///
/// # Source
/// J. W. Cooley, J. W. Tukey, Math. Comput. 19 (1965).
fn transform(wave: &mut [(f64, f64)], turns: &[(f64, f64)]) {
    let size = wave.len();
    let shift = size.leading_zeros() + 1;
    for k in 0..size {
        let mirrored = k.reverse_bits() >> shift;
        if mirrored > k {
            wave.swap(k, mirrored);
        }
    }
    let mut half = 1;
    while half < size {
        for piece in wave.chunks_exact_mut(2 * half) {
            let (low, high) = piece.split_at_mut(half);
            for ((a, b), (re, im)) in low.iter_mut().zip(high).zip(turns.iter().step_by(size / (2 * half))) {
                let turned = (b.0 * re - b.1 * im, b.0 * im + b.1 * re);
                (*a, *b) = ((a.0 + turned.0, a.1 + turned.1), (a.0 - turned.0, a.1 - turned.1));
            }
        }
        half *= 2;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A tone of 1 V peak is −3.01 dB in its own band, and as loud at 1 kHz; at 100 Hz 19.1 dB less (IEC 61672-1).
    #[test]
    fn a_tone_is_in_its_band_and_weighed() {
        for (hertz, weight) in [(1000.0, 0.0), (100.0, -19.1), (2500.0, 1.3)] {
            #[allow(clippy::cast_possible_truncation)] // sound
            let tone: Vec<f32> =
                (0..96_000).map(|n| libm::sin(2.0 * PI * hertz * f64::from(n) / 48e3) as f32).collect();
            let heard = heard(&tone, 48e3);
            let band = HEARD.iter().position(|middle| (middle - hertz).abs() < 1.0).unwrap();
            assert!((heard.bands_db[band] + 3.01).abs() < 0.3, "{hertz}: {:?}", heard.bands_db);
            assert!((heard.loudness_db + 3.01 - weight).abs() < 0.2, "{hertz}: {}", heard.loudness_db);
        }
    }
}
