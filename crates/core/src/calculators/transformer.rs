//! A mains or audio transformer, from what a bench can measure on it.

use alloc::{vec, vec::Vec};

use super::{Calculator, Caution, Outcome, PartRow, Severity, TestPoint, Want, WiringStep, finite};
use crate::{
    quantity::Unit,
    value::{Answer, Field, Inputs, Problem},
};

/// What a transformer gives, from what was measured on it.
pub(super) static TRANSFORMER: Calculator =
    Calculator { id: "transformer", group: "power", inputs: INPUTS, answers: ANSWERS, work };

static INPUTS: &[Field] = &[
    Field::volts("applied_volts", 1e-3).group("test").start(12.0).usual(1.0, 24.0),
    Field::volts("secondary_open_volts", 1e-6).group("test").start(28.2).usual(0.1, 60.0),
    Field::ohms("primary_dc_ohms").group("test").start(14.0).usual(0.5, 500.0),
    Field::ohms("secondary_dc_ohms").group("test").start(107.0).usual(0.1, 1e3),
    Field::ohms("secondary_side_ohms").optional().below("secondary_dc_ohms").group("test").usual(0.1, 1e3),
    Field::volts("loaded_volts", 1e-6)
        .optional()
        .together("loaded")
        .below("secondary_open_volts")
        .group("loaded")
        .usual(0.1, 60.0),
    Field::quantity("loaded_amps", Unit::Ampere, 1e-6, 1e3)
        .optional()
        .together("loaded")
        .group("loaded")
        .usual(1e-3, 1.0),
    Field::volts("mains_volts", 1.0).group("use").start(120.0).usual(100.0, 240.0),
    Field::ohms("load_ohms").optional().group("use").usual(2.0, 1e4),
];

static ANSWERS: &[Answer] = &[
    Answer::quantity("ratio", Unit::One),
    Answer::quantity("secondary_volts", Unit::Volt),
    Answer::quantity("winding_ohms", Unit::Ohm),
    Answer::quantity("winding_dc_ohms", Unit::Ohm),
    Answer::quantity("winding_loaded_ohms", Unit::Ohm).optional(),
    Answer::quantity("winding_difference_percent", Unit::Percent).optional(),
    Answer::quantity("reflected_ohms", Unit::Ohm).optional(),
    Answer::quantity("volt_amps_estimate", Unit::VoltAmpere),
    Answer::quantity("secondary_amps_estimate", Unit::Ampere),
    Answer::quantity("primary_amps", Unit::Ampere),
    Answer::quantity("fuse_amps", Unit::Ampere),
];

/// More than this can hurt, rms (IEC 62368-1, ES1 limit to 1 kHz).
const DANGER_VOLTS: f64 = 30.0;

/// A test with more than this on any winding is no low-voltage test, rms (ELV: IEC 61140).
const LOW_VOLTS: f64 = 50.0;

/// The wait to ask for, since nobody knows what capacitors stand behind it, in seconds. Common practice, no source.
const LEAST_WAIT: f64 = 60.0;

/// Loaded reading and resistances that differ by more than this ask for a second look, in percent.
const DIFFERS: f64 = 20.0;

/// Of full load, a transformer of 50 VA loses a tenth of its volts in its windings, a larger one less: the share goes with
/// the power to the −0.4. Common practice, no source; makers' lists of small mains transformers, from memory, lie within a
/// third of it from 6 to 500 VA.
const LOSS: (f64, f64, f64) = (0.1, 50.0, 0.4);

/// A slow fuse carries this many times full load, for what a cold transformer takes at switch-on. Common practice.
const FUSE: f64 = 1.5;

/// Rated currents of fuses in a decade (IEC 60127, from memory).
const FUSES: [f64; 10] = [1.0, 1.25, 1.6, 2.0, 2.5, 3.15, 4.0, 5.0, 6.3, 8.0];

/// What was measured, worked out.
struct Measured {
    ratio: f64,
    /// At the mains.
    volts: f64,
    by_dc: f64,
    by_load: Option<f64>,
    volt_amps: f64,
    mains: f64,
}

impl Measured {
    fn of(inputs: &Inputs) -> Self {
        let (applied, open) = (inputs.number("applied_volts"), inputs.number("secondary_open_volts"));
        let ratio = open / applied;
        let path = inputs.maybe("secondary_side_ohms").unwrap_or(inputs.number("secondary_dc_ohms"));
        let by_dc = path + inputs.number("primary_dc_ohms") * ratio * ratio;
        let loaded = inputs.maybe("loaded_volts").zip(inputs.maybe("loaded_amps"));
        let by_load = loaded.map(|(volts, amps)| (open - volts) / amps);
        let mains = inputs.number("mains_volts");
        let volts = ratio * mains;
        let (share, at, power) = LOSS;
        // share·(VA/at)^−power of the volts are lost in by_dc at VA/volts
        let full = share * libm::pow(at, power) * volts * volts / by_dc;
        Measured { ratio, volts, by_dc, by_load, volt_amps: libm::pow(full, 1.0 / (1.0 + power)), mains }
    }

