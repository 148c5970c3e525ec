//! The dc point: Newton on the tubes, everything else being linear.

use alloc::{vec, vec::Vec};

use super::{
    elimination::Elimination,
    footing::ValveFooting,
    network::{Law, Network, Valve},
};
use crate::tube::PlateCurrent;

/// Newton steps before continuation is tried, and after it.
const STEPS: usize = 50;
/// Steps of continuation.
const CONTINUATION_STEPS: usize = 400;
/// Rounds of continuation and Newton.
const ROUNDS: usize = 3;
/// Conductance that holds every node at first in continuation, in siemens: as much as any tube's.
const FIRST_PACE: f64 = 0.1;
/// And at last: less than any leakage.
const LAST_PACE: f64 = 1e-32;
/// Against the largest volts about: a step this small is within reach of the last ones.
const NEAR: f64 = 1e-9;
/// Damping stops here.
const LEAST_SHARE: f64 = 1.0 / 64.0;
/// The tubes' law holds within these volts; a step that overshoots is judged by its edge.
const FAR: f64 = 1e5;
/// A tube in deep cut-off keeps this much conductance in the matrix (never in the answer), so that a node between two
/// such tubes stays where it is instead of anywhere. Far below any leakage, which must still tell.
pub(super) const LEAST_GP: f64 = 1e-60;

/// The state of the search.
pub(super) struct Newton<'n> {
    network: &'n Network,
    footings: Vec<ValveFooting>,
    terms: Vec<f64>,
    inject: Vec<f64>,
    pub elimination: Elimination<f64>,
    /// Volts of the unknowns, ground last.
    pub x: Vec<f64>,
    /// Each tube at `x`.
    pub tubes: Vec<PlateCurrent>,
    next: Vec<f64>,
    scratch: Vec<f64>,
    trial: Vec<PlateCurrent>,
    /// Where the last step was largest.
    pub worst: (usize, f64),
}

impl<'n> Newton<'n> {
    pub(super) fn new(network: &'n Network) -> Self {
        let rows = network.unknowns() + 1;
        let (mut terms, mut inject) = (vec![0.0; network.order.slots], vec![0.0; rows]);
        for branch in &network.branches {
            let Law::Conductance(siemens) = branch.law else { continue };
            let footing = network.footing(branch.a, branch.b);
            footing.stamp(&mut terms, siemens);
            footing.inject(&mut inject, siemens);
        }
        let nothing = PlateCurrent { amps: 0.0, gm: 0.0, gp: 0.0 };
        Newton {
            network,
            footings: network.valves.iter().map(|valve| network.valve_footing(valve)).collect(),
            elimination: Elimination::new(&network.order),
            terms,
            inject,
            x: vec![0.0; rows],
            tubes: vec![nothing; network.valves.len()],
            next: vec![0.0; rows],
            scratch: vec![0.0; rows],
            trial: vec![nothing; network.valves.len()],
            worst: (0, 0.0),
        }
    }

    /// # Errors
    /// The row at which the matrix was singular.
    pub(super) fn find(&mut self, start: Option<&[f64]>) -> Result<bool, usize> {
        match start {
            Some(start) => self.x.copy_from_slice(start),
            None => self.guess()?,
        }
        self.tubes = self.tubes_at(&self.x);
        let mut found = self.approach()?;
        for _ in 0..ROUNDS {
            if found {
                break;
            }
            self.continuation()?;
            found = self.approach()?;
        }
        if found {
            self.polish()?;
        }
        Ok(found)
    }

    /// Each tube as the resistance it has when it idles.
    fn guess(&mut self) -> Result<(), usize> {
        self.tubes.clear();
        self.tubes.extend(self.network.valves.iter().map(|valve| {
            let gp = 3.0 * valve.law.perveance / valve.law.mu;
            PlateCurrent { amps: 0.0, gm: 0.0, gp }
        }));
        let zero = vec![0.0; self.x.len()];
        self.x.copy_from_slice(&zero);
        // At no volts and no current; the offsets are in `inject`.
        for (tube, footing) in self.tubes.iter_mut().zip(&self.footings) {
            tube.amps = tube.gp * footing.plate_offset;
        }
        self.step(0.0)?;
        self.x.copy_from_slice(&self.next);
        Ok(())
    }

    fn tubes_at(&self, x: &[f64]) -> Vec<PlateCurrent> {
        let at = |(valve, footing): (&Valve, &ValveFooting)| {
            let (grid, plate) = footing.volts(x);
            valve.law.plate(grid.clamp(-FAR, FAR), plate.clamp(-FAR, FAR))
        };
        self.network.valves.iter().zip(&self.footings).map(at).collect()
    }

