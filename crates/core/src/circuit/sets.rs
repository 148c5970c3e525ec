use alloc::vec::Vec;

/// Which things hang together.
pub(super) struct Sets(Vec<usize>);

impl Sets {
    pub(super) fn apart(members: usize) -> Self {
        Sets((0..members).collect())
    }

    /// The lowest member, which stands for the whole set.
    pub(super) fn of(&self, mut member: usize) -> usize {
        while self.0[member] != member {
            member = self.0[member];
        }
        member
    }

    /// False where they hang together already.
    pub(super) fn join(&mut self, one: usize, other: usize) -> bool {
        let (one, other) = (self.of(one), self.of(other));
        let (low, high) = if one < other { (one, other) } else { (other, one) };
        self.0[high] = low;
        low != high
    }
}
