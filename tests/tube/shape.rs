//! What must hold of the law everywhere: its derivatives, its joins, its ends.

use tagstrip_core::tube::{Triode, tubes};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn laws() -> Vec<Triode> {
    let mut laws: Vec<Triode> = tubes().iter().map(|tube| tube.law).collect();
    for (mu, mu_spread) in [(1.5, 0.6), (2.0, 1e-6), (20.0, 0.6), (500.0, 1e-6), (500.0, 0.6)] {
        laws.push(Triode { perveance: 1e-3, mu, mu_spread, contact_volts: 0.3 });
    }
    laws
}

/// Grid volts from cut-off to overdrive at each of several plate volts.
fn places(law: &Triode) -> Vec<(f64, f64)> {
    let mut places = Vec::new();
    for plate in [0.3, 3.0, 20.0, 61.0, 150.0, 400.0] {
        for share in [-1.5, -1.2, -1.0, -0.8, -0.5, -0.2, 0.0, 0.1] {
            places.push((share * plate / law.mu, plate));
        }
    }
    places
}

fn near(what: &str, got: f64, want: f64, scale: f64) {
    assert!((got - want).abs() <= 2e-6 * want.abs() + 1e-9 * scale, "{what}: {got} against {want}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn derivatives_are_those_of_the_current() {
    let half = 1e-5;
    for law in laws() {
        for (grid, plate) in places(&law) {
            let slope = |at: &dyn Fn(f64) -> f64| (at(half) - at(-half)) / (2.0 * half);
            let p = law.plate(grid, plate);
            let scale = p.amps / 0.1;
            near("gm", p.gm, slope(&|by| law.plate(grid + by, plate).amps), scale);
            near("gp", p.gp, slope(&|by| law.plate(grid, plate + by).amps), scale);
            // a step of mu that moves the drive by as many volts
            let by_drive =
                slope(&|by| Triode { mu: law.mu / (1.0 + by * law.mu / plate), ..law }.plate(grid, plate).amps);
            let by_mu = -by_drive * plate / (law.mu * law.mu);
            near("d_mu", law.d_mu(grid, plate), by_mu, p.amps * plate / (0.1 * law.mu * law.mu));
            let both = law.grid_and_plate(grid, plate);
            let scale = (both.plate.amps + both.grid_amps) / 0.0434;
            near("gm", both.plate.gm, slope(&|by| law.grid_and_plate(grid + by, plate).plate.amps), scale);
            near("gp", both.plate.gp, slope(&|by| law.grid_and_plate(grid, plate + by).plate.amps), scale);
            near("grid", both.grid_by_grid, slope(&|by| law.grid_and_plate(grid + by, plate).grid_amps), scale);
            near("grid", both.grid_by_plate, slope(&|by| law.grid_and_plate(grid, plate + by).grid_amps), scale);
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn current_rises_with_the_plate_and_a_common_shift() {
    for law in laws() {
        for (grid, plate) in places(&law) {
            let p = law.plate(grid, plate);
            // so far below cut-off the current is no more than the floor that keeps it above zero
            let floor = p.amps < 1e-200;
            assert!(floor || (p.gp > 0.0 && p.gm + p.gp > 0.0), "{law:?} at {grid}, {plate}: {p:?}");
        }
    }
}

/// The two ways to the mean meet where the width of the drives is 0.2 V, or a tenth of the least of them.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn closed_form_and_quadrature_meet() {
    let law = Triode { perveance: 1.0, mu: 100.0, mu_spread: 0.2, contact_volts: 0.3 };
    let width = 0.2 * 18.0_f64.sqrt();
    let mut joins = 0;
    for least in [-30.0, -3.0, -0.5, 0.0, 0.5, 1.9, 2.1, 5.0, 50.0] {
        let join = f64::max(0.2, 0.1 * least);
        let plate = join * law.mu / width;
        let grid = least - law.contact_volts - plate * (1.0 - width / 3.0) / law.mu;
        // a step to either side of the join, and what the slopes say lies between
        let step = 1e-7 * plate;
        let (low, high) = (law.plate(grid, plate - step), law.plate(grid, plate + step));
        assert!((high.amps - low.amps - step * (low.gp + high.gp)).abs() <= 1e-9 * high.amps, "at {least} V");
        assert!((high.gm - low.gm).abs() <= 1e-5 * high.gm && (high.gp - low.gp).abs() <= 1e-5 * high.gp);
        joins += 1;
    }
    assert_eq!(joins, 9);
}

/// A retarding field: the current falls tenfold each 0.23 V (ln 10 times kT/e) once a narrow grid has cut it off.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn cut_off_is_exponential() {
    let law = Triode { perveance: 1e-3, mu: 20.0, mu_spread: 1e-3, contact_volts: 0.3 };
    let (near, far) = (law.plate(-8.0, 100.0).amps, law.plate(-9.0, 100.0).amps);
    let decades = (near / far).log10();
    assert!((decades - 1.0 / (0.1 * std::f64::consts::LN_10)).abs() < 1e-3, "{decades}");
    assert_eq!(law.plate(1.0, 0.0).amps.to_bits(), 0);
    assert_eq!(law.plate(1.0, -50.0).amps.to_bits(), 0);
    assert!(law.plate(-1.0, 1e-6).amps < 1e-12);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn nothing_is_ever_infinite() {
    let volts: Vec<f64> =
        (-60..=60).map(|k| f64::from(k).signum() * 10.0_f64.powf(f64::from(k).abs() / 12.0 + 1e-9)).collect();
    let mut count = 0;
    for law in laws() {
        for grid in volts.iter().copied().chain([0.0, 1e-300, -1e-300]) {
            for plate in volts.iter().copied().chain([0.0, 1e-300, 1e-12]) {
                let p = law.plate(grid, plate);
                let both = law.grid_and_plate(grid, plate);
                let figures = [p.amps, p.gm, p.gp, law.d_mu(grid, plate), both.grid_amps, both.grid_by_grid];
                let more = [both.grid_by_plate, both.plate.amps, both.plate.gm, both.plate.gp];
                assert!(
                    figures.iter().chain(&more).all(|f| f.is_finite()),
                    "{law:?} at {grid}, {plate}: {p:?} {both:?}"
                );
                assert!(p.amps >= 0.0 && both.grid_amps >= 0.0 && both.plate.amps >= 0.0);
                count += 1;
            }
        }
    }
    assert!(count > 200_000);
}
