//! Whole calculators against cases worked outside the project with numpy, scipy and mpmath.
//!
//! Each case carries how it was computed and a tolerance for each key; rows that need a later part are passed over.

use crate::common::{at, value};
use tagstrip_core::{
    calculators::{CALCULATORS, Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

const CASES: &str = include_str!("vectors/computed.json");

fn near(got: f64, want: f64, tolerance: &serde_json::Value) -> bool {
    let most = |key: &str| tolerance.get(key).and_then(serde_json::Value::as_f64);
    let off = (got - want).abs();
    most("relative").is_some_and(|share| off <= share * want.abs())
        || most("db").is_some_and(|db| off <= db)
        || most("absolute").is_some_and(|most| off <= most)
}

fn pairs<'a>(got: &'a Value, want: &'a Value) -> Vec<(f64, f64)> {
    match (got, want) {
        (Value::List(got), Value::List(want)) => {
            assert_eq!(got.len(), want.len(), "as many entries");
            got.iter().zip(want).flat_map(|(got, want)| pairs(got, want)).collect()
        }
        (got, want) => vec![(got.number().expect("a figure"), want.number().expect("a figure"))],
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_computed_case_holds() {
    let cases: Vec<serde_json::Value> = serde_json::from_str(CASES).expect("well-formed cases");
    let (mut rows, mut figures, mut worst) = (0, 0, Vec::new());
    let mut heard = (0, 0);
    for (number, case) in cases.iter().enumerate() {
        let id = case["calculator"].as_str().expect("an id");
        let ours = CALCULATORS.iter().any(|calculator| calculator.id == id);
        if !ours || case.get("needs").is_some_and(|needs| needs != "hearing") {
            continue;
        }
        rows += 1;
        let hearing = usize::from(case.get("needs").is_some());
        heard.0 += hearing;
        let outcome = match work(id, &value(&case["inputs"]), Want::USUAL) {
            Ok(outcome) => outcome,
            Err(problems) => {
                worst.push(format!("case {number} {id}: refused: {problems:?}"));
                continue;
            }
        };
        let answers = outcome.get("answers").expect("answers");
        for (key, want) in case["answers"].as_object().expect("answers") {
            let Some(got) = at(answers, key) else {
                worst.push(format!("case {number} {id}.{key}: absent"));
                continue;
            };
            for (got, want) in pairs(got, &value(want)) {
                figures += 1;
                heard.1 += hearing;
                if !near(got, want, &case["tolerances"][key]) {
                    worst.push(format!("case {number} {id}.{key}: got {got}, expected {want}"));
                }
            }
        }
    }
    assert!(rows > 0 && figures > 0, "no rows");
    println!("cases.hearing {} figures {}", heard.0, heard.1);
    println!("cases.rows {rows} figures {figures} fallen_short {}", worst.len());
    assert!(worst.is_empty(), "{}", worst.join("\n"));
}
