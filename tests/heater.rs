//! Heaters against data sheets and Ohm’s law.

use crate::common::{Within, examples, given, warns};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn has(inputs: &str, code: &str) -> bool {
    warns("heater", inputs, code)
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_worked_example_holds() {
    examples("heater", include_str!("vectors/heater.tsv"), |share| Within::Either(share, 1e-12));
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn dangers_limits_and_notes_are_said_by_code() {
    assert!(has(r#"{"winding_volts": 7.5}"#, "heater_volts_high"));
    assert!(has(r#"{"lead_ohms": 1}"#, "heater_volts_low"));
    assert!(has(r#"{"winding_amps": 0.5}"#, "winding_amps_over"));
    assert!(has(r#"{"heaters": [{"tube": "12AU7", "cathode_volts": 250}]}"#, "heater_cathode_over"));
    assert!(!has(
        r#"{"heaters": [{"tube": "12AU7", "cathode_volts": 250}], "elevate_volts": 120}"#,
        "heater_cathode_over"
    ));
    assert!(has(r#"{"elevate_volts": 120}"#, "danger_heater") && !has("{}", "danger_heater"));
    assert!(has(r#"{"heaters": [{"tube": "6SL7GT"}, {"volts": 5, "amps": 2}]}"#, "heater_volts_unlike"));
    let string =
        r#"{"heaters": [{"tube": "6SL7GT"}, {"tube": "6SN7GT"}], "arrangement": "series", "winding_volts": 12.6}"#;
    assert!(has(string, "heater_amps_unlike") && has(string, "heater_string_surge"));
}

/// Both ends of every heater are joined: in a string each pin once, and the first to the grounded end.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_string_is_wired_from_pin_to_pin() {
    let string =
        r#"{"heaters": [{"tube": "12AX7"}, {"tube": "12AU7"}], "arrangement": "series", "winding_volts": 25.2}"#;
    let outcome = work("heater", &given(string), Want::ALL).expect("an answer");
    let steps = outcome.get("wiring").unwrap().items();
    let ends: Vec<[&str; 2]> =
        steps.iter().map(|step| ["from", "to"].map(|key| step.get(key).and_then(Value::text).unwrap())).collect();
    assert_eq!(ends, [["heater_b", "V1.5"], ["V1.4", "V2.5"], ["heater_a", "V2.4"]]);
}
