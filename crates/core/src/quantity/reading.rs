use alloc::{string::String, vec::Vec};

/// What a text was read as.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// The figure in the unit asked for, without a prefix.
    pub value: f64,
    /// The tolerance written beside it, a fraction of the value; the wider side where the two sides differ (`Z`).
    pub tolerance: Option<f64>,
    /// The way it was written, one of [`NOTATIONS`](super::NOTATIONS): what the echo to a person is made from.
    pub notation: &'static str,
}

/// Why a text was not read.
#[derive(Clone, Debug, PartialEq)]
pub struct Unread {
    /// One of [`CODES`](super::CODES).
    pub code: &'static str,
    /// What would be read instead; two or more where the text has more than one reading.
    pub mends: Vec<Mend>,
}

/// A text that is read without a question, close to what was written.
#[derive(Clone, Debug, PartialEq)]
pub struct Mend {
    /// The text to put in the field.
    pub text: String,
    /// What it is read as.
    pub value: f64,
}
