use alloc::{vec, vec::Vec};

use super::{Amplifier, Rest};
use crate::{
    calculators::{Caution, Outcome, Severity},
    circuit::{Fault, GROUND, NodeId, Periodic, Steady},
    value::{Inputs, Value},
};

/// The tone that swing and distortion are stated at, in hertz.
const TONE: f64 = 1000.0;

/// Samples of a period, tried in turn: few do for a wave without corners, which most are.
const SAMPLES: [usize; 3] = [32, 64, 128];

/// As much of the wave's corners may stay untold: the answers follow it by a tenth or less.
const RESOLVED: f64 = 1e-4;

/// Harmonics stated: 2nd to 7th.
const HARMONICS: core::ops::RangeInclusive<usize> = 2..=7;

/// Under this a harmonic is rounding and nothing else, relative to the fundamental.
const ROUNDING: f64 = 1e-12;

/// The stage under a large tone.
pub(in crate::calculators) struct Swing {
    periodic: Periodic,
    /// The steady state of the smallest drive that meets a bound; none where rest is beyond one already.
    pub most: Option<Steady>,
}

impl Swing {
    /// The stage as it is swung to where the grid's peak reaches 0 V or the plate current touches 1 % of its rest.
    pub fn of(amplifier: &Amplifier, rest: &Rest) -> Result<Self, Fault> {
        let mut swing = Self::sampled(amplifier, rest, SAMPLES[0])?;
        for samples in &SAMPLES[1..] {
            if swing.most.as_ref().is_none_or(|steady| steady.unresolved() <= RESOLVED) {
                break;
            }
            swing = Self::sampled(amplifier, rest, *samples)?;
        }
        Ok(swing)
    }

    fn sampled(amplifier: &Amplifier, rest: &Rest, samples: usize) -> Result<Self, Fault> {
        let periodic = amplifier.circuit.periodic(&rest.dc, TONE, samples)?;
        let most = periodic.greatest().ok();
        Ok(Swing { periodic, most })
    }

    /// The rms of the emf that brings it there.
    pub fn most_emf(&self) -> Option<f64> {
        self.most.as_ref().map(|steady| steady.drive() * core::f64::consts::FRAC_1_SQRT_2)
    }

    /// The output that the stage is judged at: the one asked for, or half of the greatest.
    pub fn judged(&self, inputs: &Inputs, output: NodeId) -> Option<f64> {
        let half = self.most.as_ref().map(|steady| 0.5 * steady.volts_rms(output));
        inputs.maybe("output_volts").or(half).filter(|volts| *volts > 0.0)
    }

    /// Greatest output, and distortion at the output that it is judged at.
    pub fn answer(&self, outcome: &mut Outcome, inputs: &Inputs, output: NodeId) {
        let most = self.most.as_ref().map(|steady| steady.volts_rms(output));
        let wanted = inputs.maybe("output_volts");
        let at = self.judged(inputs, output);
        let state = at.and_then(|volts| self.periodic.reaching(output, GROUND, volts).ok());
        outcome.answer("max_output_volts", most);
        outcome.answer("distortion_percent", state.as_ref().map(|steady| 100.0 * steady.distortion(output)));
        outcome.answer("harmonics_db", harmonics(state.as_ref(), output));
        if let Some(volts) = wanted.filter(|volts| most.is_none_or(|most| *volts > most)) {
            let reached = state.is_some();
            let code = if reached { "output_over_most" } else { "output_not_reached" };
            let caution = Caution::new(Severity::Note, code).about("output_volts");
            outcome.caution(caution.figure("want_volts", volts).figure("most_volts", most));
        }
    }
}

fn harmonics(state: Option<&Steady>, output: NodeId) -> Value {
    let Some(steady) = state else { return vec![Value::Null; HARMONICS.count()].into() };
    let first = steady.harmonic(output, 1).magnitude();
    let each = HARMONICS.map(|harmonic| {
        let share = steady.harmonic(output, harmonic).magnitude() / first;
        (share > ROUNDING).then(|| 20.0 * libm::log10(share))
    });
    each.collect::<Vec<_>>().into()
}
