//! The cycle that repeats: Newton's method on what a period makes of its beginning.

use alloc::vec::Vec;

use super::{
    Chain, Connection,
    flow::{Flow, State, emfs},
    rough::rough,
    sense::Sense,
};
use crate::circuit::dense::Dense;

/// Steps in a half-cycle of the mains.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Steps {
    /// To find the cycle with, together with how it follows its beginning.
    pub coarse: usize,
    /// To polish and measure it with: four times as many.
    pub fine: usize,
}

impl Steps {
    /// What the answers are worked with.
    pub const USUAL: Steps = Steps { coarse: 128, fine: 512 };
    /// Enough for direct volts.
    pub const ROUGH: Steps = Steps { coarse: 128, fine: 128 };

    /// So many times as many, to see what that changes.
    #[must_use]
    pub fn times(self, times: usize) -> Self {
        Steps { coarse: self.coarse * times, fine: self.fine * times }
    }
}

/// A cycle that repeats.
#[derive(Clone, Debug)]
pub struct Cycle {
    pub(super) chain: Chain,
    pub(super) flow: Flow,
    pub(super) emfs: Vec<f64>,
    /// At the emf's zero.
    pub(super) unknowns: Vec<f64>,
}

/// Corrections at most, with derivatives and without.
const CORRECTIONS: usize = 40;
const POLISHES: usize = 40;
/// Periods simply followed where a correction leads nowhere.
const FOLLOWED: usize = 24;
/// How often a correction is halved before that.
const HALVINGS: usize = 4;
/// Size of a correction, over the size of the unknowns, that is small enough to go on from, and to stop at.
const NEAR: f64 = 1e-3;
const THERE: f64 = 1e-11;
/// A correction this small that no longer shrinks is rounding.
const ROUNDING: f64 = 1e-8;

struct Shot<'a> {
    chain: &'a Chain,
    flow: &'a Flow,
    /// Four steps in one, for where nothing conducts.
    coast: Option<&'a Flow>,
    emfs: &'a [f64],
    bulge: f64,
}

const LUMP: usize = 4;

impl Cycle {
    /// Finds it, from a cycle of the same chain with other figures where one is at hand; none where the bounded
    /// search does not get there.
    #[must_use]
    pub fn find(chain: &Chain, steps: Steps, near: Option<&Cycle>) -> Option<Self> {
        let fine = Flow::new(chain, steps.fine);
        let coarse = (steps.coarse < steps.fine).then(|| fine.twice(chain).twice(chain));
        let high = emfs(chain, steps.fine);
        let start = near.map_or_else(|| rough(chain), |near| near.unknowns.clone());
        let Some(coarse) = coarse else {
            let shot = Shot::new(chain, &fine, None, &high);
            let (unknowns, _) = shot.newton(start, THERE)?;
            return Some(Cycle { chain: chain.clone(), flow: fine, emfs: high, unknowns });
        };
        let low: Vec<f64> = high.iter().step_by(LUMP).copied().collect();
        let (found, slope) = Shot::new(chain, &coarse, None, &low).newton(start, NEAR)?;
        let shot = Shot::new(chain, &fine, Some(&coarse), &high);
        let unknowns = shot.polish(found.clone(), &slope).or_else(|| Some(shot.newton(found, THERE)?.0))?;
        Some(Cycle { chain: chain.clone(), flow: fine, emfs: high, unknowns })
    }
}

impl<'a> Shot<'a> {
    fn new(chain: &'a Chain, flow: &'a Flow, coast: Option<&'a Flow>, emfs: &'a [f64]) -> Self {
        let lump = core::f64::consts::PI * LUMP as f64 / flow.half as f64;
        Shot { chain, flow, coast, emfs, bulge: chain.peak * lump * lump }
    }

    /// Unknowns a period on.
    fn fly(&self, unknowns: &[f64]) -> Vec<f64> {
        let mut state = self.flow.state(unknowns, self.emfs[0]);
        let mut spare = state.x.clone();
        let mut sample = 0;
        while sample + 1 < self.emfs.len() {
            if let Some(coast) = self.coast
                && sample % LUMP == 0
                && state.amps == 0.0
            {
                coast.advance.hold.apply(&state.x, &coast.advance.still, &mut spare);
                let ends = (self.emfs[sample], self.emfs[sample + LUMP]);
                if self.flow.rests(&state, &spare, ends, self.bulge) {
                    core::mem::swap(&mut state.x, &mut spare);
                    (state.push, state.gain) = (0.0, 0.0);
                    sample += LUMP;
                    continue;
                }
            }
            sample += 1;
            self.flow.step(&mut state, self.emfs[sample], &mut spare);
        }
        self.landed(state)
    }

