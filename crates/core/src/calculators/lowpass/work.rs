use alloc::vec::Vec;

use super::{ladder::build, say::cautions};
use crate::{
    calculators::{
        Curve, Outcome, Want,
        bench::{describe, wiring},
        finite,
        rf::{HARMONICS, Stressed, harmonic_curve, parts},
        solved,
    },
    circuit::{Complex, Fault, Kind, PartId},
    value::{Inputs, Problem},
};

use super::ladder::Ladder;

/// Points of the curve.
const POINTS: u32 = 161;

/// Under this a reflection is told as this: −200 dB. So a perfect match has a figure, and rounding does not show.
const LEAST_REFLECTION: f64 = 1e-20;

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let ladder = build(inputs)?;
    let carrier = inputs.number("carrier_hertz");
    let circuit = ladder.at(carrier);
    let mut response = solved(circuit.response(&ladder.dc))?;
    let phasors = solved(response.at(carrier))?;
    let watts = inputs.number("carrier_watts");
    let through = phasors.volts(ladder.output).magnitude();
    let scale = crate::root::sqrt(2.0 * watts * inputs.number("ohms")) / through;
    let reflected = (phasors.volts(ladder.input) - Complex::real(1.0)).square();
    let stressed = Stressed { circuit: &circuit, phasors, scale, peaks: 2.0 };
    let mut outcome = Outcome::default();
    let figures = Figures {
        loss_db: finite(-20.0 * libm::log10(through)),
        return_loss_db: -10.0 * libm::log10(reflected + LEAST_REFLECTION),
        harmonic_db: solved(harmonics(&ladder, carrier))?,
        capacitor_peak_volts: each(&ladder.capacitors, |part| stressed.across(part)),
        coil_amps: each(&ladder.coils, |part| stressed.amps(part)),
        loss_watts: finite(ladder.coils.iter().map(|coil| heat(&stressed, *coil)).sum()),
    };
    if want.cautions {
        cautions(&mut outcome, inputs, &figures);
    }
    if want.parts {
        outcome.parts = parts(&stressed, |_| false);
    }
    if want.answers {
        answers(&mut outcome, &ladder, figures);
    }
    if want.curves {
        outcome.curves.push(solved(drawn(&ladder, inputs))?);
    }
    if want.wiring {
        outcome.wiring = wiring(&circuit, &[], &[]);
    }
    if want.circuit {
        outcome.circuit = Some(describe(&ladder.circuit, &ladder.dc, &[], &[]));
    }
    Ok(outcome)
}

/// What the ladder does at its carrier and the harmonics.
pub(super) struct Figures {
    pub loss_db: Option<f64>,
    pub return_loss_db: f64,
    pub harmonic_db: Vec<Option<f64>>,
    pub capacitor_peak_volts: Vec<Option<f64>>,
    pub coil_amps: Vec<Option<f64>>,
    pub loss_watts: Option<f64>,
}

/// Watts that a coil turns to heat.
fn heat(stressed: &Stressed, coil: PartId) -> f64 {
    let amps = stressed.amps(coil);
    match stressed.circuit.part(coil).map(|part| part.kind) {
        Some(Kind::Coil { ohms, .. }) => amps * amps * ohms,
        _ => 0.0,
    }
}

fn each(parts: &[PartId], figure: impl Fn(PartId) -> f64) -> Vec<Option<f64>> {
    parts.iter().map(|part| finite(figure(*part))).collect()
}

fn harmonics(ladder: &Ladder, carrier: f64) -> Result<Vec<Option<f64>>, Fault> {
    HARMONICS.map(|order| Ok(finite(ladder.gain_db(carrier * f64::from(order))?))).collect()
}

fn answers(outcome: &mut Outcome, ladder: &Ladder, figures: Figures) {
    let values = |parts: &[PartId]| -> Vec<Option<f64>> {
        parts.iter().map(|part| ladder.circuit.part(*part)?.kind.value()).collect()
    };
    outcome.answer("capacitors", values(&ladder.capacitors));
    outcome.answer("coils", values(&ladder.coils));
    outcome.answer("loss_db", figures.loss_db);
    outcome.answer("return_loss_db", figures.return_loss_db);
    outcome.answer("harmonic_db", figures.harmonic_db);
    outcome.answer("capacitor_peak_volts", figures.capacitor_peak_volts);
    outcome.answer("coil_amps", figures.coil_amps);
    outcome.answer("loss_watts", figures.loss_watts);
    if let Some([rounded, fitted]) = ladder.deviations {
        outcome.answer("pass_deviation_db", fitted.pass);
        outcome.answer("rounded_pass_deviation_db", rounded.pass);
        outcome.answer("harmonic_deviation_db", fitted.harmonic);
        outcome.answer("rounded_harmonic_deviation_db", rounded.harmonic);
    }
}

/// From a third of the lower of cut-off and carrier to over the last harmonic told, the carrier's harmonics marked.
fn drawn(ladder: &Ladder, inputs: &Inputs) -> Result<Curve, Fault> {
    let (carrier, cutoff) = (inputs.number("carrier_hertz"), inputs.number("cutoff_hertz"));
    let (least, most) = (f64::min(carrier, cutoff) / 3.0, f64::max(8.0 * carrier, 3.0 * cutoff));
    harmonic_curve(carrier, (least, most), POINTS, &mut |hertz| Ok(finite(ladder.gain_db(hertz)?)))
}
