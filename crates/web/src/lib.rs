//! The one door between the engine and JavaScript: it turns values into values and knows no calculator by name.

#![no_std]

extern crate alloc;

mod door;
#[cfg(target_arch = "wasm32")]
mod footing;

use alloc::string::String;

use js_sys::Array;
#[cfg(feature = "whole")]
use js_sys::Float32Array;
#[cfg(feature = "whole")]
use tagstrip_core::hearing;
use tagstrip_core::{
    calculators::{self, Want},
    quantity::{self, Prefix, Unit},
    value::{Problem, Value, code},
};
use wasm_bindgen::prelude::*;

/// Every calculator with its inputs and answers, without the words.
#[wasm_bindgen]
#[must_use]
pub fn catalogue() -> Array {
    door::out(&calculators::catalogue())
}

/// Works a calculator on packed `[inputs, want]`; `want` is a list of names, or nothing for answers and cautions.
///
/// # Errors
/// A list of problems, every wrong field at once.
#[wasm_bindgen]
pub fn work(id: &str, figures: &[f64], text: &str) -> Result<Array, JsValue> {
    let [inputs, want] = pair(figures, text);
    let want = match want {
        Value::List(names) => Want::of(names.iter().filter_map(Value::text))
            .map_err(|name| refuse(&[Problem::new("want", code::NOT_A_CHOICE).about(name)]))?,
        _ => Want::USUAL,
    };
    calculators::work(id, &inputs, want).map(|outcome| door::out(&outcome)).map_err(|problems| refuse(&problems))
}

/// Reads a figure as typed: `{value, tolerance?, notation}`.
///
/// # Errors
/// A list of one problem: why it was not read, and texts that would be.
#[wasm_bindgen]
#[allow(clippy::needless_pass_by_value)] // what crosses the door arrives owned
pub fn read_quantity(text: &str, unit: &str, shown: Option<String>) -> Result<Array, JsValue> {
    let Some(unit) = Unit::of(unit) else {
        return Err(refuse(&[Problem::new("unit", "unknown_unit")]));
    };
    match quantity::read(text, unit, shown.as_deref().and_then(Prefix::of)) {
        Ok(reading) => Ok(door::out(&Value::record([
            ("value", reading.value.into()),
            ("tolerance", reading.tolerance.into()),
            ("notation", reading.notation.into()),
        ]))),
        Err(unread) => {
            let mut problem = Problem::new("", unread.code);
            problem.mends = unread.mends;
            Err(refuse(&[problem]))
        }
    }
}

/// Sends a clip through a circuit by packed `[inputs, how]`. Samples come back as a `Float32Array` beside what is told.
///
/// # Errors
/// A list of problems, every wrong field at once.
#[cfg(feature = "whole")]
#[wasm_bindgen]
pub fn render(figures: &[f64], text: &str, samples: &Float32Array, rate: f64) -> Result<Array, JsValue> {
    let [inputs, how] = pair(figures, text);
    let rendered = calculators::render(&inputs, &samples.to_vec(), rate, &how).map_err(|problems| refuse(&problems))?;
    let out = door::out(&Value::record([
        ("rate", rendered.rate.into()),
        ("peak_volts", rendered.peak_volts.into()),
        ("grid_current", rendered.grid_current.into()),
        ("loudness_db", rendered.heard.loudness_db.into()),
        ("bands_hertz", Value::Series(hearing::HEARD.to_vec())),
        ("bands_db", Value::Series(rendered.heard.bands_db.to_vec())),
    ]));
    out.push(&Float32Array::from(rendered.samples.as_slice()));
    Ok(out)
}

/// Samples of −1 to 1 from bytes of 8-bit µ-law.
#[cfg(feature = "whole")]
#[wasm_bindgen]
#[must_use]
pub fn from_mulaw(bytes: &[u8]) -> Float32Array {
    Float32Array::from(hearing::from_mulaw(bytes).as_slice())
}

/// The next preferred value up or down from `value` in a series such as `E24`; nothing where there is none.
#[wasm_bindgen]
#[must_use]
pub fn step(value: f64, series: &str, up: bool) -> Option<f64> {
    quantity::Series::of(series).and_then(|series| quantity::step(value, series, up))
}

/// What is worked on and how; inputs that cannot cross are no record, which the calculator refuses by itself.
fn pair(figures: &[f64], text: &str) -> [Value; 2] {
    let both = match door::within(figures, text) {
        Some(Value::List(both)) => both.try_into().ok(),
        _ => None,
    };
    both.unwrap_or([Value::Flag(false), Value::Null])
}

fn refuse(problems: &[Problem]) -> JsValue {
    door::out(&Value::List(problems.iter().map(Problem::describe).collect())).into()
}
