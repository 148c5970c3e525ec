use alloc::{string::String, vec::Vec};

use super::{Prefix, Unit, decimal::Decimal};
use crate::text::together;

/// Longest run of noughts worth writing out.
const NOUGHTS: i32 = 18;

/// The digits of a figure without its power of ten; `0` for nought.
pub(super) fn digits(decimal: Decimal) -> String {
    let mut rest = decimal.digits;
    let mut digits = Vec::new();
    while rest > 0 || digits.is_empty() {
        digits.push(char::from(b'0' + u8::try_from(rest % 10).unwrap_or(0)));
        rest /= 10;
    }
    digits.iter().rev().collect()
}

/// A figure in plain digits, `0.0047`; nothing where it would be mostly noughts.
pub(super) fn plainly(decimal: Decimal) -> Option<String> {
    let decimal = decimal.trimmed();
    let power = decimal.power;
    if power.abs() > NOUGHTS || decimal.magnitude().abs() > NOUGHTS {
        return None;
    }
    let mut text = digits(decimal);
    let places = usize::try_from(-power).unwrap_or(0);
    for _ in 0..power.max(0) {
        text.push('0');
    }
    if places == 0 {
        return Some(text);
    }
    if text.len() <= places {
        text = together(&[&"0".repeat(places + 1 - text.len()), &text]);
    }
    text.insert(text.len() - places, '.');
    Some(text)
}

/// A figure of `unit` with `prefix`, in a text that has this reading alone: milli of what is seldom written with it is
/// written as so many micro (or in the unit itself), mega as so many kilo.
pub(super) fn with_prefix(figure: Decimal, prefix: Prefix, unit: Unit) -> Option<String> {
    let symbol = unit.symbol();
    let (shift, prefix) = match (prefix, unit) {
        (Prefix::Milli, Unit::Farad) => (3, Some(Prefix::Micro)),
        (Prefix::Milli, Unit::Hertz) => (-3, None),
        (Prefix::Mega, Unit::Ohm | Unit::Hertz | Unit::OhmPerVolt) => (0, Some(prefix)),
        (Prefix::Mega, _) if unit.takes(Prefix::Kilo) => (3, Some(Prefix::Kilo)),
        _ => (0, Some(prefix)),
    };
    let figure = plainly(figure.times_ten(shift))?;
    let mut letter = [0; 4];
    let letter = prefix.map_or("", |prefix| prefix.symbol().encode_utf8(&mut letter));
    Some(together(&[&figure, " ", letter, symbol]))
}

/// A figure of `unit` with the prefix that leaves one to three digits before the point.
pub(super) fn engineering(figure: Decimal, unit: Unit) -> Option<String> {
    let magnitude = figure.magnitude();
    let sure = |prefix: &&Prefix| !(unit == Unit::Farad && **prefix == Prefix::Milli);
    let fits = |power: i32| power <= magnitude;
    let prefix = unit.prefixes().iter().filter(sure).rfind(|prefix| fits(prefix.power()));
    let first = unit.prefixes().first();
    match prefix.or(first) {
        Some(prefix) if !(fits(0) && prefix.power() < 0) => {
            with_prefix(figure.times_ten(-prefix.power()), *prefix, unit)
        }
        _ => Some(together(&[&plainly(figure)?, " ", unit.symbol()])),
    }
}
