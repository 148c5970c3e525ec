use alloc::vec::Vec;

/// A clip's frames, in seconds, by which speech is told from pauses.
const FRAME: f64 = 0.05;

/// A frame this far under the loudest is a pause, in dB.
const PAUSE_DB: f64 = 25.0;

/// Rms of a clip where it speaks: over the frames of 50 ms within 25 dB of the loudest; 0 for silence.
///
/// What a meter shows while someone talks, and for a steady tone its rms. Common practice, no source; the telephone's
/// method (ITU-T P.56) is nearer and longer.
#[must_use]
pub fn spoken_rms(samples: &[f64], rate: f64) -> f64 {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a few thousand
    let frame = ((FRAME * rate) as usize).max(1);
    let power = |frame: &[f64]| frame.iter().map(|sample| sample * sample).sum::<f64>() / frame.len() as f64;
    let powers: Vec<(f64, usize)> = samples.chunks(frame).map(|frame| (power(frame), frame.len())).collect();
    let loudest = powers.iter().fold(0.0, |most, (power, _)| f64::max(most, *power));
    let least = loudest * libm::pow(10.0, -0.1 * PAUSE_DB);
    let spoken = powers.iter().filter(|(power, _)| *power >= least && *power > 0.0);
    let (energy, count) = spoken.fold((0.0, 0), |(sum, count), (power, len)| (sum + power * *len as f64, count + len));
    if count == 0 { 0.0 } else { crate::root::sqrt(energy / count as f64) }
}
