use alloc::{string::String, vec, vec::Vec};

use crate::text::{counted, together};
use crate::{
    circuit::{Circuit, DcPoint, Kind, NodeId, Part},
    tube::Tube,
    value::Value,
};

/// A table tube of the circuit, for its basing: the part's place in the netlist and the section used.
pub(in crate::calculators) struct TubeAtSocket<'a> {
    /// As in the drawing.
    pub reference: &'a str,
    /// The table's row; none for a tube of the person's own.
    pub tube: Option<&'static Tube>,
    /// Plate, grid and cathode nodes.
    pub nodes: [NodeId; 3],
}

/// Any tube of the circuit at its socket.
pub(in crate::calculators) struct Socket<'a> {
    /// As in the drawing.
    pub reference: &'a str,
    /// Its type; empty for a tube of the person's own, which has no pins here.
    pub name: &'a str,
    pub base: &'static str,
    /// Number, electrode as a code, and the node it is at, if any.
    pub pins: Vec<(u8, &'static str, Option<NodeId>)>,
    /// The pins of each side of the heater.
    pub heater: [&'static [u8]; 2],
}

impl TubeAtSocket<'_> {
    pub(super) fn socket(&self) -> Socket<'_> {
        let Some(tube) = self.tube else {
            return Socket { reference: self.reference, name: "", base: "", pins: vec![], heater: [&[], &[]] };
        };
        let pins = tube.pins.iter().map(|pin| {
            let node = pin.electrode.of_first_section().and_then(|index| self.nodes.get(index));
            (pin.pin, pin.electrode.code(), node.copied())
        });
        Socket {
            reference: self.reference,
            name: tube.name,
            base: tube.base,
            pins: pins.collect(),
            heater: tube.heater_pins(),
        }
    }
}

impl Socket<'_> {
    /// What a pin is called: `V1.5`.
    pub fn place(&self, pin: u8) -> String {
        together(&[self.reference, ".", &counted(usize::from(pin))])
    }

    /// The first pin at a node.
    pub fn pin_at(&self, node: NodeId) -> Option<String> {
        self.pins.iter().find(|(_, _, at)| *at == Some(node)).map(|(pin, ..)| self.place(*pin))
    }

    /// `{reference, type, base, pins: [{pin, electrode, node}]}`.
    fn describe(&self, circuit: &Circuit) -> Value {
        if self.name.is_empty() {
            return Value::record([("reference", self.reference.into())]);
        }
        let pins = self.pins.iter().map(|(pin, electrode, node)| {
            Value::record([
                ("pin", counted(usize::from(*pin)).into()),
                ("electrode", (*electrode).into()),
                ("node", node.map(|node| circuit.name(node)).into()),
            ])
        });
        Value::record([
            ("reference", self.reference.into()),
            ("type", self.name.into()),
            ("base", self.base.into()),
            ("pins", Value::List(pins.collect())),
        ])
    }
}

/// The netlist as data: `{nodes: [{name, volts}], parts: [{reference, role, kind, field, nodes, value}], tubes}`.
///
/// Parts without a reference (a dc block inside a source, a meter) are not drawn and not told; `seen_as` renames the
/// nodes that such a part hides.
pub(in crate::calculators) fn describe(
    circuit: &Circuit,
    dc: &DcPoint,
    tubes: &[TubeAtSocket],
    seen_as: &[(NodeId, NodeId)],
) -> Value {
    let sockets: Vec<Socket> = tubes.iter().map(TubeAtSocket::socket).collect();
    describe_with(circuit, &|node| dc.volts(node), &sockets, seen_as)
}

/// As [`describe`], the nodes' volts from anywhere.
pub(in crate::calculators) fn describe_with(
    circuit: &Circuit,
    volts: &dyn Fn(NodeId) -> f64,
    sockets: &[Socket],
    seen_as: &[(NodeId, NodeId)],
) -> Value {
    let seen = |node: NodeId| seen_as.iter().find(|(from, _)| *from == node).map_or(node, |(_, to)| *to);
    let hidden = |node: NodeId| seen_as.iter().any(|(from, _)| *from == node);
    let nodes = circuit
        .nodes()
        .filter(|(node, _)| !hidden(*node))
        .map(|(node, name)| Value::record([("name", name.into()), ("volts", volts(node).into())]));
    let shown = circuit.parts().filter(|(_, part)| !part.reference.is_empty());
    let parts = shown.map(|(_, part)| {
        let nodes = part.nodes.iter().map(|node| Value::from(circuit.name(seen(*node)))).collect::<Vec<_>>();
        Value::record([
            ("reference", part.reference.as_str().into()),
            ("role", part.role.into()),
            ("kind", part.kind.name().into()),
            ("field", part.field.as_str().into()),
            ("nodes", nodes.into()),
            ("value", value_of(part)),
        ])
    });
    Value::record([
        ("nodes", Value::List(nodes.collect())),
        ("parts", Value::List(parts.collect())),
        ("tubes", Value::List(sockets.iter().map(|socket| socket.describe(circuit)).collect())),
    ])
}

fn value_of(part: &Part) -> Value {
    match part.kind {
        Kind::Switch { closed } => closed.map(|throw| throw as f64 + 1.0).into(),
        kind => kind.value().into(),
    }
}
