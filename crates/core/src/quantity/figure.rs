use alloc::{string::String, vec::Vec};

use super::{
    decimal::Decimal,
    fault::{Fault, OVER_NOUGHT, TOO_FAR, TWO_POINTS, WHICH_COMMA},
    scan::Scan,
};
use crate::text::together;

/// A figure as written, without sign, prefix and unit: `decimal` over `over`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Figure<'a> {
    /// The digits and power of ten; of a fraction, the part above the line.
    pub decimal: Decimal,
    /// The part below the line of a fraction, else 1.
    pub over: u128,
    /// How it is written.
    pub form: Form,
    /// As it stands in the text.
    pub text: &'a str,
}

/// The ways a figure is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Form {
    /// Digits alone.
    Whole,
    /// With a decimal point or comma, or groups of thousands.
    Point,
    /// `1/2` or `1 1/2`.
    Fraction,
    /// With a power of ten.
    Exponent,
}

/// More digits than these change nothing in a double.
const KEPT: usize = 30;
/// Digits of the parts of a fraction, and of an exponent.
const FRACTION_DIGITS: usize = 9;
const EXPONENT_DIGITS: usize = 3;

/// Reads a figure where `scan` stands, if there is one, and moves behind it.
///
/// # Errors
/// More than one point; a comma with two readings, with the figure's two readings to try; nought below a line.
pub(super) fn figure<'a>(scan: &mut Scan<'a>) -> Result<Option<Figure<'a>>, Fault> {
    let start = *scan;
    let run = scan.run(|letter| letter.is_ascii_digit() || matches!(letter, '.' | ','));
    let mut run = run.trim_end_matches(',');
    // The point that ends a sentence, not the figure's own.
    if let Some(left) = run.strip_suffix('.').filter(|left| left.contains(['.', ','])) {
        run = left;
    }
    *scan = after(start, run);
    if !run.contains(|letter: char| letter.is_ascii_digit()) {
        *scan = start;
        return Ok(None);
    }
    let whole = run.bytes().all(|letter| letter.is_ascii_digit());
    let mut form = if whole { Form::Whole } else { Form::Point };
    let (mut decimal, mut over) = (whole_or_parts(run, whole)?, 1);
    if whole {
        if let Some((above, below)) = fraction(scan, run)? {
            (decimal, over, form) = (Decimal::new(above, 0), below, Form::Fraction);
        }
        while form != Form::Fraction && is_thousand(*scan, run) {
            scan.eat(" 000");
            (decimal, form) = (decimal.times_ten(3), Form::Point);
        }
    }
    if form != Form::Fraction
        && let Some(power) = exponent(scan)?
    {
        (decimal, form) = (decimal.times_ten(power), Form::Exponent);
    }
    let length = start.rest().len() - scan.rest().len();
    Ok(Some(Figure { decimal, over, form, text: start.rest().get(..length).unwrap_or(run) }))
}

fn digit(byte: u8) -> u128 {
    u128::from(byte.wrapping_sub(b'0') % 10)
}

/// Digits before and behind the decimal point as one figure.
pub(super) fn gather(before: &str, behind: &str) -> Decimal {
    let mut decimal = Decimal::new(0, 0);
    let mut kept = 0;
    let places = before.len();
    for (at, digit) in before.bytes().chain(behind.bytes()).map(digit).enumerate() {
        let fraction = at >= places;
        if kept < KEPT {
            decimal = Decimal::new(decimal.digits * 10 + digit, decimal.power - i32::from(fraction));
            kept += usize::from(decimal.digits > 0);
        } else {
            // Only whether something follows can matter now: it breaks a tie between two doubles.
            if digit > 0 && kept == KEPT {
                decimal = Decimal::new(decimal.digits * 10 + 1, decimal.power - 1);
                kept += 1;
            }
            decimal.power += i32::from(!fraction);
        }
    }
    decimal
}

fn whole_or_parts(run: &str, whole: bool) -> Result<Decimal, Fault> {
    if whole {
        return Ok(gather(run, ""));
    }
    let (before, behind) = parts(run)?;
    Ok(gather(&before, behind))
}

fn after<'a>(start: Scan<'a>, run: &str) -> Scan<'a> {
    Scan::new(start.rest().get(run.len()..).unwrap_or(""))
}

