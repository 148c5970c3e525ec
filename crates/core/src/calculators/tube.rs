//! A triode that is not in the table, from the points of its data sheet.

use alloc::{string::ToString, vec, vec::Vec};

use super::{Calculator, Caution, Curve, Outcome, Severity, Want, triode};
use crate::text::counted;
use crate::{
    quantity::Unit,
    tube::{Cutoff, Fit, Kind, Parameter, Point, Sheet, Unfit, fit},
    value::{Answer, Field, Inputs, Problem, Scale, Start, Value},
};

/// Fits the law of a triode to data-sheet points.
pub(super) static TUBE: Calculator = Calculator { id: "tube", group: "parts", inputs: INPUTS, answers: ANSWERS, work };

/// A current further off than this, in percent, is worth a second look: three times what sheets are rounded to.
const LARGE: f64 = 15.0;

static POINT: [Field; 6] = [
    Field::volts("plate_volts", 1e-3).usual(60.0, 300.0),
    Field::quantity("grid_volts", Unit::Volt, -1e3, 1e3).usual(-12.0, 0.0),
    Field::quantity("plate_amps", Unit::Ampere, 1e-9, 100.0).usual(0.2e-3, 30e-3),
    Field::quantity("gm", Unit::Siemens, 1e-9, 100.0).optional().usual(0.5e-3, 15e-3),
    Field::ohms("plate_resistance").optional().usual(1e3, 100e3),
    Field::quantity("mu", Unit::One, 0.5, 1e3).optional().usual(2.0, 110.0),
];

static CUTOFF: [Field; 2] = [
    Field::volts("plate_volts", 1e-3).usual(60.0, 300.0),
    Field::quantity("grid_volts", Unit::Volt, -1e3, 1e3).usual(-30.0, -2.0),
];

static POINT_ITEM: Field = Field::record("point", &POINT);
static CUTOFF_ITEM: Field = Field::record("cutoff", &CUTOFF);

/// The 6SN7GT of the table: RCA data sheet, class A1.
const START: Start = Start::List(&[
    Start::Record(&[
        ("plate_volts", Start::Number(90.0)),
        ("grid_volts", Start::Number(0.0)),
        ("plate_amps", Start::Number(10e-3)),
        ("gm", Start::Number(3e-3)),
        ("plate_resistance", Start::Number(6700.0)),
    ]),
    Start::Record(&[
        ("plate_volts", Start::Number(250.0)),
        ("grid_volts", Start::Number(-8.0)),
        ("plate_amps", Start::Number(9e-3)),
        ("gm", Start::Number(2.6e-3)),
        ("plate_resistance", Start::Number(7700.0)),
    ]),
]);

static INPUTS: &[Field] = &[
    Field::text("name", 24).optional().group("tube"),
    Field::list("points", &POINT_ITEM, 2, 12).group("points").start_with(START),
    Field::list("cutoff", &CUTOFF_ITEM, 0, 6).optional().group("points"),
    Field::farads("grid_plate_farads").or_none().start(2e-12).usual(0.5e-12, 10e-12).group("capacitances"),
    Field::farads("grid_cathode_farads").or_none().start(2e-12).usual(0.5e-12, 10e-12).group("capacitances"),
    Field::farads("plate_cathode_farads").or_none().start(1e-12).usual(0.2e-12, 10e-12).group("capacitances"),
];

static ANSWERS: &[Answer] = &[
    Answer::quantity("mu", Unit::One),
    Answer::quantity("perveance", Unit::Perveance),
    Answer::quantity("mu_spread", Unit::One),
    Answer::quantity("contact_volts", Unit::Volt),
    Answer::quantity("mu_error", Unit::One),
    Answer::quantity("perveance_error", Unit::Perveance),
    Answer::quantity("mu_spread_error", Unit::One),
    Answer::quantity("contact_volts_error", Unit::Volt),
    Answer::other("priors", "text").each("free"),
    Answer::quantity("residual_percent", Unit::Percent).each("points"),
    Answer::quantity("gm_percent", Unit::Percent).each("points").null_means("not_printed"),
    Answer::quantity("mu_percent", Unit::Percent).each("points").null_means("not_printed"),
    Answer::quantity("cutoff_percent", Unit::Percent).each("cutoff"),
    Answer::quantity("worst_percent", Unit::Percent),
    Answer::quantity("open_amps_percent", Unit::Percent),
    Answer::quantity("open_gain_percent", Unit::Percent),
    Answer::other("tube", "record"),
];

fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let points: Vec<Point> = inputs.items("points").iter().map(point).collect();
    let cutoffs: Vec<Cutoff> = inputs.items("cutoff").iter().map(cutoff).collect();
    let sheet = Sheet { points: &points, cutoffs: &cutoffs, ..Sheet::EMPTY };
    let fit = fit(&sheet).map_err(|unfit| {
        vec![match unfit {
            Unfit::Undetermined => Problem::no_solution("points", "undetermined"),
            Unfit::OutsideLaw => Problem::no_solution("points", "outside_law"),
        }]
    })?;
    let mut outcome = Outcome::default();
    if want.answers {
        answer(&mut outcome, inputs, &fit, &sheet);
    }
    if want.cautions {
        cautions(&mut outcome, &fit);
    }
    if want.curves {
        outcome.curves.push(curve(&fit, &points));
    }
    Ok(outcome)
}

