use super::{
    string::Lot,
    work::{Fed, to_cathode},
};
use crate::text::{counted, together};
use crate::{
    calculators::{Caution, Outcome, Severity},
    value::Inputs,
};

/// Heaters want their volts within this: receiving tubes' manuals (RCA, from memory).
const WITHIN: f64 = 0.10;
/// And live longest within this (RCA transmitting tubes' manual, from memory).
const PREFERRED: f64 = 0.05;

/// More than this can hurt: rms, and direct (IEC 62368-1, ES1 limits).
const DANGER_RMS: f64 = 30.0;
const DANGER_VOLTS: f64 = 60.0;

/// Heaters whose ratings differ by more do not go together.
const ALIKE: f64 = 0.1;

/// What can hurt, what exceeds a rating, what is worth knowing.
pub(super) fn cautions(outcome: &mut Outcome, inputs: &Inputs, lot: &Lot, amps: f64, fed: &[Fed]) {
    let (winding, lifted) = (inputs.number("winding_volts"), libm::fabs(inputs.number("elevate_volts")));
    if winding > DANGER_RMS || lifted > DANGER_VOLTS {
        outcome.caution(
            Caution::new(Severity::Danger, "danger_heater")
                .about(if winding > DANGER_RMS { "winding_volts" } else { "elevate_volts" })
                .figure("volts", f64::max(winding, lifted))
                .figure("winding_volts", winding)
                .figure("elevate_volts", lifted),
        );
    }
    let rated = inputs.number("winding_amps");
    if amps > rated {
        let caution = Caution::new(Severity::Limit, "winding_amps_over").about("amps");
        outcome.caution(caution.figure("amps", amps).figure("rating", rated));
    }
    volts(outcome, lot, fed);
    for (index, (heater, fed)) in lot.heaters.iter().zip(fed).enumerate() {
        let (_, peak) = to_cathode(inputs, heater, fed);
        if let Some(tube) = heater.tube.filter(|tube| peak > tube.ratings.heater_cathode_volts) {
            outcome.caution(
                Caution::new(Severity::Limit, "heater_cathode_over")
                    .about(together(&["heaters[", &counted(index), "].cathode_volts"]))
                    .figure("tube", tube.name)
                    .figure("volts", peak)
                    .figure("rating", tube.ratings.heater_cathode_volts),
            );
        }
    }
    if lot.series && lot.heaters.len() > 1 {
        outcome.caution(Caution::new(Severity::Note, "heater_string_surge").about("arrangement"));
    }
}

/// The heater that is furthest from its volts, if that is far; and heaters that are not alike.
fn volts(outcome: &mut Outcome, lot: &Lot, fed: &[Fed]) {
    let ratio = |index: usize| lot.heaters.get(index).zip(fed.get(index)).map_or(1.0, |(h, fed)| fed.volts / h.volts);
    let far = |index: &usize| libm::fabs(libm::log(ratio(*index)));
    let worst = (0..fed.len()).max_by(|one, other| far(one).total_cmp(&far(other)));
    let Some((index, heater)) = worst.and_then(|index| Some((index, lot.heaters.get(index)?))) else { return };
    let off = ratio(index) - 1.0;
    if libm::fabs(off) > PREFERRED {
        let severity = if libm::fabs(off) > WITHIN { Severity::Limit } else { Severity::Note };
        let code = if off > 0.0 { "heater_volts_high" } else { "heater_volts_low" };
        let (ohms, _) = lot.resistor();
        outcome.caution(
            Caution::new(severity, code)
                .about("volts_at_heater")
                .figure("heater", together(&["V", &counted(index + 1)]))
                .figure("volts", ratio(index) * heater.volts)
                .figure("rating", heater.volts)
                .figure("percent", 100.0 * off)
                .figure("ohms", ohms),
        );
    }
    let figure = |heater: &super::string::Heater| if lot.series { heater.amps } else { heater.volts };
    let least = lot.heaters.iter().map(figure).fold(f64::INFINITY, f64::min);
    let most = lot.heaters.iter().map(figure).fold(0.0, f64::max);
    if most > least * (1.0 + ALIKE) {
        let code = if lot.series { "heater_amps_unlike" } else { "heater_volts_unlike" };
        let caution = Caution::new(Severity::Limit, code).about("heaters");
        outcome.caution(caution.figure("least", least).figure("most", most));
    }
}
