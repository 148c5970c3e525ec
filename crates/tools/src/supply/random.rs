use tagstrip_core::{
    calculators::{Want, supply_at, work},
    value::Value,
};

use super::{COUNT, figures, inputs::supply};
use crate::generate::Chance;

/// A change of an input, and the change of an answer over it that counts as a jump: no answer of a supply follows an
/// input by more than its thousandth power.
const NUDGE: f64 = 1e-7;
const JUMP: f64 = 1e-4;
/// Differences this small beside the volts and currents of a supply are rounding.
const NOTHING: f64 = 1e-8;
const FINER: usize = 16;

/// Against the project's own run at sixteen times the steps; and with every input nudged.
pub fn random() {
    let mut chance = Chance::new(0x5EED);
    let (mut within, mut unfound, mut jumps) = (0, 0, 0);
    for number in 0..COUNT {
        let inputs = supply(&mut chance);
        let Ok(outcome) = work("supply", &inputs, Want::USUAL) else {
            unfound += 1;
            println!("# no answer: {inputs:?}");
            continue;
        };
        let answers = outcome.get("answers").expect("answers");
        match supply_at(&inputs, FINER) {
            Ok(finer) if near(answers, finer.get("answers").expect("answers"), number) => within += 1,
            Ok(_) => println!("# {number}: {inputs:?}"),
            Err(_) => unfound += 1,
        }
        jumps += nudged(&inputs, answers);
    }
    println!("supply.random.within_percent {}", 100.0 * f64::from(within) / COUNT as f64);
    println!("supply.random.unconverged {unfound}");
    println!("supply.random.jumps {jumps}");
}

/// The limit of a key: volts half a per cent, ripple three, currents two; none for the rest.
fn limit(key: &str) -> Option<(f64, f64)> {
    let name = key.split('[').next().unwrap_or(key);
    match name {
        "node_volts" | "no_load_volts" | "peak_inverse_volts" => Some((0.005, 0.0)),
        "node_ripple_pp" | "node_ripple_rms" => Some((0.03, 1e-3)),
        "rectifier_dc_amps"
        | "peak_rectifier_amps"
        | "winding_rms_amps"
        | "turn_on_peak_amps"
        | "capacitor_ripple_amps" => Some((0.02, 1e-7)),
        _ => None,
    }
}

fn near(answers: &Value, finer: &Value, number: usize) -> bool {
    let finer = figures(finer);
    figures(answers).into_iter().filter_map(|(key, got)| Some((limit(&key)?, key, got))).all(
        |((share, floor), key, got)| {
            let Some((_, want)) = finer.iter().find(|(other, _)| *other == key) else { return false };
            let holds = (got - want).abs() <= share * want.abs() + floor;
            if !holds {
                println!("# {number} {key}: {got} against {want}");
            }
            holds
        },
    )
}

/// Answers that jump when one of the inputs moves by a ten-millionth.
fn nudged(inputs: &Value, answers: &Value) -> u32 {
    let before = figures(answers);
    let mut jumps = 0;
    for place in 0..places(inputs) {
        let mut other = inputs.clone();
        move_one(&mut other, &mut { place });
        let Ok(outcome) = work("supply", &other, Want { answers: true, ..Want::default() }) else {
            jumps += 1;
            continue;
        };
        let after = figures(outcome.get("answers").expect("answers"));
        for ((key, was), (_, is)) in before.iter().zip(&after) {
            if (was - is).abs() > JUMP * was.abs() + NOTHING {
                jumps += 1;
                println!("# jump of {key}: {was} to {is} at figure {place} of {inputs:?}");
            }
        }
    }
    jumps
}

fn places(value: &Value) -> usize {
    match value {
        Value::Number(_) => 1,
        Value::List(items) => items.iter().map(places).sum(),
        Value::Record(pairs) => pairs.iter().map(|(_, value)| places(value)).sum(),
        _ => 0,
    }
}

fn move_one(value: &mut Value, left: &mut usize) {
    match value {
        Value::Number(figure) => {
            if *left == 0 {
                *figure *= 1.0 + NUDGE;
            }
            *left = left.wrapping_sub(1);
        }
        Value::List(items) => items.iter_mut().for_each(|item| move_one(item, left)),
        Value::Record(pairs) => pairs.iter_mut().for_each(|(_, value)| move_one(value, left)),
        _ => {}
    }
}
