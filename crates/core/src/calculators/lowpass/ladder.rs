use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use crate::text::{counted, together};
use crate::{
    calculators::solved,
    circuit::{Circuit, DcPoint, Fault, GROUND, Kind, NodeId, Part, PartId, Response},
    network::{Deviation, butterworth, chebyshev, deviation, refitted},
    quantity::{Series, nearest},
    value::{Inputs, Problem},
};

/// Mica and film capacitors as sold for transmitters.
const CAPACITOR_TOLERANCE: f64 = 0.05;

/// Nodes between input and output.
const RUNGS: [&str; 6] = ["n1", "n2", "n3", "n4", "n5", "n6"];

/// A ladder between a transmitter and its load: the values, and the circuit made of them.
pub(super) struct Ladder {
    pub circuit: Circuit,
    pub dc: DcPoint,
    pub input: NodeId,
    pub output: NodeId,
    /// From source to load.
    pub capacitors: Vec<PartId>,
    /// From source to load.
    pub coils: Vec<PartId>,
    /// How far rounding alone, and rounding with coils fitted again, take the loss from the exact ladder's.
    pub deviations: Option<[Deviation; 2]>,
    coil_q: f64,
}

/// The ladder that `inputs` ask for.
///
/// # Errors
/// An even Chebyshev ladder between equal ends; a value outside what can be worked with.
pub(super) fn build(inputs: &Inputs) -> Result<Ladder, Vec<Problem>> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // whole, 2 to 9
    let order = inputs.number("order") as usize;
    let exact = match inputs.text("family") {
        "butterworth" => butterworth(order),
        _ => chebyshev(order, inputs.number("ripple_db"))
            .ok_or_else(|| vec![Problem::no_solution("order", "even_chebyshev")])?,
    };
    let capacitor_first = inputs.text("first") == "capacitor";
    let scale = Scale { omega: 2.0 * PI * inputs.number("cutoff_hertz"), ohms: inputs.number("ohms") };
    let harmonic = 2.0 * inputs.number("carrier_hertz") / inputs.number("cutoff_hertz");
    let is_coil = |index: usize| index.is_multiple_of(2) != capacitor_first;
    let (elements, deviations) = match Series::of(inputs.text("series")) {
        Some(series) => {
            let preferred = |(index, g): (usize, &f64)| {
                let sold = nearest(g / (scale.omega * scale.ohms), series).filter(|_| !is_coil(index));
                sold.map_or(*g, |sold| sold.value * scale.omega * scale.ohms)
            };
            let rounded: Vec<f64> = exact.iter().enumerate().map(preferred).collect();
            let fitted = refitted(&exact, &rounded, capacitor_first, harmonic);
            let off = |elements: &[f64]| deviation(&exact, elements, capacitor_first, harmonic);
            let deviations = [off(&rounded), off(&fitted)];
            (fitted, Some(deviations))
        }
        None => (exact, None),
    };
    let ladder = solved(laid(&elements, is_coil, scale, inputs.number("coil_q")))?;
    Ok(Ladder { deviations, ..ladder })
}

#[derive(Clone, Copy)]
struct Scale {
    omega: f64,
    ohms: f64,
}

fn laid(elements: &[f64], is_coil: impl Fn(usize) -> bool, scale: Scale, coil_q: f64) -> Result<Ladder, Fault> {
    let mut circuit = Circuit::new();
    let source = circuit.node("source");
    let input = circuit.node("input");
    // An emf of 2 V behind the source's resistance is 1 V at a matched load: volts there are the insertion loss.
    circuit.add(Part::new("Source", "transmitter", &[source, GROUND], Kind::Source { volts: 0.0, signal: 2.0 }));
    let end = |reference: &str, role: &'static str, nodes: [NodeId; 2]| {
        Part::new(reference, role, &nodes, Kind::Resistor { ohms: scale.ohms }).from_field("ohms")
    };
    circuit.add(end("Rs", "source_resistance", [source, input]));
    let (mut capacitors, mut coils) = (Vec::new(), Vec::new());
    let mut left = (0..elements.len()).filter(|index| is_coil(*index)).count();
    let mut names = RUNGS.iter();
    let mut here = input;
    for (index, g) in elements.iter().enumerate() {
        if is_coil(index) {
            left -= 1;
            let name = if left == 0 { "output" } else { names.next().copied().unwrap_or("output") };
            let next = circuit.node(name);
            let kind = Kind::Coil { henries: g * scale.ohms / scale.omega, ohms: 0.0 };
            let reference = together(&["L", &counted(coils.len() + 1)]);
            let part = Part::new(reference, "ladder_coil", &[here, next], kind);
            coils.push(circuit.add(part));
            here = next;
        } else {
            let kind = Kind::Capacitor { farads: g / (scale.omega * scale.ohms) };
            let reference = together(&["C", &counted(capacitors.len() + 1)]);
            let part = Part::new(reference, "ladder_capacitor", &[here, GROUND], kind);
            capacitors.push(circuit.add(part.within(CAPACITOR_TOLERANCE)));
        }
    }
    circuit.add(end("RL", "load", [here, GROUND]));
    let dc = circuit.dc()?;
    Ok(Ladder { circuit, dc, input, output: here, capacitors, coils, deviations: None, coil_q })
}

impl Ladder {
    /// The circuit at a frequency: its coils have there the resistance that their Q says.
    pub(super) fn at(&self, hertz: f64) -> Circuit {
        let mut circuit = self.circuit.clone();
        for coil in &self.coils {
            let Some(henries) = circuit.part(*coil).and_then(|part| part.kind.value()) else { continue };
            circuit.set(*coil, Kind::Coil { henries, ohms: 2.0 * PI * hertz * henries / self.coil_q });
        }
        circuit
    }

    /// Volts at the load over those of a matched load, in decibels.
    pub(super) fn gain_db(&self, hertz: f64) -> Result<f64, Fault> {
        let circuit = self.at(hertz);
        let mut response: Response = circuit.response(&self.dc)?;
        let phasors = response.at(hertz)?;
        Ok(phasors.volts(self.output).decibels())
    }
}
