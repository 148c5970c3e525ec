//! The circuit engine against models made outside the project; each row of the vectors names its own.

mod closed_forms;
mod coupled;
mod netlist;
#[cfg(not(target_arch = "wasm32"))]
mod properties;

use crate::common::rows;
use netlist::{at, parameter, read};
use tagstrip_core::circuit::{Bound, GROUND};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

const NODAL: &str = include_str!("vectors/circuit_nodal.tsv");
const LADDERS: &str = include_str!("vectors/circuit_ladders.tsv");
const DC: &str = include_str!("vectors/circuit_dc.tsv");
const DERIVATIVES: &str = include_str!("vectors/circuit_derivatives.tsv");
const PERIODIC: &str = include_str!("vectors/circuit_periodic.tsv");

fn figure(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("no figure: {text}"))
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn random_networks_match_modified_nodal_analysis() {
    let rows = rows(NODAL);
    assert!(rows.len() >= 50);
    for row in rows {
        let [text, hertz, node, direct, re, im, ..] = row[..] else { panic!("a short row") };
        let circuit = read(text);
        let (node, point) = (at(&circuit, node), circuit.dc().expect("a dc point"));
        // numpy's elimination keeps about eleven digits over these spreads
        let (got, want) = (point.volts(node), figure(direct));
        assert!((got - want).abs() <= 1e-10 * (1.0 + want.abs()), "{text}: dc {got}, expected {want}");
        let mut response = circuit.response(&point).expect("a response");
        let got = response.at(figure(hertz)).expect("no resonance").volts(node);
        let off = length(got.re - figure(re), got.im - figure(im));
        assert!(off <= 1e-10 * (got.magnitude() + 1e-3), "{text} at {hertz}: got {got:?}, expected {re} {im}");
    }
}

fn length(re: f64, im: f64) -> f64 {
    (re * re + im * im).sqrt()
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn no_digit_is_lost_over_24_decades() {
    let mut worst: f64 = 0.0;
    for row in rows(LADDERS) {
        let circuit = read(row[0]);
        let (got, want) = (circuit.dc().expect("a dc point").volts(at(&circuit, row[1])), figure(row[2]));
        worst = worst.max((got / want - 1.0).abs());
        assert!((got - want).abs() <= 1e-14 * want.abs(), "{}: {} is {got:e}, expected {want:e}", row[0], row[1]);
    }
    println!("circuit.ladders worst_relative {worst:e}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn dc_points_match_scipy_on_the_law_summed_by_quadrature() {
    for row in rows(DC) {
        let circuit = read(row[1]);
        let point = circuit.dc().expect("a dc point");
        let (what, whose) = row[2].split_once(' ').expect("two words");
        let tube = |reference| point.tube(circuit.find(reference).expect("a tube")).expect("a tube");
        let got = match what {
            "volts" => point.volts(at(&circuit, whose)),
            "amps" => tube(whose).amps,
            "gm" => tube(whose).gm,
            _ => tube(whose).gp,
        };
        // the law itself is good to 2e-10 of the current and 2e-9 of gm and gp
        let want = figure(row[3]);
        let most = if what.starts_with('g') { 1e-8 } else { 1e-9 };
        assert!((got - want).abs() <= most * want.abs() + 1e-12, "{}: {} is {got}, expected {want}", row[0], row[2]);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn derivatives_match_differences_of_another_model() {
    let mut checked = 0;
    for row in rows(DERIVATIVES) {
        let (circuit, wanted) = (read(row[1]), parameter(row[5]));
        let (part, node, out) = (circuit.find(row[4]).expect("a part"), at(&circuit, row[2]), at(&circuit, row[3]));
        let point = circuit.dc().expect("a dc point");
        let of = |list: Vec<tagstrip_core::circuit::PartDerivative>| {
            let own = list.iter().find(|one| (one.part, one.parameter) == (part, wanted));
            own.map_or(0.0, |one| one.by_ln)
        };
        let tube = circuit.find("T1").expect("a tube");
        let scale = [point.volts(node), point.tube(tube).expect("a tube").amps];
        let got = [of(point.sensitivities(node)), of(point.tube_sensitivities(tube))];
        for ((got, want), scale) in got.into_iter().zip(&row[6..8]).zip(scale) {
            let want = figure(want);
            assert!(
                (got - want).abs() <= 1e-7 * (want.abs() + 1e-2 * scale.abs()),
                "{} {}: {got}, expected {want}",
                row[0],
                row[4]
            );
        }
        let mut response = circuit.response(&point).expect("a response");
        for (hertz, pair) in [30.0, 1000.0, 30e3].into_iter().zip(row[8..14].chunks_exact(2)) {
            let list = response.at(hertz).expect("no resonance").sensitivities(&point, out);
            let own = list.iter().find(|one| (one.part, one.parameter) == (part, wanted));
            let got = own.map_or([0.0; 2], |one| [one.ln_gain_by_ln, one.radians_by_ln]);
            for (got, want) in got.into_iter().zip(pair) {
                let want = figure(want);
                assert!(
                    (got - want).abs() <= 1e-6 + 1e-5 * want.abs(),
                    "{} {} {} at {hertz}: {got}, expected {want}",
                    row[0],
                    row[4],
                    row[5]
                );
                checked += 1;
            }
        }
    }
    assert!(checked > 300);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn steady_states_match_a_harmonic_balance_with_512_samples() {
    for row in rows(PERIODIC) {
        let circuit = read(row[1]);
        let (point, node) = (circuit.dc().expect("a dc point"), at(&circuit, row[4]));
        for (samples, within) in [(32, 5e-5), (128, 1e-7)] {
            let periodic = circuit.periodic(&point, 1000.0, samples).expect("a network");
            let steady = match row[2] {
                "fundamental" => periodic.reaching(node, GROUND, figure(row[5])),
                _ => periodic.greatest(),
            };
            let steady = steady.expect("a steady state");
            match row[2] {
                "grid" => assert!(matches!(steady.bound(), Some(Bound::GridPeak(_)))),
                "plate" => assert!(matches!(steady.bound(), Some(Bound::PlateCurrent(_)))),
                _ => assert_eq!(steady.bound(), None),
            }
            let want = figure(row[3]);
            assert!((steady.drive() - want).abs() <= within * want, "{}: {}, expected {want}", row[0], steady.drive());
            let scale = steady.harmonic(node, 1).magnitude().max(steady.shift(node).abs());
            for (harmonic, pair) in row[6..22].chunks_exact(2).enumerate() {
                let got = steady.harmonic(node, harmonic);
                let off = length(got.re - figure(pair[0]), got.im - figure(pair[1]));
                assert!(off <= within * scale, "{} harmonic {harmonic}: {got:?}, expected {pair:?}", row[0]);
            }
        }
    }
}
