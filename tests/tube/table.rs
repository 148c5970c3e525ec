//! The table against what it was copied from.

use tagstrip_core::tube::{Kind, NAMES, fit, tube, tubes};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use crate::common::rows;

const PINS: &str = include_str!("../vectors/tube_pins.tsv");
const RATINGS: &str = include_str!("../vectors/tube_ratings.tsv");
const SHEETS: &str = include_str!("../vectors/tube_sheets.tsv");

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_pin_is_as_published() {
    let rows = rows(PINS);
    for row in &rows {
        let tube = tube(row[0]).expect("in the table");
        assert_eq!(tube.arrangement, row[1], "{}", row[0]);
        let pin = tube.pins.iter().find(|pin| pin.pin.to_string() == row[2]).expect("the pin");
        assert_eq!(pin.electrode.code(), row[3], "{} pin {} ({})", row[0], row[2], row[4]);
    }
    for tube in tubes() {
        let published = rows.iter().filter(|row| row[0] == tube.name || (tube.name == "ECC81" && row[0] == "12AT7"));
        assert_eq!(published.count(), tube.pins.len(), "{}", tube.name);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_rating_is_as_published() {
    let same = |got: f64, cell: &str, what: &str| {
        let want: f64 = cell.parse().expect("a figure");
        assert!((got - want).abs() <= 1e-9 * want, "{what}: {got} for {want}");
    };
    let rows = rows(RATINGS);
    assert_eq!(rows.len(), 9);
    for row in rows {
        let tube = tube(row[0]).expect("in the table");
        same(tube.heater.volts, row[2], row[0]);
        same(tube.heater.amps, row[3], row[0]);
        same(tube.ratings.plate_volts, row[4], row[0]);
        same(tube.ratings.plate_watts, row[5], row[0]);
        if row[6] != "-" {
            same(1e3 * tube.ratings.cathode_amps.expect("a rating"), row[6], row[0]);
        }
        same(tube.ratings.heater_cathode_volts, row[7], row[0]);
        same(1e12 * tube.grid_plate_farads, row[8], row[0]);
        same(1e12 * tube.grid_cathode_farads, row[9], row[0]);
        same(1e12 * tube.plate_cathode_farads, row[10], row[0]);
    }
}

/// Every printed figure stands in a tube's sheet, so that the law was fitted to what was published and to nothing else.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn every_datum_is_as_published() {
    let near = |got: f64, want: f64| (got - want).abs() <= 1e-9 * want.abs();
    let published = rows(SHEETS);
    for row in &published {
        let sheet = tube(row[0]).expect("in the table").sheet;
        let figure = |k: usize| row[k].parse::<f64>().ok();
        let (plate, grid) = (figure(1).expect("volts"), figure(2).expect("volts"));
        let amps = 1e-3 * figure(3).expect("milliamperes");
        let at = |plate_volts: f64, grid_volts: f64| near(plate_volts, plate) && near(grid_volts, grid);
        let point = sheet.points.iter().any(|point| {
            let gm = figure(4).is_none_or(|gm| near(point.gm.expect("gm"), 1e-6 * gm));
            let rp = figure(5).is_none_or(|rp| near(point.plate_resistance.expect("rp"), rp));
            at(point.plate_volts, point.grid_volts) && near(point.plate_amps, amps) && gm && rp
        });
        let cutoff = near(amps, 10e-6) && sheet.cutoffs.iter().any(|cutoff| at(cutoff.plate_volts, cutoff.grid_volts));
        let mut read = sheet.readings.iter().chain(sheet.set_aside);
        let read = read.any(|read| at(read.plate_volts, read.grid_volts) && near(read.plate_amps, amps));
        assert!(point || cutoff || read, "{} at {plate}, {grid}", row[0]);
    }
    // the 6C4 and the 6J5 share the cut-off of the twin made of two of them
    for tube in tubes().iter().filter(|tube| !["6C4", "6J5"].contains(&tube.name)) {
        let sheet = tube.sheet;
        let count = sheet.points.len() + sheet.cutoffs.len() + sheet.readings.len() + sheet.set_aside.len();
        assert_eq!(published.iter().filter(|row| row[0] == tube.name).count(), count, "{}", tube.name);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn names_are_found_in_any_case() {
    for name in NAMES {
        let found = tube(&name.to_lowercase()).expect("a tube");
        assert!(found.name == *name || found.aliases.contains(name), "{name}");
    }
    for row in tubes() {
        assert!(NAMES.contains(&row.name));
        assert!(std::ptr::eq(tube(row.name).expect("itself"), row));
    }
    assert_eq!(tube(" ecc83 ").map(|tube| tube.name), Some("12AX7"));
    assert!(tube("12AX").is_none() && tube("").is_none());
}

/// The constants of the table are what its own data give, to the six figures they are written with.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_table_is_what_its_data_give() {
    for tube in tubes() {
        let again = fit(&tube.sheet).expect("a fit");
        let pairs = [
            (again.law.perveance / tube.law.perveance, 1.0, 6e-6),
            (again.law.mu / tube.law.mu, 1.0, 6e-6),
            (again.law.mu_spread, tube.law.mu_spread, 6e-6),
            (again.law.contact_volts, tube.law.contact_volts, 6e-6),
        ];
        for (got, want, most) in pairs {
            assert!((got - want).abs() <= most, "{}: {:?} written {:?}", tube.name, again.law, tube.law);
        }
        for residual in again.residuals {
            let percent = 100.0 * (residual.log_ratio.exp() - 1.0);
            println!("tube.{} {:?} {} {percent:+.1} %", tube.name, residual.kind, residual.index);
            // what the sheets print is rounded and is of a nominal tube; a cut-off is a factor, not a percentage
            let most = match residual.kind {
                Kind::Current => 9.0,
                Kind::Gm | Kind::Mu | Kind::PlateResistance => 5.0,
                Kind::Cutoff => 60.0,
                Kind::Reading => 20.0,
            };
            assert!(percent.abs() <= most, "{} {residual:?}: {percent} %", tube.name);
        }
    }
}
