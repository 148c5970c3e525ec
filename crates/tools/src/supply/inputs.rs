use tagstrip_core::value::Value;

use crate::generate::Chance;

fn between(chance: &mut Chance, least: f64, most: f64) -> f64 {
    (least.ln() + chance.unit() * (most / least).ln()).exp()
}

/// A supply as a builder might make it: one to six sections, every rectifier and circuit, loads of both kinds.
pub fn supply(chance: &mut Chance) -> Value {
    let circuit = ["half-wave", "centre-tap", "bridge", "doubler"][chance.below(4)];
    let doubler = circuit == "doubler";
    let choke_input = !doubler && circuit != "half-wave" && chance.one_in(4);
    let most = if chance.one_in(6) { 6 } else { 4 };
    let count = 1 + chance.below(most);
    let tube = chance.one_in(2);
    let secondary = between(chance, 80.0, if doubler { 220.0 } else { 500.0 });
    let budget = between(chance, 10e-3, 150e-3);
    let sections = (0..count).map(|k| section(chance, k == 0, choke_input, secondary, budget)).collect::<Vec<_>>();
    let loads = (0..count).map(|_| load(chance, budget / count as f64, secondary)).collect::<Vec<_>>();
    let mut pairs: Vec<(&str, Value)> = vec![
        ("secondary_volts", secondary.into()),
        ("mains_hertz", [50.0, 60.0, 400.0][if chance.one_in(20) { 2 } else { chance.below(2) }].into()),
        ("winding_ohms", between(chance, 15.0, 400.0).into()),
        ("rectifier_circuit", circuit.into()),
        ("rectifier", rectifier(chance, tube)),
        ("sections", Value::List(sections)),
        ("loads", Value::List(loads)),
    ];
    if chance.one_in(2) {
        pairs.push(("bleeder_ohms", between(chance, 15e3, 470e3).into()));
    }
    Value::Record(pairs.into_iter().map(|(key, value)| (key.to_string(), value)).collect())
}

/// Silicon, a tube of the table, or a perveance.
fn rectifier(chance: &mut Chance, tube: bool) -> Value {
    let names = ["5Y3GT", "5U4GB", "5AR4", "6X4", "6CA4"];
    match (tube, chance.one_in(2)) {
        (false, _) => "silicon".into(),
        (true, true) => names[chance.below(names.len())].into(),
        (true, false) => Value::record([("perveance", between(chance, 0.15e-3, 4e-3).into())]),
    }
}

fn section(chance: &mut Chance, first: bool, choke_input: bool, secondary: f64, budget: f64) -> Value {
    let choke = if first { choke_input } else { chance.one_in(2) };
    let farads = between(chance, 4e-6, 100e-6).into();
    if first && !choke {
        return Value::record([("series", "none".into()), ("farads", farads)]);
    }
    if choke {
        let (ohms, henries) = (between(chance, 50.0, 500.0).into(), between(chance, 2.0, 20.0).into());
        return Value::record([("series", "choke".into()), ("ohms", ohms), ("henries", henries), ("farads", farads)]);
    }
    // No more than a quarter of the volts falls across one resistor.
    let ohms = between(chance, 0.01, 0.25) * secondary / budget;
    Value::record([("series", "resistor".into()), ("ohms", ohms.into()), ("farads", farads)])
}

fn load(chance: &mut Chance, share: f64, secondary: f64) -> Value {
    let amps = Value::from(share * (0.2 + chance.unit()));
    if chance.one_in(3) {
        return Value::record([("amps", amps), ("ohms", (secondary / share * (1.0 + 3.0 * chance.unit())).into())]);
    }
    Value::record([("amps", amps)])
}
