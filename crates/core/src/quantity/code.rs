use alloc::string::String;

use super::{Series, Unit, decimal::Decimal, written::digits};
use crate::text::together;

/// Figures that a letter code has room for.
const CODE_FIGURES: i32 = 4;

/// The picofarads of a three-digit code, in farads: two figures and the number of noughts, 9 standing for a tenth and
/// 8 for a hundredth.
///
/// # Source
/// IEC 60062 clause 4 and EIA-198 (from memory).
pub(super) fn three_digits(code: &str) -> Option<Decimal> {
    let figures = code.get(..2)?.parse().ok().filter(|figures| *figures >= 10)?;
    let power = match code.get(2..)? {
        "8" => -2,
        "9" => -1,
        noughts => noughts.parse().ok().filter(|power| (0..=7).contains(power))?,
    };
    Some(Decimal::new(figures, power - 12))
}

/// Whether three digits are surely a code: its first two are a preferred value and its last is no nought, so that the
/// plain figure is no usual value. From 5 noughts on (3.6 µF as `365`, which is a tuning capacitor's 365 pF as well)
/// only the values of E12 are.
pub(super) fn is_surely_code(code: &str) -> bool {
    let Some(decimal) = three_digits(code) else { return false };
    let series = match code.as_bytes().get(2) {
        Some(b'1'..=b'4') => Series::E24,
        Some(b'5'..=b'9') => Series::E12,
        _ => return false,
    };
    (0..series.count()).any(|index| u128::from(series.hundredths(index)) == decimal.digits * 10)
}

/// What plain digits are as a code printed on a part: two figures (on resistors also three) and the number of noughts,
/// of ohms, microhenries or picofarads; on capacitors the last digit may be 9 (tenths) or 8 (hundredths).
///
/// # Source
/// IEC 60062 clause 4, EIA-198 and the custom of surface-mounted parts (from memory).
#[must_use]
pub fn printed_digits(text: &str, unit: Unit) -> Option<f64> {
    let base = match (unit, text.len()) {
        (Unit::Farad, 3) => return three_digits(text)?.value(),
        (Unit::Ohm, 3 | 4) => 0,
        (Unit::Henry, 3) => -6,
        _ => return None,
    };
    let (figures, noughts) = text.split_at_checked(text.len() - 1)?;
    let is_code = figures.bytes().all(|digit| digit.is_ascii_digit()) && !figures.starts_with('0');
    let noughts = noughts.parse().ok().filter(|noughts: &i32| is_code && (0..8).contains(noughts))?;
    Decimal::new(figures.parse().ok()?, noughts + base).value()
}

/// A marking made from a figure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Marking {
    /// As printed on the part.
    pub code: String,
    /// Whether it says the figure whole, not rounded.
    pub exact: bool,
}

/// The letter code of IEC 60062, its letter standing for the decimal point: `4K7`, `R15`, `1M0`, `3n3`. At least two
/// figures, at most four. Coils are not in the standard and follow capacitors.
///
/// Nothing for a unit that parts are not marked in, or a figure that is not over 0.
///
/// ```
/// use tagstrip_core::quantity::{Unit, letter_code};
/// assert_eq!(letter_code(4700.0, Unit::Ohm).unwrap().code, "4K7");
/// ```
///
/// # Source
/// IEC 60062 (letters K, M, R and p, n, µ seen, L, G, T from memory).
#[must_use]
pub fn letter_code(value: f64, unit: Unit) -> Option<Marking> {
    let letters: &[(i32, char)] = match unit {
        Unit::Ohm => &[(-3, 'L'), (0, 'R'), (3, 'K'), (6, 'M'), (9, 'G'), (12, 'T')],
        Unit::Farad => &[(-12, 'p'), (-9, 'n'), (-6, 'u'), (-3, 'm'), (0, 'F')],
        Unit::Henry => &[(-9, 'n'), (-6, 'u'), (-3, 'm'), (0, 'H')],
        _ => return None,
    };
    let (decimal, exact) = shortest(value, CODE_FIGURES)?;
    // R47 is usual where K47 is not.
    let reach = if unit == Unit::Ohm && decimal.magnitude() == -1 { 0 } else { decimal.magnitude() };
    let (power, letter) = letters.iter().rfind(|(power, _)| *power <= reach).or(letters.first())?;
    let mut text = digits(decimal);
    let shift = decimal.power - power;
    for _ in 0..shift {
        text.push('0');
    }
    let places = usize::try_from(-shift).unwrap_or(0);
    if text.len() <= places {
        text = together(&[&"0".repeat(places - text.len()), &text]);
    }
    text.insert(text.len() - places, *letter);
    if text.len() < 3 {
        text.push('0');
    }
    Some(Marking { code: text, exact })
}

/// The three-character code: two figures and the number of noughts, of picofarads, microhenries or ohms. Under 10 the
/// capacitor's last digit is 9 (tenths) or 8 (hundredths), the others have an `R` for the point.
///
/// Nothing for a figure that is not over 0, has more than two figures, or has too many noughts.
///
/// # Source
/// IEC 60062 clause 4, EIA-198 (from memory); resistors and coils by the custom of small parts (from memory).
#[must_use]
pub fn three_digit(value: f64, unit: Unit) -> Option<String> {
    let base = match unit {
        Unit::Ohm => 0,
        Unit::Farad => -12,
        Unit::Henry => -6,
        _ => return None,
    };
    let (decimal, exact) = shortest(value, 2)?;
    let mut text = digits(decimal);
    let mut power = decimal.power - base;
    if text.len() < 2 {
        text.push('0');
        power -= 1;
    }
    match (power, unit) {
        _ if !exact => return None,
        (-2, Unit::Farad) => text.push('8'),
        (-1, Unit::Farad) => text.push('9'),
        (-2, _) => text.insert(0, 'R'),
        (-1, _) => text.insert(1, 'R'),
        (0..=7, _) => text.push(char::from_digit(power.unsigned_abs(), 10)?),
        _ => return None,
    }
    Some(text)
}

/// The figure rounded to `count` figures, without noughts at the end, and whether nothing was lost.
pub(super) fn shortest(value: f64, count: i32) -> Option<(Decimal, bool)> {
    let decimal = Decimal::rounded(value, count)?.trimmed();
    // Arithmetic before may have moved the last bits; that is no figure lost.
    let exact = libm::fabs(decimal.value()? / value - 1.0) < 1e-12;
    Some((decimal, exact))
}
