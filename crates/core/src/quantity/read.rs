use alloc::{string::String, vec::Vec};

use super::{
    Mend, Prefix, Reading, Unit, Unread,
    colours::read_bands,
    fault::{EMPTY, Fault, LETTER_FOR_DIGIT, TOO_LONG},
    gauge::gauge,
    product::feet_and_inches,
    sensitivity::sensitivity,
    sentence::Sentence,
    spelling::spell,
    tapped::tapped,
};

/// Every notation that a [`Reading`] may have.
pub const NOTATIONS: &[&str] = &[
    "plain",
    "fraction",
    "exponent",
    "shown",
    "percent",
    "letter_code",
    "three_digit",
    "bands",
    "old_decimal",
    "old_unit",
    "converted",
    "gauge_awg",
    "gauge_swg",
    "decibels",
];

/// A question leads to another at most so often.
const DEEPEST: u32 = 2;
/// No more texts than these are offered.
const MOST_MENDS: usize = 4;

/// Reads a figure as people write it: on parts, in old diagrams, on a phone.
///
/// `shown` is the prefix that stands beside the field on the screen, so that a bare figure is in it.
///
/// **What is read.** Decimals with point or comma, groups of thousands that can be nothing else, fractions (`1/2`,
/// `1 1/2`, `½`), powers of ten (`1e-6`, `4.7×10^-9`); prefixes and units in symbols or words, old ones too (`mfd`,
/// `mmf`, `kc`, `mc`, `meg`, `mho`), which may be left out or repeat what the field says; IEC 60062's letter codes
/// with their tolerance letters (`4K7J`, `R47`, `p68`, `6V3`); for farads also three-digit codes (`104`, `473K`); for
/// ohms colours in words (`yellow violet red gold`); for metres inches, feet and wire gauges; for
/// a microphone decibels re 1 V/Pa or 1 V/µbar; a tolerance (`±5 %`, `10%`,
/// `±0.5pF`). Typing marks of every kind (full width, no-break spaces, true minus, raised point) count as plain ones.
///
/// **What a bare figure is.** The unit itself, but a capacitor's decimal under 1 is in microfarads as in old diagrams,
/// and three digits that are a code are one. A capacitor's other bare figures (microfarads of an electrolytic or
/// micromicrofarads of an old mica), and bare lengths, have two readings and are asked. A nought is nought.
///
/// **What is never guessed.** `1,234`; `M` but with ohms and hertz (mega or the old thousandth; with farads the old
/// millionth); `m` with farads (milli or the old micro), and with ohms and hertz unless it is `mΩ`; a decimal so small
/// that it is farads as well as microfarads; a gauge of no said standard; decibels of no said reference; the volts of a
/// tapped winding (`275-0-275`, `550 V CT`), from the tap or from end to end.
///
/// The value is the double nearest to the decimal written. Range is not minded here.
///
/// # Errors
/// A code of [`CODES`](super::CODES) and texts that are read without a question: both readings where there are two, the
/// text set right where a slip is plain (a letter O for a nought, a doubled prefix, colours from the wrong end).
///
/// ```
/// use tagstrip_core::quantity::{Unit, read};
/// assert_eq!(read("4k7", Unit::Ohm, None).unwrap().value, 4700.0);
/// assert_eq!(read(".001", Unit::Farad, None).unwrap().value, 1e-9);
/// assert_eq!(read("22Ok", Unit::Ohm, None).unwrap_err().mends[0].text, "220k");
/// ```
///
/// # Source
/// IEC 60062 (codes and colours); custom of American and British radio books of the 1930s to 1960s (from memory).
pub fn read(text: &str, unit: Unit, shown: Option<Prefix>) -> Result<Reading, Unread> {
    let Some(text) = spell(text) else { return Err(Unread { code: TOO_LONG, mends: Vec::new() }) };
    let fault = match attempt(&text, unit, shown) {
        Ok(reading) => return Ok(reading),
        Err(fault) => fault,
    };
    let mut mends = Vec::new();
    offer(&fault, unit, shown, DEEPEST, &mut mends);
    Err(Unread { code: fault.code, mends })
}

fn attempt(text: &str, unit: Unit, shown: Option<Prefix>) -> Result<Reading, Fault> {
    let fault = match quantity(text, unit, shown) {
        Ok(reading) => return Ok(reading),
        Err(fault) => fault,
    };
    // A letter for a digit hides behind whatever it made of the text.
    let Some(mended) = digits_for_letters(text) else { return Err(fault) };
    Err(match quantity(&mended, unit, shown) {
        Ok(_) => Fault::new(LETTER_FOR_DIGIT).or(mended),
        Err(next) if !next.instead.is_empty() && fault.instead.is_empty() => Fault { code: LETTER_FOR_DIGIT, ..next },
        Err(_) => fault,
    })
}

/// Reads a text in one spelling.
fn quantity(text: &str, unit: Unit, shown: Option<Prefix>) -> Result<Reading, Fault> {
    if text.is_empty() {
        return Err(EMPTY.into());
    }
    if unit == Unit::Ohm
        && let Some(bands) = read_bands(text)?
    {
        return Ok(Reading { value: bands.ohms, tolerance: Some(bands.tolerance), notation: "bands" });
    }
    if unit == Unit::Metre {
        let length = match gauge(text)? {
            Some(metres) => Some(metres),
            None => feet_and_inches(text).map(|metres| (metres, "converted")),
        };
        if let Some((value, notation)) = length {
            return Ok(Reading { value, tolerance: None, notation });
        }
    }
    if unit == Unit::Volt
        && let Some(fault) = tapped(text)
    {
        return Err(fault);
    }
    if unit == Unit::VoltPerPascal
        && let Some(value) = sensitivity(text)?
    {
        return Ok(Reading { value, tolerance: None, notation: "decibels" });
    }
    Sentence::new(text, unit, shown)?.read()
}

/// Puts the texts of a fault that are read among the mends; of one that raises a question, its answers.
fn offer(fault: &Fault, unit: Unit, shown: Option<Prefix>, depth: u32, mends: &mut Vec<Mend>) {
    for text in &fault.instead {
        // Putting a word behind may have made it too long.
        if spell(text).as_deref() != Some(text) {
            continue;
        }
        match attempt(text, unit, shown) {
            Ok(reading) => {
                if mends.len() < MOST_MENDS && mends.iter().all(|mend| mend.text != *text) {
                    mends.push(Mend { text: text.clone(), value: reading.value });
                }
            }
            Err(next) if depth > 0 => offer(&next, unit, shown, depth - 1, mends),
            Err(_) => {}
        }
    }
}

/// The text with a nought for each O and a one for each l, I and | that touches a digit or a point; nothing if none does.
fn digits_for_letters(text: &str) -> Option<String> {
    let mut letters: Vec<char> = text.chars().collect();
    let digit = |letter: char| match letter {
        'O' | 'o' => Some('0'),
        'l' | 'I' | '|' => Some('1'),
        _ => None,
    };
    if !letters.iter().any(char::is_ascii_digit) {
        return None;
    }
    let mut changed = false;
    let mut turn = |letters: &mut Vec<char>| {
        let mut beside = false;
        for letter in letters.iter_mut() {
            if let Some(digit) = digit(*letter).filter(|_| beside) {
                (*letter, changed) = (digit, true);
            }
            beside = letter.is_ascii_digit() || *letter == '.';
        }
        letters.reverse();
    };
    turn(&mut letters);
    turn(&mut letters);
    changed.then(|| letters.into_iter().collect())
}
