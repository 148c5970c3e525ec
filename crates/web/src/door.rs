use js_sys::{Array, Float64Array, Object, Reflect};
use tagstrip_core::value::Value;
use wasm_bindgen::{JsCast, JsValue};

/// Deeper than any field table; a value that goes deeper is not one of ours.
const DEEPEST: usize = 12;

/// A value of the engine as fresh JavaScript objects; long runs of figures as copies, never views.
pub fn out(value: &Value) -> JsValue {
    match value {
        Value::Null => JsValue::NULL,
        Value::Number(figure) => JsValue::from_f64(*figure),
        Value::Flag(flag) => JsValue::from_bool(*flag),
        Value::Text(text) => JsValue::from_str(text),
        Value::List(items) => items.iter().map(out).collect::<Array>().into(),
        Value::Series(figures) => Float64Array::from(figures.as_slice()).into(),
        Value::Record(pairs) => {
            let record = Object::new();
            for (key, value) in pairs {
                // A plain object takes any key of a field table.
                let _ = Reflect::set(&record, &JsValue::from_str(key), &out(value));
            }
            record.into()
        }
    }
}

/// A JavaScript value as one of the engine's; nothing where it is of a kind that never crosses, or too deep.
pub fn within(given: &JsValue) -> Option<Value> {
    enter(given, 0)
}

fn enter(given: &JsValue, depth: usize) -> Option<Value> {
    if given.is_null() || given.is_undefined() {
        return Some(Value::Null);
    }
    if let Some(figure) = given.as_f64() {
        return Some(Value::Number(figure));
    }
    if let Some(flag) = given.as_bool() {
        return Some(Value::Flag(flag));
    }
    if let Some(text) = given.as_string() {
        return Some(Value::Text(text));
    }
    if depth == DEEPEST || given.is_function() {
        return None;
    }
    if let Some(items) = given.dyn_ref::<Array>() {
        return items.iter().map(|item| enter(&item, depth + 1)).collect::<Option<_>>().map(Value::List);
    }
    let entries = Object::entries(given.dyn_ref::<Object>()?);
    let pairs = entries.iter().map(|pair| {
        let key = Reflect::get_u32(&pair, 0).ok()?.as_string()?;
        Some((key, enter(&Reflect::get_u32(&pair, 1).ok()?, depth + 1)?))
    });
    pairs.collect::<Option<_>>().map(Value::Record)
}
