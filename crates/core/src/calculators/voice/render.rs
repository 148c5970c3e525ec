//! A clip through the whole circuit of one position, the tube not linear.

use alloc::{vec, vec::Vec};

use super::{INPUTS, netlist::build};
use crate::{
    calculators::{solved, triode::Rest},
    circuit::Audio,
    hearing::{Heard, heard, resample, spoken_rms},
    value::{Inputs, Problem, Value, check, code},
};

/// Samples a second that come out.
const RATE: f64 = 48e3;

/// Rates that a clip may have.
const RATES: (f64, f64) = (4e3, 384e3);

/// No more of a clip is taken, in seconds.
const LONGEST: f64 = 20.0;

/// What is kept after the clip's end for what still rings, in seconds.
const TAIL: f64 = 0.25;

/// A clip whose spoken rms is below this is silence: under the least step of sixteen bits.
const SILENCE: f64 = 1e-5;

/// How a clip is sent through.
#[derive(Clone, Copy, Debug)]
struct How {
    /// From 0.
    position: usize,
    seconds: f64,
    linear: bool,
}

/// A clip at the load.
#[derive(Clone, Debug)]
pub struct Rendered {
    /// Volts at the load beyond its dc point.
    pub samples: Vec<f32>,
    /// Samples a second.
    pub rate: f64,
    /// The largest of the samples either way.
    pub peak_volts: f64,
    /// Whether a grid reached its cathode's volts, where its current begins to bend the wave.
    pub grid_current: bool,
    /// How loud, and what is in it.
    pub heard: Heard,
    /// The most tries that one step took, and how many steps needed the bracket.
    pub tries: (u32, u32),
}

/// Sends a clip, whatever the scale of its samples, through one position: its spoken rms becomes `microphone_volts`.
///
/// `how` may hold `position` (from 1), `seconds` (how much of the clip is taken, 20 at most) and `linear` (the tube as
/// a straight line and no grid current, for a first look).
///
/// # Errors
/// The inputs' problems; those of `position` and `seconds`; `clip.rate` out of its range; `clip.samples` with nothing in
/// it (`too_few`), with what is no figure (`not_a_figure`) or silent (`silent`).
pub fn render(inputs: &Value, samples: &[f32], rate: f64, how: &Value) -> Result<Rendered, Vec<Problem>> {
    let mut problems = Vec::new();
    let mut kept = |found: Result<f64, Vec<Problem>>| found.unwrap_or_else(|more| (problems.extend(more), 1.0).1);
    let rate = kept(bounded("clip.rate", Some(rate), RATES));
    let seconds = kept(bounded("seconds", figure(how, "seconds", LONGEST), (1.0 / RATE, LONGEST)));
    let inputs = match check(INPUTS, inputs) {
        Ok(inputs) => inputs,
        Err(wrong) => {
            problems.extend(wrong);
            return Err(problems);
        }
    };
    let count = inputs.items("positions").len();
    let at = kept(position(figure(how, "position", 1.0), count));
    if !problems.is_empty() {
        return Err(problems);
    }
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // one of the positions
    let how = How { position: at as usize - 1, seconds, linear: how.get("linear") == Some(&Value::Flag(true)) };
    through(&inputs, samples, rate, how)
}

fn through(inputs: &Inputs, samples: &[f32], rate: f64, how: How) -> Result<Rendered, Vec<Problem>> {
    let emf = emf(samples, rate, how.seconds, inputs.number("microphone_volts"))?;
    let (amplifier, output) = build(inputs, how.position);
    let rest = Rest::of(&amplifier)?;
    let audio = solved(amplifier.circuit.audio(&rest.dc, output, RATE))?;
    let mut audio = if how.linear { audio.linear() } else { audio };
    let mut out = Vec::with_capacity(emf.len());
    let mut peak_volts: f64 = 0.0;
    #[allow(clippy::cast_possible_truncation)] // a sample of sound
    for (n, emf) in emf.iter().copied().chain([0.0; Audio::DELAY]).enumerate() {
        let volts = audio.sample(emf);
        if n >= Audio::DELAY {
            peak_volts = peak_volts.max(volts.abs());
            out.push(volts as f32);
        }
    }
    let grid_current = audio.highest_grid() >= 0.0;
    let heard = heard(&out, RATE);
    Ok(Rendered { heard, samples: out, rate: RATE, peak_volts, grid_current, tries: audio.tries() })
}

/// A figure that may be left out; nothing where it is none.
fn figure(how: &Value, key: &str, usual: f64) -> Option<f64> {
    match how.get(key) {
        None | Some(Value::Null) => Some(usual),
        Some(given) => given.number(),
    }
}

fn position(given: Option<f64>, count: usize) -> Result<f64, Vec<Problem>> {
    let there = given.filter(|given| (1..=count).any(|position| libm::fabs(given - position as f64) <= 0.0));
    let problem = || Problem::new("position", code::NO_SUCH_POSITION).bounds(Some(1.0), Some(count as f64));
    there.ok_or_else(|| vec![problem()])
}

fn bounded(field: &str, figure: Option<f64>, (least, most): (f64, f64)) -> Result<f64, Vec<Problem>> {
    let wrong = match figure {
        None => code::WRONG_SHAPE,
        Some(figure) if figure.is_nan() => code::NOT_A_FIGURE,
        Some(figure) if figure < least => code::TOO_SMALL,
        Some(figure) if figure > most => code::TOO_LARGE,
        Some(figure) => return Ok(figure),
    };
    Err(vec![Problem::new(field, wrong).bounds(Some(least), Some(most))])
}

/// The microphone's volts from a clip, at our rate, with room for the tail.
fn emf(samples: &[f32], rate: f64, seconds: f64, volts: f64) -> Result<Vec<f64>, Vec<Problem>> {
    let refused = |code| Err(vec![Problem::new("clip.samples", code)]);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // seconds and rate are bounded
    let taken = &samples[..samples.len().min((seconds * rate) as usize)];
    if taken.is_empty() {
        return refused(code::TOO_FEW);
    }
    if taken.iter().any(|sample| !sample.is_finite()) {
        return refused(code::NOT_A_FIGURE);
    }
    // What stands still in a recording is no sound, and would move the grid.
    let mean = taken.iter().map(|sample| f64::from(*sample)).sum::<f64>() / taken.len() as f64;
    let moving: Vec<f64> = taken.iter().map(|sample| f64::from(*sample) - mean).collect();
    let rms = spoken_rms(&moving, rate);
    if rms < SILENCE {
        return refused(code::SILENT);
    }
    let mut emf = resample(&moving, rate, RATE);
    for sample in &mut emf {
        *sample *= volts / rms;
    }
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // twelve thousand
    let tail = (TAIL * RATE) as usize;
    emf.extend(core::iter::repeat_n(0.0, tail));
    Ok(emf)
}
