use alloc::vec::Vec;

use super::{lift::tilt, speech::Speech, work::Position};
use crate::{
    calculators::{Caution, Outcome, Severity, solve::by_ratio, triode::Rest},
    circuit::{DcPoint, Fault, Kind, PartId},
    quantity::{Series, nearest, step},
    text::{counted, together},
    value::{Inputs, Value},
};

/// The capacitors that are looked over, in farads: from stray to a microfarad.
const RANGE: (f64, f64) = (1e-12, 10e-6);

/// A spread in decibels that nobody hears is not worth a note.
const SPREAD_WORTH_SAYING: f64 = 0.3;

impl Position {
    /// The coupling capacitor of this position.
    fn coupling(&self) -> Option<(PartId, f64, f64)> {
        let wanted = together(&["positions[", &counted(self.index), "].farads"]);
        let (id, part) = self.amplifier.circuit.parts().find(|(_, part)| part.field == wanted)?;
        Some((id, part.kind.value()?, part.tolerance))
    }

    /// The tilt with another capacitor in this position.
    fn tilt_with(&self, coupling: PartId, farads: f64, dc: &DcPoint) -> Result<f64, Fault> {
        let mut circuit = self.amplifier.circuit.clone();
        circuit.set(coupling, Kind::Capacitor { farads });
        tilt(&mut circuit.response(dc)?, self.output)
    }
}

/// What a capacitor is to give in its position: a lift in dB against the first, or an index of intelligibility.
#[derive(Clone, Copy)]
pub(super) enum Goal {
    Lift(f64),
    Intelligibility(f64),
}

impl Goal {
    /// What the inputs ask for; the lift is looked at first.
    pub fn all(inputs: &Inputs) -> Vec<Goal> {
        let lift = inputs.maybe("want_lift_db").map(Goal::Lift);
        let intelligibility = inputs.maybe("want_intelligibility").map(Goal::Intelligibility);
        lift.into_iter().chain(intelligibility).collect()
    }

    fn key(self) -> &'static str {
        match self {
            Goal::Lift(_) => "lift_farads",
            Goal::Intelligibility(_) => "intelligibility_farads",
        }
    }
}

/// What one capacitor makes of a position.
struct Given {
    lift_db: f64,
    intelligibility: Option<f64>,
    output_volts: f64,
}

/// A position whose capacitor is looked for.
pub(super) struct Wish<'a> {
    pub position: &'a Position,
    /// The tilt of the first position.
    pub reference: f64,
    pub rest: &'a Rest,
    pub inputs: &'a Inputs,
}

impl Wish<'_> {
    fn with(&self, coupling: PartId, farads: f64) -> Result<Given, Fault> {
        let mut circuit = self.position.amplifier.circuit.clone();
        circuit.set(coupling, Kind::Capacitor { farads });
        let (mut response, output) = (circuit.response(&self.rest.dc)?, self.position.output);
        let heard = Speech::through(&mut response, output)?;
        let gain = response.at(1000.0)?.volts(output).magnitude();
        Ok(Given {
            lift_db: tilt(&mut response, output)? - self.reference,
            intelligibility: heard.map(|speech| speech.intelligibility(self.inputs)),
            output_volts: gain * self.inputs.number("microphone_volts"),
        })
    }

    /// How far a capacitor passes the goal.
    fn over(&self, coupling: PartId, farads: f64, goal: Goal) -> Result<f64, Fault> {
        match goal {
            Goal::Lift(want) => Ok(self.position.tilt_with(coupling, farads, &self.rest.dc)? - self.reference - want),
            Goal::Intelligibility(want) => Ok(self.with(coupling, farads)?.intelligibility.unwrap_or(0.0) - want),
        }
    }

    /// The capacitor that meets each goal, and what the one sold nearest to the first goal's, and its neighbours, give.
    pub fn answer(&self, outcome: &mut Outcome, goals: &[Goal]) -> Result<(), Fault> {
        let Some((coupling, was, _)) = self.position.coupling() else { return Ok(()) };
        let mut first = None;
        for (place, goal) in goals.iter().enumerate() {
            let found = by_ratio(RANGE, was, |farads| self.over(coupling, farads, *goal))?;
            outcome.answer(goal.key(), found.figure);
            if found.figure.is_none() {
                outcome.caution(out_of_reach(*goal, found.extent));
            }
            if place == 0 {
                first = found.figure;
            }
        }
        let sold = first.and_then(|farads| nearest(farads, Series::E12)).map(|preferred| preferred.value);
        let Some(middle) = sold else {
            without_sold(outcome);
            return Ok(());
        };
        let beside = [step(middle, Series::E12, false), Some(middle), step(middle, Series::E12, true)];
        let farads: Vec<f64> = beside.into_iter().flatten().collect();
        let given: Vec<Given> =
            farads.iter().map(|farads| self.with(coupling, *farads)).collect::<Result<_, Fault>>()?;
        let each = |figure: fn(&Given) -> Value| given.iter().map(figure).collect::<Vec<_>>();
        outcome.answer("sold_farads", farads);
        outcome.answer("sold_lift_db", each(|given| given.lift_db.into()));
        outcome.answer("sold_intelligibility", each(|given| given.intelligibility.into()));
        outcome.answer("sold_output_volts", each(|given| given.output_volts.into()));
        Ok(())
    }
}

fn out_of_reach(goal: Goal, (least, most): (f64, f64)) -> Caution {
    match goal {
        Goal::Lift(want) => Caution::new(Severity::Note, "lift_out_of_reach")
            .about("want_lift_db")
            .figure("least_db", least + want)
            .figure("most_db", most + want),
        Goal::Intelligibility(want) => Caution::new(Severity::Note, "intelligibility_out_of_reach")
            .about("want_intelligibility")
            .figure("least", least + want)
            .figure("most", most + want),
    }
}

fn without_sold(outcome: &mut Outcome) {
    for key in ["sold_farads", "sold_lift_db", "sold_intelligibility", "sold_output_volts"] {
        outcome.answer(key, Value::Null);
    }
}

/// The wish's answers where nothing passes.
pub(super) fn nothing_passes(outcome: &mut Outcome, goals: &[Goal]) {
    for goal in goals {
        outcome.answer(goal.key(), Value::Null);
    }
    without_sold(outcome);
}

/// What a coupling capacitor's own tolerance does to the lift, where it is worth saying.
pub(super) fn spread(
    outcome: &mut Outcome,
    position: &Position,
    label: &str,
    reference: f64,
    rest: &Rest,
) -> Result<(), Fault> {
    let Some((coupling, farads, tolerance)) = position.coupling() else { return Ok(()) };
    let with = |factor: f64| Ok::<f64, Fault>(position.tilt_with(coupling, farads * factor, &rest.dc)? - reference);
    let (least, most) = (with(1.0 + tolerance)?, with(1.0 - tolerance)?);
    let (least, most) = (f64::min(least, most), f64::max(least, most));
    if most - least < SPREAD_WORTH_SAYING {
        return Ok(());
    }
    let part = position.amplifier.circuit.part(coupling).map_or("", |part| part.reference.as_str());
    outcome.caution(
        Caution::new(Severity::Note, "lift_spread")
            .about("lift_db")
            .figure("position", label)
            .figure("part", part)
            .figure("tolerance", tolerance)
            .figure("least_db", least)
            .figure("most_db", most),
    );
    Ok(())
}
