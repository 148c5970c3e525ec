use super::{
    Prefix, Unit,
    decimal::Decimal,
    vocabulary::{specials, symbols},
};

/// What a word behind a figure means for a unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Meaning {
    /// Times `by`, over `over`; `notation` where the word itself is worth an echo.
    Scale { by: Decimal, over: u128, notation: Option<&'static str> },
    /// Degrees Fahrenheit.
    Fahrenheit,
    /// A letter with more than one reading.
    Ask(&'static [Prefix]),
    /// A prefix that the unit is not written with.
    NotHere,
    /// Two prefixes, each of which alone would do.
    Doubled(Prefix, Prefix),
    /// A unit of another kind.
    Other,
    /// Nothing known.
    Unknown,
}

impl Meaning {
    const fn ten(power: i32) -> Self {
        Meaning::Scale { by: Decimal::new(1, power), over: 1, notation: None }
    }
}

pub(super) const OLD_UNIT: &str = "old_unit";
pub(super) const CONVERTED: &str = "converted";
pub(super) const PERCENT: &str = "percent";

/// Prefixes spelt out, the longer before those they begin with; and `mu`, the letter's name.
const NAMES: [(&str, Prefix); 9] = [
    ("pico", Prefix::Pico),
    ("nano", Prefix::Nano),
    ("micro", Prefix::Micro),
    ("milli", Prefix::Milli),
    ("kilo", Prefix::Kilo),
    ("kil", Prefix::Kilo),
    ("mega", Prefix::Mega),
    ("meg", Prefix::Mega),
    ("giga", Prefix::Giga),
];

/// What `word`, without spaces, means behind a figure of `unit`.
///
/// A letter's case is minded only between `m` and `M`. `M` is mega with ohms and hertz, where a milli is not written;
/// elsewhere it may be the old thousandth, with farads the old millionth, and is asked. `m` is asked with farads (milli,
/// or micro of old diagrams) and with ohms and hertz (mega in careless typing) unless it is `mΩ`.
pub(super) fn meaning(word: &str, unit: Unit) -> Meaning {
    let small = word.to_ascii_lowercase();
    if let Some(meaning) = known(word, &small, unit) {
        return meaning;
    }
    if let Some(doubled) = doubled(word, &small, unit) {
        return doubled;
    }
    let is_prefix = letter(word).is_some_and(|(_, rest)| rest.is_empty());
    let is_of = |other: Unit| known(word, &small, other).is_some_and(|meaning| meaning != Meaning::NotHere);
    let is_other = !is_prefix && Unit::ALL.into_iter().any(|other| other != unit && is_of(other));
    if is_other { Meaning::Other } else { Meaning::Unknown }
}

fn is_symbol(word: &str, unit: Unit) -> bool {
    symbols(unit).contains(&word)
}

fn known(word: &str, small: &str, unit: Unit) -> Option<Meaning> {
    if let Some((name, digits, power, over)) = specials(unit).iter().find(|(name, ..)| *name == small) {
        let notation = match unit {
            Unit::Farad | Unit::Hertz if *name != "meg" => Some(OLD_UNIT),
            Unit::One => Some(PERCENT),
            Unit::Ohm if *name == "r" => Some("letter_code"),
            Unit::Metre if *digits == 1 => None,
            Unit::Metre | Unit::Second | Unit::PerMetre => Some(CONVERTED),
            _ => None,
        };
        return Some(Meaning::Scale { by: Decimal::new(*digits, *power), over: *over, notation });
    }
    if unit == Unit::Ohm && word == "L" {
        return Some(Meaning::Scale { by: Decimal::new(1, -3), over: 1, notation: Some("letter_code") });
    }
    if unit == Unit::Celsius && matches!(small, "f" | "°f" | "degf" | "fahrenheit") {
        return Some(Meaning::Fahrenheit);
    }
    if is_symbol(small, unit) {
        return Some(old(small, Meaning::ten(0)));
    }
    for (name, prefix) in NAMES {
        if let Some(rest) = small.strip_prefix(name)
            && (is_symbol(rest, unit) && rest.len() > 2 || rest == "Ω")
        {
            return Some(if unit.takes(prefix) { old(rest, Meaning::ten(prefix.power())) } else { Meaning::NotHere });
        }
    }
    let (reading, rest) = letter(word)?;
    // Small letters are as long as capitals, so the rest ends both spellings alike.
    let rest = small.get(small.len() - rest.len()..)?;
    (rest.is_empty() || is_symbol(rest, unit)).then(|| old(rest, reading.meaning(unit, rest)))
}

/// Units of old books are worth an echo.
fn old(symbol: &str, meaning: Meaning) -> Meaning {
    let is_old =
        matches!(symbol, "c" | "cs" | "c/s" | "cps" | "cycle" | "cycles" | "~" | "mho" | "mhos" | "℧" | "hy" | "hys");
    match meaning {
        Meaning::Scale { by, over, .. } if is_old => Meaning::Scale { by, over, notation: Some(OLD_UNIT) },
        meaning => meaning,
    }
}

/// A prefix letter as written.
#[derive(Clone, Copy, PartialEq)]
enum Letter {
    Sure(Prefix),
    Small,
    Large,
}

impl Letter {
    fn meaning(self, unit: Unit, symbol: &str) -> Meaning {
        use Prefix::{Mega, Micro, Milli};
        let prefix = match (self, unit) {
            (Letter::Sure(prefix), _) => prefix,
            (_, Unit::Farad) => return Meaning::Ask(&[Micro, Milli]),
            (Letter::Small, Unit::Ohm) if symbol == "Ω" => Milli,
            (Letter::Small, Unit::Ohm | Unit::Hertz) => return Meaning::Ask(&[Mega, Milli]),
            (Letter::Small, Unit::OhmPerVolt) => return Meaning::Ask(&[Mega]),
            (Letter::Small, _) => Milli,
            (Letter::Large, Unit::Ohm | Unit::Hertz | Unit::OhmPerVolt) => Mega,
            (Letter::Large, _) if unit.takes(Mega) => return Meaning::Ask(&[Milli, Mega]),
            (Letter::Large, _) if unit.takes(Milli) => return Meaning::Ask(&[Milli]),
            (Letter::Large, _) => Mega,
        };
        if unit.takes(prefix) { Meaning::ten(prefix.power()) } else { Meaning::NotHere }
    }

    const fn likely(self) -> Prefix {
        match self {
            Letter::Sure(prefix) => prefix,
            Letter::Small => Prefix::Milli,
            Letter::Large => Prefix::Mega,
        }
    }
}

/// The prefix letter that a word begins with, and the rest.
fn letter(word: &str) -> Option<(Letter, &str)> {
    if let Some(rest) = word.strip_prefix("mu").or_else(|| word.strip_prefix("Mu")) {
        return Some((Letter::Sure(Prefix::Micro), rest));
    }
    let mut letters = word.chars();
    let letter = match letters.next()? {
        'p' | 'P' => Letter::Sure(Prefix::Pico),
        'n' | 'N' => Letter::Sure(Prefix::Nano),
        'µ' | 'u' | 'U' => Letter::Sure(Prefix::Micro),
        'k' | 'K' => Letter::Sure(Prefix::Kilo),
        'g' | 'G' => Letter::Sure(Prefix::Giga),
        't' | 'T' => Letter::Sure(Prefix::Tera),
        'm' => Letter::Small,
        'M' => Letter::Large,
        _ => return None,
    };
    Some((letter, letters.as_str()))
}

/// Two prefix letters in a row, then nothing or the unit.
fn doubled(word: &str, small: &str, unit: Unit) -> Option<Meaning> {
    let (first, rest) = letter(word)?;
    let (second, rest) = letter(rest)?;
    let last = small.get(small.len() - rest.len()..)?;
    (last.is_empty() || is_symbol(last, unit)).then(|| Meaning::Doubled(first.likely(), second.likely()))
}

/// What a letter standing as the decimal point means (IEC 60062 `4K7`, and `6V3`): a power of ten, or a question.
///
/// `R` is the ohm; on capacitors it marks picofarads and on coils microhenries, as the short codes on parts do.
pub(super) fn point(mark: char, unit: Unit) -> Option<Meaning> {
    let power = match (mark, unit) {
        ('R' | 'r' | 'Ω', Unit::Ohm)
        | ('V' | 'v', Unit::Volt)
        | ('A' | 'a', Unit::Ampere)
        | ('F', Unit::Farad)
        | ('H', Unit::Henry)
        | ('W' | 'w', Unit::Watt) => 0,
        ('L', Unit::Ohm) | ('m', Unit::Farad) => -3,
        ('R', Unit::Farad) => -12,
        ('R', Unit::Henry) => -6,
        _ => {
            let mut bytes = [0; 4];
            let (reading, rest) = letter(mark.encode_utf8(&mut bytes))?;
            let meaning = reading.meaning(unit, rest);
            return (meaning != Meaning::NotHere).then_some(meaning);
        }
    };
    Some(Meaning::ten(power))
}
