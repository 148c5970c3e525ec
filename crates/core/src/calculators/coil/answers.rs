use alloc::vec::Vec;
use core::f64::consts::PI;

use super::{
    bands::{band_turns, tapped},
    turns::Amount,
    work::Coil,
};
use crate::{calculators::Outcome, value::Value};

/// Heat that leaves a coil standing in still air, in W/(m²·K): a usual figure for convection and radiation together.
/// Common practice, no source.
const LEAVES: f64 = 10.0;

impl Coil<'_> {
    /// How far the computed Q may be off, in percent: Medhurst's table is good to a few percent for many turns; few turns,
    /// forms and joints of the real coil do the rest (judgement, no source).
    pub fn q_percent(&self) -> f64 {
        10.0 + 20.0 / (1.0 + self.turns / 10.0)
    }

    /// Medhurst states 5 % for many turns and shapes within his table (from memory); few turns and flat coils are further
    /// off (judgement, no source).
    pub fn self_percent(&self) -> f64 {
        let ratio = self.length() / self.make.mean();
        5.0 + 20.0 / (1.0 + self.turns / 5.0) + 10.0 * f64::max(0.1 / ratio - 1.0, 0.0).min(2.0)
    }

    /// Inductance between the ends at the working frequency with the self-capacitance across them; none at and past
    /// resonance.
    pub fn effective_henries(&self) -> Option<f64> {
        let ratio = self.hertz / self.self_resonant_hertz();
        let left = 1.0 - ratio * ratio;
        (left > 1e-9).then(|| self.henries / left)
    }

    pub fn reactance(&self) -> f64 {
        2.0 * PI * self.hertz * self.henries
    }

    /// Degrees that the given current warms the coil by.
    pub fn rise(&self, amps: f64) -> f64 {
        let around = PI * (self.make.mean() + self.make.overall) * (self.length() + self.make.overall);
        amps * amps * self.ohms(&self.skin) / (LEAVES * around)
    }

    /// Measured inductance over computed, or 1.
    pub fn factor(&self) -> f64 {
        self.correction.as_ref().map_or(1.0, |correction| correction.factor)
    }

    /// The turns that make the coil as measured into the one that was meant.
    pub fn corrected_turns(&self) -> Option<f64> {
        let meant = self.inputs.maybe("henries").unwrap_or(self.henries);
        Amount::new(&self.make, self.skin.inner).turns(meant / self.factor())
    }
}

pub(super) fn answer(coil: &Coil, outcome: &mut Outcome) {
    let (inputs, make, turns) = (coil.inputs, &coil.make, coil.turns);
    let ohms = coil.ohms(&coil.skin);
    outcome.answer("henries", coil.henries);
    outcome.answer("turns", turns);
    outcome.answer("pitch", make.pitch(turns));
    outcome.answer("winding_length", coil.length());
    outcome.answer("wire_length", coil.wire_length());
    outcome.answer("wire_to_cut", coil.wire_length() + 2.0 * inputs.number("lead_length"));
    outcome.answer("mean_diameter", make.mean());
    if let (Some(whole), Some(wanted)) = (&coil.whole, inputs.maybe("henries")) {
        outcome.answer("exact_turns", whole.exact);
        outcome.answer("rounding_percent", 100.0 * (coil.henries / wanted - 1.0));
        outcome.answer_if("fix_turns", whole.fix.map(|(turns, _)| turns));
        outcome.answer_if("fix_pitch", whole.fix.map(|(_, pitch)| pitch));
    }
    outcome.answer("dc_ohms", coil.dc_ohms());
    outcome.answer("rf_ohms", ohms);
    outcome.answer("q", coil.reactance() / ohms);
    outcome.answer("q_percent", coil.q_percent());
    outcome.answer("self_farads", coil.self_farads());
    outcome.answer("self_farads_percent", coil.self_percent());
    outcome.answer("self_resonant_hertz", coil.self_resonant_hertz());
    outcome.answer("effective_henries", coil.effective_henries());
    if let Some(amps) = inputs.maybe("amps") {
        outcome.answer("volts", amps * libm::hypot(coil.reactance(), ohms));
        outcome.answer("watts", amps * amps * ohms);
        outcome.answer("rise_celsius", coil.rise(amps));
    }
    tap_answers(coil, outcome);
    if let Some(links) = inputs.maybe("link_turns") {
        link_answers(coil, links, outcome);
    }
    if let Some(correction) = &coil.correction {
        outcome.answer("correction", correction.factor);
        outcome.answer_if("stray_farads", correction.stray);
        outcome.answer("corrected_turns", coil.corrected_turns());
    }
    let core = inputs
        .maybe("core_henries")
        .map(|core| crate::root::sqrt(inputs.maybe("henries").unwrap_or(coil.henries) / core));
    outcome.answer_if("core_turns", core);
    outcome.answer("template", template(coil));
}

fn tap_answers(coil: &Coil, outcome: &mut Outcome) {
    let shorted = coil.inputs.text("tap_use") == "shorted";
    let taps = coil.taps.iter().map(|tap| tapped(&coil.winding, coil.turns, *tap, shorted));
    let (henries, coupling): (Vec<f64>, Vec<f64>) = taps.map(|tap| (tap.henries, tap.coupling)).unzip();
    outcome.answer("tap_henries", henries);
    outcome.answer("tap_coupling", coupling);
    if !coil.inputs.items("bands").is_empty() {
        outcome.answer("band_turns", band_turns(coil.inputs, &coil.winding, coil.turns, coil.factor()));
    }
}

/// Over the cold end in a second layer, or beside it on the form; the same wire at the same pitch.
fn link_answers(coil: &Coil, links: f64, outcome: &mut Outcome) {
    let make = &coil.make;
    let beside = coil.inputs.text("link_place") == "beside";
    let diameter = make.mean() + if beside { 0.0 } else { 2.0 * make.overall };
    let pitch = make.pitch(coil.turns);
    let link = crate::coil::Winding::new(diameter, pitch, make.wire, coil.skin.inner, links);
    let henries = link.henries(links);
    let mutual = coil.winding.to_link(coil.turns, diameter, links, beside);
    outcome.answer("link_coupling", mutual / crate::root::sqrt(henries * coil.henries));
    outcome.answer("link_henries", henries);
}

/// The winding as it lies on paper wrapped once round the form: `around` from the seam, `along` from the cold end.
fn template(coil: &Coil) -> Value {
    let (around, pitch) = (PI * coil.make.form, coil.make.pitch(coil.turns));
    let point = |mark: &'static str, turn: f64| {
        Value::record([
            ("mark", mark.into()),
            ("turn", turn.into()),
            ("along", (turn * pitch).into()),
            ("around", ((turn - libm::floor(turn)) * around).into()),
        ])
    };
    let mut points = Vec::from([point("cold_end", 0.0)]);
    points.extend(coil.taps.iter().map(|tap| point("tap", *tap)));
    points.push(point("hot_end", coil.turns));
    if let Some(links) = coil.inputs.maybe("link_turns") {
        let (start, end) = if coil.inputs.text("link_place") == "beside" { (-links - 1.0, -1.0) } else { (0.0, links) };
        points.push(point("link_start", start));
        points.push(point("link_end", end));
    }
    Value::record([
        ("around", around.into()),
        ("length", coil.length().into()),
        ("pitch", pitch.into()),
        ("wire", coil.make.overall.into()),
        ("turns", coil.turns.into()),
        ("points", Value::List(points)),
    ])
}
