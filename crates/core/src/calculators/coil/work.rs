use alloc::{string::ToString, vec::Vec};

use super::{
    answers::answer,
    cautions::cautions,
    correction::{Correction, correction},
    make::Make,
    pictures::{curves, parts, steps},
    turns::{Whole, whole},
};
use crate::{
    calculators::{Outcome, Want},
    coil::{MU, Skin, Winding, phi, self_farads},
    text::{counted, together},
    value::{Inputs, Problem, Value, code},
};

/// The coil as it is to be wound, and what was found on the way.
pub(super) struct Coil<'a> {
    pub inputs: &'a Inputs,
    pub make: Make,
    pub turns: f64,
    pub hertz: f64,
    pub skin: Skin,
    pub winding: Winding,
    pub henries: f64,
    /// What a wish for an inductance came to.
    pub whole: Option<Whole>,
    pub correction: Option<Correction>,
    pub taps: Vec<f64>,
}

impl Coil<'_> {
    pub fn length(&self) -> f64 {
        self.turns * self.make.pitch(self.turns)
    }

    pub fn wire_length(&self) -> f64 {
        self.turns * self.make.turn_length(self.turns)
    }

    pub fn dc_ohms(&self) -> f64 {
        let area = core::f64::consts::FRAC_PI_4 * self.make.wire * self.make.wire;
        self.make.ohm_metres * self.wire_length() / area
    }

    /// Resistance at a frequency: the wire's own skin, and what the neighbours' field across it adds.
    pub fn ohms(&self, skin: &Skin) -> f64 {
        let crowding = phi(self.length() / self.make.mean(), self.make.wire / self.make.pitch(self.turns));
        self.dc_ohms() * (skin.resistance + (crowding - 1.0) * skin.across)
    }

    pub fn self_farads(&self) -> f64 {
        self_farads(self.make.mean(), self.length())
    }

    pub fn self_resonant_hertz(&self) -> f64 {
        0.5 / (core::f64::consts::PI * crate::root::sqrt(self.henries * self.self_farads()))
    }

    /// Inductance at another frequency: only the wire's inside changes.
    pub fn henries_at(&self, skin: &Skin) -> f64 {
        let inside = 0.125 * MU * self.make.mean();
        self.henries + inside * self.turns * (skin.inner - self.skin.inner)
    }
}

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let make = Make::read(inputs)?;
    let hertz = inputs.number("hertz");
    let skin = make.skin(hertz);
    let wish = match inputs.maybe("henries") {
        Some(henries) => Some(whole(&make, skin.inner, henries)?),
        None => None,
    };
    let turns = wish.as_ref().map_or_else(|| inputs.number("turns"), |wish| wish.turns);
    if turns > make.most_turns() {
        return Err([Problem::no_solution("winding_length", "turns_overlap")].into());
    }
    let taps: Vec<f64> = inputs.items("taps").iter().filter_map(Value::number).collect();
    let outside = taps.iter().enumerate().filter(|(_, tap)| **tap >= turns);
    let problems: Vec<Problem> = outside
        .map(|(k, _)| {
            Problem::new(together(&["taps[", &counted(k), "]"]), code::NOT_BELOW)
                .bounds(None, Some(turns))
                .about("turns".to_string())
        })
        .collect();
    if !problems.is_empty() {
        return Err(problems);
    }
    let correction = correction(inputs, &make, turns)?;
    let winding = make.winding(turns, skin.inner);
    let henries = winding.henries(turns);
    let coil = Coil { inputs, make, turns, hertz, skin, winding, henries, whole: wish, correction, taps };
    let mut outcome = Outcome::default();
    if want.answers {
        answer(&coil, &mut outcome);
    }
    if want.cautions {
        cautions(&coil, &mut outcome);
    }
    if want.curves {
        outcome.curves = curves(&coil);
    }
    if want.parts {
        outcome.parts = parts(&coil);
    }
    if want.wiring {
        outcome.wiring = steps(&coil);
    }
    Ok(outcome)
}
