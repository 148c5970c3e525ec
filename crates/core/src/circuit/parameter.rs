use super::PartId;

/// Which figure of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Parameter {
    /// Resistance: of a resistor, a potentiometer end to end, a coil's winding.
    Ohms,
    /// Of a potentiometer.
    Setting,
    /// Of a capacitor.
    Farads,
    /// Of a coil.
    Henries,
    /// Of a source.
    Volts,
    /// A source's alternating emf.
    Signal,
    /// Of a tube.
    Perveance,
    /// Of a tube.
    Mu,
    /// Of a tube.
    GridPlateFarads,
    /// Of a tube.
    GridCathodeFarads,
    /// Of a tube.
    PlateCathodeFarads,
    /// What holds a node that nothing else defines; nobody buys it.
    Leakage,
}

/// How a direct voltage or current follows one figure of one part, the others staying.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartDerivative {
    /// The part.
    pub part: PartId,
    /// Its figure.
    pub parameter: Parameter,
    /// Volts (or amperes) per unit of the figure's natural logarithm: a hundredth of it per cent of change.
    pub by_ln: f64,
}

/// How the response at one frequency follows one figure of one part, the others staying; what the figure does to the dc
/// point, and that to the tubes' gm and gp, is in it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResponseDerivative {
    /// The part.
    pub part: PartId,
    /// Its figure.
    pub parameter: Parameter,
    /// d ln(magnitude) / d ln(figure): per cent of magnitude per cent of change.
    pub ln_gain_by_ln: f64,
    /// d phase / d ln(figure), in radians.
    pub radians_by_ln: f64,
}
