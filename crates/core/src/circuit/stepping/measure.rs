//! What meters read in a cycle that repeats.

use alloc::{vec, vec::Vec};

use super::{
    Connection, Cycle, Series,
    chain::{Layout, WIRE},
    flow::State,
};

/// Means, root mean squares and extremes over one cycle of the mains.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Reading {
    /// Mean volts of each node.
    pub volts: Vec<f64>,
    /// Highest less lowest volts of each node.
    pub swing: Vec<f64>,
    /// Root mean square of what stands on the mean, each node.
    pub ripple: Vec<f64>,
    /// Mean of all that the rectifiers deliver, in A.
    pub amps: f64,
    /// The highest current of a rectifier, in A.
    pub peak_amps: f64,
    /// The lowest current through a choke at the rectifier, in A.
    pub least_amps: f64,
    /// Mean square of the current in the winding's conducting path, in A².
    pub square: f64,
    /// Mean square of the current through what leads to each node, in A²; the first is the winding's.
    pub series_square: Vec<f64>,
    /// Root mean square of the current of each node's capacitor, in A.
    pub capacitor_amps: Vec<f64>,
    /// Mean watts that the emf gives.
    pub input_watts: f64,
    /// Mean watts that turn to heat in the rectifiers.
    pub rectifier_watts: f64,
}

/// One cycle of the mains, sample by sample.
#[derive(Clone, Debug, Default)]
pub struct Trace {
    /// From the emf's zero.
    pub seconds: Vec<f64>,
    /// Volts of each node.
    pub nodes: Vec<Vec<f64>>,
    /// Through the rectifiers.
    pub amps: Vec<f64>,
}

/// Currents at one sample: through what leads to each node, and of its capacitor.
struct Currents {
    volts: Vec<f64>,
    series: Vec<f64>,
}

impl Currents {
    fn take(&mut self, steady: &Cycle, layout: &Layout, state: &State) {
        for (k, rung) in steady.chain.rungs.iter().enumerate() {
            let (place, root) = layout.nodes[k];
            self.volts[k] = state.x[place] / root;
            self.series[k] = match (layout.chokes[k], rung.series) {
                _ if k == 0 => state.amps,
                (Some((place, root)), _) => state.x[place] / root,
                (None, Series::None) => (self.volts[k - 1] - self.volts[k]) / WIRE,
                (None, _) => (self.volts[k - 1] - self.volts[k]) / f64::max(rung.ohms(), WIRE),
            };
        }
    }
}

impl Cycle {
    fn each(&self, mut take: impl FnMut(usize, &State)) {
        let mut state = self.flow.state(&self.unknowns, self.emfs[0]);
        let mut spare = state.x.clone();
        for sample in 1..self.emfs.len() {
            self.flow.step(&mut state, self.emfs[sample], &mut spare);
            take(sample, &state);
        }
    }

    /// Follows the cycle once and reads it.
    #[must_use]
    pub fn read(&self) -> Reading {
        let (chain, layout) = (&self.chain, self.chain.layout());
        let count = chain.rungs.len();
        let mut now = Currents { volts: vec![0.0; count], series: vec![0.0; count] };
        let zeros = vec![0.0; count];
        let mut reading = Reading {
            series_square: zeros.clone(),
            capacitor_amps: zeros.clone(),
            volts: zeros.clone(),
            ripple: zeros.clone(),
            least_amps: f64::INFINITY,
            ..Reading::default()
        };
        let (mut low, mut high) = (vec![f64::INFINITY; count], vec![f64::NEG_INFINITY; count]);
        // Sums of squares are taken about the first volts, so that a small ripple keeps its digits.
        let first: Vec<f64> = layout.nodes.iter().map(|(place, root)| self.unknowns[*place] / root).collect();
        self.each(|sample, state| {
            now.take(self, &layout, state);
            let emf = state.sign * self.emfs[sample];
            reading.amps += state.amps;
            reading.peak_amps = f64::max(reading.peak_amps, state.amps);
            reading.least_amps = f64::min(reading.least_amps, state.amps);
            reading.square += state.amps * state.amps;
            reading.input_watts += emf * state.amps;
            if state.amps > 0.0 {
                reading.rectifier_watts += chain.rectifier.volts(state.amps) * state.amps;
            }
            for (k, rung) in chain.rungs.iter().enumerate() {
                let (volts, off) = (now.volts[k], now.volts[k] - first[k]);
                low[k] = f64::min(low[k], volts);
                high[k] = f64::max(high[k], volts);
                reading.volts[k] += off;
                reading.ripple[k] += off * off;
                reading.series_square[k] += now.series[k] * now.series[k];
                let onward = now.series.get(k + 1).copied().unwrap_or(0.0) + rung.amps + rung.siemens * volts;
                reading.capacitor_amps[k] += if k == 0 && chain.connection == Connection::Doubler {
                    // One of the two is charged while both give.
                    0.5 * ((now.series[k] - onward) * (now.series[k] - onward) + onward * onward)
                } else {
                    (now.series[k] - onward) * (now.series[k] - onward)
                };
            }
        });
        let samples = (self.emfs.len() - 1) as f64;
        for k in 0..count {
            let mean = reading.volts[k] / samples;
            reading.ripple[k] = crate::root::sqrt(f64::max(0.0, reading.ripple[k] / samples - mean * mean));
            reading.volts[k] = first[k] + mean;
            reading.swing.push(high[k] - low[k]);
            reading.series_square[k] /= samples;
            reading.capacitor_amps[k] = crate::root::sqrt(reading.capacitor_amps[k] / samples);
        }
        reading.amps *= chain.share() / samples;
        for sum in [&mut reading.square, &mut reading.input_watts, &mut reading.rectifier_watts] {
            *sum /= samples;
        }
        reading
    }

    /// One cycle of the mains, every `stride`th sample.
    #[must_use]
    pub fn trace(&self, stride: usize) -> Trace {
        let layout = self.chain.layout();
        let count = self.chain.rungs.len();
        let mut now = Currents { volts: vec![0.0; count], series: vec![0.0; count] };
        let mut trace = Trace { nodes: vec![Vec::new(); count], ..Trace::default() };
        let period = self.emfs.len() - 1;
        for turn in 0..2 / self.chain.half_cycles() {
            self.each(|sample, state| {
                if sample % stride == 0 {
                    now.take(self, &layout, state);
                    trace.seconds.push((turn * period + sample) as f64 * self.flow.advance.seconds);
                    trace.amps.push(state.amps);
                    for (line, volts) in trace.nodes.iter_mut().zip(&now.volts) {
                        line.push(*volts);
                    }
                }
            });
        }
        trace
    }
}
