//! From switching on.

use alloc::{vec, vec::Vec};

use super::{
    Chain,
    flow::{Flow, State, emfs},
};

/// Volts of each node from switching on, each the mean of a half-cycle.
#[derive(Clone, Debug, Default)]
pub struct Start {
    /// From switching on.
    pub seconds: Vec<f64>,
    /// Of each node.
    pub nodes: Vec<Vec<f64>>,
}

/// Steps in a half-cycle: for the picture, and to find the first peak with.
const STEPS: usize = 48;
const PEAK_STEPS: usize = 128;
const CHOKE_STEPS: usize = 32;
/// The first rush is tried at so many places between the emf's zero and its peak.
const PLACES: usize = 8;
/// Half-cycles of rush followed behind a choke.
const RUSH: usize = 24;
/// Half-cycles followed at most, and seconds after the last thing switched.
const HALF_CYCLES: usize = 5000;
const AFTER: f64 = 30.0;
/// Change of a mean in a half-cycle, over the peak emf, that counts as none, and for how many in a row.
const STILL: f64 = 2e-6;
const IN_A_ROW: usize = 12;
/// A point is kept where something moved by this share of the peak emf since the last, or so much time went by.
const MOVED: f64 = 2e-3;
const KEPT: f64 = 0.04;

/// The highest current of a rectifier from switching on at the worst moment, capacitors empty, rectifier hot, in A.
#[must_use]
pub fn turn_on_peak(chain: &Chain) -> f64 {
    let choked = chain.input_choke().is_some();
    let half = if choked { CHOKE_STEPS } else { PEAK_STEPS };
    let flow = Flow::new(chain, half);
    let emfs = emfs(chain, half);
    let period = emfs.len() - 1;
    let places = if choked { 2 } else { PLACES };
    let steps = if choked { RUSH * half } else { period };
    let mut most = 0.0;
    for place in 0..=places {
        let first = place * half / 2 / places;
        let mut state = empty(&flow, emfs[first]);
        let mut spare = state.x.clone();
        let mut peak = state.amps;
        for step in 1..=steps {
            flow.step(&mut state, emfs[(first + step) % period], &mut spare);
            turned(&mut state, first + step, period);
            peak = f64::max(peak, state.amps);
            if !choked && state.amps < 0.5 * peak {
                break;
            }
        }
        most = f64::max(most, peak);
    }
    most
}

fn empty(flow: &Flow, emf: f64) -> State {
    flow.state(&vec![0.0; flow.advance.hold.size + 1], emf)
}

/// A doubler's capacitors change places with each half-cycle.
fn turned(state: &mut State, sample: usize, period: usize) {
    if sample.is_multiple_of(period) {
        state.tilt = -state.tilt;
    }
}

/// What is followed from switching on.
struct Walker<'a> {
    peak: f64,
    layout: super::chain::Layout,
    start: Start,
    state: State,
    seconds: f64,
    kept: Vec<f64>,
    emfs: &'a [f64],
    left: usize,
}

impl Start {
    /// Empty capacitors, the rectifier passing from `warm.0` seconds on, the loads of `loaded` instead of those of
    /// `idle` from `warm.1` on, until nothing moves any more.
    #[must_use]
    pub fn follow(idle: &Chain, loaded: &Chain, warm: (f64, f64)) -> Self {
        let emfs = emfs(loaded, STEPS);
        let flow = Flow::new(idle, STEPS);
        let count = loaded.rungs.len();
        let mut walker = Walker {
            peak: loaded.peak / loaded.share(),
            layout: loaded.layout(),
            start: Start { seconds: Vec::new(), nodes: vec![Vec::new(); count] },
            state: empty(&flow, 0.0),
            seconds: 0.0,
            kept: vec![0.0; count],
            emfs: &emfs,
            left: HALF_CYCLES,
        };
        let nothing = vec![0.0; count];
        walker.keep(&nothing);
        if warm.0 > 0.0 {
            walker.seconds = warm.0;
            walker.keep(&nothing);
        }
        if warm.1 > warm.0 {
            walker.until(&flow, idle, warm.1);
        }
        let last = f64::max(warm.0, warm.1);
        walker.until(&Flow::new(loaded, STEPS), loaded, last + AFTER);
        walker.settle(last);
        walker.start
    }
}

impl Walker<'_> {
    fn keep(&mut self, volts: &[f64]) {
        self.start.seconds.push(self.seconds);
        for (line, volts) in self.start.nodes.iter_mut().zip(volts) {
            line.push(*volts);
        }
        self.kept.copy_from_slice(volts);
    }

    fn until(&mut self, flow: &Flow, chain: &Chain, end: f64) {
        let samples = self.emfs.len() - 1;
        let begun = self.seconds;
        let mut spare = self.state.x.clone();
        let mut before = vec![f64::NEG_INFINITY; self.kept.len()];
        let (mut still, mut kept_at) = (0, self.seconds);
        while self.seconds < end && self.left > 0 && still < IN_A_ROW {
            self.left -= 1;
            let mut means = vec![0.0; before.len()];
            for sample in 1..=samples {
                flow.step(&mut self.state, self.emfs[sample], &mut spare);
                for ((mean, (place, root)), rung) in means.iter_mut().zip(&self.layout.nodes).zip(&chain.rungs) {
                    // A constant current is drawn from nothing below 0 V.
                    if rung.amps > 0.0 {
                        self.state.x[*place] = f64::max(0.0, self.state.x[*place]);
                    }
                    *mean += self.state.x[*place] / root / samples as f64;
                }
            }
            turned(&mut self.state, samples, samples);
            self.seconds += chain.period();
            let most = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| libm::fabs(a - b)).fold(0.0, f64::max);
            still = if most(&means, &before) < STILL * self.peak { still + 1 } else { 0 };
            let moved = most(&means, &self.kept) > MOVED * self.peak;
            if moved || self.seconds - kept_at > KEPT * (end - begun) {
                kept_at = self.seconds;
                self.keep(&means);
            }
            before = means;
        }
        self.keep(&before.iter().map(|volts| f64::max(*volts, -self.peak)).collect::<Vec<_>>());
        if still >= IN_A_ROW && self.seconds < end {
            let settled = self.kept.clone();
            self.seconds = end;
            self.keep(&settled);
        }
    }

    /// Cuts the long quiet end off: a third of the time before it is enough to show that it is quiet.
    fn settle(&mut self, last: f64) {
        let Start { seconds, nodes } = &mut self.start;
        let [.., quiet, end] = seconds.as_mut_slice() else { return };
        let enough = f64::max(*quiet + 0.1 * f64::max(*quiet - last, 0.0), 1.3 * last);
        *end = end.min(f64::max(enough, *quiet + 0.05));
        debug_assert!(nodes.iter().all(|line| line.len() == seconds.len()));
    }
}
