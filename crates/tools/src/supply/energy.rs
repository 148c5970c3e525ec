use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};

use super::{COUNT, figure, inputs::supply};
use crate::generate::Chance;

const ANSWERS: Want = Want {
    answers: true,
    cautions: false,
    curves: false,
    parts: false,
    test_points: false,
    wiring: false,
    circuit: false,
};

/// What the emf gives against what turns to heat and what the loads take; and whether more load ever raises the volts.
pub fn energy() {
    let mut chance = Chance::new(0x5EED);
    let (mut worst, mut risen): (f64, u32) = (0.0, 0);
    for _ in 0..COUNT {
        let inputs = supply(&mut chance);
        let Ok(outcome) = work("supply", &inputs, ANSWERS) else { continue };
        let answers = outcome.get("answers").expect("answers");
        let off = unbalanced(&inputs, answers);
        if off > worst {
            println!("# {off:e}: {inputs:?}");
        }
        worst = f64::max(worst, off);
        risen += raised(&inputs, answers);
    }
    println!("supply.energy.worst_percent {}", 100.0 * worst);
    println!("supply.energy.raised_by_load {risen}");
}

fn unbalanced(inputs: &Value, answers: &Value) -> f64 {
    let whole = |key: &str| figure(answers, key, None).unwrap_or(0.0);
    let mut spent = whole("winding_watts") + whole("rectifier_watts");
    let loads = inputs.get("loads").map_or(&[][..], Value::items);
    for (k, load) in loads.iter().enumerate() {
        let at = |key: &str| figure(answers, key, Some(k)).unwrap_or(0.0);
        let given = |key: &str| load.get(key).and_then(Value::number);
        let mut siemens = given("ohms").map_or(0.0, |ohms| 1.0 / ohms);
        if k + 1 == loads.len() {
            siemens += inputs.get("bleeder_ohms").and_then(Value::number).map_or(0.0, |ohms| 1.0 / ohms);
        }
        let (volts, ripple) = (at("node_volts"), at("node_ripple_rms"));
        spent += at("section_watts") + siemens * (volts * volts + ripple * ripple);
        // Under a volt a constant current is drawn in proportion.
        let drawn = if volts < 1.0 { volts * volts + ripple * ripple } else { volts };
        spent += given("amps").unwrap_or(0.0) * drawn;
    }
    (whole("input_watts") / spent - 1.0).abs()
}

/// Nodes that stand higher when the last load draws a fiftieth more.
fn raised(inputs: &Value, answers: &Value) -> u32 {
    let mut other = inputs.clone();
    if let Value::Record(pairs) = &mut other
        && let Some((_, Value::List(loads))) = pairs.iter_mut().find(|(key, _)| key == "loads")
        && let Some(Value::Record(load)) = loads.last_mut()
        && let Some((_, Value::Number(amps))) = load.iter_mut().find(|(key, _)| key == "amps")
    {
        *amps *= 1.02;
    }
    let Ok(outcome) = work("supply", &other, ANSWERS) else { return 1 };
    let after = outcome.get("answers").expect("answers");
    let count = inputs.get("loads").map_or(0, |loads| loads.items().len());
    let higher = |k: &usize| {
        let volts = |answers| figure(answers, "node_volts", Some(*k)).unwrap_or(0.0);
        volts(after) > volts(answers) + 1e-6
    };
    u32::try_from((0..count).filter(higher).count()).unwrap_or(u32::MAX)
}
