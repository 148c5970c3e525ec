//! Random voice stages and clips for the measures of the rendering.

use std::f64::consts::PI;

use super::generate::Chance;
use tagstrip_core::{
    calculators::{Rendered, render},
    tube,
    value::Value,
};

/// Samples a second of every clip here.
pub const RATE: f64 = 48e3;

/// Where knobs stand: anywhere, or one of the four pairs of end stops.
fn knobs(chance: &mut Chance, number: usize) -> (f64, f64) {
    match number % 6 {
        0 => (0.0, 0.0),
        1 => (1.0, 1.0),
        2 => (0.0, 1.0),
        3 => (1.0, 0.0),
        _ => (chance.unit(), chance.unit()),
    }
}

/// A stage of ordinary parts at random, biased so that its grid rests well below its cathode; two positions.
pub fn stage(chance: &mut Chance, number: usize) -> Value {
    let tubes = tube::tubes();
    let row = tubes[chance.below(tubes.len())].name;
    let mut between = |least: f64, most: f64| least * (most / least).powf(chance.unit());
    let plate_ohms = between(22e3, 330e3);
    let pairs = [
        ("supply_volts", between(120.0, 350.0)),
        ("plate_ohms", plate_ohms),
        ("cathode_ohms", plate_ohms * between(0.012, 0.05)),
        ("cathode_farads", if number.is_multiple_of(5) { 0.0 } else { between(1e-6, 50e-6) }),
        ("grid_ohms", between(220e3, 5e6)),
        ("decoupling_ohms", if number.is_multiple_of(3) { between(5e3, 50e3) } else { 0.0 }),
        ("decoupling_farads", between(2e-6, 20e-6)),
        ("microphone_ohms", between(200.0, 300e3)),
        ("level_ohms", between(100e3, 1e6)),
        ("load_ohms", between(47e3, 2e6)),
        ("load_farads", between(10e-12, 500e-12)),
    ];
    let mut record: Vec<(String, Value)> =
        pairs.iter().map(|(key, figure)| ((*key).into(), (*figure).into())).collect();
    let big = between(5e-9, 100e-9);
    let positions = [big, big * between(0.02, 0.3)].map(|farads| Value::record([("farads", farads.into())]));
    let level = 0.2 + 0.8 * chance.unit();
    let (bass, treble) = knobs(chance, number);
    record.push(("tube".into(), row.into()));
    record.push(("positions".into(), Value::List(positions.into())));
    record.push(("bass".into(), bass.into()));
    record.push(("treble".into(), treble.into()));
    record.push(("level".into(), level.into()));
    Value::Record(record)
}

/// The same inputs with one more, or one changed.
pub fn with(inputs: &Value, key: &str, value: Value) -> Value {
    let Value::Record(pairs) = inputs else { return inputs.clone() };
    let mut pairs: Vec<_> = pairs.iter().filter(|(known, _)| known != key).cloned().collect();
    pairs.push((key.into(), value));
    Value::Record(pairs)
}

/// A tone of peak 1.
pub fn tone(hertz: f64, seconds: f64) -> Vec<f32> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a few seconds
    let count = (seconds * RATE) as usize;
    #[allow(clippy::cast_possible_truncation)] // sound
    (0..count).map(|n| (2.0 * PI * hertz * n as f64 / RATE).sin() as f32).collect()
}

/// Something like talk: bursts of a voice's harmonics with a hiss, and pauses.
pub fn babble(seed: u64, seconds: f64) -> Vec<f32> {
    let mut chance = Chance::new(seed);
    let mut clip = tone(100.0, seconds);
    let (mut pitch, mut loud, mut phase) = (120.0, 0.0, 0.0_f64);
    for (n, sample) in clip.iter_mut().enumerate() {
        if n % 4800 == 0 {
            pitch = 90.0 + 120.0 * chance.unit();
            let pause = n > 0 && chance.one_in(4);
            loud = if pause { 0.0 } else { 0.1 + 0.9 * chance.unit() };
        }
        phase += pitch / RATE;
        let voiced: f64 = (1..=20).map(|h| (2.0 * PI * phase * f64::from(h)).sin() / f64::from(h)).sum();
        #[allow(clippy::cast_possible_truncation)] // sound
        let value = (loud * (0.4 * voiced + 0.1 * (chance.unit() - 0.5))) as f32;
        *sample = value;
    }
    clip
}

/// A clip through a position, which must not be refused.
///
/// # Errors
/// What was refused.
pub fn through(inputs: &Value, clip: &[f32], position: f64, linear: bool) -> Result<Rendered, String> {
    let how = Value::record([("position", position.into()), ("linear", linear.into())]);
    render(inputs, clip, RATE, &how).map_err(|problems| format!("{problems:?}"))
}

/// Peak of the part of a wave at one frequency, by least squares over what follows `skip` seconds, `span` seconds long.
pub fn amplitude(samples: &[f32], hertz: f64, skip: f64, span: f64) -> f64 {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // within the clip
    let (first, count) = ((skip * RATE) as usize, (span * RATE) as usize);
    // sine, cosine and a level under Hann's window: other tones and slow drift fall out
    let (mut ss, mut cc, mut sc, mut sy, mut cy) = (0.0, 0.0, 0.0, 0.0, 0.0);
    let window = |n: usize| 0.5 - 0.5 * (2.0 * PI * (n as f64 + 0.5) / count as f64).cos();
    let taken = &samples[first..first + count];
    let total: f64 = (0..count).map(window).sum();
    let mean: f64 = taken.iter().enumerate().map(|(n, y)| window(n) * f64::from(*y)).sum::<f64>() / total;
    for (n, y) in taken.iter().enumerate() {
        let (s, c) = (2.0 * PI * hertz * n as f64 / RATE).sin_cos();
        let (w, y) = (window(n), f64::from(*y) - mean);
        ss += w * s * s;
        cc += w * c * c;
        sc += w * s * c;
        sy += w * s * y;
        cy += w * c * y;
    }
    let determinant = ss * cc - sc * sc;
    let (a, b) = ((sy * cc - cy * sc) / determinant, (cy * ss - sy * sc) / determinant);
    a.hypot(b)
}
