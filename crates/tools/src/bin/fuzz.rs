//! Texts for the reader and inputs for every calculator, made at random, many of them:
//! `fuzz [--texts N] [--inputs N] [--seed N] [--only NAME]`. One line for each with counts and faults.
//!
//! A fault is a panic, a figure that is not finite, a code that is on no list, an offered text that is not read as
//! offered, or a second answer that differs from the first. The same seed makes the same inputs whatever the machine.

#[path = "../fuzz/mod.rs"]
mod fuzz;
#[path = "../../../../tests/common/generate.rs"]
mod generate;
#[path = "../../../../tests/common/texts.rs"]
mod texts;

use std::{env, process::ExitCode};

use fuzz::{Options, Tally, calculator, reader, run};
use tagstrip_core::calculators::CALCULATORS;

fn main() -> ExitCode {
    let Some(options) = Options::read(env::args().skip(1)) else {
        eprintln!("fuzz [--texts N] [--inputs N] [--seed N] [--only NAME]");
        return ExitCode::from(2);
    };
    fuzz::tell_of_panics();
    let mut faults = 0;
    let mut told = |name: &str, tally: &Tally| {
        println!("fuzz.{name} {tally}");
        faults += tally.faults;
    };
    if options.wants("reader") {
        told("reader", &run(options.texts, options.seed, &reader));
    }
    for one in CALCULATORS.iter().filter(|one| options.wants(one.id)) {
        told(one.id, &run(options.inputs, options.seed, &|chance, tally| calculator(one, chance, tally)));
    }
    if faults == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
