use alloc::{vec, vec::Vec};

use super::{Rectifier, matrix::Square};

/// How the winding and the rectifiers are joined.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Connection {
    /// One rectifier, one pulse a cycle.
    HalfWave,
    /// Two pulses a cycle: two halves of a winding or a bridge.
    FullWave,
    /// Full-wave doubler: two equal capacitors in series are node 0.
    Doubler,
}

/// What leads to a node.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Series {
    /// A wire; at the first node, the capacitor right at the rectifier.
    None,
    /// A resistor, in Ω.
    Resistor(f64),
    /// A choke and its winding. At the first node its current cannot reverse.
    Choke {
        /// Its inductance, in H.
        henries: f64,
        /// Its winding, in Ω.
        ohms: f64,
    },
}

/// One section: what leads to a node and what stands from it to ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rung {
    /// From the node before.
    pub series: Series,
    /// In F; in a doubler the first is each of the two.
    pub farads: f64,
    /// Constant current drawn, in A; may be negative where a gas tube's law has an emf.
    pub amps: f64,
    /// Conductance of loads, in S.
    pub siemens: f64,
}

/// A winding, its rectifiers and the chain behind them.
#[derive(Clone, Debug, PartialEq)]
pub struct Chain {
    /// Peak emf of one conducting path, in V.
    pub peak: f64,
    /// Of the mains, in Hz.
    pub hertz: f64,
    /// Of one conducting path: secondary and reflected primary, in Ω.
    pub ohms: f64,
    /// How they are joined.
    pub connection: Connection,
    /// In the path of the current.
    pub rectifier: Rectifier,
    /// From the rectifier on; at least one.
    pub rungs: Vec<Rung>,
}

/// What stands for a node's capacitor where none is fitted: the wiring's own.
const STRAY: f64 = 10e-12;

/// What stands for the least of chokes.
const LEAD: f64 = 1e-9;

/// What stands for a wire.
pub(super) const WIRE: f64 = 1e-3;

/// Nothing in a supply is quicker than this, in s: a part that would be is taken as slow as this. It is a ten-thousandth
/// of a step, and keeps the slow parts' digits beside the quick ones'.
const QUICK: f64 = 1e-10;

impl Rung {
    /// Resistance of what leads here, in Ω.
    #[must_use]
    pub fn ohms(&self) -> f64 {
        match self.series {
            Series::None => 0.0,
            Series::Resistor(ohms) | Series::Choke { ohms, .. } => ohms,
        }
    }
}

/// Where each unknown of the chain stands. Unknowns are √C·v and √L·i: half their squares are energies, so that the
/// chain's matrix only turns them and lets them fall.
#[derive(Clone, Debug)]
pub(super) struct Layout {
    pub size: usize,
    /// Unknown of each node, and √C.
    pub nodes: Vec<(usize, f64)>,
    /// Unknown of each rung's choke, and √L; none for the others and for a choke at the rectifier.
    pub chokes: Vec<Option<(usize, f64)>>,
}

impl Chain {
    /// Seconds after which everything repeats, but that a doubler's two capacitors have changed places.
    #[must_use]
    pub fn period(&self) -> f64 {
        if self.connection == Connection::HalfWave { 1.0 / self.hertz } else { 0.5 / self.hertz }
    }

    /// What node 0 stands at where nothing at all is drawn, in V.
    #[must_use]
    pub fn open_volts(&self) -> f64 {
        f64::max(0.0, self.peak - self.rectifier.threshold()) / self.share()
    }

    /// Half-cycles of the mains in a period.
    pub(super) fn half_cycles(&self) -> usize {
        if self.connection == Connection::HalfWave { 2 } else { 1 }
    }

    /// The emf seen by the rectifier that can conduct, at an angle of the mains from its zero.
    pub(super) fn emf(&self, angle: f64) -> f64 {
        let emf = self.peak * libm::sin(angle);
        if self.connection == Connection::HalfWave { emf } else { libm::fabs(emf) }
    }

    /// The choke at the rectifier, if there is one: henries and its winding.
    #[must_use]
    pub fn input_choke(&self) -> Option<(f64, f64)> {
        match self.rungs.first()?.series {
            Series::Choke { henries, ohms } if henries > 0.0 => Some((henries, ohms)),
            _ => None,
        }
    }

    /// Resistance between the emf and node 0.
    pub(super) fn source_ohms(&self) -> f64 {
        self.ohms + self.rungs.first().map_or(0.0, Rung::ohms)
    }

