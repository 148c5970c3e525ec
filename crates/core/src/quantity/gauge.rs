use alloc::string::String;

use super::{
    decimal::Decimal,
    fault::{Fault, NO_SUCH_GAUGE, WHICH_GAUGE},
};
use crate::text::together;

/// Diameters of the Imperial Standard Wire Gauge from 7/0 to 50, in ten-thousandths of an inch.
///
/// # Source
/// Order in Council 1883, BS 3737:1964 (three public transcriptions agree).
const SWG: [u16; 57] = [
    5000, 4640, 4320, 4000, 3720, 3480, 3240, 3000, 2760, 2520, 2320, 2120, 1920, 1760, 1600, 1440, 1280, 1160, 1040,
    920, 800, 720, 640, 560, 480, 400, 360, 320, 280, 240, 220, 200, 180, 164, 148, 136, 124, 116, 108, 100, 92, 84,
    76, 68, 60, 52, 48, 44, 40, 36, 32, 28, 24, 20, 16, 12, 10,
];
/// The number of the first of them: nought counts 0, 2/0 counts −1.
const SWG_FIRST: i32 = -6;
const AWG_FIRST: i32 = -3;
const AWG_LAST: i32 = 56;

/// Words around a gauge number, in small letters without spaces; the longer before those they contain.
const WORDS: [(&str, Standard); 11] = [
    ("awg", Standard::American),
    ("b&sgauge", Standard::American),
    ("b&s", Standard::American),
    ("s.w.g.", Standard::Imperial),
    ("swg", Standard::Imperial),
    ("gauge", Standard::Unsaid),
    ("gage", Standard::Unsaid),
    ("ga.", Standard::Unsaid),
    ("ga", Standard::Unsaid),
    ("no.", Standard::Number),
    ("#", Standard::Number),
];

#[derive(Clone, Copy, PartialEq)]
enum Standard {
    American,
    Imperial,
    /// A number sign: the American gauge in American books.
    Number,
    Unsaid,
}

/// The diameter in metres of American Wire Gauge `number`, 4/0 being −3.
///
/// 0.005 in · 92^((36 − number)/39), not rounded.
///
/// # Source
/// ASTM B258 (formula from memory; agrees with the printed table's figures).
#[must_use]
pub fn awg_metres(number: f64) -> f64 {
    0.127e-3 * libm::pow(92.0, (36.0 - number) / 39.0)
}

/// The diameter in metres of Imperial Standard Wire Gauge `number`, 2/0 being −1; nothing outside 7/0 to 50.
#[must_use]
pub fn swg_metres(number: i32) -> Option<f64> {
    let ten_thousandths = SWG.get(usize::try_from(number - SWG_FIRST).ok()?)?;
    Decimal::new(u128::from(*ten_thousandths) * 254, -8).value()
}

/// A diameter given as a gauge, in metres, and the notation; nothing where no gauge is spoken of.
pub(super) fn gauge(text: &str) -> Result<Option<(f64, &'static str)>, Fault> {
    let mut rest: &str = &text.to_ascii_lowercase().replace(' ', "");
    let mut said: Option<Standard> = None;
    while let Some((left, standard)) = WORDS.into_iter().find_map(|(word, standard)| {
        let left = rest.strip_prefix(word).or_else(|| rest.strip_suffix(word))?;
        Some((left, standard))
    }) {
        rest = left;
        let vague = matches!(standard, Standard::Number | Standard::Unsaid);
        said = Some(match said {
            Some(said @ (Standard::American | Standard::Imperial)) if vague => said,
            Some(Standard::American | Standard::Imperial) => return Ok(None),
            Some(Standard::Unsaid) if vague => Standard::Unsaid,
            _ => standard,
        });
    }
    let (Some(said), Some(number)) = (said, number(rest)) else { return Ok(None) };
    let whole = number % 2 == 0;
    match said {
        Standard::Unsaid => Err(Fault::new(WHICH_GAUGE).or(together(&[rest, " AWG"])).or(together(&[rest, " SWG"]))),
        Standard::Imperial if whole => match swg_metres(number / 2) {
            Some(metres) => Ok(Some((metres, "gauge_swg"))),
            None => Err(NO_SUCH_GAUGE.into()),
        },
        Standard::American | Standard::Number if (2 * AWG_FIRST..=2 * AWG_LAST).contains(&number) => {
            Ok(Some((awg_metres(f64::from(number) / 2.0), "gauge_awg")))
        }
        _ => Err(NO_SUCH_GAUGE.into()),
    }
}

/// Twice a gauge number: `18`, `22.5`, `4/0`, `000`.
fn number(text: &str) -> Option<i32> {
    if text.len() > 4 || !text.starts_with(|letter: char| letter.is_ascii_digit()) {
        return None;
    }
    if text.len() > 1 && text.bytes().all(|digit| digit == b'0') {
        return i32::try_from(text.len()).ok().map(|noughts| 2 - 2 * noughts);
    }
    if let Some(noughts) = text.strip_suffix("/0") {
        let noughts: i32 = String::from(noughts).parse().ok()?;
        return (noughts > 0).then_some(2 - 2 * noughts);
    }
    let half = text.strip_suffix(".5");
    let number: i32 = half.unwrap_or(text).parse().ok()?;
    Some(2 * number + i32::from(half.is_some()))
}
