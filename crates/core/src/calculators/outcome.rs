use alloc::{string::String, string::ToString, vec::Vec};

use super::{Curve, PartRow, TestPoint, WiringStep};
use crate::value::Value;

/// What of an outcome is asked for; what is not asked for is not worked out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[allow(clippy::struct_excessive_bools)] // one flag a key of the contract's `want`
pub struct Want {
    /// Figures.
    pub answers: bool,
    /// Dangers, limits and notes.
    pub cautions: bool,
    /// Lines for plots.
    pub curves: bool,
    /// What to buy.
    pub parts: bool,
    /// What to expect at each point.
    pub test_points: bool,
    /// What to join to what.
    pub wiring: bool,
    /// The netlist that the answers came from.
    pub circuit: bool,
}

impl Want {
    /// The contract's default: answers and cautions.
    pub const USUAL: Want = Want {
        answers: true,
        cautions: true,
        curves: false,
        parts: false,
        test_points: false,
        wiring: false,
        circuit: false,
    };

    /// Everything.
    pub const ALL: Want = Want {
        answers: true,
        cautions: true,
        curves: true,
        parts: true,
        test_points: true,
        wiring: true,
        circuit: true,
    };

    /// From the contract's names.
    ///
    /// # Errors
    /// The first name that is none.
    pub fn of<'a>(names: impl Iterator<Item = &'a str>) -> Result<Self, &'a str> {
        let mut want = Want::default();
        for name in names {
            match name {
                "answers" => want.answers = true,
                "cautions" => want.cautions = true,
                "curves" => want.curves = true,
                "parts" => want.parts = true,
                "test_points" => want.test_points = true,
                "wiring" => want.wiring = true,
                "circuit" => want.circuit = true,
                _ => return Err(name),
            }
        }
        Ok(want)
    }
}

/// How bad a caution is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Severity {
    /// Can hurt a person.
    Danger,
    /// A rating is exceeded.
    Limit,
    /// Worth knowing.
    Note,
}

/// One caution, as a code and the figures that its sentence needs.
#[derive(Clone, Debug, PartialEq)]
pub struct Caution {
    /// Stable name.
    pub code: &'static str,
    /// How bad.
    pub severity: Severity,
    /// The input or answer it is about.
    pub about: Option<String>,
    /// Figures by name, SI, and names of parts or choices.
    pub figures: Vec<(&'static str, Value)>,
}

impl Caution {
    /// A caution without figures.
    #[must_use]
    pub fn new(severity: Severity, code: &'static str) -> Self {
        Caution { code, severity, about: None, figures: Vec::new() }
    }

    /// The same caution about an input or answer.
    #[must_use]
    pub fn about(mut self, key: impl Into<String>) -> Self {
        self.about = Some(key.into());
        self
    }

    /// The same caution with one more figure.
    #[must_use]
    pub fn figure(mut self, name: &'static str, value: impl Into<Value>) -> Self {
        self.figures.push((name, value.into()));
        self
    }

    fn describe(self) -> Value {
        let severity = match self.severity {
            Severity::Danger => "danger",
            Severity::Limit => "limit",
            Severity::Note => "note",
        };
        let figures = self.figures.into_iter().map(|(name, value)| (name.to_string(), value));
        Value::record([
            ("code", self.code.into()),
            ("severity", severity.into()),
            ("about", self.about.into()),
            ("figures", Value::Record(figures.collect())),
        ])
    }
}

/// What a calculator gives back.
#[derive(Clone, Debug, Default)]
pub struct Outcome {
    answers: Vec<(String, Value)>,
    /// Dangers first is the page's business; here in the order found.
    pub cautions: Vec<Caution>,
    /// Lines for plots.
    pub curves: Vec<Curve>,
    /// What to buy.
    pub parts: Vec<PartRow>,
    /// What to expect.
    pub test_points: Vec<TestPoint>,
    /// What to join, in order.
    pub wiring: Vec<WiringStep>,
    /// The netlist, described.
    pub circuit: Option<Value>,
}

impl Outcome {
    /// Sets an answer; `None` and lists of them cross the door as `null`.
    pub fn answer(&mut self, key: &str, value: impl Into<Value>) {
        self.answers.push((key.to_string(), value.into()));
    }

    /// Sets an answer that is absent where it does not apply.
    pub fn answer_if(&mut self, key: &str, value: Option<impl Into<Value>>) {
        if let Some(value) = value {
            self.answer(key, value);
        }
    }

    /// Adds a caution.
    pub fn caution(&mut self, caution: Caution) {
        self.cautions.push(caution);
    }

    pub(super) fn describe(self, want: Want) -> Value {
        let mut pairs = Vec::new();
        let mut put = |wanted: bool, key: &str, value: Value| {
            if wanted {
                pairs.push((key.to_string(), value));
            }
        };
        put(want.answers, "answers", Value::Record(self.answers));
        put(want.cautions, "cautions", self.cautions.into_iter().map(Caution::describe).collect::<Vec<_>>().into());
        put(want.curves, "curves", self.curves.into_iter().map(Curve::describe).collect::<Vec<_>>().into());
        put(want.parts, "parts", self.parts.into_iter().map(PartRow::describe).collect::<Vec<_>>().into());
        put(
            want.test_points,
            "test_points",
            self.test_points.into_iter().map(TestPoint::describe).collect::<Vec<_>>().into(),
        );
        put(want.wiring, "wiring", self.wiring.into_iter().map(WiringStep::describe).collect::<Vec<_>>().into());
        put(want.circuit, "circuit", self.circuit.unwrap_or(Value::Null));
        Value::Record(pairs)
    }
}

/// A figure that an answer may carry; none where a ratio or a logarithm had nothing to work on.
pub(super) fn finite(figure: f64) -> Option<f64> {
    Some(figure).filter(|figure| figure.is_finite())
}
