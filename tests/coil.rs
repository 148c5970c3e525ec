//! Coils against published tables and figures computed outside the project.

use crate::common::{Within, check, figure, hold, rows, warns};
use serde_json::json;
use tagstrip_core::calculators::{Want, work};
use tagstrip_core::coil::{
    MU, Winding, copper_ohm_metres, gap_term, loops, nagaoka, phi, self_farads, skin, skin_depth, turns_term,
};
use tagstrip_core::value::Value;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn figures(row: &[&str]) -> Vec<f64> {
    row[..row.len() - 1].iter().map_while(|cell| cell.parse().ok()).collect()
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn nagaoka_is_exact_and_the_tables_are_as_near_as_they_are_known_to_be() {
    let table = rows(include_str!("vectors/coil_nagaoka.tsv"));
    assert!(table.len() > 150);
    for row in table {
        let f = figures(&row);
        // The exact column has eight figures or more, and 1/(D/l) one rounding.
        hold(nagaoka(f[0]), f[2], Within::Absolute(6e-8), row[0]);
        hold(nagaoka(f[0]), f[1], Within::Absolute(f[3]), row[0]);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn very_flat_coils_join_the_series_without_a_step() {
    let (under, over) = (nagaoka(0.999_999_9e-3), nagaoka(1.000_001e-3));
    hold(over, under, Within::Relative(3e-6), "step");
    // K → (2l/πD)·(ln(4D/l) − ½), Rayleigh and Niven (from memory).
    let ratio = 1e-5;
    let flat = 2.0 * ratio / std::f64::consts::PI * ((4.0_f64 / ratio).ln() - 0.5);
    hold(nagaoka(ratio), flat, Within::Relative(1e-8), "flat");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_corrections_for_round_wire_are_exact() {
    for row in rows(include_str!("vectors/coil_rosa_a.tsv")) {
        let f = figures(&row);
        hold(gap_term(f[0]), f[2], Within::Absolute(6e-6), row[0]);
        hold(gap_term(f[0]) - 0.25, f[1], Within::Absolute(2e-4), row[0]);
    }
    for row in rows(include_str!("vectors/coil_rosa_b.tsv")) {
        let f = figures(&row);
        hold(turns_term(f[0]), f[2], Within::Absolute(6e-8), row[0]);
        hold(turns_term(f[0]), f[1], Within::Absolute(1.2e-3), row[0]);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn circles_have_maxwells_mutual_inductance() {
    check(include_str!("vectors/coil_loops.tsv"), Within::Relative(6e-8), |[first, second, apart]: [f64; 3]| {
        1e6 * loops(0.01 * first, 0.01 * second, 0.01 * apart)
    });
    check(include_str!("vectors/coil_loops_f.tsv"), Within::Relative(2e-9), |[near]: [f64; 1]| {
        // Two circles of 1 cm whose far distance is 1/near of the near one: d² = 4·near²/(1 − near²) cm².
        let apart = 0.02 * near / (1.0 - near * near).sqrt();
        1e6 * loops(0.01, 0.01, apart)
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn skin_effect_is_that_of_bessel_functions() {
    for row in rows(include_str!("vectors/coil_skin.tsv")) {
        let f = figures(&row);
        // The table's own argument, √2·radius/depth, for the column beside it is rounded.
        let skin = skin(f[0] / std::f64::consts::SQRT_2);
        hold(skin.resistance, f[2], Within::Relative(2e-8), row[0]);
        hold(skin.inner, f[3], Within::Either(2e-8, 6e-9), row[0]);
    }
    for row in rows(include_str!("vectors/coil_copper.tsv")) {
        let (hertz, wire, want): (f64, f64, f64) =
            (row[1].parse().unwrap(), row[2].parse().unwrap(), row[3].parse().unwrap());
        let depth = skin_depth(copper_ohm_metres(20.0), hertz);
        let got = if row[0] == "depth" { depth } else { skin(0.5 * wire / depth).resistance };
        hold(got, want, Within::Relative(1e-8), row[1]);
    }
    let (under, over) = (skin(20.0 - 1e-9), skin(20.0));
    for (under, over) in [(under.resistance, over.resistance), (under.inner, over.inner), (under.across, over.across)] {
        hold(over, under, Within::Relative(2e-8), "where the methods change");
    }
    // The loss in a field across nears that along, and dies with the square of frequency.
    hold(skin(500.0).across / skin(500.0).resistance, 1.0, Within::Absolute(3e-3), "thin skin");
    hold(skin(0.02).across / skin(0.01).across, 16.0, Within::Relative(1e-3), "thick skin");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn self_capacitance_and_proximity_are_medhursts() {
    check(include_str!("vectors/coil_self_capacitance.tsv"), Within::Relative(1e-9), |[ratio]: [f64; 1]| {
        1e12 * self_farads(0.01, 0.01 * ratio)
    });
    let table = rows(include_str!("vectors/coil_phi.tsv"));
    assert!(table.len() > 120);
    for row in table {
        let f = figures(&row);
        hold(phi(f[0], f[1]), f[2], Within::Absolute(f[3]), &format!("{} {}", row[0], row[1]));
    }
    hold(phi(3.0, 1e-6), 1.0, Within::Absolute(1e-6), "wide turns");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn worked_coils_come_out_between_sheet_and_rings() {
    let table = rows(include_str!("vectors/coil_worked.tsv"));
    assert!(table.len() >= 5);
    for row in table {
        let f = figures(&row);
        for (inner, sheet, rings) in [(1.0, f[4], f[6]), (0.0, f[5], f[7])] {
            let got = 1e6 * Winding::new(1e-3 * f[0], 1e-3 * f[1], 1e-3 * f[2], inner, f[3]).henries(f[3]);
            let (least, most) = (sheet.min(rings), sheet.max(rings));
            assert!(got >= least * (1.0 - 1e-6) && got <= most * (1.0 + 1e-6), "{row:?}: {got}");
        }
    }
    for row in rows(include_str!("vectors/coil_handbook.tsv")) {
        let f = figures(&row);
        let (diameter, length) = (0.0254 * f[0], 0.0254 * f[1]);
        let area = std::f64::consts::PI * diameter * diameter / 4.0;
        let sheet = 1e6 * MU * f[2] * f[2] * area / length * nagaoka(length / diameter);
        hold(sheet, f[4], Within::Relative(6e-5), "current sheet");
        // The handbooks' own formula is good to about three percent on these shapes.
        hold(sheet, f[3], Within::Relative(0.04), "handbook");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn taps_couple_as_rings_do() {
    let table = rows(include_str!("vectors/coil_taps.tsv"));
    assert!(table.len() >= 11);
    for row in table {
        let f = figures(&row);
        let (turns, tap) = (f[3], f[4]);
        let coil = Winding::new(1e-3 * f[0], 1e-3 * f[1], 1e-3 * f[2], 0.0, turns);
        let (cold, hot, mutual) = (coil.section(0.0, tap), coil.section(tap, turns), coil.across_tap(tap, turns));
        hold(1e6 * cold, f[5], Within::Relative(1.5e-3), "cold");
        hold(1e6 * hot, f[6], Within::Relative(1.5e-3), "hot");
        hold(1e6 * mutual, f[7], Within::Relative(1.5e-3), "mutual");
        hold(mutual / (cold * hot).sqrt(), f[8], Within::Relative(2e-3), "coupling");
        hold(1e6 * (hot - mutual * mutual / cold), f[9], Within::Relative(1.5e-3), "cold part shorted");
    }
}

/// A link of a few turns over and beside a coil, against the mutual inductance of the two current sheets (Maxwell's circles
/// integrated over both by Gauss, scipy). Where the link stands beside, Rosa's B says what strips have more than wires.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_link_couples_as_two_current_sheets_do() {
    for row in rows(include_str!("vectors/coil_links.tsv")) {
        let f = figures(&row);
        let coil = Winding::new(1e-3 * f[0], 1e-3 * f[1], 0.5e-3 * f[1], 0.0, f[2]);
        let beside = f[5] > 0.0;
        let got = 1e6 * coil.to_link(f[2], 1e-3 * f[3], f[4], beside);
        let strips = |turns: f64| turns * turns_term(turns);
        let more = 0.25e3 * MU * f[0] * (strips(f[2] + f[4]) - strips(f[2]) - strips(f[4]));
        let want = if beside { f[6] - more } else { f[6] };
        hold(got, want, Within::Relative(if beside { 1e-3 } else { 4e-3 }), &format!("{row:?}"));
    }
}

fn worked(inputs: &serde_json::Value) -> Value {
    let outcome = work("coil", &crate::common::value(inputs), Want::USUAL);
    outcome.unwrap_or_else(|problems| panic!("{inputs}: {problems:?}")).get("answers").cloned().expect("answers")
}

/// Medhurst's factor is defined on the formula for a thin skin. The whole Bessel figure times his factor, the next column,
/// counts the wire's curvature for the neighbours' field as for its own, where it works the other way: it stays above.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn loss_and_self_resonance_are_as_computed_outside() {
    for row in rows(include_str!("vectors/coil_loss.tsv")) {
        let f = figures(&row);
        let answers = worked(&json!({
            "form_diameter": 1e-3 * (f[0] - f[3]), "wire": {"diameter": 1e-3 * f[3]}, "turns": f[1],
            "pitch": 1e-3 * f[2], "hertz": 1e6 * f[4], "taps": [],
        }));
        hold(figure(&answers, "wire_length"), f[5], Within::Relative(1e-6), "wire");
        hold(figure(&answers, "dc_ohms"), f[6], Within::Relative(2e-5), "dc");
        let ohms = figure(&answers, "rf_ohms");
        hold(ohms, f[7], Within::Relative(0.02), "loss");
        assert!(ohms < f[8], "{row:?}: {ohms}");
        hold(1e6 * figure(&answers, "henries"), f[9], Within::Relative(1.5e-3), "inductance");
        hold(1e12 * figure(&answers, "self_farads"), f[10], Within::Relative(1e-5), "self-capacitance");
        hold(1e-6 * figure(&answers, "self_resonant_hertz"), f[11], Within::Relative(1e-3), "resonance");
        hold(1e6 * figure(&answers, "effective_henries"), f[12], Within::Relative(1.5e-3), "effective");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_measured_resonance_corrects_the_turns() {
    let coil =
        json!({"form_diameter": 0.05, "wire": {"awg": 18}, "turns": 30, "pitch": 0.002, "hertz": 3.6e6, "taps": []});
    let plain = worked(&coil);
    // A coil that is 4 % low resonates with 100 pF where 1/ω² = 0.96·L·(C + C₀).
    let (henries, own) = (0.96 * figure(&plain, "henries"), figure(&plain, "self_farads"));
    let at = |farads: f64| 0.5 / (std::f64::consts::PI * (henries * farads).sqrt());
    let mut one = coil.clone();
    one["measured_farads"] = json!(100e-12);
    one["measured_hertz"] = json!(at(100e-12 + own));
    let one = worked(&one);
    hold(figure(&one, "correction"), 0.96, Within::Relative(1e-3), "one reading");
    let more = figure(&one, "corrected_turns");
    assert!(more > 30.5 && more < 32.0, "{more}");
    // The same coil with an unknown 23 pF across it, read twice.
    let mut two = coil.clone();
    two["measured_farads"] = json!(100e-12);
    two["measured_hertz"] = json!(at(123e-12));
    two["second_farads"] = json!(300e-12);
    two["second_hertz"] = json!(at(323e-12));
    let two = worked(&two);
    hold(figure(&two, "correction"), 0.96, Within::Relative(1e-3), "two readings");
    hold(figure(&two, "stray_farads"), 23e-12, Within::Relative(1e-6), "stray");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_wanted_inductance_comes_in_whole_turns_with_what_mends_the_rest() {
    let coil = json!({"form_diameter": 0.04, "wire": {"awg": 18}, "henries": 10e-6, "pitch": 0.002, "hertz": 3.6e6, "taps": []});
    let answers = worked(&coil);
    let turns = figure(&answers, "turns");
    hold(turns.fract(), 0.0, Within::Absolute(0.0), "whole");
    let again = |turns: f64, pitch: f64| {
        let mut inputs = coil.clone();
        inputs.as_object_mut().unwrap().remove("henries");
        inputs["turns"] = json!(turns);
        inputs["pitch"] = json!(pitch);
        figure(&worked(&inputs), "henries")
    };
    let exact = figure(&answers, "exact_turns");
    hold(again(exact, 0.002), 10e-6, Within::Relative(1e-9), "exact turns");
    let fixed = again(figure(&answers, "fix_turns"), figure(&answers, "fix_pitch"));
    hold(fixed, 10e-6, Within::Relative(1e-9), "spread");
    let off = 100.0 * (again(turns, 0.002) / 10e-6 - 1.0);
    hold(figure(&answers, "rounding_percent"), off, Within::Absolute(1e-9), "rounding");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn bands_find_their_turns_and_cores_theirs() {
    let mut coil = json!({"form_diameter": 0.05, "wire": {"awg": 16}, "turns": 24, "pitch": 0.003, "hertz": 7e6, "taps": [5, 12.5]});
    let taps = worked(&coil);
    for shorted in [false, true] {
        let band = |tap: f64| {
            let omega = 2.0 * std::f64::consts::PI * 7e6;
            json!({"hertz": 7e6, "farads": 1.0 / (omega * omega * tap)})
        };
        coil["tap_use"] = json!(if shorted { "shorted" } else { "open" });
        let taps = if shorted { worked(&coil) } else { taps.clone() };
        coil["bands"] = json!([band(figure(&taps, "tap_henries.0")), band(figure(&taps, "tap_henries.1")), band(1e-3)]);
        let bands = worked(&coil);
        hold(figure(&bands, "band_turns.0"), 5.0, Within::Absolute(1e-6), "first band");
        hold(figure(&bands, "band_turns.1"), 12.5, Within::Absolute(1e-6), "second band");
        assert_eq!(crate::common::at(&bands, "band_turns.2"), Some(&Value::Null));
    }
    check(include_str!("vectors/coil_toroid.tsv"), Within::Absolute(5e-3), |[henries, core]: [f64; 2]| {
        let inputs = json!({"henries": 1e-6 * henries, "core_henries": 1e-9 * core, "taps": []});
        figure(&worked(&inputs), "core_turns")
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_cannot_be_wound_is_said_with_its_field() {
    for (inputs, field, code) in [
        (json!({"pitch": 0.001}), "pitch", "no_solution"),
        (json!({"turns_per_metre": 1000}), "turns_per_metre", "no_solution"),
        (json!({"winding_length": 0.02}), "winding_length", "no_solution"),
        (json!({"wire": {"diameter": 0.001, "overall_diameter": 0.0009}}), "wire.overall_diameter", "too_small"),
        (json!({"taps": [3, 40]}), "taps[1]", "not_below"),
        (json!({"henries": 1.0, "taps": []}), "henries", "no_solution"),
        (json!({"henries": 1e-9, "form_diameter": 3.0, "taps": []}), "henries", "no_solution"),
    ] {
        let problems = work("coil", &crate::common::value(&inputs), Want::USUAL).expect_err("refused");
        assert_eq!((problems[0].field.as_str(), problems[0].code), (field, code), "{inputs}");
    }
}

/// IEC 60317-0-1, from memory: enamel of grade 2 makes 0.5 mm of wire 0.569 mm at most, 1 mm 1.094 mm.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn insulation_left_from_thicker_wire_is_noticed() {
    let thick =
        |wire: &str| warns("coil", &format!(r#"{{"close": true, "pitch": null, "wire": {wire}}}"#), "insulation_thick");
    assert!(!thick(r#"{"diameter": 0.0005, "overall_diameter": 0.000569}"#));
    assert!(!thick(r#"{"diameter": 0.001, "overall_diameter": 0.001094}"#));
    assert!(thick(r#"{"diameter": 0.0005, "overall_diameter": 0.001094}"#));
}
