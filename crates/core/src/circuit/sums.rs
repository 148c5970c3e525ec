//! Derivatives by part and figure, put together from the branches.

use alloc::{vec, vec::Vec};

use super::{Parameter, PartId, network::Network, scalar::Scalar};

/// A sum for each figure of each part.
pub(super) struct Sums<T>(Vec<(PartId, Parameter, T)>);

impl<T: Scalar> Sums<T> {
    pub(super) fn new() -> Self {
        Sums(Vec::new())
    }

    pub(super) fn add(&mut self, part: PartId, parameter: Parameter, value: T) {
        if parameter == Parameter::Leakage {
            return;
        }
        match self.0.iter_mut().find(|sum| (sum.0, sum.1) == (part, parameter)) {
            Some(sum) => sum.2 += value,
            // The sums stay in the order of the parts, and of one part in the order they came.
            None => self.0.insert(self.0.partition_point(|sum| sum.0 <= part), (part, parameter, value)),
        }
    }

    /// In the order of the parts.
    pub(super) fn sorted(self) -> Vec<(PartId, Parameter, T)> {
        self.0
    }
}

/// By the volts of each source: the sum, over the nodes that the source lifts, of `by_node` (derivative by the volts of
/// that node above its class).
pub(super) fn by_source<T: Scalar>(network: &Network, mut by_node: Vec<T>) -> Vec<(PartId, T)> {
    let mut sums = vec![];
    for tie in network.rigid.tree.iter().rev() {
        let lifted = by_node[tie.a.0];
        by_node[tie.b.0] += lifted;
        if tie.source {
            sums.push((tie.part, if tie.ends.0 == 0 { lifted } else { T::ZERO - lifted }));
        }
    }
    sums
}
