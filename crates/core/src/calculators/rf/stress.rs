use crate::circuit::{Circuit, Complex, NodeId, PartId, Phasors};

/// A circuit at its carrier, its amplitudes scaled to the watts that flow.
pub(in crate::calculators) struct Stressed<'r> {
    pub circuit: &'r Circuit,
    pub phasors: Phasors<'r>,
    /// Volts and amperes, peak, per volt and ampere of the phasors.
    pub scale: f64,
    /// How far full modulation raises the peaks: 2, or 1 without.
    pub peaks: f64,
}

impl Stressed<'_> {
    /// Peak volts of a node to ground, unmodulated.
    pub fn peak_volts(&self, node: NodeId) -> f64 {
        self.scale * self.phasors.volts(node).magnitude()
    }

    /// Peak volts between the first two ends of a part, unmodulated.
    pub fn across(&self, part: PartId) -> f64 {
        let volts = |k: usize| {
            let node = self.circuit.part(part).and_then(|part| part.nodes.get(k));
            node.map_or(Complex::ZERO, |node| self.phasors.volts(*node))
        };
        self.scale * (volts(0) - volts(1)).magnitude()
    }

    /// Amperes rms through a part, unmodulated.
    pub fn amps(&self, part: PartId) -> f64 {
        self.scale * self.phasors.terminal_amps(part, 0).magnitude() * core::f64::consts::FRAC_1_SQRT_2
    }
}
