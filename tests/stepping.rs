//! The engine in time: rectifiers and the chains behind them.

use std::f64::consts::PI;

use crate::common::rows;
use tagstrip_core::circuit::{Chain, Connection, Cycle, Rectifier, Rung, Series, Steps};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

const SCHADE: &str = include_str!("vectors/supply_schade.tsv");

/// A capacitor and a resistor across it behind an ideal rectifier, in the terms of Schade's curves.
fn schade(circuit: &str, omega_c_r: f64, source_percent: f64) -> Chain {
    let (hertz, load) = (50.0, 1000.0);
    let connection = match circuit {
        "half-wave" => Connection::HalfWave,
        "full-wave" => Connection::FullWave,
        _ => Connection::Doubler,
    };
    let farads = omega_c_r / (2.0 * PI * hertz * load);
    let rung = Rung { series: Series::None, farads, amps: 0.0, siemens: 1.0 / load };
    let ohms = load * source_percent / 100.0;
    Chain { peak: 100.0, hertz, ohms, connection, rectifier: Rectifier::Drop(0.0), rungs: vec![rung] }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_normalised_grid_of_schade_is_met() {
    let mut count = 0;
    for row in rows(SCHADE) {
        let figure = |k: usize| row[k].parse::<f64>().ok();
        let chain = schade(row[0], figure(1).unwrap(), figure(2).unwrap());
        let reading = Cycle::find(&chain, Steps::USUAL, None).expect("a cycle").read();
        // Each plate of a full-wave rectifier carries half.
        let (mean, square) = match chain.connection {
            Connection::FullWave => (0.5 * reading.amps, 0.5 * reading.square),
            _ => (reading.amps, reading.square),
        };
        let volts = reading.volts[0];
        let found = [
            (3, volts, 0.001),
            (4, 100.0 * reading.ripple[0] / volts, 0.003),
            (5, reading.peak_amps / mean, 0.005),
            (6, square.sqrt() / mean, 0.005),
            (7, 100.0 * reading.swing[0] / volts, 0.005),
        ];
        for (column, got, within) in found {
            let Some(want) = figure(column) else { continue };
            count += 1;
            assert!((got - want).abs() <= within * want.abs() + 0.0006, "{row:?} column {column}: got {got}");
        }
    }
    assert!(count > 300, "{count}");
}
