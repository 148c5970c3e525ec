use alloc::{string::String, vec, vec::Vec};

use super::{
    lift::tilt,
    microphone,
    netlist::build,
    speech::{self, Speech},
    wish::{Goal, Wish, nothing_passes, spread},
};
use crate::{
    calculators::{
        Caution, Curve, Line, Outcome, Severity, Want, finite, solved,
        swept::{decibels, response_curve, swept},
        triode::{Amplifier, Murmur, Rest, Swing, Trial, answer_rest, bench, cautions, under},
    },
    circuit::{Fault, Kind, NodeId, Response},
    value::{Inputs, Problem, Value, code},
};

/// Where the response is drawn, in hertz.
const DRAWN: (f64, f64) = (50.0, 15e3);
const DRAWN_POINTS: u32 = 400;

/// One position of the switch, worked.
pub(super) struct Position {
    pub index: usize,
    pub amplifier: Amplifier,
    pub output: NodeId,
    response: Response,
    gain_db: Option<f64>,
    tilt: Option<f64>,
    speech: Option<Speech>,
}

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let count = inputs.items("positions").len();
    let wished = wished(inputs, count)?;
    let (first, output) = build(inputs, 0);
    let rest = Rest::of(&first)?;
    let mut positions = Vec::with_capacity(count);
    positions.push(solved(position(0, first, output, &rest, inputs))?);
    for closed in 1..count {
        let (amplifier, output) = build(inputs, closed);
        positions.push(solved(position(closed, amplifier, output, &rest, inputs))?);
    }
    let mut outcome = Outcome::default();
    let reference = positions.first().and_then(|position| position.tilt);
    let lifts: Vec<Option<f64>> = positions.iter().map(|position| Some(position.tilt? - reference?)).collect();
    let headroom = if want.answers || want.cautions { solved(headroom(&positions, inputs, &rest))? } else { None };
    if want.answers {
        let gains: Vec<Value> = positions.iter().map(|position| position.gain_db.into()).collect();
        let volts = |position: &Position| Value::Number(position.volts(inputs).unwrap_or(0.0));
        outcome.answer("gain_db_1k", Value::List(gains));
        outcome.answer("lift_db", lifts.iter().copied().map(Value::from).collect::<Vec<_>>());
        outcome.answer("output_volts", positions.iter().map(volts).collect::<Vec<_>>());
        heard(&mut outcome, &positions, inputs);
        outcome.answer("headroom_db", headroom.map(|(db, _)| db));
        let (source, load) = solved(ohms_seen(&positions[0], &rest))?;
        outcome.answer("source_ohms_seen", vec![source; count]);
        outcome.answer("load_ohms_seen", vec![load; count]);
        answer_rest(&mut outcome, &positions[0].amplifier, &rest);
    }
    if want.answers || want.cautions {
        solved(microphone::told(&mut outcome, inputs, (&positions[0].amplifier, &rest)))?;
        solved(murmurs(&mut outcome, &mut positions, inputs))?;
    }
    if want.cautions {
        cautions(&mut outcome, inputs, &positions[0].amplifier, &rest);
        tight(&mut outcome, headroom, inputs);
        if reference.is_none() {
            outcome.caution(Caution::new(Severity::Note, "level_zero").about("level"));
        }
        if let (Some(reference), Some(position)) = (reference, positions.iter().skip(1).last()) {
            solved(spread(&mut outcome, position, label(inputs, position.index), reference, &rest))?;
        }
    }
    if let Some(place) = wished {
        let goals = Goal::all(inputs);
        match reference {
            Some(reference) => {
                let wish = Wish { position: &positions[place], reference, rest: &rest, inputs };
                solved(wish.answer(&mut outcome, &goals))?;
            }
            None => nothing_passes(&mut outcome, &goals),
        }
    }
    if want.curves {
        outcome.curves.push(solved(drawn(&mut positions, inputs))?);
        outcome
            .curves
            .push(speech::drawn(positions.iter().map(|each| (label(inputs, each.index), &each.speech)), inputs));
    }
    bench(&mut outcome, want, inputs, &positions[0].amplifier, &rest, output)?;
    Ok(outcome)
}

impl Position {
    /// What the microphone gives at the load, at 1 kHz.
    fn volts(&self, inputs: &Inputs) -> Option<f64> {
        Some(libm::pow(10.0, self.gain_db? / 20.0) * inputs.number("microphone_volts"))
    }
}

fn position(
    index: usize,
    amplifier: Amplifier,
    output: NodeId,
    rest: &Rest,
    inputs: &Inputs,
) -> Result<Position, Fault> {
    let mut response = amplifier.circuit.response(&rest.dc)?;
    let passes = inputs.number("level") > 0.0;
    let gain_db = if passes { finite(decibels(&mut response, output, 1000.0)?) } else { None };
    let tilt = if passes { finite(tilt(&mut response, output)?) } else { None };
    let speech = if passes { Speech::through(&mut response, output)? } else { None };
    Ok(Position { index, amplifier, output, response, gain_db, tilt, speech })
}

