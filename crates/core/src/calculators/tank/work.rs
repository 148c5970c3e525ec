use alloc::vec::Vec;
use core::f64::consts::PI;

use super::{
    netlist::{Design, Tank, build},
    say::cautions,
    standard,
};
use crate::{
    calculators::{
        Curve, Outcome, PartRow, Want,
        bench::{describe, standard_volts, wiring},
        finite,
        rf::{HARMONICS, Stressed, gap_metres, harmonic_curve, parts},
        solved,
    },
    circuit::{Fault, Kind, PartId, Response},
    value::{Inputs, Problem, Value},
};

/// Points of the curve.
const POINTS: u32 = 241;

/// The blocking capacitor's reactance against the load. Common practice, no source.
const BLOCKING_SHARE: f64 = 50.0;

/// What the blocking capacitor must stand over the plate's own volts. Common practice, no source.
const BLOCKING_MARGIN: f64 = 1.5;

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let tank = build(inputs)?;
    let dc = solved(tank.circuit.dc())?;
    let hertz = inputs.number("hertz");
    let mut outcome = Outcome::default();
    let mut response = solved(tank.circuit.response(&dc))?;
    let passes = solved(Passes::at(&tank, &mut response, hertz))?;
    let harmonics: Result<Vec<Option<f64>>, Fault> =
        HARMONICS.map(|order| passes.under(&tank, &mut response, hertz * f64::from(order))).collect();
    let harmonic_db = solved(harmonics)?;
    let phasors = solved(response.at(hertz))?;
    let scale = crate::root::sqrt(inputs.number("carrier_watts") / passes.watts);
    let peaks = if matches!(inputs.at("modulated"), Value::Flag(true)) { 2.0 } else { 1.0 };
    let stressed = Stressed { circuit: &tank.circuit, phasors, scale, peaks };
    let figures = figures(&tank, &stressed, inputs, harmonic_db);
    if want.cautions {
        cautions(&mut outcome, inputs, &figures);
    }
    if want.answers {
        answers(&mut outcome, &tank, inputs, &figures);
    }
    if want.parts {
        outcome.parts = parts(&stressed, |role| role != "second_coil");
        outcome.parts.push(blocking(inputs, figures.blocking_farads, peaks));
    }
    if want.curves {
        outcome.curves.push(solved(drawn(&tank, &passes, &mut response, hertz))?);
    }
    if want.wiring {
        outcome.wiring = wiring(&tank.circuit, &[], &tank.seen_as);
    }
    if want.circuit {
        outcome.circuit = Some(describe(&tank.circuit, &dc, &[], &tank.seen_as));
    }
    Ok(outcome)
}

/// What comes through at one frequency from 1 V at the plate.
struct Passes {
    /// Volts at the antenna's resistance for an ampere from the tube.
    ohms: f64,
    /// Watts that the tank takes.
    watts: f64,
}

impl Passes {
    fn at(tank: &Tank, response: &mut Response, hertz: f64) -> Result<Passes, Fault> {
        let phasors = response.at(hertz)?;
        let amps = phasors.terminal_amps(tank.tube, 0);
        let ohms = phasors.volts(tank.radiating).magnitude() / amps.magnitude();
        Ok(Passes { ohms, watts: -0.5 * amps.re })
    }

    /// Decibels of the power in the antenna at another frequency over that here, for currents alike at the plate.
    fn under(&self, tank: &Tank, response: &mut Response, hertz: f64) -> Result<Option<f64>, Fault> {
        let there = Passes::at(tank, response, hertz)?;
        Ok(finite(20.0 * libm::log10(there.ohms / self.ohms)))
    }
}

/// What the tank does and must stand.
pub(super) struct Figures {
    pub loss_watts: f64,
    pub loss_percent: f64,
    pub harmonic_db: Vec<Option<f64>>,
    pub coil_amps: f64,
    /// At the carrier.
    pub plate_peak_volts: f64,
    /// Under modulation where there is some.
    pub input_peak_volts: f64,
    pub output_peak_volts: f64,
    pub antenna_peak_volts: f64,
    pub input_farads: f64,
    pub blocking_farads: f64,
}

