//! Figures of the rendering, one line each: `render linear|robust|speed [COUNT]`.
//!
//! `linear`: random stages, small tones against the response; `robust`: random stages overdriven to 300 V;
//! `speed`: how many seconds of a clip a second of work gives.

#[path = "../../../../tests/common/generate.rs"]
mod generate;
#[path = "../rendering.rs"]
mod rendering;

use std::{env, time::Instant};

use generate::Chance;
use rendering::{amplitude, babble, stage, through, tone, with};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};

/// Small enough that the tube's bend does not show: it goes with the square.
const SMALL: f64 = 100e-6;

fn main() {
    let given: Vec<String> = env::args().skip(1).collect();
    let count = given.get(1).and_then(|count| count.parse().ok());
    match given.first().map(String::as_str) {
        Some("linear") => linear(count.unwrap_or(30)),
        Some("robust") => robust(count.unwrap_or(1000)),
        Some("speed") => speed(),
        _ => eprintln!("render linear|robust|speed [COUNT]"),
    }
}

/// The response as `voice` draws it, in dB at its own frequencies.
fn response(inputs: &Value, position: usize) -> Vec<(f64, f64)> {
    let outcome = work("voice", inputs, Want { curves: true, ..Want::default() }).expect("a stage that works");
    let curve = outcome.at("curves[0].lines").and_then(|lines| lines.items().get(position)).expect("a line");
    let series = |key: &str| match curve.get(key) {
        Some(Value::Series(figures)) => figures.clone(),
        _ => Vec::new(),
    };
    series("x").into_iter().zip(series("y")).collect()
}

/// A stage whose grid rests where it draws nothing: the response leaves grid current out.
fn cold_stage(chance: &mut Chance, number: usize) -> Value {
    loop {
        let inputs = stage(chance, number);
        let outcome = work("voice", &inputs, Want { answers: true, ..Want::default() }).expect("a stage that works");
        if outcome.at("answers.bias_volts").and_then(Value::number).is_some_and(|volts| volts < -1.0) {
            return inputs;
        }
    }
}

fn linear(count: usize) {
    let mut chance = Chance::new(7);
    let (mut low, mut high, mut straight, mut curved) = (0.0_f64, 0.0_f64, 0.0_f64, 0.0_f64);
    for number in 0..count {
        let inputs = with(&cold_stage(&mut chance, number), "microphone_volts", SMALL.into());
        let position = number % 2;
        let drawn = response(&inputs, position);
        for (hertz, want) in drawn.iter().filter(|(hertz, _)| (100.0..8000.0).contains(hertz)).step_by(23) {
            for is_linear in [true, false] {
                let clip = tone(*hertz, 0.6);
                let rendered = through(&inputs, &clip, position as f64 + 1.0, is_linear).expect("a rendering");
                let peak = amplitude(&rendered.samples, *hertz, 0.3, 0.25);
                let off = (20.0 * (peak / (SMALL * 2.0_f64.sqrt())).log10() - want).abs();
                if env::var_os("LOUD").is_some() && off > 0.1 {
                    eprintln!("{number} {hertz:.0} Hz linear {is_linear}: off {off:.3} dB of {want:.2} {inputs:?}");
                }
                if is_linear {
                    straight = straight.max(off);
                } else {
                    curved = curved.max(off);
                }
                if *hertz <= 4000.0 {
                    low = low.max(off);
                } else {
                    high = high.max(off);
                }
            }
        }
    }
    println!("render.linear_to_4_khz {low:.4}");
    println!("render.linear_to_8_khz {high:.4}");
    println!("render.linear_straight {straight:.4} full {curved:.4} circuits {count}");
}

fn robust(count: usize) {
    let mut chance = Chance::new(11);
    let (mut refused, mut wrong, mut most, mut steps, mut bracketed, mut largest) = (0, 0, 0, 0, 0_u64, 0.0_f64);
    let mut slowest: f64 = 0.0;
    for number in 0..count {
        let volts = 0.3 * 1000.0_f64.powf(chance.unit());
        let inputs = with(&stage(&mut chance, number), "microphone_volts", volts.into());
        let clip = babble(number as u64 + 1, 0.25);
        let start = Instant::now();
        match through(&inputs, &clip, (number % 2 + 1) as f64, false) {
            Err(why) => {
                refused += 1;
                eprintln!("{number}: {why}");
            }
            Ok(rendered) => {
                let bound = rendered.samples.iter().any(|sample| !sample.is_finite() || sample.abs() > 2e3);
                if bound {
                    eprintln!("{number}: {} V from {volts} V", rendered.peak_volts);
                }
                wrong += usize::from(bound);
                most = most.max(rendered.tries.0);
                bracketed += u64::from(rendered.tries.1);
                steps += 2 * rendered.samples.len();
                largest = largest.max(rendered.peak_volts);
            }
        }
        slowest = slowest.max(start.elapsed().as_secs_f64());
    }
    println!("render.robust_refused {refused} of {count}");
    println!("render.robust_wrong {wrong}");
    println!("render.robust_most_tries {most}");
    println!("render.robust_bracketed {bracketed} of {steps} steps");
    println!("render.robust_largest {largest:.1} slowest {slowest:.3}");
}

fn speed() {
    let clip = babble(3, 5.0);
    let inputs = Value::record([("microphone_volts", 0.1.into())]);
    for (name, is_linear) in [("native", false), ("native_linear", true)] {
        let best = (0..5).map(|_| {
            let start = Instant::now();
            let rendered = through(&inputs, &clip, 1.0, is_linear).expect("a rendering");
            assert!(rendered.peak_volts > 0.0);
            start.elapsed().as_secs_f64()
        });
        println!("render.speed_{name} {:.1}", 5.0 / best.fold(f64::INFINITY, f64::min));
    }
}
