use alloc::{
    string::{String, ToString},
    vec::Vec,
};

use super::{Socket, TubeAtSocket};
use crate::text::{counted, together};
use crate::{
    calculators::WiringStep,
    circuit::{Circuit, GROUND, Kind, NodeId, Part},
};

/// Roles of parts that are inside what comes before or after the stage: drawn, for the answers depend on them, but
/// neither bought nor wired here.
const ELSEWHERE: [&str; 13] = [
    "stray",
    "source_resistance",
    "microphone_capacitance",
    "load",
    "load_capacitance",
    "load_current",
    "load_resistor",
    "tube_capacitance",
    "antenna_reactance",
    "antenna_resistance",
    "winding_resistance",
    "lead",
    "heater",
];

/// Whether a part is one that the builder of this stage buys and joins.
pub(in crate::calculators) fn is_built(part: &Part) -> bool {
    !part.reference.is_empty() && !ELSEWHERE.contains(&part.role)
}

/// What to join to what, in the order of work: the heater first and twisted, then each part by its legs.
///
/// Terminals are tube pins (`V1.5`), legs of switches and potentiometers (`S1.common`, `Bass.wiper`) and nodes by
/// name where a node has neither and needs a tie point.
pub(in crate::calculators) fn wiring(
    circuit: &Circuit,
    tubes: &[TubeAtSocket],
    seen_as: &[(NodeId, NodeId)],
) -> Vec<WiringStep> {
    let sockets: Vec<Socket> = tubes.iter().map(TubeAtSocket::socket).collect();
    join_parts(circuit, &sockets, seen_as)
}

/// As [`wiring`], for tubes of any sort.
pub(in crate::calculators) fn join_parts(
    circuit: &Circuit,
    sockets: &[Socket],
    seen_as: &[(NodeId, NodeId)],
) -> Vec<WiringStep> {
    let mut steps = Vec::new();
    let mut join = |from: String, to: String, part: Option<String>| {
        let step = steps.len() + 1;
        steps.push(WiringStep { from, to, part, step });
    };
    for at in sockets {
        for (from, pins) in ["heater_a", "heater_b"].into_iter().zip(at.heater) {
            for pin in pins {
                join(from.into(), at.place(*pin), None);
            }
        }
    }
    for at in sockets {
        if let Some(pin) = at.pin_at(GROUND) {
            join(pin, circuit.name(GROUND).to_string(), None);
        }
    }
    let lugs = lugs(circuit);
    let seen = |node: NodeId| seen_as.iter().find(|(from, _)| *from == node).map_or(node, |(_, to)| *to);
    let place = |node: NodeId| {
        let node = seen(node);
        let pin =
            Some(node).filter(|node| *node != GROUND).and_then(|node| sockets.iter().find_map(|at| at.pin_at(node)));
        let leg = || lugs.iter().find(|(lug, _)| *lug == node).map(|(_, name)| name.clone());
        pin.or_else(leg).unwrap_or_else(|| circuit.name(node).to_string())
    };
    for (_, part) in circuit.parts().filter(|(_, part)| is_built(part)) {
        if matches!(
            part.kind,
            Kind::Triode { .. } | Kind::Source { .. } | Kind::Rectifier { .. } | Kind::Regulator { .. }
        ) {
            continue;
        }
        let legs = legs(part);
        if let ([], [a, b]) = (legs.as_slice(), part.nodes.as_slice()) {
            join(place(*a), place(*b), Some(part.reference.clone()));
        }
        for (leg, node) in legs {
            let to = place(node);
            if leg != to {
                join(leg, to, None);
            }
        }
    }
    let loads = circuit.parts().filter(|(_, part)| is_fed(part));
    let fed: Vec<NodeId> = loads.filter_map(|(_, part)| part.nodes.first().copied()).collect();
    for (k, node) in fed.iter().enumerate().filter(|(k, node)| !fed[..*k].contains(node)) {
        if k == 0 {
            join(circuit.name(GROUND).to_string(), "fed_return".into(), None);
        }
        join(place(*node), "fed".into(), None);
    }
    steps
}

/// Whether a part stands for what is fed from here by direct current: a wire goes there and one back.
pub(in crate::calculators) fn is_fed(part: &Part) -> bool {
    matches!(part.kind, Kind::Load { .. }) || part.role == "load_resistor"
}

/// Nodes that stand by themselves: what is joined there is not soldered to another part's lug.
const STANDING: [&str; 3] = ["ground", "supply", "output"];

/// The legs of a part that has them by name, in the order of its nodes; none of one whose two ends are alike.
fn legs(part: &Part) -> Vec<(String, NodeId)> {
    let names: &[&str] = match part.kind {
        Kind::Potentiometer { .. } => &["top", "wiper", "bottom"],
        Kind::Winding { .. } if part.nodes.len() > 2 => &["end_1", "tap", "end_2"],
        Kind::Winding { .. } => &["end_1", "end_2"],
        Kind::Coupled { .. } => &["1", "2", "3", "4"],
        Kind::Switch { .. } => &["common"],
        _ => return Vec::new(),
    };
    let throws = matches!(part.kind, Kind::Switch { .. });
    let name = |index: usize| match names.get(index) {
        Some(name) => Some(String::from(*name)),
        None => throws.then(|| counted(index)),
    };
    let leg = |(index, node): (usize, &NodeId)| Some((together(&[&part.reference, ".", &name(index)?]), *node));
    part.nodes.iter().enumerate().filter_map(leg).collect()
}

/// Nodes without a pin that a switch or a potentiometer has a lug for: parts are soldered there, and no tie point is
/// needed.
fn lugs(circuit: &Circuit) -> Vec<(NodeId, String)> {
    let lugged = |part: &Part| is_built(part) && matches!(part.kind, Kind::Switch { .. } | Kind::Potentiometer { .. });
    let parts = circuit.parts().filter(|(_, part)| lugged(part));
    let all = parts.flat_map(|(_, part)| legs(part)).filter(|(_, node)| !STANDING.contains(&circuit.name(*node)));
    all.map(|(name, node)| (node, name)).collect()
}

/// The pin that a node can be reached at; ground is a place of its own.
pub(in crate::calculators) fn pin_at(tubes: &[TubeAtSocket], node: NodeId) -> Option<String> {
    let node = Some(node).filter(|node| *node != GROUND)?;
    tubes.iter().find_map(|at| at.socket().pin_at(node))
}
