//! Gas-filled regulator tubes, as data: two cold electrodes that hold their volts over a range of current.

/// One type of gas regulator.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Regulator {
    /// The name it is found under.
    pub name: &'static str,
    /// Other names of the same tube.
    pub aliases: &'static [&'static str],
    /// Plate to cathode while it glows, in V.
    pub volts: f64,
    /// What a good one may hold, least and most, in V.
    pub volts_between: (f64, f64),
    /// What the supply must reach for any good one to strike, in V.
    pub striking_volts: f64,
    /// Under this it may go out, in A.
    pub amps_least: f64,
    /// Over this it wears fast, in A.
    pub amps_most: f64,
    /// How much the volts move over that range, at most, in V.
    pub regulation_volts: f64,
    /// The socket: `octal` or `miniature_7`.
    pub base: &'static str,
    /// The maker's designation of the basing.
    pub arrangement: &'static str,
    /// A pin of the plate and one of the cathode.
    pub pins: (u8, u8),
    /// Where the figures were read.
    pub source: &'static str,
}

/// Most capacitance across a gas regulator before it may oscillate, in F (RCA data sheet of the 0A2).
pub const REGULATOR_FARADS: f64 = 0.1e-6;

const RCA: &str = "RCA data sheet, from memory";
const RCA_IN_PART: &str = "RCA data sheet, from memory; volts or current range also seen in a public transcription";

/// 5BO: plate at 1 and 5, cathode at 2, 4 and 7 (RETMA basing, from memory).
const MINIATURE: Regulator = Regulator {
    name: "",
    aliases: &[],
    volts: 0.0,
    volts_between: (0.0, 0.0),
    striking_volts: 0.0,
    amps_least: 5e-3,
    amps_most: 30e-3,
    regulation_volts: 0.0,
    base: "miniature_7",
    arrangement: "5BO",
    pins: (1, 2),
    source: RCA,
};

/// 4AJ: plate at 5, cathode at 2, and a jumper between 3 and 7 (RETMA basing, from memory).
const OCTAL: Regulator = Regulator { amps_most: 40e-3, base: "octal", arrangement: "4AJ", pins: (5, 2), ..MINIATURE };

/// Every gas regulator of the table, by rising volts.
static REGULATORS: [Regulator; 6] = [
    Regulator {
        name: "0A3",
        aliases: &["VR75", "0A3/VR75"],
        volts: 75.0,
        volts_between: (68.0, 85.0),
        striking_volts: 105.0,
        regulation_volts: 6.5,
        ..OCTAL
    },
    Regulator {
        name: "0C2",
        volts: 75.0,
        volts_between: (68.0, 85.0),
        striking_volts: 105.0,
        regulation_volts: 4.5,
        ..MINIATURE
    },
    Regulator {
        name: "0B2",
        volts: 108.0,
        volts_between: (101.0, 114.0),
        striking_volts: 133.0,
        regulation_volts: 4.0,
        ..MINIATURE
    },
    Regulator {
        name: "0C3",
        aliases: &["VR105", "0C3/VR105"],
        volts: 108.0,
        volts_between: (105.0, 112.0),
        striking_volts: 133.0,
        regulation_volts: 4.0,
        source: RCA_IN_PART,
        ..OCTAL
    },
    Regulator {
        name: "0A2",
        volts: 150.0,
        volts_between: (140.0, 168.0),
        striking_volts: 185.0,
        regulation_volts: 6.0,
        source: RCA_IN_PART,
        ..MINIATURE
    },
    Regulator {
        name: "0D3",
        aliases: &["VR150", "0D3/VR150"],
        volts: 153.0,
        volts_between: (142.0, 165.0),
        striking_volts: 185.0,
        regulation_volts: 5.5,
        source: RCA_IN_PART,
        ..OCTAL
    },
];

/// Every name that [`regulator`] knows and that a list shows.
pub const REGULATOR_NAMES: &[&str] = &["0A3", "VR75", "0C2", "0B2", "0C3", "VR105", "0A2", "0D3", "VR150"];

/// Every gas regulator of the table.
#[must_use]
pub fn regulators() -> &'static [Regulator] {
    &REGULATORS
}

/// The regulator of that name or alias, in capitals or not.
#[must_use]
pub fn regulator(name: &str) -> Option<&'static Regulator> {
    let name = name.trim();
    REGULATORS
        .iter()
        .find(|row| core::iter::once(&row.name).chain(row.aliases).any(|own| own.eq_ignore_ascii_case(name)))
}
