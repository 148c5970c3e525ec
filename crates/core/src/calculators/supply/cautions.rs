use alloc::vec::Vec;

use super::{
    netlist::capacitors,
    ratings::ratings,
    work::{GUARDED, TOUCHABLE, Worked},
};
use crate::text::{counted, together};
use crate::{
    calculators::{Caution, Outcome, Severity, bench::standard_watts},
    circuit::{Connection, Series},
    tube::REGULATOR_FARADS,
    value::{Inputs, Value},
};

/// The wait to ask for at the least. Common practice, no source.
const LEAST_WAIT: f64 = 10.0;
/// Electrolytics are not commonly sold for more.
const ELECTROLYTIC_VOLTS: f64 = 450.0;
/// Equalising resistance in Ω for each volt of rating of capacitors in series (ARRL Handbook, from memory).
const SHARING_OHMS: f64 = 100.0;
/// From so much on a capacitor is taken to be an electrolytic.
const ELECTROLYTIC_FARADS: f64 = 1e-6;

/// Everything that a builder should know before power goes on.
pub(super) fn cautions(outcome: &mut Outcome, worked: &Worked) {
    danger(outcome, worked);
    ratings(outcome, worked);
    capacitor_limits(outcome, worked);
    iron(outcome, worked);
    regulator(outcome, worked);
    notes(outcome, worked);
}

impl Worked<'_> {
    /// Volts that follow the mains, at their highest.
    pub fn high_line(&self, volts: f64) -> f64 {
        let ratio = self.inputs.number("mains_most_percent") / self.inputs.number("mains_percent");
        volts * f64::max(1.0, ratio)
    }
}

fn caution(severity: Severity, code: &'static str, about: &str) -> Caution {
    Caution::new(severity, code).about(about)
}

/// Volts that can hurt, how long they stay, and what one reading does not prove.
fn danger(outcome: &mut Outcome, worked: &Worked) {
    let most = worked.idle.volts.iter().copied().fold(0.0, f64::max);
    if most > TOUCHABLE {
        let apart = worked.supply.sections.iter().skip(1).filter_map(|section| {
            let part = worked.supply.circuit.part(section.series?)?;
            Some(Value::from(part.reference.as_str()))
        });
        let bleeder = worked.supply.bleeder.and_then(|id| worked.supply.circuit.part(id));
        let wait = worked.discharge[1].map(|seconds| f64::max(LEAST_WAIT, libm::ceil(seconds)));
        let said = caution(Severity::Danger, "danger_supply", "no_load_volts")
            .figure("volts", most)
            .figure("touchable", TOUCHABLE)
            .figure("guarded", GUARDED)
            .figure("own_seconds", worked.discharge[0])
            .figure("guarded_seconds", worked.discharge[1])
            .figure("wait_seconds", wait)
            .figure("between", Value::List(apart.collect()))
            .figure("bleeder", bleeder.map(|part| part.reference.as_str()))
            .figure("capacitors", capacitors(&worked.supply.circuit));
        outcome.caution(said);
        if worked.discharge[0].is_none() {
            outcome.caution(caution(Severity::Limit, "no_bleeder", "bleeder_ohms").figure("volts", most));
        }
    }
    for node in &worked.loaded.collapsed {
        let about = together(&["loads[", &counted(*node), "].amps"]);
        let asked = worked.inputs.number(&about);
        outcome.caution(caution(Severity::Limit, "collapsed", &about).figure("amps", asked));
    }
}

fn capacitor_limits(outcome: &mut Outcome, worked: &Worked) {
    let inputs = worked.inputs;
    let number = |k: usize, key: &str| inputs.number(&together(&["sections[", &counted(k), "].", key]));
    for (k, volts) in worked.idle.volts.iter().enumerate() {
        let halves = if k == 0 && worked.supply.connection == Connection::Doubler { 0.5 } else { 1.0 };
        let stands = halves * worked.high_line(*volts);
        let about = together(&["sections[", &counted(k), "].volts"]);
        let part = worked.supply.sections[k].capacitor.and_then(|id| worked.supply.circuit.part(id));
        let Some(part) = part else { continue };
        let (rated, reference) = (number(k, "volts"), part.reference.as_str());
        if rated > 0.0 && stands > rated {
            let said = caution(Severity::Limit, "capacitor_volts_over", &about).figure("part", reference);
            outcome.caution(said.figure("value", stands).figure("rating", rated));
        }
        if number(k, "farads") >= ELECTROLYTIC_FARADS && stands > ELECTROLYTIC_VOLTS && rated < stands {
            let count = libm::ceil(stands / ELECTROLYTIC_VOLTS);
            let said = caution(Severity::Note, "capacitors_in_series", &about).figure("part", reference);
            outcome.caution(
                said.figure("volts", stands)
                    .figure("count", count)
                    .figure("each_farads", count * number(k, "farads"))
                    .figure("ohms", SHARING_OHMS * ELECTROLYTIC_VOLTS),
            );
        }
        let (ripple, allowed) = (worked.loaded.reading.capacitor_amps[k], number(k, "ripple_amps"));
        if allowed > 0.0 && ripple > allowed {
            let about = together(&["sections[", &counted(k), "].ripple_amps"]);
            let said = caution(Severity::Limit, "ripple_amps_over", &about).figure("part", reference);
            outcome.caution(said.figure("value", ripple).figure("rating", allowed));
        }
    }
}

