use super::decimal::Decimal;

/// A tolerance letter and what it allows under and over, in 1/1000 of a percent.
///
/// # Source
/// IEC 60062 (from memory).
const LETTERS: [(char, u32, u32); 18] = [
    ('E', 5, 5),
    ('L', 10, 10),
    ('P', 20, 20),
    ('W', 50, 50),
    ('B', 100, 100),
    ('C', 250, 250),
    ('D', 500, 500),
    ('F', 1000, 1000),
    ('G', 2000, 2000),
    ('H', 3000, 3000),
    ('J', 5000, 5000),
    ('K', 10_000, 10_000),
    ('M', 20_000, 20_000),
    ('N', 30_000, 30_000),
    ('Q', 10_000, 30_000),
    ('S', 20_000, 50_000),
    ('T', 10_000, 50_000),
    ('Z', 20_000, 80_000),
];

/// Under 10 pF a capacitor's letter counts in 1/100 pF.
const SMALL_CAPACITORS: [(char, u32); 5] = [('B', 10), ('C', 25), ('D', 50), ('F', 100), ('G', 200)];

/// What a tolerance letter allows, as fractions under and over.
///
/// # Source
/// IEC 60062 (from memory).
#[must_use]
pub fn letter_tolerance(letter: char) -> Option<(f64, f64)> {
    let (_, under, over) = LETTERS.into_iter().find(|(name, ..)| *name == letter)?;
    Some((thousandths(under), thousandths(over)))
}

/// The letter for a tolerance that is the same on both sides.
#[must_use]
pub fn tolerance_letter(tolerance: f64) -> Option<char> {
    let near = |percent: u32| libm::fabs(thousandths(percent) / tolerance - 1.0) < 1e-9;
    LETTERS.into_iter().find(|(_, under, over)| under == over && near(*under)).map(|(letter, ..)| letter)
}

/// The fraction for 1/1000 of a percent, the double nearest to its decimal.
pub(super) fn thousandths(percent: u32) -> f64 {
    Decimal::new(u128::from(percent), -5).value().unwrap_or(0.0)
}

/// The wider side of a letter, as a fraction of `value`; a capacitor's letter under 10 pF counts picofarads.
pub(super) fn wider(letter: char, value: f64, farads: bool) -> Option<f64> {
    let letter = letter.to_ascii_uppercase();
    if farads
        && value > 0.0
        && value < 9.999_999e-12
        && let Some((_, hundredths)) = SMALL_CAPACITORS.iter().find(|(name, _)| *name == letter)
    {
        return Some(f64::from(*hundredths) * 1e-14 / value);
    }
    letter_tolerance(letter).map(|(under, over)| under.max(over))
}
