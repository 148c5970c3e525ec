use super::{
    Prefix, Reading, Unit,
    bare::{Bare, bare},
    code::{is_surely_code, three_digits},
    decimal::Decimal,
    fault::{BAD_TOLERANCE, Fault, TOO_FAR},
    figure::{Figure, Form, figure, gather},
    phrase::{Behind, tolerance},
    product::product,
    refusal::no_figure,
    scan::Scan,
    tolerance::{letter_tolerance, wider},
    words::{Meaning, meaning, point},
};
use crate::text::{is_letter, together};

/// A figure and what stands behind it, parted.
pub(super) struct Sentence<'a> {
    /// The unit asked for.
    pub unit: Unit,
    /// The prefix shown beside the field.
    pub shown: Option<Prefix>,
    /// Whether a minus stands before it.
    pub negative: bool,
    /// The figure.
    pub figure: Figure<'a>,
    /// The letter that stands for its decimal point.
    pub mark: Option<char>,
    /// Sign and figure as written.
    pub front: &'a str,
    /// The rest.
    pub behind: Behind<'a>,
}

/// What the words of a sentence come to.
pub(super) struct Words {
    /// The figure is times this,
    by: Decimal,
    /// over this.
    over: u128,
    notation: &'static str,
    /// A tolerance letter.
    letter: Option<char>,
}

impl<'a> Sentence<'a> {
    /// Parts a text.
    ///
    /// # Errors
    /// There is no figure, or it has two readings.
    pub fn new(text: &'a str, unit: Unit, shown: Option<Prefix>) -> Result<Self, Fault> {
        let mut scan = Scan::new(text);
        let negative = scan.eat("-");
        if !negative {
            scan.eat("+");
        }
        scan.spaces();
        let head = before(text, scan);
        let found = figure(&mut scan).map_err(|fault| {
            let texts = fault.instead.into_iter().map(|figure| together(&[head, &figure, scan.rest()]));
            Fault::new(fault.code).or_all(texts)
        })?;
        let nought = Figure { decimal: Decimal::new(0, 0), over: 1, form: Form::Whole, text: "" };
        let (mut figure, mut mark) = (found.unwrap_or(nought), None);
        if figure.form == Form::Whole
            && let Some((letter, tail, after)) = letter_point(scan, unit)
        {
            figure.decimal = gather(figure.text, tail);
            (mark, scan) = (Some(letter), after);
        } else if found.is_none() {
            return Err(no_figure(text));
        }
        let behind = Behind::new(scan.rest());
        Ok(Sentence { unit, shown, negative, figure, mark, front: before(text, scan), behind })
    }

    /// Reads it.
    ///
    /// # Errors
    /// Why not, and texts to try instead.
    pub fn read(&self) -> Result<Reading, Fault> {
        let words = match self.mark {
            Some(mark) => self.coded(mark)?,
            None if self.behind.words.is_empty() => self.bare()?,
            None => self.worded()?,
        };
        let product = product(self.figure.decimal, self.figure.over, words.by, words.over).ok_or(TOO_FAR)?;
        let mut value = if self.negative { -product } else { product };
        if words.notation == FAHRENHEIT {
            value = (value - 32.0) / 1.8;
        }
        let notation = if words.notation == FAHRENHEIT { "converted" } else { words.notation };
        let tolerance = match (self.behind.tolerance, words.letter) {
            (Some(text), None) => Some(tolerance(text, self.unit, value).map_err(|fault| self.with_front(fault))?),
            (Some(_), Some(_)) => return Err(BAD_TOLERANCE.into()),
            (None, letter) => letter.and_then(|letter| wider(letter, value, self.unit == Unit::Farad)),
        };
        if tolerance.is_some_and(|tolerance| tolerance > 1.0) {
            return Err(BAD_TOLERANCE.into());
        }
        Ok(Reading { value, tolerance, notation })
    }

    fn bare(&self) -> Result<Words, Fault> {
        let (read, notation) = bare(&self.figure, self.unit, self.shown).map_err(|fault| self.with_rest(fault))?;
        Ok(match read {
            Bare::Times(power) => Words { by: Decimal::new(1, power), over: 1, notation, letter: None },
            Bare::Code(code) => self.code(code, None),
        })
    }

    /// A code's value as a multiplier of the figure that it is written as.
    fn code(&self, code: Decimal, letter: Option<char>) -> Words {
        Words { by: code, over: self.figure.decimal.digits, notation: "three_digit", letter }
    }

    fn worded(&self) -> Result<Words, Fault> {
        let words = self.behind.words.as_str();
        let found = meaning(words, self.unit);
        if self.takes_letters()
            && let Some((stem, letter)) = tolerance_behind(words)
        {
            if stem.is_empty() {
                if let Some(read) = self.lettered(letter, found) {
                    return read;
                }
            } else if self.is_tolerance_behind(stem, letter, found)
                && let Some(read) = self.scaled(meaning(stem, self.unit))
            {
                let notation = if self.behind.is_tight() { "letter_code" } else { read.notation };
                return Ok(Words { letter: Some(letter), notation, ..read });
            }
        }
        self.scaled(found).ok_or_else(|| self.refuse(found))
    }