/// Hum and hiss in each position, and what mends the hum of the one that hums most.
fn murmurs(outcome: &mut Outcome, positions: &mut [Position], inputs: &Inputs) -> Result<(), Fault> {
    let (mut hums, mut hum_dbs, mut hisses, mut hiss_dbs) = (vec![], vec![], vec![], vec![]);
    let mut worst: Option<(f64, usize)> = None;
    for position in positions {
        let murmur = Murmur::at(position.output, &mut position.response, &position.amplifier, inputs)?;
        let voice = position.volts(inputs);
        hums.push(Value::Number(murmur.hum.unwrap_or(0.0)));
        let hum_db = murmur.hum.and_then(|hum| under(hum, voice));
        if let Some(hum_db) = hum_db.filter(|db| worst.is_none_or(|(other, _)| *db > other)) {
            worst = Some((hum_db, position.index));
        }
        if murmur.hum.is_some() {
            hum_dbs.push(Value::from(hum_db));
        }
        hisses.push(Value::Number(murmur.hiss));
        hiss_dbs.push(Value::from(under(murmur.hiss, voice)));
    }
    outcome.answer("hum_volts", hums);
    outcome.answer_if("hum_db", Some(hum_dbs).filter(|dbs| !dbs.is_empty()));
    outcome.answer("hiss_volts", hisses);
    outcome.answer("hiss_db", hiss_dbs);
    if let Some((hum_db, closed)) = worst {
        let build = |inputs: &Inputs| build(inputs, closed);
        let voice = |inputs: &Inputs, amplifier: &Amplifier, rest: &Rest, output| {
            let mut response = amplifier.circuit.response(&rest.dc).ok()?;
            let gain = response.at(1000.0).ok()?.volts(output).magnitude();
            Some(gain * inputs.number("microphone_volts"))
        };
        Trial { build: &build, voice: &voice }.answer(outcome, inputs, Some(hum_db));
    }
    Ok(())
}

/// What speech does in each position, the first one being the measure of level and loudness.
fn heard(outcome: &mut Outcome, positions: &[Position], inputs: &Inputs) {
    let first = positions.first().and_then(|position| position.speech.as_ref());
    let change = |measure: fn(&Speech) -> f64| -> Vec<Value> {
        let from = |position: &Position| Some(measure(position.speech.as_ref()?) - measure(first?));
        positions.iter().map(|position| from(position).into()).collect()
    };
    outcome.answer("level_change_db", change(Speech::level_db));
    outcome.answer("loudness_change_db", change(Speech::loudness_db));
    let index =
        |position: &Position| Value::from(position.speech.as_ref().map(|speech| speech.intelligibility(inputs)));
    outcome.answer("intelligibility", positions.iter().map(index).collect::<Vec<_>>());
}

fn label(inputs: &Inputs, index: usize) -> &str {
    inputs.items("positions").get(index).and_then(|item| item.get("label")?.text()).unwrap_or("")
}

/// The position, from 0, whose capacitor is looked for.
fn wished(inputs: &Inputs, count: usize) -> Result<Option<usize>, Vec<Problem>> {
    if Goal::all(inputs).is_empty() {
        return Ok(None);
    }
    let given = inputs.number("want_position");
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // the field table keeps it small
    let position = libm::round(given) as usize;
    if position < 2 || position > count || libm::fabs(given - libm::round(given)) > 0.0 {
        let problem = Problem::new("want_position", code::NO_SUCH_POSITION);
        return Err(vec![problem.bounds(Some(2.0), Some(count as f64))]);
    }
    Ok(Some(position - 1))
}

/// Under this much headroom a loud word is clipped, in decibels. Common practice, no source.
const COMFORTABLE: f64 = 10.0;

/// How far the microphone's volts are under the emf that the stage just passes clean, least over the positions, and
/// the position that has it.
fn headroom(positions: &[Position], inputs: &Inputs, rest: &Rest) -> Result<Option<(f64, usize)>, Fault> {
    let microphone = inputs.number("microphone_volts");
    let mut least: Option<(f64, usize)> = None;
    for position in positions {
        let Some(emf) = Swing::of(&position.amplifier, rest)?.most_emf() else { return Ok(None) };
        let db = 20.0 * libm::log10(emf / microphone);
        if least.is_none_or(|(other, _)| db < other) {
            least = Some((db, position.index));
        }
    }
    Ok(least.filter(|(db, _)| db.is_finite()))
}

/// Says so where the microphone is too loud for the stage.
fn tight(outcome: &mut Outcome, found: Option<(f64, usize)>, inputs: &Inputs) {
    let Some((db, index)) = found.filter(|(db, _)| *db < COMFORTABLE) else { return };
    let (severity, code) = if db < 0.0 { (Severity::Limit, "headroom_none") } else { (Severity::Note, "headroom_low") };
    outcome.caution(
        Caution::new(severity, code)
            .about("microphone_volts")
            .figure("headroom_db", db)
            .figure("position", label(inputs, index))
            .figure("microphone_volts", inputs.number("microphone_volts")),
    );
}

/// Impedances that the coupling capacitor stands between, at 1 kHz: what it looks back into, and what it feeds.
fn ohms_seen(position: &Position, rest: &Rest) -> Result<(f64, f64), Fault> {
    let mut apart = position.amplifier.circuit.clone();
    let coupling: Vec<_> = apart.parts().filter(|(_, part)| part.role == "coupling").map(|(id, _)| id).collect();
    for id in coupling {
        apart.set(id, Kind::Capacitor { farads: 0.0 });
    }
    let feeds = apart.find_node("a").unwrap_or(position.output);
    let mut response = apart.response(&rest.dc)?;
    let mut at = response.at(1000.0)?;
    Ok((at.impedance(position.amplifier.plate).magnitude(), at.impedance(feeds).magnitude()))
}

fn drawn(positions: &mut [Position], inputs: &Inputs) -> Result<Curve, Fault> {
    let mut lines = Vec::with_capacity(positions.len());
    for (index, position) in positions.iter_mut().enumerate() {
        let line = match position.gain_db {
            Some(_) => swept(&mut position.response, position.output, DRAWN, DRAWN_POINTS)?,
            None => Line::default(),
        };
        lines.push(Line { label: String::from(label(inputs, index)), figure: Some(index as f64 + 1.0), ..line });
    }
    Ok(response_curve(lines))
}
