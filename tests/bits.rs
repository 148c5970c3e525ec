//! One hash over a million evaluations: the same bits native, in Node and in the browser.
//!
//! The figure is no expectation of physics; it pins that every platform answers alike. When a law or method is changed
//! on purpose, put the new native hash here: the other platforms must then give it too.

use tagstrip_core::{
    circuit::{Circuit, GROUND, Kind, Part},
    quantity::{Unit, read},
    tube::tubes,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

const EXPECTED: u64 = 0x7366_ff34_61d8_e0da;

/// FNV-1a over the bits of figures (Fowler, Noll, Vo; from memory).
struct Hash(u64);

impl Hash {
    fn take(&mut self, figure: f64) {
        for byte in figure.to_bits().to_le_bytes() {
            self.0 = (self.0 ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01B3);
        }
    }
}

fn tube_law(hash: &mut Hash, count: u32) {
    let laws = tubes();
    for k in 0..count {
        let share = f64::from(k) / f64::from(count);
        let point = laws[k as usize % laws.len()].law.plate(1.0 - 9.0 * share, 400.0 * (share * 37.0).fract());
        for figure in [point.amps, point.gm, point.gp] {
            hash.take(figure);
        }
    }
}

fn responses(hash: &mut Hash, count: u32) {
    let mut circuit = Circuit::new();
    let (source, plate, output) = (circuit.node("source"), circuit.node("plate"), circuit.node("output"));
    circuit.add(Part::new("E", "source", &[source, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
    circuit.add(Part::new("R", "source", &[source, plate], Kind::Resistor { ohms: 50e3 }));
    circuit.add(Part::new("C", "coupling", &[plate, output], Kind::Capacitor { farads: 470e-12 }));
    circuit.add(Part::new("L", "choke", &[plate, GROUND], Kind::Coil { henries: 20.0, ohms: 300.0 }));
    circuit.add(Part::new("RL", "load", &[output, GROUND], Kind::Resistor { ohms: 470e3 }));
    let mut response = circuit.response(&circuit.dc().expect("a dc point")).expect("a response");
    for k in 0..count {
        let volts = response.at(1.0 + f64::from(k) * 0.37).expect("an answer").volts(output);
        for figure in [volts.magnitude(), volts.angle()] {
            hash.take(figure);
        }
    }
}

fn readings(hash: &mut Hash, count: u32) {
    for k in 0..count {
        let text = format!("{}.{}k", k % 997, k % 89);
        hash.take(read(&text, Unit::Ohm, None).map_or(-1.0, |reading| reading.value));
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_million_evaluations_give_the_same_bits_everywhere() {
    let mut hash = Hash(0xCBF2_9CE4_8422_2325);
    tube_law(&mut hash, 500_000);
    responses(&mut hash, 400_000);
    readings(&mut hash, 100_000);
    // WebAssembly has no standard output of its own.
    #[cfg(target_arch = "wasm32")]
    wasm_bindgen_test::console_log!("bits.hash {:016x}", hash.0);
    #[cfg(not(target_arch = "wasm32"))]
    println!("bits.hash {:016x}", hash.0);
    assert_eq!(hash.0, EXPECTED, "{:016x}", hash.0);
}
