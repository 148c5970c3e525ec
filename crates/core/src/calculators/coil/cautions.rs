use super::work::Coil;
use crate::calculators::{Caution, Outcome, Severity};

/// From this share of its self-resonance on a coil is no plain inductance: its effective one is 10 % up.
const NEAR: f64 = 0.3;
/// A coil this much warmer than the air softens wax and thin plastic pipe. Common practice, no source.
const HOT: f64 = 40.0;
/// RF volts that burn skin on touch; the common limit for touch, 50 V. Common practice.
const BURNS: f64 = 50.0;
/// Enamelled wire is at most a fifth thicker than bare, and thicker cover is plastic or cotton (IEC 60317-0-1, grade 2,
/// from memory: 0.2 mm wire 0.239 mm at most, 1 mm wire 1.094 mm).
const THICK: f64 = 1.4;
/// A measured inductance this far from the computed one points at a mistake rather than at the winding.
const FAR: f64 = 0.15;

pub(super) fn cautions(coil: &Coil, outcome: &mut Outcome) {
    let (inputs, make) = (coil.inputs, &coil.make);
    let amps = inputs.maybe("amps");
    let volts = amps.map(|amps| amps * coil.reactance()).filter(|volts| *volts >= BURNS);
    if let Some(volts) = volts {
        let caution = Caution::new(Severity::Danger, "coil_burn").about("volts").figure("volts", volts);
        outcome.caution(caution.figure("peak_volts", core::f64::consts::SQRT_2 * volts));
    } else if amps.is_none() {
        outcome.caution(Caution::new(Severity::Note, "hot_end").about("turns"));
    }
    let resonance = coil.self_resonant_hertz();
    let share = coil.hertz / resonance;
    if share >= 1.0 {
        let caution = Caution::new(Severity::Limit, "past_resonance").about("self_resonant_hertz");
        outcome.caution(caution.figure("hertz", resonance));
    } else if share >= NEAR {
        let caution = Caution::new(Severity::Limit, "resonance_near").about("self_resonant_hertz");
        let more = 100.0 * (share * share / (1.0 - share * share));
        outcome.caution(caution.figure("hertz", resonance).figure("percent", more));
    }
    if let Some(rise) = amps.map(|amps| coil.rise(amps)).filter(|rise| *rise > HOT) {
        outcome.caution(Caution::new(Severity::Limit, "wire_hot").about("rise_celsius").figure("celsius", rise));
    }
    if make.overall > THICK * make.wire {
        let caution = Caution::new(Severity::Note, "insulation_thick").about("wire.overall_diameter");
        outcome.caution(caution.figure("overall", make.overall).figure("bare", make.wire));
    }
    let bare = make.overall <= make.wire * (1.0 + 1e-9);
    if bare && make.pitch(coil.turns) < 1.05 * make.wire && coil.turns > 1.0 {
        outcome.caution(Caution::new(Severity::Limit, "bare_turns_touch").about("pitch"));
    }
    outcome.caution(
        Caution::new(Severity::Note, "loss_uncertain")
            .about("q")
            .figure("percent", coil.q_percent())
            .figure("farads_percent", coil.self_percent()),
    );
    if inputs.text("tap_use") == "shorted" && !coil.taps.is_empty() {
        outcome.caution(Caution::new(Severity::Note, "shorted_turns").about("tap_use"));
    }
    if let Some(correction) = &coil.correction {
        if libm::fabs(correction.factor - 1.0) > FAR {
            let caution = Caution::new(Severity::Note, "measured_far").about("correction");
            outcome.caution(caution.figure("percent", 100.0 * (correction.factor - 1.0)));
        }
        if correction.stray.is_some_and(|stray| stray < 0.0) {
            outcome.caution(Caution::new(Severity::Note, "stray_negative").about("stray_farads"));
        }
    }
}
