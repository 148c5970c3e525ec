//! What fixes the drive.

use alloc::{vec, vec::Vec};
use core::f64::consts::SQRT_2;

use super::{
    super::{Complex, NodeId},
    Bound, Periodic,
    balance::State,
};

/// Share of its rest that the plate current may fall to.
const LEAST_SHARE: f64 = 0.01;

/// One more equation, for the drive.
#[derive(Clone, Copy, Debug)]
pub(super) enum Goal {
    /// The drive is given.
    Drive,
    /// The first bound that is met.
    FirstBound,
    /// Amplitude of the fundamental between two nodes.
    Fundamental { node: NodeId, reference: NodeId, amplitude: f64 },
}

/// How far a state is over the goal, as a fraction, and how that follows the unknowns.
#[derive(Clone, Debug)]
pub(super) struct Excess {
    pub value: f64,
    pub by_current: Vec<f64>,
    pub by_drive: f64,
    pub bound: Option<Bound>,
}

impl Periodic {
    /// The drive that would do if the tubes were linear; `None` if none would.
    pub(super) fn first_guess(&self, goal: Goal) -> Option<f64> {
        let guess = match goal {
            Goal::Drive => return None,
            Goal::FirstBound => {
                let each = self.tubes.iter().zip(&self.ports.drive).map(|(tube, (grid, plate))| {
                    let current = grid.scale(tube.rest.gm) + plate.scale(tube.rest.gp);
                    let grid_bound = -tube.rest.grid_volts / grid.magnitude();
                    f64::min(grid_bound, (1.0 - LEAST_SHARE) * tube.rest.amps / current.magnitude())
                });
                each.fold(f64::INFINITY, f64::min)
            }
            Goal::Fundamental { node, reference, amplitude } => {
                amplitude / (self.drive_at(node) - self.drive_at(reference)).magnitude()
            }
        };
        (guess.is_finite() && guess > 0.0).then_some(guess)
    }

    pub(super) fn excess(&self, goal: Goal, state: &State) -> Excess {
        match goal {
            Goal::Drive => Excess { value: 0.0, by_current: vec![0.0; state.more.len()], by_drive: 1.0, bound: None },
            Goal::FirstBound => self.excess_of_bounds(state),
            Goal::Fundamental { node, reference, amplitude } => {
                self.excess_of_fundamental(state, node, reference, amplitude)
            }
        }
    }

    /// The one that is met first counts. As fractions of bias and rest current, so that they can be compared; both are
    /// zero at the bound itself, whatever they are compared by.
    fn excess_of_bounds(&self, state: &State) -> Excess {
        let samples = self.waves.samples();
        let mut first: Option<Excess> = None;
        for (index, tube) in self.tubes.iter().enumerate() {
            let range = index * samples..(index + 1) * samples;
            let peak = self.waves.greatest(&state.grid[range.clone()]);
            let value = (tube.rest.grid_volts + peak.value) / -tube.rest.grid_volts;
            if first.as_ref().is_none_or(|first| value > first.value) {
                let weights: Vec<f64> = peak.by_sample.iter().map(|w| w / -tube.rest.grid_volts).collect();
                let nothing = vec![0.0; samples];
                let (by_current, by_drive) = self.carried(index, &weights, &nothing, &nothing);
                first = Some(Excess { value, by_current, by_drive, bound: Some(Bound::GridPeak(tube.part)) });
            }
            let least = self.waves.least(&state.amps(self, index));
            let value = LEAST_SHARE - least.value / tube.rest.amps;
            if first.as_ref().is_none_or(|first| value > first.value) {
                let scaled = |k: f64| least.by_sample.iter().map(|w| -w * k / tube.rest.amps).collect::<Vec<_>>();
                let (grid, plate, more) = (scaled(tube.rest.gm), scaled(tube.rest.gp), scaled(1.0));
                let (by_current, by_drive) = self.carried(index, &grid, &plate, &more);
                first = Some(Excess { value, by_current, by_drive, bound: Some(Bound::PlateCurrent(tube.part)) });
            }
        }
        first.unwrap_or(Excess { value: 0.0, by_current: Vec::new(), by_drive: 1.0, bound: None })
    }

    /// From weights on the samples of one tube's grid volts, plate volts and further current to weights on the unknowns.
    fn carried(&self, tube: usize, grid: &[f64], plate: &[f64], more: &[f64]) -> (Vec<f64>, f64) {
        let (samples, tubes) = (self.waves.samples(), self.tubes.len());
        let mut by_current = vec![0.0; tubes * samples];
        for other in 0..tubes {
            let influence = &self.ports.influence[tube * tubes + other];
            let target = &mut by_current[other * samples..(other + 1) * samples];
            for n in 0..samples {
                let window = samples - 1 - n..2 * samples - 1 - n;
                let (by_grid, by_plate) = (&influence.grid[window.clone()], &influence.plate[window]);
                for ((sum, by_grid), by_plate) in target.iter_mut().zip(by_grid).zip(by_plate) {
                    *sum += grid[n] * by_grid + plate[n] * by_plate;
                }
            }
        }
        for (sum, more) in by_current[tube * samples..].iter_mut().zip(more) {
            *sum += more;
        }
        let (grid_drive, plate_drive) = &self.drive_waves[tube];
        let along = |weights: &[f64], wave: &[f64]| weights.iter().zip(wave).map(|(w, v)| w * v).sum::<f64>();
        (by_current, along(grid, grid_drive) + along(plate, plate_drive))
    }

    fn excess_of_fundamental(&self, state: &State, node: NodeId, reference: NodeId, amplitude: f64) -> Excess {
        let samples = self.waves.samples();
        let drive = self.drive_at(node) - self.drive_at(reference);
        let transfer = |tube| self.influence_at(1, tube, node) - self.influence_at(1, tube, reference);
        let mut volts = drive.scale(state.drive);
        for tube in 0..self.tubes.len() {
            let current = self.waves.harmonic(&state.more[tube * samples..(tube + 1) * samples], 1);
            volts += transfer(tube) * current;
        }
        let size = volts.magnitude();
        let unit = if size > 0.0 { volts.conjugate().scale(1.0 / (size * amplitude)) } else { Complex::ZERO };
        let mut by_current = Vec::with_capacity(state.more.len());
        for tube in 0..self.tubes.len() {
            let by_amplitude = unit * transfer(tube).scale(2.0 / samples as f64);
            by_current.extend((0..samples).map(|n| (by_amplitude * self.waves.turn(n, 1).conjugate()).re));
        }
        Excess { value: size / amplitude - 1.0, by_current, by_drive: (unit * drive).re, bound: None }
    }

    /// Goal of a fundamental given in volts rms.
    pub(super) fn fundamental(node: NodeId, reference: NodeId, volts_rms: f64) -> Goal {
        Goal::Fundamental { node, reference, amplitude: volts_rms * SQRT_2 }
    }
}
