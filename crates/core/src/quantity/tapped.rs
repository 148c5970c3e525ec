use alloc::string::String;

use super::fault::{Fault, TAPPED_WINDING};
use crate::text::{counted, together};

/// `275-0-275`, `550 V CT`: the volts of a winding with a tap in its middle. They have two readings, from the tap to an
/// end and from end to end, and both are offered, the first first.
pub(super) fn tapped(text: &str) -> Option<Fault> {
    let mut compact: String = text.chars().filter(|letter| *letter != ' ').collect();
    compact.make_ascii_lowercase();
    let sides = |mark: &str| {
        let (one, other) = without_unit(&compact).split_once(mark)?;
        (without_unit(one) == other).then(|| hundredths(other))?
    };
    let whole = || {
        let volts = ["ct", "c.t.", "c.t"].into_iter().find_map(|word| compact.strip_suffix(word))?;
        hundredths(without_unit(volts)).map(|whole| whole / 2)
    };
    let side = sides("-0-").or_else(|| sides("/0/")).or_else(whole).filter(|side| *side > 0)?;
    Some(Fault::new(TAPPED_WINDING).or(volts(side)).or(volts(2 * side)))
}

fn without_unit(text: &str) -> &str {
    ["volts", "volt", "v"].into_iter().find_map(|unit| text.strip_suffix(unit)).unwrap_or(text)
}

/// A plain figure with up to two decimals, under a million, in hundredths.
fn hundredths(text: &str) -> Option<usize> {
    let (whole, decimals) = text.split_once('.').unwrap_or((text, ""));
    let digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if whole.is_empty() || whole.len() > 6 || decimals.len() > 2 || !digits(whole) || !digits(decimals) {
        return None;
    }
    let padded = together(&[whole, decimals, "00".get(decimals.len()..)?]);
    padded.parse().ok()
}

fn volts(hundredths: usize) -> String {
    let (whole, rest) = (counted(hundredths / 100), hundredths % 100);
    match (rest / 10, rest % 10) {
        (0, 0) => together(&[&whole, " V"]),
        (tenths, 0) => together(&[&whole, ".", &counted(tenths), " V"]),
        (tenths, last) => together(&[&whole, ".", &counted(tenths), &counted(last), " V"]),
    }
}
