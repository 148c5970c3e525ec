//! Hum and hiss of whole stages against nodal analysis in numpy, noise against closed forms, and what cures the hum.

use std::f64::consts::PI;

use crate::common::{Within, rows, value};
use tagstrip_core::{
    calculators::{Want, work},
    circuit::{Circuit, GROUND, Kind, Part},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

/// 4·k·293 K.
const DENSITY: f64 = 4.0 * 1.380_649e-23 * 293.0;

fn first(answers: &Value, key: &str) -> Option<f64> {
    let answer = answers.get(key)?;
    answer.items().first().unwrap_or(answer).number()
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn hum_and_hiss_are_those_of_an_independent_solver() {
    let table = rows(include_str!("vectors/hum_hiss.tsv"));
    assert_eq!(table.len(), 12);
    let mut worst: [f64; 2] = [0.0; 2];
    for row in table {
        let inputs: serde_json::Value = serde_json::from_str(row[1]).expect("inputs");
        let outcome = work(row[0], &value(&inputs), Want::USUAL).expect("an answer");
        let answers = outcome.get("answers").expect("answers");
        for ((key, cell), worst) in [("hum_volts", row[2]), ("hiss_volts", row[3])].into_iter().zip(&mut worst) {
            let want: f64 = cell.parse().expect("a figure");
            let off = 20.0 * (first(answers, key).expect("a figure") / want).log10();
            assert!(off.abs() < 0.01, "{key} {off} dB off in {}", row[1]);
            *worst = worst.max(off.abs());
        }
    }
    println!("hum.hum_worst_db {:.6}\nhum.hiss_worst_db {:.6}", worst[0], worst[1]);
}

/// A resistor and a capacitor: 4kTR / (1 + (f/fc)²), Nyquist 1928. A coil with its winding resistance across that.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn resistors_make_the_noise_that_nyquist_says() {
    let (ohms, farads, henries, winding) = (47e3, 2.2e-9, 3.0, 800.0);
    let mut circuit = Circuit::new();
    let node = circuit.node("node");
    circuit.add(Part::new("R", "resistor", &[node, GROUND], Kind::Resistor { ohms }));
    circuit.add(Part::new("C", "capacitor", &[node, GROUND], Kind::Capacitor { farads }));
    let alone = circuit.clone();
    circuit.add(Part::new("L", "coil", &[node, GROUND], Kind::Coil { henries, ohms: winding }));
    for hertz in [20.0, 300.0, 1538.0, 3000.0, 1e5] {
        let density = |circuit: &Circuit| {
            let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
            response.at(hertz).unwrap().noise_density(node, 293.0)
        };
        let omega = 2.0 * PI * hertz;
        let want = DENSITY * ohms / (1.0 + (omega * ohms * farads).powi(2));
        assert!(Within::Relative(1e-12).holds(density(&alone), want));
        // of any network at one temperature the noise is 4kT times the resistive part of its impedance
        let (g, b) = (winding / (winding * winding + (omega * henries).powi(2)), omega * henries);
        let (g, b) = (1.0 / ohms + g, omega * farads - b / (winding * winding + b * b));
        assert!(Within::Relative(1e-12).holds(density(&circuit), DENSITY * g / (g * g + b * b)));
    }
}

/// A source's own volts at every node, by the transposed solve and by the forward one.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_source_gives_the_same_either_way() {
    let mut circuit = Circuit::new();
    let [a, b, c] = ["a", "b", "c"].map(|name| circuit.node(name));
    let source = circuit.add(Part::new("V", "source", &[a, b], Kind::Source { volts: 0.0, signal: 1.0 }));
    circuit.add(Part::new("R1", "resistor", &[a, GROUND], Kind::Resistor { ohms: 1e3 }));
    circuit.add(Part::new("R2", "resistor", &[b, c], Kind::Resistor { ohms: 2e3 }));
    circuit.add(Part::new("C", "capacitor", &[c, GROUND], Kind::Capacitor { farads: 1e-6 }));
    let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
    let mut at = response.at(100.0).unwrap();
    for node in [a, b, c, GROUND] {
        let off = at.volts(node) - at.gain_from(source, node);
        assert!(off.magnitude() < 1e-12, "{off:?}");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_decoupling_that_is_said_cures_the_hum_and_the_next_smaller_does_not() {
    for (id, decoupling) in [("voice", 0.0), ("voice", 22e3), ("stage", 0.0), ("stage", 47e3)] {
        let answers = |ohms: f64, farads: f64| {
            let given = [("ripple_volts", 1.0), ("decoupling_ohms", ohms), ("decoupling_farads", farads)];
            let inputs = Value::Record(given.map(|(key, figure)| (key.to_string(), figure.into())).to_vec());
            let outcome = work(id, &inputs, Want::USUAL).expect("an answer");
            outcome.get("answers").expect("answers").clone()
        };
        let loudest = |answers: &Value| {
            let dbs = answers.get("hum_db").expect("hum");
            let each = dbs.items().iter().filter_map(Value::number);
            dbs.number().unwrap_or_else(|| each.fold(f64::NEG_INFINITY, f64::max))
        };
        let before = answers(decoupling, 0.0);
        assert!(loudest(&before) > -60.0, "{id}: nothing to cure");
        let farads = first(&before, "hum_cure_farads").expect("a capacitor");
        let ohms = first(&before, "hum_cure_ohms").unwrap_or(decoupling);
        let after = answers(ohms, farads);
        let said = first(&before, "hum_cure_db").expect("a figure");
        assert!(loudest(&after) <= -60.0 && (loudest(&after) - said).abs() < 1e-9, "{id}: {before:?} {after:?}");
        assert!(after.get("hum_cure_farads").is_none());
        assert!(loudest(&answers(ohms, farads / 1.6)) > -60.0, "{id}: a smaller one does too");
    }
}

/// No ripple, no hum; hiss is there all the same, and a knob at 0 lets neither through.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn without_ripple_there_is_no_hum() {
    let outcome = work("voice", &Value::Null, Want::USUAL).expect("an answer");
    let answers = outcome.get("answers").expect("answers");
    assert_eq!(first(answers, "hum_volts"), Some(0.0));
    assert!(answers.get("hum_db").is_none() && answers.get("hum_cure_farads").is_none());
    assert!(first(answers, "hiss_volts").is_some_and(|volts| volts > 0.0));
    let shut = Value::record([("level", 0.0.into()), ("ripple_volts", 1.0.into())]);
    let shut = work("voice", &shut, Want::USUAL).expect("an answer");
    let answers = shut.get("answers").expect("answers");
    assert_eq!((first(answers, "hum_volts"), first(answers, "hiss_volts")), (Some(0.0), Some(0.0)));
    assert_eq!(answers.get("hiss_db"), Some(&Value::List(vec![Value::Null; 2])));
}
