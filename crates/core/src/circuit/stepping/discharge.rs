use alloc::vec::Vec;

use super::{Chain, advance::Advance, chain::Layout, rough::unknowns};

/// The shortest time told apart, and doublings of it: to four months.
const SHORTEST: f64 = 1e-5;
const DOUBLINGS: usize = 40;

/// Seconds after switching off until every node is under `below` volts, the rectifier passing nothing, node 0 at
/// `volts` and the rest as the chain's loads have it; none where that never comes.
#[must_use]
pub fn discharge_seconds(chain: &Chain, volts: f64, below: f64) -> Option<f64> {
    let layout = chain.layout();
    let mut at = unknowns(chain, volts);
    at.truncate(layout.size);
    let most = |x: &[f64]| most_volts(&layout, x);
    if most(&at) < below {
        return Some(0.0);
    }
    if chain.drawn().1 <= 0.0 {
        return None;
    }
    let (matrix, constant) = chain.equations(&layout);
    let nothing = alloc::vec![0.0; layout.size];
    let mut steps: Vec<Advance> = alloc::vec![Advance::new(&matrix, &nothing, &constant, SHORTEST)];
    let mut after = nothing;
    loop {
        let step = steps.last()?;
        step.hold.apply(&at, &step.still, &mut after);
        if most(&after) < below {
            break;
        }
        // Past the last doubling rounding would grow with the power: longer than that is never.
        if steps.len() > DOUBLINGS || after.iter().any(|x| !x.is_finite()) {
            return None;
        }
        let next = step.twice();
        steps.push(next);
    }
    let mut seconds = 0.0;
    for step in steps.iter().rev() {
        step.hold.apply(&at, &step.still, &mut after);
        if most(&after) >= below {
            core::mem::swap(&mut at, &mut after);
            seconds += step.seconds;
        }
    }
    // The last piece is straight.
    let step = steps.first()?;
    step.hold.apply(&at, &step.still, &mut after);
    let (before, then) = (most(&at), most(&after));
    let share = if before > then { ((before - below) / (before - then)).clamp(0.0, 1.0) } else { 0.0 };
    Some(seconds + step.seconds * share)
}

fn most_volts(layout: &Layout, x: &[f64]) -> f64 {
    layout.nodes.iter().map(|(place, root)| x[*place] / root).fold(f64::NEG_INFINITY, f64::max)
}
