use alloc::{
    string::{String, ToString},
    vec,
    vec::Vec,
};

use super::given::{RectifierGiven, RegulatorGiven};
use crate::text::{counted, together};
use crate::{
    circuit::{Chain, Circuit, Connection, GROUND, Kind, NodeId, Part, PartId, Rectifier, Rung, Series},
    value::{Inputs, Value},
};

/// Nodes along the filter.
const NODES: [&str; 6] = ["b1", "b2", "b3", "b4", "b5", "b6"];

/// Usual tolerances where none is written with the value. Common practice, no source.
const MAINS: f64 = 0.05;
const RESISTOR: f64 = 0.05;
const ELECTROLYTIC: f64 = 0.20;
const IRON: f64 = 0.20;
const LOAD: f64 = 0.10;
/// A rectifier of a type, new or worn.
pub(super) const PERVEANCE: f64 = 0.20;

/// The parts of one section of the filter.
#[derive(Clone, Debug, Default)]
pub(super) struct Section {
    pub series: Option<PartId>,
    pub capacitor: Option<PartId>,
    pub amps: Option<PartId>,
    pub ohms: Option<PartId>,
    /// A meter that reads here.
    pub meter: Option<PartId>,
}

/// The supply as drawn, and which part is which.
#[derive(Clone, Debug)]
pub(super) struct Supply {
    pub circuit: Circuit,
    pub winding: Option<PartId>,
    pub rectifier: Option<PartId>,
    pub sections: Vec<Section>,
    pub nodes: Vec<NodeId>,
    pub bleeder: Option<PartId>,
    pub regulator: Option<PartId>,
    pub connection: Connection,
    /// Rectifiers that the current passes one after the other.
    pub in_series: f64,
    pub hertz: f64,
    counts: [usize; 5],
}

/// What hangs on the chain.
#[derive(Clone, Copy, Debug)]
pub(super) struct Hung {
    /// Share of all loads but the bleeder.
    pub loads: f64,
    /// Whether the gas regulator glows.
    pub lit: bool,
}

/// Loads removed, bleeder kept.
pub(super) const IDLE: Hung = Hung { loads: 0.0, lit: false };

impl Supply {
    /// The netlist of `inputs`.
    pub fn new(inputs: &Inputs, rectifier: &RectifierGiven, regulator: Option<&RegulatorGiven>) -> Self {
        let connection = match inputs.text("rectifier_circuit") {
            "half-wave" => Connection::HalfWave,
            "doubler" => Connection::Doubler,
            _ => Connection::FullWave,
        };
        let mut supply = Supply {
            circuit: Circuit::new(),
            winding: None,
            rectifier: None,
            sections: Vec::new(),
            nodes: Vec::new(),
            bleeder: None,
            regulator: None,
            connection,
            in_series: if inputs.text("rectifier_circuit") == "bridge" { 2.0 } else { 1.0 },
            hertz: inputs.number("mains_hertz"),
            counts: [0; 5],
        };
        let choked = inputs.text("sections[0].series") != "none";
        let first = supply.circuit.node(if choked { "rectified" } else { NODES[0] });
        supply.rectified(inputs, rectifier, first);
        let mut here = first;
        for index in 0..inputs.items("sections").len() {
            here = supply.section(inputs, index, here);
        }
        if inputs.number("bleeder_ohms") > 0.0 {
            let ohms = inputs.number("bleeder_ohms");
            supply.bleeder =
                Some(supply.numbered(inputs, 0, "bleeder", "bleeder_ohms", [here, GROUND], Kind::Resistor { ohms }));
        }
        if let Some(given) = regulator {
            let kind = Kind::Regulator { volts: given.foot(), ohms: given.ohms() };
            let id = supply.numbered(inputs, 4, "regulator", "regulator", [here, GROUND], kind);
            supply.regulator = Some(id);
        }
        supply
    }