    /// `104K` and `.01K`: a tolerance letter close behind a code or a bare figure.
    fn lettered(&self, letter: char, found: Meaning) -> Option<Result<Words, Fault>> {
        if !self.behind.is_tight() {
            return None;
        }
        let nothing_else = matches!(found, Meaning::Unknown | Meaning::NotHere);
        let is_code = self.unit == Unit::Farad && self.figure.form == Form::Whole && self.figure.text.len() == 3;
        match is_code.then(|| three_digits(self.figure.text)).flatten() {
            Some(code) if nothing_else || letter == 'M' && is_surely_code(self.figure.text) => {
                Some(Ok(self.code(code, Some(letter))))
            }
            None if nothing_else => Some(self.bare().map(|words| Words { letter: Some(letter), ..words })),
            _ => None,
        }
    }

    /// Whether a letter behind a prefix can only be a tolerance: close behind it as on a part, where `K` and `M` with ohms
    /// need a capital before them; or standing apart and meaning nothing else.
    fn is_tolerance_behind(&self, stem: &str, letter: char, found: Meaning) -> bool {
        let prefix_too = matches!(letter, 'K' | 'M');
        let printed = self.unit == Unit::Ohm && matches!(stem, "K" | "M" | "R" | "G" | "T");
        if matches!(found, Meaning::Scale { .. } | Meaning::Ask(_))
            || found == Meaning::Other && !(printed && letter == 'C')
        {
            false
        } else if self.behind.is_tight() {
            !prefix_too || self.unit != Unit::Ohm || printed
        } else {
            let apart =
                self.behind.raw.trim_end_matches(' ').strip_suffix(letter).is_some_and(|rest| rest.ends_with(' '));
            apart && !prefix_too
        }
    }

    /// `4K7` with its tolerance letter or unit behind.
    fn coded(&self, mark: char) -> Result<Words, Fault> {
        let words = self.behind.words.as_str();
        let found = point(mark, self.unit).unwrap_or(Meaning::Unknown);
        let Meaning::Scale { by, over, .. } = found else { return Err(self.refuse(found)) };
        let read = |letter| Ok(Words { by, over, notation: "letter_code", letter });
        // Behind the R of a code printed on a capacitor or coil no unit is written: its F is 1 %.
        let unit_too = mark != 'R' || self.unit == Unit::Ohm;
        if words.is_empty() || unit_too && self.is_unit(words) {
            return read(None);
        }
        let mut letters = words.chars();
        if let Some(letter) = letters.next()
            && self.takes_letters()
            && !matches!(letter, 'k' | 'm' | 'p' | 'n' | 't' | 'g')
            && letter_tolerance(letter.to_ascii_uppercase()).is_some()
            && (letters.as_str().is_empty() || self.is_unit(letters.as_str()))
        {
            return read(Some(letter.to_ascii_uppercase()));
        }
        let found = meaning(words, self.unit);
        Err(match found {
            Meaning::Scale { .. } | Meaning::Ask(_) | Meaning::Doubled(..) => self.twice_marked(),
            found => self.refuse(found),
        })
    }

    fn is_unit(&self, words: &str) -> bool {
        matches!(meaning(words, self.unit), Meaning::Scale { by, over: 1, .. } if by == Decimal::new(1, 0))
    }

    fn scaled(&self, found: Meaning) -> Option<Words> {
        let own = match self.figure.form {
            Form::Fraction => "fraction",
            Form::Exponent => "exponent",
            Form::Whole | Form::Point => "plain",
        };
        match found {
            Meaning::Scale { by, over, notation } => {
                Some(Words { by, over, notation: notation.unwrap_or(own), letter: None })
            }
            Meaning::Fahrenheit => Some(Words { by: Decimal::new(1, 0), over: 1, notation: FAHRENHEIT, letter: None }),
            _ => None,
        }
    }

    const fn takes_letters(&self) -> bool {
        matches!(self.unit, Unit::Ohm | Unit::Farad | Unit::Henry)
    }
}

/// Marks a reading until it is converted.
const FAHRENHEIT: &str = "fahrenheit";

/// The text before the place where `scan` stands.
fn before<'a>(text: &'a str, scan: Scan) -> &'a str {
    text.get(..text.len() - scan.rest().len()).unwrap_or("")
}

/// A capital tolerance letter at the end of words, and what stands before it.
fn tolerance_behind(words: &str) -> Option<(&str, char)> {
    let letter = words.chars().next_back()?;
    let stem = words.get(..words.len() - letter.len_utf8())?;
    letter_tolerance(letter).map(|_| (stem, letter))
}

/// A letter where the decimal point belongs, the digits behind it, and the place after them.
fn letter_point(mut scan: Scan<'_>, unit: Unit) -> Option<(char, &str, Scan<'_>)> {
    let marked = matches!(
        unit,
        Unit::Ohm | Unit::Farad | Unit::Henry | Unit::Hertz | Unit::Volt | Unit::Ampere | Unit::Watt | Unit::OhmPerVolt
    );
    let mark = scan.peek().filter(|mark| marked && is_letter(*mark))?;
    let mut bytes = [0; 4];
    scan.eat(mark.encode_utf8(&mut bytes));
    let digits = scan.digits();
    let ends = !matches!(scan.peek(), Some('.' | ',' | '/' | '%'));
    (!digits.is_empty() && ends && point(mark, unit).is_some()).then_some((mark, digits, scan))
}
