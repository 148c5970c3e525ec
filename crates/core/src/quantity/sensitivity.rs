use super::{
    decimal::Decimal,
    fault::{Fault, WHICH_REFERENCE},
};
use crate::text::together;

/// What decibels of a microphone are counted from, in small letters without spaces, and how many volts a pascal it is:
/// today a volt a pascal, in old sheets a volt a microbar, which is a dyne on a square centimetre and a tenth of a pascal.
const REFERENCES: [(&str, f64); 7] = [
    ("v/pa", 1.0),
    ("mv/pa", 1e-3),
    ("v/µbar", 10.0),
    ("v/ubar", 10.0),
    ("v/microbar", 10.0),
    ("v/dyn/cm^2", 10.0),
    ("v/dyne/cm^2", 10.0),
];

/// Words between the figure and what it is counted from.
const BETWEEN: [&str; 5] = ["ref.", "ref", "re.", "re", "rel"];

/// A microphone's sensitivity given in decibels (`-54 dB re 1 V/Pa`, `−52 dBV/Pa`, `-60 dB re 1 V/µbar`), in volts a
/// pascal; nothing where no decibels are spoken of.
pub(super) fn sensitivity(text: &str) -> Result<Option<f64>, Fault> {
    let rest = &text.to_ascii_lowercase().replace(' ', "");
    let Some((figure, behind)) = rest.split_once("db") else { return Ok(None) };
    let Some(db) = figure_of(figure) else { return Ok(None) };
    let behind = BETWEEN.into_iter().find_map(|word| behind.strip_prefix(word)).unwrap_or(behind);
    let behind = behind.strip_prefix(':').unwrap_or(behind);
    if behind.is_empty() {
        let with = |reference: &str| together(&[figure, " dB re 1 ", reference]);
        return Err(Fault::new(WHICH_REFERENCE).or(with("V/Pa")).or(with("V/µbar")));
    }
    let behind = behind.strip_prefix('1').unwrap_or(behind);
    let Some((_, volts)) = REFERENCES.into_iter().find(|(word, _)| *word == behind) else { return Ok(None) };
    Ok(Some(volts * libm::pow(10.0, db / 20.0)))
}

/// Decibels with a sign and a decimal part: `-54`, `-31.5`.
fn figure_of(text: &str) -> Option<f64> {
    let plain = text.strip_prefix(['-', '+']).unwrap_or(text);
    let sane = plain.len() <= 6 && plain.starts_with(|letter: char| letter.is_ascii_digit());
    let digits = plain.replace(',', ".");
    let (whole, part) = digits.split_once('.').unwrap_or((&digits, ""));
    let all: alloc::string::String = together(&[whole, part]);
    if !sane || !all.bytes().all(|digit| digit.is_ascii_digit()) {
        return None;
    }
    let power = -i32::try_from(part.len()).ok()?;
    let size = Decimal::new(all.parse().ok()?, power).value()?;
    Some(if text.starts_with('-') { -size } else { size })
}
