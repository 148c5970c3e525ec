use alloc::{string::String, vec::Vec};

use super::Value;

/// Checked inputs: every figure in SI and in its range, defaults filled in.
#[derive(Clone, Debug)]
pub struct Inputs {
    pub(super) values: Value,
    pub(super) tolerances: Vec<(String, f64)>,
}

impl Inputs {
    /// The figure at `path`; 0 where it is absent, which the contract reads as "none".
    #[must_use]
    pub fn number(&self, path: &str) -> f64 {
        self.maybe(path).unwrap_or(0.0)
    }

    /// The figure at `path`, if given.
    #[must_use]
    pub fn maybe(&self, path: &str) -> Option<f64> {
        self.values.at(path).and_then(Value::number)
    }

    /// The text or choice at `path`; empty where it is absent.
    #[must_use]
    pub fn text(&self, path: &str) -> &str {
        self.values.at(path).and_then(Value::text).unwrap_or("")
    }

    /// The value at `path`.
    #[must_use]
    pub fn at(&self, path: &str) -> &Value {
        self.values.at(path).unwrap_or(&Value::Null)
    }

    /// The items of the list at `path`.
    #[must_use]
    pub fn items(&self, path: &str) -> &[Value] {
        self.at(path).items()
    }

    /// The same inputs with another figure for the input `key`, whose range is the caller's to keep.
    #[must_use]
    pub fn with(mut self, key: &str, figure: f64) -> Self {
        if let Value::Record(pairs) = &mut self.values {
            pairs.retain(|(own, _)| own != key);
            pairs.push((key.into(), Value::Number(figure)));
        }
        self
    }

    /// The tolerance written with the figure at `path`, a fraction.
    #[must_use]
    pub fn tolerance(&self, path: &str) -> Option<f64> {
        self.tolerances.iter().find(|(at, _)| at == path).map(|(_, tolerance)| *tolerance)
    }
}
