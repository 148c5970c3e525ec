use alloc::{string::String, vec::Vec};

use crate::{
    calculators::bench::TubeAtSocket,
    circuit::{Circuit, GROUND, Kind, NodeId, Part, PartId},
    tube::{self, Triode, Tube},
    value::{Inputs, Value},
};

/// Usual tolerances of parts as sold today where none is written with the value. Common practice, no source.
const RESISTOR: f64 = 0.05;
const CAPACITOR: f64 = 0.10;
const ELECTROLYTIC: f64 = 0.20;
const MAINS: f64 = 0.05;

/// A dc block this many seconds long with what surrounds it passes every frequency that is asked about.
const BLOCK_SECONDS: f64 = 1e6;

/// The tube that was given: a row of the table or a record of the person's own.
pub(in crate::calculators) struct TubeGiven {
    pub law: Triode,
    pub farads: [f64; 3],
    pub row: Option<&'static Tube>,
    pub name: String,
}

impl TubeGiven {
    fn of(given: &Value) -> Self {
        let row = given.text().and_then(tube::tube).or_else(|| tube::tubes().first());
        if let (Some(row), Value::Text(_)) = (row, given) {
            let farads = [row.grid_plate_farads, row.grid_cathode_farads, row.plate_cathode_farads];
            return TubeGiven { law: row.law, farads, row: Some(row), name: row.name.into() };
        }
        let figure = |key: &str| given.get(key).and_then(Value::number).unwrap_or(0.0);
        TubeGiven {
            law: Triode {
                perveance: figure("perveance"),
                mu: figure("mu"),
                mu_spread: figure("mu_spread"),
                contact_volts: figure("contact_volts"),
            },
            farads: ["grid_plate_farads", "grid_cathode_farads", "plate_cathode_farads"].map(figure),
            row: None,
            name: given.get("name").and_then(Value::text).unwrap_or("").into(),
        }
    }
}

/// The circuit of the stage, growing, with the nodes that its answers are read at.
pub(in crate::calculators) struct Amplifier {
    pub circuit: Circuit,
    pub tube: TubeGiven,
    pub valve: Option<PartId>,
    pub source: Option<PartId>,
    pub supply: NodeId,
    pub decoupled: NodeId,
    pub plate: NodeId,
    pub grid: NodeId,
    pub cathode: NodeId,
    /// Nodes that a hidden dc block makes, and what they are seen as.
    pub seen_as: Vec<(NodeId, NodeId)>,
}

/// What drives the grid: names, ohms and, for a source with one of its own, farads; and what the decoupling resistor is
/// called there.
pub(in crate::calculators) struct Feed<'a> {
    pub decoupling: &'a str,
    pub source: &'a str,
    pub role: &'static str,
    pub field: &'a str,
    pub node: &'static str,
    pub ohms: (&'a str, &'a str),
    pub farads: Option<(&'a str, &'a str)>,
}

impl Amplifier {
    /// Supply, decoupling, plate, cathode and grid parts, the tube, and the source that `feed` names.
    pub fn new(inputs: &Inputs, feed: &Feed) -> Self {
        let tube = TubeGiven::of(inputs.at("tube"));
        let mut circuit = Circuit::new();
        let supply = circuit.node("supply");
        let plate = circuit.node("plate");
        let grid = circuit.node("grid");
        let cathode = if inputs.number("cathode_ohms") > 0.0 { circuit.node("cathode") } else { GROUND };
        let mut amplifier = Amplifier {
            circuit,
            valve: None,
            source: None,
            supply,
            decoupled: supply,
            plate,
            grid,
            cathode,
            tube,
            seen_as: Vec::new(),
        };
        amplifier.feed(inputs, feed);
        amplifier.around(inputs, feed.decoupling);
        amplifier
    }

