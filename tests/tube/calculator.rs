//! `tube` and `stage` together: a fitted tube is a tube.

use tagstrip_core::{
    calculators::{Want, work},
    tube::tube,
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use crate::common::at;

fn point(plate_volts: f64, grid_volts: f64, plate_amps: f64) -> Value {
    Value::record([
        ("plate_volts", plate_volts.into()),
        ("grid_volts", grid_volts.into()),
        ("plate_amps", plate_amps.into()),
    ])
}

fn figure(whole: &Value, path: &str) -> f64 {
    at(whole, path).and_then(Value::number).unwrap_or_else(|| panic!("{path} in {whole:?}"))
}

fn with(mut record: Value, key: &str, value: Value) -> Value {
    if let Value::Record(pairs) = &mut record {
        pairs.push((key.into(), value));
    }
    record
}

/// The default input is the table's 6SN7GT without its cut-off; given that too, the answer is the table's law.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_default_with_its_cut_off_is_the_tables_tube() {
    let cutoff = Value::record([("plate_volts", 250.0.into()), ("grid_volts", (-18.0).into())]);
    let inputs = Value::record([("cutoff", Value::List(vec![cutoff]))]);
    let outcome = work("tube", &inputs, Want::ALL).expect("a fit");
    let law = tube("6SN7GT").expect("in the table").law;
    let answers = outcome.get("answers").expect("answers");
    assert!((figure(answers, "perveance") / law.perveance - 1.0).abs() < 6e-6);
    assert!((figure(answers, "mu") / law.mu - 1.0).abs() < 6e-6);
    assert!((figure(answers, "mu_spread") - law.mu_spread).abs() < 6e-6);
    assert!((figure(answers, "contact_volts") - law.contact_volts).abs() < 6e-6);
    assert_eq!(answers.get("priors").expect("priors").items(), &[Value::from("contact_volts")]);
    assert_eq!(at(&outcome, "cautions.0.code"), Some(&"prior_kept".into()));
    assert_eq!(at(&outcome, "curves.0.marks").expect("marks").items().len(), 2);
    assert!(at(&outcome, "curves.0.lines").expect("lines").items().len() > 4);
    assert!(figure(answers, "worst_percent").abs() < 4.0 && figure(answers, "cutoff_percent.0").abs() < 60.0);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_fitted_record_is_a_tube_of_a_stage() {
    let cutoff = Value::record([("plate_volts", 250.0.into()), ("grid_volts", (-18.0).into())]);
    let inputs = Value::record([
        ("name", "bench 6SN7".into()),
        ("cutoff", Value::List(vec![cutoff])),
        ("grid_plate_farads", 4e-12.into()),
        ("grid_cathode_farads", 2.2e-12.into()),
        ("plate_cathode_farads", 0.7e-12.into()),
    ]);
    let fitted = work("tube", &inputs, Want::USUAL).expect("a fit");
    let record = at(&fitted, "answers.tube").expect("a record").clone();
    let stage = |tube: Value| {
        let inputs = Value::record([("tube", tube), ("plate_ohms", 47e3.into()), ("cathode_ohms", 1500.0.into())]);
        work("stage", &inputs, Want::USUAL).expect("a stage")
    };
    let (own, table) = (stage(record), stage("6SN7GT".into()));
    for key in ["gain", "plate_amps", "plate_volts", "output_ohms", "high_corner_hertz"] {
        let path = format!("answers.{key}");
        assert!((figure(&own, &path) / figure(&table, &path) - 1.0).abs() < 1e-4, "{key}");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_is_wrong_is_said() {
    let refused = |points: Vec<Value>| {
        let problems =
            work("tube", &Value::record([("points", Value::List(points))]), Want::USUAL).expect_err("refused");
        (problems[0].field.clone(), problems[0].code, problems[0].about.clone().unwrap_or_default())
    };
    let code = |points| refused(points).1;
    assert_eq!(code(vec![point(250.0, -8.0, 9e-3)]), "too_few");
    assert_eq!(code(vec![point(250.0, -8.0, 9e-3), point(90.0, 0.0, 0.0)]), "too_small");
    let same = refused(vec![point(250.0, -8.0, 9e-3), point(250.0, -8.0, 9e-3)]);
    assert_eq!(same, ("points".into(), "no_solution", "undetermined".into()));

    // the minus left out of a 6SN7GT's second point
    let slip = |grid| {
        let rp = |record, ohms: f64| with(record, "plate_resistance", ohms.into());
        let points = vec![
            rp(with(point(90.0, 0.0, 10e-3), "gm", 3e-3.into()), 6700.0),
            rp(with(point(250.0, grid, 9e-3), "gm", 2.6e-3.into()), 7700.0),
        ];
        work("tube", &Value::record([("points", Value::List(points))]), Want::USUAL).expect("a fit")
    };
    let cautioned = |outcome: &Value| {
        let mut cautions = outcome.get("cautions").expect("cautions").items().iter();
        cautions.any(|caution| caution.get("code") == Some(&"residual_large".into()))
    };
    assert!(!cautioned(&slip(-8.0)) && cautioned(&slip(8.0)));
}
