use alloc::{string::String, vec, vec::Vec};
use core::f64::consts::PI;

use super::cautions::cautions;
use crate::text::{counted, together};
use crate::{
    calculators::{
        Curve, Line, Outcome, Want, WiringStep,
        bench::{Buying, Point, describe, meter_ohms, parts, test_points, wiring},
        finite, solved,
    },
    circuit::{Circuit, DcPoint, Fault, GROUND, Kind, NodeId, Part},
    quantity::{Series, Unit, nearest, step},
    tube::{Regulator, regulator},
    value::{Inputs, Problem, Scale, code},
};

/// Usual tolerances where none is written with the value. Common practice, no source.
const RESISTOR: f64 = 0.05;
const MAINS: f64 = 0.05;

/// A rail, planned: its dropper and what stands around it.
pub(super) struct Plan {
    pub regulator: Option<&'static Regulator>,
    /// What the source gives, least and most.
    pub source: (f64, f64),
    /// What the load draws, least, as stated and most.
    pub amps: (f64, f64, f64),
    pub volts: f64,
    pub ohms: f64,
}

impl Plan {
    fn of(inputs: &Inputs) -> Result<Self, Vec<Problem>> {
        let amps = inputs.number("amps");
        let [least, most] = ["amps_least", "amps_most"].map(|key| inputs.maybe(key).unwrap_or(amps));
        let wrong = |low: &str, high: &str, most: f64| {
            Err(vec![Problem::new(low, code::NOT_BELOW).bounds(None, Some(most)).about(high)])
        };
        if least > most {
            return wrong("amps_least", "amps_most", most);
        }
        let amps = (least, amps, most);
        let Some(tube) = regulator(inputs.text("regulator")) else {
            let (source, volts) = (inputs.number("volts_in"), inputs.number("volts_out"));
            return Ok(Plan {
                regulator: None,
                source: (source, source),
                amps,
                volts,
                ohms: (source - volts) / amps.1,
            });
        };
        let source = (inputs.number("source_volts_least"), inputs.number("source_volts_most"));
        if source.0 > source.1 {
            return wrong("source_volts_least", "source_volts_most", source.1);
        }
        if source.0 <= tube.volts {
            return Err(vec![Problem::no_solution("source_volts_least", "source_under_regulator")]);
        }
        let ohms = (source.0 - tube.volts) / (most + tube.amps_least);
        Ok(Plan { regulator: Some(tube), source, amps, volts: tube.volts, ohms })
    }

    /// The smallest dropper that keeps the regulator's most current, at the most source and the least load.
    pub fn least_ohms(&self, tube: &Regulator) -> f64 {
        (self.source.1 - tube.volts) / (tube.amps_most + self.amps.0)
    }

    /// The largest dropper with which it strikes at the least source and the most load; none where nothing is drawn.
    pub fn strike_ohms(&self, tube: &Regulator) -> Option<f64> {
        finite((self.source.0 - tube.striking_volts) / self.amps.2)
    }

    /// What stands across a regulator that does not glow yet, at the least source and the most load.
    pub fn strike_volts(&self) -> f64 {
        self.source.0 - self.ohms * self.amps.2
    }

    /// What stands at the load when it draws `amps`, the regulator away.
    pub fn volts_at(&self, source: f64, amps: f64) -> f64 {
        f64::max(0.0, source - self.ohms * amps)
    }

    /// The preferred dropper: the nearest one, or with a regulator the largest that keeps all of its limits.
    pub fn preferred(&self) -> Option<f64> {
        let Some(tube) = self.regulator else {
            return nearest(self.ohms, Series::E12).map(|preferred| preferred.value);
        };
        let most = self.strike_ohms(tube).map_or(self.ohms, |strike| f64::min(strike, self.ohms));
        let under = |series| step(most * (1.0 + 1e-9), series, false).filter(|ohms| *ohms >= self.least_ohms(tube));
        under(Series::E12).or_else(|| under(Series::E24))
    }

    /// The rail as a circuit, its load a resistor that draws `amps` at the rail's volts.
    fn circuit(&self, inputs: &Inputs, source: f64, amps: f64) -> (Circuit, [NodeId; 2]) {
        let mut circuit = Circuit::new();
        let nodes = ["supply", "output"].map(|name| circuit.node(name));
        let [supply, output] = nodes;
        let field = if self.regulator.is_some() { "source_volts_least" } else { "volts_in" };
        let emf = Kind::Source { volts: source, signal: 0.0 };
        circuit.add(Part::new("B+", "supply", &[supply, GROUND], emf).from_field(field).within(MAINS));
        let dropper = Part::new("R1", "dropper", &[supply, output], Kind::Resistor { ohms: self.ohms });
        circuit.add(dropper.within(RESISTOR));
        let load = Kind::Resistor { ohms: self.volts / f64::max(amps, 1e-12) };
        circuit.add(Part::new("RL", "load_resistor", &[output, GROUND], load).from_field("amps"));
        let farads = inputs.number("farads");
        if farads > 0.0 {
            let capacitor = Part::new("C1", "decoupling", &[output, GROUND], Kind::Capacitor { farads });
            circuit.add(capacitor.from_field("farads").within(inputs.tolerance("farads").unwrap_or(0.2)));
        }
        if let Some(tube) = self.regulator {
            let spread = 0.5 * (tube.volts_between.1 - tube.volts_between.0) / tube.volts;
            let glow = Kind::Source { volts: tube.volts, signal: 0.0 };
            let part = Part::new("V1", "regulator", &[output, GROUND], glow);
            circuit.add(part.from_field("regulator").within(spread));
        }
        (circuit, nodes)
    }

