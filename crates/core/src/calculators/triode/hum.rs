use super::{Amplifier, Rest};
use crate::{
    calculators::{Caution, Outcome, Severity, finite, swept::mean_by_ratio},
    circuit::{Fault, NodeId, Response},
    quantity::{Series, nearest, step},
    value::{Inputs, Value},
};

/// Where hiss is summed, in hertz: what a transmitter for voice passes.
const BAND: (f64, f64) = (300.0, 3000.0);

/// Of every resistor, in kelvin.
const ROOM: f64 = 293.0;

/// Hum this far under the voice is not heard with it, in decibels. Common practice, no source.
const CURED: f64 = -60.0;

/// Next larger capacitors tried before none is said to help.
const TRIES: usize = 3;

/// What is heard at the output that nobody said, in volts rms.
pub(in crate::calculators) struct Murmur {
    /// Of the supply's ripple; none where no ripple is given.
    pub hum: Option<f64>,
    pub hiss: f64,
}

impl Murmur {
    /// Ripple through the plate's feed and back from the next part of the circuit, all as drawn; noise of resistors and
    /// tube from 300 to 3000 Hz. Five frequencies, one transposed solve each, for 1e-4 of the hiss.
    pub fn at(output: NodeId, response: &mut Response, amplifier: &Amplifier, inputs: &Inputs) -> Result<Self, Fault> {
        let per_ratio = mean_by_ratio(BAND, &mut |hertz| Ok(hertz * response.at(hertz)?.noise_density(output, ROOM)))?;
        let hiss = crate::root::sqrt(per_ratio * libm::log(BAND.1 / BAND.0));
        let ripple = inputs.maybe("ripple_volts").filter(|volts| *volts > 0.0);
        let hum = match ripple.zip(amplifier.circuit.find("B+")) {
            Some((volts, supply)) => {
                let through = response.at(inputs.number("ripple_hertz"))?.gain_from(supply, output);
                Some(volts * through.magnitude())
            }
            None => None,
        };
        Ok(Murmur { hum, hiss })
    }
}

/// Decibels of what is `heard` over the `voice`; none where either is nothing.
pub(in crate::calculators) fn under(heard: f64, voice: Option<f64>) -> Option<f64> {
    finite(20.0 * libm::log10(heard / voice?))
}

/// How a stage is built from inputs and how loud its voice is, for trying other inputs.
pub(in crate::calculators) struct Trial<'a> {
    pub build: &'a dyn Fn(&Inputs) -> (Amplifier, NodeId),
    pub voice: &'a dyn Fn(&Inputs, &Amplifier, &Rest, NodeId) -> Option<f64>,
}

/// What ripple does with other decoupling.
struct Tried {
    hum_db: f64,
    /// What the decoupling capacitor sees, in ohms.
    sees: crate::circuit::Complex,
}

impl Trial<'_> {
    fn hum(&self, inputs: &Inputs) -> Option<Tried> {
        let (amplifier, output) = (self.build)(inputs);
        let rest = Rest::of(&amplifier).ok()?;
        let mut response = amplifier.circuit.response(&rest.dc).ok()?;
        let hum = Murmur::at(output, &mut response, &amplifier, inputs).ok()?.hum?;
        let sees = response.at(inputs.number("ripple_hertz")).ok()?.impedance(amplifier.decoupled);
        Some(Tried { hum_db: under(hum, (self.voice)(inputs, &amplifier, &rest, output))?, sees })
    }

    /// The decoupling that brings the hum to 60 dB under the voice: resistor, capacitor, and what the hum is then.
    ///
    /// Where the stage has no decoupling resistor, one of a tenth of the plate resistor is put in. All ripple passes the
    /// node of the capacitor, so that its volts fall by |1 + jωC·Z|, Z being what it sees there; that gives C, the next
    /// preferred value is tried, and a larger one if the voice moved as well.
    fn cure(&self, inputs: &Inputs) -> Option<(f64, f64, f64)> {
        let fitted = inputs.number("decoupling_ohms");
        let ohms = if fitted > 0.0 { fitted } else { nearest(0.1 * inputs.number("plate_ohms"), Series::E12)?.value };
        let with = |farads: f64| inputs.clone().with("decoupling_ohms", ohms).with("decoupling_farads", farads);
        let Tried { hum_db, sees } = self.hum(&with(0.0))?;
        // |1 + jx·Z|² = fall² for the susceptance x
        let fall = f64::max(1.0, libm::pow(10.0, (hum_db - CURED) / 20.0));
        let size = sees.square();
        let susceptance = (sees.im + crate::root::sqrt(sees.im * sees.im + size * (fall * fall - 1.0))) / size;
        let mut farads = susceptance / (2.0 * core::f64::consts::PI * inputs.number("ripple_hertz"));
        for _ in 0..TRIES {
            farads = step(farads, Series::E6, true).filter(|farads| *farads <= 0.1)?;
            let cured = self.hum(&with(farads))?.hum_db;
            if cured <= CURED {
                return Some((ohms, farads, cured));
            }
        }
        None
    }

    /// Answers the cure and says how loud the hum is, where it is worth curing: `worst` is over the voice, in decibels.
    pub fn answer(&self, outcome: &mut Outcome, inputs: &Inputs, worst: Option<f64>) {
        let Some(worst) = worst.filter(|worst| *worst > CURED) else { return };
        let cure = self.cure(inputs);
        let new_ohms = cure.map(|(ohms, ..)| ohms).filter(|_| inputs.number("decoupling_ohms") <= 0.0);
        let farads = Value::from(cure.map(|(_, farads, _)| farads));
        outcome.answer("hum_cure_farads", farads.clone());
        outcome.answer_if("hum_cure_ohms", new_ohms);
        outcome.answer_if("hum_cure_db", cure.map(|(.., db)| db));
        outcome.caution(
            Caution::new(Severity::Note, "hum_heard")
                .about("ripple_volts")
                .figure("hum_db", worst)
                .figure("farads", farads)
                .figure("ohms", new_ohms)
                .figure("cured_db", cure.map(|(.., db)| db)),
        );
    }
}
