use tagstrip_core::{
    calculators::{Want, work},
    value::Value,
};

use super::figure;

const POINTS: &str = include_str!("../../../../tests/vectors/supply_sheets.tsv");

/// How far the first node's volts are from the printed ones: tube, and worst per cent.
pub fn sheets() {
    let mut worst: Vec<(&str, f64, usize)> = Vec::new();
    let lines = POINTS.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    for line in lines.skip(1) {
        let cells: Vec<&str> = line.split('\t').collect();
        let number = |k: usize| cells[k].parse::<f64>().expect("a figure");
        let choked = cells[4] == "choke";
        let series = if choked { "choke" } else { "none" };
        let mut section = vec![("series", Value::from(series)), ("farads", (number(3) * 1e-6).into())];
        if choked {
            section.extend([("ohms", 1e-3.into()), ("henries", number(5).into())]);
        }
        let section = Value::Record(section.into_iter().map(|(key, value)| (key.to_string(), value)).collect());
        let inputs = Value::record([
            ("secondary_volts", number(1).into()),
            ("mains_hertz", 60.0.into()),
            ("winding_ohms", number(2).into()),
            ("rectifier_circuit", "centre-tap".into()),
            ("rectifier", cells[0].into()),
            ("sections", Value::List(vec![section])),
            ("loads", Value::List(vec![Value::record([("amps", (number(6) * 1e-3).into())])])),
        ]);
        let outcome = work("supply", &inputs, Want::USUAL).expect("an answer");
        let volts = figure(outcome.get("answers").expect("answers"), "node_volts", Some(0)).expect("volts");
        let off = 100.0 * (volts / number(7) - 1.0);
        println!("# {} {} V {} mA: printed {}, worked {volts:.1}, {off:+.2} %", cells[0], cells[1], cells[6], cells[7]);
        match worst.iter_mut().find(|(name, ..)| *name == cells[0]) {
            Some((_, most, count)) => (*most, *count) = (if off.abs() > most.abs() { off } else { *most }, *count + 1),
            None => worst.push((cells[0], off, 1)),
        }
    }
    for (name, off, count) in worst {
        println!("sheets.{name} {off:.2} {count}");
    }
}
