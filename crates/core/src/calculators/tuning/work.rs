use alloc::vec::Vec;
use core::f64::consts::PI;

use crate::{
    calculators::{
        Caution, Curve, Line, Outcome, PartRow, Severity, Want,
        bench::{describe, wiring},
        solved,
    },
    circuit::{Circuit, GROUND, Kind, Part},
    quantity::Unit,
    value::{Inputs, Problem, Scale, Value},
};

/// Points of the curve.
const POINTS: u32 = 61;

/// The highest harmonic looked for: beyond it a crystal stage gives next to nothing.
const HIGHEST: u32 = 30;

/// So near to the target, as a fraction, a harmonic is the one that is meant.
const SAME: f64 = 0.02;

/// What the tank reaches, and what is missing to the target.
struct Reach {
    least: f64,
    most: f64,
    stray: f64,
    henries: f64,
    /// What the variable capacitor must be; under 0 where the strays alone are too much.
    needed: f64,
    /// From the most capacitance to the least.
    hertz: (f64, f64),
}

impl Reach {
    fn of(inputs: &Inputs) -> Reach {
        let (least, most) = (inputs.number("capacitor_least"), inputs.number("capacitor_most"));
        let (henries, stray) = (inputs.number("henries"), inputs.number("stray_farads"));
        let omega = 2.0 * PI * inputs.number("target_hertz");
        let needed = 1.0 / (omega * omega * henries) - stray;
        let hertz = (resonance(henries, most + stray), resonance(henries, least + stray));
        Reach { least, most, stray, henries, needed, hertz }
    }

    fn inside(&self) -> bool {
        (self.least..=self.most).contains(&self.needed)
    }

    /// The least and most capacitor beside the variable one that brings the target in.
    fn pad(&self) -> Option<(f64, f64)> {
        (self.needed > self.most).then_some((self.needed - self.most, self.needed - self.least))
    }

    /// The least and most capacitor in series with the variable one that brings the target in.
    fn series(&self) -> Option<(f64, f64)> {
        let at = |variable: f64| variable * self.needed / (variable - self.needed);
        (self.needed > 0.0 && self.needed < self.least).then(|| (at(self.most), at(self.least)))
    }

    /// The coil that brings the nearer end of the capacitor to the target, over this one.
    fn coil(&self) -> Option<f64> {
        let end = if self.needed > self.most { self.most } else { self.least };
        (!self.inside()).then(|| (self.needed + self.stray) / (end + self.stray))
    }
}

/// Thomson's formula.
fn resonance(henries: f64, farads: f64) -> f64 {
    1.0 / (2.0 * PI * crate::root::sqrt(henries * farads))
}

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let reach = Reach::of(inputs);
    let mut outcome = Outcome::default();
    let target = inputs.number("target_hertz");
    let crystal = inputs.maybe("crystal_hertz").unwrap_or(target);
    let within = |order: &u32| (reach.hertz.0..=reach.hertz.1).contains(&(crystal * f64::from(*order)));
    let orders: Vec<u32> = (1..=HIGHEST).filter(within).collect();
    if want.answers {
        answers(&mut outcome, inputs, &reach, crystal, &orders);
    }
    if want.cautions {
        cautions(&mut outcome, inputs, &reach, crystal, &orders);
    }
    if want.curves {
        outcome.curves.push(drawn(&reach, target));
    }
    if want.parts || want.wiring || want.circuit {
        let circuit = netlist(&reach);
        let dc = solved(circuit.dc())?;
        if want.parts {
            outcome.parts =
                circuit.parts().filter(|(_, part)| part.role != "stray").map(|(_, part)| row(part)).collect();
        }
        if want.wiring {
            outcome.wiring = wiring(&circuit, &[], &[]);
        }
        if want.circuit {
            outcome.circuit = Some(describe(&circuit, &dc, &[], &[]));
        }
    }
    Ok(outcome)
}

