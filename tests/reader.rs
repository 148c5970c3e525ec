//! The reader on every preferred value in every notation, and on texts near its grammar. Native alone: the bits are the
//! same everywhere.

#![cfg(not(target_arch = "wasm32"))]

use crate::common::generate::Chance;
use proptest::prelude::*;
use tagstrip_core::quantity::{CODES, NOTATIONS, Prefix, Series, Unit, letter_code, read, three_digit};

const SHOWN: [Option<Prefix>; 5] =
    [None, Some(Prefix::Pico), Some(Prefix::Micro), Some(Prefix::Milli), Some(Prefix::Kilo)];

/// What holds for any text: a code or notation of the closed list, a finite figure, mends that are read as they say.
fn holds(text: &str, unit: Unit, shown: Option<Prefix>) {
    match read(text, unit, shown) {
        Ok(reading) => {
            assert!(reading.value.is_finite(), "{text:?} in {unit:?}: {reading:?}");
            assert!(
                reading.tolerance.is_none_or(|share| (0.0..=1.0).contains(&share)),
                "{text:?} in {unit:?}: {reading:?}"
            );
            assert!(NOTATIONS.contains(&reading.notation), "{text:?}: {reading:?}");
        }
        Err(unread) => {
            assert!(CODES.contains(&unread.code), "{text:?}: {unread:?}");
            assert!(unread.mends.len() <= 4, "{text:?}: {unread:?}");
            for mend in unread.mends {
                let again = read(&mend.text, unit, shown).map(|reading| reading.value.to_bits());
                assert_eq!(again, Ok(mend.value.to_bits()), "{text:?} in {unit:?} offers {:?}", mend.text);
            }
        }
    }
}

#[test]
fn a_text_as_long_as_one_may_be_is_offered_nothing_longer() {
    for unit in Unit::ALL {
        holds(&"9".repeat(80), unit, None);
        holds(&format!("{}.{}", "9".repeat(30), "7".repeat(49)), unit, None);
    }
}

#[test]
fn any_text_is_read_or_refused_with_texts_that_are_read() {
    let mut chance = Chance::new(3);
    for _ in 0..200_000 {
        let text = crate::common::texts::text(&mut chance);
        holds(&text, Unit::ALL[chance.below(Unit::ALL.len())], SHOWN[chance.below(SHOWN.len())]);
    }
}

/// Common practice, no source: a transformer's volts are written from end to end through the tap.
#[test]
fn the_volts_of_a_tapped_winding_are_asked_with_both_readings() {
    for (text, side, whole) in [
        ("275-0-275", "275 V", "550 V"),
        ("275 - 0 - 275 V", "275 V", "550 V"),
        ("350/0/350", "350 V", "700 V"),
        ("6.3-0-6.3 volts", "6.3 V", "12.6 V"),
        ("550 V CT", "275 V", "550 V"),
        ("550VCT", "275 V", "550 V"),
        ("12.6 v c.t.", "6.3 V", "12.6 V"),
        ("5 V ct", "2.5 V", "5 V"),
    ] {
        let unread = read(text, Unit::Volt, None).expect_err(text);
        let offers: Vec<&str> = unread.mends.iter().map(|mend| mend.text.as_str()).collect();
        assert_eq!((unread.code, offers), ("tapped_winding", vec![side, whole]), "{text}");
    }
    for text in ["275-0-250", "0-0-0", "275-275", "ct"] {
        assert_ne!(read(text, Unit::Volt, None).expect_err(text).code, "tapped_winding", "{text}");
    }
}

/// A whole number times a power of ten, as the standard library reads it: correctly rounded.
fn exact(digits: u64, power: i32) -> f64 {
    format!("{digits}e{power}").parse().expect("a figure")
}

/// `digits`·10^`power` written out.
fn decimal(digits: u64, power: i32) -> String {
    let places = usize::try_from(-power).unwrap_or(0);
    let zeros = "0".repeat(usize::try_from(power).unwrap_or(0));
    let text = format!("{digits:0>width$}{zeros}", width = places + 1);
    let (whole, part) = text.split_at(text.len() - places);
    if part.is_empty() { whole.into() } else { format!("{whole}.{part}") }
}

