//! Nodes whose volts differ by what is known beforehand: joined by wire, by a closed switch, or by a source.

use alloc::{collections::VecDeque, vec, vec::Vec};

use super::{Circuit, Fault, GROUND, Kind, NodeId, PartId};

/// Direct current or one frequency.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Mode {
    Dc,
    Ac,
}

/// A part (or a piece of one) between two nodes that fixes `v(a) - v(b)`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Tie {
    pub part: PartId,
    pub a: NodeId,
    pub b: NodeId,
    /// The part's terminals at `a` and `b`.
    pub ends: (usize, usize),
    /// `v(a) - v(b)`.
    pub rise: f64,
    /// A source, not a wire.
    pub source: bool,
}

/// Each node's class: the nodes of one class stand at fixed volts from each other, so that one unknown serves them all.
/// A grounded source thus costs nothing, and a floating one merges two nodes into one unknown.
#[derive(Clone, Debug)]
pub(super) struct Rigid {
    /// Of each node; class 0 is ground's.
    pub class: Vec<usize>,
    /// Volts of each node above its class.
    pub offset: Vec<f64>,
    /// The ties that span the classes, each nearer to the root than those after it; `a` is the farther end.
    pub tree: Vec<Tie>,
    /// A node of each class.
    pub root: Vec<NodeId>,
}

impl Rigid {
    pub(super) fn new(circuit: &Circuit, mode: Mode) -> Result<Self, Fault> {
        let ties = ties(circuit, mode);
        let count = circuit.node_count();
        let mut rigid =
            Rigid { class: vec![usize::MAX; count], offset: vec![0.0; count], tree: Vec::new(), root: Vec::new() };
        let mut used = vec![false; ties.len()];
        let mut queue = VecDeque::new();
        for start in (0..count).map(NodeId) {
            if rigid.class[start.0] != usize::MAX {
                continue;
            }
            let class = rigid.root.len();
            rigid.root.push(start);
            rigid.class[start.0] = class;
            queue.push_back(start);
            while let Some(here) = queue.pop_front() {
                for (tie, used) in ties.iter().zip(&mut used) {
                    if *used || (tie.a != here && tie.b != here) {
                        continue;
                    }
                    *used = true;
                    let outward = if tie.b == here { *tie } else { turned(*tie) };
                    let volts = rigid.offset[here.0] + outward.rise;
                    if rigid.class[outward.a.0] == usize::MAX {
                        rigid.class[outward.a.0] = class;
                        rigid.offset[outward.a.0] = volts;
                        rigid.tree.push(outward);
                        queue.push_back(outward.a);
                    } else if !agree(volts, rigid.offset[outward.a.0], tie.rise) {
                        return Err(Fault::Shorted { node: circuit.name(outward.a) });
                    }
                }
            }
        }
        Ok(rigid)
    }

    /// Volts of a source, positive from its first node to its second; `None` where it closes a loop of sources.
    pub(super) fn volts(&self, source: PartId) -> Option<f64> {
        let tie = self.tree.iter().find(|tie| tie.part == source && tie.source)?;
        Some(if tie.ends.0 == 0 { tie.rise } else { -tie.rise })
    }

    /// Number of unknowns.
    pub(super) fn unknowns(&self) -> usize {
        self.root.len() - 1
    }
}

fn turned(tie: Tie) -> Tie {
    Tie { a: tie.b, b: tie.a, ends: (tie.ends.1, tie.ends.0), rise: -tie.rise, ..tie }
}

/// Two ways round a loop of sources may differ by rounding.
fn agree(one: f64, other: f64, rise: f64) -> bool {
    (one - other).abs() <= 1e-9 * (one.abs() + other.abs() + rise.abs())
}

fn ties(circuit: &Circuit, mode: Mode) -> Vec<Tie> {
    let mut ties = Vec::new();
    for (part, described) in circuit.parts() {
        let source = matches!(described.kind, Kind::Source { .. });
        let mut tie = |first: usize, second: usize, rise: f64| {
            let (a, b) = (described.node(first), described.node(second));
            ties.push(Tie { part, a, b, ends: (first, second), rise, source });
        };
        match described.kind {
            Kind::Resistor { ohms } if ohms <= 0.0 => tie(0, 1, 0.0),
            Kind::Coil { henries, ohms } if ohms <= 0.0 && (mode == Mode::Dc || henries <= 0.0) => tie(0, 1, 0.0),
            Kind::Coupled { .. } if mode == Mode::Dc => {
                tie(0, 1, 0.0);
                tie(2, 3, 0.0);
            }
            Kind::Source { volts, signal } => tie(0, 1, if mode == Mode::Dc { volts } else { signal }),
            Kind::Potentiometer { ohms, setting } => {
                if ohms * (1.0 - setting) <= 0.0 {
                    tie(0, 1, 0.0);
                }
                if ohms * setting <= 0.0 {
                    tie(1, 2, 0.0);
                }
            }
            Kind::Switch { closed: Some(throw) } if throw + 1 < described.nodes.len() => tie(0, throw + 1, 0.0),
            _ => {}
        }
    }
    ties.retain(|tie| tie.a != GROUND || tie.b != GROUND || tie.rise != 0.0);
    ties
}
