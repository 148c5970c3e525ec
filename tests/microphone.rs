//! What a microphone gives: its sensitivity as data sheets write it, a crystal's lowest note, a carbon button's current.

use crate::common::{Within, figure, given, hold, warns};
use tagstrip_core::{
    calculators::{Want, work},
    quantity::{Unit, read},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn answer(inputs: &str, key: &str) -> f64 {
    let found = work("voice", &given(inputs), Want::USUAL).expect("an answer");
    figure(found.get("answers").expect("answers"), key)
}

/// IEC 60268-4 has sensitivity in volts a pascal; a microbar is 0.1 Pa (SI brochure, table of units to be left).
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_sensitivity_is_read_as_data_sheets_have_it() {
    let rows = [
        ("2 mV/Pa", 2e-3),
        ("-54 dB re 1 V/Pa", 1.995_262e-3),
        ("−54 dBV/Pa", 1.995_262e-3),
        ("-50 dB ref: 1V/µbar", 31.622_777e-3),
        ("-60dB re 1V/ubar", 10e-3),
        ("-60 dB re 1 V/dyn/cm²", 10e-3),
        ("+6 dB re 1 mV/Pa", 1.995_262e-3),
        ("1,5 mV/µbar", 15e-3),
        ("-34,5 dB re 1 V/Pa", 18.836_491e-3),
    ];
    for (text, volts) in rows {
        let found = read(text, Unit::VoltPerPascal, None).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
        hold(found.value, volts, Within::Relative(1e-6), text);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn decibels_of_no_said_reference_are_asked_with_both_readings() {
    let fault = read("-54 dB", Unit::VoltPerPascal, None).expect_err("a question");
    assert_eq!(fault.code, "which_reference");
    let values: Vec<f64> = fault.mends.iter().map(|mend| mend.value).collect();
    assert_eq!(values.len(), 2, "{fault:?}");
    hold(values[1], 10.0 * values[0], Within::Relative(1e-12), "the old one");
    for text in ["-54 dB re 1 V/m", "dB", "-5x dB", "--54 dB re 1 V/Pa", "-54 dB dB", "-1234567 dB re 1 V/Pa"] {
        assert!(read(text, Unit::VoltPerPascal, None).is_err(), "{text}");
    }
}

/// ANSI S3.5-1997: speech of normal effort is 62.35 dB SPL a metre before the lips, all bands together; 0 dB is 20 µPa.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_volts_to_expect_are_those_of_normal_speech_at_the_distance() {
    for (sensitivity, distance, ratio) in [(2e-3, 1.0, 1.0), (2e-3, 0.05, 1.0), (31.6e-3, 0.1, 1.0), (1e-3, 0.02, 25.0)]
    {
        let inputs = format!(
            r#"{{"microphone_sensitivity": {sensitivity}, "microphone_distance": {distance}, "microphone_ratio": {ratio}}}"#
        );
        let by_hand = sensitivity * 20e-6 * 10f64.powf(62.35 / 20.0) / distance * ratio;
        hold(answer(&inputs, "microphone_expected_volts"), by_hand, Within::Relative(1e-3), &inputs);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn volts_that_are_another_microphones_are_told() {
    let with = |volts: f64| format!(r#"{{"microphone_sensitivity": 0.03, "microphone_volts": {volts}}}"#);
    assert!(!warns("voice", &with(0.0157), "microphone_differs"));
    assert!(warns("voice", &with(0.05), "microphone_differs"));
    assert!(warns("voice", &with(0.005), "microphone_differs"));
    assert!(!warns("voice", r#"{"microphone_volts": 0.5}"#, "microphone_differs"));
}

/// The corner of a capacitor into a resistor with the tube's capacitance across it, against the whole stage's response
/// node by node: 3.01 dB under the flat part, and as a first-order network rises to it. Bypass and coupling are so large
/// that nothing else falls.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_crystal_falls_by_three_decibels_at_its_lowest_note() {
    let stage = |crystal: &str| {
        given(&format!(
            r#"{{"grid_ohms": 470e3, "microphone_ohms": 0, {crystal} "cathode_farads": 0.1, "tone": "none", "load_farads": 0,
            "positions": [{{"label": "", "farads": 0.1}}]}}"#
        ))
    };
    let crystal = stage(r#""microphone_farads": 1.5e-9,"#);
    let found = work("voice", &crystal, Want::USUAL).expect("an answer");
    let corner = figure(found.get("answers").expect("answers"), "microphone_low_hertz");
    let bare = 1.0 / (2.0 * std::f64::consts::PI * 470e3 * 1.5e-9);
    assert!((0.85 * bare..bare).contains(&corner), "{corner} of {bare} without the tube");
    assert!(warns(
        "voice",
        r#"{"microphone_farads": 1.5e-9, "grid_ohms": 390e3, "microphone_ohms": 0}"#,
        "crystal_thin"
    ));
    assert!(!warns("voice", r#"{"microphone_farads": 1.5e-9, "grid_ohms": 4.7e6}"#, "crystal_thin"));
    let level = |inputs, hertz: f64| {
        let found = work("voice", &inputs, Want::ALL).expect("an answer");
        let line = found.at("curves[0].lines[0]").expect("a line").clone();
        let series = |key: &str| match line.get(key) {
            Some(Value::Series(figures)) => figures.clone(),
            _ => panic!("{key} of the line"),
        };
        let (x, y) = (series("x"), series("y"));
        let above = x.iter().position(|other| *other > hertz).expect("a point");
        let share = (hertz / x[above - 1]).ln() / (x[above] / x[above - 1]).ln();
        y[above - 1] + share * (y[above] - y[above - 1])
    };
    let fall = |hertz: f64| level(crystal.clone(), hertz) - level(stage(""), hertz);
    for hertz in [0.5 * corner, corner, 2.0 * corner] {
        let first_order = |hertz: f64| -10.0 * (1.0 + (corner / hertz).powi(2)).log10();
        let want = first_order(hertz) - first_order(3000.0);
        hold(fall(hertz) - fall(3000.0), want, Within::Absolute(0.02), "dB against the same without it");
    }
}

/// Ohm's law.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_carbon_button_has_its_direct_current() {
    let inputs = r#"{"carbon_volts": 4.5, "carbon_ohms": 100, "carbon_feed_ohms": 50}"#;
    hold(answer(inputs, "carbon_amps"), 0.03, Within::Relative(1e-12), "A");
    hold(answer(inputs, "carbon_watts"), 0.09, Within::Relative(1e-12), "W");
    assert!(!warns("voice", inputs, "carbon_hot") && !warns("voice", inputs, "carbon_faint"));
    assert!(warns("voice", r#"{"carbon_volts": 12, "carbon_ohms": 60}"#, "carbon_hot"));
    assert!(warns("voice", r#"{"carbon_volts": 1.5, "carbon_ohms": 200, "carbon_feed_ohms": 1e3}"#, "carbon_faint"));
}
