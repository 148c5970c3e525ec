//! Ladders against first-order theory and tables computed outside the project.

use crate::common::{Within, figure, hold, rows};
use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

/// One part in a branch: place, key, figure.
type Branch = (&'static str, &'static str, f64);

fn ladder(source_ohms: f64, load_ohms: f64, branches: &[Branch], more: &[(&str, Value)]) -> Value {
    let branches = branches
        .iter()
        .map(|(place, key, figure)| Value::record([("place", (*place).into()), (*key, (*figure).into())]));
    let mut pairs = vec![
        ("source_ohms".to_string(), source_ohms.into()),
        ("load_ohms".to_string(), load_ohms.into()),
        ("branches".to_string(), Value::List(branches.collect())),
    ];
    pairs.extend(more.iter().map(|(key, value)| ((*key).to_string(), value.clone())));
    Value::Record(pairs)
}

fn answers(inputs: &Value) -> Value {
    let outcome = work("filter", inputs, Want::USUAL).expect("an answer");
    outcome.get("answers").cloned().expect("answers")
}

fn figures(row: &[&str], count: usize) -> Vec<f64> {
    row[..count].iter().map(|cell| cell.parse().expect("a figure")).collect()
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn corners_of_resistor_and_capacitor_are_one_over_two_pi_rc() {
    let table = rows(include_str!("vectors/filter_rc_corner.tsv"));
    assert!(!table.is_empty());
    for row in table {
        let f = figures(&row, 4);
        let high_pass = answers(&ladder(0.0, f[0], &[("series", "farads", f[1])], &[]));
        hold(figure(&high_pass, "corners_hertz.0"), f[2], Within::Relative(1e-5), "corner");
        hold(figure(&high_pass, "time_seconds"), f[3], Within::Relative(1e-9), "time");
        let low_pass = answers(&ladder(f[0], 1e9, &[("shunt", "farads", f[1])], &[]));
        let loaded = f[2] * (1.0 + f[0] / 1e9);
        hold(figure(&low_pass, "corners_hertz.0"), loaded, Within::Relative(1e-5), "low-pass corner");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn first_order_sections_fall_and_turn_as_theory_says() {
    let (ohms, farads) = (10e3, 1e-9);
    let corner = 1.0 / (2.0 * std::f64::consts::PI * ohms * farads);
    let table = rows(include_str!("vectors/filter_first_order.tsv"));
    assert!(!table.is_empty());
    for row in table {
        let f = figures(&row, 5);
        let at = [("hertz", Value::Number(f[0] * corner))];
        let high = answers(&ladder(0.0, ohms, &[("series", "farads", farads)], &at));
        hold(figure(&high, "gain_db"), f[1], Within::Absolute(1e-5), "high-pass dB");
        hold(figure(&high, "phase_degrees"), f[2], Within::Absolute(1e-5), "high-pass degrees");
        let low = answers(&ladder(ohms, 1e9, &[("shunt", "farads", farads)], &at));
        hold(figure(&low, "gain_db"), f[3], Within::Absolute(2e-4), "low-pass dB");
        hold(figure(&low, "phase_degrees"), f[4], Within::Absolute(1e-3), "low-pass degrees");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_coupling_capacitor_into_a_load_passes_what_nodal_analysis_says() {
    let table = rows(include_str!("vectors/filter_coupling_lift.tsv"));
    assert!(!table.is_empty());
    for row in table {
        let f = figures(&row, 8);
        let branches = [("series", "farads", f[3]), ("shunt", "farads", f[2])];
        for (hertz, want) in [300.0, 400.0, 1000.0, 2500.0].into_iter().zip(&f[4..8]) {
            let inputs = ladder(f[0], f[1], &branches, &[("hertz", Value::Number(hertz))]);
            hold(figure(&answers(&inputs), "gain_db"), *want, Within::Absolute(2e-5), "dB");
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_wanted_corner_is_given_by_the_part_solved_for() {
    for (path, place, key) in [("branches[0].farads", "series", "farads"), ("branches[0].henries", "shunt", "henries")]
    {
        let wish = [("want_corner_hertz", Value::Number(300.0)), ("solve", path.into())];
        let solved = answers(&ladder(50e3, 470e3, &[(place, key, 1e-9)], &wish));
        let part = figure(&solved, "solved");
        let ohms = if place == "series" { 520e3 } else { 50e3 * 470e3 / 520e3 };
        let omega = 2.0 * std::f64::consts::PI * 300.0;
        let theory = if place == "series" { 1.0 / (omega * ohms) } else { ohms / omega };
        hold(part, theory, Within::Relative(1e-6), path);
        hold(figure(&solved, "corners_hertz.0"), 300.0, Within::Relative(1e-6), "corner");
    }
}

/// Two ladders whose peak stands right beside a null: found by comparing with chain matrices (numpy) at a dense grid.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_peak_beside_a_null_is_not_stepped_over() {
    let trap = Value::record([
        ("place", "series".into()),
        ("together", "parallel".into()),
        ("farads", 2.1659943339381748e-8.into()),
        ("henries", 0.01572947697547681.into()),
    ]);
    let part = |place: &str, farads: f64| Value::record([("place", place.into()), ("farads", farads.into())]);
    let branches = vec![trap, part("shunt", 1.1684378439115383e-8), part("series", 2.891766106498572e-7)];
    let inputs = Value::record([
        ("source_ohms", 0.0.into()),
        ("load_ohms", 11404.683466082664.into()),
        ("branches", Value::List(branches)),
    ]);
    let answers = answers(&inputs);
    hold(figure(&answers, "best_gain_db"), 15.39, Within::Absolute(0.05), "best");
    hold(figure(&answers, "best_hertz"), 6918.7, Within::Relative(2e-3), "best at");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_capacitor_right_across_a_source_changes_nothing() {
    let answers = answers(&ladder(0.0, 1000.0, &[("shunt", "farads", 1e-8)], &[]));
    hold(figure(&answers, "gain_db"), 0.0, Within::Absolute(1e-9), "dB");
    let omega = 2.0 * std::f64::consts::PI * 1000.0;
    let theory = 1.0 / (1e-6 + (omega * 1e-8).powi(2)).sqrt();
    hold(figure(&answers, "input_ohms"), theory, Within::Relative(1e-9), "input");
}

#[test]
#[cfg(not(target_arch = "wasm32"))]
fn what_cannot_be_solved_is_said_with_its_field() {
    let wish = [("want_corner_hertz", Value::Number(300.0)), ("solve", "branches[7].farads".into())];
    let problems = work("filter", &ladder(50e3, 470e3, &[("series", "farads", 1e-9)], &wish), Want::USUAL).unwrap_err();
    assert_eq!((problems[0].field.as_str(), problems[0].code), ("solve", "no_such_part"));
    let empty = Value::record([("branches", Value::List(vec![Value::record([("place", "series".into())])]))]);
    let problems = work("filter", &empty, Want::USUAL).unwrap_err();
    assert_eq!((problems[0].field.as_str(), problems[0].code), ("branches[0]", "empty_branch"));
}
