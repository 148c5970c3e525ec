//! Vacuum rectifiers, as data: two plates, each passing i = k·v^1.5.

/// One type of rectifier tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RectifierTube {
    /// The name it is found under.
    pub name: &'static str,
    /// Other names of the same tube.
    pub aliases: &'static [&'static str],
    /// Heater or filament, in V and A.
    pub heater: (f64, f64),
    /// Whether the filament is the cathode: quick to warm, and at B+.
    pub filament: bool,
    /// Published drop of one plate, in V at A: the law goes through it.
    pub drop: (f64, f64),
    /// Peak inverse volts that a plate stands.
    pub inverse_volts: f64,
    /// Peak current of a plate, steady, in A.
    pub peak_amps: f64,
    /// Direct current of both plates together, in A.
    pub amps: f64,
    /// Volts rms to a plate with a capacitor input.
    pub rms_volts: f64,
    /// Largest first capacitor, in F.
    pub farads: Option<f64>,
    /// Least resistance in series with a plate at `rms_volts`, winding included, in Ω.
    pub ohms: Option<f64>,
    /// Plate 1, plate 2, cathode or filament taken as it, and the heater's two pins.
    pub pins: [u8; 5],
    /// The socket.
    pub base: &'static str,
    /// The maker's designation of the basing.
    pub arrangement: &'static str,
    /// Where it was read.
    pub source: &'static str,
}

impl RectifierTube {
    /// k of one plate, in A/V^1.5, from the published drop.
    #[must_use]
    pub fn perveance(&self) -> f64 {
        let (volts, amps) = self.drop;
        amps / (volts * crate::root::sqrt(volts))
    }

    /// Seconds until it passes current: a cathode needs eleven (makers' sheets), a filament two (common practice, no
    /// source).
    #[must_use]
    pub fn warm_seconds(&self) -> f64 {
        if self.filament { 2.0 } else { 11.0 }
    }
}

/// Octal, filament 2 and 8, plates 4 and 6 (RETMA 5T, from memory).
const OCTAL_FILAMENT: RectifierTube = RectifierTube {
    name: "",
    aliases: &[],
    heater: (5.0, 2.0),
    filament: true,
    drop: (1.0, 1.0),
    inverse_volts: 0.0,
    peak_amps: 0.0,
    amps: 0.0,
    rms_volts: 0.0,
    farads: None,
    ohms: None,
    pins: [6, 4, 8, 2, 8],
    base: "octal",
    arrangement: "5T",
    source: "",
};

const T_5Y3GT: RectifierTube = RectifierTube {
    name: "5Y3GT",
    aliases: &["5Y3"],
    drop: (60.0, 125e-3),
    inverse_volts: 1400.0,
    peak_amps: 400e-3,
    amps: 125e-3,
    rms_volts: 350.0,
    farads: Some(20e-6),
    ohms: Some(50.0),
    source: "RCA RC-19, from memory; 20 µF and 60 V at 125 mA seen in a public transcription",
    ..OCTAL_FILAMENT
};

/// Every rectifier tube of the table.
static RECTIFIERS: [RectifierTube; 9] = [
    T_5Y3GT,
    RectifierTube {
        name: "80",
        aliases: &[],
        pins: [2, 3, 4, 1, 4],
        base: "ux4",
        arrangement: "4C",
        source: "the four-pin equal of the 5Y3GT (seen in a public transcription); figures RCA RC-19, from memory",
        ..T_5Y3GT
    },
    RectifierTube {
        name: "5U4GB",
        heater: (5.0, 3.0),
        drop: (50.0, 275e-3),
        inverse_volts: 1550.0,
        peak_amps: 1.0,
        amps: 275e-3,
        rms_volts: 450.0,
        farads: Some(40e-6),
        ohms: Some(67.0),
        source: "RCA RC-22, from memory; 1 A, 3 A and 40 µF seen in a public transcription",
        ..OCTAL_FILAMENT
    },
    RectifierTube {
        name: "5U4G",
        heater: (5.0, 3.0),
        drop: (44.0, 225e-3),
        inverse_volts: 1550.0,
        peak_amps: 675e-3,
        amps: 225e-3,
        rms_volts: 450.0,
        farads: Some(40e-6),
        ohms: Some(75.0),
        source: "RCA, from memory; older sheets have 58 V at 225 mA",
        ..OCTAL_FILAMENT
    },
    RectifierTube {
        name: "5T4",
        drop: (45.0, 225e-3),
        inverse_volts: 1550.0,
        peak_amps: 675e-3,
        amps: 225e-3,
        rms_volts: 450.0,
        farads: Some(40e-6),
        ohms: Some(150.0),
        source: "a public transcription of the 5T4 sheet",
        ..OCTAL_FILAMENT
    },
    RectifierTube {
        name: "5AR4",
        aliases: &["GZ34"],
        heater: (5.0, 1.9),
        filament: false,
        drop: (17.0, 225e-3),
        inverse_volts: 1500.0,
        peak_amps: 750e-3,
        amps: 250e-3,
        rms_volts: 450.0,
        farads: Some(60e-6),
        ohms: Some(150.0),
        arrangement: "5DA",
        source: "Philips and RCA sheets, from memory; the design-maximum sheet has 1700 V, 825 mA and 40 µF",
        ..OCTAL_FILAMENT
    },
    RectifierTube {
        name: "5V4G",
        aliases: &["5V4"],
        filament: false,
        drop: (25.0, 175e-3),
        inverse_volts: 1400.0,
        peak_amps: 525e-3,
        amps: 175e-3,
        rms_volts: 375.0,
        farads: Some(10e-6),
        ohms: Some(100.0),
        arrangement: "5L",
        source: "RCA, from memory; its capacitor-input row is doubtful",
        ..OCTAL_FILAMENT
    },
    RectifierTube {
        name: "6X4",
        aliases: &[],
        heater: (6.3, 0.6),
        filament: false,
        drop: (22.0, 70e-3),
        inverse_volts: 1250.0,
        peak_amps: 210e-3,
        amps: 70e-3,
        rms_volts: 325.0,
        farads: Some(10e-6),
        ohms: Some(525.0),
        pins: [1, 6, 7, 3, 4],
        base: "miniature_7",
        arrangement: "5BS",
        source: "RCA, from memory; the design-maximum sheet has 90 mA and 245 mA peak",
    },
    RectifierTube {
        name: "6CA4",
        aliases: &["EZ81"],
        heater: (6.3, 1.0),
        filament: false,
        drop: (20.0, 150e-3),
        inverse_volts: 1000.0,
        peak_amps: 450e-3,
        amps: 150e-3,
        rms_volts: 350.0,
        farads: Some(50e-6),
        ohms: Some(240.0),
        pins: [1, 7, 3, 4, 5],
        base: "noval",
        arrangement: "9M",
        source: "GE and Philips sheets, from memory",
    },
];

/// What a list of rectifiers shows, silicon first.
pub const RECTIFIER_NAMES: &[&str] =
    &["silicon", "5Y3GT", "80", "5U4GB", "5U4G", "5T4", "5AR4", "GZ34", "5V4G", "5V4", "6X4", "6CA4", "EZ81"];

/// Every rectifier tube of the table.
#[must_use]
pub fn rectifiers() -> &'static [RectifierTube] {
    &RECTIFIERS
}

/// The rectifier tube of that name or alias, in capitals or not.
#[must_use]
pub fn rectifier(name: &str) -> Option<&'static RectifierTube> {
    let name = name.trim();
    RECTIFIERS
        .iter()
        .find(|row| core::iter::once(&row.name).chain(row.aliases).any(|own| own.eq_ignore_ascii_case(name)))
}
