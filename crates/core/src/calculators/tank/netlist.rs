use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use crate::{
    circuit::{Circuit, GROUND, Kind, NodeId, Part, PartId},
    network::{Antenna, Counts, Link, NoNetwork, Pi},
    value::{Inputs, Problem},
};

/// A tank with its antenna: the circuit, and where in it the answers are.
pub(super) struct Tank {
    pub circuit: Circuit,
    pub tube: PartId,
    pub plate: NodeId,
    /// Where the antenna is joined.
    pub antenna: NodeId,
    /// Top of the antenna's resistance.
    pub radiating: NodeId,
    pub input: PartId,
    pub output: PartId,
    /// What carries the tank coil's current.
    pub coil: PartId,
    /// Nodes that only the winding's resistance makes, and what they are seen as.
    pub seen_as: Vec<(NodeId, NodeId)>,
    /// What the parts were made from.
    pub design: Design,
    omega: f64,
    coil_q: f64,
}

/// A network by its formula.
#[derive(Clone, Copy)]
pub(super) enum Design {
    Pi(Pi),
    Link(Link),
}

impl Design {
    /// Susceptance at the plate, the tube's own in it.
    const fn input_siemens(self) -> f64 {
        match self {
            Design::Pi(pi) => pi.input_siemens,
            Design::Link(link) => link.input_siemens,
        }
    }
}

/// The antenna of `inputs`.
pub(super) fn antenna_of(inputs: &Inputs) -> Antenna {
    Antenna { ohms: inputs.number("antenna_ohms"), reactance: inputs.number("antenna_reactance") }
}

/// The network that `inputs` ask for, as a circuit.
///
/// # Errors
/// `no_solution` with its reason.
pub(super) fn build(inputs: &Inputs) -> Result<Tank, Vec<Problem>> {
    let omega = 2.0 * PI * inputs.number("hertz");
    let design = design(inputs).map_err(|reason| {
        let (field, why) = match reason {
            NoNetwork::LowQ => ("q", "network_q_low"),
            NoNetwork::Reactance => ("antenna_reactance", "network_reactance"),
            NoNetwork::Middle => ("middle_ohms", "network_middle"),
        };
        vec![Problem::no_solution(field, why)]
    })?;
    let tube_farads = inputs.number("tube_farads");
    let input_farads = design.input_siemens() / omega - tube_farads;
    if input_farads <= 0.0 {
        return Err(vec![Problem::no_solution("tube_farads", "tube_capacitance")]);
    }
    let mut circuit = Circuit::new();
    let plate = circuit.node("plate");
    let tube = circuit.add(Part::new("Tube", "final_tube", &[plate, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
    if tube_farads > 0.0 {
        let kind = Kind::Capacitor { farads: tube_farads };
        circuit.add(Part::new("Ct", "tube_capacitance", &[plate, GROUND], kind).from_field("tube_farads"));
    }
    let kind = Kind::Capacitor { farads: input_farads };
    let input = circuit.add(Part::new("C1", "tank_input", &[plate, GROUND], kind));
    let (antenna, radiating) = (circuit.node("antenna"), circuit.node("antenna"));
    let coil_q = inputs.number("coil_q");
    let seen_as = Vec::new();
    let whole = Tank {
        circuit,
        tube,
        plate,
        antenna,
        radiating,
        input,
        output: input,
        coil: tube,
        seen_as,
        design,
        omega,
        coil_q,
    };
    let mut tank = match design {
        Design::Pi(pi) => whole.with_pi(pi),
        Design::Link(link) => whole.with_link(link),
    };
    tank.join(antenna_of(inputs));
    Ok(tank)
}

fn design(inputs: &Inputs) -> Result<Design, NoNetwork> {
    let (load, q, antenna) = (inputs.number("rf_load_ohms"), inputs.number("q"), antenna_of(inputs));
    let counts = if inputs.text("q_counts") == "both-sides" { Counts::BothSides } else { Counts::InputSide };
    Ok(match inputs.text("network") {
        "pi-l" => Design::Pi(Pi::with_second(load, inputs.number("middle_ohms"), antenna, q, counts)?),
        "parallel-link" => Design::Link(Link::new(load, antenna, q, inputs.number("link_q"))?),
        _ => Design::Pi(Pi::plain(load, antenna, q, counts)?),
    })
}

impl Tank {
    fn with_pi(mut self, pi: Pi) -> Self {
        let middle = if pi.second_ohms.is_some() { self.circuit.node("between") } else { self.antenna };
        self.coil = self.wound("L1", "tank_coil", [self.plate, middle], pi.coil_ohms);
        self.output = self.capacitor("C2", "tank_output", [middle, GROUND], pi.output_siemens);
        if let Some(second) = pi.second_ohms {
            self.wound("L2", "second_coil", [middle, self.antenna], second);
        }
        self
    }

    fn with_link(mut self, link: Link) -> Self {
        let (tap, pair, end) =
            (self.circuit.node("tank_winding"), self.circuit.node("link_winding"), self.circuit.node("link"));
        self.seen_as = vec![(tap, self.plate), (pair, end)];
        let henries = [link.coil_ohms / self.omega, link.link_ohms / self.omega];
        let kind = Kind::Coupled { henries, coupling: link.coupling };
        self.circuit.add(Part::new("L1", "linked_coils", &[tap, GROUND, pair, GROUND], kind));
        let lost = |ohms: f64| Kind::Resistor { ohms: ohms / self.coil_q };
        let parts = [([self.plate, tap], lost(link.coil_ohms)), ([pair, end], lost(link.link_ohms))];
        let [coil, _] = parts.map(|(nodes, kind)| self.circuit.add(Part::new("", "winding", &nodes, kind)));
        self.coil = coil;
        self.output = self.capacitor("C2", "link_tuning", [end, self.antenna], 1.0 / link.output_ohms);
        self
    }

    /// A coil with the resistance that its Q says, held over frequency.
    fn wound(&mut self, reference: &str, role: &'static str, nodes: [NodeId; 2], reactance: f64) -> PartId {
        let kind = Kind::Coil { henries: reactance / self.omega, ohms: reactance / self.coil_q };
        self.circuit.add(Part::new(reference, role, &nodes, kind))
    }

    fn capacitor(&mut self, reference: &str, role: &'static str, nodes: [NodeId; 2], siemens: f64) -> PartId {
        let kind = Kind::Capacitor { farads: siemens / self.omega };
        self.circuit.add(Part::new(reference, role, &nodes, kind))
    }

    /// Puts the antenna on; its reactance goes over frequency as a coil's or a capacitor's.
    fn join(&mut self, antenna: Antenna) {
        let reactance = antenna.reactance;
        if reactance != 0.0 {
            self.radiating = self.circuit.node("radiating");
            let kind = if reactance > 0.0 {
                Kind::Coil { henries: reactance / self.omega, ohms: 0.0 }
            } else {
                Kind::Capacitor { farads: -1.0 / (self.omega * reactance) }
            };
            let part = Part::new("Xa", "antenna_reactance", &[self.antenna, self.radiating], kind);
            self.circuit.add(part.from_field("antenna_reactance"));
        }
        let kind = Kind::Resistor { ohms: antenna.ohms };
        let part = Part::new("Ra", "antenna_resistance", &[self.radiating, GROUND], kind);
        self.circuit.add(part.from_field("antenna_ohms"));
    }
}