    fn put(
        &mut self,
        inputs: &Inputs,
        (reference, role): (&str, &'static str),
        field: &str,
        nodes: &[NodeId],
        (kind, usual): (Kind, f64),
    ) -> PartId {
        let tolerance = inputs.tolerance(field).unwrap_or(usual);
        self.circuit.add(Part::new(reference, role, nodes, kind).from_field(field).within(tolerance))
    }

    /// A part with the next number of its letter: R C L I V.
    fn numbered(
        &mut self,
        inputs: &Inputs,
        sort: usize,
        role: &'static str,
        field: &str,
        nodes: [NodeId; 2],
        kind: Kind,
    ) -> PartId {
        let usual = [RESISTOR, ELECTROLYTIC, IRON, LOAD, 0.0][sort];
        self.counts[sort] += 1;
        let reference: String = together(&[["R", "C", "L", "I", "V"][sort], &counted(self.counts[sort])]);
        self.put(inputs, (&reference, role), field, &nodes, (kind, usual))
    }

    /// Winding and rectifiers, delivering to `to`.
    fn rectified(&mut self, inputs: &Inputs, rectifier: &RectifierGiven, to: NodeId) {
        let a = self.circuit.node("winding_a");
        let shape = inputs.text("rectifier_circuit");
        let b = match shape {
            "half-wave" => GROUND,
            "doubler" => self.circuit.node("middle"),
            _ => self.circuit.node("winding_b"),
        };
        let volts = inputs.number("secondary_volts") * inputs.number("mains_percent") / 100.0;
        let kind = Kind::Winding { volts, ohms: inputs.number("winding_ohms") };
        let ends = if shape == "centre-tap" { vec![a, GROUND, b] } else { vec![a, b] };
        self.winding = Some(self.put(inputs, ("T1", "transformer"), "secondary_volts", &ends, (kind, MAINS)));
        let pairs: &[[NodeId; 2]] = match shape {
            "half-wave" => &[[a, to]],
            "doubler" => &[[a, to], [GROUND, a]],
            "bridge" => &[[a, to], [b, to], [GROUND, a], [GROUND, b]],
            _ => &[[a, to], [b, to]],
        };
        let Some(perveance) = rectifier.perveance else {
            for (index, nodes) in pairs.iter().enumerate() {
                let kind = (Kind::Diode { volts: inputs.number("diode_drop") }, 0.0);
                let reference = together(&["D", &counted(index + 1)]);
                let id = self.put(inputs, (&reference, "rectifier"), "rectifier", nodes, kind);
                self.rectifier = self.rectifier.or(Some(id));
            }
            return;
        };
        // Plates that share a cathode are one envelope.
        let mut put = |nodes: &[NodeId]| {
            self.counts[4] += 1;
            let reference = together(&["V", &counted(self.counts[4])]);
            let kind = (Kind::Rectifier { perveance }, PERVEANCE);
            let id = self.put(inputs, (&reference, "rectifier"), "rectifier", nodes, kind);
            self.rectifier = self.rectifier.or(Some(id));
        };
        match pairs {
            [[a, to], [b, _]] if shape == "centre-tap" => put(&[*a, *b, *to]),
            [[a, to], [b, _], lower @ ..] if shape == "bridge" => {
                put(&[*a, *b, *to]);
                for nodes in lower {
                    put(nodes);
                }
            }
            _ => pairs.iter().for_each(|nodes| put(nodes)),
        }
    }

    fn section(&mut self, inputs: &Inputs, index: usize, from: NodeId) -> NodeId {
        let path = |key: &str| together(&["sections[", &counted(index), "].", key]);
        let load_path = |key: &str| together(&["loads[", &counted(index), "].", key]);
        let mut section = Section::default();
        let kind = inputs.text(&path("series")).to_string();
        let (ohms, henries) = (inputs.number(&path("ohms")), inputs.number(&path("henries")));
        let here = if kind == "none" { from } else { self.circuit.node(NODES[index.min(5)]) };
        if here != from {
            let part = match kind.as_str() {
                "choke" => (2, "filter_choke", "henries", Kind::Coil { henries, ohms }),
                _ => (0, "filter_resistor", "ohms", Kind::Resistor { ohms }),
            };
            section.series = Some(self.numbered(inputs, part.0, part.1, &path(part.2), [from, here], part.3));
        }
        let farads = inputs.number(&path("farads"));
        let field = path("farads");
        if farads > 0.0 {
            let kind = Kind::Capacitor { farads };
            if index == 0 && self.connection == Connection::Doubler {
                let middle = self.circuit.node("middle");
                section.capacitor = Some(self.numbered(inputs, 1, "doubler_capacitor", &field, [here, middle], kind));
                self.numbered(inputs, 1, "doubler_capacitor", &field, [middle, GROUND], kind);
            } else {
                section.capacitor = Some(self.numbered(inputs, 1, "filter_capacitor", &field, [here, GROUND], kind));
            }
        }
        let (amps, ohms) = (inputs.number(&load_path("amps")), inputs.number(&load_path("ohms")));
        if amps > 0.0 {
            let kind = Kind::Load { amps };
            section.amps = Some(self.numbered(inputs, 3, "load_current", &load_path("amps"), [here, GROUND], kind));
        }
        if ohms > 0.0 {
            let kind = Kind::Resistor { ohms };
            section.ohms = Some(self.numbered(inputs, 0, "load_resistor", &load_path("ohms"), [here, GROUND], kind));
        }
        self.sections.push(section);
        self.nodes.push(here);
        here
    }

    /// The same with the mains at so many per cent.
    pub fn mains(&mut self, inputs: &Inputs, percent: f64) {
        if let (Some(id), Some(Kind::Winding { ohms, .. })) = (self.winding, self.kind(self.winding)) {
            let volts = inputs.number("secondary_volts") * percent / 100.0;
            self.circuit.set(id, Kind::Winding { volts, ohms });
        }
    }

    /// A constant current at the last node, where none was.
    pub fn draw_last(&mut self, amps: f64) {
        if let (Some(section), Some(node)) = (self.sections.last_mut(), self.nodes.last()) {
            section.amps = Some(self.circuit.add(Part::new("", "load_current", &[*node, GROUND], Kind::Load { amps })));
        }
    }

    fn kind(&self, id: Option<PartId>) -> Option<Kind> {
        self.circuit.part(id?).map(|part| part.kind)
    }

    /// The chain that this circuit is, with what hangs on it. Every figure is read from the parts.
    pub fn chain(&self, hung: Hung) -> Chain {
        let (volts, ohms) = match self.kind(self.winding) {
            Some(Kind::Winding { volts, ohms }) => (volts, ohms),
            _ => (0.0, 1.0),
        };
        let rectifier = match self.kind(self.rectifier) {
            Some(Kind::Rectifier { perveance }) => Rectifier::vacuum(perveance, self.in_series),
            Some(Kind::Diode { volts }) => Rectifier::Drop(volts * self.in_series),
            _ => Rectifier::Drop(0.0),
        };
        let figure = |id: Option<PartId>| self.kind(id).and_then(|kind| kind.value()).unwrap_or(0.0);
        let conductance = |id| Some(figure(id)).filter(|ohms| *ohms > 0.0).map_or(0.0, |ohms| 1.0 / ohms);
        let mut rungs: Vec<Rung> = self
            .sections
            .iter()
            .map(|section| Rung {
                series: match self.kind(section.series) {
                    Some(Kind::Coil { henries, ohms }) => Series::Choke { henries, ohms },
                    Some(Kind::Resistor { ohms }) if ohms > 0.0 => Series::Resistor(ohms),
                    _ => Series::None,
                },
                farads: figure(section.capacitor),
                amps: hung.loads * figure(section.amps),
                siemens: hung.loads * conductance(section.ohms) + conductance(section.meter),
            })
            .collect();
        if let Some(last) = rungs.last_mut() {
            last.siemens += conductance(self.bleeder);
            if let (true, Some(Kind::Regulator { volts, ohms })) = (hung.lit, self.kind(self.regulator)) {
                last.siemens += 1.0 / ohms;
                last.amps -= volts / ohms;
            }
        }
        let peak = core::f64::consts::SQRT_2 * volts;
        Chain { peak, hertz: self.hertz, ohms, connection: self.connection, rectifier, rungs }
    }
}

/// Every capacitor's reference.
pub(super) fn capacitors(circuit: &Circuit) -> Value {
    let held = circuit.parts().filter(|(_, part)| matches!(part.kind, Kind::Capacitor { .. }));
    Value::List(held.map(|(_, part)| part.reference.as_str().into()).collect())
}
