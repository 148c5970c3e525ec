use crate::quantity::Unit;

/// One answer of a calculator.
#[derive(Clone, Copy, Debug)]
pub struct Answer {
    /// The contract's name.
    pub key: &'static str,
    /// `quantity`, `text`, `flag` or `record`, of each item where it is a list.
    pub shape: &'static str,
    /// The unit of a quantity.
    pub unit: Unit,
    /// For a list, the input list it has an entry for each of; or `harmonics`, or `free`.
    pub count_of: Option<&'static str>,
    /// Whether it may be absent.
    pub optional: bool,
    /// What `null` means, as a code.
    pub null_means: Option<&'static str>,
}

impl Answer {
    /// A figure of `unit`.
    #[must_use]
    pub const fn quantity(key: &'static str, unit: Unit) -> Self {
        Answer { key, shape: "quantity", unit, count_of: None, optional: false, null_means: None }
    }

    /// Something other than a figure.
    #[must_use]
    pub const fn other(key: &'static str, shape: &'static str) -> Self {
        Answer { key, shape, unit: Unit::One, count_of: None, optional: false, null_means: None }
    }

    /// The same answer as a list.
    #[must_use]
    pub const fn each(mut self, of: &'static str) -> Self {
        self.count_of = Some(of);
        self
    }

    /// The same answer, which may be absent.
    #[must_use]
    pub const fn optional(mut self) -> Self {
        self.optional = true;
        self
    }

    /// The same answer, with what `null` means.
    #[must_use]
    pub const fn null_means(mut self, meaning: &'static str) -> Self {
        self.null_means = Some(meaning);
        self
    }
}
