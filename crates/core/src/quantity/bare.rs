use super::{
    Prefix, Unit,
    code::{is_surely_code, three_digits},
    decimal::Decimal,
    fault::{Fault, WHICH_CODE, WHICH_UNIT},
    figure::{Figure, Form},
    written::engineering,
};
use crate::text::together;

/// What a figure without prefix and unit is.
#[derive(Clone, Copy, Debug)]
pub(super) enum Bare {
    /// So many of this power of ten.
    Times(i32),
    /// A code for this.
    Code(Decimal),
}

/// How a figure without prefix and unit is read, and the notation.
///
/// - With a prefix shown beside the field it is in that; but a power of ten, three digits that are a capacitor's code,
///   and a decimal under 1 beside a capacitor's p or n are asked.
/// - Otherwise a capacitor's decimal under 1 is in microfarads, as old diagrams have it; under 10 pF so read it may be
///   farads and is asked, under 0.01 pF it can be nothing else. Three digits are a code where they surely are. The rest,
///   also an old diagram's whole number of mmf, may be picofarads or microfarads and is asked.
/// - A bare length is asked; everything else is in the unit itself, as is a figure with a power of ten.
pub(super) fn bare(figure: &Figure, unit: Unit, shown: Option<Prefix>) -> Result<(Bare, &'static str), Fault> {
    let written = figure.text;
    let symbol = unit.symbol();
    let ten = Bare::Times;
    let is_under_one =
        figure.decimal.magnitude() < 0 || figure.form == Form::Fraction && figure.decimal.digits < figure.over;
    let code = (unit == Unit::Farad && figure.form == Form::Whole && written.len() == 3)
        .then(|| three_digits(written))
        .flatten();
    if figure.decimal.digits == 0 {
        return Ok((ten(0), "plain"));
    }
    if let Some(prefix) = shown {
        let in_shown = together(&[written, " ", prefix.symbol().encode_utf8(&mut [0; 4]), symbol]);
        if figure.form == Form::Exponent {
            return Err(Fault::new(WHICH_UNIT).or(in_shown).or(together(&[written, " ", symbol])));
        }
        if let Some(code) = code.filter(|_| is_surely_code(written)) {
            return Err(Fault::new(WHICH_CODE).or(in_shown).or_all(engineering(code, unit)));
        }
        if unit == Unit::Farad && is_under_one && matches!(prefix, Prefix::Pico | Prefix::Nano) {
            return Err(Fault::new(WHICH_UNIT).or(in_shown).or(together(&[written, " µF"])));
        }
        return Ok((ten(prefix.power()), "shown"));
    }
    if figure.form == Form::Exponent {
        return Ok((ten(0), "exponent"));
    }
    match unit {
        Unit::Farad if is_under_one => match figure.decimal.magnitude() {
            ..-8 => Ok((ten(0), "plain")),
            -8..-5 => {
                let both = [figure.decimal.times_ten(-6), figure.decimal].map(|farads| engineering(farads, unit));
                Err(Fault::new(WHICH_UNIT).or_all(both.into_iter().flatten()))
            }
            _ => Ok((ten(-6), "old_decimal")),
        },
        Unit::Farad => {
            let both = [together(&[written, " pF"]), together(&[written, " µF"])];
            match code {
                Some(code) if is_surely_code(written) => Ok((Bare::Code(code), "three_digit")),
                Some(code) => Err(Fault::new(WHICH_CODE).or_all(both).or_all(engineering(code, unit))),
                None => Err(Fault::new(WHICH_UNIT).or_all(both)),
            }
        }
        Unit::Metre => {
            let fault = Fault::new(WHICH_UNIT).or(together(&[written, " in"])).or(together(&[written, " mm"]));
            Err(if is_under_one { fault.or(together(&[written, " m"])) } else { fault })
        }
        _ => Ok((ten(0), if figure.form == Form::Fraction { "fraction" } else { "plain" })),
    }
}
