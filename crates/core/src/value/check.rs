use alloc::{string::String, string::ToString, vec::Vec};

use super::{Condition, Counts, Field, Inputs, Problem, Range, Shape, Start, Test, Value, code};
use crate::quantity;
use crate::text::{counted, together};

/// Reads what was given against a field table: texts become SI figures, defaults fill in what is missing, inputs
/// whose conditions fail are checked and left out.
///
/// # Errors
/// Every wrong field at once, each with its path, a code and the figures a sentence needs.
pub fn check(fields: &'static [Field], given: &Value) -> Result<Inputs, Vec<Problem>> {
    let mut checker = Checker { problems: Vec::new(), tolerances: Vec::new() };
    let values = checker.record(fields, given, "");
    if checker.problems.is_empty() {
        Ok(Inputs { values, tolerances: checker.tolerances })
    } else {
        Err(checker.problems)
    }
}

struct Checker {
    problems: Vec<Problem>,
    tolerances: Vec<(String, f64)>,
}

const NULL: Value = Value::Null;

fn join(path: &str, key: &str) -> String {
    if path.is_empty() { key.to_string() } else { together(&[path, ".", key]) }
}

impl Checker {
    fn say(&mut self, path: &str, code: &'static str) -> Value {
        self.problems.push(Problem::new(path, code));
        Value::Null
    }

    fn record(&mut self, fields: &'static [Field], given: &Value, path: &str) -> Value {
        let pairs: &[(String, Value)] = match given {
            Value::Null => &[],
            Value::Record(pairs) => pairs,
            _ => return self.say(path, code::WRONG_SHAPE),
        };
        for (key, _) in pairs {
            if !fields.iter().any(|field| field.key == key) {
                self.say(&join(path, key), code::UNKNOWN);
            }
        }
        let mut read = Vec::with_capacity(fields.len());
        let mut missing = Vec::new();
        for field in fields {
            let here = join(path, field.key);
            let value = given.get(field.key).unwrap_or(&NULL);
            let value = if !value.is_null() {
                self.one(field, value, &here)
            } else if spoken_for(fields, field, given) {
                Value::Null
            } else {
                self.default(field, &here)
            };
            if value.is_null() && !field.optional && field.one_of.is_none() {
                missing.push(field.key);
            }
            read.push((field.key.to_string(), value));
        }
        let whole = Value::Record(read);
        self.groups(fields, &whole, given, path);
        self.relations(fields, &whole, path);
        for field in fields.iter().filter(|field| missing.contains(&field.key)) {
            let here = join(path, field.key);
            let said = self.problems.iter().any(|problem| problem.field.starts_with(&here));
            if applies(field, &whole) && !said {
                self.say(&here, code::MISSING);
            }
        }
        let kept: Vec<bool> = fields.iter().map(|field| applies(field, &whole)).collect();
        let Value::Record(mut pairs) = whole else { return Value::Null };
        let mut kept = kept.into_iter();
        pairs.retain(|(_, value)| kept.next().unwrap_or(false) && !value.is_null());
        Value::Record(pairs)
    }

    fn one(&mut self, field: &'static Field, value: &Value, path: &str) -> Value {
        match (&field.shape, value) {
            (Shape::Quantity(range), Value::Number(figure)) => self.figure(range, *figure, path),
            (Shape::Quantity(range), Value::Text(text)) => match quantity::read(text, range.unit, None) {
                Ok(reading) => {
                    if let Some(tolerance) = reading.tolerance {
                        self.tolerances.push((path.to_string(), tolerance));
                    }
                    self.figure(range, reading.value, path)
                }
                Err(unread) => {
                    let mut problem = Problem::new(path, unread.code);
                    problem.mends = unread.mends;
                    self.problems.push(problem);
                    Value::Null
                }
            },
            (Shape::Choice(choices), Value::Text(text)) => {
                match choices.iter().find(|choice| choice.eq_ignore_ascii_case(text.trim())) {
                    Some(choice) => (*choice).into(),
                    None => self.say(path, code::NOT_A_CHOICE),
                }
            }
            (Shape::Flag, Value::Flag(flag)) => Value::Flag(*flag),
            (Shape::Text(most), Value::Text(text)) => {
                if text.chars().count() <= *most {
                    Value::Text(text.clone())
                } else {
                    let bounds = Problem::new(path, code::TOO_LONG).bounds(None, Some(*most as f64));
                    self.problems.push(bounds);
                    Value::Null
                }
            }
            (Shape::List(item, counts), Value::List(items)) => self.list(item, *counts, items, path),
            (Shape::Record(fields), Value::Record(_)) => self.record(fields, value, path),
            (Shape::Either(options), _) => self.either(options, value, path),
            _ => self.say(path, code::WRONG_SHAPE),
        }
    }

    fn figure(&mut self, range: &Range, figure: f64, path: &str) -> Value {
        let code = if !figure.is_finite() {
            code::NOT_A_FIGURE
        } else if range.zero && figure == 0.0 {
            return Value::Number(0.0);
        } else if figure < range.least {
            code::TOO_SMALL
        } else if figure > range.most {
            code::TOO_LARGE
        } else if range.whole && libm::fabs(libm::round(figure) - figure) > 0.0 {
            code::NOT_WHOLE
        } else {
            return Value::Number(figure);
        };
        self.problems.push(Problem::new(path, code).bounds(Some(range.least), Some(range.most)));
        Value::Null
    }

