use super::Prefix;

/// What a figure counts. Figures are kept in these units without a prefix.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Volts.
    Volt,
    /// Amperes.
    Ampere,
    /// Ohms.
    Ohm,
    /// Farads.
    Farad,
    /// Henries.
    Henry,
    /// Hertz, once cycles per second.
    Hertz,
    /// Metres; reads inches and wire gauges too.
    Metre,
    /// Watts.
    Watt,
    /// Volt-amperes.
    VoltAmpere,
    /// Seconds.
    Second,
    /// Degrees Celsius; reads Fahrenheit too.
    Celsius,
    /// A plain figure or a fraction; reads `20 %` as 0.2.
    One,
    /// Decibels.
    Decibel,
    /// Percent, kept as percent.
    Percent,
    /// Degrees of angle.
    Degree,
    /// Perveance of a tube, A/V^1.5.
    Perveance,
    /// Per metre; reads turns per inch too.
    PerMetre,
    /// Sensitivity of a meter.
    OhmPerVolt,
    /// Siemens, once mhos.
    Siemens,
    /// Sensitivity of a microphone; reads decibels too.
    VoltPerPascal,
}

impl Unit {
    /// Every unit.
    pub const ALL: [Unit; 20] = [
        Unit::Volt,
        Unit::Ampere,
        Unit::Ohm,
        Unit::Farad,
        Unit::Henry,
        Unit::Hertz,
        Unit::Metre,
        Unit::Watt,
        Unit::VoltAmpere,
        Unit::Second,
        Unit::Celsius,
        Unit::One,
        Unit::Decibel,
        Unit::Percent,
        Unit::Degree,
        Unit::Perveance,
        Unit::PerMetre,
        Unit::OhmPerVolt,
        Unit::Siemens,
        Unit::VoltPerPascal,
    ];

    /// The symbol, by which the unit crosses to JavaScript.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Unit::Volt => "V",
            Unit::Ampere => "A",
            Unit::Ohm => "Ω",
            Unit::Farad => "F",
            Unit::Henry => "H",
            Unit::Hertz => "Hz",
            Unit::Metre => "m",
            Unit::Watt => "W",
            Unit::VoltAmpere => "VA",
            Unit::Second => "s",
            Unit::Celsius => "°C",
            Unit::One => "1",
            Unit::Decibel => "dB",
            Unit::Percent => "%",
            Unit::Degree => "°",
            Unit::Perveance => "A/V^1.5",
            Unit::PerMetre => "1/m",
            Unit::OhmPerVolt => "Ω/V",
            Unit::Siemens => "S",
            Unit::VoltPerPascal => "V/Pa",
        }
    }

    /// The unit with this symbol.
    #[must_use]
    pub fn of(symbol: &str) -> Option<Unit> {
        Unit::ALL.into_iter().find(|unit| unit.symbol() == symbol)
    }

    /// The prefixes that make sense with the unit, smallest first.
    #[must_use]
    pub const fn prefixes(self) -> &'static [Prefix] {
        use Prefix::{Giga, Kilo, Mega, Micro, Milli, Nano, Pico, Tera};
        match self {
            Unit::Ohm => &[Milli, Kilo, Mega, Giga, Tera],
            Unit::OhmPerVolt => &[Kilo, Mega],
            Unit::Farad => &[Pico, Nano, Micro, Milli],
            Unit::Henry | Unit::Watt | Unit::VoltAmpere | Unit::Volt => &[Nano, Micro, Milli, Kilo, Mega],
            Unit::Hertz => &[Milli, Kilo, Mega, Giga],
            Unit::Ampere => &[Pico, Nano, Micro, Milli, Kilo, Mega],
            Unit::Second | Unit::Siemens | Unit::Perveance | Unit::VoltPerPascal => &[Nano, Micro, Milli],
            Unit::Metre => &[Nano, Micro, Milli, Kilo],
            Unit::Celsius | Unit::One | Unit::Decibel | Unit::Percent | Unit::Degree | Unit::PerMetre => &[],
        }
    }

    /// Whether the unit is written with this prefix.
    #[must_use]
    pub fn takes(self, prefix: Prefix) -> bool {
        self.prefixes().contains(&prefix)
    }
}
