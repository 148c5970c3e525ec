//! Speech through each position of the switch: how loud, and how well it carries through noise.

use alloc::{string::String, vec::Vec};

use crate::{
    calculators::{Curve, Line, swept::decibels},
    circuit::{Fault, NodeId, Response},
    hearing::{BANDS, QUIET_DB, SPEECH, Spectrum, a_weighting_db, exact_mid_band, intelligibility, pink, total_db},
    quantity::Unit,
    value::{Inputs, Scale},
};

/// How much louder than the speech heavy noise is, in dB; band noise is as loud.
const HEAVY_DB: f64 = 6.0;

/// Speech of normal effort through one position: dB in one hertz of each band, microphone emf to load.
pub(super) struct Speech(Spectrum);

impl Speech {
    /// `None` where nothing passes.
    pub fn through(response: &mut Response, output: NodeId) -> Result<Option<Self>, Fault> {
        let mut levels = SPEECH;
        for (level, band) in levels.iter_mut().zip(&BANDS) {
            *level += decibels(response, output, band.hertz)?;
        }
        Ok(levels.iter().all(|level| level.is_finite()).then_some(Speech(levels)))
    }

    /// All bands together, in dB.
    pub fn level_db(&self) -> f64 {
        total_db(in_bands(&self.0))
    }

    /// The same, A-weighted.
    pub fn loudness_db(&self) -> f64 {
        total_db(in_bands(&self.0).zip(&BANDS).map(|(level, band)| level + a_weighting_db(exact_mid_band(band.hertz))))
    }

    /// The same speech at the power of speech of normal effort, as a receiver passes it.
    fn received(&self, highest: f64) -> Spectrum {
        let back = normal_db() - self.level_db();
        core::array::from_fn(|k| if BANDS[k].within(highest) { self.0[k] + back } else { QUIET_DB })
    }

    /// ANSI S3.5's index at equal speech power.
    pub fn intelligibility(&self, inputs: &Inputs) -> f64 {
        let highest = inputs.number("receiver_hertz");
        intelligibility(&self.received(highest), &noise(inputs))
    }
}

/// Speech of normal effort a metre before the lips, in dB SPL, all bands together.
pub(super) fn normal_db() -> f64 {
    total_db(in_bands(&SPEECH))
}

fn in_bands(spectrum: &Spectrum) -> impl Iterator<Item = f64> {
    spectrum.iter().zip(&BANDS).map(|(level, band)| level + band.bandwidth_db)
}

/// The noise in each band, dB in one hertz.
fn noise(inputs: &Inputs) -> Spectrum {
    let highest = inputs.number("receiver_hertz");
    let speech = normal_db();
    match inputs.text("noise") {
        "band" => pink(speech, highest),
        "heavy" => pink(speech + HEAVY_DB, highest),
        _ => [QUIET_DB; BANDS.len()],
    }
}

/// Speech in each band that the receiver passes, position by position, and the noise beside it.
pub(super) fn drawn<'a>(positions: impl Iterator<Item = (&'a str, &'a Option<Speech>)>, inputs: &Inputs) -> Curve {
    let highest = inputs.number("receiver_hertz");
    let line = |spectrum: &Spectrum| {
        let kept = in_bands(spectrum).zip(&BANDS).filter(|(_, band)| band.within(highest));
        let (y, x) = kept.map(|(level, band)| (level, band.hertz)).unzip();
        Line { x, y, ..Line::default() }
    };
    let mut lines = Vec::new();
    for (index, (label, speech)) in positions.enumerate() {
        let shown = speech.as_ref().map(|speech| line(&speech.received(highest))).unwrap_or_default();
        lines.push(Line { label: String::from(label), figure: Some(index as f64 + 1.0), ..shown });
    }
    if inputs.text("noise") != "quiet" {
        lines.push(Line { label: String::from("noise"), ..line(&noise(inputs)) });
    }
    Curve { key: "speech", x: (Unit::Hertz, Scale::Log), y: (Unit::Decibel, Scale::Linear), lines, marks: Vec::new() }
}
