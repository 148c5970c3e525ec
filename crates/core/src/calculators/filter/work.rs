use alloc::{vec, vec::Vec};
use core::f64::consts::{FRAC_1_SQRT_2, LN_10};

use super::netlist::{Ladder, build};
use crate::{
    calculators::{
        Caution, Curve, Line, Outcome, Severity, Want,
        bench::{Buying, describe, parts, wiring},
        finite,
        solve::by_ratio,
        solved,
        swept::{response_curve, swept},
    },
    circuit::{Circuit, DcPoint, Fault, Kind, PartId},
    value::{Inputs, Problem, code},
};

/// Where the best and the corners are looked for: the contract's range of frequencies.
const RANGE: (f64, f64) = (0.01, 1e9);
const PER_DECADE: u32 = 6;
const POINTS: u32 = 241;

/// So near to an end of the range the best is the end itself.
const EDGE: f64 = 1e-9;

/// 20/ln(10): decibels in a neper.
const DB: f64 = 20.0 / LN_10;

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let mut ladder = build(inputs)?;
    let answer = match inputs.maybe("want_corner_hertz") {
        Some(hertz) => Some(solve(&mut ladder, inputs.text("solve"), hertz)?),
        None => None,
    };
    let dc = solved(ladder.circuit.dc())?;
    let mut outcome = Outcome::default();
    let shown = solved(passes(&ladder, &dc))?;
    if want.answers {
        solved(answers(&mut outcome, inputs, &ladder, &dc, &shown))?;
        outcome.answer_if("solved", answer);
        outcome.answer_if("time_seconds", time_seconds(&ladder.circuit));
    }
    if want.cautions && shown.corners.is_empty() {
        outcome.caution(Caution::new(Severity::Note, "corner_none").about("corners_hertz"));
    }
    if want.cautions && shown.best_hertz.is_none() {
        outcome.caution(Caution::new(Severity::Note, "best_unbounded").about("best_hertz"));
    }
    if want.curves {
        outcome.curves.push(solved(drawn(&ladder, &dc, inputs, &shown))?);
    }
    if want.parts {
        let buying = Buying { dc: &dc, cold_volts: 0.0, tube: "" };
        outcome.parts = parts(&ladder.circuit, &buying);
    }
    if want.wiring {
        outcome.wiring = wiring(&ladder.circuit, &[], &[]);
    }
    if want.circuit {
        outcome.circuit = Some(describe(&ladder.circuit, &dc, &[], &[]));
    }
    Ok(outcome)
}

/// What passes, and where half its power no longer does.
struct Passes {
    best_db: f64,
    /// None where it goes on rising to the end of what can be asked about.
    best_hertz: Option<f64>,
    corners: Vec<f64>,
}

fn passes(ladder: &Ladder, dc: &DcPoint) -> Result<Passes, Fault> {
    let mut response = ladder.circuit.response(dc)?;
    let mut sweep = response.sweep(ladder.output, RANGE.0, RANGE.1, PER_DECADE)?;
    let best = sweep.greatest();
    let inside = best.hertz > RANGE.0 * (1.0 + EDGE) && best.hertz < RANGE.1 * (1.0 - EDGE);
    let best_hertz = inside.then_some(best.hertz);
    let corners = sweep.crossings(best.ln_gain + libm::log(FRAC_1_SQRT_2))?;
    Ok(Passes { best_db: DB * best.ln_gain, best_hertz, corners })
}

fn answers(outcome: &mut Outcome, inputs: &Inputs, ladder: &Ladder, dc: &DcPoint, shown: &Passes) -> Result<(), Fault> {
    let mut response = ladder.circuit.response(dc)?;
    let at = response.at(inputs.number("hertz"))?;
    let (gain, input) = (at.volts(ladder.output), at.volts(ladder.input));
    let drawn = ladder.circuit.find("Source").map(|source| at.terminal_amps(source, 0).magnitude());
    outcome.answer("gain_db", finite(DB * gain.ln_magnitude()));
    outcome.answer("phase_degrees", finite(gain.angle() * 180.0 / core::f64::consts::PI));
    outcome.answer("best_gain_db", finite(shown.best_db));
    outcome.answer("best_hertz", shown.best_hertz.filter(|_| shown.best_db.is_finite()));
    outcome.answer("corners_hertz", shown.corners.clone());
    outcome.answer("input_ohms", drawn.and_then(|amps| finite(input.magnitude() / amps)));
    Ok(())
}

