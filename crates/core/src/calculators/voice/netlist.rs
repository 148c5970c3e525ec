use crate::text::{counted, together};
use crate::{
    calculators::triode::{Amplifier, Feed},
    circuit::{GROUND, Kind, NodeId},
    value::Inputs,
};

const THROWS: [&str; 6] = ["throw_1", "throw_2", "throw_3", "throw_4", "throw_5", "throw_6"];
const COUPLING: [&str; 6] = ["C3", "C4", "C9", "C10", "C11", "C12"];

/// The whole circuit with the switch in the position `closed`, and the node that feeds the next stage.
///
/// Plate, position capacitor, node A; the two-knob network between A and B after James (Wireless World, February
/// 1949); level; load.
pub(super) fn build(inputs: &Inputs, closed: usize) -> (Amplifier, NodeId) {
    let mut amplifier = Amplifier::new(
        inputs,
        &Feed {
            decoupling: "R7",
            source: "Mic",
            role: "microphone",
            field: "microphone_volts",
            node: "mic",
            ohms: ("R9", "microphone_ohms"),
            farads: Some(("C14", "microphone_farads")),
        },
    );
    let a = amplifier.circuit.node("a");
    positions(&mut amplifier, inputs, closed, a);
    let top = if inputs.text("tone") == "two-knob" { two_knob(&mut amplifier, inputs, a) } else { a };
    let output = amplifier.circuit.node("output");
    let level = Kind::Potentiometer { ohms: inputs.number("level_ohms"), setting: inputs.number("level") };
    amplifier.put(inputs, "Level", "level", "level", &[top, output, GROUND], level);
    amplifier.resistor(inputs, "R8", "load", "load_ohms", [output, GROUND]);
    amplifier.capacitor(inputs, "C13", "load_capacitance", "load_farads", [output, GROUND]);
    (amplifier, output)
}

fn positions(amplifier: &mut Amplifier, inputs: &Inputs, closed: usize, a: NodeId) {
    let count = inputs.items("positions").len();
    let plate = amplifier.plate;
    if count == 1 {
        amplifier.capacitor(inputs, COUPLING[0], "coupling", "positions[0].farads", [plate, a]);
        return;
    }
    let mut switch = [a; 7];
    for (index, (reference, throw)) in COUPLING.iter().zip(THROWS).take(count).enumerate() {
        let throw = amplifier.circuit.node(throw);
        amplifier.capacitor(
            inputs,
            reference,
            "coupling",
            &together(&["positions[", &counted(index), "].farads"]),
            [plate, throw],
        );
        switch[index + 1] = throw;
    }
    let kind = Kind::Switch { closed: Some(closed) };
    amplifier.put(inputs, "S1", "coupling_switch", "positions", &switch[..=count.min(6)], kind);
}

fn two_knob(amplifier: &mut Amplifier, inputs: &Inputs, a: NodeId) -> NodeId {
    let [bass_top, bass_wiper, bass_bottom, treble_top, treble_bottom, b] =
        ["bass_top", "bass_wiper", "bass_bottom", "treble_top", "treble_bottom", "b"]
            .map(|name| amplifier.circuit.node(name));
    let knob =
        |ohms: &str, setting: &str| Kind::Potentiometer { ohms: inputs.number(ohms), setting: inputs.number(setting) };
    let (bass, treble) = (knob("bass_ohms", "bass"), knob("treble_ohms", "treble"));
    amplifier.resistor(inputs, "R4", "bass_in", "tone_parts.r_in", [a, bass_top]);
    amplifier.put(inputs, "Bass", "bass", "bass", &[bass_top, bass_wiper, bass_bottom], bass);
    amplifier.capacitor(inputs, "C5", "bass_top", "tone_parts.c_bass_top", [bass_top, bass_wiper]);
    amplifier.capacitor(inputs, "C6", "bass_bottom", "tone_parts.c_bass_bottom", [bass_wiper, bass_bottom]);
    amplifier.resistor(inputs, "R5", "bass_low", "tone_parts.r_low", [bass_bottom, GROUND]);
    amplifier.resistor(inputs, "R6", "mixing", "tone_parts.r_mix", [bass_wiper, b]);
    amplifier.capacitor(inputs, "C7", "treble_top", "tone_parts.c_treble_top", [a, treble_top]);
    amplifier.put(inputs, "Treble", "treble", "treble", &[treble_top, b, treble_bottom], treble);
    amplifier.capacitor(inputs, "C8", "treble_bottom", "tone_parts.c_treble_bottom", [treble_bottom, GROUND]);
    b
}
