//! The marking calculator against decoded parts.

use crate::common::{Within, at, rows};
use tagstrip_core::{
    calculators::{Want, work},
    quantity::Series,
    value::{Problem, Value},
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn marking(text: &str, kind: &str) -> Result<Value, Vec<Problem>> {
    work("marking", &Value::record([("text", text.into()), ("kind", kind.into())]), Want::USUAL)
}

fn marked(text: &str, kind: &str) -> Value {
    marking(text, kind).unwrap_or_else(|problems| panic!("{text} on a {kind}: {problems:?}"))
}

fn figure(outcome: &Value, path: &str) -> Option<f64> {
    at(outcome, path).and_then(Value::number)
}

fn text<'a>(outcome: &'a Value, path: &str) -> Option<&'a str> {
    at(outcome, path).and_then(Value::text)
}

fn names(outcome: &Value) -> Vec<&str> {
    at(outcome, "answers.bands").map_or(&[][..], Value::items).iter().filter_map(Value::text).collect()
}

fn cautions(outcome: &Value) -> Vec<&str> {
    at(outcome, "cautions")
        .expect("cautions")
        .items()
        .iter()
        .filter_map(|caution| caution.get("code")?.text())
        .collect()
}

fn number(text: &str) -> Option<f64> {
    text.parse().ok()
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn bands_give_value_tolerance_and_code_and_come_back() {
    for row in rows(include_str!("vectors/quantity_bands.tsv")) {
        let outcome = marked(row[0], "resistor");
        assert_eq!(figure(&outcome, "answers.value"), number(row[1]), "{}", row[0]);
        let percent = figure(&outcome, "answers.tolerance").map_or(0.0, |tolerance| 100.0 * tolerance);
        assert!(Within::Relative(1e-15).holds(percent, number(row[2]).expect("percent")), "{}: {percent}", row[0]);
        assert_eq!(figure(&outcome, "answers.ppm_per_kelvin"), number(row[3]), "{}", row[0]);
        assert_eq!(text(&outcome, "answers.letter_code"), Some(row[4]), "{}", row[0]);
        let colours: Vec<&str> = row[0].split(' ').collect();
        assert_eq!(names(&outcome), colours);
        // From value and tolerance alone the same colours come back, but for the sixth.
        let again = marked(&format!("{} ±{} %", row[4], row[2]), "resistor");
        assert_eq!(names(&again), colours[..colours.len().min(5)], "{}", row[0]);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn three_digits_on_a_capacitor_are_a_code_and_come_back() {
    let mut codes = 0;
    for row in rows(include_str!("vectors/quantity_codes.tsv")) {
        let digits = row[1].len() == 3 && row[1].bytes().all(|digit| digit.is_ascii_digit());
        let kind = if row[0] == "Ω" { "resistor" } else { "capacitor" };
        let value = number(row[2]).expect("a figure");
        if !(1e-14..=0.1).contains(&value) && kind == "capacitor" || value > 1e9 {
            continue;
        }
        let outcome = marked(row[1], kind);
        let got = figure(&outcome, "answers.value").expect("a value");
        assert!(Within::Relative(1e-15).holds(got, value), "{}: {got:e}", row[1]);
        if digits {
            codes += 1;
            assert_eq!(text(&outcome, "answers.three_digit"), Some(row[1]));
            assert_eq!(cautions(&outcome).contains(&"also_plain"), row[1].ends_with('0'), "{}", row[1]);
        }
    }
    assert_eq!(codes, 12);
    // EIA-198 from memory: the last digit counts noughts of picofarads, of microhenries on a coil.
    for (written, kind, code) in [
        ("0.1 µF", "capacitor", Some("104")),
        ("2.2 pF", "capacitor", Some("229")),
        ("100 µF", "capacitor", Some("107")),
        ("123 pF", "capacitor", None),
        ("47k", "resistor", Some("473")),
        ("4.7 Ω", "resistor", Some("4R7")),
        ("0.47 Ω", "resistor", Some("R47")),
        ("47.5k", "resistor", None),
        ("100 µH", "inductor", Some("101")),
        ("4.7 µH", "inductor", Some("4R7")),
    ] {
        assert_eq!(text(&marked(written, kind), "answers.three_digit"), code, "{written}");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn letter_codes_have_two_to_four_figures() {
    // IEC 60062's rule; each code read back gives the value again.
    for (written, kind, code) in [
        ("1 Ω", "resistor", "1R0"),
        ("0.5 Ω", "resistor", "R50"),
        ("47 mΩ", "resistor", "47L"),
        ("4.7 mΩ", "resistor", "4L7"),
        ("59.04k", "resistor", "59K04"),
        ("1 G Ω", "resistor", "1G0"),
        ("0.33 pF", "capacitor", "p33"),
        ("0.047 pF", "capacitor", "p047"),
        ("10 pF", "capacitor", "10p"),
        ("4700 pF", "capacitor", "4n7"),
        (".02", "capacitor", "20n"),
        ("8 MFD", "capacitor", "8u0"),
        ("10000 µF", "capacitor", "10m"),
        ("2.5 mH", "inductor", "2m5"),
        ("10 H", "inductor", "10H"),
    ] {
        let outcome = marked(written, kind);
        assert_eq!(text(&outcome, "answers.letter_code"), Some(code), "{written}");
        let value = figure(&outcome, "answers.value");
        // A capacitor's trailing m is asked in a field: milli, or micro of old diagrams.
        if code != "10m" {
            assert_eq!(figure(&marked(code, kind), "answers.value"), value, "{code}");
        }
    }
    let rounded = marked("1234.56", "resistor");
    assert_eq!((text(&rounded, "answers.letter_code"), cautions(&rounded)), (Some("1K235"), vec!["code_rounded"]));
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn preferred_values_are_those_of_the_table() {
    for row in rows(include_str!("vectors/quantity_nearest.tsv")) {
        let target = number(row[0]).expect("a figure");
        let outcome = if target < 1e-3 {
            marked(&format!("{target:e} F"), "capacitor")
        } else {
            marked(&format!("{target} Ω"), "resistor")
        };
        for (at, series) in Series::ALL.into_iter().enumerate() {
            let path = format!("answers.preferred.{}", series.name());
            assert_eq!(figure(&outcome, &format!("{path}.value")), number(row[1 + 2 * at]), "{} {path}", row[0]);
            let error = figure(&outcome, &format!("{path}.error_percent")).expect("an error");
            assert!(Within::Absolute(0.51e-4).holds(error, number(row[2 + 2 * at]).expect("an error")), "{}", row[0]);
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_may_be_read_otherwise_is_said() {
    for (text, kind, code) in [
        ("yellow violet red gold", "resistor", None),
        ("brown black black red brown", "resistor", Some("reads_both_ways")),
        ("red violet orange yellow", "resistor", Some("old_tolerance_colour")),
        ("472", "resistor", Some("also_a_code")),
        ("101", "inductor", Some("also_a_code")),
        ("104Z", "capacitor", Some("uneven_tolerance")),
        ("104", "capacitor", None),
        ("470 OHMS", "resistor", None),
        ("4k7", "resistor", None),
    ] {
        let outcome = marked(text, kind);
        let got = cautions(&outcome);
        match code {
            Some(code) => assert!(got.contains(&code), "{text}: {got:?}"),
            None => assert!(got.is_empty(), "{text}: {got:?}"),
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_is_no_marking_is_refused_at_the_text() {
    for (text, kind, code) in [
        ("22Ok", "resistor", "letter_for_digit"),
        ("8", "capacitor", "which_unit"),
        ("0", "resistor", "too_small"),
        ("-4k7", "resistor", "too_small"),
        ("5 F", "capacitor", "too_large"),
        ("yellow violet red gold", "capacitor", "no_figure"),
        ("", "resistor", "empty"),
    ] {
        let problems = marking(text, kind).expect_err(text);
        assert_eq!((problems[0].field.as_str(), problems[0].code, problems.len()), ("text", code, 1), "{text}");
    }
}
