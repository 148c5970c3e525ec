//! One step in time: the chain goes on by itself, then the rectifier's current is found.

use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::{Chain, Connection, Rectifier, advance::Advance};

/// Where everything stands at one sample.
#[derive(Clone, Debug)]
pub(super) struct State {
    /// The chain's unknowns.
    pub x: Vec<f64>,
    /// Volts of a doubler's conducting capacitor over the other's, as the half-cycle has them; 0 elsewhere.
    pub tilt: f64,
    /// Through the rectifier.
    pub amps: f64,
    /// Volts over a choke at the rectifier while its current flows.
    pub push: f64,
    /// -1 where a doubler's other rectifier conducts or is nearer to it, else 1.
    pub sign: f64,
    /// Slope d amps / d drive of the step that led here.
    pub gain: f64,
}

/// What a step of one length needs.
#[derive(Clone, Debug)]
pub(super) struct Flow {
    pub advance: Advance,
    pub rectifier: Rectifier,
    /// Between the emf and node 0.
    pub ohms: f64,
    pub share: f64,
    /// √C of node 0.
    pub root: f64,
    /// Doubler: volts of tilt an ampere makes at a step's beginning and at its end; 0 elsewhere.
    pub tilting: [f64; 2],
    /// Choke at the rectifier: volts an ampere of change takes in this step, and the share of the volts before; 0 elsewhere.
    pub choke: [f64; 2],
    /// All that limits the current at a step's end.
    pub stiff: f64,
    /// Samples in a half-cycle of the mains.
    pub half: usize,
}

/// The weight of a step's end over one half that follows an exponential of `z` time constants exactly. Near 0 for a
/// slow one, where the step is the trapezoidal rule's; one half for a quick one, which then does not ring.
fn lean(z: f64) -> f64 {
    if z < 0.05 { z / 12.0 * (1.0 - z * z / 60.0) } else { -1.0 / libm::expm1(-z) - 1.0 / z - 0.5 }
}

impl Flow {
    /// For steps of which `half` make a half-cycle of the mains.
    pub fn new(chain: &Chain, half: usize) -> Self {
        let layout = chain.layout();
        let (matrix, constant) = chain.equations(&layout);
        let (share, root) = (chain.share(), layout.nodes.first().map_or(1.0, |node| node.1));
        let mut inflow = vec![0.0; layout.size];
        inflow[0] = share / root;
        let seconds = 0.5 / chain.hertz / half as f64;
        Self::over(chain, Advance::new(&matrix, &inflow, &constant, seconds), half)
    }

    /// The same with steps twice as long.
    pub fn twice(&self, chain: &Chain) -> Self {
        // The lean belongs to a step's length; the plain weights are what adds up.
        let mut plain = self.advance.clone();
        self.tilted(chain, &mut plain, -1.0);
        Self::over(chain, plain.twice(), self.half / 2)
    }

    fn over(chain: &Chain, advance: Advance, half: usize) -> Self {
        let share = chain.share();
        let mut flow = Flow {
            rectifier: chain.rectifier,
            ohms: chain.source_ohms(),
            share,
            root: crate::root::sqrt(chain.farads(0)),
            tilting: [0.0; 2],
            choke: [0.0; 2],
            stiff: 0.0,
            half,
            advance,
        };
        let mut advance = flow.advance.clone();
        flow.tilted(chain, &mut advance, 1.0);
        flow.advance = advance;
        let (lean, seconds) = (flow.lean(chain), flow.advance.seconds);
        if let Some((henries, _)) = chain.input_choke() {
            flow.choke = [henries / ((0.5 + lean) * seconds), (0.5 - lean) / (0.5 + lean)];
        }
        if chain.connection == Connection::Doubler {
            let volts = seconds * share / chain.farads(0);
            flow.tilting = [(0.5 - lean) * volts, (0.5 + lean) * volts];
        }
        flow.stiff = flow.ohms + share * (flow.advance.last[0] / flow.root + flow.tilting[1]) + flow.choke[0];
        flow
    }

    fn lean(&self, chain: &Chain) -> f64 {
        let seconds = self.advance.seconds;
        lean(match chain.input_choke() {
            Some((henries, _)) => seconds * self.ohms / henries,
            None => seconds * self.share / (self.ohms * chain.farads(0)),
        })
    }

    /// Moves the weight of a straight current towards the step's end (`way` 1) or back (-1).
    fn tilted(&self, chain: &Chain, advance: &mut Advance, way: f64) {
        if chain.input_choke().is_some() {
            return;
        }
        let lean = way * self.lean(chain);
        for (first, last) in advance.first.iter_mut().zip(&mut advance.last) {
            let moved = lean * (*first + *last);
            *first -= moved;
            *last += moved;
        }
    }

