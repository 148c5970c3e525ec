//! The reader against what people write, and wire gauges, preferred values and codes against the published tables.

#![allow(clippy::float_cmp)] // what is read must be the row's figure itself

use crate::common::{Within, rows};
use tagstrip_core::quantity::{
    CODES, NOTATIONS, Prefix, Series, Unit, Unread, awg_metres, bands, letter_tolerance, nearest, read, step,
    swg_metres, tolerance_letter,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn unit(symbol: &str) -> Unit {
    Unit::of(symbol).unwrap_or_else(|| panic!("no unit {symbol}"))
}

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("no figure: {text}"))
}

fn shown(text: &str) -> Option<Prefix> {
    (text != "-").then(|| Prefix::of(text).expect("a prefix"))
}

/// Figures of the table are decimals, so the reader gives the very double; lengths and gauges are a formula's.
fn same(got: f64, want: f64, about: &str) {
    assert!(Within::Relative(4.0 * f64::EPSILON).holds(got, want), "{about}: got {got:e}, expected {want:e}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_people_write_is_read() {
    let rows = rows(include_str!("vectors/quantity_readings.tsv"));
    assert!(rows.len() > 100);
    for row in rows {
        let about = format!("{:?} in {} ({})", row[2], row[0], row[6]);
        let reading = read(row[2], unit(row[0]), shown(row[1])).unwrap_or_else(|unread| panic!("{about}: {unread:?}"));
        same(reading.value, number(row[3]), &about);
        match (reading.tolerance, row[4]) {
            (None, "-") => {}
            (Some(got), want) if want != "-" => same(got, number(want), &about),
            (got, want) => panic!("{about}: tolerance {got:?}, expected {want}"),
        }
        assert_eq!(reading.notation, row[5], "{about}");
        assert!(NOTATIONS.contains(&reading.notation), "{about}");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_has_no_single_reading_is_refused_with_texts_that_have() {
    let rows = rows(include_str!("vectors/quantity_refusals.tsv"));
    assert!(rows.len() > 50);
    let mut seen: Vec<&str> = vec!["too_long"];
    for row in rows {
        let about = format!("{:?} in {} ({})", row[2], row[0], row[5]);
        let Unread { code, mends } = read(row[2], unit(row[0]), shown(row[1])).expect_err(&about);
        assert_eq!(code, row[3], "{about}: {mends:?}");
        seen.push(code);
        let want: Vec<(&str, &str)> = row[4]
            .split('|')
            .filter(|mend| *mend != "-")
            .map(|mend| mend.rsplit_once('=').expect("text=value"))
            .collect();
        let texts: Vec<&str> = mends.iter().map(|mend| mend.text.as_str()).collect();
        assert_eq!(texts, want.iter().map(|(text, _)| *text).collect::<Vec<_>>(), "{about}");
        for (mend, (_, value)) in mends.iter().zip(want) {
            let again = read(&mend.text, unit(row[0]), shown(row[1])).expect("a mend is read");
            assert_eq!(again.value.to_bits(), mend.value.to_bits(), "{about}: {}", mend.text);
            if value != "*" {
                same(mend.value, number(value), &about);
            }
        }
    }
    assert_eq!(read(&"4".repeat(200), Unit::Ohm, None).expect_err("too long").code, "too_long");
    for code in CODES {
        assert!(seen.contains(code), "no row for {code}");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn letter_and_digit_codes_read_as_iec_60062_says() {
    for row in rows(include_str!("vectors/quantity_codes.tsv")) {
        let about = format!("{} in {} ({})", row[1], row[0], row[4]);
        match read(row[1], unit(row[0]), None) {
            // Behind p, n, µ an F is the unit; the letter F is told by the code with R.
            Ok(reading) if row[1] == "4p7F" => {
                same(reading.value, number(row[2]), &about);
                assert_eq!(reading.tolerance, None);
                same(read("4R7F", Unit::Farad, None).expect("a code").tolerance.expect("1 pF"), number(row[3]), &about);
            }
            Ok(reading) => {
                same(reading.value, number(row[2]), &about);
                assert_eq!(reading.tolerance.is_some(), row[3] != "-", "{about}");
                if let Some(tolerance) = reading.tolerance {
                    same(tolerance, number(row[3]), &about);
                }
            }
            // 220 may be 220 pF in a circuit's field: the code is one of the answers (marking takes it, see there).
            Err(Unread { code, mends }) => {
                assert_eq!(code, "which_code", "{about}");
                assert!(row[1].ends_with('0') && mends.iter().any(|mend| mend.value == number(row[2])), "{about}");
            }
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn tolerance_letters_are_iec_60062s() {
    for row in rows(include_str!("vectors/quantity_tolerance_letters.tsv")) {
        let letter = row[0].chars().next().expect("a letter");
        let (under, over) = letter_tolerance(letter).expect("a tolerance");
        same(100.0 * under, number(row[1]), row[0]);
        same(100.0 * over, number(row[2]), row[0]);
        assert_eq!(tolerance_letter(under), Some(letter).filter(|_| row[1] == row[2]).or(tolerance_letter(under)));
        if row[1] == row[2] {
            assert_eq!(tolerance_letter(over), Some(letter));
        }
    }
    assert_eq!(letter_tolerance('X'), None);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn colours_stand_for_what_iec_60062_says() {
    for row in rows(include_str!("vectors/quantity_colours.tsv")) {
        let colour = row[0];
        let ohms = |names: &[&str]| bands(names).map(|bands| bands.ohms);
        let figure = |text: &str| (text != "-").then(|| number(text));
        if colour == "none" {
            assert_eq!(bands(&["brown", "black", "red"]).map(|bands| 100.0 * bands.tolerance), figure(row[3]));
            continue;
        }
        assert_eq!(ohms(&["brown", colour, "black"]), figure(row[1]).map(|digit| 10.0 + digit), "{colour}");
        assert_eq!(ohms(&["brown", "black", colour]), figure(row[2]).map(|times| 10.0 * times), "{colour}");
        let tolerance = bands(&["brown", "black", "red", colour]).map(|bands| bands.tolerance);
        assert_eq!(tolerance.is_some(), row[3] != "-", "{colour}");
        if let (Some(tolerance), Some(percent)) = (tolerance, figure(row[3])) {
            same(100.0 * tolerance, percent, colour);
            assert_eq!(tolerance_letter(tolerance).map(String::from).as_deref(), Some(row[4]), "{colour}");
        }
        let ppm = bands(&["brown", "black", "black", "red", "brown", colour]).and_then(|bands| bands.ppm_per_kelvin);
        assert_eq!(ppm, figure(row[5]), "{colour}");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn series_are_iec_60063s() {
    let table = rows(include_str!("vectors/quantity_series.tsv"));
    assert_eq!(table.len(), Series::ALL.iter().map(|series| series.count() as usize).sum::<usize>());
    for series in Series::ALL {
        let printed: Vec<u32> =
            table.iter().filter(|row| row[0] == series.name()).map(|row| row[1].parse().expect("hundredths")).collect();
        assert_eq!(
            printed,
            (0..series.count()).map(|index| series.hundredths(index)).collect::<Vec<_>>(),
            "{series:?}"
        );
    }
    for row in rows(include_str!("vectors/quantity_series_exceptions.tsv")) {
        let index: u32 = row[0].parse().expect("an index");
        let rule = (10.0 * 10f64.powf(f64::from(index) / 24.0)).round();
        assert_eq!(rule, number(row[1]));
        assert_eq!(f64::from(Series::E24.hundredths(index)) / 10.0, number(row[2]));
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_nearest_preferred_value_is_found_by_ratio() {
    for row in rows(include_str!("vectors/quantity_nearest.tsv")) {
        for (at, series) in Series::ALL.into_iter().enumerate() {
            let nearest = nearest(number(row[0]), series).expect("a value");
            let about = format!("{} in {}", row[0], series.name());
            assert_eq!(nearest.value, number(row[1 + 2 * at]), "{about}");
            // The table's percent has four decimals.
            assert!(Within::Absolute(0.51e-4).holds(100.0 * nearest.error, number(row[2 + 2 * at])), "{about}");
        }
    }
    // Between 1.0 and 1.5 equal ratios meet at 1.2247, equal differences at 1.25.
    assert_eq!(nearest(1.23, Series::E6).map(|nearest| nearest.value), Some(1.5));
    for value in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e300, 1e-300] {
        assert_eq!(nearest(value, Series::E24), None);
        assert_eq!(step(value, Series::E24, true), None);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn steps_go_through_every_value_and_back() {
    assert_eq!([true, false].map(|up| step(220e3, Series::E24, up)), [Some(240e3), Some(200e3)]);
    assert_eq!([true, false].map(|up| step(215e3, Series::E24, up)), [Some(220e3), Some(200e3)]);
    for series in Series::ALL {
        let (mut value, mut steps) = (1e-12, 0);
        while value < 1e9 {
            let next = step(value, series, true).expect("a step up");
            assert!(next > value);
            assert_eq!(step(next, series, false).map(f64::to_bits), Some(value.to_bits()), "{series:?} {next:e}");
            assert_eq!(nearest(next, series).map(|nearest| (nearest.value, nearest.error)), Some((next, 0.0)));
            (value, steps) = (next, steps + 1);
        }
        assert_eq!((value, steps), (1e9, 21 * series.count()));
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn wire_gauges_are_the_standards() {
    for row in rows(include_str!("vectors/quantity_awg.tsv")) {
        let metres = awg_metres(number(row[0]));
        // Five decimals of a millimetre are printed.
        assert!(Within::Absolute(0.51e-8).holds(metres, 1e-3 * number(row[1])), "{}: {metres:e}", row[0]);
        assert_eq!(read(&format!("#{}", row[0]), Unit::Metre, None).expect("a gauge").value, metres);
    }
    for row in rows(include_str!("vectors/quantity_swg.tsv")) {
        let metres = read(&format!("{} SWG", row[0]), Unit::Metre, None).expect("a gauge").value;
        same(metres, 1e-3 * number(row[1]), row[0]);
    }
    assert_eq!((swg_metres(-7), swg_metres(51)), (None, None));
}
