use alloc::string::String;

use super::{
    Unit,
    decimal::Decimal,
    fault::{BAD_TOLERANCE, Fault},
    figure::figure,
    scan::Scan,
    words::{Meaning, meaning},
};
use crate::text::{is_letter, together};

/// What stands behind a figure: words, and a tolerance in figures.
pub(super) struct Behind<'a> {
    /// The words as written, spaces around them too.
    pub raw: &'a str,
    /// The words without spaces, hyphens and points.
    pub words: String,
    /// What stands behind `±`, or the percentage at the end, `5%`.
    pub tolerance: Option<&'a str>,
}

impl<'a> Behind<'a> {
    /// Parts what stands behind a figure.
    pub fn new(rest: &'a str) -> Self {
        let (raw, tolerance) = match rest.split_once('±') {
            Some((raw, tolerance)) => (raw, Some(tolerance)),
            None => percentage(rest).map_or((rest, None), |(raw, tolerance)| (raw, Some(tolerance))),
        };
        Behind { raw, words: joined(raw), tolerance }
    }

    /// Whether the words follow the figure closely and are in one piece, as letters printed on a part are.
    pub fn is_tight(&self) -> bool {
        !self.raw.trim_end_matches(' ').contains(' ')
    }
}

/// The words of a phrase in one: `k ohm`, `k-ohm` and `mfd.` are `kohm` and `mfd`.
pub(super) fn joined(raw: &str) -> String {
    let next_of = |at: usize| raw.get(at + 1..).and_then(|rest| rest.chars().next());
    let kept = raw.char_indices().filter(|(at, letter)| match letter {
        ' ' => false,
        '.' => next_of(*at).is_some_and(|next| next.is_ascii_digit()),
        '-' => !next_of(*at).is_some_and(is_letter),
        _ => true,
    });
    kept.map(|(_, letter)| letter).collect()
}

/// A percentage at the end, and what stands before it.
fn percentage(rest: &str) -> Option<(&str, &str)> {
    let body = rest.trim_end().strip_suffix('%')?.trim_end();
    let before = body.trim_end_matches(|letter: char| letter.is_ascii_digit() || matches!(letter, '.' | ',' | '/'));
    (before.len() < body.len()).then(|| (before, rest.get(before.len()..).unwrap_or("")))
}

/// A tolerance in percent, or in the unit itself, as a fraction of `value`.
///
/// # Errors
/// Not a figure, over 100 %, or a figure of nothing said; then percent is tried.
pub(super) fn tolerance(text: &str, unit: Unit, value: f64) -> Result<f64, Fault> {
    let bad = || Fault::new(BAD_TOLERANCE);
    let mut scan = Scan::new(text);
    scan.spaces();
    let Ok(Some(figure)) = figure(&mut scan) else { return Err(bad()) };
    let words = joined(scan.rest());
    if words.is_empty() {
        return Err(bad().or(together(&["±", figure.text, " %"])));
    }
    let over = figure.over as f64;
    let fraction = match meaning(&words, Unit::Percent) {
        Meaning::Scale { .. } => figure.decimal.times_ten(-2).value().map(|fraction| fraction / over),
        _ => match meaning(&words, unit) {
            Meaning::Scale { by, over: divisor, .. } => {
                let digits = figure.decimal.digits.checked_mul(by.digits);
                let absolute =
                    digits.and_then(|digits| Decimal::new(digits, figure.decimal.power).times_ten(by.power).value());
                absolute.map(|absolute| libm::fabs(absolute / over / divisor as f64 / value))
            }
            _ => None,
        },
    };
    fraction.filter(|fraction| (0.0..=1.0).contains(fraction)).ok_or_else(bad)
}
