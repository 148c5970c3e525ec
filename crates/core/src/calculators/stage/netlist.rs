use crate::{
    calculators::triode::{Amplifier, Feed},
    circuit::{GROUND, Kind, NodeId, PartId},
    value::Inputs,
};

/// The stage into its load: the node that the load is at, and the coupling capacitor.
pub(super) fn build(inputs: &Inputs) -> (Amplifier, NodeId, PartId) {
    let mut amplifier = Amplifier::new(
        inputs,
        &Feed {
            decoupling: "R4",
            source: "Vin",
            role: "source",
            field: "",
            node: "source",
            ohms: ("R6", "source_ohms"),
            farads: None,
        },
    );
    let output = amplifier.circuit.node("output");
    let farads = inputs.number("coupling_farads");
    let nodes = [amplifier.plate, output];
    let coupling = amplifier.put(inputs, "C3", "coupling", "coupling_farads", &nodes, Kind::Capacitor { farads });
    amplifier.resistor(inputs, "R5", "load", "load_ohms", [output, GROUND]);
    amplifier.capacitor(inputs, "C4", "load_capacitance", "load_farads", [output, GROUND]);
    (amplifier, output, coupling)
}
