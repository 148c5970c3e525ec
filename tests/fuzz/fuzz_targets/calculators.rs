//! Any inputs for any calculator of the catalogue, made from its field table by the bytes given: the first one picks the
//! calculator, or the environment's `CALCULATOR` does, by name.
#![no_main]

#[path = "../../common/generate.rs"]
mod generate;

use std::env;

use generate::{Chance, Kind, not_finite, record};
use libfuzzer_sys::fuzz_target;
use tagstrip_core::calculators::{CALCULATORS, Want, work};

fuzz_target!(|bytes: &[u8]| {
    let [which, how, rest @ ..] = bytes else { return };
    let named = env::var("CALCULATOR").ok();
    let named = named.and_then(|name| CALCULATORS.iter().find(|calculator| calculator.id == name));
    let calculator = named.unwrap_or(&CALCULATORS[usize::from(*which) % CALCULATORS.len()]);
    let kind = [Kind::Usual, Kind::Wide, Kind::Broken][usize::from(*how) % 3];
    let want = if *how < 16 { Want::ALL } else { Want::USUAL };
    let inputs = record(calculator.inputs, kind, &mut Chance::fed(rest));
    match work(calculator.id, &inputs, want) {
        Ok(outcome) => assert_eq!(not_finite(&outcome, calculator.id), None, "{inputs:?}"),
        Err(problems) => assert!(problems.iter().all(|problem| !problem.code.is_empty()), "{inputs:?}: {problems:?}"),
    }
});
