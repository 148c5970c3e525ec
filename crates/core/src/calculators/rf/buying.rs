use alloc::vec::Vec;

use super::Stressed;
use crate::{
    calculators::{
        PartRow,
        bench::{is_built, standard_volts},
    },
    circuit::Kind,
    value::Value,
};

/// Peak volts that capacitors with air between their plates stand, and the gap they have, in metres: the table of typical
/// ratings of the ARRL Handbook (from memory; printed in inches: 0.015, 0.02, 0.03, 0.05, 0.07, 0.08, 0.125, 0.15, 0.17,
/// 0.2, 0.25, 0.35, 0.5).
const GAPS: [(f64, f64); 13] = [
    (1000.0, 0.381e-3),
    (1200.0, 0.508e-3),
    (1500.0, 0.762e-3),
    (2000.0, 1.27e-3),
    (3000.0, 1.778e-3),
    (3500.0, 2.032e-3),
    (4500.0, 3.175e-3),
    (6000.0, 3.81e-3),
    (7000.0, 4.318e-3),
    (7500.0, 5.08e-3),
    (9000.0, 6.35e-3),
    (11000.0, 8.89e-3),
    (13000.0, 12.7e-3),
];

/// The working volts to ask for over the greatest peak: half as much again. Common practice, no source.
const VOLTS_MARGIN: f64 = 1.5;

/// The plate gap for so many volts, peak: along straight lines through [`GAPS`], on towards 0 and beyond the last.
pub(in crate::calculators) fn gap_metres(volts: f64) -> f64 {
    let mut before = (0.0, 0.0);
    let mut line = (GAPS[GAPS.len() - 2], GAPS[GAPS.len() - 1]);
    for place in GAPS {
        if volts <= place.0 {
            line = (before, place);
            break;
        }
        before = place;
    }
    let ((volts_0, gap_0), (volts_1, gap_1)) = line;
    gap_0 + (volts - volts_0) * (gap_1 - gap_0) / (volts_1 - volts_0)
}

/// Every part to buy, with what it must stand at the carrier's peaks and at the heat of full modulation, which adds half
/// to the power. `air` says whether a capacitor of that role may be one with air between its plates.
pub(in crate::calculators) fn parts(stressed: &Stressed, air: impl Fn(&str) -> bool) -> Vec<PartRow> {
    let heat = if stressed.peaks > 1.0 { crate::root::sqrt(1.5) } else { 1.0 };
    let built = stressed.circuit.parts().filter(|(_, part)| is_built(part));
    let row = built.filter_map(|(id, part)| {
        let peak = stressed.across(id) * stressed.peaks;
        let mut row = PartRow {
            reference: part.reference.clone(),
            role: part.role,
            field: part.field.clone(),
            tolerance: (part.tolerance > 0.0).then_some(part.tolerance),
            amps: Some(heat * stressed.amps(id)),
            ..PartRow::default()
        };
        match part.kind {
            Kind::Capacitor { farads } => {
                row.kind = "capacitor";
                row.value = Some(Value::Number(farads));
                row.volts = Some(standard_volts(VOLTS_MARGIN * peak));
                row.gap = air(part.role).then(|| gap_metres(peak));
                row.rule = if row.gap.is_some() { "rf_gap" } else { "rf_peak" };
            }
            Kind::Coil { henries, .. } | Kind::Coupled { henries: [henries, _], .. } => {
                row.kind = "coil";
                row.value = Some(Value::Number(henries));
                row.rule = "rf_heat";
            }
            _ => return None,
        }
        Some(row)
    });
    row.collect()
}
