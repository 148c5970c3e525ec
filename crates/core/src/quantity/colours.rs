use alloc::vec::Vec;

use super::{
    code::shortest,
    decimal::Decimal,
    fault::{Fault, UNKNOWN_COLOUR, WRONG_BANDS},
    tolerance::thousandths,
    written::digits,
};

/// A colour on a resistor: names, digit, power of ten, tolerance in 1/1000 %, temperature coefficient in ppm/K.
struct Colour {
    name: &'static str,
    short: &'static str,
    digit: Option<u8>,
    power: i32,
    tolerance: Option<u32>,
    ppm: Option<u16>,
}

const fn colour(
    name: &'static str,
    short: &'static str,
    digit: Option<u8>,
    power: i32,
    tolerance: Option<u32>,
    ppm: Option<u16>,
) -> Colour {
    Colour { name, short, digit, power, tolerance, ppm }
}

/// # Source
/// IEC 60062:2016, tables 1 to 3 (tolerances of 5, 10, 1 and 2 % and digits seen, the rest from memory); two-letter
/// names by IEC 60757.
const COLOURS: [Colour; 13] = [
    colour("pink", "pk", None, -3, None, None),
    colour("silver", "sr", None, -2, Some(10_000), None),
    colour("gold", "gd", None, -1, Some(5000), None),
    colour("black", "bk", Some(0), 0, None, Some(250)),
    colour("brown", "bn", Some(1), 1, Some(1000), Some(100)),
    colour("red", "rd", Some(2), 2, Some(2000), Some(50)),
    colour("orange", "og", Some(3), 3, Some(50), Some(15)),
    colour("yellow", "ye", Some(4), 4, Some(20), Some(25)),
    colour("green", "gn", Some(5), 5, Some(500), Some(20)),
    colour("blue", "bu", Some(6), 6, Some(250), Some(10)),
    colour("violet", "vt", Some(7), 7, Some(100), Some(5)),
    colour("grey", "gy", Some(8), 8, Some(10), Some(1)),
    colour("white", "wh", Some(9), 9, None, None),
];
/// No band at all where the tolerance would be.
const NO_BAND: u32 = 20_000;

/// What the bands of a resistor say.
#[derive(Clone, Debug, PartialEq)]
pub struct Bands {
    /// The colours' names in order.
    pub colours: Vec<&'static str>,
    /// Ohms.
    pub ohms: f64,
    /// A fraction; 0.2 where there is no band for it.
    pub tolerance: f64,
    /// Temperature coefficient in ppm/K, where there is a sixth band.
    pub ppm_per_kelvin: Option<f64>,
}

/// Reads three to six colours as a resistor's bands: two figures of three and four bands, three of five and six, then
/// the power of ten, the tolerance, the temperature coefficient.
///
/// Nothing for another number of colours, a first band that is no figure over nought, or a colour that does not stand
/// for what its place needs.
///
/// ```
/// use tagstrip_core::quantity::bands;
/// assert_eq!(bands(&["yellow", "violet", "red", "gold"]).unwrap().ohms, 4700.0);
/// ```
///
/// # Source
/// IEC 60062.
#[must_use]
pub fn bands(colours: &[&str]) -> Option<Bands> {
    let colours: Vec<&Colour> = colours.iter().map(|name| find(name)).collect::<Option<_>>()?;
    let figures = match colours.len() {
        3 | 4 => 2,
        5 | 6 => 3,
        _ => return None,
    };
    let mut digits = 0;
    for colour in colours.iter().take(figures) {
        digits = digits * 10 + u128::from(colour.digit?);
    }
    if colours.first()?.digit == Some(0) {
        return None;
    }
    let ohms = Decimal::new(digits, colours.get(figures)?.power).value()?;
    let tolerance = colours.get(figures + 1).map_or(Some(NO_BAND), |colour| colour.tolerance)?;
    let ppm_per_kelvin = match colours.get(figures + 2) {
        Some(colour) => Some(f64::from(colour.ppm?)),
        None => None,
    };
    let colours = colours.iter().map(|colour| colour.name).collect();
    Some(Bands { colours, ohms, tolerance: thousandths(tolerance), ppm_per_kelvin })
}