fn figures(tank: &Tank, stressed: &Stressed, inputs: &Inputs, harmonic_db: Vec<Option<f64>>) -> Figures {
    let lost = |(id, ohms): (PartId, f64)| {
        let amps = stressed.amps(id);
        amps * amps * ohms
    };
    let windings = tank.circuit.parts().filter_map(|(id, part)| match part.kind {
        Kind::Coil { ohms, .. } => Some((id, ohms)),
        Kind::Resistor { ohms } if part.reference.is_empty() => Some((id, ohms)),
        _ => None,
    });
    let loss_watts: f64 = windings.map(lost).sum();
    let antenna = stressed.peak_volts(tank.radiating);
    let radiated = 0.5 * antenna * antenna / inputs.number("antenna_ohms");
    Figures {
        loss_watts,
        loss_percent: 100.0 * loss_watts / (loss_watts + radiated),
        harmonic_db,
        coil_amps: stressed.amps(tank.coil),
        plate_peak_volts: stressed.peak_volts(tank.plate),
        input_peak_volts: stressed.peaks * stressed.across(tank.input),
        output_peak_volts: stressed.peaks * stressed.across(tank.output),
        antenna_peak_volts: stressed.peaks * stressed.peak_volts(tank.antenna),
        input_farads: value(tank, tank.input),
        blocking_farads: BLOCKING_SHARE / (2.0 * PI * inputs.number("hertz") * inputs.number("rf_load_ohms")),
    }
}

fn value(tank: &Tank, part: PartId) -> f64 {
    tank.circuit.part(part).and_then(|part| part.kind.value()).unwrap_or(0.0)
}

fn answers(outcome: &mut Outcome, tank: &Tank, inputs: &Inputs, figures: &Figures) {
    let omega = 2.0 * PI * inputs.number("hertz");
    outcome.answer("input_farads", figures.input_farads);
    outcome.answer("output_farads", value(tank, tank.output));
    match tank.design {
        Design::Pi(pi) => {
            outcome.answer("henries", pi.coil_ohms / omega);
            outcome.answer_if("second_henries", pi.second_ohms.map(|ohms| ohms / omega));
            let _ = standard::answer(outcome, inputs, pi, omega);
        }
        Design::Link(link) => {
            outcome.answer("henries", link.coil_ohms / omega);
            outcome.answer("link_henries", link.link_ohms / omega);
            outcome.answer("link_coupling", link.coupling);
        }
    }
    outcome.answer("loss_percent", figures.loss_percent);
    outcome.answer("loss_watts", figures.loss_watts);
    outcome.answer("harmonic_db", figures.harmonic_db.clone());
    outcome.answer("coil_amps", figures.coil_amps);
    outcome.answer("input_peak_volts", figures.input_peak_volts);
    outcome.answer("output_peak_volts", figures.output_peak_volts);
    outcome.answer("antenna_peak_volts", figures.antenna_peak_volts);
    outcome.answer("gap_metres", gap_metres(figures.input_peak_volts));
    outcome.answer("output_gap_metres", gap_metres(figures.output_peak_volts));
    outcome.answer("blocking_farads", figures.blocking_farads);
}

/// The capacitor that keeps the plate's direct volts off the tank. It is before the network and in none of its figures.
fn blocking(inputs: &Inputs, farads: f64, peaks: f64) -> PartRow {
    PartRow {
        reference: "Cb".into(),
        kind: "capacitor",
        role: "blocking",
        field: "plate_volts".into(),
        value: Some(Value::Number(farads)),
        volts: Some(standard_volts(BLOCKING_MARGIN * peaks * inputs.number("plate_volts"))),
        rule: "blocking",
        ..PartRow::default()
    }
}

/// From half the frequency to over the last harmonic told, against the level at the frequency itself.
fn drawn(tank: &Tank, passes: &Passes, response: &mut Response, hertz: f64) -> Result<Curve, Fault> {
    harmonic_curve(hertz, (0.5 * hertz, 8.0 * hertz), POINTS, &mut |at| passes.under(tank, response, at))
}
