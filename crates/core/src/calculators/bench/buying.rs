use alloc::{string::String, vec::Vec};

use super::wiring::is_built;
use crate::{
    calculators::PartRow,
    circuit::{Circuit, DcPoint, Kind, Part},
    value::Value,
};

/// Resistor sizes sold, in watts, and the volts a film resistor of that size stands (makers' sheets, from memory).
const SIZES: [(f64, f64); 8] = [
    (0.5, 350.0),
    (1.0, 500.0),
    (2.0, 500.0),
    (3.0, 750.0),
    (5.0, 750.0),
    (10.0, 1000.0),
    (25.0, 1000.0),
    (50.0, 1500.0),
];

/// Working volts that capacitors are sold for.
const WORKING: [f64; 17] = [
    6.3, 10.0, 16.0, 25.0, 35.0, 50.0, 63.0, 100.0, 160.0, 250.0, 400.0, 630.0, 1000.0, 1600.0, 2500.0, 4000.0, 6300.0,
];

/// The least working volts to ask for where only the signal stands: what film and mica parts come with anyway.
const LEAST_WORKING: f64 = 100.0;

/// High line: mains 5 % up.
pub(in crate::calculators) const HIGH_LINE: f64 = 1.05;

/// The size to buy for a resistor that turns `watts` to heat with `volts` across it: at least twice the watts, and
/// large enough for the volts. Common practice.
pub(in crate::calculators) fn standard_watts(watts: f64, volts: f64) -> f64 {
    let fits = SIZES.iter().find(|(size, stands)| *size >= 2.0 * watts && *stands >= volts);
    fits.or(SIZES.iter().find(|(size, _)| *size >= 2.0 * watts)).map_or(2.0 * watts, |(size, _)| *size)
}

/// The working volts to buy for a capacitor that must stand `volts`.
pub(in crate::calculators) fn standard_volts(volts: f64) -> f64 {
    WORKING.iter().copied().find(|stands| *stands >= volts).unwrap_or(volts)
}

/// What the parts list cannot see in the rest state alone.
pub(in crate::calculators) struct Buying<'a> {
    /// The circuit at rest.
    pub dc: &'a DcPoint,
    /// The highest volts any node can stand at, cold.
    pub cold_volts: f64,
    /// What the tube is called.
    pub tube: &'a str,
}

/// Every part of `circuit` to buy, in its order, each with the margin rule it was sized by.
pub(in crate::calculators) fn parts(circuit: &Circuit, buying: &Buying) -> Vec<PartRow> {
    let bought = circuit.parts().map(|(_, part)| part).filter(|part| is_built(part));
    bought.filter_map(|part| row(buying, part)).collect()
}

fn row(buying: &Buying, part: &Part) -> Option<PartRow> {
    let mut row = PartRow {
        reference: part.reference.clone(),
        role: part.role,
        field: part.field.clone(),
        tolerance: (part.tolerance > 0.0).then_some(part.tolerance),
        ..PartRow::default()
    };
    let across = |a: usize, b: usize| {
        let volts = |k: usize| part.nodes.get(k).map_or(0.0, |node| buying.dc.volts(*node));
        libm::fabs(volts(a) - volts(b))
    };
    match &part.kind {
        Kind::Resistor { ohms } => {
            let volts = across(0, 1);
            row.kind = "resistor";
            row.value = Some(Value::Number(*ohms));
            row.watts = Some(standard_watts(volts * volts / ohms, volts));
            row.rule = "twice_watts";
        }
        Kind::Capacitor { farads } => {
            let (volts, rule) = match part.role {
                "cathode_bypass" => (2.0 * across(0, 1), "twice_volts"),
                "coupling" | "decoupling" => (buying.cold_volts * HIGH_LINE, "switch_on"),
                _ => (f64::max(LEAST_WORKING, 2.0 * across(0, 1)), "signal_only"),
            };
            row.kind = "capacitor";
            row.value = Some(Value::Number(*farads));
            row.volts = Some(standard_volts(volts));
            row.rule = rule;
        }
        Kind::Coil { henries, .. } => {
            row.kind = "coil";
            row.value = Some(Value::Number(*henries));
        }
        Kind::Potentiometer { ohms, .. } => {
            row.kind = "potentiometer";
            row.value = Some(Value::Number(*ohms));
            row.rule = "quarter_watt";
            row.watts = Some(0.25);
        }
        Kind::Switch { .. } => {
            row.kind = "switch";
            row.value = Some(Value::Number(part.nodes.len().saturating_sub(1) as f64));
            row.volts = Some(standard_volts(buying.cold_volts * HIGH_LINE));
            row.rule = "switch_on";
        }
        Kind::Triode { .. } => {
            row.kind = "tube";
            row.value = Some(Value::Text(String::from(buying.tube)));
        }
        Kind::Source { .. } if part.role == "regulator" => {
            row.kind = "tube";
            row.value = Some(Value::Text(String::from(buying.tube)));
            row.tolerance = None;
        }
        // A supply's own parts are sized where its currents are known.
        _ => return None,
    }
    Some(row)
}
