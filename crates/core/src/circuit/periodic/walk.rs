//! The way round when Newton does not find the state from the small-signal guess: along the branch that begins at rest.

use alloc::vec;

use super::{
    super::root::crossing,
    Periodic, Unreached,
    balance::State,
    goal::{Excess, Goal},
};

/// Steps of the drive at most.
const STEPS: usize = 150;
/// The first step, as a fraction of the drive; halved where it fails, down to the least, and longer where it does not.
const FIRST_STEP: f64 = 0.25;
const LONGEST_STEP: f64 = 0.5;
const SHORTEST_STEP: f64 = 1e-3;
/// Where the walk begins, against what would do if the tubes were linear: there they nearly are.
const BEGINNING: f64 = 1.0 / 64.0;

/// And where it ends: what would then grow is only what leaks past the tube.
const FARTHEST: f64 = 30.0;

/// A walk along the balanced states, the drive rising.
struct Walk<'p> {
    periodic: &'p Periodic,
    state: State,
    step: f64,
}

impl<'p> Walk<'p> {
    fn begin(periodic: &'p Periodic, drive: f64) -> Result<Self, Unreached> {
        let rest = vec![0.0; periodic.tubes.len() * periodic.waves.samples()];
        let (state, _) = periodic.balance(Goal::Drive, periodic.state(rest, drive))?;
        Ok(Walk { periodic, state, step: FIRST_STEP })
    }

    /// One step, no farther than `most`: from the tangent of where it stands.
    fn on(&mut self, most: f64) -> Result<(), Unreached> {
        loop {
            let drive = f64::min(self.state.drive * (1.0 + self.step), most);
            let start = self.periodic.along(&self.state, drive)?;
            if let Ok((state, _)) = self.periodic.balance(Goal::Drive, start) {
                self.state = state;
                self.step = f64::min(1.5 * self.step, LONGEST_STEP);
                return Ok(());
            }
            self.step *= 0.5;
            if self.step < SHORTEST_STEP {
                return Err(Unreached::NoConvergence);
            }
        }
    }
}

impl Periodic {
    /// The state at a given drive, from rest if need be.
    pub(super) fn walk_to(&self, drive: f64) -> Result<(State, Excess), Unreached> {
        let unknowns = self.tubes.len() * self.waves.samples();
        if let Ok(found) = self.balance(Goal::Drive, self.state(vec![0.0; unknowns], drive)) {
            return Ok(found);
        }
        let mut walk = Walk::begin(self, drive * BEGINNING)?;
        for _ in 0..STEPS {
            walk.on(drive)?;
            if walk.state.drive >= drive {
                let excess = self.excess(Goal::Drive, &walk.state);
                return Ok((walk.state, excess));
            }
        }
        Err(Unreached::NoConvergence)
    }

    /// The smallest drive that meets a goal.
    pub(super) fn walk(&self, goal: Goal, guess: f64) -> Result<(State, Excess), Unreached> {
        let mut walk = Walk::begin(self, guess * BEGINNING)?;
        let mut value = self.excess(goal, &walk.state).value;
        if value >= 0.0 {
            return Err(Unreached::NoConvergence);
        }
        for _ in 0..STEPS {
            let (before, start) = (walk.state.clone(), (walk.state.drive, value));
            walk.on(f64::INFINITY)?;
            value = self.excess(goal, &walk.state).value;
            if value < 0.0 {
                if walk.state.drive > FARTHEST * guess {
                    break;
                }
                continue;
            }
            // The goal lies in this step: Newton from its nearer side, else between its ends.
            if let Ok(found) = self.balance(goal, walk.state.clone())
                && (start.0..=walk.state.drive).contains(&found.0.drive)
            {
                return Ok(found);
            }
            let ends = (start, (walk.state.drive, value));
            let at = |drive| self.balance(Goal::Drive, self.along(&before, drive)?);
            let drive = crossing(ends, |drive| Ok(self.excess(goal, &at(drive)?.0).value))?;
            let (state, _) = at(drive)?;
            let excess = self.excess(goal, &state);
            return Ok((state, excess));
        }
        Err(Unreached::OutOfReach)
    }
}