#[test]
fn every_preferred_value_is_read_from_every_notation_to_the_same_bits() {
    let mut count = 0;
    for series in Series::ALL {
        for (index, power) in (0..series.count()).flat_map(|index| (-14..=6).map(move |power| (index, power))) {
            let digits = u64::from(series.hundredths(index));
            for unit in [Unit::Ohm, Unit::Farad, Unit::Henry, Unit::Volt, Unit::Hertz] {
                let want = exact(digits, power).to_bits();
                let symbol = unit.symbol();
                let mut texts = vec![format!("{digits}e{power}"), format!("{digits}E{power} {symbol}")];
                for prefix in unit.prefixes().iter().filter(|prefix| unit != Unit::Farad || **prefix != Prefix::Milli) {
                    let figure = decimal(digits, power - prefix.power());
                    let asked = *prefix == Prefix::Milli && unit == Unit::Hertz
                        || *prefix == Prefix::Mega && !matches!(unit, Unit::Ohm | Unit::Hertz);
                    if !asked {
                        texts.push(format!("{figure} {}{symbol}", prefix.symbol()));
                        texts.push(format!("{}{}{symbol}", figure.replace('.', ","), prefix.symbol()));
                        let (whole, part) = figure.split_once('.').unwrap_or((&figure, ""));
                        let plain = matches!(prefix, Prefix::Milli) && unit == Unit::Ohm;
                        if !part.is_empty() && !plain {
                            texts.push(format!("{whole}{}{part}", prefix.symbol()));
                        }
                    }
                }
                texts.push(format!("{} {symbol}", decimal(digits, power)));
                for text in texts {
                    let got = match read(&text, unit, None) {
                        Ok(reading) => reading.value.to_bits(),
                        // A comma before three digits is asked, and one of the answers is right.
                        Err(unread) if unread.code == "which_comma" => {
                            let right = unread.mends.iter().any(|mend| mend.value.to_bits() == want);
                            assert!(right, "{text}: {unread:?}");
                            want
                        }
                        Err(unread) => panic!("{text}: {unread:?}"),
                    };
                    assert_eq!(got, want, "{text}");
                    count += 1;
                }
            }
        }
    }
    assert!(count > 400_000, "{count}");
}

#[test]
fn markings_of_preferred_values_read_back() {
    for series in [Series::E24, Series::E192] {
        for (index, power) in (0..series.count()).flat_map(|index| (-13..=6).map(move |power| (index, power))) {
            let value = exact(u64::from(series.hundredths(index)), power);
            for (unit, least, most) in [(Unit::Ohm, 1e-3, 1e9), (Unit::Farad, 1e-14, 1e-3), (Unit::Henry, 1e-9, 1e3)] {
                if !(least..most).contains(&value) {
                    continue;
                }
                let code = letter_code(value, unit).expect("a code");
                assert!(code.exact, "{value:e}");
                let read_back = read(&code.code, unit, None).map(|reading| reading.value);
                assert_eq!(read_back, Ok(value), "{}", code.code);
                if unit == Unit::Farad
                    && let Some(digits) = three_digit(value, unit)
                {
                    // With a tolerance letter three digits are a code, never a question.
                    assert_eq!(
                        read(&format!("{digits}J"), unit, None).map(|reading| reading.value),
                        Ok(value),
                        "{digits}"
                    );
                }
            }
        }
    }
}

proptest! {
    #[test]
    fn no_text_panics(text in "\\PC{0,40}") {
        for unit in Unit::ALL {
            holds(&text, unit, None);
        }
    }

    #[test]
    fn a_decimal_is_rounded_as_the_standard_library_does(digits in 0u64..=u64::MAX, power in -60i32..30) {
        let text = format!("{digits}e{power}");
        if let Ok(reading) = read(&text, Unit::One, None) {
            prop_assert_eq!(reading.value.to_bits(), text.parse::<f64>().unwrap().to_bits());
        } else {
            prop_assert!(text.parse::<f64>().unwrap() > 1e59 || text.parse::<f64>().unwrap() < 1e-59);
        }
    }

    #[test]
    fn more_digits_than_a_double_has_are_rounded_once(whole in "[1-9][0-9]{0,30}", part in "[0-9]{0,40}") {
        let text = format!("{whole}.{part}");
        let reading = read(&text, Unit::One, None).unwrap();
        prop_assert_eq!(reading.value.to_bits(), text.parse::<f64>().unwrap().to_bits());
    }

    #[test]
    fn any_double_in_reach_is_read_from_its_own_text(value in prop::num::f64::POSITIVE) {
        if (1e-50..1e50).contains(&value) {
            prop_assert_eq!(read(&format!("{value:e}"), Unit::One, None).unwrap().value.to_bits(), value.to_bits());
        }
    }
}
