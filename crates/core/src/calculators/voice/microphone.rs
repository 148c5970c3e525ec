//! What a microphone gives from its data sheet, a crystal one's lowest note, and the direct current of a carbon one.

use core::f64::consts::PI;

use super::speech::normal_db;
use crate::{
    calculators::{
        Caution, Outcome, Severity,
        triode::{Amplifier, Rest},
    },
    circuit::{Complex, Fault, Kind},
    quantity::Unit,
    value::{Answer, Condition, Field, Inputs},
};

const RATED: &[Condition] = &[Condition::given("microphone_sensitivity")];
const CARBON: &[Condition] = &[Condition::given("carbon_volts")];

pub(super) const SENSITIVITY: Field = Field::quantity("microphone_sensitivity", Unit::VoltPerPascal, 1e-6, 2.0)
    .optional()
    .group("microphone")
    .usual(0.5e-3, 0.1);
/// From the lips to the microphone.
pub(super) const DISTANCE: Field = Field::quantity("microphone_distance", Unit::Metre, 5e-3, 10.0)
    .group("microphone")
    .start(50e-3)
    .usual(20e-3, 0.5)
    .when(RATED);
/// Of the microphone's transformer, secondary to primary.
pub(super) const RATIO: Field = Field::quantity("microphone_ratio", Unit::One, 0.1, 1000.0)
    .group("microphone")
    .start(1.0)
    .usual(1.0, 100.0)
    .when(RATED);
pub(super) const CARBON_VOLTS: Field =
    Field::volts("carbon_volts", 0.1).optional().group("microphone").usual(1.5, 12.0);
pub(super) const CARBON_OHMS: Field =
    Field::ohms("carbon_ohms").group("microphone").start(100.0).usual(30.0, 500.0).when(CARBON);
pub(super) const CARBON_FEED_OHMS: Field =
    Field::ohms("carbon_feed_ohms").or_none().group("microphone").start(0.0).usual(10.0, 1e3).when(CARBON);

pub(super) const ANSWERS: [Answer; 5] = [
    Answer::quantity("microphone_speech_db", Unit::Decibel).optional(),
    Answer::quantity("microphone_expected_volts", Unit::Volt).optional(),
    Answer::quantity("microphone_low_hertz", Unit::Hertz).optional(),
    Answer::quantity("carbon_amps", Unit::Ampere).optional(),
    Answer::quantity("carbon_watts", Unit::Watt).optional(),
];

/// A pressure of 0 dB, in pascals.
const QUIETEST: f64 = 20e-6;
/// Volts that differ by more than this many times are another microphone, or another distance.
const APART: f64 = 2.0;
/// A lowest note above this is missed in a voice, in hertz, and one at the other is not. Common practice, no source.
const THIN: f64 = 200.0;
const FULL: f64 = 100.0;
/// Direct current that a carbon button works with, in amperes. Common practice, no source.
const CARBON_LEAST: f64 = 5e-3;
const CARBON_MOST: f64 = 0.1;

/// Answers what can be told of the microphone itself, with its cautions.
pub(super) fn told(outcome: &mut Outcome, inputs: &Inputs, stage: (&Amplifier, &Rest)) -> Result<(), Fault> {
    if let Some(sensitivity) = inputs.maybe("microphone_sensitivity") {
        expected(outcome, inputs, sensitivity);
    }
    if let Some(farads) = inputs.maybe("microphone_farads") {
        lowest(outcome, inputs, stage, farads)?;
    }
    if let Some(volts) = inputs.maybe("carbon_volts") {
        carbon(outcome, inputs, volts);
    }
    Ok(())
}

/// Speech of normal effort at the microphone, as from a point: 6 dB less for twice the distance.
fn expected(outcome: &mut Outcome, inputs: &Inputs, sensitivity: f64) {
    let speech_db = normal_db() - 20.0 * libm::log10(inputs.number("microphone_distance"));
    let pascals = QUIETEST * libm::pow(10.0, speech_db / 20.0);
    let volts = sensitivity * pascals * inputs.number("microphone_ratio");
    outcome.answer("microphone_speech_db", speech_db);
    outcome.answer("microphone_expected_volts", volts);
    let given = inputs.number("microphone_volts");
    if given > volts * APART || given < volts / APART {
        outcome.caution(
            Caution::new(Severity::Note, "microphone_differs")
                .about("microphone_volts")
                .figure("microphone_volts", given)
                .figure("expected_volts", volts),
        );
    }
}

/// Where a crystal's capacitance, into the grid's resistor and the tube's own capacitance, leaves 3 dB less of the bass.
fn lowest(outcome: &mut Outcome, inputs: &Inputs, stage: (&Amplifier, &Rest), farads: f64) -> Result<(), Fault> {
    let Some((leak, tube)) = grid_seen(stage)? else { return Ok(()) };
    let own = inputs.number("microphone_ohms");
    // The slower of the two time constants of a capacitor and a resistor into a resistor with a capacitor across it.
    let sum = (leak + own) * farads + leak * tube;
    let seconds = 0.5 * (sum + crate::root::sqrt(f64::max(0.0, sum * sum - 4.0 * leak * own * farads * tube)));
    let hertz = 1.0 / (2.0 * PI * seconds);
    outcome.answer("microphone_low_hertz", hertz);
    if hertz > THIN {
        outcome.caution(
            Caution::new(Severity::Note, "crystal_thin")
                .about("grid_ohms")
                .figure("hertz", hertz)
                .figure("ohms", (1.0 / (2.0 * PI * FULL) - own * farads) / (farads + tube))
                .figure("full_hertz", FULL),
        );
    }
    Ok(())
}

/// What the microphone works into at the grid, at 1 kHz: ohms, and the farads across them.
fn grid_seen((amplifier, rest): (&Amplifier, &Rest)) -> Result<Option<(f64, f64)>, Fault> {
    let mut apart = amplifier.circuit.clone();
    let Some(id) = apart.parts().find(|(_, part)| part.role == "microphone_capacitance").map(|(id, _)| id) else {
        return Ok(None);
    };
    apart.set(id, Kind::Capacitor { farads: 0.0 });
    let seen = apart.response(&rest.dc)?.at(1000.0)?.impedance(amplifier.grid);
    let admittance = Complex::real(1.0) / seen;
    let (ohms, farads) = (1.0 / admittance.re, admittance.im / (2.0 * PI * 1000.0));
    Ok((ohms.is_finite() && ohms > 0.0 && farads.is_finite()).then_some((ohms, farads)))
}

fn carbon(outcome: &mut Outcome, inputs: &Inputs, volts: f64) {
    let button = inputs.number("carbon_ohms");
    let amps = volts / (button + inputs.number("carbon_feed_ohms"));
    outcome.answer("carbon_amps", amps);
    outcome.answer("carbon_watts", amps * amps * button);
    let ohms = |amps: f64| volts / amps - button;
    let caution = match amps {
        amps if amps > CARBON_MOST => {
            Caution::new(Severity::Limit, "carbon_hot").figure("rating", CARBON_MOST).figure("ohms", ohms(CARBON_MOST))
        }
        amps if amps < CARBON_LEAST => Caution::new(Severity::Note, "carbon_faint").figure("rating", CARBON_LEAST),
        _ => return,
    };
    outcome.caution(caution.about("carbon_volts").figure("amps", amps));
}
