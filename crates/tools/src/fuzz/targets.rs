use std::fmt::Write;

use tagstrip_core::{
    calculators::{Calculator, Want, work},
    quantity::{CODES, NOTATIONS, Prefix, Unit, read},
    value::Value,
};

use super::run::{Tally, trying};
use crate::{
    generate::{Chance, Kind, not_finite, record},
    texts,
};

/// Every curve, part and reading is asked for once in so many inputs, a second answer too.
const ALL_ONCE_IN: usize = 16;

/// What most fields are in.
const PARTS: [Unit; 5] = [Unit::Ohm, Unit::Farad, Unit::Henry, Unit::Volt, Unit::Metre];

/// One text for the reader.
pub fn reader(chance: &mut Chance, tally: &mut Tally) {
    let text = texts::text(chance);
    let unit =
        if chance.one_in(2) { PARTS[chance.below(PARTS.len())] } else { Unit::ALL[chance.below(Unit::ALL.len())] };
    let shown = chance.one_in(4).then(|| Prefix::ALL[chance.below(Prefix::ALL.len())]);
    trying(|tried| tried.push_str(&text));
    match read(&text, unit, shown) {
        Ok(reading) => {
            tally.answered += 1;
            let sane = reading.value.is_finite() && reading.tolerance.is_none_or(|share| (0.0..=1.0).contains(&share));
            if !sane || !NOTATIONS.contains(&reading.notation) {
                tally.fault(&format!("{text:?} in {unit:?}: {reading:?}"));
            }
        }
        Err(unread) => {
            tally.refused(unread.code);
            let mends = unread.mends.iter().all(|mend| {
                read(&mend.text, unit, shown).is_ok_and(|reading| reading.value.to_bits() == mend.value.to_bits())
            });
            if !mends || !CODES.contains(&unread.code) {
                tally.fault(&format!("{text:?} in {unit:?} beside {shown:?}: {unread:?}"));
            }
        }
    }
}

/// One set of inputs for a calculator.
pub fn calculator(calculator: &Calculator, chance: &mut Chance, tally: &mut Tally) {
    let kind = [Kind::Usual, Kind::Wide, Kind::Wide, Kind::Broken][chance.below(4)];
    let mut inputs = record(calculator.inputs, kind, chance);
    if chance.one_in(2) {
        retype(&mut inputs, chance);
    }
    let all = chance.one_in(ALL_ONCE_IN);
    let want = if all { Want::ALL } else { Want::USUAL };
    trying(|tried| write!(tried, "{} {inputs:?}", calculator.id).unwrap_or_default());
    let outcome = work(calculator.id, &inputs, want);
    if all && work(calculator.id, &inputs, want) != outcome {
        tally.fault(&format!("two answers to {inputs:?}"));
    }
    match outcome {
        Ok(outcome) => {
            tally.answered += 1;
            if let Some(at) = not_finite(&outcome, calculator.id) {
                tally.fault(&format!("{at} on {inputs:?}"));
            }
        }
        Err(problems) => {
            let code = problems.first().map_or("", |problem| problem.code);
            tally.refused(code);
            if problems.iter().any(|problem| problem.code.is_empty()) || code.is_empty() {
                tally.fault(&format!("no reason for {inputs:?}"));
            }
        }
    }
}

/// Writes some of the figures as a person would, right or wrong; texts become others.
fn retype(value: &mut Value, chance: &mut Chance) {
    match value {
        Value::Number(figure) if chance.one_in(6) => *value = Value::Text(format!("{figure:e}")),
        Value::Number(_) if chance.one_in(40) => *value = Value::Text(texts::likely(chance)),
        Value::Text(_) if chance.one_in(8) => *value = Value::Text(texts::text(chance)),
        Value::List(items) => items.iter_mut().for_each(|item| retype(item, chance)),
        Value::Record(pairs) => pairs.iter_mut().for_each(|(_, item)| retype(item, chance)),
        _ => {}
    }
}