    fn around(&mut self, inputs: &Inputs, decoupling: &str) {
        let supply = Kind::Source { volts: inputs.number("supply_volts"), signal: 0.0 };
        self.put(inputs, "B+", "supply", "supply_volts", &[self.supply, GROUND], supply);
        if inputs.number("decoupling_ohms") > 0.0 {
            self.decoupled = self.circuit.node("decoupled");
            self.resistor(inputs, decoupling, "decoupling_resistor", "decoupling_ohms", [self.supply, self.decoupled]);
            self.capacitor(inputs, "C1", "decoupling", "decoupling_farads", [self.decoupled, GROUND]);
        }
        self.resistor(inputs, "R3", "plate_resistor", "plate_ohms", [self.decoupled, self.plate]);
        self.resistor(inputs, "R2", "cathode_resistor", "cathode_ohms", [self.cathode, GROUND]);
        if self.cathode != GROUND {
            self.capacitor(inputs, "C2", "cathode_bypass", "cathode_farads", [self.cathode, GROUND]);
        }
        let bias = inputs.number("grid_volts");
        let far_end = if bias == 0.0 { GROUND } else { self.circuit.node("grid_return") };
        if bias != 0.0 {
            let source = Kind::Source { volts: bias, signal: 0.0 };
            self.put(inputs, "Bias", "bias_supply", "grid_volts", &[far_end, GROUND], source);
        }
        self.resistor(inputs, "R1", "grid_resistor", "grid_ohms", [self.grid, far_end]);
        let [grid_plate_farads, grid_cathode_farads, plate_cathode_farads] = self.tube.farads;
        let law = self.tube.law;
        let kind = Kind::Triode { law, grid_plate_farads, grid_cathode_farads, plate_cathode_farads };
        self.valve = Some(self.put(inputs, "V1", "tube", "tube", &[self.plate, self.grid, self.cathode], kind));
    }

    fn feed(&mut self, inputs: &Inputs, feed: &Feed) {
        let emf = self.circuit.node(feed.node);
        let kind = Kind::Source { volts: 0.0, signal: 1.0 };
        self.source = Some(self.put(inputs, feed.source, feed.role, feed.field, &[emf, GROUND], kind));
        let ohms = inputs.number(feed.ohms.1);
        let own = feed.farads.filter(|(_, field)| inputs.number(field) > 0.0);
        let next = if ohms > 0.0 { self.circuit.node("feed") } else { self.grid };
        if let Some((reference, field)) = own {
            self.capacitor(inputs, reference, "microphone_capacitance", field, [emf, next]);
        } else {
            let farads = BLOCK_SECONDS / f64::max(1.0, ohms + inputs.number("grid_ohms"));
            self.circuit.add(Part::new("", "block", &[emf, next], Kind::Capacitor { farads }));
            let (hidden, seen) = if ohms > 0.0 { (next, emf) } else { (emf, self.grid) };
            self.seen_as.push((hidden, seen));
        }
        self.resistor(inputs, feed.ohms.0, "source_resistance", feed.ohms.1, [next, self.grid]);
    }

    /// Adds a part whose value is the input `field`, with the tolerance written there or the usual one.
    pub fn put(
        &mut self,
        inputs: &Inputs,
        reference: &str,
        role: &'static str,
        field: &str,
        nodes: &[NodeId],
        kind: Kind,
    ) -> PartId {
        let usual = match kind {
            Kind::Resistor { .. } => RESISTOR,
            Kind::Potentiometer { .. } => ELECTROLYTIC,
            Kind::Capacitor { farads } => {
                if farads >= 1e-6 {
                    ELECTROLYTIC
                } else {
                    CAPACITOR
                }
            }
            Kind::Source { volts, .. } if volts != 0.0 => MAINS,
            _ => 0.0,
        };
        let tolerance = inputs.tolerance(field).unwrap_or(usual);
        self.circuit.add(Part::new(reference, role, nodes, kind).from_field(field).within(tolerance))
    }

    /// Adds a resistor unless its field is absent or 0.
    pub fn resistor(&mut self, inputs: &Inputs, reference: &str, role: &'static str, field: &str, nodes: [NodeId; 2]) {
        let ohms = inputs.number(field);
        if ohms > 0.0 {
            self.put(inputs, reference, role, field, &nodes, Kind::Resistor { ohms });
        }
    }

    /// Adds a capacitor unless its field is absent or 0.
    pub fn capacitor(&mut self, inputs: &Inputs, reference: &str, role: &'static str, field: &str, nodes: [NodeId; 2]) {
        let farads = inputs.number(field);
        if farads > 0.0 {
            self.put(inputs, reference, role, field, &nodes, Kind::Capacitor { farads });
        }
    }

    /// Where the tube sits in the netlist.
    pub fn socket(&self) -> TubeAtSocket<'static> {
        TubeAtSocket { reference: "V1", tube: self.tube.row, nodes: [self.plate, self.grid, self.cathode] }
    }
}