    fn list(&mut self, item: &'static Field, counts: Counts, items: &[Value], path: &str) -> Value {
        let (least, most) = (counts.least as f64, counts.most as f64);
        let code = match items.len() {
            count if count < counts.least => code::TOO_FEW,
            count if count > counts.most => code::TOO_MANY,
            _ => {
                let read = items.iter().enumerate().map(|(index, value)| {
                    let here = together(&[path, "[", &counted(index), "]"]);
                    if value.is_null() { self.say(&here, code::MISSING) } else { self.one(item, value, &here) }
                });
                return Value::List(read.collect());
            }
        };
        self.problems.push(Problem::new(path, code).bounds(Some(least), Some(most)));
        Value::Null
    }

    fn either(&mut self, options: &'static [Field], value: &Value, path: &str) -> Value {
        let suits = |field: &&Field| {
            matches!(
                (&field.shape, value),
                (Shape::Quantity(_), Value::Number(_) | Value::Text(_))
                    | (Shape::Choice(_) | Shape::Text(_), Value::Text(_))
                    | (Shape::Flag, Value::Flag(_))
                    | (Shape::List(..), Value::List(_))
                    | (Shape::Record(_), Value::Record(_))
            )
        };
        let before = (self.problems.len(), self.tolerances.len());
        let mut first = None;
        for option in options.iter().filter(suits) {
            let read = self.one(option, value, path);
            if self.problems.len() == before.0 {
                return read;
            }
            let said = self.problems.split_off(before.0);
            self.tolerances.truncate(before.1);
            first.get_or_insert(said);
        }
        match first {
            Some(said) => self.problems.extend(said),
            None => return self.say(path, code::WRONG_SHAPE),
        }
        Value::Null
    }

    fn default(&mut self, field: &'static Field, path: &str) -> Value {
        match value_of(field.start) {
            Value::Null => match field.shape {
                Shape::Record(fields) if !field.optional => self.record(fields, &Value::Null, path),
                _ => Value::Null,
            },
            value => self.one(field, &value, path),
        }
    }

    fn groups(&mut self, fields: &'static [Field], whole: &Value, given: &Value, path: &str) {
        for field in fields {
            if let Some(group) = field.one_of {
                let others = || fields.iter().filter(move |other| other.one_of == Some(group));
                let is_first = others().next().is_some_and(|first| first.key == field.key);
                if counts(given.get(field.key)) && others().filter(|o| counts(given.get(o.key))).count() > 1 {
                    let rival = others().find(|o| o.key != field.key && counts(given.get(o.key)));
                    let about = rival.map_or("", |rival| rival.key);
                    self.problems.push(Problem::new(join(path, field.key), code::ONE_OF).about(join(path, about)));
                } else if is_first && !others().any(|o| counts(whole.get(o.key)) || counts(given.get(o.key))) {
                    self.say(&join(path, field.key), code::MISSING);
                }
            }
            if let Some(group) = field.together
                && !counts(given.get(field.key))
                && let Some(other) = fields.iter().find(|o| o.together == Some(group) && counts(given.get(o.key)))
            {
                let about = join(path, other.key);
                self.problems.push(Problem::new(join(path, field.key), code::TOGETHER).about(about));
            }
        }
    }

    fn relations(&mut self, fields: &'static [Field], whole: &Value, path: &str) {
        for field in fields.iter().filter(|field| applies(field, whole)) {
            if let Some(other) = field.below
                && let (Some(low), Some(high)) =
                    (whole.get(field.key).and_then(Value::number), whole.get(other).and_then(Value::number))
                && low >= high
            {
                let problem = Problem::new(join(path, field.key), code::NOT_BELOW);
                self.problems.push(problem.bounds(None, Some(high)).about(join(path, other)));
            }
            if let Shape::List(_, Counts { same_as: Some(other), .. }) = field.shape
                && let (Some(Value::List(mine)), Some(Value::List(theirs))) = (whole.get(field.key), whole.get(other))
                && mine.len() != theirs.len()
            {
                let count = Some(theirs.len() as f64);
                let problem = Problem::new(join(path, field.key), code::COUNT_DIFFERS);
                self.problems.push(problem.bounds(count, count).about(join(path, other)));
            }
        }
    }
}

/// Whether a rival of the field's one-of group was given, so that its own default does not stand in.
fn spoken_for(fields: &[Field], field: &Field, given: &Value) -> bool {
    field
        .one_of
        .is_some_and(|group| fields.iter().any(|other| other.one_of == Some(group) && counts(given.get(other.key))))
}

/// Whether a value counts as given; a flag only when it is set.
fn counts(value: Option<&Value>) -> bool {
    !matches!(value, None | Some(Value::Null | Value::Flag(false)))
}

fn applies(field: &Field, whole: &Value) -> bool {
    field.when.iter().all(|condition| holds(condition, whole))
}

fn holds(condition: &Condition, whole: &Value) -> bool {
    let value = whole.at(condition.path);
    match condition.test {
        Test::Is(choice) => value.and_then(Value::text) == Some(choice),
        Test::IsNot(choice) => value.and_then(Value::text) != Some(choice),
        Test::Given => match value {
            Some(Value::Number(figure)) => *figure > 0.0,
            value => counts(value),
        },
    }
}

/// A default as a value.
#[must_use]
pub(super) fn value_of(start: Start) -> Value {
    match start {
        Start::Nothing => Value::Null,
        Start::Number(figure) => figure.into(),
        Start::Text(text) => text.into(),
        Start::Flag(flag) => flag.into(),
        Start::List(items) => Value::List(items.iter().map(|item| value_of(*item)).collect()),
        Start::Record(pairs) => {
            Value::Record(pairs.iter().map(|(key, start)| ((*key).to_string(), value_of(*start))).collect())
        }
    }
}
