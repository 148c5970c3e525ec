use super::{Heater, Pin, Ratings, Sheet, basing::Basing};
use crate::tube::Triode;

/// One type of tube.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tube {
    /// The name it is found under.
    pub name: &'static str,
    /// Other names of the same tube.
    pub aliases: &'static [&'static str],
    /// Triodes in the envelope, alike.
    pub sections: u8,
    /// Fitted to [`Tube::sheet`] by [`fit`](crate::tube::fit), six figures.
    pub law: Triode,
    /// The data the law was fitted to.
    pub sheet: Sheet<'static>,
    /// Grid to plate, of section 1, in F.
    pub grid_plate_farads: f64,
    /// Grid to cathode and heater: the sheet's "input", of section 1, in F.
    pub grid_cathode_farads: f64,
    /// Plate to cathode and heater: the sheet's "output", of section 1, in F.
    pub plate_cathode_farads: f64,
    /// Where the capacitances were read; without an external shield.
    pub farads_source: &'static str,
    /// What it can stand.
    pub ratings: Ratings,
    /// What its heater needs.
    pub heater: Heater,
    /// The socket: `octal`, `noval` or `miniature_7`.
    pub base: &'static str,
    /// The maker's designation of the basing, `9A`.
    pub arrangement: &'static str,
    /// In order; a number that is missing has no pin, or an unused one.
    pub pins: &'static [Pin],
    /// Where the basing was read.
    pub pins_source: &'static str,
    pub(super) heater_sides: [&'static [u8]; 2],
}

impl Tube {
    /// The pins to join to each side of the heater's supply; a tapped heater has its halves in parallel.
    #[must_use]
    pub fn heater_pins(&self) -> [&'static [u8]; 2] {
        self.heater_sides
    }

    /// Heater volts and amperes for the pins of [`Tube::heater_pins`].
    #[must_use]
    pub fn heater_supply(&self) -> (f64, f64) {
        let Heater { volts, amps, tapped } = self.heater;
        if tapped { (volts / 2.0, amps * 2.0) } else { (volts, amps) }
    }

    /// The same row on `basing`.
    pub(super) const fn on(mut self, basing: &Basing) -> Self {
        self.base = basing.base;
        self.arrangement = basing.arrangement;
        self.pins = basing.pins;
        self.pins_source = basing.source;
        self.heater_sides = basing.heater;
        self
    }

    /// A row with nothing in it, for rows to start from.
    pub(super) const BLANK: Tube = Tube {
        name: "",
        aliases: &[],
        sections: 1,
        law: Triode { perveance: 0.0, mu: 0.0, mu_spread: 0.0, contact_volts: 0.0 },
        sheet: Sheet::EMPTY,
        grid_plate_farads: 0.0,
        grid_cathode_farads: 0.0,
        plate_cathode_farads: 0.0,
        farads_source: "",
        ratings: Ratings {
            plate_volts: 0.0,
            plate_watts: 0.0,
            cathode_amps: None,
            heater_cathode_volts: 0.0,
            grid_ohms: None,
            grid_ohms_fixed_bias: None,
            system: "design centre",
            source: "",
        },
        heater: super::ratings::TAPPED,
        base: "",
        arrangement: "",
        pins: &[],
        pins_source: "",
        heater_sides: [&[], &[]],
    };
}
