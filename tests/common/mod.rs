//! What the checks share: reading rows with their sources, and holding figures to them.
pub mod generate;
#[cfg(not(target_arch = "wasm32"))]
pub mod texts;
#[cfg(not(target_arch = "wasm32"))]
pub mod tube_table;

use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};

/// How near is near enough.
#[derive(Clone, Copy, Debug)]
pub enum Within {
    /// A fraction of the expected figure.
    Relative(f64),
    /// In the figure's own unit.
    Absolute(f64),
    /// Either of the two suffices.
    Either(f64, f64),
}

impl Within {
    /// Whether `got` is near enough to `want`.
    pub fn holds(self, got: f64, want: f64) -> bool {
        let off = (got - want).abs();
        match self {
            Within::Relative(share) => off <= share * want.abs(),
            Within::Absolute(most) => off <= most,
            Within::Either(share, most) => off <= share * want.abs() || off <= most,
        }
    }
}

/// Rows of a tab-separated table: a header line, `#` for remarks, the last column the source.
pub fn rows(table: &str) -> Vec<Vec<&str>> {
    let lines = table.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    lines.skip(1).map(|line| line.split('\t').collect()).collect()
}

/// Holds every row of a table of figures to `work`: the last figure is expected, those before are given.
pub fn check<const N: usize>(table: &str, within: Within, work: impl Fn([f64; N]) -> f64) {
    let mut count = 0;
    for row in rows(table) {
        let given: [f64; N] = std::array::from_fn(|k| row[k].parse().expect("a figure"));
        let want: f64 = row[N].parse().expect("a figure");
        let got = work(given);
        assert!(within.holds(got, want), "{given:?}: got {got}, expected {want} ({})", row.last().unwrap());
        count += 1;
    }
    assert!(count > 0, "no rows");
}

/// A JSON value as one of the engine's.
pub fn value(json: &serde_json::Value) -> Value {
    match json {
        serde_json::Value::Null => Value::Null,
        serde_json::Value::Bool(flag) => Value::Flag(*flag),
        serde_json::Value::Number(figure) => Value::Number(figure.as_f64().expect("a figure")),
        serde_json::Value::String(text) => Value::Text(text.clone()),
        serde_json::Value::Array(items) => Value::List(items.iter().map(value).collect()),
        serde_json::Value::Object(pairs) => Value::Record(pairs.iter().map(|(k, v)| (k.clone(), value(v))).collect()),
    }
}

/// The value at a dotted path whose steps may be indices: `harmonics_db.0`.
pub fn at<'a>(whole: &'a Value, path: &str) -> Option<&'a Value> {
    path.split('.').try_fold(whole, |here, step| match step.parse::<usize>() {
        Ok(index) => here.items().get(index),
        Err(_) => here.get(step),
    })
}

/// Inputs or answers written as JSON.
pub fn given(text: &str) -> Value {
    value(&serde_json::from_str(text).expect("well-formed"))
}

/// Inputs from pairs; of a key that is given twice the last counts.
pub fn inputs<'a>(pairs: impl IntoIterator<Item = (&'a str, Value)>) -> Value {
    let mut whole: Vec<(String, Value)> = Vec::new();
    for (key, value) in pairs {
        whole.retain(|(other, _)| other != key);
        whole.push((key.to_string(), value));
    }
    Value::Record(whole)
}

/// The figure at a path of some answers, which must be there.
pub fn figure(answers: &Value, path: &str) -> f64 {
    at(answers, path).and_then(Value::number).unwrap_or_else(|| panic!("{path} in {answers:?}"))
}

/// Holds a figure to what was expected.
pub fn hold(got: f64, want: f64, within: Within, what: &str) {
    assert!(within.holds(got, want), "{what}: got {got}, expected {want}");
}

/// The codes of an outcome's cautions.
pub fn codes(outcome: &Value) -> Vec<&str> {
    let cautions = outcome.get("cautions").expect("cautions").items();
    cautions.iter().map(|caution| caution.get("code").and_then(Value::text).expect("a code")).collect()
}

/// Whether the calculator `id` warns of `code` with these inputs, written as JSON.
pub fn warns(id: &str, inputs: &str, code: &str) -> bool {
    codes(&work(id, &given(inputs), Want::ALL).expect("an answer")).contains(&code)
}

/// Holds the calculator `id` to a table of worked examples: inputs and answers as JSON, then how near, for `within`.
pub fn examples(id: &str, table: &str, within: fn(f64) -> Within) {
    let rows = rows(table);
    assert!(!rows.is_empty());
    for row in rows {
        let outcome = work(id, &given(row[0]), Want::USUAL).expect("an answer");
        let answers = outcome.get("answers").expect("answers");
        let Value::Record(wanted) = given(row[1]) else { panic!("answers in {row:?}") };
        let within = within(row[2].parse().expect("a figure"));
        for (key, want) in wanted {
            let got = at(answers, &key).unwrap_or_else(|| panic!("{key} of {}", row[0]));
            assert!(near(got, &want, within), "{key}: {got:?} for {want:?} in {}", row[0]);
        }
    }
}

fn near(got: &Value, want: &Value, within: Within) -> bool {
    match (got, want) {
        (Value::Number(got), Value::Number(want)) => within.holds(*got, *want),
        (Value::List(got), Value::List(want)) => {
            got.len() == want.len() && got.iter().zip(want).all(|(got, want)| near(got, want, within))
        }
        _ => got == want,
    }
}
