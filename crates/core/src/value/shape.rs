use crate::quantity::Unit;

use super::Field;

/// What a field takes.
#[derive(Clone, Copy, Debug)]
pub enum Shape {
    /// A figure with a unit, or a text that reads as one.
    Quantity(Range),
    /// One of a closed list of texts.
    Choice(&'static [&'static str]),
    /// Yes or no.
    Flag,
    /// Free text of at most so many characters.
    Text(usize),
    /// A list of like items.
    List(&'static Field, Counts),
    /// Named fields.
    Record(&'static [Field]),
    /// Any of these.
    Either(&'static [Field]),
}

/// The figures a quantity may have.
#[derive(Clone, Copy, Debug)]
pub struct Range {
    /// The unit that a bare figure is in.
    pub unit: Unit,
    /// Least, included.
    pub least: f64,
    /// Most, included.
    pub most: f64,
    /// Whether 0 is allowed too and means that the part is absent.
    pub zero: bool,
    /// Whether only whole figures will do.
    pub whole: bool,
    /// Where values usually lie: for sliders, generators and a question, never a refusal.
    pub usual: (f64, f64),
    /// How values spread.
    pub scale: Scale,
}

/// How the values of a quantity spread between their ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scale {
    /// Evenly.
    Linear,
    /// By ratio.
    Log,
}

/// How many items a list takes.
#[derive(Clone, Copy, Debug)]
pub struct Counts {
    /// At least.
    pub least: usize,
    /// At most.
    pub most: usize,
    /// The list whose count it must have.
    pub same_as: Option<&'static str>,
}

/// Something that must hold for a field to count.
#[derive(Clone, Copy, Debug)]
pub struct Condition {
    /// The other field's path, relative to the record that both are in.
    pub path: &'static str,
    /// What it must be.
    pub test: Test,
}

/// What a condition asks.
#[derive(Clone, Copy, Debug)]
pub enum Test {
    /// A choice that is this.
    Is(&'static str),
    /// A choice that is not this.
    IsNot(&'static str),
    /// A quantity over 0, or anything else that is given.
    Given,
}
