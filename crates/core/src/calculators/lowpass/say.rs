use super::work::Figures;
use crate::{
    calculators::{
        Caution, Outcome, Severity,
        rf::{BURN_VOLTS, SPURIOUS_DB},
    },
    value::Inputs,
};

/// A return loss under this loads the transmitter otherwise than it was tuned for: a standing-wave ratio of 1.5. Common
/// practice, no source.
const POOR_MATCH_DB: f64 = 14.0;

/// Everything about a filter that a builder should know before it carries power.
pub(super) fn cautions(outcome: &mut Outcome, inputs: &Inputs, figures: &Figures) {
    let volts = figures.capacitor_peak_volts.iter().flatten().copied().fold(0.0, f64::max);
    if volts > BURN_VOLTS {
        let caution = Caution::new(Severity::Danger, "rf_burn").about("capacitor_peak_volts");
        outcome.caution(caution.figure("volts", volts).figure("modulated_volts", 2.0 * volts));
    }
    let (carrier, cutoff) = (inputs.number("carrier_hertz"), inputs.number("cutoff_hertz"));
    if carrier > cutoff {
        let caution = Caution::new(Severity::Limit, "carrier_over_cutoff").about("carrier_hertz");
        outcome.caution(caution.figure("carrier_hertz", carrier).figure("cutoff_hertz", cutoff));
    } else if figures.return_loss_db < POOR_MATCH_DB {
        let caution = Caution::new(Severity::Note, "poor_match").about("return_loss_db");
        outcome.caution(caution.figure("return_loss_db", figures.return_loss_db));
    }
    let second = figures.harmonic_db.first().copied().flatten();
    if let Some(db) = second.map(|db| -db).filter(|db| *db < SPURIOUS_DB) {
        let caution = Caution::new(Severity::Note, "harmonic_short").about("harmonic_db");
        outcome.caution(caution.figure("db", db).figure("wanted_db", SPURIOUS_DB).figure("short_db", SPURIOUS_DB - db));
    }
}
