//! What a meter reads on a stage, what is bought for it, and how it is joined.

use crate::common::{Within, rows};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn outcome(inputs: &Value) -> Value {
    work("stage", inputs, Want::ALL).expect("an answer")
}

fn row<'a>(outcome: &'a Value, list: &str, key: &str, name: &str) -> &'a Value {
    let items = outcome.get(list).map(Value::items).unwrap_or_default();
    items.iter().find(|item| item.get(key).and_then(Value::text) == Some(name)).expect("a row of that name")
}

fn number(row: &Value, key: &str) -> f64 {
    row.get(key).and_then(Value::number).unwrap_or_else(|| panic!("{key} in {row:?}"))
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn readings_with_a_loading_meter_and_their_bands_are_those_of_an_independent_solver() {
    let table = rows(include_str!("vectors/stage_readings.tsv"));
    assert!(!table.is_empty());
    for cells in table {
        let given: Vec<f64> = cells[..9].iter().map(|cell| cell.parse().expect("a figure")).collect();
        let tube = Value::record([
            ("perveance", given[0].into()),
            ("mu", given[1].into()),
            ("mu_spread", given[2].into()),
            ("contact_volts", given[3].into()),
        ]);
        let inputs = Value::record([
            ("tube", tube),
            ("supply_volts", given[4].into()),
            ("plate_ohms", given[5].into()),
            ("cathode_ohms", given[6].into()),
            ("grid_ohms", given[7].into()),
            ("meter", Value::record([("ohms", given[8].into())])),
        ]);
        let outcome = outcome(&inputs);
        let reading = row(&outcome, "test_points", "name", cells[9]);
        let keys = ["nominal", "least", "most", "usual_least", "usual_most"];
        for (key, cell) in keys.into_iter().zip(&cells[10..15]) {
            let want: f64 = cell.parse().expect("a figure");
            let got = number(reading, key);
            assert!(Within::Relative(2e-5).holds(got, want), "{} {key}: got {got}, expected {want}", cells[9]);
        }
    }
}

/// A 20,000 Ω/V meter on its 250 V range is 5 MΩ. Trade: the sensitivity is written on the dial.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_meter_is_its_sensitivity_times_its_range() {
    let with = |meter: Value| outcome(&Value::record([("meter", meter)]));
    let by_dial = with(Value::record([("ohms_per_volt", 20e3.into()), ("range", 250.0.into())]));
    let by_ohms = with(Value::record([("ohms", 5e6.into())]));
    assert_eq!(by_dial.get("test_points"), by_ohms.get("test_points"));
    let open = with(Value::record([("ohms", 1e9.into())]));
    let plate = |outcome: &Value| number(row(outcome, "test_points", "name", "plate"), "nominal");
    assert!(plate(&by_dial) < plate(&open), "a meter on the plate reads low");
}

/// Twice the watts, half a watt or more; a coupling capacitor stands the whole supply. Common practice, no source.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn parts_are_bought_with_their_margins() {
    let hot = Value::record([
        ("tube", "12AU7".into()),
        ("supply_volts", 300.0.into()),
        ("plate_ohms", 22e3.into()),
        ("cathode_ohms", 680.0.into()),
    ]);
    let outcome = outcome(&hot);
    let amps = number(outcome.get("answers").unwrap(), "plate_amps");
    let watts = number(row(&outcome, "parts", "reference", "R3"), "watts");
    assert!(watts >= 2.0 * amps * amps * 22e3 && watts <= 5.0 * amps * amps * 22e3, "{watts} for {amps}");
    assert!(number(row(&outcome, "parts", "reference", "C3"), "volts") >= 1.05 * 300.0);
    let cathode = number(outcome.get("answers").unwrap(), "cathode_volts");
    assert!(number(row(&outcome, "parts", "reference", "C2"), "volts") >= 2.0 * cathode);
    let elsewhere = |part: &Value| ["R5", "R6", "C4"].contains(&part.get("reference").and_then(Value::text).unwrap());
    assert!(!outcome.get("parts").unwrap().items().iter().any(elsewhere), "source and load are not bought here");
}

/// 6SL7GT, basing 8BD: grid 4, plate 5, cathode 6, heater 7 and 8 (a public pin table citing data sheets).
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_part_is_joined_by_its_pins() {
    let outcome = outcome(&Value::record([("tube", "6SL7GT".into())]));
    let steps: Vec<[String; 3]> = outcome
        .get("wiring")
        .unwrap()
        .items()
        .iter()
        .map(|step| ["from", "to", "part"].map(|key| step.get(key).and_then(Value::text).unwrap_or("").to_string()))
        .collect();
    let joins = |part: &str, ends: [&str; 2]| {
        let found = steps.iter().find(|step| step[2] == part).unwrap_or_else(|| panic!("{part} in {steps:?}"));
        let mut got = [found[0].as_str(), found[1].as_str()];
        got.sort_unstable();
        assert_eq!(got, ends, "{part}");
    };
    joins("R3", ["V1.5", "supply"]);
    joins("R2", ["V1.6", "ground"]);
    joins("R1", ["V1.4", "ground"]);
    joins("C3", ["V1.5", "output"]);
    let wire = |from: &str, to: &str| steps.iter().any(|step| step[0] == from && step[1] == to && step[2].is_empty());
    assert!(wire("source", "V1.4") && wire("source_return", "ground") && wire("supply_return", "ground"));
    let heater = steps.iter().filter(|step| step[0].starts_with("heater")).map(|step| step[1].as_str());
    assert_eq!(heater.collect::<Vec<_>>(), ["V1.7", "V1.8"]);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn dangers_limits_and_notes_are_said_by_code() {
    let codes = |inputs: Value| -> Vec<String> {
        let outcome = outcome(&inputs);
        let cautions = outcome.get("cautions").unwrap().items();
        cautions.iter().map(|caution| caution.get("code").and_then(Value::text).unwrap().to_string()).collect()
    };
    let has = |codes: &[String], code: &str| codes.iter().any(|each| each == code);
    assert!(has(&codes(Value::record([("supply_volts", 250.0.into())])), "danger_volts"));
    assert!(!has(&codes(Value::record([("supply_volts", 48.0.into())])), "danger_volts"));
    let hot = [
        ("tube", "12AX7".into()),
        ("supply_volts", 400.0.into()),
        ("plate_ohms", 10e3.into()),
        ("cathode_ohms", 100.0.into()),
    ];
    let hot = codes(Value::record(hot));
    assert!(has(&hot, "plate_dissipation") && has(&hot, "plate_volts_over"), "{hot:?}");
    assert!(has(&codes(Value::record([("cathode_ohms", 0.0.into())])), "grid_current"));
    let lifted = codes(Value::record([
        ("tube", "6DJ8".into()),
        ("grid_volts", 120.0.into()),
        ("cathode_ohms", 22e3.into()),
        ("plate_ohms", 4.7e3.into()),
    ]));
    assert!(has(&lifted, "heater_cathode_over"), "{lifted:?}");
    assert!(has(&codes(Value::record([("output_volts", 200.0.into())])), "output_not_reached"));
}