    /// Unknowns a period on, and how they follow those at the beginning.
    fn fly_and_sense(&self, unknowns: &[f64]) -> (Vec<f64>, Vec<f64>) {
        let mut state = self.flow.state(unknowns, self.emfs[0]);
        let mut sense = Sense::new(self.flow, &state, unknowns.len());
        let mut spare = state.x.clone();
        for emf in &self.emfs[1..] {
            let sign = state.sign;
            self.flow.step(&mut state, *emf, &mut spare);
            sense.follow(self.flow, sign, &state);
        }
        let mut rows = sense.rows(self.flow);
        if self.chain.connection == Connection::Doubler {
            let last = rows.len() - unknowns.len();
            rows[last..].iter_mut().for_each(|term| *term = -*term);
        }
        (self.landed(state), rows)
    }

    /// A doubler's capacitors have changed places.
    fn landed(&self, state: State) -> Vec<f64> {
        let mut unknowns = state.x;
        if self.flow.choke[0] > 0.0 {
            unknowns.push(state.amps);
        } else if self.chain.connection == Connection::Doubler {
            unknowns.push(-state.tilt);
        }
        unknowns
    }

    /// The correction at `unknowns`, with the factored slope it came from; none where the slope has no inverse.
    fn correction(&self, unknowns: &[f64]) -> Option<(Vec<f64>, Dense<f64>)> {
        let (landed, mut rows) = self.fly_and_sense(unknowns);
        let size = unknowns.len();
        for k in 0..size {
            rows[k * size + k] -= 1.0;
        }
        let slope = Dense::of(size, rows).ok()?;
        let mut step: Vec<f64> = unknowns.iter().zip(&landed).map(|(at, landed)| at - landed).collect();
        slope.solve(&mut step);
        step.iter().all(|term| term.is_finite()).then_some((step, slope))
    }

    fn newton(&self, mut at: Vec<f64>, near: f64) -> Option<(Vec<f64>, Dense<f64>)> {
        let mut here = self.correction(&at);
        for _ in 0..CORRECTIONS {
            let Some((step, slope)) = here else {
                at = self.followed(at);
                here = self.correction(&at);
                continue;
            };
            let size = length(&step);
            let (mut weight, mut taken) = (1.0, None);
            for _ in 0..=HALVINGS {
                let next: Vec<f64> = at.iter().zip(&step).map(|(at, step)| at + weight * step).collect();
                if size <= near * (length(&next) + f64::MIN_POSITIVE) {
                    return Some((next, slope));
                }
                let after = self.correction(&next);
                if let Some((after_step, _)) = &after
                    && length(after_step) < (1.0 - 0.25 * weight) * size
                {
                    taken = Some((next, after));
                    break;
                }
                weight *= 0.5;
            }
            if let Some((next, after)) = taken {
                (at, here) = (next, after);
            } else if size <= ROUNDING * length(&at) {
                return Some((at, slope));
            } else {
                at = self.followed(at);
                here = self.correction(&at);
            }
        }
        None
    }

    fn followed(&self, mut at: Vec<f64>) -> Vec<f64> {
        for _ in 0..FOLLOWED {
            at = self.fly(&at);
        }
        at
    }

    /// Corrections with a slope that is near enough, until they are nothing; none where they do not shrink.
    fn polish(&self, mut at: Vec<f64>, slope: &Dense<f64>) -> Option<Vec<f64>> {
        let mut before = f64::INFINITY;
        for _ in 0..POLISHES {
            let mut step: Vec<f64> = at.iter().zip(self.fly(&at)).map(|(at, landed)| at - landed).collect();
            slope.solve(&mut step);
            let size = length(&step);
            // A NaN must not pass for a small step.
            if size.partial_cmp(&(0.7 * before)) != Some(core::cmp::Ordering::Less) {
                return (before <= ROUNDING * length(&at)).then_some(at);
            }
            at.iter_mut().zip(&step).for_each(|(at, step)| *at += step);
            if size <= THERE * (length(&at) + f64::MIN_POSITIVE) {
                return Some(at);
            }
            before = size;
        }
        None
    }
}

fn length(step: &[f64]) -> f64 {
    crate::root::sqrt(step.iter().map(|term| term * term).sum())
}
