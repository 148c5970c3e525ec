use alloc::vec::Vec;

use crate::text::counted;
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
    let seen = |node: NodeId| seen_as.iter().find(|(from, _)| *from == node).map_or(node, |(_, to)| *to);
    let hidden = |node: NodeId| seen_as.iter().any(|(from, _)| *from == node);
    let nodes = circuit
        .nodes()
        .filter(|(node, _)| !hidden(*node))
        .map(|(node, name)| Value::record([("name", name.into()), ("volts", dc.volts(node).into())]));
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
        ("tubes", Value::List(tubes.iter().map(|tube| socket(circuit, tube)).collect())),
    ])
}

fn value_of(part: &Part) -> Value {
    match part.kind {
        Kind::Switch { closed } => closed.map(|throw| throw as f64 + 1.0).into(),
        kind => kind.value().into(),
    }
}

/// `{reference, type, base, pins: [{pin, electrode, node}]}`: the first section, the heater and the rest of the base.
fn socket(circuit: &Circuit, at: &TubeAtSocket) -> Value {
    let Some(tube) = at.tube else {
        return Value::record([("reference", at.reference.into())]);
    };
    let pins = tube.pins.iter().map(|pin| {
        let node = pin.electrode.of_first_section().and_then(|index| at.nodes.get(index));
        Value::record([
            ("pin", counted(pin.pin.into()).into()),
            ("electrode", pin.electrode.code().into()),
            ("node", node.map(|node| circuit.name(*node)).into()),
        ])
    });
    Value::record([
        ("reference", at.reference.into()),
        ("type", tube.name.into()),
        ("base", tube.base.into()),
        ("pins", Value::List(pins.collect())),
    ])
}
