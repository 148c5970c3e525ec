use alloc::{
    format,
    string::{String, ToString},
    vec,
    vec::Vec,
};

use super::TubeAtSocket;
use crate::{
    calculators::WiringStep,
    circuit::{Circuit, Kind, NodeId},
};

/// What to join to what, in the order of work: the heater first and twisted, then each part by its legs.
///
/// Terminals are tube pins (`V1.5`), legs of switches and potentiometers (`S1.common`, `Bass.wiper`) and nodes by
/// name where a node has no pin of its own and needs a tie point.
pub(in crate::calculators) fn wiring(
    circuit: &Circuit,
    tubes: &[TubeAtSocket],
    seen_as: &[(NodeId, NodeId)],
) -> Vec<WiringStep> {
    let mut steps = Vec::new();
    let mut join = |from: String, to: String, part: Option<String>| {
        let step = steps.len() + 1;
        steps.push(WiringStep { from, to, part, step });
    };
    for at in tubes {
        if let Some(tube) = at.tube {
            for (side, pins) in tube.heater_pins().iter().enumerate() {
                for pin in *pins {
                    let from = if side == 0 { "heater_a" } else { "heater_b" };
                    join(from.into(), format!("{}.{pin}", at.reference), None);
                }
            }
        }
    }
    let seen = |node: NodeId| seen_as.iter().find(|(from, _)| *from == node).map_or(node, |(_, to)| *to);
    let place = |node: NodeId| {
        let node = seen(node);
        pin_at(tubes, node).unwrap_or_else(|| circuit.name(node).to_string())
    };
    for (_, part) in circuit.parts().filter(|(_, part)| !part.reference.is_empty()) {
        let legs: Vec<&str> = match part.kind {
            Kind::Potentiometer { .. } => vec!["top", "wiper", "bottom"],
            Kind::Switch { .. } => {
                join(
                    format!("{}.common", part.reference),
                    part.nodes.first().map_or_else(String::new, |node| place(*node)),
                    None,
                );
                for (throw, node) in part.nodes.iter().skip(1).enumerate() {
                    join(format!("{}.{}", part.reference, throw + 1), place(*node), None);
                }
                continue;
            }
            Kind::Triode { .. } | Kind::Source { .. } => continue,
            _ => {
                if let [a, b] = part.nodes.as_slice() {
                    join(place(*a), place(*b), Some(part.reference.clone()));
                }
                continue;
            }
        };
        for (leg, node) in legs.into_iter().zip(&part.nodes) {
            join(format!("{}.{leg}", part.reference), place(*node), None);
        }
    }
    steps
}

/// The pin that a node can be reached at.
pub(in crate::calculators) fn pin_at(tubes: &[TubeAtSocket], node: NodeId) -> Option<String> {
    tubes.iter().find_map(|at| {
        let index = at.nodes.iter().position(|own| *own == node)?;
        let pin = at.tube?.pins.iter().find(|pin| pin.electrode.of_first_section() == Some(index))?;
        Some(format!("{}.{}", at.reference, pin.pin))
    })
}
