use alloc::{string::String, vec::Vec};

use super::{Prefix, Reading, Unit, Unread, decimal::Decimal};

/// Every code an [`Unread`] may carry.
pub const CODES: &[&str] = &["empty", "unknown_word", "too_far"];

/// Every notation a [`Reading`] may have.
pub const NOTATIONS: &[&str] = &["plain"];

/// Reads a figure with its prefix and unit.
///
/// # Errors
/// Why the text was not read, with texts that would be.
pub fn read(text: &str, unit: Unit, shown: Option<Prefix>) -> Result<Reading, Unread> {
    let unread = |code| Unread { code, mends: Vec::new() };
    let text = text.trim().replace('u', "µ");
    let figure: String = text.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
    let rest = text.get(figure.len()..).unwrap_or("").trim();
    if figure.is_empty() {
        return Err(unread("empty"));
    }
    let digits = figure.replace('.', "").parse().map_err(|_| unread("too_far"))?;
    let places = figure.split_once('.').map_or(0, |(_, after)| after.len());
    let rest = rest.strip_suffix(unit.symbol()).unwrap_or(rest);
    let prefix = if rest.is_empty() { shown } else { Some(Prefix::of(rest).ok_or_else(|| unread("unknown_word"))?) };
    let power = prefix.map_or(0, Prefix::power) - i32::try_from(places).map_err(|_| unread("too_far"))?;
    let value = Decimal::new(digits, power).value().ok_or_else(|| unread("too_far"))?;
    Ok(Reading { value, tolerance: None, notation: "plain" })
}