    fn winding_ohms(&self) -> f64 {
        self.by_load.unwrap_or(self.by_dc)
    }

    fn difference_percent(&self) -> Option<f64> {
        Some(100.0 * (self.by_load? / self.by_dc - 1.0))
    }

    fn primary_amps(&self) -> f64 {
        self.volt_amps / self.mains
    }

    /// The next rated current over what full load asks for.
    fn fuse_amps(&self) -> f64 {
        let least = FUSE * self.primary_amps();
        let decade = libm::pow(10.0, libm::floor(libm::log10(least)));
        let mantissa = FUSES.iter().copied().find(|rated| rated * decade >= least * (1.0 - 1e-12));
        mantissa.unwrap_or(10.0) * decade
    }
}

#[allow(clippy::unnecessary_wraps)] // the shape of every calculator's work
fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let measured = Measured::of(inputs);
    let mut outcome = Outcome::default();
    if want.answers {
        answers(&mut outcome, inputs, &measured);
    }
    if want.cautions {
        cautions(&mut outcome, inputs, &measured);
    }
    if want.parts {
        let row = PartRow { reference: "F1".into(), kind: "fuse", role: "mains_fuse", ..PartRow::default() };
        let amps = Some(measured.fuse_amps());
        outcome.parts = vec![PartRow { amps, volts: Some(250.0), rule: "slow_fuse", ..row }];
    }
    if want.test_points {
        outcome.test_points = vec![reading(&measured)];
    }
    if want.wiring {
        outcome.wiring = wiring();
    }
    Ok(outcome)
}

fn answers(outcome: &mut Outcome, inputs: &Inputs, measured: &Measured) {
    outcome.answer("ratio", measured.ratio);
    outcome.answer("secondary_volts", measured.volts);
    outcome.answer("winding_ohms", measured.winding_ohms());
    outcome.answer("winding_dc_ohms", measured.by_dc);
    outcome.answer_if("winding_loaded_ohms", measured.by_load);
    outcome.answer_if("winding_difference_percent", measured.difference_percent());
    let reflected = inputs.maybe("load_ohms").and_then(|ohms| finite(ohms / (measured.ratio * measured.ratio)));
    outcome.answer_if("reflected_ohms", reflected);
    outcome.answer("volt_amps_estimate", measured.volt_amps);
    outcome.answer("secondary_amps_estimate", measured.volt_amps / measured.volts);
    outcome.answer("primary_amps", measured.primary_amps());
    outcome.answer("fuse_amps", measured.fuse_amps());
}

fn cautions(outcome: &mut Outcome, inputs: &Inputs, measured: &Measured) {
    let (applied, open) = (inputs.number("applied_volts"), inputs.number("secondary_open_volts"));
    outcome.caution(
        Caution::new(Severity::Danger, "danger_transformer")
            .about("mains_volts")
            .figure("mains_volts", measured.mains)
            .figure("volts", measured.volts)
            .figure("least_wait_seconds", LEAST_WAIT),
    );
    if f64::max(applied, open) > LOW_VOLTS {
        let caution = Caution::new(Severity::Danger, "danger_test").about("applied_volts");
        let safe = applied * f64::min(1.0, DANGER_VOLTS / f64::max(applied, open));
        outcome.caution(caution.figure("volts", f64::max(applied, open)).figure("safe_volts", safe));
    }
    if let Some(percent) = measured.difference_percent().filter(|percent| libm::fabs(*percent) > DIFFERS) {
        outcome.caution(
            Caution::new(Severity::Note, "winding_differs")
                .about("winding_loaded_ohms")
                .figure("percent", percent)
                .figure("loaded_ohms", measured.by_load)
                .figure("dc_ohms", measured.by_dc),
        );
    }
}

/// The mains move by 5 % without anybody telling. Common practice, no source.
const MAINS: f64 = 0.05;

fn reading(measured: &Measured) -> TestPoint {
    let volts = measured.volts;
    let (least, most) = (volts * (1.0 - MAINS), volts * (1.0 + MAINS));
    TestPoint {
        name: "secondary_open".into(),
        pin: None,
        unit: "V",
        nominal: volts,
        least,
        most,
        usual_least: least,
        usual_most: most,
    }
}

/// Line through fuse and switch, neutral straight, earth to the frame.
fn wiring() -> Vec<WiringStep> {
    let joins = [
        ("mains_earth", "frame", None),
        ("mains_line", "mains_switch", Some("F1")),
        ("mains_switch", "primary_a", None),
        ("mains_neutral", "primary_b", None),
    ];
    let steps = joins.into_iter().zip(1..);
    steps
        .map(|((from, to, part), step)| WiringStep {
            from: from.into(),
            to: to.into(),
            part: part.map(Into::into),
            step,
        })
        .collect()
}
