//! What a tube can stand, and what its heater needs.

/// Greatest figures, each section by itself.
///
/// Where makers or years differ the lowest figure stands, since nobody knows the age of the tube in the box.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ratings {
    /// Plate to cathode, in V.
    pub plate_volts: f64,
    /// Plate dissipation, in W.
    pub plate_watts: f64,
    /// Mean cathode current, in A.
    pub cathode_amps: Option<f64>,
    /// Heater to cathode, either way, in V.
    pub heater_cathode_volts: f64,
    /// Grid resistor with cathode bias, in Ω.
    pub grid_ohms: Option<f64>,
    /// Grid resistor with fixed bias, in Ω.
    pub grid_ohms_fixed_bias: Option<f64>,
    /// `design centre` allows for the line's and the parts' usual spread; `design maximum` does not.
    pub system: &'static str,
    /// Where it was read.
    pub source: &'static str,
}

/// A heater.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heater {
    /// End to end, in V.
    pub volts: f64,
    /// End to end, in A.
    pub amps: f64,
    /// Whether it has a tap in its middle: its halves in parallel take half the volts and twice the amperes.
    pub tapped: bool,
}

/// The 12.6 V heater of the twin triodes that may be wired for 6.3 V.
pub(super) const TAPPED: Heater = Heater { volts: 12.6, amps: 0.15, tapped: true };

/// A 6.3 V heater.
pub(super) const fn heater(amps: f64) -> Heater {
    Heater { volts: 6.3, amps, tapped: false }
}
