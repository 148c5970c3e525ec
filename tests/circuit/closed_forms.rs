//! Against formulas that any circuit text has, named beside each.

use core::f64::consts::PI;

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use super::netlist::{at, read};
use tagstrip_core::circuit::{Circuit, Complex, Fault, Kind};

fn near(got: f64, want: f64, share: f64) {
    assert!((got - want).abs() <= share * want.abs(), "got {got}, expected {want}");
}

fn gain(circuit: &Circuit, node: &str, hertz: f64) -> Complex {
    let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
    response.at(hertz).unwrap().volts(at(circuit, node))
}

/// First order: `1/(1 + f/(j·fc))`, `fc = 1/(2π·R·C)`.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_coupling_capacitor_cuts_the_lows() {
    let circuit = read("V1 e 0 0 1; C1 e o 470e-12; R1 o 0 330e3");
    let corner = 1.0 / (2.0 * PI * 330e3 * 470e-12);
    for ratio in [1e-4, 0.1, 0.5, 1.0, 2.0, 30.0, 1e5] {
        let got = gain(&circuit, "o", ratio * corner);
        near(got.magnitude(), ratio / (1.0 + ratio * ratio).sqrt(), 4e-15);
        near(got.angle(), (1.0 / ratio).atan(), 4e-15);
    }
    let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
    let corners = response.sweep(at(&circuit, "o"), 0.01, 100e6, 6).unwrap().corners().unwrap();
    // the greatest is at the end of the range, not quite 1
    let end = 1.0 + (corner / 100e6) * (corner / 100e6);
    near(corners.low.unwrap(), corner / (2.0 * end - 1.0).sqrt(), 1e-12);
    assert_eq!(corners.high, None);
}

/// Series resonance: `1/(1 − (f/f0)² + j·f/(f0·Q))` across the capacitor, `Q = √(L/C)/R`; greatest at
/// `f0·√(1 − 1/(2Q²))`, there `Q/√(1 − 1/(4Q²))`.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_coil_and_a_capacitor_resonate() {
    for ohms in [1.0, 30.0, 800.0] {
        let circuit = read(&format!("V1 e 0 0 1; L1 e o 10e-3 {ohms}; C1 o 0 10e-9"));
        let (resonance, q) = (1.0 / (2.0 * PI * 1e-10_f64.sqrt()), 1e6_f64.sqrt() / ohms);
        for ratio in [0.01, 0.9, 1.0, 1.1, 20.0_f64] {
            let got = gain(&circuit, "o", ratio * resonance);
            let want = Complex::new(1.0 - ratio * ratio, ratio / q).inverse();
            near((got - want).magnitude() + want.magnitude(), want.magnitude(), 2e-12);
        }
        let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
        let peak = response.sweep(at(&circuit, "o"), 0.01, 100e6, 6).unwrap().greatest();
        near(peak.hertz, resonance * (1.0 - 0.5 / (q * q)).sqrt(), 1e-10);
        near(peak.ln_gain.exp(), q / (1.0 - 0.25 / (q * q)).sqrt(), 1e-12);
    }
}

/// A loaded potentiometer: `s/(1 + s·(1 − s)·R/load)`, its end stops included.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_load_pulls_a_potentiometer_down() {
    let mut circuit = read("V1 t 0 10 1; P1 t w 0 500e3 0.5; R1 w 0 100e3");
    let pot = circuit.find("P1").unwrap();
    for s in [0.0, 1e-12, 0.1, 0.5, 0.999999999999, 1.0_f64] {
        circuit.set(pot, Kind::Potentiometer { ohms: 500e3, setting: s });
        let want = 10.0 * s / (1.0 + s * (1.0 - s) * 5.0);
        near(circuit.dc().unwrap().volts(at(&circuit, "w")), want, 1e-15);
        near(gain(&circuit, "w", 1000.0).magnitude(), want / 10.0, 1e-15);
    }
}

/// A star of three and the delta that replaces it: `R12 = R1 + R2 + R1·R2/R3` (A. E. Kennelly, Electrical World, 1899).
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_star_is_as_good_as_its_delta() {
    let star = read("V1 a 0 100 0; R1 a x 1e3; R2 b x 2e3; R3 0 x 5e-3; R9 b 0 700");
    let delta = |one: f64, other: f64, third: f64| one + other + one * other / third;
    let (ab, b0, a0) = (delta(1e3, 2e3, 5e-3), delta(2e3, 5e-3, 1e3), delta(1e3, 5e-3, 2e3));
    let mesh = read(&format!("V1 a 0 100 0; R1 a b {ab:e}; R2 b 0 {b0:e}; R3 a 0 {a0:e}; R9 b 0 700"));
    let (star_at, mesh_at) = (star.dc().unwrap(), mesh.dc().unwrap());
    near(star_at.volts(at(&star, "b")), mesh_at.volts(at(&mesh, "b")), 2e-15);
    near(star_at.amps(star.find("V1").unwrap()), mesh_at.amps(mesh.find("V1").unwrap()), 2e-15);
}

