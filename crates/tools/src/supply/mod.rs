mod energy;
mod inputs;
mod random;
mod sheets;
mod speed;

pub use energy::energy;
pub use random::random;
pub use sheets::sheets;
pub use speed::speed;

use tagstrip_core::value::Value;

/// How many supplies are made.
const COUNT: usize = 2000;

/// A figure of an outcome's answers, by key and, in a list, place.
fn figure(answers: &Value, key: &str, place: Option<usize>) -> Option<f64> {
    let value = answers.get(key)?;
    place.map_or(Some(value), |place| value.items().get(place))?.number()
}

/// All figures under the answers, by path.
fn figures(answers: &Value) -> Vec<(String, f64)> {
    let Value::Record(pairs) = answers else { return Vec::new() };
    let mut all = Vec::new();
    for (key, value) in pairs {
        match value {
            Value::Number(figure) => all.push((key.clone(), *figure)),
            Value::List(items) => {
                let found =
                    items.iter().enumerate().filter_map(|(k, item)| Some((format!("{key}[{k}]"), item.number()?)));
                all.extend(found);
            }
            _ => {}
        }
    }
    all
}
