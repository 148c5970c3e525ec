use std::{hint::black_box, time::Instant};

use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};

const ROUNDS: usize = 1000;

/// A capacitor input and three filter sections behind a bridge, as the speed measure in Node has it.
pub fn three_sections(round: usize) -> Value {
    let section = |series: &str, ohms: f64, henries: f64, farads: f64| {
        Value::record([
            ("series", series.into()),
            ("ohms", ohms.into()),
            ("henries", henries.into()),
            ("farads", farads.into()),
        ])
    };
    let load = |amps: f64| Value::record([("amps", amps.into())]);
    Value::record([
        ("secondary_volts", (320.0 + round as f64 / 40.0).into()),
        ("mains_hertz", 50.0.into()),
        ("winding_ohms", 120.0.into()),
        ("rectifier_circuit", "bridge".into()),
        ("rectifier", "silicon".into()),
        (
            "sections",
            Value::List(vec![
                Value::record([("series", "none".into()), ("farads", 32e-6.into())]),
                section("choke", 200.0, 10.0, 32e-6),
                section("resistor", 1e3, 0.0, 47e-6),
                section("resistor", 2.2e3, 0.0, 22e-6),
            ]),
        ),
        ("loads", Value::List(vec![load(0.01), load(0.03), load(0.015), load(0.005)])),
    ])
}

/// Native time of one whole answer, in milliseconds.
pub fn speed() {
    let mut times: Vec<f64> = (0..ROUNDS)
        .map(|round| {
            let inputs = three_sections(round);
            let start = Instant::now();
            black_box(work("supply", black_box(&inputs), Want::USUAL)).expect("an answer");
            1e3 * start.elapsed().as_secs_f64()
        })
        .collect();
    times.sort_by(f64::total_cmp);
    println!("supply.speed.native_best_tenth {:.4}", times[ROUNDS / 10]);
    println!("supply.speed.native_median {:.4}", times[ROUNDS / 2]);
}
