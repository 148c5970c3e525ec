//! Dropping resistors and gas regulators against handbook arithmetic.

use crate::common::{Within, examples, given, warns};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_worked_example_holds() {
    examples("rail", include_str!("vectors/rail.tsv"), Within::Relative);
}

/// The preferred dropper put in keeps what it was chosen to keep.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_preferred_dropper_keeps_every_limit_of_the_regulator() {
    let mut found = 0;
    for name in ["0A2", "0B2", "0C3", "VR75", "VR150"] {
        for (low, high, most) in [(1.3, 1.4, 0.01), (1.5, 1.6, 0.02), (1.6, 2.0, 0.005), (2.0, 2.2, 0.02)] {
            let tube = tagstrip_core::tube::regulator(name).expect("a regulator");
            let source = (low * tube.volts, high * tube.volts);
            let inputs = Value::record([
                ("regulator", name.into()),
                ("source_volts_least", source.0.into()),
                ("source_volts_most", source.1.into()),
                ("amps_least", (0.5 * most).into()),
                ("amps_most", most.into()),
            ]);
            let outcome = work("rail", &inputs, Want::USUAL).expect("an answer");
            let answers = outcome.get("answers").expect("answers");
            let Some(ohms) = answers.get("dropper_preferred_ohms").and_then(Value::number) else { continue };
            found += 1;
            assert!((source.0 - tube.volts) / ohms - most >= tube.amps_least * (1.0 - 1e-9));
            assert!((source.1 - tube.volts) / ohms - 0.5 * most <= tube.amps_most * (1.0 + 1e-9));
            assert!(source.0 - ohms * most >= tube.striking_volts * (1.0 - 1e-9));
        }
    }
    assert!(found >= 8, "{found}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn limits_are_said_by_code() {
    let has = |inputs: &str, code: &str| warns("rail", inputs, code);
    let wide = r#"{"regulator": "0A2", "source_volts_least": 200, "source_volts_most": 400, "amps_least": 0, "amps_most": 0.005}"#;
    assert!(has(wide, "regulator_amps_over"));
    assert!(has(r#"{"regulator": "0A2", "amps_least": 0, "amps_most": 0.01}"#, "regulator_no_strike"));
    assert!(has(r#"{"regulator": "0A2", "farads": 1e-6}"#, "regulator_farads_over"));
    assert!(!has(r#"{"regulator": "0A2", "farads": 1e-7}"#, "regulator_farads_over"));
    assert!(has(r#"{"amps_most": 0.02}"#, "rail_starved"));
    assert!(has("{}", "danger_volts") && has("{}", "rail_rises"));
    assert!(!has(r#"{"volts_in": 24, "volts_out": 12}"#, "danger_volts"));
    let problems = work("rail", &given(r#"{"regulator": "0A2", "source_volts_least": 140}"#), Want::USUAL);
    assert_eq!(problems.unwrap_err()[0].about.as_deref(), Some("source_under_regulator"));
    let problems = work("rail", &given(r#"{"volts_in": 100, "volts_out": 150}"#), Want::USUAL);
    assert_eq!(problems.unwrap_err()[0].code, "not_below");
}
