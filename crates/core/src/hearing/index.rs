//! The speech intelligibility index of ANSI S3.5-1997, one-third octaves.

use super::bands::{BANDS, COUNT, Spectrum, decibels, energy};

/// How a band is heard.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Audibility {
    /// Noise with what lower bands add by spreading upward, dB in one hertz.
    pub masking_db: f64,
    /// The louder of masking and what the ear itself adds.
    pub disturbance_db: f64,
    /// What is left of the band at a level so high that the ear distorts; 1 at ordinary levels.
    pub distortion: f64,
    /// The share of the band's speech that stands above the disturbance, 0 to 1.
    pub heard: f64,
}

impl Audibility {
    /// Both together.
    #[must_use]
    pub fn share(&self) -> f64 {
        self.distortion * self.heard
    }
}

/// How a band of `speech` dB is heard over a disturbance, where speech of normal effort has `normal`.
#[must_use]
pub fn audible(speech: f64, normal: f64, disturbance: f64) -> (f64, f64) {
    let distortion = (1.0 - (speech - normal - 10.0) / 160.0).clamp(0.0, 1.0);
    let heard = ((speech - disturbance + 15.0) / 30.0).clamp(0.0, 1.0);
    (distortion, heard)
}

/// Each band of speech in noise, for an ear whose threshold is `threshold` dB above normal. Levels are those of one
/// hertz, dB SPL.
#[must_use]
pub fn worked(speech: &Spectrum, noise: &Spectrum, threshold: &Spectrum) -> [Audibility; COUNT] {
    let masker: Spectrum = core::array::from_fn(|k| f64::max(noise[k], speech[k] - 24.0));
    let slope: Spectrum = core::array::from_fn(|k| -80.0 + 0.6 * (masker[k] + decibels(BANDS[k].hertz) - 6.353));
    core::array::from_fn(|k| {
        let masking_db = if k == 0 {
            masker[0]
        } else {
            let spread = (0..k).map(|lower| {
                let apart = libm::log10(0.89 * BANDS[k].hertz / BANDS[lower].hertz);
                energy(masker[lower] + 3.32 * slope[lower] * apart)
            });
            decibels(energy(noise[k]) + spread.sum::<f64>())
        };
        let disturbance_db = f64::max(masking_db, BANDS[k].internal_noise_db + threshold[k]);
        let (distortion, heard) = audible(speech[k], BANDS[k].speech_db, disturbance_db);
        Audibility { masking_db, disturbance_db, distortion, heard }
    })
}

/// The index, 0 to 1, for an ear of normal hearing: how much of what makes speech intelligible is heard.
///
/// # Source
/// ANSI S3.5-1997, one-third octave band procedure. It was made for noise that does not follow the speech and for
/// speech that is not otherwise distorted; it ranks positions of a switch, and says nothing of one voice or one ear.
#[must_use]
pub fn intelligibility(speech: &Spectrum, noise: &Spectrum) -> f64 {
    let bands = worked(speech, noise, &[0.0; COUNT]);
    bands.iter().zip(&BANDS).map(|(audibility, band)| band.importance * audibility.share()).sum()
}
