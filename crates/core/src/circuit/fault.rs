/// Why a circuit has no answer. Each names the node it was found at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fault {
    /// The dc point was not found within the bound on the work.
    NoConvergence {
        /// Where the last step was still largest.
        node: &'static str,
        /// How large it was, in volts.
        residual: f64,
    },
    /// The volts of a node have no single value: an undamped resonance, say.
    Singular {
        /// The node.
        node: &'static str,
    },
    /// Sources of different volts are joined without resistance.
    Shorted {
        /// A node between them.
        node: &'static str,
    },
}

impl Fault {
    /// The node it was found at.
    #[must_use]
    pub const fn node(&self) -> &'static str {
        match self {
            Fault::NoConvergence { node, .. } | Fault::Singular { node } | Fault::Shorted { node } => node,
        }
    }
}
