use alloc::{string::String, string::ToString, vec, vec::Vec};

use super::work::Coil;
use crate::{
    calculators::{Curve, Line, PartRow, WiringStep},
    quantity::Unit,
    text::{counted, together},
    value::{Scale, Value},
};

const POINTS: u32 = 81;

/// Inductance and Q over frequency, from a tenth of the working one up to ten times, or until nine tenths of resonance.
pub(super) fn curves(coil: &Coil) -> Vec<Curve> {
    let resonance = coil.self_resonant_hertz();
    let range = (0.1 * coil.hertz, f64::max(f64::min(10.0 * coil.hertz, 0.9 * resonance), 0.2 * coil.hertz));
    let step = libm::log(range.1 / range.0) / f64::from(POINTS - 1);
    let (mut plain, mut q) = (Line { label: "coil_alone".into(), ..Line::default() }, Line::default());
    let mut effective = Line { label: "with_self_capacitance".into(), ..Line::default() };
    q.label = "coil_q".into();
    for k in 0..POINTS {
        let hertz = range.0 * libm::exp(step * f64::from(k));
        let skin = coil.make.skin(hertz);
        let henries = coil.henries_at(&skin);
        plain.x.push(hertz);
        plain.y.push(henries);
        q.x.push(hertz);
        q.y.push(2.0 * core::f64::consts::PI * hertz * henries / coil.ohms(&skin));
        let share = hertz / resonance;
        if share < 0.95 {
            effective.x.push(hertz);
            effective.y.push(henries / (1.0 - share * share));
        }
    }
    let mut inductance = vec![plain];
    if effective.x.len() > 1 {
        inductance.push(effective);
    }
    let curve =
        |key, unit, lines, marks| Curve { key, x: (Unit::Hertz, Scale::Log), y: (unit, Scale::Linear), lines, marks };
    let mark = |figure: f64| vec![("working".to_string(), coil.hertz, figure)];
    let at_work = coil.reactance() / coil.ohms(&coil.skin);
    vec![
        curve("coil_inductance", Unit::Henry, inductance, mark(coil.henries)),
        curve("coil_q", Unit::One, vec![q], mark(at_work)),
    ]
}

/// Pipe and wire.
pub(super) fn parts(coil: &Coil) -> Vec<PartRow> {
    let row = |kind, role, field: &str, value: f64| PartRow {
        reference: "L1".into(),
        kind,
        role,
        field: field.into(),
        value: Some(Value::Number(value)),
        ..PartRow::default()
    };
    vec![row("pipe", "coil_form", "form_diameter", coil.make.form), row("wire", "coil_wire", "wire", coil.make.wire)]
}

/// Along the wire from the cold end to the hot one.
pub(super) fn steps(coil: &Coil) -> Vec<WiringStep> {
    let mut places: Vec<String> = vec!["cold_end".into()];
    places.extend((1..=coil.taps.len()).map(|k| together(&["tap_", &counted(k)])));
    places.push("hot_end".into());
    let pairs = places.windows(2).enumerate();
    pairs
        .filter_map(|(k, pair)| match pair {
            [from, to] => Some(WiringStep { from: from.clone(), to: to.clone(), part: Some("L1".into()), step: k + 1 }),
            _ => None,
        })
        .collect()
}