fn answers(outcome: &mut Outcome, inputs: &Inputs, reach: &Reach, crystal: f64, orders: &[u32]) {
    outcome.answer("hertz_low", reach.hertz.0);
    outcome.answer("hertz_high", reach.hertz.1);
    outcome.answer("needed_farads", Some(reach.needed).filter(|farads| *farads > 0.0));
    outcome.answer("in_range", reach.inside());
    if let Some((least, most)) = reach.pad() {
        outcome.answer("pad_farads", least);
        outcome.answer("pad_most_farads", most);
    }
    if let Some((least, most)) = reach.series() {
        outcome.answer("series_farads", most);
        outcome.answer("series_least_farads", least);
    }
    if let Some(factor) = reach.coil() {
        // Turns go with the root of the inductance while the winding keeps its shape.
        let turns = crate::root::sqrt(factor) - 1.0;
        outcome.answer("henries_change", reach.henries * (factor - 1.0));
        outcome.answer("turns_percent", 100.0 * turns);
        outcome.answer_if("turns_change", inputs.maybe("turns").map(|wound| wound * turns));
    }
    let harmonics = || orders.iter().copied().filter(|order| *order > 1).map(f64::from);
    outcome.answer("harmonics_in_range", harmonics().collect::<Vec<f64>>());
    outcome.answer("harmonic_hertz", harmonics().map(|order| order * crystal).collect::<Vec<f64>>());
}

fn cautions(outcome: &mut Outcome, inputs: &Inputs, reach: &Reach, crystal: f64, orders: &[u32]) {
    let target = inputs.number("target_hertz");
    let meant = |hertz: f64| libm::fabs(hertz - target) <= SAME * target;
    let others: Vec<f64> =
        orders.iter().map(|order| f64::from(*order) * crystal).filter(|hertz| !meant(*hertz)).collect();
    if !others.is_empty() {
        let caution = Caution::new(Severity::Danger, "harmonic_tunable").about("harmonics_in_range");
        outcome
            .caution(caution.figure("hertz", others).figure("target_hertz", target).figure("crystal_hertz", crystal));
    }
    if inputs.maybe("crystal_hertz").is_some() && !(1..=HIGHEST).any(|order| meant(f64::from(order) * crystal)) {
        let caution = Caution::new(Severity::Note, "target_no_harmonic").about("target_hertz");
        outcome.caution(caution.figure("target_hertz", target).figure("crystal_hertz", crystal));
    }
    if !reach.inside() {
        let caution = Caution::new(Severity::Note, "target_outside").about("in_range");
        let caution = caution.figure("hertz_low", reach.hertz.0).figure("hertz_high", reach.hertz.1);
        outcome.caution(caution.figure("target_hertz", target));
    }
}

/// The tank as it reaches the target: the variable capacitor where it must stand, with what is put beside it or in line.
fn netlist(reach: &Reach) -> Circuit {
    let mut circuit = Circuit::new();
    let tank = circuit.node("tank");
    let coil = Kind::Coil { henries: reach.henries, ohms: 0.0 };
    circuit.add(Part::new("L1", "tuned_coil", &[tank, GROUND], coil).from_field("henries"));
    let mut variable = tank;
    if let Some((_, most)) = reach.series() {
        variable = circuit.node("inner");
        let kind = Kind::Capacitor { farads: most };
        circuit.add(Part::new("C3", "series", &[tank, variable], kind));
    }
    let kind = Kind::Capacitor { farads: reach.most };
    circuit.add(Part::new("C1", "variable", &[variable, GROUND], kind).from_field("capacitor_most"));
    if let Some((least, _)) = reach.pad() {
        let kind = Kind::Capacitor { farads: least };
        circuit.add(Part::new("C2", "pad", &[tank, GROUND], kind));
    }
    if reach.stray > 0.0 {
        let kind = Kind::Capacitor { farads: reach.stray };
        circuit.add(Part::new("Cs", "stray", &[tank, GROUND], kind).from_field("stray_farads"));
    }
    circuit
}

fn row(part: &Part) -> PartRow {
    PartRow {
        reference: part.reference.clone(),
        kind: part.kind.name(),
        role: part.role,
        field: part.field.clone(),
        value: part.kind.value().map(Value::Number),
        ..PartRow::default()
    }
}

/// The frequency over the variable capacitor, the target marked where it is reached.
fn drawn(reach: &Reach, target: f64) -> Curve {
    let mut line = Line { label: "tuning".into(), ..Line::default() };
    for point in 0..POINTS {
        let farads = reach.least * libm::pow(reach.most / reach.least, f64::from(point) / f64::from(POINTS - 1));
        line.x.push(farads);
        line.y.push(resonance(reach.henries, farads + reach.stray));
    }
    let marks = if reach.inside() { alloc::vec![("target".into(), reach.needed, target)] } else { Vec::new() };
    Curve { key: "tuning", x: (Unit::Farad, Scale::Log), y: (Unit::Hertz, Scale::Log), lines: alloc::vec![line], marks }
}
