//! Transformers against handbook arithmetic.

use crate::common::{Within, examples, given, warns};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn has(inputs: &str, code: &str) -> bool {
    warns("transformer", inputs, code)
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_worked_example_holds() {
    examples("transformer", include_str!("vectors/transformer.tsv"), |share| Within::Either(share, 1e-12));
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn dangers_and_doubts_are_said_by_code() {
    assert!(has("{}", "danger_transformer") && !has("{}", "danger_test"));
    assert!(has(r#"{"applied_volts": 120, "secondary_open_volts": 300}"#, "danger_test"));
    assert!(has(r#"{"loaded_volts": 20, "loaded_amps": 0.01}"#, "winding_differs"));
    assert!(!has(r#"{"loaded_volts": 26.4, "loaded_amps": 0.01}"#, "winding_differs"));
    let problems = work("transformer", &given(r#"{"loaded_volts": 26}"#), Want::USUAL).unwrap_err();
    assert_eq!((problems[0].field.as_str(), problems[0].code), ("loaded_amps", "together"));
    let problems = work("transformer", &given(r#"{"loaded_volts": 29, "loaded_amps": 1}"#), Want::USUAL).unwrap_err();
    assert_eq!(problems[0].code, "not_below");
}

/// A fuse is a rated one, over half as much again as full load and under twice that.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_fuse_is_one_that_is_sold() {
    for ohms in [1.0, 3.3, 14.0, 47.0, 150.0, 1e3] {
        let inputs = Value::record([("primary_dc_ohms", ohms.into())]);
        let outcome = work("transformer", &inputs, Want::USUAL).expect("an answer");
        let figure =
            |key: &str| outcome.get("answers").and_then(|answers| answers.get(key)?.number()).expect("a figure");
        let over = figure("fuse_amps") / figure("primary_amps");
        assert!((1.5..=1.5 * 1.3).contains(&over), "{over}");
    }
}
