//! Two windings in one field.

use tagstrip_core::circuit::{Circuit, Complex, GROUND, Kind, Part};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

/// Two windings with a common field, the second loaded: `jωL₁ + (ωM)²/(R + jωL₂)` (any text on coupled circuits).
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn coupled_windings_bring_their_load_over() {
    for (one, other, coupling, ohms) in [(10e-6, 1e-6, 0.3, 50.0), (1e-6, 80e-6, 0.05, 5.0), (2e-6, 2e-6, 0.999, 300.0)]
    {
        let mut circuit = Circuit::new();
        let (a, b) = (circuit.node("a"), circuit.node("b"));
        let source = circuit.add(Part::new("V", "source", &[a, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
        let kind = Kind::Coupled { henries: [one, other], coupling };
        circuit.add(Part::new("L", "coils", &[a, GROUND, b, GROUND], kind));
        circuit.add(Part::new("R", "load", &[b, GROUND], Kind::Resistor { ohms }));
        let hertz = 5e6;
        let omega = 2.0 * std::f64::consts::PI * hertz;
        let mut response = circuit.response(&circuit.dc().expect("at rest")).expect("a response");
        let phasors = response.at(hertz).expect("a state");
        let z = -phasors.terminal_amps(source, 0).inverse();
        let mutual = omega * coupling * (one * other).sqrt();
        let want = Complex::new(ohms, omega * other).inverse().scale(mutual * mutual) + Complex::new(0.0, omega * one);
        assert!((z - want).magnitude() < 1e-9 * want.magnitude(), "{z:?} against {want:?}");
    }
}
