use crate::quantity::Unit;

use super::shape::{Condition, Counts, Range, Scale, Shape, Test};

/// One input of a calculator: what it takes, stated once and read by the check, the form, the docs and the tests.
#[derive(Clone, Copy, Debug)]
pub struct Field {
    /// The contract's name.
    pub key: &'static str,
    /// What it takes.
    pub shape: Shape,
    /// What stands in when nothing is given.
    pub start: Start,
    /// Whether it may be absent.
    pub optional: bool,
    /// The heading it stands under.
    pub group: &'static str,
    /// All must hold, or the field is checked and ignored.
    pub when: &'static [Condition],
    /// A group of which exactly one is given.
    pub one_of: Option<&'static str>,
    /// A group given whole or not at all.
    pub together: Option<&'static str>,
    /// An input that must be larger.
    pub below: Option<&'static str>,
}

/// A default.
#[derive(Clone, Copy, Debug)]
pub enum Start {
    /// None: the field is needed, or absent if optional.
    Nothing,
    /// A figure in SI.
    Number(f64),
    /// A text or choice.
    Text(&'static str),
    /// Yes or no.
    Flag(bool),
    /// A list's items.
    List(&'static [Start]),
    /// A record's fields; those not named take their own defaults.
    Record(&'static [(&'static str, Start)]),
}

const ANY: (f64, f64) = (0.0, 0.0);

impl Field {
    const fn of(key: &'static str, shape: Shape) -> Self {
        Field {
            key,
            shape,
            start: Start::Nothing,
            optional: false,
            group: "",
            when: &[],
            one_of: None,
            together: None,
            below: None,
        }
    }

    /// A figure of `unit` from `least` to `most`, spread by ratio if it stays above 0.
    #[must_use]
    pub const fn quantity(key: &'static str, unit: Unit, least: f64, most: f64) -> Self {
        let scale = if least > 0.0 { Scale::Log } else { Scale::Linear };
        Self::of(key, Shape::Quantity(Range { unit, least, most, zero: false, whole: false, usual: ANY, scale }))
    }

    /// A resistance, 1 mΩ to 1 GΩ.
    #[must_use]
    pub const fn ohms(key: &'static str) -> Self {
        Self::quantity(key, Unit::Ohm, 1e-3, 1e9).usual(10.0, 10e6)
    }

    /// A capacitance, 0.01 pF to 0.1 F.
    #[must_use]
    pub const fn farads(key: &'static str) -> Self {
        Self::quantity(key, Unit::Farad, 1e-14, 0.1).usual(10e-12, 100e-6)
    }

    /// An inductance, 1 nH to 1 kH.
    #[must_use]
    pub const fn henries(key: &'static str) -> Self {
        Self::quantity(key, Unit::Henry, 1e-9, 1e3).usual(100e-9, 50.0)
    }

    /// A frequency, 0.01 Hz to 1 GHz.
    #[must_use]
    pub const fn hertz(key: &'static str) -> Self {
        Self::quantity(key, Unit::Hertz, 0.01, 1e9).usual(10.0, 30e6)
    }

    /// A voltage over 0 and up to 10 kV.
    #[must_use]
    pub const fn volts(key: &'static str, least: f64) -> Self {
        Self::quantity(key, Unit::Volt, least, 10e3)
    }

    /// A fraction, 0 to 1.
    #[must_use]
    pub const fn fraction(key: &'static str) -> Self {
        Self::quantity(key, Unit::One, 0.0, 1.0).usual(0.0, 1.0)
    }

    /// One of `choices`.
    #[must_use]
    pub const fn choice(key: &'static str, choices: &'static [&'static str]) -> Self {
        Self::of(key, Shape::Choice(choices))
    }

    /// Yes or no.
    #[must_use]
    pub const fn flag(key: &'static str) -> Self {
        Self::of(key, Shape::Flag)
    }

    /// A text of at most `most` characters.
    #[must_use]
    pub const fn text(key: &'static str, most: usize) -> Self {
        Self::of(key, Shape::Text(most))
    }

    /// A list of `least` to `most` items.
    #[must_use]
    pub const fn list(key: &'static str, item: &'static Field, least: usize, most: usize) -> Self {
        Self::of(key, Shape::List(item, Counts { least, most, same_as: None }))
    }

    /// Named fields.
    #[must_use]
    pub const fn record(key: &'static str, fields: &'static [Field]) -> Self {
        Self::of(key, Shape::Record(fields))
    }

    /// Any of `options`.
    #[must_use]
    pub const fn either(key: &'static str, options: &'static [Field]) -> Self {
        Self::of(key, Shape::Either(options))
    }

    /// The same field with a figure as its default.
    #[must_use]
    pub const fn start(mut self, figure: f64) -> Self {
        self.start = Start::Number(figure);
        self
    }

    /// The same field with a default of any kind.
    #[must_use]
    pub const fn start_with(mut self, start: Start) -> Self {
        self.start = start;
        self
    }

    /// The same field under a heading.
    #[must_use]
    pub const fn group(mut self, group: &'static str) -> Self {
        self.group = group;
        self
    }

    /// The same field, which may be absent.
    #[must_use]
    pub const fn optional(mut self) -> Self {
        self.optional = true;
        self
    }

    /// The same field, which counts only when all of `when` hold.
    #[must_use]
    pub const fn when(mut self, when: &'static [Condition]) -> Self {
        self.when = when;
        self
    }

    /// The same field as one of a group of which exactly one is given.
    #[must_use]
    pub const fn one_of(mut self, group: &'static str) -> Self {
        self.one_of = Some(group);
        self
    }

    /// The same field as part of a group given whole or not at all.
    #[must_use]
    pub const fn together(mut self, group: &'static str) -> Self {
        self.together = Some(group);
        self
    }

    /// The same field, which must stay under another.
    #[must_use]
    pub const fn below(mut self, other: &'static str) -> Self {
        self.below = Some(other);
        self
    }

    /// The same list, which must have as many items as another.
    #[must_use]
    pub const fn same_count_as(mut self, other: &'static str) -> Self {
        if let Shape::List(_, counts) = &mut self.shape {
            counts.same_as = Some(other);
        }
        self
    }

    /// The same quantity, for which 0 too is allowed and means none.
    #[must_use]
    pub const fn or_none(mut self) -> Self {
        if let Shape::Quantity(range) = &mut self.shape {
            range.zero = true;
        }
        self
    }

    /// The same quantity, of which only whole figures will do.
    #[must_use]
    pub const fn whole(mut self) -> Self {
        if let Shape::Quantity(range) = &mut self.shape {
            range.whole = true;
        }
        self
    }

    /// The same quantity with where its values usually lie.
    #[must_use]
    pub const fn usual(mut self, least: f64, most: f64) -> Self {
        if let Shape::Quantity(range) = &mut self.shape {
            range.usual = (least, most);
        }
        self
    }
}

impl Condition {
    /// The choice at `path` is `choice`.
    #[must_use]
    pub const fn is(path: &'static str, choice: &'static str) -> Self {
        Condition { path, test: Test::Is(choice) }
    }

    /// The choice at `path` is not `choice`.
    #[must_use]
    pub const fn is_not(path: &'static str, choice: &'static str) -> Self {
        Condition { path, test: Test::IsNot(choice) }
    }

    /// The field at `path` is given, and over 0 if it is a quantity.
    #[must_use]
    pub const fn given(path: &'static str) -> Self {
        Condition { path, test: Test::Given }
    }
}
