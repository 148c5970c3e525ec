//! Gas regulators against what they were copied from.

use tagstrip_core::tube::{REGULATOR_NAMES, regulator, regulators};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use crate::common::rows;

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_regulator_is_as_published() {
    let rows = rows(include_str!("../vectors/regulators.tsv"));
    assert_eq!(rows.len(), regulators().len());
    for row in rows {
        let tube = regulator(row[0]).expect("in the table");
        let got = [
            tube.striking_volts,
            tube.volts,
            tube.volts_between.0,
            tube.volts_between.1,
            1e3 * tube.amps_least,
            1e3 * tube.amps_most,
            tube.regulation_volts,
        ];
        for (got, cell) in got.into_iter().zip(&row[1..]) {
            let want: f64 = cell.parse().expect("a figure");
            assert!((got - want).abs() < 1e-9, "{}: {got} for {want} ({})", row[0], row[9]);
        }
        assert_eq!(tube.arrangement, row[8]);
    }
    for name in REGULATOR_NAMES {
        let found = regulator(&name.to_lowercase()).expect("a regulator");
        assert!(found.name == *name || found.aliases.contains(name), "{name}");
    }
    assert!(regulator("0A").is_none() && regulator("").is_none());
}
