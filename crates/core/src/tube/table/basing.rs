//! Which electrode each pin of a socket leads to, seen from below and counted clockwise from the gap or the key.

/// What a pin leads to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Electrode {
    /// A plate, of section 1 or 2.
    Plate(u8),
    /// A grid, of section 1 or 2.
    Grid(u8),
    /// A cathode, of section 1 or 2.
    Cathode(u8),
    /// An end of the heater.
    Heater,
    /// The middle of the heater.
    HeaterTap,
    /// A shield inside the envelope; ground it.
    InternalShield,
    /// The metal shell, or nothing on a glass tube; ground it.
    Shell,
    /// Joined to something inside; leave it free.
    InternalConnection,
}

impl Electrode {
    /// 0 plate, 1 grid, 2 cathode of the first section; none for the rest.
    #[must_use]
    pub fn of_first_section(self) -> Option<usize> {
        match self {
            Electrode::Plate(1) => Some(0),
            Electrode::Grid(1) => Some(1),
            Electrode::Cathode(1) => Some(2),
            _ => None,
        }
    }

    /// The section it belongs to, from 1.
    #[must_use]
    pub fn section(self) -> Option<u8> {
        match self {
            Electrode::Plate(section) | Electrode::Grid(section) | Electrode::Cathode(section) => Some(section),
            _ => None,
        }
    }

    /// Its name as a code.
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Electrode::Plate(1) => "plate_1",
            Electrode::Plate(_) => "plate_2",
            Electrode::Grid(1) => "grid_1",
            Electrode::Grid(_) => "grid_2",
            Electrode::Cathode(1) => "cathode_1",
            Electrode::Cathode(_) => "cathode_2",
            Electrode::Heater => "heater",
            Electrode::HeaterTap => "heater_tap",
            Electrode::InternalShield => "internal_shield",
            Electrode::Shell => "shell",
            Electrode::InternalConnection => "internal_connection",
        }
    }
}

/// One pin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pin {
    /// Its number.
    pub pin: u8,
    /// What it leads to.
    pub electrode: Electrode,
}

/// A tube's base: the socket it needs and what its pins lead to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Basing {
    /// The socket: `octal`, `noval` or `miniature_7`.
    pub base: &'static str,
    /// The maker's designation of the arrangement, `9A`.
    pub arrangement: &'static str,
    /// In order; a number that is missing has no pin, or an unused one.
    pub pins: &'static [Pin],
    /// The pins to join to each side of the heater's supply, with a tapped heater's halves in parallel.
    pub heater: [&'static [u8]; 2],
    /// Where it was read.
    pub source: &'static str,
}

const fn pin(pin: u8, electrode: Electrode) -> Pin {
    Pin { pin, electrode }
}

use Electrode::{Cathode, Grid, Heater, HeaterTap, InternalConnection, InternalShield, Plate, Shell};

/// Twin triodes with a tapped heater.
pub(super) const NOVAL_9A: Basing = Basing {
    base: "noval",
    arrangement: "9A",
    pins: &[
        pin(1, Plate(2)),
        pin(2, Grid(2)),
        pin(3, Cathode(2)),
        pin(4, Heater),
        pin(5, Heater),
        pin(6, Plate(1)),
        pin(7, Grid(1)),
        pin(8, Cathode(1)),
        pin(9, HeaterTap),
    ],
    heater: [&[4, 5], &[9]],
    source: "a public pin table citing data sheets",
};

/// Twin triode with a shield between its sections.
pub(super) const NOVAL_9AJ: Basing = Basing {
    base: "noval",
    arrangement: "9AJ",
    pins: &[
        pin(1, Plate(2)),
        pin(2, Grid(2)),
        pin(3, Cathode(2)),
        pin(4, Heater),
        pin(5, Heater),
        pin(6, Plate(1)),
        pin(7, Grid(1)),
        pin(8, Cathode(1)),
        pin(9, InternalShield),
    ],
    heater: [&[4], &[5]],
    source: "RETMA basing, from memory",
};

/// Twin triodes on the octal base.
pub(super) const OCTAL_8BD: Basing = Basing {
    base: "octal",
    arrangement: "8BD",
    pins: &[
        pin(1, Grid(2)),
        pin(2, Plate(2)),
        pin(3, Cathode(2)),
        pin(4, Grid(1)),
        pin(5, Plate(1)),
        pin(6, Cathode(1)),
        pin(7, Heater),
        pin(8, Heater),
    ],
    heater: [&[7], &[8]],
    source: "a public pin table citing data sheets (seen for the 6SN7GT)",
};

/// A single triode on the octal base.
pub(super) const OCTAL_6Q: Basing = Basing {
    base: "octal",
    arrangement: "6Q",
    pins: &[pin(1, Shell), pin(2, Heater), pin(3, Plate(1)), pin(5, Grid(1)), pin(7, Heater), pin(8, Cathode(1))],
    heater: [&[2], &[7]],
    source: "RETMA basing, from memory",
};

/// A single triode on the seven-pin miniature base.
pub(super) const MINIATURE_6BG: Basing = Basing {
    base: "miniature_7",
    arrangement: "6BG",
    pins: &[
        pin(1, Plate(1)),
        pin(2, InternalConnection),
        pin(3, Heater),
        pin(4, Heater),
        pin(5, Plate(1)),
        pin(6, Grid(1)),
        pin(7, Cathode(1)),
    ],
    heater: [&[3], &[4]],
    source: "a public pin table citing data sheets",
};
