//! Newton on the samples of the tubes' current, and on the drive.

use alloc::{vec, vec::Vec};

use super::{
    super::dense::Dense,
    Periodic, Unreached, Valve,
    goal::{Excess, Goal},
};
use crate::tube::PlateCurrent;

/// Newton steps at most.
const STEPS: usize = 40;
/// What may be left, against largest current and drive.
const NEAR: f64 = 1e-12;
/// Damping stops here.
const LEAST_SHARE: f64 = 1.0 / 64.0;
/// The tubes' law holds within these volts.
const FAR: f64 = 1e5;

/// A trial of the whole period. Volts and currents are tube after tube, sample after sample, beyond the dc point.
#[derive(Clone, Debug)]
pub(super) struct State {
    /// Multiple of the sources' signal.
    pub drive: f64,
    /// Current beyond what the small-signal tube would carry: the unknowns.
    pub more: Vec<f64>,
    /// Grid to cathode.
    pub grid: Vec<f64>,
    /// Plate to cathode.
    pub plate: Vec<f64>,
    /// By the law, at those volts.
    law: Vec<PlateCurrent>,
    /// The largest current of each tube.
    most: Vec<f64>,
}

impl State {
    /// One tube's plate current in the samples, as the network sees it.
    pub(super) fn amps(&self, periodic: &Periodic, tube: usize) -> Vec<f64> {
        let samples = periodic.waves.samples();
        let rest = &periodic.tubes[tube].rest;
        let at = |n: usize| rest.amps + rest.gm * self.grid[n] + rest.gp * self.plate[n] + self.more[n];
        (tube * samples..(tube + 1) * samples).map(at).collect()
    }
}

impl Periodic {
    /// Grid and plate volts beyond the dc point that the network makes of the currents and the drive.
    fn volts(&self, more: &[f64], drive: f64) -> (Vec<f64>, Vec<f64>) {
        let (samples, tubes) = (self.waves.samples(), self.tubes.len());
        let (mut grid, mut plate) = (Vec::with_capacity(more.len()), Vec::with_capacity(more.len()));
        for tube in 0..tubes {
            let (grid_drive, plate_drive) = &self.drive_waves[tube];
            grid.extend(grid_drive.iter().map(|volts| drive * volts));
            plate.extend(plate_drive.iter().map(|volts| drive * volts));
            for other in 0..tubes {
                let influence = &self.ports.influence[tube * tubes + other];
                let current = &more[other * samples..(other + 1) * samples];
                for n in 0..samples {
                    let window = samples - 1 - n..2 * samples - 1 - n;
                    let along = |by: &[f64]| by.iter().zip(current).map(|(by, amps)| by * amps).sum::<f64>();
                    grid[tube * samples + n] += along(&influence.grid[window.clone()]);
                    plate[tube * samples + n] += along(&influence.plate[window]);
                }
            }
        }
        (grid, plate)
    }

    pub(super) fn state(&self, more: Vec<f64>, drive: f64) -> State {
        let samples = self.waves.samples();
        let (grid, plate) = self.volts(&more, drive);
        let at = |n: usize| {
            let tube = &self.tubes[n / samples];
            let (grid, plate) = (tube.rest.grid_volts + grid[n], tube.rest.plate_volts + plate[n]);
            tube.law.plate(grid.clamp(-FAR, FAR), plate.clamp(-FAR, FAR))
        };
        let law: Vec<PlateCurrent> = (0..more.len()).map(at).collect();
        let largest = |(tube, law): (&Valve, &[PlateCurrent])| {
            law.iter().fold(f64::max(tube.rest.amps, f64::MIN_POSITIVE), |most, law| f64::max(most, law.amps))
        };
        let most = self.tubes.iter().zip(law.chunks_exact(samples)).map(largest).collect();
        State { drive, more, grid, plate, law, most }
    }

    /// What the law says the tubes carry beyond what the unknowns say.
    fn missing(&self, state: &State) -> Vec<f64> {
        let samples = self.waves.samples();
        let each = state.law.iter().enumerate().map(|(n, law)| {
            let rest = &self.tubes[n / samples].rest;
            law.amps - rest.amps - rest.gm * state.grid[n] - rest.gp * state.plate[n] - state.more[n]
        });
        each.collect()
    }

