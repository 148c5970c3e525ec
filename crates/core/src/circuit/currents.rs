//! Currents into the terminals of parts, once the volts are known.

use alloc::{vec, vec::Vec};

use super::{
    PartId,
    network::{Branch, Network},
    scalar::Scalar,
};

/// The current into each terminal of each part.
#[derive(Clone, Debug)]
pub(super) struct Currents<T> {
    amps: Vec<T>,
    /// Where each part's terminals begin, and the end.
    start: Vec<usize>,
}

impl<T: Scalar> Currents<T> {
    /// By the laws of branches and tubes; into wires and sources what is left over at their nodes. A wire that closes a
    /// loop of wires is left without current.
    pub(super) fn new(network: &Network, branch_amps: impl Fn(&Branch) -> T, tube_amps: impl Fn(usize) -> T) -> Self {
        let mut start = vec![0];
        for terminals in &network.terminals {
            start.push(start[start.len() - 1] + terminals);
        }
        let mut currents = Currents { amps: vec![T::ZERO; start[start.len() - 1]], start };
        let mut leaving = vec![T::ZERO; network.row.len()];
        for branch in &network.branches {
            let amps = branch_amps(branch);
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
        for tie in network.rigid.tree.iter().rev() {
            let amps = leaving[tie.a.0];
            currents.pass(tie.part, (tie.ends.1, tie.ends.0), amps);
            leaving[tie.b.0] += amps;
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
