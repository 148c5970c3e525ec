//! How the unknowns at a sample follow those at the beginning of the period.

use alloc::{vec, vec::Vec};

use super::{
    flow::{Flow, State},
    matrix::Square,
};

/// Derivatives with respect to every unknown at the beginning, a row each.
pub(super) struct Sense {
    columns: usize,
    /// Of the chain's unknowns, as they stood `behind` steps ago.
    x: Vec<f64>,
    behind: usize,
    tilt: Vec<f64>,
    amps: Vec<f64>,
    push: Vec<f64>,
    flows: bool,
    /// The chain's matrix to the powers 1, 2, 4 …
    powers: Vec<Square>,
}

impl Sense {
    /// At the beginning itself, where `state` stands.
    pub fn new(flow: &Flow, state: &State, columns: usize) -> Self {
        let size = state.x.len();
        let mut x = vec![0.0; size * columns];
        for k in 0..size {
            x[k * columns + k] = 1.0;
        }
        let nothing = vec![0.0; columns];
        let mut sense = Sense {
            columns,
            x,
            behind: 0,
            tilt: nothing.clone(),
            amps: nothing.clone(),
            push: nothing,
            flows: false,
            powers: vec![flow.advance.hold.clone()],
        };
        let extra = columns > size;
        if extra && flow.tilting[1] > 0.0 {
            sense.tilt[size] = 1.0;
        }
        let seen = sense.seen(flow, state.sign);
        if flow.choke[0] > 0.0 {
            sense.begin_choke(flow, state, &seen, size);
        } else if state.gain > 0.0 {
            sense.amps = seen.iter().map(|seen| -state.gain * seen).collect();
            sense.flows = true;
        }
        sense
    }

    fn begin_choke(&mut self, flow: &Flow, state: &State, seen: &[f64], size: usize) {
        if state.amps > 0.0 {
            self.amps[size] = 1.0;
            let step = 1e-6 * state.amps;
            let volts = |amps: f64| flow.rectifier.volts(amps);
            let slope = (volts(state.amps + step) - volts(state.amps - step)) / (2.0 * step);
            self.push = seen.iter().map(|seen| -seen).collect();
            self.push[size] -= flow.ohms + slope;
            self.flows = true;
        } else if state.push > 0.0 {
            self.push = seen.iter().map(|seen| -seen).collect();
            self.flows = true;
        }
    }

    fn seen(&self, flow: &Flow, sign: f64) -> Vec<f64> {
        let first = &self.x[..self.columns];
        first.iter().zip(&self.tilt).map(|(x, tilt)| flow.share * (x / flow.root + sign * tilt)).collect()
    }

    /// Follows one step that led from a state of sign `sign` to `state`.
    pub fn follow(&mut self, flow: &Flow, sign: f64, state: &State) {
        self.behind += 1;
        if !self.flows && state.gain == 0.0 {
            return;
        }
        self.catch_up();
        if self.flows {
            self.inject(&flow.advance.first);
            for (tilt, amps) in self.tilt.iter_mut().zip(&self.amps) {
                *tilt += sign * flow.tilting[0] * amps;
            }
        }
        let seen = self.seen(flow, state.sign);
        for ((amps, push), seen) in self.amps.iter_mut().zip(&mut self.push).zip(&seen) {
            let before = *amps;
            *amps = state.gain * (flow.choke[0] * before + flow.choke[1] * *push - seen);
            *push = if state.gain > 0.0 { flow.choke[0] * (*amps - before) - flow.choke[1] * *push } else { 0.0 };
        }
        self.flows = state.gain > 0.0;
        if self.flows {
            self.inject(&flow.advance.last);
            for (tilt, amps) in self.tilt.iter_mut().zip(&self.amps) {
                *tilt += state.sign * flow.tilting[1] * amps;
            }
        }
    }

    fn inject(&mut self, weights: &[f64]) {
        for (row, weight) in self.x.chunks_exact_mut(self.columns).zip(weights) {
            for (x, amps) in row.iter_mut().zip(&self.amps) {
                *x += weight * amps;
            }
        }
    }

    /// Brings the chain's part over the steps in which nothing but the chain itself moved.
    fn catch_up(&mut self) {
        let mut bit = 0;
        while self.behind > 0 {
            if self.powers.len() == bit {
                let last = &self.powers[bit - 1];
                self.powers.push(last.times(last));
            }
            if self.behind & 1 == 1 {
                self.x = self.powers[bit].onto(&self.x, self.columns);
            }
            self.behind >>= 1;
            bit += 1;
        }
    }

    /// The rows of everything that shooting counts as unknown.
    pub fn rows(mut self, flow: &Flow) -> Vec<f64> {
        self.catch_up();
        let mut rows = self.x;
        if rows.len() < self.columns * self.columns {
            rows.extend_from_slice(if flow.choke[0] > 0.0 { &self.amps } else { &self.tilt });
        }
        rows
    }
}
