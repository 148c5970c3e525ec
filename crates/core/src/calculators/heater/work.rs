use alloc::{string::String, vec::Vec};
use core::f64::consts::SQRT_2;

use super::{
    cautions::cautions,
    string::{Heater, Lot},
};
use crate::text::{counted, together};
use crate::{
    calculators::{
        Outcome, Want, WiringStep,
        bench::{Buying, Point, describe, parts, test_points},
        solved,
    },
    circuit::{DcPoint, GROUND},
    value::{Inputs, Problem, Value},
};

/// A digital meter; on heaters it loads nothing.
const METER: f64 = 10e6;

/// What one heater gets.
pub(super) struct Fed {
    /// End to end, as joined, rms.
    pub volts: f64,
    /// Its far end to the winding's grounded or lifted side, rms.
    pub above: f64,
}

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    let lot = Lot::of(inputs);
    let dc = solved(lot.circuit.dc())?;
    let fed: Vec<Fed> = lot.parts.iter().map(|part| fed(&lot, &dc, *part)).collect();
    let mut outcome = Outcome::default();
    if want.answers {
        answers(&mut outcome, inputs, &lot, &dc, &fed);
    }
    if want.cautions {
        cautions(&mut outcome, inputs, &lot, -dc.amps(lot.winding), &fed);
    }
    if want.parts {
        outcome.parts = parts(&lot.circuit, &Buying { dc: &dc, cold_volts: 0.0, tube: "" });
    }
    if want.test_points {
        let nodes = lot.circuit.nodes().filter(|(node, _)| *node == lot.top || lot.series && *node != GROUND);
        let points = nodes.filter(|(_, name)| *name != "winding" || !lot.series);
        let points = points.map(|(node, name)| {
            let name = if node == lot.top { "heater" } else { name };
            Point { node, name: String::from(name), pin: None }
        });
        outcome.test_points = solved(test_points(&lot.circuit, &dc, points.collect(), METER))?;
    }
    if want.wiring {
        outcome.wiring = wiring(&lot);
    }
    if want.circuit {
        outcome.circuit = Some(describe(&lot.circuit, &dc, &[], &[]));
    }
    Ok(outcome)
}

fn fed(lot: &Lot, dc: &DcPoint, part: crate::circuit::PartId) -> Fed {
    let volts = |end: usize| {
        let node = lot.circuit.part(part).and_then(|part| part.nodes.get(end).copied());
        node.map_or(0.0, |node| dc.volts(node))
    };
    Fed { volts: volts(0) - volts(1), above: volts(0) }
}

/// Direct volts between a heater and its cathode, and with the crest of the heater's own.
pub(super) fn to_cathode(inputs: &Inputs, heater: &Heater, fed: &Fed) -> (f64, f64) {
    let direct = libm::fabs(heater.cathode_volts - inputs.number("elevate_volts"));
    (direct, direct + SQRT_2 * fed.above)
}

fn answers(outcome: &mut Outcome, inputs: &Inputs, lot: &Lot, dc: &DcPoint, fed: &[Fed]) {
    let off = |(heater, fed): &(&Heater, &Fed)| libm::fabs(libm::log(fed.volts / heater.volts));
    let worst = lot.heaters.iter().zip(fed).max_by(|one, other| off(one).total_cmp(&off(other)));
    let (ohms, watts) = lot.resistor();
    let each = |figure: &dyn Fn(&Heater, &Fed) -> Value| -> Vec<Value> {
        lot.heaters.iter().zip(fed).map(|(heater, fed)| figure(heater, fed)).collect()
    };
    outcome.answer("amps", -dc.amps(lot.winding));
    outcome.answer("volts_at_heater", worst.map_or(0.0, |(_, fed)| fed.volts));
    outcome.answer("series_resistor_ohms", ohms);
    outcome.answer("series_resistor_watts", watts);
    outcome.answer("heater_volts", each(&|_, fed| fed.volts.into()));
    outcome.answer("heater_rated_volts", each(&|heater, _| heater.volts.into()));
    outcome.answer("heater_way", each(&|heater, _| heater.way.code().into()));
    outcome.answer("heater_cathode_volts", each(&|heater, fed| to_cathode(inputs, heater, fed).0.into()));
    outcome.answer("heater_cathode_peak_volts", each(&|heater, fed| to_cathode(inputs, heater, fed).1.into()));
}

/// Both leads twisted to each heater in turn, or from one to the next.
fn wiring(lot: &Lot) -> Vec<WiringStep> {
    let mut steps = Vec::new();
    let mut join = |from: String, to: String, part: Option<&str>| {
        let step = steps.len() + 1;
        steps.push(WiringStep { from, to, part: part.map(String::from), step });
    };
    let start = match lot.circuit.find("R1") {
        Some(_) => {
            join("heater_a".into(), "heater_feed".into(), Some("R1"));
            "heater_feed"
        }
        None => "heater_a",
    };
    let place = |index: usize, pin: Option<u8>, end: &str| {
        let leg = pin.map_or_else(|| String::from(end), |pin| counted(pin.into()));
        together(&["V", &counted(index + 1), ".", &leg])
    };
    // In a string the first heater stands next to the winding's grounded end, so the feed comes to the last.
    let mut before = String::from("heater_b");
    for (index, heater) in lot.heaters.iter().enumerate() {
        let pins = heater.pins().unwrap_or([&[], &[]]);
        let ends = |side: usize| -> Vec<String> {
            let code = if side == 0 { "end_a" } else { "end_b" };
            let pins = pins[side];
            if pins.is_empty() {
                alloc::vec![place(index, None, code)]
            } else {
                pins.iter().map(|pin| place(index, Some(*pin), code)).collect()
            }
        };
        let (high, low) = (ends(0), ends(1));
        for to in &low {
            join(if lot.series { before.clone() } else { "heater_b".into() }, to.clone(), None);
        }
        let last = index + 1 == lot.heaters.len();
        if !lot.series || last {
            for to in &high {
                join(start.into(), to.clone(), None);
            }
        } else {
            for pair in high.windows(2) {
                join(pair[0].clone(), pair[1].clone(), None);
            }
        }
        before = high.first().cloned().unwrap_or_default();
    }
    steps
}