/// The bands of a resistor of so many ohms: two figures, or three where two do not say it or the tolerance is under 5 %;
/// the power of ten; the tolerance, but no band where it is 20 % or not said.
///
/// Nothing for a figure that three digits do not say, a tolerance or power of ten without a colour, or three figures of
/// no said tolerance: four bands would be read as two figures.
///
/// # Source
/// IEC 60062.
#[must_use]
pub fn bands_of(ohms: f64, tolerance: Option<f64>) -> Option<Vec<&'static str>> {
    let tight = tolerance.is_some_and(|tolerance| tolerance < 0.0499);
    let (decimal, exact) = shortest(ohms, 3)?;
    let count = if decimal.digits > 99 || tight { 3 } else { 2 };
    let mut figures = digits(decimal);
    let mut power = decimal.power;
    while figures.len() < count {
        figures.push('0');
        power -= 1;
    }
    let mut names = Vec::new();
    for figure in figures.bytes() {
        let figure = Some(figure.checked_sub(b'0')?);
        names.push(COLOURS.iter().find(|colour| colour.digit == figure)?.name);
    }
    names.push(COLOURS.iter().find(|colour| colour.power == power)?.name);
    let unsaid = tolerance.is_none_or(|tolerance| is_near(NO_BAND, tolerance));
    if let Some(tolerance) = tolerance.filter(|_| !unsaid) {
        names.push(
            COLOURS.iter().find(|colour| colour.tolerance.is_some_and(|percent| is_near(percent, tolerance)))?.name,
        );
    }
    (exact && !(unsaid && count == 3)).then_some(names)
}

fn is_near(percent: u32, tolerance: f64) -> bool {
    libm::fabs(thousandths(percent) / tolerance - 1.0) < 1e-9
}

/// Reads a text that is made of colours; nothing where it is not.
pub(super) fn read_bands(text: &str) -> Result<Option<Bands>, Fault> {
    let small = text.to_ascii_lowercase();
    let words: Vec<&str> = small.split([' ', ',', '-', '/']).filter(|word| !word.is_empty()).collect();
    let known = words.iter().filter(|word| find(word).is_some()).count();
    let all_words = words.iter().all(|word| word.bytes().all(|letter| letter.is_ascii_alphabetic()));
    if !all_words || known == 0 || (known == 1 && words.len() != 1 && words.len() < 3) {
        return Ok(None);
    }
    if known < words.len() {
        let guesses: Option<Vec<&str>> =
            words.iter().map(|word| find(word).map(|c| c.name).or_else(|| alike(word))).collect();
        return Err(Fault::new(UNKNOWN_COLOUR).or_all(guesses.map(|names| names.join(" "))));
    }
    let read = bands(&words);
    if read.is_none() {
        let turned: Vec<&str> = words.iter().rev().filter_map(|word| find(word)).map(|colour| colour.name).collect();
        return Err(Fault::new(WRONG_BANDS).or(turned.join(" ")));
    }
    Ok(read)
}

fn find(name: &str) -> Option<&'static Colour> {
    let name = match name {
        "purple" => "violet",
        "gray" => "grey",
        name => name,
    };
    COLOURS.iter().find(|colour| colour.name == name || colour.short == name)
}

/// The one colour that a word of three letters or more is one slip away from.
fn alike(word: &str) -> Option<&'static str> {
    let mut close =
        COLOURS.iter().filter(|colour| word.len() > 2 && is_one_slip(word.as_bytes(), colour.name.as_bytes()));
    match (close.next(), close.next()) {
        (Some(colour), None) => Some(colour.name),
        _ => None,
    }
}

/// Whether one letter put in, left out or changed makes one word of the other.
fn is_one_slip(one: &[u8], other: &[u8]) -> bool {
    let same = one.iter().zip(other).take_while(|(a, b)| a == b).count();
    let (one, other) = (one.get(same..).unwrap_or_default(), other.get(same..).unwrap_or_default());
    let but_first = |word: &'_ [u8]| word.get(1..).map(<[u8]>::to_vec);
    but_first(one) == but_first(other)
        || but_first(one).as_deref() == Some(other)
        || but_first(other).as_deref() == Some(one)
}
