use super::work::Figures;
use crate::{
    calculators::{
        Caution, Outcome, Severity,
        rf::{BURN_VOLTS, SPURIOUS_DB},
    },
    value::Inputs,
};

/// A loaded Q between these is usual (ARRL Handbook, from memory: 10 to 15, 12 for a plate-modulated final); some room
/// is left either way.
const USUAL_Q: (f64, f64) = (8.0, 20.0);

/// A tank that keeps more than this of the power heats its coil. Common practice, no source.
const MUCH_LOST: f64 = 12.0;

/// A variable capacitor has about this much with its plates all the way out. Common practice, no source.
const LEAST_VARIABLE: f64 = 8e-12;

/// Everything about a tank that a builder should know before power goes on.
pub(super) fn cautions(outcome: &mut Outcome, inputs: &Inputs, figures: &Figures) {
    let plate = inputs.number("plate_volts");
    if plate > BURN_VOLTS {
        let peaks = figures.input_peak_volts / figures.plate_peak_volts;
        let caution = Caution::new(Severity::Danger, "tank_plate_volts").about("plate_volts");
        let caution = caution.figure("volts", plate).figure("crest_volts", peaks * plate);
        outcome.caution(caution.figure("blocking_farads", figures.blocking_farads));
    }
    if figures.input_peak_volts > BURN_VOLTS {
        let caution = Caution::new(Severity::Danger, "rf_burn").about("input_peak_volts");
        let caution = caution.figure("volts", figures.plate_peak_volts);
        outcome.caution(caution.figure("modulated_volts", figures.input_peak_volts));
    }
    if figures.plate_peak_volts > plate {
        let caution = Caution::new(Severity::Limit, "swing_over_plate").about("rf_load_ohms");
        outcome.caution(caution.figure("volts", figures.plate_peak_volts).figure("plate_volts", plate));
    }
    let q = inputs.number("q");
    if !(USUAL_Q.0..=USUAL_Q.1).contains(&q) {
        let code = if q < USUAL_Q.0 { "tank_q_low" } else { "tank_q_high" };
        outcome.caution(Caution::new(Severity::Note, code).about("q").figure("q", q));
    }
    if figures.loss_percent > MUCH_LOST {
        let caution = Caution::new(Severity::Note, "tank_hot").about("loss_percent");
        outcome.caution(caution.figure("percent", figures.loss_percent).figure("watts", figures.loss_watts));
    }
    if figures.input_farads < LEAST_VARIABLE {
        let caution = Caution::new(Severity::Note, "tank_input_small").about("input_farads");
        outcome.caution(caution.figure("farads", figures.input_farads).figure("least_farads", LEAST_VARIABLE));
    }
    let second = figures.harmonic_db.first().copied().flatten();
    if let Some(db) = second.map(|db| -db).filter(|db| *db < SPURIOUS_DB) {
        let caution = Caution::new(Severity::Note, "harmonic_short").about("harmonic_db");
        outcome.caution(caution.figure("db", db).figure("wanted_db", SPURIOUS_DB).figure("short_db", SPURIOUS_DB - db));
    }
}