    /// Where the linearised circuit stands: into `next`. With a pace, that conductance holds each node where it
    /// was: an implicit step in time.
    fn step(&mut self, pace: f64) -> Result<(), usize> {
        let Newton { network, footings, terms, inject, elimination, x, tubes, next, .. } = self;
        elimination.factor(&network.order, |slots| {
            slots.copy_from_slice(terms);
            for (tube, footing) in tubes.iter().zip(footings.iter()) {
                footing.stamp(slots, tube.gm, tube.gp.max(LEAST_GP));
            }
            if pace > 0.0 {
                for slot in slots.iter_mut().take(network.unknowns()) {
                    *slot += pace;
                }
            }
        })?;
        next.copy_from_slice(inject);
        for (tube, footing) in tubes.iter().zip(footings.iter()) {
            let (grid, plate) = footing.unknown_volts(x);
            footing.inject(next, -(tube.amps - tube.gm * grid - tube.gp.max(LEAST_GP) * plate));
        }
        if pace > 0.0 {
            for row in 0..network.unknowns() {
                next[row] += pace * x[row];
            }
        }
        elimination.solve(&network.order, next);
        self.worst = self.x.iter().zip(&self.next).enumerate().fold((0, 0.0), |worst, (row, (x, next))| {
            let step = (next - x).abs();
            if step > worst.1 || step.is_nan() { (row, step) } else { worst }
        });
        Ok(())
    }

    /// What would still be to go after a share of the step, by the same matrix: the largest of it, in volts.
    fn remainder(&mut self, share: f64) -> f64 {
        for (trial, (x, next)) in self.scratch.iter_mut().zip(self.x.iter().zip(&self.next)) {
            *trial = x + share * (next - x);
        }
        self.trial = self.tubes_at(&self.scratch);
        let mut off = vec![0.0; self.x.len()];
        for ((tube, trial), footing) in self.tubes.iter().zip(&self.trial).zip(&self.footings) {
            let (grid, plate) = footing.unknown_volts(&self.x);
            let (new_grid, new_plate) = footing.unknown_volts(&self.scratch);
            let foreseen = tube.amps + tube.gm * (new_grid - grid) + tube.gp.max(LEAST_GP) * (new_plate - plate);
            footing.inject(&mut off, -(trial.amps - foreseen));
        }
        self.elimination.solve(&self.network.order, &mut off);
        let left = |((off, x), next): ((&f64, &f64), &f64)| ((1.0 - share) * (next - x) + off).abs();
        off.iter().zip(&self.x).zip(&self.next).map(left).fold(0.0, f64::max)
    }

    fn take_trial(&mut self) {
        core::mem::swap(&mut self.x, &mut self.scratch);
        core::mem::swap(&mut self.tubes, &mut self.trial);
    }

    fn scale(&self) -> f64 {
        self.x.iter().chain(&self.network.rigid.offset).fold(1e-12, |most, volts| f64::max(most, volts.abs()))
    }

    /// Damped Newton steps; false where damping stalls.
    fn approach(&mut self) -> Result<bool, usize> {
        for _ in 0..STEPS {
            self.step(0.0)?;
            let size = self.worst.1;
            let mut share = 1.0;
            loop {
                let left = self.remainder(share);
                if left <= (1.0 - 0.5 * share) * size || size <= NEAR * self.scale() {
                    break;
                }
                share *= 0.5;
                if share < LEAST_SHARE {
                    return Ok(false);
                }
            }
            self.take_trial();
            if size <= NEAR * self.scale() {
                return Ok(true);
            }
        }
        Ok(false)
    }

    /// Implicit steps in time, every node with the same capacitance to ground, longer as they succeed.
    fn continuation(&mut self) -> Result<(), usize> {
        let mut pace = FIRST_PACE;
        for _ in 0..CONTINUATION_STEPS {
            self.step(pace)?;
            let (size, left) = (self.worst.1, self.remainder(1.0));
            let near = size <= NEAR * self.scale();
            if near || left <= 0.5 * size {
                self.take_trial();
                pace *= if near || left <= 0.1 * size { 0.25 } else { 0.7 };
            } else {
                pace *= 4.0;
            }
            if !(LAST_PACE..1e12).contains(&pace) {
                break;
            }
        }
        Ok(())
    }

    /// Steps until they no longer get smaller: rounding is all that is left. The factors are those of the end.
    fn polish(&mut self) -> Result<(), usize> {
        let mut last = f64::INFINITY;
        for _ in 0..6 {
            self.step(0.0)?;
            let size = self.worst.1;
            if size >= 0.5 * last {
                break;
            }
            self.remainder(1.0);
            self.take_trial();
            last = size;
        }
        Ok(())
    }
}
