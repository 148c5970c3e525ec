//! The lift and the two-knob network against tables computed outside the project.

use alloc::vec::Vec;

use super::{lift, netlist};
use crate::{
    calculators::swept::decibels,
    circuit::{Circuit, GROUND, Kind, NodeId, Part},
    value::{Value, check},
};

fn rows(table: &str, count: usize) -> Vec<Vec<f64>> {
    let lines = table.lines().skip(1).filter(|line| !line.is_empty());
    let figures = |line: &str| line.split('\t').take(count).map(|cell| cell.parse().expect("a figure")).collect();
    let rows: Vec<Vec<f64>> = lines.map(figures).collect();
    assert!(!rows.is_empty());
    rows
}

/// A source of 1 V and `ohms` at `node`.
fn drive(circuit: &mut Circuit, node: NodeId, ohms: f64) {
    let emf = circuit.node("emf");
    circuit.add(Part::new("E", "source", &[emf, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
    circuit.add(Part::new("RE", "source_resistance", &[emf, node], Kind::Resistor { ohms }));
}

#[test]
fn lift_is_the_integral_of_the_response_over_the_two_bands() {
    let table = rows(include_str!("../../../../../tests/vectors/filter_coupling_lift.tsv"), 9);
    let mut reference = 0.0;
    for row in table {
        let mut circuit = Circuit::new();
        let (plate, load) = (circuit.node("plate"), circuit.node("load"));
        drive(&mut circuit, plate, row[0]);
        circuit.add(Part::new("C", "coupling", &[plate, load], Kind::Capacitor { farads: row[3] }));
        circuit.add(Part::new("R", "load", &[load, GROUND], Kind::Resistor { ohms: row[1] }));
        circuit.add(Part::new("CL", "load", &[load, GROUND], Kind::Capacitor { farads: row[2] }));
        let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
        let tilt = lift::tilt(&mut response, load).unwrap();
        if row[8] == 0.0 {
            reference = tilt;
        }
        let got = tilt - reference;
        assert!((got - row[8]).abs() < 2e-5, "{row:?}: {got}");
    }
}

/// 8.00 ± 0.02 dB for one tenth of the capacitor where (source + load)·C is 157.1 µs, by the first-order law.
#[test]
fn one_tenth_of_the_capacitor_gives_eight_decibels_at_a_corner_near_1_khz() {
    let tilt = |seconds: f64| {
        let mut circuit = Circuit::new();
        let (plate, load) = (circuit.node("plate"), circuit.node("load"));
        drive(&mut circuit, plate, 50e3);
        circuit.add(Part::new("C", "coupling", &[plate, load], Kind::Capacitor { farads: seconds / 150e3 }));
        circuit.add(Part::new("R", "load", &[load, GROUND], Kind::Resistor { ohms: 100e3 }));
        let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
        lift::tilt(&mut response, load).unwrap()
    };
    let lift = tilt(157.1e-6) - tilt(1571e-6);
    assert!((lift - 8.0).abs() < 0.02, "{lift}");
}

#[test]
fn the_two_knob_network_answers_as_nodal_analysis_says() {
    let hertz = [50.0, 100.0, 200.0, 300.0, 500.0, 1e3, 2e3, 2.5e3, 3e3, 5e3, 10e3];
    for row in rows(include_str!("../../../../../tests/vectors/voice_two_knob.tsv"), 3 + hertz.len()) {
        let parts = Value::record([
            ("c_bass_top", 470e-12.into()),
            ("c_bass_bottom", 4.7e-9.into()),
            ("c_treble_top", 220e-12.into()),
            ("c_treble_bottom", 2.2e-9.into()),
        ]);
        let given = Value::record([
            ("tone_parts", parts),
            ("bass", row[0].into()),
            ("treble", row[1].into()),
            ("level", 1.0.into()),
            ("load_farads", 0.0.into()),
        ]);
        let inputs = check(super::INPUTS, &given).unwrap();
        let (mut amplifier, output) = netlist::build(&inputs, 0);
        let circuit = &mut amplifier.circuit;
        for reference in ["C3", "C4"] {
            circuit.set(circuit.find(reference).unwrap(), Kind::Capacitor { farads: 0.0 });
        }
        circuit.set(amplifier.source.unwrap(), Kind::Source { volts: 0.0, signal: 0.0 });
        let a = circuit.node("a");
        drive(circuit, a, row[2]);
        let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
        for (hertz, want) in hertz.into_iter().zip(&row[3..]) {
            let got = decibels(&mut response, output, hertz).unwrap();
            assert!((got - want).abs() < 2e-3, "{row:?} at {hertz} Hz: {got}");
        }
    }
}
