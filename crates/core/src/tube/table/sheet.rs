//! What a data sheet says of a tube's currents: the data that a law is fitted to.

/// An operating point as printed under "characteristics"; any of the last three may be missing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Plate to cathode, in V.
    pub plate_volts: f64,
    /// Grid to cathode, in V.
    pub grid_volts: f64,
    /// Plate current, in A.
    pub plate_amps: f64,
    /// Transconductance, in S.
    pub gm: Option<f64>,
    /// Plate resistance, in Ω.
    pub plate_resistance: Option<f64>,
    /// Amplification factor; used where `gm` times `plate_resistance` is not given.
    pub mu: Option<f64>,
    /// Where it was read.
    pub source: &'static str,
}

/// A grid voltage at which the plate current has fallen to about 10 µA.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cutoff {
    /// Plate to cathode, in V.
    pub plate_volts: f64,
    /// Grid to cathode, in V.
    pub grid_volts: f64,
    /// Where it was read.
    pub source: &'static str,
}

/// A point read by eye off a family of plate curves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Plate to cathode, in V.
    pub plate_volts: f64,
    /// Grid to cathode, in V.
    pub grid_volts: f64,
    /// Plate current, in A.
    pub plate_amps: f64,
}

/// All that is known of one tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sheet<'a> {
    /// Operating points.
    pub points: &'a [Point],
    /// Cut-offs.
    pub cutoffs: &'a [Cutoff],
    /// Points off the curves.
    pub readings: &'a [Reading],
    /// Where the readings come from.
    pub readings_source: &'static str,
    /// Printed or read like the rest, and doubted: not fitted to.
    pub set_aside: &'a [Reading],
    /// Why.
    pub set_aside_reason: &'static str,
}

impl Sheet<'_> {
    /// Nothing known; for sheets to start from.
    pub const EMPTY: Sheet<'static> =
        Sheet { points: &[], cutoffs: &[], readings: &[], readings_source: "", set_aside: &[], set_aside_reason: "" };
}

impl Point {
    /// A point with gm and plate resistance.
    pub(super) const fn whole(
        volts: (f64, f64),
        plate_amps: f64,
        gm: f64,
        plate_resistance: f64,
        source: &'static str,
    ) -> Self {
        Self { gm: Some(gm), plate_resistance: Some(plate_resistance), ..Self::current(volts, plate_amps, source) }
    }

    /// A point with nothing but its current; volts are those of plate and grid.
    pub(super) const fn current(volts: (f64, f64), plate_amps: f64, source: &'static str) -> Self {
        let (plate_volts, grid_volts) = volts;
        Self { plate_volts, grid_volts, plate_amps, gm: None, plate_resistance: None, mu: None, source }
    }
}

impl Cutoff {
    pub(super) const fn at(plate_volts: f64, grid_volts: f64, source: &'static str) -> Self {
        Self { plate_volts, grid_volts, source }
    }
}

/// A point read by eye off a plot.
pub(super) const fn eye(plate_volts: f64, grid_volts: f64, plate_amps: f64) -> Reading {
    Reading { plate_volts, grid_volts, plate_amps }
}