/// Whether ` 000` follows a figure of one to three digits, as thousands are set apart.
fn is_thousand(mut scan: Scan, run: &str) -> bool {
    (1..=3).contains(&run.len())
        && !run.starts_with('0')
        && scan.eat(" 000")
        && !scan.peek().is_some_and(|next| next.is_ascii_digit() || next == '/')
}

/// What stands before and behind the decimal sign, thousands taken together.
fn parts(run: &str) -> Result<(String, &str), Fault> {
    let (points, commas) = (run.matches('.').count(), run.matches(',').count());
    let sign = match (points, commas) {
        (1, 0) => '.',
        (0, 1) => {
            let (before, behind) = run.split_once(',').unwrap_or((run, ""));
            if behind.len() == 3 && (1..=3).contains(&before.len()) && !before.starts_with('0') {
                return Err(Fault::new(WHICH_COMMA)
                    .or(together(&[before, ".", behind]))
                    .or(together(&[before, behind])));
            }
            ','
        }
        (0, _) => return groups(run, ',').map(|whole| (whole, "")),
        (_, 0) => return groups(run, '.').map(|whole| (whole, "")),
        // The sign that comes last and once marks the decimals.
        (1, _) if run.rfind('.') > run.rfind(',') => '.',
        (_, 1) if run.rfind(',') > run.rfind('.') => ',',
        _ => return Err(TWO_POINTS.into()),
    };
    let (before, behind) = run.split_once(sign).unwrap_or((run, ""));
    let other = if sign == '.' { ',' } else { '.' };
    if behind.contains(other) {
        return Err(TWO_POINTS.into());
    }
    let whole = if before.contains(other) { groups(before, other)? } else { before.into() };
    Ok((whole, behind))
}

/// `1,234,567` without its commas, if they stand where thousands do.
fn groups(run: &str, sign: char) -> Result<String, Fault> {
    let groups: Vec<&str> = run.split(sign).collect();
    let in_place = groups.iter().enumerate().all(|(at, group)| {
        if at == 0 { (1..=3).contains(&group.len()) && !group.starts_with('0') } else { group.len() == 3 }
    });
    if in_place { Ok(groups.concat()) } else { Err(TWO_POINTS.into()) }
}

/// Above and below the line of `1/2`, `1 1/2` or `1-1/2` whose first digits are `run`.
fn fraction(scan: &mut Scan, run: &str) -> Result<Option<(u128, u128)>, Fault> {
    let mut ahead = *scan;
    let (whole, above) = if ahead.eat("/") {
        ("0", run)
    } else if ahead.eat(" ") || ahead.eat("-") {
        let above = ahead.digits();
        if above.is_empty() || !ahead.eat("/") {
            return Ok(None);
        }
        (run, above)
    } else {
        return Ok(None);
    };
    let below = ahead.digits();
    if below.is_empty() {
        return Ok(None);
    }
    *scan = ahead;
    if [whole, above, below].iter().any(|part| part.len() > FRACTION_DIGITS) {
        return Err(TOO_FAR.into());
    }
    let [whole, above, below] = [whole, above, below].map(|part| gather(part, "").digits);
    if below == 0 { Err(OVER_NOUGHT.into()) } else { Ok(Some((whole * below + above, below))) }
}

/// The power of ten of `e-6` or `×10^-6`.
fn exponent(scan: &mut Scan) -> Result<Option<i32>, Fault> {
    let mut ahead = *scan;
    if !(ahead.eat("e") || ahead.eat("E")) {
        ahead.spaces();
        if !(ahead.eat("×") || ahead.eat("x")) {
            return Ok(None);
        }
        ahead.spaces();
        if !ahead.eat("10^") {
            return Ok(None);
        }
    }
    let minus = ahead.eat("-");
    if !minus {
        ahead.eat("+");
    }
    let digits = ahead.digits();
    if digits.is_empty() {
        return Ok(None);
    }
    *scan = ahead;
    if digits.len() > EXPONENT_DIGITS {
        return Err(TOO_FAR.into());
    }
    let power = digits.bytes().fold(0, |power, digit| power * 10 + i32::from(digit.wrapping_sub(b'0') % 10));
    Ok(Some(if minus { -power } else { power }))
}
