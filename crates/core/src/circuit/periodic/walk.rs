//! The way round when Newton does not find the state from the small-signal guess: raise the drive step by step.

use alloc::vec;

use super::{
    super::root::crossing,
    Periodic, Unreached,
    balance::State,
    goal::{Excess, Goal},
};

/// Steps of the drive at most.
const STEPS: usize = 60;
/// Each is so many times the one before.
const RATIO: f64 = 1.25;

impl Periodic {
    /// The state at a given drive, from rest if need be.
    pub(super) fn walk_to(&self, drive: f64) -> Result<(State, Excess), Unreached> {
        let unknowns = self.tubes.len() * self.waves.samples();
        let at = |more, drive| self.balance(Goal::Drive, self.state(more, drive));
        if let Ok(found) = at(vec![0.0; unknowns], drive) {
            return Ok(found);
        }
        let mut more = vec![0.0; unknowns];
        for step in 1..=STEPS {
            let (state, excess) = at(more, drive * step as f64 / STEPS as f64)?;
            if step == STEPS {
                return Ok((state, excess));
            }
            more = state.more;
        }
        Err(Unreached::NoConvergence)
    }

    /// The smallest drive that meets a goal, from an eighth of what it would be if the tubes were linear.
    pub(super) fn walk(&self, goal: Goal, guess: f64) -> Result<(State, Excess), Unreached> {
        let mut drive = guess / 8.0;
        let (mut state, _) = self.walk_to(drive)?;
        let mut before = self.excess(goal, &state).value;
        for _ in 0..STEPS {
            let (start, start_value) = (drive, before);
            if start_value >= 0.0 {
                // Met below an eighth of the guess: no longer the branch that begins at rest.
                return Err(Unreached::NoConvergence);
            }
            drive *= RATIO;
            state = self.balance(Goal::Drive, self.state(state.more, drive))?.0;
            before = self.excess(goal, &state).value;
            if before >= 0.0 {
                let ends = ((start, start_value), (drive, before));
                let more = state.more.clone();
                let drive = crossing(ends, |drive| {
                    let (state, _) = self.balance(Goal::Drive, self.state(more.clone(), drive))?;
                    Ok(self.excess(goal, &state).value)
                })?;
                let (state, _) = self.balance(Goal::Drive, self.state(more, drive))?;
                let excess = self.excess(goal, &state);
                return Ok((state, excess));
            }
        }
        Err(Unreached::OutOfReach)
    }
}
