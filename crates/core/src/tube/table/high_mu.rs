//! High-mu twin triodes.

use super::{
    basing::{NOVAL_9A, OCTAL_8BD},
    ratings::{Ratings, TAPPED, heater},
    row::Tube,
    sheet::{Point, Reading, Sheet, eye},
};
use crate::tube::Triode;

const TRANSCRIBED: &str = "GE/RCA 12AX7 data sheet, class A1 characteristics, in a public transcription";
const FROM_MEMORY: &str = "RCA/GE data sheet, from memory";

static SHEET_12AX7: Sheet<'static> = Sheet {
    points: &[
        Point::whole((100.0, -1.0), 0.5e-3, 1250e-6, 80e3, TRANSCRIBED),
        Point::whole((250.0, -2.0), 1.2e-3, 1600e-6, 62.5e3, TRANSCRIBED),
    ],
    readings: &READINGS_12AX7,
    readings_source: "read by eye off the 12AX7 plate curves, to 10 % or 0.1 mA, in a public transcription",
    ..Sheet::EMPTY
};

static READINGS_12AX7: [Reading; 30] = [
    eye(40.0, 0.0, 1.0e-3),
    eye(140.0, 0.0, 3.0e-3),
    eye(220.0, 0.0, 5.0e-3),
    eye(50.0, -0.5, 0.5e-3),
    eye(90.0, -0.5, 1.0e-3),
    eye(140.0, -0.5, 2.0e-3),
    eye(207.0, -0.5, 3.5e-3),
    eye(260.0, -0.5, 5.0e-3),
    eye(100.0, -1.0, 0.5e-3),
    eye(140.0, -1.0, 1.0e-3),
    eye(210.0, -1.0, 2.5e-3),
    eye(150.0, -1.5, 0.5e-3),
    eye(240.0, -1.5, 2.0e-3),
    eye(300.0, -1.5, 3.5e-3),
    eye(200.0, -2.0, 0.5e-3),
    eye(240.0, -2.0, 1.0e-3),
    eye(290.0, -2.0, 2.0e-3),
    eye(240.0, -2.5, 0.5e-3),
    eye(280.0, -2.5, 1.0e-3),
    eye(380.0, -2.5, 3.0e-3),
    eye(300.0, -3.0, 0.5e-3),
    eye(360.0, -3.0, 1.5e-3),
    eye(420.0, -3.0, 2.5e-3),
    eye(340.0, -3.5, 0.5e-3),
    eye(380.0, -3.5, 1.0e-3),
    eye(440.0, -3.5, 2.0e-3),
    eye(380.0, -4.0, 0.5e-3),
    eye(440.0, -4.0, 1.0e-3),
    eye(420.0, -4.5, 0.5e-3),
    eye(460.0, -5.0, 0.5e-3),
];

static SHEET_6SL7GT: Sheet<'static> =
    Sheet { points: &[Point::whole((250.0, -2.0), 2.3e-3, 1600e-6, 44e3, FROM_MEMORY)], ..Sheet::EMPTY };

/// The 12AX7, which Europe calls ECC83.
pub(super) const T_12AX7: Tube = Tube {
    name: "12AX7",
    aliases: &["ECC83", "12AX7A"],
    sections: 2,
    law: Triode { perveance: 0.975652e-3, mu: 105.148, mu_spread: 0.20416, contact_volts: 0.31413 },
    sheet: SHEET_12AX7,
    grid_plate_farads: 1.7e-12,
    grid_cathode_farads: 1.6e-12,
    plate_cathode_farads: 0.46e-12,
    farads_source: "12AX7 data sheet in a public transcription; section 2 has 0.34 pF at its plate",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 1.0,
        cathode_amps: Some(8e-3),
        heater_cathode_volts: 180.0,
        grid_ohms: Some(2e6),
        grid_ohms_fixed_bias: Some(1e6),
        source: "12AX7 data sheet in a public transcription; cathode current and grid resistors of the ECC83, Philips/Mullard, from memory",
        ..Tube::BLANK.ratings
    },
    heater: TAPPED,
    ..Tube::BLANK
}
.on(&NOVAL_9A);

/// The 6SL7GT.
pub(super) const T_6SL7GT: Tube = Tube {
    name: "6SL7GT",
    aliases: &["6SL7"],
    sections: 2,
    law: Triode { perveance: 0.656202e-3, mu: 74.0564, mu_spread: 0.25028, contact_volts: 0.31057 },
    sheet: SHEET_6SL7GT,
    grid_plate_farads: 2.8e-12,
    grid_cathode_farads: 3.0e-12,
    plate_cathode_farads: 3.8e-12,
    farads_source: "RCA data sheet, from memory; section 2 has 3.4 pF in and 3.2 pF out",
    ratings: Ratings {
        plate_volts: 250.0,
        plate_watts: 1.0,
        cathode_amps: None,
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "RCA data sheet, from memory; later sheets allow 300 V at the plate",
        ..Tube::BLANK.ratings
    },
    heater: heater(0.3),
    ..Tube::BLANK
}
.on(&OCTAL_8BD);
