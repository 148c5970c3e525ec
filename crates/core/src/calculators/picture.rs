use alloc::{string::String, vec::Vec};

use crate::{
    quantity::Unit,
    value::{Scale, Value},
};

/// Lines over one pair of axes.
#[derive(Clone, Debug)]
pub struct Curve {
    /// Stable name; title and axis labels are made from it in words.
    pub key: &'static str,
    /// Unit and scale of the horizontal axis.
    pub x: (Unit, Scale),
    /// Unit and scale of the vertical axis.
    pub y: (Unit, Scale),
    /// The lines.
    pub lines: Vec<Line>,
    /// Single points: name, x, y.
    pub marks: Vec<(String, f64, f64)>,
}

/// One line of a curve.
#[derive(Clone, Debug, Default)]
pub struct Line {
    /// What it is, as a code or a name of the person's own.
    pub label: String,
    /// The figure that tells it from others of its label.
    pub figure: Option<f64>,
    /// Along.
    pub x: Vec<f64>,
    /// Up, as many as along.
    pub y: Vec<f64>,
}

impl Curve {
    pub(super) fn describe(self) -> Value {
        let axis = |(unit, scale): (Unit, Scale)| {
            let scale = if scale == Scale::Log { "log" } else { "linear" };
            Value::record([("unit", unit.symbol().into()), ("scale", scale.into())])
        };
        let line = |line: Line| {
            Value::record([
                ("label", line.label.into()),
                ("figure", line.figure.into()),
                ("x", Value::Series(line.x)),
                ("y", Value::Series(line.y)),
            ])
        };
        let mark = |(label, x, y): (String, f64, f64)| {
            Value::record([("label", label.into()), ("x", x.into()), ("y", y.into())])
        };
        Value::record([
            ("key", self.key.into()),
            ("x", axis(self.x)),
            ("y", axis(self.y)),
            ("lines", Value::List(self.lines.into_iter().map(line).collect())),
            ("marks", Value::List(self.marks.into_iter().map(mark).collect())),
        ])
    }
}

/// One part to buy.
#[derive(Clone, Debug, Default)]
pub struct PartRow {
    /// As in the drawing.
    pub reference: String,
    /// What sort of part.
    pub kind: &'static str,
    /// What it does there, as a code.
    pub role: &'static str,
    /// The input it comes from.
    pub field: String,
    /// Its figure in SI, or a type.
    pub value: Option<Value>,
    /// A fraction.
    pub tolerance: Option<f64>,
    /// Watts to buy.
    pub watts: Option<f64>,
    /// Working volts to buy.
    pub volts: Option<f64>,
    /// Amperes to buy.
    pub amps: Option<f64>,
    /// Gap between the plates of a capacitor with air between them, in metres.
    pub gap: Option<f64>,
    /// The margin rule used, as a code.
    pub rule: &'static str,
}

impl PartRow {
    pub(super) fn describe(self) -> Value {
        Value::record([
            ("reference", self.reference.into()),
            ("kind", self.kind.into()),
            ("role", self.role.into()),
            ("field", self.field.into()),
            ("value", self.value.unwrap_or(Value::Null)),
            ("tolerance", self.tolerance.into()),
            ("watts", self.watts.into()),
            ("volts", self.volts.into()),
            ("amps", self.amps.into()),
            ("gap", self.gap.into()),
            ("rule", self.rule.into()),
        ])
    }
}

/// What a meter should read at one point.
#[derive(Clone, Debug, Default)]
pub struct TestPoint {
    /// The node or terminal, as a code.
    pub name: String,
    /// The socket pin it can be reached at.
    pub pin: Option<String>,
    /// Unit of the figures.
    pub unit: &'static str,
    /// With every part as marked, the meter's loading included.
    pub nominal: f64,
    /// Under this something is wrong.
    pub least: f64,
    /// Over this something is wrong.
    pub most: f64,
    /// Nineteen in twenty are over this.
    pub usual_least: f64,
    /// Nineteen in twenty are under this.
    pub usual_most: f64,
}

impl TestPoint {
    pub(super) fn describe(self) -> Value {
        Value::record([
            ("name", self.name.into()),
            ("pin", self.pin.into()),
            ("unit", self.unit.into()),
            ("nominal", self.nominal.into()),
            ("least", self.least.into()),
            ("most", self.most.into()),
            ("usual_least", self.usual_least.into()),
            ("usual_most", self.usual_most.into()),
        ])
    }
}

/// One join: from a terminal to a terminal, by a part or a wire.
#[derive(Clone, Debug, Default)]
pub struct WiringStep {
    /// Where it begins: a pin or terminal.
    pub from: String,
    /// Where it ends.
    pub to: String,
    /// The part that makes the join, if any.
    pub part: Option<String>,
    /// Its place in the order of work, from 1.
    pub step: usize,
}

impl WiringStep {
    pub(super) fn describe(self) -> Value {
        Value::record([
            ("from", self.from.into()),
            ("to", self.to.into()),
            ("part", self.part.into()),
            ("step", (self.step as f64).into()),
        ])
    }
}
