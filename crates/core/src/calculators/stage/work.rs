use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::netlist::build;
use crate::{
    calculators::{
        Caution, Line, Outcome, Severity, Want, finite, solved,
        swept::{response_curve, swept},
        triode::{Amplifier, Murmur, Rest, Swing, Trial, answer_rest, bench, cautions, plate_curves, under},
    },
    circuit::{Fault, Kind, NodeId, PartId, Phasors, Response},
    value::{Inputs, Problem, Value},
};

/// Where the greatest response and its corners are looked for, in hertz.
const RANGE: (f64, f64) = (0.01, 100e6);
const PER_DECADE: u32 = 6;

/// Where the response is drawn, in hertz.
const DRAWN: (f64, f64) = (10.0, 100e3);
const DRAWN_POINTS: u32 = 241;

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let (amplifier, output, coupling) = build(inputs);
    let rest = Rest::of(&amplifier)?;
    let mut outcome = Outcome::default();
    let mut response = solved(amplifier.circuit.response(&rest.dc))?;
    let mid = solved(mid_band(&mut response, &amplifier, output))?;
    if want.answers {
        outcome.answer("gain", finite(mid.gain));
        outcome.answer("gain_db", finite(20.0 * libm::log10(mid.gain)));
        answer_rest(&mut outcome, &amplifier, &rest);
        outcome.answer("output_ohms", solved(output_ohms(&amplifier, &rest, coupling, mid.hertz))?);
        outcome.answer("input_farads", finite(mid.input_farads));
        outcome.answer("low_corner_hertz", mid.low);
        outcome.answer("high_corner_hertz", mid.high);
    }
    if want.answers || want.cautions {
        let swing = solved(Swing::of(&amplifier, &rest))?;
        swing.answer(&mut outcome, inputs, output);
        let murmur = solved(Murmur::at(output, &mut response, &amplifier, inputs))?;
        murmurs(&mut outcome, inputs, &murmur, swing.judged(inputs, output));
    }
    if want.cautions {
        cautions(&mut outcome, inputs, &amplifier, &rest);
        for (key, corner) in [("low_corner_hertz", mid.low), ("high_corner_hertz", mid.high)] {
            if corner.is_none() {
                outcome.caution(Caution::new(Severity::Note, "corner_outside").about(key).figure("which", key));
            }
        }
    }
    if want.curves {
        outcome.curves.push(plate_curves(inputs, &amplifier, &rest, mid.signal_ohms));
        let line = solved(swept(&mut response, output, DRAWN, DRAWN_POINTS))?;
        outcome.curves.push(response_curve(vec![Line { label: "response".into(), ..line }]));
    }
    bench(&mut outcome, want, inputs, &amplifier, &rest, output)?;
    Ok(outcome)
}

/// Hum and hiss, and what mends the hum.
fn murmurs(outcome: &mut Outcome, inputs: &Inputs, murmur: &Murmur, voice: Option<f64>) {
    outcome.answer("hum_volts", murmur.hum.unwrap_or(0.0));
    outcome.answer_if("hum_db", murmur.hum.map(|hum| Value::from(under(hum, voice))));
    outcome.answer("hiss_volts", murmur.hiss);
    outcome.answer("hiss_db", under(murmur.hiss, voice));
    let build = |inputs: &Inputs| {
        let (amplifier, output, _) = build(inputs);
        (amplifier, output)
    };
    let voice_then = |inputs: &Inputs, amplifier: &Amplifier, rest: &Rest, output| {
        Swing::of(amplifier, rest).ok()?.judged(inputs, output)
    };
    let trial = Trial { build: &build, voice: &voice_then };
    trial.answer(outcome, inputs, murmur.hum.and_then(|hum| under(hum, voice)));
}

/// The stage at the frequency where most of the source reaches the load.
struct MidBand {
    hertz: f64,
    low: Option<f64>,
    high: Option<f64>,
    gain: f64,
    input_farads: f64,
    /// What the plate works into, the resistive part.
    signal_ohms: f64,
}

fn mid_band(response: &mut Response, amplifier: &Amplifier, output: NodeId) -> Result<MidBand, Fault> {
    let (hertz, corners) = {
        let mut sweep = response.sweep(output, RANGE.0, RANGE.1, PER_DECADE)?;
        (sweep.greatest().hertz, sweep.corners()?)
    };
    let at = response.at(hertz)?;
    let grid = at.volts(amplifier.grid);
    let gain = at.volts(output).magnitude() / grid.magnitude();
    let into =
        |terminal| amplifier.valve.map_or(crate::circuit::Complex::ZERO, |valve| at.terminal_amps(valve, terminal));
    Ok(MidBand {
        hertz,
        low: corners.low,
        high: corners.high,
        gain,
        input_farads: (into(1) / grid).im / (2.0 * PI * hertz),
        signal_ohms: signal_ohms(&at, amplifier),
    })
}

/// Volts that the plate gives way to over the current that flows more, as the signal's load line has them.
fn signal_ohms(at: &Phasors, amplifier: &Amplifier) -> f64 {
    let amps = amplifier.valve.map(|valve| at.terminal_amps(valve, 0));
    let ohms = amps.map(|amps| -(at.volts_between(amplifier.plate, amplifier.cathode) / amps).re);
    ohms.filter(|ohms| ohms.is_finite()).unwrap_or(0.0)
}

/// Impedance at the plate, plate resistor included, the load taken off.
fn output_ohms(amplifier: &Amplifier, rest: &Rest, coupling: PartId, hertz: f64) -> Result<f64, Fault> {
    let mut unloaded = amplifier.circuit.clone();
    unloaded.set(coupling, Kind::Capacitor { farads: 0.0 });
    Ok(unloaded.response(&rest.dc)?.at(hertz)?.impedance(amplifier.plate).magnitude())
}
