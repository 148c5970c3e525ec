//! Currents into the terminals of parts, once the volts are known.

use alloc::{collections::VecDeque, vec, vec::Vec};

use super::{
    NodeId, PartId,
    network::{Branch, Network},
    scalar::Scalar,
    sets::Sets,
};

/// The current into each terminal of each part.
#[derive(Clone, Debug)]
pub(super) struct Currents<T> {
    amps: Vec<T>,
    /// Where each part's terminals begin, and the end.
    start: Vec<usize>,
}

/// A part, or a piece of one, whose current follows from the others'.
#[derive(Clone, Copy)]
struct Limb {
    part: Option<PartId>,
    a: NodeId,
    b: NodeId,
    ends: (usize, usize),
}

impl<T: Scalar> Currents<T> {
    /// By the laws of branches and tubes where that is exact, and by what is left over at the nodes where it is not: in
    /// wires and sources, and in the branches of least impedance that join all nodes (a volt's last digit over a
    /// milliohm would be many times the current). A wire that closes a loop of wires is left without current.
    pub(super) fn new(
        network: &Network,
        admittance: impl Fn(&Branch) -> T,
        across: impl Fn(NodeId, NodeId) -> T,
        tube_amps: impl Fn(usize) -> T,
    ) -> Self {
        let mut start = vec![0];
        for terminals in &network.terminals {
            start.push(start[start.len() - 1] + terminals);
        }
        let mut currents = Currents { amps: vec![T::ZERO; start[start.len() - 1]], start };
        let mut leaving = vec![T::ZERO; network.row.len()];
        let (tree, rest) = split(network, |branch| admittance(branch).size());
        for branch in rest.iter().map(|index| &network.branches[*index]) {
            let amps = admittance(branch) * across(branch.a, branch.b);
            leaving[branch.a.0] += amps;
            leaving[branch.b.0] -= amps;
            if let Some(part) = branch.part {
                currents.pass(part, branch.ends, amps);
            }
        }
        for (index, valve) in network.valves.iter().enumerate() {
            let amps = tube_amps(index);
            leaving[valve.plate.0] += amps;
            leaving[valve.cathode.0] -= amps;
            currents.pass(valve.part, (0, 2), amps);
        }
        for limb in tree.iter().rev() {
            let amps = leaving[limb.a.0];
            if let Some(part) = limb.part {
                currents.pass(part, (limb.ends.1, limb.ends.0), amps);
            }
            leaving[limb.b.0] += amps;
        }
        currents
    }

    /// In at one terminal, out at the other.
    fn pass(&mut self, part: PartId, (into, out): (usize, usize), amps: T) {
        self.amps[self.start[part.0] + into] += amps;
        self.amps[self.start[part.0] + out] -= amps;
    }

    pub(super) fn entering(&self, part: PartId, terminal: usize) -> T {
        self.of(part).get(terminal).copied().unwrap_or(T::ZERO)
    }

    pub(super) fn of(&self, part: PartId) -> &[T] {
        match (self.start.get(part.0), self.start.get(part.0 + 1)) {
            (Some(start), Some(end)) => &self.amps[*start..*end],
            _ => &[],
        }
    }
}

/// The limbs that join all nodes, each nearer to ground than those after it and `a` its farther end; and the branches
/// that are none of them.
fn split(network: &Network, size: impl Fn(&Branch) -> f64) -> (Vec<Limb>, Vec<usize>) {
    let mut limbs: Vec<Limb> = network
        .rigid
        .tree
        .iter()
        .map(|tie| Limb { part: Some(tie.part), a: tie.a, b: tie.b, ends: tie.ends })
        .collect();
    let mut sets = Sets::apart(network.rigid.root.len());
    let mut order: Vec<usize> = (0..network.branches.len()).collect();
    order.sort_by(|one, other| size(&network.branches[*other]).total_cmp(&size(&network.branches[*one])));
    order.retain(|index| {
        let branch = &network.branches[*index];
        let joins = sets.join(network.rigid.class[branch.a.0], network.rigid.class[branch.b.0]);
        if joins {
            limbs.push(Limb { part: branch.part, a: branch.a, b: branch.b, ends: branch.ends });
        }
        !joins
    });
    (from_ground(network.row.len(), limbs), order)
}

fn from_ground(nodes: usize, mut left: Vec<Limb>) -> Vec<Limb> {
    let mut sorted = Vec::with_capacity(left.len());
    let mut queue = VecDeque::new();
    let mut seen = vec![false; nodes];
    for root in 0..nodes {
        if !seen[root] {
            queue.push_back(NodeId(root));
        }
        while let Some(here) = queue.pop_front() {
            seen[here.0] = true;
            left.retain(|limb| {
                if limb.a != here && limb.b != here {
                    return true;
                }
                let (a, b, ends) = if limb.b == here {
                    (limb.a, limb.b, limb.ends)
                } else {
                    (limb.b, limb.a, (limb.ends.1, limb.ends.0))
                };
                sorted.push(Limb { part: limb.part, a, b, ends });
                queue.push_back(a);
                false
            });
        }
    }
    sorted
}
