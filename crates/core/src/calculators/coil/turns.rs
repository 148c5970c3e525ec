use alloc::{vec, vec::Vec};

use super::make::Make;
use crate::value::Problem;

/// Steps at most; halving alone would need some forty, and ten are usual.
const STEPS: usize = 60;
/// So near by ratio is there.
const THERE: f64 = 1e-13;

/// Where a rising `ratio` reaches 1, between `least` and `most`; none where it does not.
///
/// By straight lines between logarithms, along which inductance is nearly straight; the end that stays is halved
/// (Illinois), and each fourth step halves the range, so that it always ends.
pub(super) fn reached((least, most): (f64, f64), ratio: &dyn Fn(f64) -> f64) -> Option<f64> {
    let over = |place: f64| libm::log(ratio(libm::exp(place)));
    let (mut low, mut high) = (libm::log(least), libm::log(most));
    let (mut under, mut above) = (libm::log(ratio(least)), libm::log(ratio(most)));
    if !(under <= 0.0 && above >= 0.0) {
        return None;
    }
    let mut rose = None;
    for step in 1..STEPS {
        let straight = low + (high - low) * under / (under - above);
        let place = if step % 4 == 0 || !straight.is_finite() { 0.5 * (low + high) } else { straight };
        let found = over(place);
        if found < 0.0 {
            (low, under) = (place, found);
            above *= if rose == Some(true) { 0.5 } else { 1.0 };
        } else {
            (high, above) = (place, found);
            under *= if rose == Some(false) { 0.5 } else { 1.0 };
        }
        rose = Some(found < 0.0);
        if libm::fabs(found) < THERE || high - low < THERE {
            return Some(libm::exp(place));
        }
    }
    Some(libm::exp(0.5 * (low + high)))
}

/// Inductance of `turns` of the make, whatever their number.
pub(super) struct Amount<'a> {
    make: &'a Make,
    inner: f64,
}

impl<'a> Amount<'a> {
    pub fn new(make: &'a Make, inner: f64) -> Self {
        Amount { make, inner }
    }

    pub fn henries(&self, turns: f64) -> f64 {
        self.make.winding(turns, self.inner).henries(turns)
    }

    /// The turns that give `henries`, from a twentieth up to the most that have room.
    pub fn turns(&self, henries: f64) -> Option<f64> {
        // Long windings are dear to sum: no longer ones are tried than needed.
        let most = self.make.most_turns();
        let mut range = (0.05, f64::min(16.0, most));
        while range.1 < most && self.henries(range.1) < henries {
            range = (range.1, f64::min(2.0 * range.1, most));
        }
        reached(range, &|turns| self.henries(turns) / henries)
    }
}

/// What a wanted inductance comes to in whole turns.
pub(super) struct Whole {
    /// The nearest whole number.
    pub turns: f64,
    /// The turns that would give it to the last digit.
    pub exact: f64,
    /// Turns, and the pitch at which they give it: these turns where there is room, else one more, spread.
    pub fix: Option<(f64, f64)>,
}

/// # Errors
/// `no_solution` where a single turn has far too much, or where the most turns have too little.
pub(super) fn whole(make: &Make, inner: f64, henries: f64) -> Result<Whole, Vec<Problem>> {
    let amount = Amount::new(make, inner);
    let most = libm::floor(make.most_turns());
    let Some(exact) = amount.turns(henries) else {
        let reason = if amount.henries(0.05) > henries { "less_than_a_turn" } else { "too_many_turns" };
        return Err(vec![Problem::no_solution("henries", reason)]);
    };
    if most < 1.0 {
        return Err(vec![Problem::no_solution("winding_length", "turns_overlap")]);
    }
    let low = f64::max(libm::floor(exact), 1.0).min(most);
    let high = f64::min(low + 1.0, most);
    let off = |turns: f64| libm::fabs(amount.henries(turns) - henries);
    let turns = if off(high) < off(low) { high } else { low };
    let at = |turns: f64, pitch: f64| make.at_pitch(pitch, turns, inner).henries(turns);
    // The more the turns are spread the less they have: from touching to half as far again.
    let fix = [turns, turns + 1.0].into_iter().find_map(|turns| {
        let range = (make.overall, 1.5 * make.pitch(turns));
        reached(range, &|pitch| henries / at(turns, pitch)).map(|pitch| (turns, pitch))
    });
    Ok(Whole { turns, exact, fix })
}
