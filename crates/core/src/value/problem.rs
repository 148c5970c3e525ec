use alloc::{string::String, vec::Vec};

use super::Value;
use crate::quantity::Mend;

/// The closed list of problem codes that the check itself gives; a text that is not read has the reader's code.
pub mod code {
    /// A needed input is not given.
    pub const MISSING: &str = "missing";
    /// A key that the calculator does not have.
    pub const UNKNOWN: &str = "unknown";
    /// A value of another kind than the field takes.
    pub const WRONG_SHAPE: &str = "wrong_shape";
    /// A figure that is not finite.
    pub const NOT_A_FIGURE: &str = "not_a_figure";
    /// Under the least.
    pub const TOO_SMALL: &str = "too_small";
    /// Over the most.
    pub const TOO_LARGE: &str = "too_large";
    /// A figure between two whole ones.
    pub const NOT_WHOLE: &str = "not_whole";
    /// Not one of the choices.
    pub const NOT_A_CHOICE: &str = "not_a_choice";
    /// A text longer than the field takes.
    pub const TOO_LONG: &str = "too_long";
    /// A list with too few items.
    pub const TOO_FEW: &str = "too_few";
    /// A list with too many items.
    pub const TOO_MANY: &str = "too_many";
    /// Two lists that must have the same number of items have not.
    pub const COUNT_DIFFERS: &str = "count_differs";
    /// More than one of a group of which one is given.
    pub const ONE_OF: &str = "one_of";
    /// Some of a group that is given whole or not at all.
    pub const TOGETHER: &str = "together";
    /// Not below the input it must be below.
    pub const NOT_BELOW: &str = "not_below";
    /// The inputs fit their ranges and have no solution.
    pub const NO_SOLUTION: &str = "no_solution";
    /// A branch without a part in it.
    pub const EMPTY_BRANCH: &str = "empty_branch";
    /// A path that names no part of the circuit.
    pub const NO_SUCH_PART: &str = "no_such_part";
    /// A switch position that is not there, or that nothing can be asked of.
    pub const NO_SUCH_POSITION: &str = "no_such_position";
    /// A clip in which nothing is heard.
    pub const SILENT: &str = "silent";
    /// No calculator of this name.
    pub const NO_CALCULATOR: &str = "no_calculator";
}

/// One thing wrong with one field: where, what, and the figures a sentence about it needs.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The field's path, `sections[1].farads`; empty for the whole.
    pub field: String,
    /// A code of the closed list: [`code`] or the reader's.
    pub code: &'static str,
    /// The least that would do, in the field's unit.
    pub least: Option<f64>,
    /// The most that would do, in the field's unit.
    pub most: Option<f64>,
    /// Why, as a code of its own, for `no_solution`; or the field it collides with.
    pub about: Option<String>,
    /// The circuit's node that a solver stopped at.
    pub node: Option<&'static str>,
    /// Texts that would be read, each with its value.
    pub mends: Vec<Mend>,
}

impl Problem {
    /// A problem with nothing but its place and code.
    #[must_use]
    pub fn new(field: impl Into<String>, code: &'static str) -> Self {
        Problem { field: field.into(), code, least: None, most: None, about: None, node: None, mends: Vec::new() }
    }

    /// Inputs in range without a solution, for the reason `why`.
    #[must_use]
    pub fn no_solution(field: impl Into<String>, why: &str) -> Self {
        Problem::new(field, code::NO_SOLUTION).about(why)
    }

    /// The same problem with what it is about.
    #[must_use]
    pub fn about(mut self, about: impl Into<String>) -> Self {
        self.about = Some(about.into());
        self
    }

    /// The same problem with its bounds.
    #[must_use]
    pub fn bounds(mut self, least: Option<f64>, most: Option<f64>) -> Self {
        (self.least, self.most) = (least, most);
        self
    }

    /// What crosses the door: `{field, code, least?, most?, about?, mends?}`.
    #[must_use]
    pub fn describe(&self) -> Value {
        let mut pairs = alloc::vec![("field".into(), self.field.as_str().into()), ("code".into(), self.code.into()),];
        let mut put = |key: &str, value: Value| {
            if !value.is_null() {
                pairs.push((key.into(), value));
            }
        };
        put("least", self.least.into());
        put("most", self.most.into());
        put("about", self.about.as_deref().map_or(Value::Null, Value::from));
        put("node", self.node.map_or(Value::Null, Value::from));
        if !self.mends.is_empty() {
            put("mends", self.mends.iter().map(describe_mend).collect::<Vec<_>>().into());
        }
        Value::Record(pairs)
    }
}

pub(super) fn describe_mend(mend: &Mend) -> Value {
    Value::record([("text", mend.text.as_str().into()), ("value", mend.value.into())])
}
