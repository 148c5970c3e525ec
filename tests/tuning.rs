//! What a coil and a variable capacitor reach, against the handbook's constant and against themselves mended.

use crate::common::{Within, hold, inputs, rows};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn whole(pairs: &[(&str, f64)]) -> Value {
    let inputs = inputs(pairs.iter().map(|(key, figure)| (*key, Value::Number(*figure))));
    work("tuning", &inputs, Want::USUAL).unwrap_or_else(|problems| panic!("{problems:?}"))
}

fn figure(outcome: &Value, key: &str) -> f64 {
    crate::common::figure(outcome.get("answers").expect("answers"), key)
}

fn in_range(outcome: &Value) -> bool {
    outcome.at("answers.in_range") == Some(&Value::Flag(true))
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn resonance_is_by_the_handbooks_constant() {
    for row in rows(include_str!("vectors/tuning_lc.tsv")) {
        let [megahertz, microhenries, picofarads] = [0, 1, 2].map(|k: usize| row[k].parse::<f64>().expect("a figure"));
        let got = whole(&[
            ("henries", 1e-6 * microhenries),
            ("target_hertz", 1e6 * megahertz),
            ("capacitor_least", 1e-12 * picofarads - 10e-12),
            ("capacitor_most", 4e-12 * picofarads - 10e-12),
            ("stray_farads", 10e-12),
        ]);
        // The constant has five figures.
        hold(figure(&got, "needed_farads"), 1e-12 * picofarads - 10e-12, Within::Relative(3e-5), "needed");
        hold(figure(&got, "hertz_high"), 1e6 * megahertz, Within::Relative(1e-5), "high end");
        hold(
            figure(&got, "hertz_low"),
            0.5e6 * megahertz,
            Within::Relative(1e-5),
            "four times the capacitance is half",
        );
    }
}

const TOO_LOW: [(&str, f64); 5] = [
    ("henries", 4e-6),
    ("capacitor_least", 15e-12),
    ("capacitor_most", 150e-12),
    ("stray_farads", 20e-12),
    ("target_hertz", 3.885e6),
];

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_pad_or_another_coil_brings_a_low_target_in() {
    let got = whole(&TOO_LOW);
    assert!(!in_range(&got));
    for (key, inside) in [("pad_farads", 1.001), ("pad_most_farads", 0.999)] {
        let padded = figure(&got, key) * inside;
        let mended = whole(&[TOO_LOW.as_slice(), &[("stray_farads", 20e-12 + padded)]].concat());
        assert!(in_range(&mended), "{key}");
        let outside = figure(&got, key) * (2.0 - inside);
        assert!(!in_range(&whole(&[TOO_LOW.as_slice(), &[("stray_farads", 20e-12 + outside)]].concat())), "{key}");
    }
    let change = figure(&got, "henries_change");
    assert!(change > 0.0);
    let mended = whole(&[TOO_LOW.as_slice(), &[("henries", 4e-6 + change)]].concat());
    hold(figure(&mended, "hertz_low"), 3.885e6, Within::Relative(1e-12), "the capacitor all the way in");
    let turns = figure(&whole(&[TOO_LOW.as_slice(), &[("turns", 20.0)]].concat()), "turns_change");
    // Inductance as the square of turns.
    hold(((20.0 + turns) / 20.0).powi(2), 1.0 + change / 4e-6, Within::Relative(1e-12), "turns");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_series_capacitor_or_another_coil_brings_a_high_target_in() {
    let high = [TOO_LOW.as_slice(), &[("capacitor_least", 40e-12), ("target_hertz", 12e6)]].concat();
    let got = whole(&high);
    assert!(!in_range(&got));
    for (key, inside) in [("series_farads", 0.999), ("series_least_farads", 1.001)] {
        let with = |series: f64| {
            let both = |variable: f64| variable * series / (variable + series);
            let ends = [("capacitor_least", both(40e-12)), ("capacitor_most", both(150e-12))];
            in_range(&whole(&[high.as_slice(), &ends].concat()))
        };
        assert!(with(figure(&got, key) * inside), "{key}");
        assert!(!with(figure(&got, key) * (2.0 - inside)), "{key}");
    }
    let change = figure(&got, "henries_change");
    assert!(change < 0.0);
    let mended = whole(&[high.as_slice(), &[("henries", 4e-6 + change)]].concat());
    hold(figure(&mended, "hertz_high"), 12e6, Within::Relative(1e-12), "the capacitor all the way out");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn strays_alone_may_be_too_much() {
    let got = whole(&[TOO_LOW.as_slice(), &[("stray_farads", 500e-12)]].concat());
    assert_eq!(got.at("answers.needed_farads"), Some(&Value::Null));
    assert_eq!(got.at("answers.series_farads"), None);
    assert!(figure(&got, "henries_change") < 0.0);
}

/// A 3.5 MHz crystal and a tank from 3.1 to 11 MHz: 7 and 10.5 MHz can be reached; with 7 MHz for target the doubler is
/// meant, and the danger tells of 3.5 and 10.5.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn harmonics_in_reach_are_told_as_a_danger() {
    let wide = [("henries", 6e-6), ("capacitor_least", 15e-12), ("capacitor_most", 420e-12), ("stray_farads", 20e-12)];
    let got = whole(&[wide.as_slice(), &[("target_hertz", 7e6), ("crystal_hertz", 3.5e6)]].concat());
    assert_eq!(got.at("answers.harmonics_in_range"), Some(&vec![2.0, 3.0].into()));
    assert_eq!(got.at("answers.harmonic_hertz"), Some(&vec![7e6, 10.5e6].into()));
    let caution = got.at("cautions[0]").expect("a caution");
    assert_eq!(caution.get("code").and_then(Value::text), Some("harmonic_tunable"));
    assert_eq!(caution.get("severity").and_then(Value::text), Some("danger"));
    assert_eq!(caution.at("figures.hertz"), Some(&vec![3.5e6, 10.5e6].into()));
    let odd = whole(&[wide.as_slice(), &[("target_hertz", 5e6), ("crystal_hertz", 3.5e6)]].concat());
    let codes: Vec<_> =
        odd.get("cautions").expect("cautions").items().iter().map(|each| each.get("code").cloned()).collect();
    assert!(codes.contains(&Some("target_no_harmonic".into())), "{codes:?}");
}
