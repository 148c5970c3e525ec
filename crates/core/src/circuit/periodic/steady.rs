use alloc::vec::Vec;
use core::f64::consts::FRAC_1_SQRT_2;

use super::{
    super::{Complex, NodeId, PartId},
    Bound,
};

/// One period of a circuit under drive.
#[derive(Clone, Debug)]
pub struct Steady {
    drive: f64,
    bound: Option<Bound>,
    /// By harmonic, then node.
    phasors: Vec<Vec<Complex>>,
    /// Tube, highest grid volts, least plate current.
    extremes: Vec<(PartId, f64, f64)>,
    unresolved: f64,
}

impl Steady {
    pub(super) fn new(
        drive: f64,
        bound: Option<Bound>,
        phasors: Vec<Vec<Complex>>,
        extremes: Vec<(PartId, f64, f64)>,
        unresolved: f64,
    ) -> Self {
        Steady { drive, bound, phasors, extremes, unresolved }
    }

    /// What the samples could not tell of the wave, about: the highest harmonics that they do tell of a plate current,
    /// against its fundamental. The bounds and low harmonics are good to about this.
    #[must_use]
    pub const fn unresolved(&self) -> f64 {
        self.unresolved
    }

    /// How many times the sources' signal: where that is 1, the peak volts of the emf.
    #[must_use]
    pub const fn drive(&self) -> f64 {
        self.drive
    }

    /// The bound that set the drive, where one did.
    #[must_use]
    pub const fn bound(&self) -> Option<Bound> {
        self.bound
    }

    /// Amplitude (peak) and phase of a harmonic at a node: 1 the fundamental, up to 7. Harmonic 0 is the shift of the
    /// mean from the dc point.
    #[must_use]
    pub fn harmonic(&self, node: NodeId, harmonic: usize) -> Complex {
        let volts = self.phasors.get(harmonic).and_then(|volts| volts.get(node.index()));
        volts.copied().unwrap_or(Complex::ZERO)
    }

    /// How far the mean volts of a node have moved from the dc point.
    #[must_use]
    pub fn shift(&self, node: NodeId) -> f64 {
        self.harmonic(node, 0).re
    }

    /// Volts rms of the fundamental at a node.
    #[must_use]
    pub fn volts_rms(&self, node: NodeId) -> f64 {
        self.harmonic(node, 1).magnitude() * FRAC_1_SQRT_2
    }

    /// Root of the squares of the 2nd to 7th harmonic over the fundamental, a fraction; 0 where there is no fundamental.
    #[must_use]
    pub fn distortion(&self, node: NodeId) -> f64 {
        let squares: f64 = (2..self.phasors.len()).map(|harmonic| self.harmonic(node, harmonic).square()).sum();
        let ratio = crate::root::sqrt(squares) / self.harmonic(node, 1).magnitude();
        if ratio.is_finite() { ratio } else { 0.0 }
    }

    /// Highest volts of a tube's grid to its cathode over the period.
    #[must_use]
    pub fn grid_peak(&self, tube: PartId) -> Option<f64> {
        self.extremes.iter().find(|extreme| extreme.0 == tube).map(|extreme| extreme.1)
    }

    /// Least plate current of a tube over the period.
    #[must_use]
    pub fn least_amps(&self, tube: PartId) -> Option<f64> {
        self.extremes.iter().find(|extreme| extreme.0 == tube).map(|extreme| extreme.2)
    }
}