    /// The current through the glowing regulator, at a source and a load.
    fn glow(&self, inputs: &Inputs, source: f64, amps: f64) -> Result<f64, Fault> {
        let (circuit, _) = self.circuit(inputs, source, amps);
        let dc = circuit.dc()?;
        Ok(circuit.find("V1").map_or(0.0, |tube| dc.amps(tube)))
    }
}

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let plan = Plan::of(inputs)?;
    let (circuit, [supply, output]) = plan.circuit(inputs, plan.source.0, plan.amps.1);
    let dc = solved(circuit.dc())?;
    let glow = match plan.regulator {
        Some(_) => Some((
            solved(plan.glow(inputs, plan.source.0, plan.amps.2))?,
            solved(plan.glow(inputs, plan.source.1, plan.amps.0))?,
        )),
        None => None,
    };
    let mut outcome = Outcome::default();
    if want.answers {
        solved(answers(&mut outcome, inputs, &plan, (&circuit, output, &dc), glow))?;
    }
    if want.cautions {
        cautions(&mut outcome, inputs, &plan, glow);
    }
    if want.curves {
        outcome.curves.push(drawn(&plan));
    }
    if want.parts {
        let (worst, _) = plan.circuit(inputs, plan.source.1, plan.amps.2);
        let tube = plan.regulator.map_or("", |tube| tube.name);
        outcome.parts = parts(&worst, &Buying { dc: &solved(worst.dc())?, cold_volts: plan.source.1, tube });
    }
    if want.test_points {
        let points = [(supply, "supply"), (output, "output")];
        let points =
            points.map(|(node, name)| Point { node, name: String::from(name), pin: pin(&plan, node == output) });
        outcome.test_points = solved(test_points(&circuit, &dc, points.into(), meter_ohms(inputs)))?;
    }
    if want.wiring {
        outcome.wiring = wiring(&circuit, &[], &[]);
        joins(&mut outcome.wiring, &plan);
    }
    if want.circuit {
        outcome.circuit = Some(describe(&circuit, &dc, &[], &[]));
    }
    Ok(outcome)
}

fn pin(plan: &Plan, plate: bool) -> Option<String> {
    let (plate_pin, _) = plan.regulator.filter(|_| plate)?.pins;
    Some(together(&["V1.", &counted(plate_pin.into())]))
}

/// The regulator's two pins.
fn joins(steps: &mut Vec<WiringStep>, plan: &Plan) {
    let Some(tube) = plan.regulator else { return };
    for (pin, to) in [(tube.pins.0, "output"), (tube.pins.1, "ground")] {
        let from = together(&["V1.", &counted(pin.into())]);
        steps.push(WiringStep { from, to: to.into(), part: None, step: steps.len() + 1 });
    }
}

fn answers(
    outcome: &mut Outcome,
    inputs: &Inputs,
    plan: &Plan,
    (circuit, output, dc): (&Circuit, NodeId, &DcPoint),
    glow: Option<(f64, f64)>,
) -> Result<(), Fault> {
    let across = plan.source.1 - plan.volts;
    outcome.answer("dropper_ohms", plan.ohms);
    outcome.answer("dropper_watts", across * across / plan.ohms);
    outcome.answer("dropper_preferred_ohms", plan.preferred());
    outcome.answer("rail_volts", dc.volts(output));
    outcome.answer("open_volts", plan.source.1);
    if let (Some(tube), Some((least, most))) = (plan.regulator, glow) {
        outcome.answer("dropper_least_ohms", plan.least_ohms(tube));
        outcome.answer("strikes", plan.strike_volts() >= tube.striking_volts);
        outcome.answer("strike_volts", plan.strike_volts());
        outcome.answer("regulator_amps_least", least);
        outcome.answer("regulator_amps_most", most);
        return Ok(());
    }
    if inputs.maybe("amps_least").or(inputs.maybe("amps_most")).is_some() {
        outcome.answer("volts_least", plan.volts_at(plan.source.0, plan.amps.2));
        outcome.answer("volts_most", plan.volts_at(plan.source.1, plan.amps.0));
    }
    if let Some(capacitor) = circuit.find("C1") {
        let mut bare = circuit.clone();
        bare.set(capacitor, Kind::Capacitor { farads: 0.0 });
        let ohms = bare.response(dc)?.at(1.0)?.impedance(output).magnitude();
        outcome.answer_if("ripple_corner_hertz", finite(1.0 / (2.0 * PI * ohms * inputs.number("farads"))));
    }
    Ok(())
}

/// Volts of the rail against what is drawn; with a regulator, at either end of the source.
fn drawn(plan: &Plan) -> Curve {
    const POINTS: u32 = 101;
    let tube = plan.regulator;
    let reach = match tube {
        Some(tube) => (plan.source.1 - tube.volts) / plan.ohms,
        None => plan.amps.2,
    };
    let most = 1.5 * f64::max(reach, plan.amps.2);
    let line = |label: &str, source: f64| {
        let x: Vec<f64> = (0..POINTS).map(|k| most * f64::from(k) / f64::from(POINTS - 1)).collect();
        let held = |amps: f64| {
            let volts = plan.volts_at(source, amps);
            tube.map_or(volts, |tube| f64::min(volts, tube.volts))
        };
        let y = x.iter().map(|amps| held(*amps)).collect();
        Line { label: label.into(), figure: None, x, y }
    };
    let lines = match tube {
        Some(_) => vec![line("source_least", plan.source.0), line("source_most", plan.source.1)],
        None => vec![line("rail", plan.source.0)],
    };
    let marks = vec![("load".into(), plan.amps.1, plan.volts)];
    Curve { key: "load", x: (Unit::Ampere, Scale::Linear), y: (Unit::Volt, Scale::Linear), lines, marks }
}
