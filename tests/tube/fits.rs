//! The fit as a tool: it finds a law again, says what it does not know, and answers anything.

use tagstrip_core::tube::{Cutoff, Point, Sheet, Triode, Unfit, fit};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn point(plate_volts: f64, grid_volts: f64, plate_amps: f64) -> Point {
    Point { plate_volts, grid_volts, plate_amps, gm: None, plate_resistance: None, mu: None, source: "" }
}

fn whole(law: &Triode, plate_volts: f64, grid_volts: f64) -> Point {
    let p = law.plate(grid_volts, plate_volts);
    Point { gm: Some(p.gm), plate_resistance: Some(1.0 / p.gp), ..point(plate_volts, grid_volts, p.amps) }
}

/// Points that some law makes give it back, wherever the priors agree with it.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_law_is_found_again_from_its_own_points() {
    for (perveance, mu) in [(3e-3, 4.0), (0.8e-3, 20.0), (5e-3, 33.0), (0.5e-3, 70.0), (1e-3, 100.0)] {
        let law = Triode { perveance, mu, mu_spread: 0.25, contact_volts: 0.31 };
        let points: Vec<Point> = [(90.0, 0.0), (150.0, -0.5), (250.0, -0.7)]
            .map(|(plate, share)| whole(&law, plate, share * plate / mu))
            .into();
        let got = fit(&Sheet { points: &points, ..Sheet::EMPTY }).expect("a fit");
        let off = [got.law.perveance / perveance - 1.0, got.law.mu / mu - 1.0, got.law.mu_spread / 0.25 - 1.0];
        assert!(off.iter().all(|off| off.abs() < 1e-6), "{law:?}: {:?}", got.law);
        assert!((got.law.contact_volts - 0.31).abs() < 1e-6);
    }
}

/// Currents alone tell a tube apart, and one point tells where it stayed at what is usual.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_the_data_leave_open_is_said() {
    // a 6SN7GT by its currents alone: RCA data sheet, from memory, and two of its cut-offs' kind
    let points = [point(90.0, 0.0, 10e-3), point(250.0, -8.0, 9e-3)];
    let cutoffs = [Cutoff { plate_volts: 250.0, grid_volts: -18.0, source: "" }];
    let got = fit(&Sheet { points: &points, cutoffs: &cutoffs, ..Sheet::EMPTY }).expect("a fit");
    assert!((got.law.mu / 20.0 - 1.0).abs() < 0.12, "{:?}", got.law);
    assert!(!got.mu_spread.at_prior && got.contact_volts.at_prior);

    // the one printed point of a 6SL7GT: its spread is any tube's
    let one = [Point { gm: Some(1600e-6), plate_resistance: Some(44e3), ..point(250.0, -2.0, 2.3e-3) }];
    let got = fit(&Sheet { points: &one, ..Sheet::EMPTY }).expect("a fit");
    assert!(got.mu_spread.at_prior && got.contact_volts.at_prior);
    assert!(got.spread.gm > 0.02 && got.spread.gm < 0.15, "{:?}", got.spread);

    // and a second datum of another kind narrows it
    let cutoffs = [Cutoff { plate_volts: 250.0, grid_volts: -5.5, source: "" }];
    let more = fit(&Sheet { points: &one, cutoffs: &cutoffs, ..Sheet::EMPTY }).expect("a fit");
    assert!(more.mu_spread.error < got.mu_spread.error && !more.mu_spread.at_prior);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn too_little_is_refused_in_words() {
    let same = [point(100.0, -2.0, 5e-3), point(100.0, -2.0, 5e-3)];
    assert_eq!(fit(&Sheet { points: &same, ..Sheet::EMPTY }), Err(Unfit::Undetermined));
    assert_eq!(fit(&Sheet::EMPTY), Err(Unfit::Undetermined));
    // milliamperes given as amperes, far past what any grid of that size passes
    let wrong = [Point { gm: Some(1600.0), ..point(250.0, -2.0, 2300.0) }, point(100.0, -1.0, 900.0)];
    assert_eq!(fit(&Sheet { points: &wrong, ..Sheet::EMPTY }), Err(Unfit::OutsideLaw));
}

/// A plain generator of repeatable noise (Lehmer's, modulus 2³¹ − 1).
struct Noise(u64);

impl Noise {
    fn next(&mut self) -> f64 {
        self.0 = self.0 * 48271 % 2_147_483_647;
        self.0 as f64 / 2_147_483_647.0
    }

    fn count(&mut self, under: u64) -> u64 {
        self.next();
        self.0 % under
    }

    fn log(&mut self, least: f64, most: f64) -> f64 {
        least * (most / least).powf(self.next())
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn nonsense_gives_a_fit_or_a_reason() {
    let mut noise = Noise(4711);
    let (mut fitted, mut refused) = (0, 0);
    for _ in 0..150 {
        let count = 2 + noise.count(3);
        let points: Vec<Point> = (0..count)
            .map(|_| Point {
                gm: (noise.next() < 0.5).then(|| noise.log(1e-9, 10.0)),
                plate_resistance: (noise.next() < 0.5).then(|| noise.log(1e-3, 1e9)),
                mu: (noise.next() < 0.3).then(|| noise.log(1.0, 500.0)),
                ..point(noise.log(1e-3, 1e4), 200.0 * noise.next() - 190.0, noise.log(1e-9, 10.0))
            })
            .collect();
        let cutoffs: Vec<Cutoff> = (0..noise.count(3))
            .map(|_| Cutoff { plate_volts: noise.log(1.0, 1e4), grid_volts: -noise.log(1e-3, 1e4), source: "" })
            .collect();
        match fit(&Sheet { points: &points, cutoffs: &cutoffs, ..Sheet::EMPTY }) {
            Ok(got) => {
                let law = [got.law.perveance, got.law.mu, got.law.mu_spread, got.law.contact_volts];
                let errors = [got.perveance, got.mu, got.mu_spread, got.contact_volts].map(|parameter| parameter.error);
                let spread = [got.spread.plate_amps, got.spread.gm, got.spread.mu];
                assert!(
                    law.iter().chain(&errors).chain(&spread).all(|figure| figure.is_finite()),
                    "{points:?} {got:?}"
                );
                assert!(got.residuals.iter().all(|residual| residual.log_ratio.is_finite()));
                fitted += 1;
            }
            Err(_) => refused += 1,
        }
    }
    assert!(fitted > 10 && refused > 10, "{fitted} fitted, {refused} refused");
}
