use alloc::{string::String, vec::Vec};

/// Anything that crosses the door: what a person gives and what a calculator answers.
///
/// Records keep their order and are short, so they are lists of pairs.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// Missing, or an answer without a bound.
    Null,
    /// A figure in SI units.
    Number(f64),
    /// Yes or no.
    Flag(bool),
    /// Text: a choice, a name, or a figure as typed.
    Text(String),
    /// An ordered list.
    List(Vec<Value>),
    /// A long run of figures, handed to JavaScript as one `Float64Array`.
    Series(Vec<f64>),
    /// Named values in order.
    Record(Vec<(String, Value)>),
}

impl Value {
    /// The value of `key` in a record.
    #[must_use]
    pub fn get(&self, key: &str) -> Option<&Value> {
        match self {
            Value::Record(pairs) => pairs.iter().find(|(k, _)| k == key).map(|(_, v)| v),
            _ => None,
        }
    }

    /// The value at a path such as `sections[1].farads`.
    #[must_use]
    pub fn at(&self, path: &str) -> Option<&Value> {
        let mut here = self;
        for step in path.split(['.', '[']).filter(|step| !step.is_empty()) {
            here = match step.strip_suffix(']') {
                Some(index) => here.items().get(index.parse::<usize>().ok()?)?,
                None => here.get(step)?,
            };
        }
        Some(here)
    }

    /// The figure, if this is one.
    #[must_use]
    pub fn number(&self) -> Option<f64> {
        match self {
            Value::Number(figure) => Some(*figure),
            _ => None,
        }
    }

    /// The text, if this is one.
    #[must_use]
    pub fn text(&self) -> Option<&str> {
        match self {
            Value::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The items of a list, none for anything else.
    #[must_use]
    pub fn items(&self) -> &[Value] {
        match self {
            Value::List(items) => items,
            _ => &[],
        }
    }

    /// Whether a field counts as not given.
    #[must_use]
    pub fn is_null(&self) -> bool {
        matches!(self, Value::Null)
    }

    /// A record from pairs in order.
    #[must_use]
    pub fn record<const N: usize>(pairs: [(&str, Value); N]) -> Value {
        Value::Record(pairs.into_iter().map(|(key, value)| (key.into(), value)).collect())
    }
}

impl From<f64> for Value {
    fn from(figure: f64) -> Self {
        Value::Number(figure)
    }
}

impl From<bool> for Value {
    fn from(flag: bool) -> Self {
        Value::Flag(flag)
    }
}

impl From<&str> for Value {
    fn from(text: &str) -> Self {
        Value::Text(text.into())
    }
}

impl From<String> for Value {
    fn from(text: String) -> Self {
        Value::Text(text)
    }
}

impl<T: Into<Value>> From<Option<T>> for Value {
    fn from(value: Option<T>) -> Self {
        value.map_or(Value::Null, Into::into)
    }
}

impl<T: Into<Value>> From<Vec<T>> for Value {
    fn from(items: Vec<T>) -> Self {
        Value::List(items.into_iter().map(Into::into).collect())
    }
}
