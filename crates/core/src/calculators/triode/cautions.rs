use alloc::{string::String, vec::Vec};

use super::{Amplifier, Rest};
use crate::{
    calculators::{Caution, Outcome, Severity, bench::HIGH_LINE},
    circuit::{GROUND, Kind},
    value::{Inputs, Value},
};

/// More than this to ground can hurt: dc, dry skin (IEC 62368-1, ES1 limit).
const DANGER_VOLTS: f64 = 60.0;

/// The wait to ask for where the supply's own discharge is not known. Common practice, no source.
const LEAST_WAIT: f64 = 60.0;

/// The plate current that data sheets call cut-off.
const CUT_OFF: f64 = 10e-6;

/// Grid current begins about here, in volts of bias, from contact potential and initial velocities. Common practice.
const GRID_CURRENT_VOLTS: f64 = -0.5;

/// Everything about the rest state that a builder should know before power goes on.
pub(in crate::calculators) fn cautions(outcome: &mut Outcome, inputs: &Inputs, amplifier: &Amplifier, rest: &Rest) {
    danger(outcome, inputs, amplifier, rest);
    ratings(outcome, inputs, amplifier, rest);
    state(outcome, inputs, amplifier, rest);
}

/// Volts that can hurt, where they stand, what holds its charge, and how long to wait.
fn danger(outcome: &mut Outcome, inputs: &Inputs, amplifier: &Amplifier, rest: &Rest) {
    let supply = inputs.number("supply_volts");
    if supply <= DANGER_VOLTS {
        return;
    }
    let circuit = &amplifier.circuit;
    let charged = circuit.parts().filter(|(_, part)| {
        let ends = part.nodes.iter().map(|node| rest.dc.volts(*node)).collect::<Vec<_>>();
        let stands = ends.first().zip(ends.get(1)).map_or(0.0, |(a, b)| libm::fabs(a - b));
        // A coupling capacitor stands all of B+ at switch-on, and one that is switched out keeps what it had.
        matches!(part.kind, Kind::Capacitor { .. })
            && !part.reference.is_empty()
            && (stands > DANGER_VOLTS || (part.role == "coupling" && amplifier.plate != GROUND))
    });
    let capacitors: Vec<Value> = charged.map(|(_, part)| part.reference.as_str().into()).collect();
    let own = discharge_seconds(inputs, supply * HIGH_LINE);
    outcome.caution(
        Caution::new(Severity::Danger, "danger_volts")
            .about("supply_volts")
            .figure("volts", supply)
            .figure("node", "supply")
            .figure("plate_volts", rest.dc.volts(amplifier.plate))
            .figure("least_wait_seconds", f64::max(LEAST_WAIT, libm::ceil(own)))
            .figure("own_seconds", own)
            .figure("capacitors", Value::List(capacitors)),
    );
}

/// Time until the stage's own capacitors are under 60 V once the supply is down, the tube cold: each against the most
/// resistance it can find, so never too short.
fn discharge_seconds(inputs: &Inputs, volts: f64) -> f64 {
    let through = |farads: f64, ohms: f64| farads * ohms * libm::log(f64::max(1.0, volts / DANGER_VOLTS));
    let feed = inputs.number("plate_ohms") + inputs.number("decoupling_ohms");
    let load = f64::max(inputs.number("load_ohms"), inputs.number("level_ohms"))
        + inputs.number("tone_parts.r_in")
        + inputs.number("tone_parts.r_mix");
    let coupling = inputs.items("positions").iter().filter_map(|position| position.get("farads")?.number());
    let coupling = coupling.fold(inputs.number("coupling_farads"), f64::max);
    let decoupling = through(inputs.number("decoupling_farads"), inputs.number("decoupling_ohms"));
    f64::max(decoupling, through(coupling, feed + load))
}

/// What the tube's sheet allows against what it gets.
fn ratings(outcome: &mut Outcome, inputs: &Inputs, amplifier: &Amplifier, rest: &Rest) {
    let Some(tube) = amplifier.tube.row else {
        outcome.caution(Caution::new(Severity::Note, "own_tube_unknown_ratings").about("tube"));
        return;
    };
    let mut limit = |code, about: &str, key, got: f64, rating: Option<f64>| {
        if let Some(rating) = rating.filter(|rating| got > *rating) {
            let caution = Caution::new(Severity::Limit, code).about(about).figure("tube", tube.name);
            outcome.caution(caution.figure(key, got).figure("rating", rating));
        }
    };
    let ratings = &tube.ratings;
    let fixed_bias = inputs.number("grid_volts") < 0.0 && amplifier.cathode == GROUND;
    let grid_leak = if fixed_bias { ratings.grid_ohms_fixed_bias.or(ratings.grid_ohms) } else { ratings.grid_ohms };
    let heater_cathode = libm::fabs(rest.dc.volts(amplifier.cathode));
    limit("plate_dissipation", "plate_watts", "watts", rest.plate_watts(), Some(ratings.plate_watts));
    limit("plate_volts_over", "plate_volts", "volts", rest.tube.plate_volts, Some(ratings.plate_volts));
    limit("cathode_amps_over", "plate_amps", "amps", rest.tube.amps, ratings.cathode_amps);
    limit("heater_cathode_over", "cathode_volts", "volts", heater_cathode, Some(ratings.heater_cathode_volts));
    limit("grid_leak_over", "grid_ohms", "ohms", inputs.number("grid_ohms"), grid_leak);
    let supply = inputs.number("supply_volts");
    let rating = ratings.plate_volts;
    if supply > rating && rest.tube.plate_volts <= rating {
        let caution = Caution::new(Severity::Note, "supply_over").about("supply_volts").figure("tube", tube.name);
        outcome.caution(caution.figure("volts", supply).figure("rating", rating));
    }
}

/// How the tube stands: cut off, bottomed, at the edge of grid current; and what the coupling capacitors must stand.
fn state(outcome: &mut Outcome, inputs: &Inputs, amplifier: &Amplifier, rest: &Rest) {
    let supply = inputs.number("supply_volts");
    let bias = rest.tube.grid_volts;
    let feed = inputs.number("plate_ohms") + inputs.number("decoupling_ohms") + inputs.number("cathode_ohms");
    if rest.tube.amps < CUT_OFF && rest.tube.amps * feed < 0.01 * supply {
        let caution = Caution::new(Severity::Note, "cut_off").about("plate_amps");
        outcome.caution(caution.figure("plate_amps", rest.tube.amps));
    } else if rest.tube.plate_volts < 0.1 * supply {
        let caution = Caution::new(Severity::Note, "bottomed").about("plate_volts");
        outcome.caution(caution.figure("plate_volts", rest.tube.plate_volts));
    }
    if bias > GRID_CURRENT_VOLTS {
        let severity = if bias >= 0.0 { Severity::Limit } else { Severity::Note };
        outcome.caution(Caution::new(severity, "grid_current").about("bias_volts").figure("bias_volts", bias));
    }
    if supply > DANGER_VOLTS && amplifier.plate != GROUND {
        let coupling = amplifier.circuit.parts().filter(|(_, part)| part.role == "coupling");
        let parts: Vec<Value> = coupling.map(|(_, part)| Value::from(String::from(&*part.reference))).collect();
        let caution = Caution::new(Severity::Note, "coupling_volts").about("supply_volts");
        outcome.caution(caution.figure("volts", supply * HIGH_LINE).figure("parts", Value::List(parts)));
    }
}
