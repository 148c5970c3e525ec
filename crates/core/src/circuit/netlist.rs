use alloc::vec::Vec;

use super::{Audio, DcPoint, Fault, GROUND, Kind, NodeId, Part, PartId, Periodic, Response};

/// Parts between named nodes: what every answer, drawing and parts list comes from.
///
/// ```
/// use tagstrip_core::circuit::{Circuit, GROUND, Kind, Part};
///
/// let mut circuit = Circuit::new();
/// let (supply, middle) = (circuit.node("supply"), circuit.node("middle"));
/// circuit.add(Part::new("B1", "supply", &[supply, GROUND], Kind::Source { volts: 90.0, signal: 0.0 }));
/// circuit.add(Part::new("R1", "top", &[supply, middle], Kind::Resistor { ohms: 2e3 }));
/// let bottom = circuit.add(Part::new("R2", "bottom", &[middle, GROUND], Kind::Resistor { ohms: 1e3 }));
/// assert!((circuit.dc().unwrap().volts(middle) - 30.0).abs() < 1e-12);
///
/// circuit.set(bottom, Kind::Resistor { ohms: 4e3 });
/// assert!((circuit.dc().unwrap().volts(middle) - 60.0).abs() < 1e-12);
/// ```
#[derive(Clone, Debug)]
pub struct Circuit {
    names: Vec<&'static str>,
    parts: Vec<Part>,
}

impl Default for Circuit {
    fn default() -> Self {
        Self::new()
    }
}

impl Circuit {
    /// Ground and nothing else.
    #[must_use]
    pub fn new() -> Self {
        Circuit { names: alloc::vec!["ground"], parts: Vec::new() }
    }

    /// The node of that name, made if there is none.
    pub fn node(&mut self, name: &'static str) -> NodeId {
        self.find_node(name).unwrap_or_else(|| {
            self.names.push(name);
            NodeId(self.names.len() - 1)
        })
    }

    /// The node of that name, if there is one.
    #[must_use]
    pub fn find_node(&self, name: &str) -> Option<NodeId> {
        self.names.iter().position(|known| *known == name).map(NodeId)
    }

    /// Name of a node of this circuit.
    #[must_use]
    pub fn name(&self, node: NodeId) -> &'static str {
        self.names.get(node.0).copied().unwrap_or("ground")
    }

    /// Every node with its name, ground first.
    pub fn nodes(&self) -> impl Iterator<Item = (NodeId, &'static str)> + '_ {
        self.names.iter().enumerate().map(|(index, name)| (NodeId(index), *name))
    }

    /// Adds a part. A terminal that its list of nodes leaves out, or that names a node of another circuit, is at ground.
    pub fn add(&mut self, mut part: Part) -> PartId {
        for node in part.nodes.iter_mut().filter(|node| node.0 >= self.names.len()) {
            *node = GROUND;
        }
        self.parts.push(part);
        PartId(self.parts.len() - 1)
    }

    /// Every part, in the order added.
    pub fn parts(&self) -> impl Iterator<Item = (PartId, &Part)> + '_ {
        self.parts.iter().enumerate().map(|(index, part)| (PartId(index), part))
    }

    /// A part of this circuit.
    #[must_use]
    pub fn part(&self, id: PartId) -> Option<&Part> {
        self.parts.get(id.0)
    }

    /// The part with that reference.
    #[must_use]
    pub fn find(&self, reference: &str) -> Option<PartId> {
        self.parts.iter().position(|part| part.reference == reference).map(PartId)
    }

    /// Changes what a part is or its value; everything else stays.
    pub fn set(&mut self, id: PartId, kind: Kind) {
        if let Some(part) = self.parts.get_mut(id.0) {
            part.kind = kind;
        }
    }

    /// Takes a part out that was added last, such as a meter: the rest keeps its ids.
    pub fn remove_last(&mut self) -> Option<Part> {
        self.parts.pop()
    }

    /// The direct volts and amperes everywhere.
    ///
    /// Newton steps on the tubes' exact derivatives, damped by the natural monotonicity test, then pseudo-transient
    /// continuation where that stalls; then polished until rounding is all that is left. A node that no direct current
    /// can reach stands where the leakage of its capacitors (a time constant of thirty thousand years) puts it.
    ///
    /// # Errors
    /// [`Fault::NoConvergence`], [`Fault::Shorted`], [`Fault::Singular`].
    ///
    /// # Source
    /// P. Deuflhard, *Newton Methods for Nonlinear Problems* (2004), section 3.1; C. T. Kelley and D. E. Keyes,
    /// "Convergence analysis of pseudo-transient continuation", SIAM J. Numer. Anal. 35 (1998).
    pub fn dc(&self) -> Result<DcPoint, Fault> {
        DcPoint::find(self, None)
    }

    /// As [`Circuit::dc`], started from the volts of a point nearby: a part's value changed, a meter put on.
    pub fn dc_from(&self, start: &DcPoint) -> Result<DcPoint, Fault> {
        DcPoint::find(self, Some(start))
    }

    /// The answer to small signals around a dc point: of this circuit, or of it with its switches and capacitors
    /// otherwise (whatever leaves the tubes' direct volts as they are).
    pub fn response(&self, point: &DcPoint) -> Result<Response, Fault> {
        Response::new(self, point)
    }

    /// The circuit made ready for steady states at a fundamental frequency, with that many samples a period (32 will do
    /// for most; the work grows with their cube).
    pub fn periodic(&self, point: &DcPoint, hertz: f64, samples: usize) -> Result<Periodic, Fault> {
        Periodic::new(self, point, hertz, samples)
    }

    /// The circuit made ready for sound: samples of the sources' emf at `rate` a second, heard at a node.
    pub fn audio(&self, point: &DcPoint, output: NodeId, rate: f64) -> Result<Audio, Fault> {
        Audio::new(self, point, output, rate)
    }

    pub(super) fn node_count(&self) -> usize {
        self.names.len()
    }

    pub(super) fn part_list(&self) -> &[Part] {
        &self.parts
    }
}
