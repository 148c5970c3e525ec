use alloc::{string::String, vec::Vec};

use crate::tube::Triode;

/// A node of a [`Circuit`](super::Circuit).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct NodeId(pub(super) usize);

impl NodeId {
    /// Its place in the circuit's list of nodes.
    #[must_use]
    pub const fn index(self) -> usize {
        self.0
    }
}

/// The node against which all volts are counted.
pub const GROUND: NodeId = NodeId(0);

/// A part of a [`Circuit`](super::Circuit).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PartId(pub(super) usize);

impl PartId {
    /// Its place in the circuit's list of parts.
    #[must_use]
    pub const fn index(self) -> usize {
        self.0
    }
}

/// What a part is, and its value. The order of a part's nodes is written at each kind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Kind {
    /// Between two nodes; 0 is a piece of wire.
    Resistor {
        /// Its resistance.
        ohms: f64,
    },
    /// Between two nodes; open for dc.
    Capacitor {
        /// Its capacitance.
        farads: f64,
    },
    /// Between two nodes; its winding resistance is in series.
    Coil {
        /// Its inductance.
        henries: f64,
        /// Of its winding; 0 makes it a piece of wire for dc.
        ohms: f64,
    },
    /// Two windings that share a field, without resistance: one between the first two nodes, one between the last two; their
    /// first nodes go up together.
    Coupled {
        /// Of each winding alone.
        henries: [f64; 2],
        /// Their coupling k, over 0 and under 1.
        coupling: f64,
    },
    /// A voltage source: the first node is the positive one.
    Source {
        /// Direct volts.
        volts: f64,
        /// Amplitude of its alternating emf; all sources are in phase.
        signal: f64,
    },
    /// Top, wiper, bottom.
    Potentiometer {
        /// End to end.
        ohms: f64,
        /// Resistance between wiper and bottom as a fraction of the whole, 0 to 1.
        setting: f64,
    },
    /// Common, then the throws.
    Switch {
        /// The throw it stands at, from 0; `None` between two throws, open.
        closed: Option<usize>,
    },
    /// Plate, grid, cathode. No grid current is counted.
    Triode {
        /// Its current law.
        law: Triode,
        /// Between grid and plate.
        grid_plate_farads: f64,
        /// Between grid and cathode.
        grid_cathode_farads: f64,
        /// Between plate and cathode.
        plate_cathode_farads: f64,
    },
    /// A transformer's secondary: its ends; or one end, the tap and the other end. Followed in time only.
    Winding {
        /// Emf rms between two ends, or one end and the tap.
        volts: f64,
        /// Of one conducting path, the reflected primary included.
        ohms: f64,
    },
    /// Silicon: anode, cathode. Followed in time only.
    Diode {
        /// Constant forward drop.
        volts: f64,
    },
    /// A vacuum rectifier: its plates, then the cathode. Followed in time only.
    Rectifier {
        /// Of one plate, in A/V^1.5.
        perveance: f64,
    },
    /// A constant current drawn from the first node to the second. Followed in time only.
    Load {
        /// What it draws.
        amps: f64,
    },
    /// A gas regulator: anode, cathode. Followed in time only.
    Regulator {
        /// Where its law, followed down, has no current.
        volts: f64,
        /// Rise of its volts with its current.
        ohms: f64,
    },
}

impl Kind {
    /// Stable name of the sort of part.
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Kind::Resistor { .. } => "resistor",
            Kind::Capacitor { .. } => "capacitor",
            Kind::Coil { .. } => "coil",
            Kind::Coupled { .. } => "coupled",
            Kind::Source { .. } => "source",
            Kind::Potentiometer { .. } => "potentiometer",
            Kind::Switch { .. } => "switch",
            Kind::Triode { .. } => "triode",
            Kind::Winding { .. } => "winding",
            Kind::Diode { .. } => "diode",
            Kind::Rectifier { .. } => "rectifier",
            Kind::Load { .. } => "load",
            Kind::Regulator { .. } => "regulator",
        }
    }

    /// The one figure such a part is bought by, in SI: ohms, farads, henries, volts, or the amperes of a load.
    #[must_use]
    pub const fn value(&self) -> Option<f64> {
        match *self {
            Kind::Resistor { ohms } | Kind::Potentiometer { ohms, .. } => Some(ohms),
            Kind::Capacitor { farads } => Some(farads),
            Kind::Coil { henries, .. } | Kind::Coupled { henries: [henries, _], .. } => Some(henries),
            Kind::Source { volts, .. } | Kind::Winding { volts, .. } | Kind::Regulator { volts, .. } => Some(volts),
            Kind::Load { amps } => Some(amps),
            Kind::Switch { .. } | Kind::Triode { .. } | Kind::Diode { .. } | Kind::Rectifier { .. } => None,
        }
    }
}

/// A part between nodes.
#[derive(Clone, Debug, PartialEq)]
pub struct Part {
    /// As in the drawing: `R3`.
    pub reference: String,
    /// What it does there, as a code.
    pub role: &'static str,
    /// Path of the input it comes from; may be empty.
    pub field: String,
    /// In the order of its kind.
    pub nodes: Vec<NodeId>,
    /// What it is.
    pub kind: Kind,
    /// As a fraction; 0 where exact.
    pub tolerance: f64,
}

impl Part {
    /// An exact part that comes from no input.
    #[must_use]
    pub fn new(reference: impl Into<String>, role: &'static str, nodes: &[NodeId], kind: Kind) -> Self {
        Part { reference: reference.into(), role, field: String::new(), nodes: nodes.to_vec(), kind, tolerance: 0.0 }
    }

    /// The same part, from an input.
    #[must_use]
    pub fn from_field(mut self, path: impl Into<String>) -> Self {
        self.field = path.into();
        self
    }

    /// The same part, within a fraction of its value.
    #[must_use]
    pub fn within(mut self, tolerance: f64) -> Self {
        self.tolerance = tolerance;
        self
    }

    /// The node at one terminal; ground where the list is too short.
    pub(super) fn node(&self, terminal: usize) -> NodeId {
        self.nodes.get(terminal).copied().unwrap_or(GROUND)
    }
}