/// Winding, chokes and resistors.
fn iron(outcome: &mut Outcome, worked: &Worked) {
    let (inputs, rms) = (worked.inputs, worked.winding_rms());
    if let Some(rated) = inputs.maybe("winding_amps").filter(|rated| rms > *rated) {
        let said = caution(Severity::Limit, "winding_over", "winding_rms_amps");
        outcome.caution(said.figure("value", rms).figure("rating", rated).figure("dc", worked.loaded.reading.amps));
    }
    if let Some((henries, _)) = worked.loaded.chain.input_choke() {
        match worked.critical_henries {
            Some(critical) if henries < critical => {
                let said = caution(Severity::Limit, "choke_under_critical", "sections[0].henries");
                outcome.caution(said.figure("value", henries).figure("critical", critical));
            }
            None => outcome.caution(caution(Severity::Note, "never_continuous", "critical_henries")),
            Some(_) => {}
        }
    }
    for (k, rung) in worked.loaded.chain.rungs.iter().enumerate() {
        let Series::Resistor(ohms) = rung.series else { continue };
        let watts = worked.section_watts()[k];
        let volts = crate::root::sqrt(worked.loaded.reading.series_square[k]) * ohms;
        stressed(outcome, &together(&["sections[", &counted(k), "].ohms"]), watts, volts);
    }
    let volts = worked.high_line(worked.idle.volts.last().copied().unwrap_or(0.0));
    if let Some(ohms) = inputs.maybe("bleeder_ohms") {
        stressed(outcome, "bleeder_ohms", volts * volts / ohms, volts);
    }
    if inputs.text("rectifier_circuit") == "half-wave" {
        outcome.caution(caution(Severity::Note, "half_wave_iron", "rectifier_circuit"));
    }
}

/// A resistor whose volts ask for a larger body than its watts do.
fn stressed(outcome: &mut Outcome, about: &str, watts: f64, volts: f64) {
    let (by_watts, by_volts) = (standard_watts(watts, 0.0), standard_watts(watts, volts));
    if by_volts > by_watts {
        let said = caution(Severity::Note, "resistor_volts", about).figure("volts", volts);
        outcome.caution(said.figure("watts", watts).figure("by_watts", by_watts).figure("by_volts", by_volts));
    }
}

fn regulator(outcome: &mut Outcome, worked: &Worked) {
    let (Some(given), Some(regulated)) = (&worked.regulator, &worked.regulated) else { return };
    let last = worked.idle.volts.len() - 1;
    let farads = worked.inputs.number(&together(&["sections[", &counted(last), "].farads"]));
    if farads > REGULATOR_FARADS * (1.0 + 1e-9) {
        let about = together(&["sections[", &counted(last), "].farads"]);
        outcome.caution(
            caution(Severity::Limit, "regulator_capacitor", &about)
                .figure("value", farads)
                .figure("rating", REGULATOR_FARADS),
        );
    }
    let about = |key| caution(Severity::Limit, key, "regulator").figure("tube", given.name.as_str());
    if !regulated.strikes {
        let said = about("regulator_dark").figure("striking", given.striking_volts);
        outcome.caution(said.figure("cold_strikes", worked.idle.strikes));
    }
    if regulated.amps_least < given.amps.0 {
        outcome.caution(about("regulator_starved").figure("value", regulated.amps_least).figure("least", given.amps.0));
    }
    if regulated.amps_most > given.amps.1 {
        outcome.caution(about("regulator_over").figure("value", regulated.amps_most).figure("rating", given.amps.1));
    }
}

/// What is worth knowing: cold tubes, silicon instead, rectifiers that need a heater of their own.
fn notes(outcome: &mut Outcome, worked: &Worked) {
    let inputs: &Inputs = worked.inputs;
    let last = |volts: &Vec<f64>| volts.last().copied().unwrap_or(0.0);
    let (warm, cold) = (last(&worked.loaded.reading.volts), last(&worked.idle.volts));
    if cold > 1.05 * warm && warm > 0.0 {
        let said = caution(Severity::Note, "cold_tubes", "no_load_volts").figure("cold", cold).figure("warm", warm);
        let seconds = inputs.number("load_warm_seconds") - worked.rectifier.warm_seconds(inputs);
        outcome.caution(said.figure("seconds", f64::max(0.0, seconds)).figure("high", worked.high_line(cold)));
    }
    if let Some((ohms, open)) = worked.silicon {
        let said =
            caution(Severity::Note, "silicon_instead", "rectifier").figure("tube", worked.rectifier.name.as_str());
        let said = said.figure("ohms", ohms).figure("amps", worked.loaded.reading.amps).figure("open", open);
        let watts = ohms * worked.loaded.reading.square;
        outcome.caution(said.figure("warm", warm).figure("high", worked.high_line(open)).figure("watts", watts));
    }
    if worked.rectifier.perveance.is_some()
        && worked.supply.connection != Connection::HalfWave
        && inputs.text("rectifier_circuit") != "centre-tap"
    {
        outcome.caution(caution(Severity::Note, "separate_heaters", "rectifier_circuit"));
    }
}
