use alloc::{string::String, vec::Vec};

/// Why a text is not read, and texts that may be read instead.
#[derive(Debug)]
pub(super) struct Fault {
    /// One of [`CODES`].
    pub code: &'static str,
    /// Texts to try; those that read are offered.
    pub instead: Vec<String>,
}

impl Fault {
    /// A fault that nothing can be offered for.
    pub const fn new(code: &'static str) -> Self {
        Fault { code, instead: Vec::new() }
    }

    /// The same fault with one more text to try.
    pub fn or(mut self, text: impl Into<String>) -> Self {
        self.instead.push(text.into());
        self
    }

    /// The same fault with more texts to try.
    pub fn or_all(mut self, texts: impl IntoIterator<Item = String>) -> Self {
        self.instead.extend(texts);
        self
    }
}

impl From<&'static str> for Fault {
    fn from(code: &'static str) -> Self {
        Fault::new(code)
    }
}

/// Every code that an [`Unread`](super::Unread) may carry.
pub const CODES: &[&str] = &[
    EMPTY,
    TOO_LONG,
    NO_FIGURE,
    TOO_FAR,
    OVER_NOUGHT,
    LETTER_FOR_DIGIT,
    TWO_NUMBERS,
    TAPPED_WINDING,
    TWO_POINTS,
    WHICH_COMMA,
    WHICH_PREFIX,
    WHICH_UNIT,
    WHICH_GAUGE,
    WHICH_REFERENCE,
    WHICH_CODE,
    DOUBLED_PREFIX,
    PREFIX_NOT_HERE,
    WRONG_UNIT,
    UNKNOWN_WORD,
    UNKNOWN_MARK,
    UNKNOWN_COLOUR,
    WRONG_BANDS,
    NO_SUCH_GAUGE,
    BAD_TOLERANCE,
];

/// Nothing is written.
pub(super) const EMPTY: &str = "empty";
/// More is written than any figure needs.
pub(super) const TOO_LONG: &str = "too_long";
/// There is no figure in it.
pub(super) const NO_FIGURE: &str = "no_figure";
/// Beyond 10^±60.
pub(super) const TOO_FAR: &str = "too_far";
/// A fraction over nought.
pub(super) const OVER_NOUGHT: &str = "over_nought";
/// A letter O, l or I stands where a digit belongs.
pub(super) const LETTER_FOR_DIGIT: &str = "letter_for_digit";
/// More than one figure.
pub(super) const TWO_NUMBERS: &str = "two_numbers";
/// The volts of a winding with a tap, from the tap or from end to end.
pub(super) const TAPPED_WINDING: &str = "tapped_winding";
/// More than one decimal point in a figure.
pub(super) const TWO_POINTS: &str = "two_points";
/// A comma that marks decimals or thousands.
pub(super) const WHICH_COMMA: &str = "which_comma";
/// An m or M that has two readings.
pub(super) const WHICH_PREFIX: &str = "which_prefix";
/// A bare figure that may be in more than one unit.
pub(super) const WHICH_UNIT: &str = "which_unit";
/// A gauge number of no said gauge.
pub(super) const WHICH_GAUGE: &str = "which_gauge";
/// Decibels of a microphone with no word of what they are counted from.
pub(super) const WHICH_REFERENCE: &str = "which_reference";
/// Three digits that may be a code or a plain figure.
pub(super) const WHICH_CODE: &str = "which_code";
/// Two prefixes in a row.
pub(super) const DOUBLED_PREFIX: &str = "doubled_prefix";
/// A prefix that the unit is not written with.
pub(super) const PREFIX_NOT_HERE: &str = "prefix_not_here";
/// A unit of another kind.
pub(super) const WRONG_UNIT: &str = "wrong_unit";
/// A word that is none of those known.
pub(super) const UNKNOWN_WORD: &str = "unknown_word";
/// A sign that is none of those known.
pub(super) const UNKNOWN_MARK: &str = "unknown_mark";
/// A word among colours that is no colour.
pub(super) const UNKNOWN_COLOUR: &str = "unknown_colour";
/// Colours that no resistor has in this order and number.
pub(super) const WRONG_BANDS: &str = "wrong_bands";
/// A gauge number that the gauge does not have.
pub(super) const NO_SUCH_GAUGE: &str = "no_such_gauge";
/// A tolerance that cannot be one.
pub(super) const BAD_TOLERANCE: &str = "bad_tolerance";