    fn linearised(&self, state: &State) -> Result<Bordered, Unreached> {
        let (samples, tubes) = (self.waves.samples(), self.tubes.len());
        let size = state.more.len();
        let mut matrix = vec![0.0; size * size];
        let mut by_drive = vec![0.0; size];
        for tube in 0..tubes {
            let rest = &self.tubes[tube].rest;
            let (grid_drive, plate_drive) = &self.drive_waves[tube];
            for n in 0..samples {
                let row = tube * samples + n;
                let (gm, gp) = (state.law[row].gm - rest.gm, state.law[row].gp - rest.gp);
                by_drive[row] = gm * grid_drive[n] + gp * plate_drive[n];
                for other in 0..tubes {
                    let influence = &self.ports.influence[tube * tubes + other];
                    let window = samples - 1 - n..2 * samples - 1 - n;
                    let terms = &mut matrix[row * size + other * samples..][..samples];
                    let by = influence.grid[window.clone()].iter().zip(&influence.plate[window]);
                    for (term, (by_grid, by_plate)) in terms.iter_mut().zip(by) {
                        *term = -(gm * by_grid + gp * by_plate);
                    }
                }
                matrix[row * size + row] += 1.0;
            }
        }
        let matrix = Dense::of(size, matrix).map_err(|_| Unreached::NoConvergence)?;
        matrix.solve(&mut by_drive);
        Ok(Bordered { matrix, by_drive })
    }

    /// From a balanced state to another drive, along its tangent.
    pub(super) fn along(&self, state: &State, drive: f64) -> Result<State, Unreached> {
        let by_drive = self.linearised(state)?.by_drive;
        let more = state.more.iter().zip(&by_drive).map(|(more, by_drive)| more + (drive - state.drive) * by_drive);
        Ok(self.state(more.collect(), drive))
    }

    /// Size of a step, against largest current and drive.
    fn size(&self, step: &[f64], drive_step: f64, state: &State) -> f64 {
        let samples = self.waves.samples();
        let each = step.iter().enumerate().map(|(n, amps)| amps.abs() / state.most[n / samples]);
        let of_drive = if drive_step == 0.0 { 0.0 } else { (drive_step / state.drive).abs() };
        each.fold(of_drive, |most, size| if size > most || size.is_nan() { size } else { most })
    }

    /// A last small step, the tubes' law taken as straight over it.
    fn corrected(&self, state: State, left: &[f64], drive_left: f64, excess: Excess) -> (State, Excess) {
        let State { drive, mut more, law, most, .. } = state;
        for (more, left) in more.iter_mut().zip(left) {
            *more += left;
        }
        let drive = drive + drive_left;
        let (grid, plate) = self.volts(&more, drive);
        (State { drive, more, grid, plate, law, most }, excess)
    }

    /// The balanced state from one nearby.
    pub(super) fn balance(&self, goal: Goal, start: State) -> Result<(State, Excess), Unreached> {
        let mut state = start;
        let mut excess = self.excess(goal, &state);
        let mut missing = self.missing(&state);
        for _ in 0..STEPS {
            let bordered = self.linearised(&state)?;
            let (step, drive_step) = bordered.step(&missing, &excess, goal);
            // The drive is a magnitude: no step may take it through zero.
            let mut share = if drive_step < 0.0 { f64::min(1.0, -0.8 * state.drive / drive_step) } else { 1.0 };
            let size = self.size(&step, drive_step, &state);
            let (next, next_excess, next_missing) = loop {
                let more = state.more.iter().zip(&step).map(|(more, step)| more + share * step).collect();
                let next = self.state(more, state.drive + share * drive_step);
                let (next_excess, next_missing) = (self.excess(goal, &next), self.missing(&next));
                let over = Excess { value: next_excess.value, ..excess.clone() };
                let (left, drive_left) = bordered.step(&next_missing, &over, goal);
                let left_size = self.size(&left, drive_left, &next);
                if left_size * left_size <= NEAR * size {
                    // The same matrix takes off what is left, to within the square of what it took off before.
                    return Ok(self.corrected(next, &left, drive_left, next_excess));
                }
                if left_size <= (1.0 - 0.5 * share) * size {
                    break (next, next_excess, next_missing);
                }
                share *= 0.5;
                if share.partial_cmp(&LEAST_SHARE) != Some(core::cmp::Ordering::Greater) {
                    return Err(Unreached::NoConvergence);
                }
            };
            (state, excess, missing) = (next, next_excess, next_missing);
        }
        Err(Unreached::NoConvergence)
    }
}

/// The factored matrix, and what the currents do for one more unit of drive.
struct Bordered {
    matrix: Dense<f64>,
    by_drive: Vec<f64>,
}

impl Bordered {
    /// The step that makes up for what is missing and takes the excess away: of the currents and of the drive.
    fn step(&self, missing: &[f64], excess: &Excess, goal: Goal) -> (Vec<f64>, f64) {
        let mut step = missing.to_vec();
        self.matrix.solve(&mut step);
        if matches!(goal, Goal::Drive) {
            return (step, 0.0);
        }
        let along = |by: &[f64]| excess.by_current.iter().zip(by).map(|(a, b)| a * b).sum::<f64>();
        let drive_step = -(excess.value + along(&step)) / (excess.by_drive + along(&self.by_drive));
        for (step, by_drive) in step.iter_mut().zip(&self.by_drive) {
            *step += drive_step * by_drive;
        }
        (step, drive_step)
    }
}