/// `mu·R/(rp + R + (mu + 1)·Rk)` from grid to plate, and `(rp + (mu + 1)·Rk)` at the plate beside R: any tube text.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_triode_amplifies_as_its_equivalent_does() {
    let circuit = read("V1 b 0 250 0; V2 g 0 0 1; R3 b p 100e3; R2 k 0 1500; T1 p g k 0.98e-3 105 0.2 0.31 0 0 0");
    let point = circuit.dc().unwrap();
    let tube = point.tube(circuit.find("T1").unwrap()).unwrap();
    let (mu, rp) = (tube.gm / tube.gp, 1.0 / tube.gp);
    let mut response = circuit.response(&point).unwrap();
    let mut phasors = response.at(1000.0).unwrap();
    let plate = at(&circuit, "p");
    near(phasors.volts(plate).re, -mu * 100e3 / (rp + 100e3 + (mu + 1.0) * 1500.0), 1e-12);
    near(phasors.impedance(plate).re, 1.0 / (1e-5 + 1.0 / (rp + (mu + 1.0) * 1500.0)), 1e-12);
    near(point.volts(plate), 250.0 - 100e3 * tube.amps, 1e-14);
    near(point.watts(circuit.find("R3").unwrap()), 100e3 * tube.amps * tube.amps, 1e-11);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_carries_no_current_still_has_volts() {
    // an open throw stands where its capacitor holds it; between two capacitors they divide as capacitances do
    let mut circuit =
        read("V1 b 0 90 1; R1 b p 1e6; R2 p 0 2e6; C1 p t 1e-9; S1 w t u 1; R3 w 0 1e6; C2 p x 2e-9; C3 x 0 1e-9");
    let point = circuit.dc().unwrap();
    near(point.volts(at(&circuit, "t")), 60.0, 1e-9);
    near(point.volts(at(&circuit, "x")), 40.0, 1e-9);
    near(point.volts(at(&circuit, "p")), 60.0, 1e-15);
    let switch = circuit.find("S1").unwrap();
    circuit.set(switch, Kind::Switch { closed: Some(0) });
    let closed = circuit.dc_from(&point).unwrap();
    assert!(closed.volts(at(&circuit, "t")).abs() < 1e-9);
    near(closed.volts(at(&circuit, "p")), 60.0, 1e-15);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn wires_and_sources_carry_what_is_left_over() {
    let circuit = read("V1 a 0 12 0; R1 a b 0; S1 b c 0; V2 d c 3 0; R2 d 0 1e3; R3 c 0 4e3");
    let point = circuit.dc().unwrap();
    near(point.volts(at(&circuit, "d")), 15.0, 1e-15);
    let amps = |reference: &str| point.amps(circuit.find(reference).unwrap());
    near(amps("R1"), 15e-3 + 3e-3, 1e-14);
    near(amps("S1"), 18e-3, 1e-14);
    near(amps("V2"), -15e-3, 1e-14);
    near(amps("V1"), -18e-3, 1e-14);
    let sum: f64 = circuit.parts().map(|(id, _)| point.watts(id)).sum();
    assert!(sum.abs() < 1e-15);
    let phasors_amps = {
        let driven = read("V1 a 0 0 2; R1 a b 0; C1 b 0 1e-6");
        let mut response = driven.response(&driven.dc().unwrap()).unwrap();
        response.at(1000.0).unwrap().terminal_amps(driven.find("R1").unwrap(), 0)
    };
    near(phasors_amps.im, 2.0 * 2.0 * PI * 1e-3, 1e-14);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_cannot_be_is_said_with_its_node() {
    assert_eq!(read("V1 a 0 12 0; V2 b 0 9 0; R1 a b 0; R2 b 0 1e3").dc().unwrap_err(), Fault::Shorted { node: "b" });
    // coil and capacitor without loss, driven at their resonance: 1/(2π) hertz for 1 H and 1 F
    let undamped = read("V1 e 0 0 1; L1 e o 1 0; C1 o 0 1");
    let mut response = undamped.response(&undamped.dc().unwrap()).unwrap();
    assert_eq!(response.at(0.5 / PI).err(), Some(Fault::Singular { node: "o" }));
    // the same two in parallel let nothing past, which is an answer
    let trap = read("V1 e 0 0 1; L1 e o 1 0; C1 e o 1; R1 o 0 50");
    assert!(gain(&trap, "o", 0.5 / PI).magnitude() < 1e-12);
    // in series across the load they leave nothing, though the node between them has volts
    let shunt = read("V1 e 0 0 1; R1 e o 50; L1 o x 1 0; C1 x 0 1");
    let mut response = shunt.response(&shunt.dc().unwrap()).unwrap();
    let phasors = response.at(0.5 / PI).unwrap();
    assert!(phasors.volts(at(&shunt, "o")).magnitude() < 1e-12);
    near(phasors.volts(at(&shunt, "x")).im, -0.02, 1e-12);
}

/// The definition, at sizes whose square is in range and out of it.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn decibels_are_the_logarithm_of_the_distance_however_near_or_far() {
    for power in [-300, -154, -141, -139, -20, 0, 3, 139, 141, 300] {
        let size = 10f64.powi(power);
        near(Complex::new(3.0 * size, -4.0 * size).decibels(), 20.0 * (f64::from(power) + 5f64.log10()), 1e-15);
    }
    assert!(Complex::ZERO.decibels() < f64::MIN);
}