    /// Volts that the rectifier sees behind it.
    pub fn seen(&self, x: &[f64], tilt: f64, sign: f64) -> f64 {
        self.share * (x[0] / self.root + sign * tilt)
    }

    /// The state at a sample whose emf is `emf`, from its unknowns; the last is the choke's current or the tilt.
    pub fn state(&self, unknowns: &[f64], emf: f64) -> State {
        let size = self.advance.hold.size;
        let extra = unknowns.get(size).copied().unwrap_or(0.0);
        let (choked, doubled) = (self.choke[0] > 0.0, self.tilting[1] > 0.0);
        let mut state = State {
            x: unknowns[..size].to_vec(),
            tilt: if doubled { extra } else { 0.0 },
            amps: if choked { f64::max(extra, 0.0) } else { 0.0 },
            push: 0.0,
            sign: if doubled && 2.0 * emf < extra { -1.0 } else { 1.0 },
            gain: 0.0,
        };
        let volts = state.sign * emf - self.seen(&state.x, state.tilt, state.sign);
        if !choked {
            (state.amps, state.gain) = self.rectifier.amps(self.ohms, volts - self.rectifier.threshold());
        } else if state.amps > 0.0 {
            state.push = volts - self.ohms * state.amps - self.rectifier.volts(state.amps);
            state.gain = 1.0;
        } else {
            state.push = f64::max(0.0, volts - self.rectifier.threshold());
        }
        state
    }

    /// One step on, to a sample whose emf is `emf`; `spare` is as long as the chain's unknowns.
    pub fn step(&self, state: &mut State, emf: f64, spare: &mut Vec<f64>) {
        self.advance.hold.apply(&state.x, &self.advance.still, spare);
        core::mem::swap(&mut state.x, spare);
        if state.amps > 0.0 {
            for (x, first) in state.x.iter_mut().zip(&self.advance.first) {
                *x += first * state.amps;
            }
        }
        let doubled = self.tilting[1] > 0.0;
        if doubled {
            state.tilt += state.sign * self.tilting[0] * state.amps;
            state.sign = if 2.0 * emf < state.tilt { -1.0 } else { 1.0 };
        }
        let free = state.sign * emf - self.rectifier.threshold() - self.seen(&state.x, state.tilt, state.sign);
        let before = state.amps;
        let drive = free + self.choke[0] * before + self.choke[1] * state.push;
        (state.amps, state.gain) = self.rectifier.amps(self.stiff, drive);
        if state.amps > 0.0 {
            for (x, last) in state.x.iter_mut().zip(&self.advance.last) {
                *x += last * state.amps;
            }
            state.tilt += state.sign * self.tilting[1] * state.amps;
            state.push = self.choke[0] * (state.amps - before) - self.choke[1] * state.push;
        } else {
            state.push = 0.0;
        }
    }

    /// Whether no current can flow anywhere in a step that begins and ends at these emfs, the emf bulging over its
    /// chord by less than `bulge`.
    pub fn rests(&self, state: &State, after: &[f64], emfs: (f64, f64), bulge: f64) -> bool {
        let over = |emf: f64, x: &[f64]| {
            let seen = |sign: f64| sign * emf - self.seen(x, state.tilt, sign);
            let most = if self.tilting[1] > 0.0 { f64::max(seen(1.0), seen(-1.0)) } else { seen(1.0) };
            most - self.rectifier.threshold()
        };
        state.amps == 0.0 && f64::max(over(emfs.0, &state.x), over(emfs.1, after)) < -bulge
    }
}

/// The emf at each sample of a period, ends included.
pub(super) fn emfs(chain: &Chain, half: usize) -> Vec<f64> {
    let samples = half * chain.half_cycles();
    let turn = PI / half as f64;
    let (sin, cos) = (libm::sin(turn), libm::cos(turn));
    // A quarter at a time by turning, and mirrored: exact at the zeros and the peak.
    let (mut quarter, mut at) = (Vec::with_capacity(half / 2 + 1), (0.0, 1.0));
    for _ in 0..half / 2 {
        quarter.push(chain.peak * at.0);
        at = (at.0 * cos + at.1 * sin, at.1 * cos - at.0 * sin);
    }
    quarter.push(chain.peak);
    let place = |sample: usize| {
        let within = sample % half;
        let height = quarter.get(if 2 * within <= half { within } else { half - within }).copied().unwrap_or(0.0);
        if (sample / half) % 2 == 1 && chain.connection == Connection::HalfWave { -height } else { height }
    };
    (0..=samples).map(place).collect()
}