/// R·C of a lone capacitor: its farads times the resistance that it sees.
///
/// The resistance is what 1 V in its place drives a current through.
fn time_seconds(circuit: &Circuit) -> Option<f64> {
    let reactive = circuit.parts().filter(|(_, part)| matches!(part.kind, Kind::Capacitor { .. } | Kind::Coil { .. }));
    let reactive: Vec<(PartId, Kind)> = reactive.map(|(id, part)| (id, part.kind)).collect();
    let [(id, Kind::Capacitor { farads })] = reactive.as_slice() else { return None };
    let mut probed = circuit.clone();
    probed.set(*id, Kind::Source { volts: 1.0, signal: 0.0 });
    // Right across a source without resistance there is no time to speak of, and no current that could be told.
    let amps = libm::fabs(probed.dc().ok()?.amps(*id));
    finite(farads / amps)
}

/// The least and most that a solved figure may have: the contract's ranges.
fn span(kind: &Kind) -> Option<(f64, f64)> {
    match kind {
        Kind::Resistor { .. } => Some((1e-3, 1e9)),
        Kind::Capacitor { .. } => Some((1e-14, 0.1)),
        Kind::Coil { .. } => Some((1e-9, 1e3)),
        _ => None,
    }
}

fn with_figure(kind: &Kind, figure: f64) -> Kind {
    match *kind {
        Kind::Resistor { .. } => Kind::Resistor { ohms: figure },
        Kind::Capacitor { .. } => Kind::Capacitor { farads: figure },
        Kind::Coil { ohms, .. } => Kind::Coil { henries: figure, ohms },
        other => other,
    }
}

/// The figure of the part whose field is `path` that puts a corner at `hertz`, nearest to what it was by ratio; the
/// ladder keeps it.
fn solve(ladder: &mut Ladder, path: &str, hertz: f64) -> Result<f64, Vec<Problem>> {
    let part = ladder.circuit.parts().find(|(_, part)| part.field == path && span(&part.kind).is_some());
    let Some((id, kind)) = part.map(|(id, part)| (id, part.kind)) else {
        return Err(vec![Problem::new("solve", code::NO_SUCH_PART).about(path)]);
    };
    let dc = solved(ladder.circuit.dc())?;
    let (least, most) = span(&kind).unwrap_or((1.0, 1.0));
    let short = |figure: f64, ladder: &mut Ladder| -> Result<f64, Fault> {
        ladder.circuit.set(id, with_figure(&kind, figure));
        let best = passes(ladder, &dc)?.best_db;
        let here = ladder.circuit.response(&dc)?.at(hertz)?.volts(ladder.output).ln_magnitude();
        Ok(DB * here - best - DB * libm::log(FRAC_1_SQRT_2))
    };
    let was = kind.value().unwrap_or(least);
    let found = solved(by_ratio((least, most), was, |figure| short(figure, ladder)))?.figure;
    let Some(figure) = found else {
        return Err(vec![Problem::no_solution("want_corner_hertz", "no_such_corner")]);
    };
    ladder.circuit.set(id, with_figure(&kind, figure));
    Ok(figure)
}

/// Three decades around the corners, or around the frequency asked about.
fn drawn(ladder: &Ladder, dc: &DcPoint, inputs: &Inputs, shown: &Passes) -> Result<Curve, Fault> {
    let asked = inputs.number("hertz");
    let least = shown.corners.iter().copied().fold(asked, f64::min);
    let most = shown.corners.iter().copied().fold(asked, f64::max);
    let (least, most) = (f64::max(RANGE.0, least / 30.0), f64::min(RANGE.1, most * 30.0));
    let mut response = ladder.circuit.response(dc)?;
    let line = swept(&mut response, ladder.output, (least, most), POINTS)?;
    Ok(response_curve(vec![Line { label: "response".into(), ..line }]))
}
