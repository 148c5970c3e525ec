use alloc::{vec, vec::Vec};

use super::work::Plan;
use crate::{
    calculators::{Caution, Outcome, Severity},
    tube::{REGULATOR_FARADS, Regulator},
    value::{Inputs, Value},
};

/// More than this to ground can hurt: dc, dry skin (IEC 62368-1, ES1 limit).
const DANGER_VOLTS: f64 = 60.0;

/// The wait to ask for where the supply's own discharge is not known. Common practice, no source.
const LEAST_WAIT: f64 = 60.0;

/// A rise worth a note, over the rail's volts.
const RISES: f64 = 1.1;

/// What can hurt, what exceeds a rating, what is worth knowing.
pub(super) fn cautions(outcome: &mut Outcome, inputs: &Inputs, plan: &Plan, glow: Option<(f64, f64)>) {
    let most = plan.source.1;
    let farads = inputs.number("farads");
    if most > DANGER_VOLTS {
        let held: Vec<Value> = if farads > 0.0 { vec!["C1".into()] } else { vec![] };
        let own = plan.ohms * farads * libm::log(f64::max(1.0, most / DANGER_VOLTS));
        outcome.caution(
            Caution::new(Severity::Danger, "danger_volts")
                .about(if plan.regulator.is_some() { "source_volts_most" } else { "volts_in" })
                .figure("volts", most)
                .figure("node", "supply")
                .figure("least_wait_seconds", f64::max(LEAST_WAIT, libm::ceil(own)))
                .figure("own_seconds", own)
                .figure("capacitors", Value::List(held)),
        );
    }
    if let (Some(tube), Some((_, amps))) = (plan.regulator, glow) {
        regulated(outcome, plan, tube, amps);
        if farads > REGULATOR_FARADS {
            let caution = Caution::new(Severity::Limit, "regulator_farads_over").about("farads");
            outcome.caution(caution.figure("farads", farads).figure("rating", REGULATOR_FARADS));
        }
    } else if plan.volts_at(plan.source.0, plan.amps.2) <= 0.0 {
        let caution = Caution::new(Severity::Limit, "rail_starved").about("amps_most");
        outcome.caution(caution.figure("amps", plan.amps.2).figure("most_amps", plan.source.0 / plan.ohms));
    } else if most > RISES * plan.volts {
        let caution = Caution::new(Severity::Note, "rail_rises").about("open_volts");
        outcome.caution(caution.figure("volts", most).figure("rail_volts", plan.volts));
    }
}

fn regulated(outcome: &mut Outcome, plan: &Plan, tube: &Regulator, amps: f64) {
    let least = plan.least_ohms(tube);
    if plan.strike_volts() < tube.striking_volts {
        outcome.caution(
            Caution::new(Severity::Limit, "regulator_no_strike")
                .about("strikes")
                .figure("tube", tube.name)
                .figure("volts", plan.strike_volts())
                .figure("rating", tube.striking_volts)
                .figure("ohms", plan.strike_ohms(tube).filter(|ohms| *ohms > 0.0)),
        );
    }
    if amps > tube.amps_most {
        outcome.caution(
            Caution::new(Severity::Limit, "regulator_amps_over")
                .about("regulator_amps_most")
                .figure("tube", tube.name)
                .figure("amps", amps)
                .figure("rating", tube.amps_most)
                .figure("least_ohms", least)
                .figure("most_ohms", plan.ohms),
        );
    }
}