fn figure(record: &Value, key: &str) -> Option<f64> {
    record.get(key).and_then(Value::number)
}

fn point(record: &Value) -> Point {
    Point {
        plate_volts: figure(record, "plate_volts").unwrap_or(0.0),
        grid_volts: figure(record, "grid_volts").unwrap_or(0.0),
        plate_amps: figure(record, "plate_amps").unwrap_or(0.0),
        gm: figure(record, "gm"),
        plate_resistance: figure(record, "plate_resistance"),
        mu: figure(record, "mu"),
        source: "",
    }
}

fn cutoff(record: &Value) -> Cutoff {
    Cutoff {
        plate_volts: figure(record, "plate_volts").unwrap_or(0.0),
        grid_volts: figure(record, "grid_volts").unwrap_or(0.0),
        source: "",
    }
}

fn answer(outcome: &mut Outcome, inputs: &Inputs, fit: &Fit, sheet: &Sheet) {
    for (name, value, parameter) in parameters(fit) {
        outcome.answer(name, value);
        outcome.answer(&[name, "_error"].concat(), parameter.error);
    }
    let at_prior = parameters(fit).into_iter().filter(|(.., parameter)| parameter.at_prior);
    outcome.answer("priors", at_prior.map(|(name, ..)| Value::from(name)).collect::<Vec<_>>());
    let points = sheet.points.len();
    outcome.answer("residual_percent", percents(fit, &[Kind::Current], points));
    outcome.answer("gm_percent", percents(fit, &[Kind::Gm], points));
    outcome.answer("mu_percent", percents(fit, &[Kind::Mu, Kind::PlateResistance], points));
    outcome.answer("cutoff_percent", percents(fit, &[Kind::Cutoff], sheet.cutoffs.len()));
    outcome.answer("worst_percent", worst(fit).1);
    outcome.answer("open_amps_percent", 100.0 * fit.spread.plate_amps);
    outcome.answer("open_gain_percent", 100.0 * fit.spread.mu);
    outcome.answer("tube", record(inputs, fit));
}

/// The parameters by the contract's names.
fn parameters(fit: &Fit) -> [(&'static str, f64, Parameter); 4] {
    [
        ("mu", fit.law.mu, fit.mu),
        ("perveance", fit.law.perveance, fit.perveance),
        ("mu_spread", fit.law.mu_spread, fit.mu_spread),
        ("contact_volts", fit.law.contact_volts, fit.contact_volts),
    ]
}

fn percent(log_ratio: f64) -> f64 {
    100.0 * libm::expm1(log_ratio)
}

/// How far the law lies from each datum of one of `kinds`, in percent of what was given.
fn percents(fit: &Fit, kinds: &[Kind], count: usize) -> Vec<Option<f64>> {
    let of = |index| fit.residuals.iter().find(|residual| residual.index == index && kinds.contains(&residual.kind));
    (0..count).map(|index| of(index).map(|residual| percent(residual.log_ratio))).collect()
}

/// The point, from 1, whose current lies furthest from the law, and by how many percent.
fn worst(fit: &Fit) -> (usize, f64) {
    let currents = fit.residuals.iter().filter(|residual| residual.kind == Kind::Current);
    let off = currents.map(|residual| (residual.index + 1, percent(residual.log_ratio)));
    off.fold((0, 0.0), |most, next| if libm::fabs(next.1) > libm::fabs(most.1) { next } else { most })
}

/// The `tube` that `stage` and its like take.
fn record(inputs: &Inputs, fit: &Fit) -> Value {
    let mut pairs = Vec::new();
    if let Some(name) = inputs.at("name").text() {
        pairs.push(("name".to_string(), name.into()));
    }
    pairs.extend(parameters(fit).map(|(name, value, _)| (name.to_string(), value.into())));
    for key in ["grid_plate_farads", "grid_cathode_farads", "plate_cathode_farads"] {
        pairs.push((key.to_string(), inputs.number(key).into()));
    }
    Value::Record(pairs)
}

fn cautions(outcome: &mut Outcome, fit: &Fit) {
    for (name, value, _) in parameters(fit).into_iter().filter(|(.., parameter)| parameter.at_prior) {
        let caution = Caution::new(Severity::Note, "prior_kept").about(name).figure("parameter", name);
        outcome.caution(caution.figure("value", value));
    }
    let (point, off) = worst(fit);
    if libm::fabs(off) > LARGE {
        let caution = Caution::new(Severity::Note, "residual_large").about("residual_percent");
        outcome.caution(caution.figure("residual_percent", off).figure("point", point as f64));
    }
}

/// The plate family with the given points, as far as they reach and a fifth more.
fn curve(fit: &Fit, points: &[Point]) -> Curve {
    let most = |figure: fn(&Point) -> f64| points.iter().map(figure).fold(0.0, f64::max);
    let (volts, amps) = (1.2 * most(|point| point.plate_volts), 1.2 * most(|point| point.plate_amps));
    let marks = points.iter().enumerate();
    let marks = marks.map(|(index, point)| (counted(index + 1), point.plate_volts, point.plate_amps));
    Curve {
        key: "plate_curves",
        x: (Unit::Volt, Scale::Linear),
        y: (Unit::Ampere, Scale::Linear),
        lines: triode::family(&fit.law, volts, amps),
        marks: marks.collect(),
    }
}
