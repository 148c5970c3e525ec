use super::work::Worked;
use crate::{
    calculators::{Caution, Outcome, Severity},
    circuit::{Chain, Cycle, Steps},
    tube::RectifierTube,
};

fn limit(outcome: &mut Outcome, code: &'static str, about: &str, figures: (f64, f64), tube: &str) {
    let (value, rating) = figures;
    if value > rating {
        let caution = Caution::new(Severity::Limit, code).about(about).figure("tube", tube);
        outcome.caution(caution.figure("value", value).figure("rating", rating));
    }
}

/// From this share of the sheet's highest volts on its least resistance is asked for.
const NEAR_MOST: f64 = 0.9;

/// What the rectifier's sheet allows against what it gets.
pub(super) fn ratings(outcome: &mut Outcome, worked: &Worked) {
    let Some(row) = worked.rectifier.row else {
        if worked.rectifier.perveance.is_some() {
            outcome.caution(Caution::new(Severity::Note, "own_rectifier_unknown_ratings").about("rectifier"));
        }
        return;
    };
    let (inputs, reading, name) = (worked.inputs, &worked.loaded.reading, row.name);
    let inverse = worked.high_line(worked.inverse_volts);
    limit(outcome, "inverse_over", "peak_inverse_volts", (inverse, row.inverse_volts), name);
    peak(outcome, worked, row);
    let amps = row.amps * worked.plates_share();
    limit(outcome, "rectifier_amps_over", "rectifier_dc_amps", (reading.amps, amps), name);
    if worked.loaded.chain.input_choke().is_some() {
        return;
    }
    let rms = inputs.number("secondary_volts") * inputs.number("mains_percent") / 100.0 / worked.supply.in_series;
    limit(outcome, "plate_rms_over", "secondary_volts", (rms, row.rms_volts), name);
    if let Some(most) = row.farads {
        limit(outcome, "first_capacitor_over", "sections[0].farads", (inputs.number("sections[0].farads"), most), name);
    }
    // The sheet prints it at its highest volts; at fewer the peak current alone rules.
    if let Some(least) = row.ohms.filter(|_| rms > NEAR_MOST * row.rms_volts) {
        let ohms = worked.loaded.chain.ohms + worked.loaded.chain.rungs[0].ohms();
        if ohms < least {
            let caution = Caution::new(Severity::Limit, "plate_ohms_under").about("winding_ohms").figure("tube", name);
            let caution = caution.figure("value", ohms).figure("rating", least);
            outcome.caution(caution.figure("series_ohms", least - ohms));
        }
    }
}

/// Steps to the resistor that keeps a plate's peak in its rating.
const SECANTS: usize = 10;

/// The steady peak, and the resistor in each plate lead that brings it down.
fn peak(outcome: &mut Outcome, worked: &Worked, row: &RectifierTube) {
    let reading = &worked.loaded.reading;
    if reading.peak_amps <= row.peak_amps {
        return;
    }
    let mut caution = Caution::new(Severity::Limit, "peak_over").about("peak_rectifier_amps").figure("tube", row.name);
    caution = caution.figure("value", reading.peak_amps).figure("rating", row.peak_amps);
    let mut chain: Chain = worked.loaded.chain.clone();
    let own = chain.ohms;
    let (mut low, mut high) = (0.0, 0.25 * own);
    let mut at = |ohms: f64| {
        chain.ohms = own + ohms;
        Cycle::find(&chain, Steps::ROUGH, None).map(|cycle| cycle.read())
    };
    let goal = 0.98 * row.peak_amps;
    let mut found = None;
    for _ in 0..SECANTS {
        match at(high) {
            Some(reading) if reading.peak_amps <= goal => {
                found = Some((high, reading));
                break;
            }
            _ => (low, high) = (high, 2.0 * high + 1.0),
        }
    }
    for _ in 0..SECANTS {
        let middle = 0.5 * (low + high);
        match at(middle) {
            Some(reading) if reading.peak_amps <= goal => {
                high = middle;
                found = Some((middle, reading));
            }
            _ => low = middle,
        }
    }
    if let Some((ohms, reading)) = found {
        caution = caution.figure("series_ohms", ohms).figure("amps_then", reading.peak_amps);
        caution = caution.figure("volts_then", reading.volts.last().copied().unwrap_or(0.0));
    }
    outcome.caution(caution);
}
