//! How long `voice` takes native, for `scripts/bench`: the calculator's own defaults (two positions of 400 frequencies)
//! with answers, cautions and curves. Prints the best tenth of many, in milliseconds.

use std::{hint::black_box, time::Instant};

use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};

const ROUNDS: usize = 400;

fn main() {
    let want = Want { answers: true, cautions: true, curves: true, ..Want::default() };
    let mut times: Vec<f64> = (0..ROUNDS)
        .map(|round| {
            // A supply that is never the same: nothing may be remembered from the round before.
            let inputs = Value::record([("supply_volts", (250.0 + round as f64 / 40.0).into())]);
            let start = Instant::now();
            black_box(work("voice", black_box(&inputs), want)).expect("an answer");
            1e3 * start.elapsed().as_secs_f64()
        })
        .collect();
    times.sort_by(f64::total_cmp);
    println!("speed.native_milliseconds {:.4}", times[ROUNDS / 10]);
}
