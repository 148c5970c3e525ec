//! What a marking says, and how the same part is marked in other ways.

use alloc::{string::String, string::ToString, vec, vec::Vec};

use crate::text::together;
use crate::{
    quantity::{
        Bands, Reading, Series, Unit, bands, bands_of, letter_code, letter_tolerance, nearest, printed_digits, read,
        three_digit, tolerance_letter,
    },
    value::{Answer, Field, Inputs, Problem, Start, Value, code},
};

use super::{Calculator, Caution, Outcome, Severity, Want};

/// Reads a part's marking and writes it in every other way (IEC 60062, IEC 60063).
pub(super) static MARKING: Calculator =
    Calculator { id: "marking", group: "parts", inputs: INPUTS, answers: ANSWERS, work };

static INPUTS: &[Field] = &[
    Field::text("text", 80).group("part").start_with(Start::Text("yellow violet red gold")),
    Field::choice("kind", &["resistor", "capacitor", "inductor"]).group("part").start_with(Start::Text("resistor")),
];

static ANSWERS: &[Answer] = &[
    Answer::quantity("value", Unit::One),
    Answer::quantity("tolerance", Unit::One).optional(),
    Answer::quantity("ppm_per_kelvin", Unit::One).optional(),
    Answer::other("bands", "text").each("free").optional(),
    Answer::other("letter_code", "text"),
    Answer::other("tolerance_letter", "text").optional(),
    Answer::other("three_digit", "text").optional(),
    Answer::other("preferred", "record"),
];

/// The unit that a kind of part is marked in, and the values there are (contract: ranges).
fn unit_of(kind: &str) -> (Unit, f64, f64) {
    match kind {
        "capacitor" => (Unit::Farad, 1e-14, 0.1),
        "inductor" => (Unit::Henry, 1e-9, 1e3),
        _ => (Unit::Ohm, 1e-3, 1e9),
    }
}

fn work(inputs: &Inputs, _: Want) -> Result<Outcome, Vec<Problem>> {
    let (text, kind) = (inputs.text("text"), inputs.text("kind"));
    let (unit, least, most) = unit_of(kind);
    let reading = understood(text, unit)?;
    let value = reading.value;
    if !(least..=most).contains(&value) {
        let code = if value < least { code::TOO_SMALL } else { code::TOO_LARGE };
        return Err(vec![Problem::new("text", code).bounds(Some(least), Some(most))]);
    }
    let mut outcome = Outcome::default();
    outcome.answer("value", value);
    outcome.answer_if("tolerance", reading.tolerance);
    let painted = painted(text, &reading);
    outcome.answer_if("ppm_per_kelvin", painted.as_ref().and_then(|bands| bands.ppm_per_kelvin));
    if unit == Unit::Ohm {
        let names = painted.as_ref().map(|bands| bands.colours.clone());
        outcome.answer_if("bands", names.or_else(|| bands_of(value, reading.tolerance)));
    }
    let code = letter_code(value, unit);
    outcome.answer_if("letter_code", code.as_ref().map(|marking| marking.code.as_str()));
    let letter = reading.tolerance.and_then(tolerance_letter);
    outcome.answer_if("tolerance_letter", letter.map(|letter| letter.to_string()));
    outcome.answer_if("three_digit", three_digit(value, unit));
    outcome.answer("preferred", preferred(value));
    if code.is_some_and(|marking| !marking.exact) {
        outcome.caution(Caution::new(Severity::Note, "code_rounded").about("letter_code"));
    }
    if let Some(bands) = &painted {
        band_cautions(bands, &mut outcome);
    } else {
        code_cautions(text.trim(), &reading, unit, &mut outcome);
    }
    Ok(outcome)
}

/// The reading of a marking. Three digits that may be a plain figure are asked in a circuit's field; standing on a
/// capacitor they are a code.
fn understood(text: &str, unit: Unit) -> Result<Reading, Vec<Problem>> {
    read(text, unit, None).or_else(|unread| {
        let printed = printed_digits(text.trim(), unit).filter(|_| unit == Unit::Farad && unread.code == "which_code");
        if let Some(value) = printed {
            return Ok(Reading { value, tolerance: None, notation: "three_digit" });
        }
        let mut problem = Problem::new("text", unread.code);
        problem.mends = unread.mends;
        Err(vec![problem])
    })
}

/// The nearest value of every series, with how far it is over the figure.
fn preferred(value: f64) -> Value {
    let rows = Series::ALL.into_iter().filter_map(|series| {
        let nearest = nearest(value, series)?;
        let row = [("value", nearest.value.into()), ("error_percent", (100.0 * nearest.error).into())];
        Some((String::from(series.name()), Value::record(row)))
    });
    Value::Record(rows.collect())
}

/// The bands, where it was colours that were read.
fn painted(text: &str, reading: &Reading) -> Option<Bands> {
    let small = text.to_ascii_lowercase();
    let names: Vec<&str> =
        small.split(|letter: char| !letter.is_ascii_alphabetic()).filter(|name| !name.is_empty()).collect();
    bands(&names).filter(|_| reading.notation == "bands")
}

fn band_cautions(painted: &Bands, outcome: &mut Outcome) {
    let turned: Vec<&str> = painted.colours.iter().rev().copied().collect();
    let other = bands(&turned).filter(|other| (other.ohms, other.tolerance) != (painted.ohms, painted.tolerance));
    if let Some(other) = other {
        let caution = Caution::new(Severity::Note, "reads_both_ways").about("bands");
        outcome.caution(caution.figure("value", other.ohms).figure("tolerance", other.tolerance));
    }
    // Before the colours had these tolerances, three and four percent were painted so (from memory).
    let old = match painted.colours.get(3).filter(|_| painted.colours.len() == 4) {
        Some(&"orange") => Some(0.03),
        Some(&"yellow") => Some(0.04),
        _ => None,
    };
    if let Some(tolerance) = old {
        let caution = Caution::new(Severity::Note, "old_tolerance_colour").about("tolerance");
        outcome.caution(caution.figure("tolerance", tolerance));
    }
}

fn code_cautions(text: &str, reading: &Reading, unit: Unit, outcome: &mut Outcome) {
    let sides = text.chars().next_back().and_then(letter_tolerance);
    if let Some((under, over)) = sides.filter(|(under, over)| under < over && reading.tolerance == Some(*over)) {
        let caution = Caution::new(Severity::Note, "uneven_tolerance").about("tolerance");
        outcome.caution(caution.figure("under", under).figure("over", over));
    }
    if unit == Unit::Farad {
        if reading.notation == "three_digit" && read(text, unit, None).is_err() {
            let plain = read(&together(&[text, " pF"]), unit, None).map_or(0.0, |plain| plain.value);
            outcome.caution(Caution::new(Severity::Note, "also_plain").about("value").figure("value", plain));
        }
    } else if let Some(value) = printed_digits(text, unit) {
        outcome.caution(Caution::new(Severity::Note, "also_a_code").about("value").figure("value", value));
    }
}