    /// Share of the rectifier's current that reaches node 0, and share of node 0's volts that the rectifier sees.
    #[must_use]
    pub fn share(&self) -> f64 {
        if self.connection == Connection::Doubler { 0.5 } else { 1.0 }
    }

    pub(super) fn farads(&self, node: usize) -> f64 {
        let Some(rung) = self.rungs.get(node) else { return STRAY };
        let towards = |rung: Option<&Rung>| match rung.map(|rung| rung.series) {
            Some(Series::None) => 1.0 / WIRE,
            Some(Series::Resistor(ohms) | Series::Choke { henries: 0.0, ohms }) => 1.0 / f64::max(ohms, WIRE),
            _ => 0.0,
        };
        let before = if node == 0 { 0.0 } else { towards(Some(rung)) };
        let siemens = rung.siemens + before + towards(self.rungs.get(node + 1));
        let share = if node == 0 { self.share() } else { 1.0 };
        f64::max(rung.farads * share, f64::max(STRAY, QUICK * siemens))
    }

    pub(super) fn layout(&self) -> Layout {
        let (mut size, mut nodes, mut chokes) = (0, Vec::new(), Vec::new());
        for (k, rung) in self.rungs.iter().enumerate() {
            chokes.push(match rung.series {
                Series::Choke { henries, .. } if k > 0 && henries > 0.0 => {
                    size += 1;
                    Some((size - 1, crate::root::sqrt(f64::max(henries, f64::max(LEAD, QUICK * rung.ohms())))))
                }
                _ => None,
            });
            nodes.push((size, crate::root::sqrt(self.farads(k))));
            size += 1;
        }
        Layout { size, nodes, chokes }
    }

    /// The matrix A and the constant c of x' = A·x + b·i + c.
    pub(super) fn equations(&self, layout: &Layout) -> (Square, Vec<f64>) {
        let mut matrix = Square::zero(layout.size);
        let mut constant = vec![0.0; layout.size];
        for (k, rung) in self.rungs.iter().enumerate() {
            let (here, root) = layout.nodes[k];
            matrix.add(here, here, -rung.siemens / (root * root));
            constant[here] -= rung.amps / root;
            let Some((before, root_before)) = k.checked_sub(1).map(|k| layout.nodes[k]) else { continue };
            if let Some((choke, root_choke)) = layout.chokes[k] {
                matrix.add(choke, choke, -rung.ohms() / (root_choke * root_choke));
                for (node, root, sign) in [(before, root_before, 1.0), (here, root, -1.0)] {
                    let term = sign / (root * root_choke);
                    matrix.add(choke, node, term);
                    matrix.add(node, choke, -term);
                }
            } else {
                let siemens = 1.0 / f64::max(rung.ohms(), WIRE);
                matrix.add(here, here, -siemens / (root * root));
                matrix.add(before, before, -siemens / (root_before * root_before));
                matrix.add(here, before, siemens / (root * root_before));
                matrix.add(before, here, siemens / (root * root_before));
            }
        }
        (matrix, constant)
    }

    /// Direct volts at each node if node 0 stands at `volts`: conductances and currents of everything behind it.
    pub(super) fn ladder(&self, volts: f64) -> Vec<f64> {
        let mut here = volts;
        let mut nodes = vec![volts];
        for (rung, (amps, siemens)) in self.rungs.iter().zip(&self.behind()).skip(1) {
            here -= rung.ohms() * (amps + siemens * here);
            nodes.push(here);
        }
        nodes
    }

    /// Direct current that the chain draws with node 0 at `volts`: amps + siemens·volts, as a pair.
    #[must_use]
    pub fn drawn(&self) -> (f64, f64) {
        self.behind()[0]
    }

    /// What each node and all behind it draw, through what leads there, as amps + siemens·v; after the last, nothing.
    fn behind(&self) -> Vec<(f64, f64)> {
        let mut behind = vec![(0.0, 0.0); self.rungs.len() + 1];
        for (k, rung) in self.rungs.iter().enumerate().rev() {
            let (amps, siemens) = behind[k + 1];
            let (amps, siemens) = (amps + rung.amps, siemens + rung.siemens);
            let seen = if k == 0 { 0.0 } else { rung.ohms() };
            behind[k] = (amps / (1.0 + seen * siemens), siemens / (1.0 + seen * siemens));
        }
        behind
    }
}
