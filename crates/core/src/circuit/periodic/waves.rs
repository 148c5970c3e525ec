//! One period in even samples: its harmonics, and its extremes between the samples.

use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::super::Complex;

/// Steps towards an extreme; three or four are the rule.
const STEPS: usize = 12;

/// A number of samples, with the turns of the unit circle they stand at.
#[derive(Clone, Debug)]
pub(super) struct Waves {
    turns: Vec<Complex>,
}

/// A greatest or least value, and how it follows each sample.
#[derive(Clone, Debug)]
pub(super) struct Extreme {
    pub value: f64,
    pub by_sample: Vec<f64>,
}

impl Waves {
    pub(super) fn new(samples: usize) -> Self {
        let turn = |n: usize| {
            let angle = 2.0 * PI * n as f64 / samples as f64;
            Complex::new(libm::cos(angle), libm::sin(angle))
        };
        Waves { turns: (0..samples).map(turn).collect() }
    }

    pub(super) fn samples(&self) -> usize {
        self.turns.len()
    }

    /// The highest harmonic that the samples tell from the lower ones; the one at half the samples is left out.
    pub(super) fn highest(&self) -> usize {
        (self.samples() - 1) / 2
    }

    /// The unit circle at a harmonic's angle of a sample.
    pub(super) fn turn(&self, sample: usize, harmonic: usize) -> Complex {
        self.turns[sample * harmonic % self.samples()]
    }

    /// Amplitude of a harmonic; the mean for harmonic 0.
    pub(super) fn harmonic(&self, wave: &[f64], harmonic: usize) -> Complex {
        let sum = wave
            .iter()
            .enumerate()
            .fold(Complex::ZERO, |sum, (sample, value)| sum + self.turn(sample, harmonic).conjugate().scale(*value));
        sum.scale(if harmonic == 0 { 1.0 } else { 2.0 } / self.samples() as f64)
    }

    /// What each sample of a current makes of each sample of a voltage, from the impedances at the harmonics from 0 up.
    ///
    /// Laid so that the window of `samples` that begins at `samples - 1 - n` holds, sample by sample of the current, its
    /// weight in sample `n` of the voltage.
    pub(super) fn kernel(&self, impedances: &[Complex]) -> Vec<f64> {
        let samples = self.samples();
        let by_lag: Vec<f64> = (0..samples)
            .map(|lag| {
                let sum: f64 = impedances.iter().enumerate().skip(1).map(|(h, z)| (*z * self.turn(lag, h)).re).sum();
                (impedances.first().map_or(0.0, |z| z.re) + 2.0 * sum) / samples as f64
            })
            .collect();
        (0..2 * samples - 1).map(|at| by_lag[(2 * samples - 1 - at) % samples]).collect()
    }

    /// The greatest value of the wave through the samples that has no more harmonics than they tell.
    pub(super) fn greatest(&self, wave: &[f64]) -> Extreme {
        let best = (0..wave.len()).fold(0, |best, sample| if wave[sample] > wave[best] { sample } else { best });
        let harmonics: Vec<Complex> = (0..=self.highest()).map(|h| self.harmonic(wave, h)).collect();
        let start = 2.0 * PI * best as f64 / self.samples() as f64;
        let farthest = 2.0 * PI / self.samples() as f64;
        let mut angle = start;
        for _ in 0..STEPS {
            let (_, slope, bend) = along(&harmonics, angle);
            // A sample is no minimum of the wave, but the wave may be straight there.
            let step = if bend < 0.0 { -slope / bend } else { libm::copysign(farthest, slope) };
            let next = (angle + step).clamp(start - farthest, start + farthest);
            let moved = (next - angle).abs();
            angle = next;
            if moved < 1e-12 {
                break;
            }
        }
        let (value, _, _) = along(&harmonics, angle);
        Extreme { value, by_sample: self.weights(angle) }
    }

    /// The least value, likewise.
    pub(super) fn least(&self, wave: &[f64]) -> Extreme {
        let turned: Vec<f64> = wave.iter().map(|value| -value).collect();
        let Extreme { value, by_sample } = self.greatest(&turned);
        // The value through the samples is linear in them, so the weights stay.
        Extreme { value: -value, by_sample }
    }

    /// Weight of each sample in the wave's value at an angle.
    fn weights(&self, angle: f64) -> Vec<f64> {
        let circle = powers(angle, self.highest());
        let mut weights = vec![0.0; self.samples()];
        for (sample, weight) in weights.iter_mut().enumerate() {
            let sum: f64 =
                circle.iter().enumerate().skip(1).map(|(h, at)| (*at * self.turn(sample, h).conjugate()).re).sum();
            *weight = (1.0 + 2.0 * sum) / self.samples() as f64;
        }
        weights
    }
}

/// Value, slope and curvature at an angle.
fn along(harmonics: &[Complex], angle: f64) -> (f64, f64, f64) {
    let circle = powers(angle, harmonics.len() - 1);
    let mut sums = (0.0, 0.0, 0.0);
    for (h, (amplitude, at)) in harmonics.iter().zip(&circle).enumerate() {
        let (here, order) = (*amplitude * *at, h as f64);
        sums.0 += here.re;
        sums.1 -= order * here.im;
        sums.2 -= order * order * here.re;
    }
    sums
}

/// The unit circle at an angle times 0, 1, 2 … `highest`.
fn powers(angle: f64, highest: usize) -> Vec<Complex> {
    let once = Complex::new(libm::cos(angle), libm::sin(angle));
    let mut here = Complex::real(1.0);
    let mut powers = Vec::with_capacity(highest + 1);
    for _ in 0..=highest {
        powers.push(here);
        here = here * once;
    }
    powers
}
