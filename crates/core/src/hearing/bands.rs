/// Number of one-third octaves from 160 to 8000 Hz.
pub const COUNT: usize = 18;

/// A level in dB for each of [`BANDS`].
pub type Spectrum = [f64; COUNT];

/// A band with nothing in it, in dB of spectrum level: as ANSI S3.5 writes silence.
pub const QUIET_DB: f64 = -50.0;

/// One one-third octave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// Nominal middle, in hertz.
    pub hertz: f64,
    /// Its share of what makes average speech intelligible; the shares sum to 1.
    pub importance: f64,
    /// Ten times the log of its width in hertz: from the level of one hertz to that of the band.
    pub bandwidth_db: f64,
    /// Speech of normal effort at 1 m, dB SPL in one hertz.
    pub speech_db: f64,
    /// What the ear itself puts into the band, dB SPL in one hertz.
    pub internal_noise_db: f64,
}

const fn band(hertz: f64, importance: f64, bandwidth_db: f64, speech_db: f64, internal_noise_db: f64) -> Band {
    Band { hertz, importance, bandwidth_db, speech_db, internal_noise_db }
}

/// The one-third octaves of speech.
///
/// Source: ANSI S3.5-1997, Table 3 (average speech), as several public transcriptions agree on it.
pub const BANDS: [Band; COUNT] = [
    band(160.0, 0.0083, 15.65, 32.41, 0.6),
    band(200.0, 0.0095, 16.65, 34.48, -1.7),
    band(250.0, 0.015, 17.65, 34.75, -3.9),
    band(315.0, 0.0289, 18.65, 33.98, -6.1),
    band(400.0, 0.044, 19.65, 34.59, -8.2),
    band(500.0, 0.0578, 20.65, 34.27, -9.7),
    band(630.0, 0.0653, 21.65, 32.06, -10.8),
    band(800.0, 0.0711, 22.65, 28.3, -11.9),
    band(1000.0, 0.0818, 23.65, 25.01, -12.5),
    band(1250.0, 0.0844, 24.65, 23.0, -13.5),
    band(1600.0, 0.0882, 25.65, 20.15, -15.4),
    band(2000.0, 0.0898, 26.65, 17.32, -17.7),
    band(2500.0, 0.0868, 27.65, 13.18, -21.2),
    band(3150.0, 0.0844, 28.65, 11.55, -24.2),
    band(4000.0, 0.0771, 29.65, 9.33, -25.9),
    band(5000.0, 0.0527, 30.65, 5.31, -23.6),
    band(6300.0, 0.0364, 31.65, 2.59, -15.8),
    band(8000.0, 0.0185, 32.65, 1.13, -7.1),
];

/// Speech of normal effort, dB SPL in one hertz of each band.
pub const SPEECH: Spectrum = {
    let mut speech = [0.0; COUNT];
    let mut k = 0;
    while k < COUNT {
        speech[k] = BANDS[k].speech_db;
        k += 1;
    }
    speech
};

/// Sum of the energies of levels, in dB; minus infinity for none.
#[must_use]
pub fn total_db(levels: impl IntoIterator<Item = f64>) -> f64 {
    decibels(levels.into_iter().map(energy).sum())
}

/// From dB to energy, and back.
pub(super) fn energy(db: f64) -> f64 {
    libm::pow(10.0, 0.1 * db)
}

pub(super) fn decibels(energy: f64) -> f64 {
    10.0 * libm::log10(energy)
}

/// Pink noise, equally loud in every band up to `highest` hertz and absent above, of `total` dB in all: spectrum levels.
///
/// A band counts as kept up to a thousandth above its nominal middle, so that a receiver of 4000 Hz has the 4000 Hz
/// band for certain.
#[must_use]
pub fn pink(total: f64, highest: f64) -> Spectrum {
    let kept = BANDS.iter().filter(|band| band.within(highest)).count().max(1);
    let each = total - decibels(kept as f64);
    BANDS.map(|band| if band.within(highest) { each - band.bandwidth_db } else { QUIET_DB })
}

impl Band {
    /// Whether a receiver that passes up to `highest` hertz passes the band.
    #[must_use]
    pub fn within(&self, highest: f64) -> bool {
        self.hertz <= highest * 1.001
    }
}
