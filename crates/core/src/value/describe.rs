use alloc::{string::String, string::ToString, vec::Vec};

use super::{Answer, Condition, Field, Scale, Shape, Test, Value, check::value_of};

/// The catalogue's rows of a field table, without the words.
#[must_use]
pub fn describe_fields(fields: &[Field]) -> Value {
    Value::List(fields.iter().map(|field| describe(field, true)).collect())
}

/// The catalogue's rows of a calculator's answers, without the words.
#[must_use]
pub fn describe_answers(answers: &[Answer]) -> Value {
    Value::List(answers.iter().map(describe_answer).collect())
}

struct Row(Vec<(String, Value)>);

impl Row {
    fn put(&mut self, key: &str, value: impl Into<Value>) {
        let value = value.into();
        if !value.is_null() {
            self.0.push((key.to_string(), value));
        }
    }

    fn flag(&mut self, key: &str, flag: bool) {
        if flag {
            self.put(key, true);
        }
    }
}

fn describe(field: &Field, keyed: bool) -> Value {
    let mut row = Row(Vec::new());
    if keyed {
        row.put("key", field.key);
    }
    match &field.shape {
        Shape::Quantity(range) => {
            row.put("shape", "quantity");
            row.put("unit", range.unit.symbol());
            row.put("least", range.least);
            row.put("most", range.most);
            if range.zero {
                row.put("zero", "none");
            }
            if range.whole {
                row.put("whole", true);
            }
            if range.usual.0 < range.usual.1 {
                row.put("usual_least", range.usual.0);
                row.put("usual_most", range.usual.1);
            }
            row.put("scale", if range.scale == Scale::Log { "log" } else { "linear" });
        }
        Shape::Choice(choices) => {
            row.put("shape", "choice");
            row.put("choices", choices.iter().map(|choice| Value::from(*choice)).collect::<Vec<_>>());
        }
        Shape::Flag => row.put("shape", "flag"),
        Shape::Text(most) => {
            row.put("shape", "text");
            row.put("most", *most as f64);
        }
        Shape::List(item, counts) => {
            row.put("shape", "list");
            row.put("item", describe(item, false));
            row.put("count_least", counts.least as f64);
            row.put("count_most", counts.most as f64);
            row.put("same_count_as", counts.same_as.map(Value::from));
        }
        Shape::Record(fields) => {
            row.put("shape", "record");
            row.put("fields", describe_fields(fields));
        }
        Shape::Either(options) => {
            row.put("shape", "either");
            row.put("either", options.iter().map(|option| describe(option, false)).collect::<Vec<_>>());
        }
    }
    row.put("default", value_of(field.start));
    row.flag("optional", field.optional);
    if !field.group.is_empty() {
        row.put("group", field.group);
    }
    if !field.when.is_empty() {
        row.put("when", field.when.iter().map(describe_condition).collect::<Vec<_>>());
    }
    row.put("one_of", field.one_of.map(Value::from));
    row.put("together", field.together.map(Value::from));
    row.put("below", field.below.map(Value::from));
    Value::Record(row.0)
}

fn describe_condition(condition: &Condition) -> Value {
    let mut row = Row(Vec::new());
    row.put("path", condition.path);
    match condition.test {
        Test::Is(choice) => row.put("is", choice),
        Test::IsNot(choice) => row.put("is_not", choice),
        Test::Given => row.put("given", true),
    }
    Value::Record(row.0)
}

fn describe_answer(answer: &Answer) -> Value {
    let mut row = Row(Vec::new());
    row.put("key", answer.key);
    row.put("shape", if answer.count_of.is_some() { "list" } else { answer.shape });
    if answer.count_of.is_some() {
        row.put("item", answer.shape);
    }
    if answer.shape == "quantity" {
        row.put("unit", answer.unit.symbol());
    }
    row.put("count_of", answer.count_of.map(Value::from));
    row.flag("optional", answer.optional);
    row.put("null_means", answer.null_means.map(Value::from));
    Value::Record(row.0)
}
