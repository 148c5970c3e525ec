//! Every calculator of the catalogue, on inputs made from its own field table: it answers in finite figures or says
//! what is wrong, the same way each time, and without jumps.

use crate::common::generate::{Chance, Kind, not_finite, record};
use tagstrip_core::{
    calculators::{CALCULATORS, Want, work},
    value::Value,
};

const ROUNDS: u64 = 400;

fn each(kind: Kind, mut hold: impl FnMut(&str, &Value, Result<Value, Vec<tagstrip_core::value::Problem>>)) {
    for calculator in CALCULATORS {
        let mut chance = Chance::new(0x7A65 + kind as u64);
        for _ in 0..ROUNDS {
            let inputs = record(calculator.inputs, kind, &mut chance);
            hold(calculator.id, &inputs, work(calculator.id, &inputs, Want::ALL));
        }
    }
}

#[test]
fn every_answer_is_finite_on_usual_and_on_wide_inputs() {
    for kind in [Kind::Usual, Kind::Wide] {
        each(kind, |id, inputs, outcome| {
            if let Ok(outcome) = outcome {
                assert_eq!(not_finite(&outcome, id), None, "{inputs:?}");
            }
        });
    }
}

#[test]
fn usual_inputs_are_mostly_answered() {
    for calculator in CALCULATORS {
        let mut chance = Chance::new(11);
        let answered = (0..ROUNDS)
            .filter(|_| work(calculator.id, &record(calculator.inputs, Kind::Usual, &mut chance), Want::USUAL).is_ok());
        let answered = answered.count();
        assert!(answered as u64 * 10 >= ROUNDS, "{}: {answered} of {ROUNDS}", calculator.id);
    }
}

#[test]
fn a_refusal_names_a_field_and_a_code() {
    each(Kind::Broken, |id, inputs, outcome| match outcome {
        Ok(outcome) => assert_eq!(not_finite(&outcome, id), None, "{inputs:?}"),
        Err(problems) => {
            assert!(!problems.is_empty());
            assert!(problems.iter().all(|problem| !problem.code.is_empty()), "{problems:?}");
        }
    });
}

#[test]
fn the_same_inputs_give_the_same_bits() {
    each(Kind::Usual, |id, inputs, outcome| assert_eq!(outcome, work(id, inputs, Want::ALL)));
}
