//! The law against an independent quadrature.

use tagstrip_core::tube::Triode;
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use crate::common::{Within, check};

const LAW: &str = include_str!("../vectors/tube_law.tsv");
const GRID: &str = include_str!("../vectors/tube_grid.tsv");

fn triode(mu: f64, mu_spread: f64, contact_volts: f64) -> Triode {
    Triode { perveance: 1.0, mu, mu_spread, contact_volts }
}

/// The rows with the law's five inputs, one result and the source.
fn column(table: &str, result: usize) -> String {
    let lines = table.lines().filter(|line| !line.starts_with('#'));
    let cut = lines.map(|line| {
        let cells: Vec<&str> = line.split('\t').collect();
        [&cells[..5], &[cells[result], cells[cells.len() - 1]]].concat().join("\t")
    });
    cut.collect::<Vec<_>>().join("\n")
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn current_matches_quadrature() {
    check(&column(LAW, 5), Within::Relative(2e-10), |[mu, spread, contact, grid, plate]| {
        triode(mu, spread, contact).plate(grid, plate).amps
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn transconductance_matches_quadrature() {
    check(&column(LAW, 6), Within::Relative(2e-9), |[mu, spread, contact, grid, plate]| {
        triode(mu, spread, contact).plate(grid, plate).gm
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn plate_conductance_matches_quadrature() {
    check(&column(LAW, 7), Within::Relative(2e-9), |[mu, spread, contact, grid, plate]| {
        triode(mu, spread, contact).plate(grid, plate).gp
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn slope_over_mu_matches_quadrature() {
    check(&column(LAW, 8), Within::Relative(2e-9), |[mu, spread, contact, grid, plate]| {
        triode(mu, spread, contact).d_mu(grid, plate)
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn grid_current_matches_quadrature() {
    check(&column(GRID, 5), Within::Relative(2e-10), |[mu, spread, contact, grid, plate]| {
        triode(mu, spread, contact).grid_and_plate(grid, plate).grid_amps
    });
    check(&column(GRID, 6), Within::Relative(2e-10), |[mu, spread, contact, grid, plate]| {
        triode(mu, spread, contact).grid_and_plate(grid, plate).plate.amps
    });
}
