//! The netlists of the vectors, as text: parts joined by `; `, each its reference, its nodes, its figures.

use tagstrip_core::{
    circuit::{Circuit, Kind, NodeId, Parameter, Part},
    tube::Triode,
};

/// Names of nodes live as long as the test.
fn node(circuit: &mut Circuit, name: &str) -> NodeId {
    let name = if name == "0" { "ground" } else { name };
    circuit.find_node(name).unwrap_or_else(|| circuit.node(String::from(name).leak()))
}

/// The circuit that a netlist describes.
pub fn read(text: &str) -> Circuit {
    let mut circuit = Circuit::new();
    for piece in text.split(';') {
        let words: Vec<&str> = piece.split_whitespace().collect();
        let letter = words[0].chars().next().expect("a letter");
        let count = match letter {
            'P' | 'T' => 3,
            'S' => words.len() - 2,
            _ => 2,
        };
        let nodes: Vec<NodeId> = words[1..=count].iter().map(|name| node(&mut circuit, name)).collect();
        let figure = |place: usize| words[count + 1 + place].parse::<f64>().expect("a figure");
        let kind = match letter {
            'R' => Kind::Resistor { ohms: figure(0) },
            'C' => Kind::Capacitor { farads: figure(0) },
            'L' => Kind::Coil { henries: figure(0), ohms: figure(1) },
            'V' => Kind::Source { volts: figure(0), signal: figure(1) },
            'P' => Kind::Potentiometer { ohms: figure(0), setting: figure(1) },
            'S' => Kind::Switch { closed: words[count + 1].parse().ok() },
            'T' => Kind::Triode {
                law: Triode { perveance: figure(0), mu: figure(1), mu_spread: figure(2), contact_volts: figure(3) },
                grid_plate_farads: figure(4),
                grid_cathode_farads: figure(5),
                plate_cathode_farads: figure(6),
            },
            other => panic!("no such part: {other}"),
        };
        circuit.add(Part::new(words[0], "", &nodes, kind));
    }
    circuit
}

/// The node of that name; 0 is ground.
pub fn at(circuit: &Circuit, name: &str) -> NodeId {
    circuit.find_node(if name == "0" { "ground" } else { name }).expect("a node")
}

/// A parameter by its name.
pub fn parameter(name: &str) -> Parameter {
    match name {
        "Ohms" => Parameter::Ohms,
        "Setting" => Parameter::Setting,
        "Farads" => Parameter::Farads,
        "Henries" => Parameter::Henries,
        "Volts" => Parameter::Volts,
        "Signal" => Parameter::Signal,
        "Perveance" => Parameter::Perveance,
        "Mu" => Parameter::Mu,
        "GridPlateFarads" => Parameter::GridPlateFarads,
        "GridCathodeFarads" => Parameter::GridCathodeFarads,
        "PlateCathodeFarads" => Parameter::PlateCathodeFarads,
        other => panic!("no such figure: {other}"),
    }
}
