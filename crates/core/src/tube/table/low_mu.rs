//! Triodes of low and medium mu.

use super::{
    basing::{MINIATURE_6BG, NOVAL_9A, OCTAL_6Q, OCTAL_8BD},
    ratings::{Ratings, TAPPED, heater},
    row::Tube,
    sheet::{Cutoff, Point, Sheet},
};
use crate::tube::Triode;

const FROM_MEMORY: &str = "RCA/GE data sheet, from memory";

/// Of the 12AU7 and of the 6C4, which is one half of it in an envelope of its own.
static SHEET_12AU7: Sheet<'static> = Sheet {
    points: &[
        Point::whole((100.0, 0.0), 11.8e-3, 3100e-6, 6250.0, FROM_MEMORY),
        Point::whole((250.0, -8.5), 10.5e-3, 2200e-6, 7700.0, FROM_MEMORY),
    ],
    cutoffs: &[Cutoff::at(250.0, -24.0, FROM_MEMORY)],
    ..Sheet::EMPTY
};

/// Of the 6SN7GT and of the 6J5, two of which it holds.
static SHEET_6SN7GT: Sheet<'static> = Sheet {
    points: &[
        Point::whole((90.0, 0.0), 10e-3, 3000e-6, 6700.0, FROM_MEMORY),
        Point::whole((250.0, -8.0), 9e-3, 2600e-6, 7700.0, "RCA data sheet, confirmed by a public transcription"),
    ],
    cutoffs: &[Cutoff::at(250.0, -18.0, "RCA data sheet, approximate, from memory")],
    ..Sheet::EMPTY
};

static SHEET_12AY7: Sheet<'static> = Sheet {
    points: &[Point::whole((250.0, -4.0), 3e-3, 1750e-6, 25e3, "GE 12AY7/6072 data sheet, from memory")],
    ..Sheet::EMPTY
};

/// The 12AU7, which Europe calls ECC82.
pub(super) const T_12AU7: Tube = Tube {
    name: "12AU7",
    aliases: &["ECC82", "12AU7A"],
    sections: 2,
    law: Triode { perveance: 0.768224e-3, mu: 21.0315, mu_spread: 0.40032, contact_volts: 0.31339 },
    sheet: SHEET_12AU7,
    grid_plate_farads: 1.5e-12,
    grid_cathode_farads: 1.6e-12,
    plate_cathode_farads: 0.5e-12,
    farads_source: "RCA data sheet, from memory; section 2 has 0.35 pF at its plate",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 2.75,
        cathode_amps: Some(20e-3),
        heater_cathode_volts: 180.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "RCA data sheet, from memory; 200 V heater to cathode on later sheets, 330 V at the plate of the 12AU7A",
        ..Tube::BLANK.ratings
    },
    heater: TAPPED,
    ..Tube::BLANK
}
.on(&NOVAL_9A);

/// The 6C4.
pub(super) const T_6C4: Tube = Tube {
    name: "6C4",
    aliases: &[],
    sections: 1,
    law: Triode { perveance: 0.768224e-3, mu: 21.0315, mu_spread: 0.40032, contact_volts: 0.31339 },
    sheet: SHEET_12AU7,
    grid_plate_farads: 1.6e-12,
    grid_cathode_farads: 1.8e-12,
    plate_cathode_farads: 1.3e-12,
    farads_source: "RCA data sheet, from memory",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 3.5,
        cathode_amps: Some(25e-3),
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "RCA data sheet, from memory",
        ..Tube::BLANK.ratings
    },
    heater: heater(0.15),
    ..Tube::BLANK
}
.on(&MINIATURE_6BG);

/// The 6SN7GT.
pub(super) const T_6SN7GT: Tube = Tube {
    name: "6SN7GT",
    aliases: &["6SN7", "6SN7GTA", "6SN7GTB"],
    sections: 2,
    law: Triode { perveance: 0.77226e-3, mu: 21.3132, mu_spread: 0.22170, contact_volts: 0.30896 },
    sheet: SHEET_6SN7GT,
    grid_plate_farads: 4.0e-12,
    grid_cathode_farads: 2.2e-12,
    plate_cathode_farads: 0.7e-12,
    farads_source: "RCA/GE data sheet, from memory; section 2 has 3.8, 2.6 and 0.7 pF, older sheets 2.8 or 3.0 in, 0.8 or 1.2 out",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 2.5,
        cathode_amps: Some(20e-3),
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "RCA/GE data sheet, from memory; the 6SN7GTA and GTB stand 450 V, 5 W a plate (7.5 W both) and 200 V heater to cathode",
        ..Tube::BLANK.ratings
    },
    heater: heater(0.6),
    ..Tube::BLANK
}
.on(&OCTAL_8BD);

/// The 6J5.
pub(super) const T_6J5: Tube = Tube {
    name: "6J5",
    aliases: &["6J5GT"],
    sections: 1,
    law: Triode { perveance: 0.77226e-3, mu: 21.3132, mu_spread: 0.22170, contact_volts: 0.30896 },
    sheet: SHEET_6SN7GT,
    grid_plate_farads: 3.4e-12,
    grid_cathode_farads: 3.4e-12,
    plate_cathode_farads: 3.6e-12,
    farads_source: "RCA data sheet, from memory; the 6J5GT has 3.8, 4.2 and 5.0 pF",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 2.5,
        cathode_amps: Some(20e-3),
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "RCA data sheet, from memory",
        ..Tube::BLANK.ratings
    },
    heater: heater(0.3),
    ..Tube::BLANK
}
.on(&OCTAL_6Q);

/// The 12AY7.
pub(super) const T_12AY7: Tube = Tube {
    name: "12AY7",
    aliases: &["6072"],
    sections: 2,
    law: Triode { perveance: 0.80274e-3, mu: 47.3892, mu_spread: 0.25649, contact_volts: 0.31686 },
    sheet: SHEET_12AY7,
    grid_plate_farads: 1.3e-12,
    grid_cathode_farads: 1.3e-12,
    plate_cathode_farads: 0.6e-12,
    farads_source: "GE data sheet, from memory",
    ratings: Ratings {
        plate_volts: 300.0,
        plate_watts: 1.5,
        cathode_amps: Some(10e-3),
        heater_cathode_volts: 90.0,
        grid_ohms: None,
        grid_ohms_fixed_bias: None,
        source: "GE data sheet, from memory",
        ..Tube::BLANK.ratings
    },
    heater: TAPPED,
    ..Tube::BLANK
}
.on(&NOVAL_9A);
