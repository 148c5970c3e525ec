//! Triodes of high transconductance.

use super::{
    basing::{NOVAL_9A, NOVAL_9AJ},
    ratings::{Ratings, TAPPED, heater},
    row::Tube,
    sheet::{Point, Sheet, eye},
};
use crate::tube::Triode;

const FROM_MEMORY: &str = "RCA/GE data sheet, from memory";
const PHILIPS_ECC81: &str = "Philips ECC81 data sheet, from memory";

static SHEET_12AT7: Sheet<'static> = Sheet {
    points: &[
        Point::whole((100.0, -1.0), 3.7e-3, 4000e-6, 15e3, FROM_MEMORY),
        Point::whole((250.0, -2.0), 10e-3, 5500e-6, 10.9e3, FROM_MEMORY),
    ],
    set_aside: &[eye(100.0, -5.0, 10e-6), eye(250.0, -12.0, 10e-6)],
    set_aside_reason: "printed as 10 µA cut-offs, from memory; no law that passes the operating points reaches so far",
    ..Sheet::EMPTY
};

static SHEET_ECC81: Sheet<'static> = Sheet {
    points: &[
        Point::whole((100.0, -1.0), 3e-3, 3750e-6, 16.5e3, PHILIPS_ECC81),
        Point::whole((170.0, -1.0), 8.5e-3, 5900e-6, 11e3, PHILIPS_ECC81),
        Point::whole((200.0, -1.0), 11.5e-3, 6700e-6, 10.5e3, PHILIPS_ECC81),
        Point::whole((250.0, -2.0), 10e-3, 5500e-6, 11e3, PHILIPS_ECC81),
    ],
    ..Sheet::EMPTY
};

static SHEET_6DJ8: Sheet<'static> = Sheet {
    points: &[Point::whole((90.0, -1.3), 15e-3, 12500e-6, 2640.0, "Philips ECC88 data sheet, from memory")],
    ..Sheet::EMPTY
};

/// The 12AT7 as American sheets have it.
pub(super) const T_12AT7: Tube = Tube {
    name: "12AT7",
    aliases: &[],
    sections: 2,
    law: Triode { perveance: 2.03828e-3, mu: 63.3784, mu_spread: 0.28409, contact_volts: 0.35408 },
    sheet: SHEET_12AT7,
    grid_plate_farads: 1.5e-12,
    grid_cathode_farads: 2.2e-12,
    plate_cathode_farads: 0.5e-12,
    farads_source: "RCA/GE data sheet, from memory; section 2 has 0.4 pF at its plate",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 2.5,
        cathode_amps: Some(15e-3),
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "RCA/GE data sheet, from memory",
        ..Tube::BLANK.ratings
    },
    heater: TAPPED,
    ..Tube::BLANK
}
.on(&NOVAL_9A);

/// The ECC81 as Philips had it: less current at 100 V than the 12AT7 it replaces, 3.0 mA for 3.7.
pub(super) const T_ECC81: Tube = Tube {
    name: "ECC81",
    aliases: &[],
    sections: 2,
    law: Triode { perveance: 2.74469e-3, mu: 79.4691, mu_spread: 0.52410, contact_volts: 0.28104 },
    sheet: SHEET_ECC81,
    grid_plate_farads: 1.5e-12,
    grid_cathode_farads: 2.2e-12,
    plate_cathode_farads: 0.5e-12,
    farads_source: "those of the 12AT7, RCA/GE data sheet, from memory",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 2.5,
        cathode_amps: Some(15e-3),
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "those of the 12AT7, RCA/GE data sheet, from memory",
        ..Tube::BLANK.ratings
    },
    heater: TAPPED,
    ..Tube::BLANK
}
.on(&NOVAL_9A);

/// The 6DJ8, which Europe calls ECC88.
pub(super) const T_6DJ8: Tube = Tube {
    name: "6DJ8",
    aliases: &["ECC88"],
    sections: 2,
    law: Triode { perveance: 5.08887e-3, mu: 35.1423, mu_spread: 0.24542, contact_volts: 0.29491 },
    sheet: SHEET_6DJ8,
    grid_plate_farads: 1.4e-12,
    grid_cathode_farads: 3.3e-12,
    plate_cathode_farads: 1.8e-12,
    farads_source: "Philips ECC88 data sheet, from memory, less sure than the rest",
    ratings: Ratings {
        plate_volts: 130.0,
        plate_watts: 1.8,
        cathode_amps: Some(25e-3),
        heater_cathode_volts: 50.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "Philips ECC88 data sheet, from memory; 130 V heater to cathode for the upper section of a cascode, 550 V at a cold plate",
        ..Tube::BLANK.ratings
    },
    heater: heater(0.365),
    ..Tube::BLANK
}
.on(&NOVAL_9AJ);
