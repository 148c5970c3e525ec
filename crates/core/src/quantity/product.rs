use super::{
    decimal::Decimal,
    figure::{Form, figure},
    scan::Scan,
};

/// Decimal places that a fraction is tried to: 2^18 below the line.
const PLACES: u32 = 18;

/// `figure`/`below` times `by`/`over`, rounded once where the fraction comes out in decimals.
pub(super) fn product(figure: Decimal, below: u128, by: Decimal, over: u128) -> Option<f64> {
    let whole = Decimal::new(figure.digits.checked_mul(by.digits)?, figure.power.saturating_add(by.power));
    let below = below.checked_mul(over)?;
    let Decimal { mut digits, mut power } = whole;
    for _ in 0..PLACES {
        if digits.is_multiple_of(below) {
            return Decimal::new(digits / below, power).value();
        }
        match digits.checked_mul(10) {
            Some(more) => (digits, power) = (more, power.saturating_sub(1)),
            None => break,
        }
    }
    Some(whole.value()? / below as f64)
}

/// `5' 6 1/2"` in metres.
pub(super) fn feet_and_inches(text: &str) -> Option<f64> {
    let mut scan = Scan::new(text);
    let feet = figure(&mut scan).ok()??;
    scan.spaces();
    if !["feet", "foot", "ft.", "ft", "'"].into_iter().any(|word| scan.eat(word)) {
        return None;
    }
    scan.spaces();
    let inches = figure(&mut scan).ok()??;
    scan.spaces();
    if !matches!(scan.rest(), "\"" | "in" | "in." | "ins" | "inch" | "inches") || feet.form == Form::Exponent {
        return None;
    }
    let feet = product(feet.decimal, feet.over, Decimal::new(3048, -4), 1)?;
    Some(feet + product(inches.decimal, inches.over, Decimal::new(254, -4), 1)?)
}
