//! Low-pass ladders against prototype tables, closed forms of their loss, and ladders worked outside the project.

use crate::common::{Within, figure, hold, inputs, rows};
use tagstrip_core::{
    calculators::{Want, work},
    network::{butterworth, chebyshev},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn answers(pairs: &[(&str, Value)]) -> Value {
    let inputs = inputs(pairs.iter().cloned());
    let outcome = work("lowpass", &inputs, Want::USUAL).unwrap_or_else(|problems| panic!("{problems:?}"));
    outcome.get("answers").cloned().expect("answers")
}

fn parsed(cell: &str) -> f64 {
    cell.parse().unwrap_or_else(|_| panic!("a figure: {cell}"))
}

fn elements(family: &str, order: usize, ripple_db: f64) -> Vec<f64> {
    if family == "butterworth" { butterworth(order) } else { chebyshev(order, ripple_db).expect("of odd order") }
}

/// A filter of 1 MHz cut-off between 50 Ω with its carrier at `of_cutoff`.
fn filter(family: &str, ripple_db: f64, order: f64, of_cutoff: f64) -> Vec<(&str, Value)> {
    vec![
        ("family", family.into()),
        ("ripple_db", ripple_db.into()),
        ("order", order.into()),
        ("cutoff_hertz", 1e6.into()),
        ("carrier_hertz", (1e6 * of_cutoff).into()),
        ("coil_q", 1e12.into()),
    ]
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn elements_are_those_of_the_tables() {
    let table = rows(include_str!("vectors/lowpass_prototypes.tsv"));
    assert!(!table.is_empty());
    for row in table {
        let order: usize = row[2].parse().expect("an order");
        let wanted: Vec<f64> = row[3].split(' ').map(parsed).collect();
        let got = elements(row[0], order, parsed(row[1]));
        assert_eq!(got.len(), wanted.len());
        for (got, want) in got.iter().zip(wanted) {
            // The table has six decimals.
            hold(*got, want, Within::Absolute(1e-6), &format!("{} {} n={order}", row[0], row[1]));
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_printed_table_agrees_but_for_its_misprints() {
    let table = rows(include_str!("vectors/lowpass_printed.tsv"));
    let mut misprints = 0;
    for row in table {
        let (order, k): (usize, usize) = (row[1].parse().unwrap(), row[2].parse().unwrap());
        let got = elements("chebyshev", order, parsed(row[0]))[k - 1];
        hold(got, parsed(row[4]), Within::Absolute(1e-6), "exact");
        // Four decimals are printed, and the last is at times cut off or one out.
        let near = Within::Absolute(1.6e-4).holds(got, parsed(row[3]));
        assert_eq!(near, row[5] == "ok", "{row:?} against {got}");
        misprints += usize::from(row[5] != "ok");
    }
    assert_eq!(misprints, 3, "of ripple 0.01 dB g1 of 5 and g7 of 7, of 0.1 dB g4 of 7");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn loss_is_that_of_the_closed_form() {
    let families = [("butterworth", 0.1), ("chebyshev", 0.01), ("chebyshev", 0.1), ("chebyshev", 0.5)];
    for row in rows(include_str!("vectors/lowpass_loss.tsv")) {
        let (order, of_cutoff) = (parsed(row[0]), parsed(row[1]));
        for (column, (family, ripple_db)) in families.into_iter().enumerate() {
            if family == "chebyshev" && order % 2.0 == 0.0 {
                continue;
            }
            for first in ["capacitor", "coil"] {
                let mut given = filter(family, ripple_db, order, of_cutoff);
                given.push(("first", first.into()));
                hold(
                    figure(&answers(&given), "loss_db"),
                    parsed(row[column + 2]),
                    Within::Absolute(2e-5),
                    &row[..2].join(" "),
                );
            }
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn coils_with_loss_pass_what_a_chain_of_matrices_says() {
    for row in rows(include_str!("vectors/lowpass_coil_q.tsv")) {
        let (family, ripple_db, order) = (row[0], parsed(row[1]), parsed(row[2]));
        let at = |of_cutoff: f64, coil_q: f64| {
            let mut given = filter(family, ripple_db, order, of_cutoff);
            given.extend([("first", row[3].into()), ("coil_q", coil_q.into())]);
            answers(&given)
        };
        for (column, of_cutoff) in [(4, 0.8), (8, 0.9), (12, 0.95)] {
            for (more, coil_q) in [(0, 1e12), (1, 200.0), (2, 100.0)] {
                hold(
                    figure(&at(of_cutoff, coil_q), "loss_db"),
                    parsed(row[column + more]),
                    Within::Absolute(2e-5),
                    row[0],
                );
            }
            let got = figure(&at(of_cutoff, 1e12), "return_loss_db");
            hold(got, parsed(row[column + 3]), Within::Absolute(2e-3), "return loss");
        }
        for (column, of_cutoff) in [(16, 1.6), (17, 1.8), (18, 2.4), (19, 2.7), (20, 3.2)] {
            hold(figure(&at(of_cutoff, 1e12), "loss_db"), parsed(row[column]), Within::Absolute(2e-4), row[0]);
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn volts_and_amperes_are_those_of_a_hundred_watts_in_the_load() {
    for row in rows(include_str!("vectors/lowpass_stresses.tsv")) {
        let got = answers(&[
            ("family", row[0].into()),
            ("ripple_db", parsed(row[1]).into()),
            ("order", parsed(row[2]).into()),
            ("cutoff_hertz", (1e6 * parsed(row[3])).into()),
            ("carrier_hertz", (1e6 * parsed(row[4])).into()),
            ("coil_q", 1e12.into()),
            ("carrier_watts", 100.0.into()),
        ]);
        for (column, key, unit) in
            [(5, "capacitors", 1e-12), (6, "coils", 1e-6), (7, "capacitor_peak_volts", 1.0), (8, "coil_amps", 1.0)]
        {
            for (k, cell) in row[column].split(' ').enumerate() {
                hold(figure(&got, &format!("{key}.{k}")), unit * parsed(cell), Within::Relative(1e-5), key);
            }
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn ripple_and_return_loss_belong_together() {
    for row in rows(include_str!("vectors/lowpass_ripple.tsv")) {
        let ripple_db = parsed(row[0]);
        for (column, order) in [(2, 3.0), (3, 5.0), (4, 7.0), (5, 9.0)] {
            // At the edge the ripple is a crest, and the reflection the greatest; then half the power is lost.
            let edge = answers(&filter("chebyshev", ripple_db, order, 1.0));
            hold(figure(&edge, "return_loss_db"), parsed(row[1]), Within::Absolute(1e-3), "return loss");
            let half = answers(&filter("chebyshev", ripple_db, order, parsed(row[column])));
            hold(figure(&half, "loss_db"), 3.0103, Within::Absolute(2e-4), "half power");
        }
    }
}

/// A published design with preferred capacitors, as the ladder of the filter calculator (ARRL Handbook, tables of
/// standard-value designs, number 25, seen in a public transcription; its frequencies have three figures).
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_published_design_loses_what_its_table_says() {
    let branch = |place: &str, key: &str, figure: f64| Value::record([("place", place.into()), (key, figure.into())]);
    let (c, l) = (|farads| branch("shunt", "farads", farads), |henries| branch("series", "henries", henries));
    let branches = vec![c(1500e-12), l(6.58e-6), c(3300e-12), l(7.72e-6), c(3300e-12), l(6.58e-6), c(1500e-12)];
    for (hertz, loss_db) in [(1.93e6, 3.01), (2.35e6, 20.0), (3.03e6, 40.0)] {
        let inputs = Value::record([
            ("source_ohms", 50.0.into()),
            ("load_ohms", 50.0.into()),
            ("branches", branches.clone().into()),
            ("hertz", hertz.into()),
        ]);
        let outcome = work("filter", &inputs, Want::USUAL).expect("an answer");
        let gain = outcome.at("answers.gain_db").and_then(Value::number).expect("a gain");
        hold(-gain - 20.0 * 2f64.log10(), loss_db, Within::Absolute(0.05), "loss");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn an_even_chebyshev_has_no_equal_ends_and_a_broken_order_is_none() {
    let refused = |order: f64, family: &str| {
        let inputs = Value::record([("order", order.into()), ("family", family.into())]);
        let problems = work("lowpass", &inputs, Want::USUAL).expect_err("refused");
        (problems[0].field.clone(), problems[0].code, problems[0].about.clone())
    };
    assert_eq!(refused(6.0, "chebyshev"), ("order".into(), "no_solution", Some("even_chebyshev".into())));
    assert_eq!(refused(4.5, "butterworth"), ("order".into(), "not_whole", None));
}

/// Rounding to what is sold, and the coils fitted again: never farther off than with rounding alone.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn fitting_the_coils_again_is_never_worse_than_rounding() {
    for series in ["E12", "E24"] {
        for (family, order) in [("butterworth", 2.0), ("butterworth", 6.0), ("chebyshev", 5.0), ("chebyshev", 9.0)] {
            for first in ["capacitor", "coil"] {
                let mut given = filter(family, 0.1, order, 0.9);
                given.extend([("first", first.into()), ("series", series.into())]);
                let got = answers(&given);
                for what in ["pass", "harmonic"] {
                    let (fitted, rounded) = (format!("{what}_deviation_db"), format!("rounded_{what}_deviation_db"));
                    assert!(
                        figure(&got, &fitted) <= figure(&got, &rounded) + 1e-9,
                        "{series} {family} {order}: {got:?}"
                    );
                }
            }
        }
    }
}
