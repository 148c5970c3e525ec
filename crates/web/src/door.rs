//! A value as one run of figures and one text: two things cross for a whole answer, not one for each of its fields.
//!
//! The figures hold, value by value, what kind it is and then its own figures: a number itself, the length of a text or
//! of a list, and what stands in it after that. Every text, keys among them, stands in order in the one text. Lengths of
//! texts that go out are counted in UTF-16 units, as JavaScript cuts them, and in whole characters on the way in.
use alloc::{string::String, vec::Vec};
use core::str::Chars;

use js_sys::{Array, Float64Array};
use tagstrip_core::value::Value;
use wasm_bindgen::JsValue;

/// Deeper than any field table; a value that goes deeper is not one of ours.
const DEEPEST: usize = 12;

/// The kinds, as `www/package/crossing.ts` has them.
mod kind {
    pub const NULL: f64 = 0.0;
    pub const NUMBER: f64 = 1.0;
    pub const NO: f64 = 2.0;
    pub const YES: f64 = 3.0;
    pub const TEXT: f64 = 4.0;
    pub const LIST: f64 = 5.0;
    pub const SERIES: f64 = 6.0;
    pub const RECORD: f64 = 7.0;
}

/// A value of the engine on its way out: its figures and its text, as copies, never views.
pub fn out(value: &Value) -> Array {
    let (mut figures, mut text) = (Vec::new(), String::new());
    pack(value, &mut figures, &mut text);
    Array::of2(&Float64Array::from(figures.as_slice()), &JsValue::from_str(&text))
}

fn pack(value: &Value, figures: &mut Vec<f64>, text: &mut String) {
    match value {
        Value::Null => figures.push(kind::NULL),
        Value::Number(figure) => figures.extend([kind::NUMBER, *figure]),
        Value::Flag(flag) => figures.push(if *flag { kind::YES } else { kind::NO }),
        Value::Text(word) => {
            figures.push(kind::TEXT);
            write(word, figures, text);
        }
        Value::List(items) => {
            figures.extend([kind::LIST, items.len() as f64]);
            for item in items {
                pack(item, figures, text);
            }
        }
        Value::Series(series) => {
            figures.extend([kind::SERIES, series.len() as f64]);
            figures.extend_from_slice(series);
        }
        Value::Record(pairs) => {
            figures.extend([kind::RECORD, pairs.len() as f64]);
            for (key, value) in pairs {
                write(key, figures, text);
                pack(value, figures, text);
            }
        }
    }
}

fn write(word: &str, figures: &mut Vec<f64>, text: &mut String) {
    figures.push(word.encode_utf16().count() as f64);
    text.push_str(word);
}

/// What a caller handed over as a value of the engine; nothing where it is of a kind that never crosses, or too deep.
pub fn within(figures: &[f64], text: &str) -> Option<Value> {
    Packed { figures: figures.iter(), text: text.chars() }.value(0)
}

struct Packed<'a> {
    figures: core::slice::Iter<'a, f64>,
    text: Chars<'a>,
}

impl Packed<'_> {
    fn value(&mut self, depth: usize) -> Option<Value> {
        match self.figure()? {
            kind::NULL => Some(Value::Null),
            kind::NUMBER => self.figure().map(Value::Number),
            kind::NO => Some(Value::Flag(false)),
            kind::YES => Some(Value::Flag(true)),
            kind::TEXT => self.word().map(Value::Text),
            _ if depth == DEEPEST => None,
            kind::LIST => (0..self.count()?).map(|_| self.value(depth + 1)).collect::<Option<_>>().map(Value::List),
            kind::RECORD => {
                let pairs = (0..self.count()?).map(|_| Some((self.word()?, self.value(depth + 1)?)));
                pairs.collect::<Option<_>>().map(Value::Record)
            }
            _ => None,
        }
    }

    fn figure(&mut self) -> Option<f64> {
        self.figures.next().copied()
    }

    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a figure that is no count counts nothing
    fn count(&mut self) -> Option<usize> {
        self.figure().map(|count| count as usize)
    }

    fn word(&mut self) -> Option<String> {
        let length = self.count()?;
        Some(self.text.by_ref().take(length).collect())
    }
}
