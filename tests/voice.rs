//! Which capacitor? From a wanted lift or intelligibility to a value, and to those that are sold.

use crate::common::{Within, codes, figure, given, hold, warns};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

/// A stage into a plain resistor, its second position's capacitor as given.
fn stage(farads: f64, wish: &str) -> String {
    format!(
        r#"{{"tube": "12AX7", "plate_ohms": 1e5, "cathode_ohms": 1500, "microphone_ohms": 0, "tone": "none", "level_ohms": 122e3, "level": 1,
        "load_ohms": 1e9, "load_farads": 0, "noise": "band",
        "positions": [{{"label": "a", "farads": 9.8e-9}}, {{"label": "b", "farads": {farads:e}}}]{wish}}}"#
    )
}

fn outcome(farads: f64, wish: &str) -> Value {
    work("voice", &given(&stage(farads, wish)), Want::USUAL).expect("an answer")
}

fn answers(farads: f64, wish: &str) -> Value {
    outcome(farads, wish).get("answers").expect("answers").clone()
}

/// Common practice, no source: a capacitor that is switched out has no way to lose its charge, and a stage alone cannot
/// know how long its supply stays charged.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn danger_names_the_capacitor_that_is_switched_out_and_promises_no_wait() {
    let outcome = outcome(1e-9, "");
    let cautions = outcome.get("cautions").expect("cautions").items();
    let code = |caution: &&Value| caution.get("code").and_then(Value::text) == Some("danger_volts");
    let figures = cautions.iter().find(code).and_then(|caution| caution.get("figures")).expect("a danger");
    let capacitors = figures.get("capacitors").expect("capacitors").items().iter().filter_map(Value::text);
    assert_eq!(capacitors.collect::<Vec<_>>(), ["C3", "C4"]);
    assert!(figures.get("wait_seconds").is_none());
    assert!(figure(figures, "least_wait_seconds") >= 60.0);
}

/// Common practice, no source: a part is soldered to the lug of a switch or potentiometer where there is one; a tie point
/// beside it is a joint for nothing.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_tone_parts_are_soldered_to_the_lugs_that_are_there() {
    let outcome = work("voice", &given("{}"), Want { wiring: true, ..Want::default() }).expect("an answer");
    let steps = outcome.get("wiring").expect("wiring").items();
    let end = |step: &Value, key: &str| step.get(key).and_then(Value::text).unwrap_or_default().to_string();
    let elsewhere = ["ground", "supply", "output", "mic", "heater_a", "heater_b"];
    for step in steps {
        let (from, to) = (end(step, "from"), end(step, "to"));
        assert_ne!(from, to);
        for place in [&from, &to] {
            let known = place.contains('.') || elsewhere.contains(&place.as_str()) || place.ends_with("_return");
            assert!(known, "a tie point at {place}");
        }
    }
    let joined = |part: &str, from: &str, to: &str| {
        steps.iter().any(|step| end(step, "part") == part && end(step, "from") == from && end(step, "to") == to)
    };
    assert!(joined("C3", "V1.5", "S1.1") && joined("R4", "S1.common", "Bass.top"));
}

/// The first-order law of a high-pass, by hand: 8.00 dB where (source + load)·C is 157.1 µs, against ten times as much.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn eight_decibels_take_the_capacitor_of_the_first_order_law() {
    let plain = answers(1e-9, "");
    let around = figure(&plain, "source_ohms_seen.0") + figure(&plain, "load_ohms_seen.0");
    let first = 1571e-6 / around;
    let text = stage(1e-9, r#", "want_lift_db": 8.0"#).replace("9.8e-9", &format!("{first:e}"));
    let found = work("voice", &given(&text), Want::USUAL).expect("an answer");
    let farads = figure(found.get("answers").expect("answers"), "lift_farads");
    hold(farads, 157.1e-6 / around, Within::Relative(0.004), "the capacitor");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_wished_intelligibility_comes_when_its_capacitor_is_fitted() {
    for want in [0.34, 0.38, 0.41] {
        let wish = answers(1e-9, &format!(r#", "want_intelligibility": {want}"#));
        let fitted = answers(figure(&wish, "intelligibility_farads"), "");
        hold(figure(&fitted, "intelligibility.1"), want, Within::Absolute(1e-6), "the index");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_the_sold_values_give_is_what_they_give_when_fitted() {
    let wish = answers(1e-9, r#", "want_lift_db": 6"#);
    // IEC 60063, E12.
    let sold: Vec<f64> = (0..3).map(|k| figure(&wish, &format!("sold_farads.{k}"))).collect();
    assert!(sold.windows(2).all(|pair| (1.15..1.26).contains(&(pair[1] / pair[0]))), "{sold:?}");
    let exact = figure(&wish, "lift_farads");
    assert!(sold[0] < exact && exact < sold[2], "{exact} of {sold:?}");
    for (k, farads) in sold.into_iter().enumerate() {
        let fitted = answers(farads, "");
        for each in ["lift_db", "intelligibility", "output_volts"] {
            let (told, got) = (figure(&wish, &format!("sold_{each}.{k}")), figure(&fitted, &format!("{each}.1")));
            hold(told, got, Within::Relative(1e-9), each);
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_wish_that_no_capacitor_meets_is_told_with_what_can_be_had() {
    for (wish, key) in [(r#", "want_lift_db": 30"#, "lift"), (r#", "want_intelligibility": 0.95"#, "intelligibility")] {
        let outcome = outcome(1e-9, wish);
        let answers = outcome.get("answers").expect("answers");
        assert_eq!(answers.get(&format!("{key}_farads")), Some(&Value::Null));
        assert_eq!(answers.get("sold_farads"), Some(&Value::Null));
        assert!(codes(&outcome).contains(&format!("{key}_out_of_reach").as_str()));
    }
    assert!(!warns("voice", &stage(1e-9, ""), "lift_out_of_reach"));
}
