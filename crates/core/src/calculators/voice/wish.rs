use super::{lift::tilt, work::Position};
use crate::text::{counted, together};
use crate::{
    calculators::{Caution, Outcome, Severity, solve::by_ratio, triode::Rest},
    circuit::{DcPoint, Fault, Kind, PartId},
    quantity::{Series, nearest},
    value::Value,
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

/// The capacitor that gives the wanted lift in a position, as it comes and as it is sold.
pub(super) fn wish(
    outcome: &mut Outcome,
    position: &Position,
    reference: f64,
    want: f64,
    rest: &Rest,
) -> Result<(), Fault> {
    let Some((coupling, was, _)) = position.coupling() else { return Ok(()) };
    let short = |farads: f64| Ok::<f64, Fault>(position.tilt_with(coupling, farads, &rest.dc)? - reference - want);
    let found = by_ratio(RANGE, was, short)?;
    let sold = found.figure.and_then(|farads| nearest(farads, Series::E12)).map(|preferred| preferred.value);
    let gives = match sold {
        Some(farads) => Some(short(farads)? + want),
        None => None,
    };
    outcome.answer("lift_farads", found.figure);
    outcome.answer("lift_preferred_farads", sold);
    outcome.answer("lift_preferred_db", gives);
    if found.figure.is_none() {
        let caution = Caution::new(Severity::Note, "lift_out_of_reach").about("want_lift_db");
        let (least, most) = found.extent;
        outcome.caution(caution.figure("least_db", least + want).figure("most_db", most + want));
    }
    Ok(())
}

/// The wish's answers where no capacitor gives it.
pub(super) fn out_of_reach(outcome: &mut Outcome) {
    for key in ["lift_farads", "lift_preferred_farads", "lift_preferred_db"] {
        outcome.answer(key, Value::Null);
    }
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
