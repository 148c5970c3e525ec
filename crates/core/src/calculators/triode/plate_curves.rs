use alloc::{vec, vec::Vec};

use super::{Amplifier, Rest};
use crate::{
    calculators::{Curve, Line},
    quantity::Unit,
    tube::Triode,
    value::{Inputs, Scale},
};

const POINTS: usize = 81;

/// Steps that a family of grid volts is drawn in.
const STEPS: [f64; 10] = [0.1, 0.2, 0.25, 0.5, 1.0, 2.0, 2.5, 5.0, 10.0, 20.0];

/// The plate family with the load lines through the rest point and what the sheet forbids.
///
/// `signal_ohms` is what the plate works into for signals; `limits` are plate volts and watts.
pub(in crate::calculators) fn plate_curves(
    inputs: &Inputs,
    amplifier: &Amplifier,
    rest: &Rest,
    signal_ohms: f64,
) -> Curve {
    let supply = inputs.number("supply_volts");
    let most_volts = 1.1 * f64::max(supply, rest.tube.plate_volts);
    let direct_ohms = inputs.number("plate_ohms") + inputs.number("cathode_ohms") + inputs.number("decoupling_ohms");
    let most_amps = 1.15 * f64::max(supply / direct_ohms, 1.6 * rest.tube.amps);
    let ratings = amplifier.tube.row.map(|row| row.ratings);
    let mut lines = family(&amplifier.tube.law, most_volts, most_amps);
    lines.push(straight("dc_load", (0.0, supply / direct_ohms), (supply, 0.0)));
    if signal_ohms > 0.0 && rest.tube.amps > 0.0 {
        let reach = f64::min(rest.tube.amps * signal_ohms, most_volts - rest.tube.plate_volts);
        let fall = f64::min(rest.tube.plate_volts, (most_amps - rest.tube.amps) * signal_ohms);
        let at = |volts: f64| (rest.tube.plate_volts + volts, rest.tube.amps - volts / signal_ohms);
        lines.push(straight("signal_load", at(-fall), at(reach)));
    }
    if let Some(ratings) = ratings {
        lines.push(hyperbola(ratings.plate_watts, most_volts, most_amps));
        lines.retain(|line| !line.x.is_empty());
    }
    let marks = vec![("rest".into(), rest.tube.plate_volts, rest.tube.amps)];
    Curve { key: "plate_curves", x: (Unit::Volt, Scale::Linear), y: (Unit::Ampere, Scale::Linear), lines, marks }
}

/// Plate current against plate volts at even steps of grid volts, from 0 down to cut-off at `most_volts`.
pub(in crate::calculators) fn family(law: &Triode, most_volts: f64, most_amps: f64) -> Vec<Line> {
    let cutoff = most_volts / law.mu;
    let step = STEPS.iter().copied().find(|step| *step * 9.0 >= cutoff).unwrap_or(50.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // whole, and the cast saturates
    let count = (libm::ceil(cutoff / step) as usize).min(12);
    let drawn = (0..=count).map(|k| {
        let grid = -(k as f64) * step;
        let (mut x, mut y) = (Vec::with_capacity(POINTS), Vec::with_capacity(POINTS));
        for point in 0..POINTS {
            let volts = most_volts * point as f64 / (POINTS - 1) as f64;
            let amps = law.plate(grid, volts).amps;
            if amps > most_amps {
                break;
            }
            x.push(volts);
            y.push(amps);
        }
        Line { label: "grid".into(), figure: Some(grid), x, y }
    });
    drawn.collect()
}

fn straight(label: &str, from: (f64, f64), to: (f64, f64)) -> Line {
    Line { label: label.into(), figure: None, x: vec![from.0, to.0], y: vec![from.1, to.1] }
}

/// Where plate volts times plate current is the rated dissipation.
fn hyperbola(watts: f64, most_volts: f64, most_amps: f64) -> Line {
    let first = watts / most_amps;
    let along = (0..POINTS).map(|k| first + (most_volts - first) * k as f64 / (POINTS - 1) as f64);
    let x: Vec<f64> = along.filter(|volts| *volts > 0.0 && *volts <= most_volts).collect();
    let y = x.iter().map(|volts| watts / volts).collect();
    Line { label: "plate_watts".into(), figure: Some(watts), x, y }
}
