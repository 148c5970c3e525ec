//! Responses as curves.

use alloc::vec::Vec;

use super::{Curve, Line, finite};
use crate::{
    circuit::{Fault, NodeId, Response},
    quantity::Unit,
    value::Scale,
};

/// Decibels of the volts at `node` for an emf of 1 V; minus infinity where nothing passes.
pub(super) fn decibels(response: &mut Response, node: NodeId, hertz: f64) -> Result<f64, Fault> {
    Ok(response.at(hertz)?.volts(node).decibels())
}

/// The level of `node` at `points` frequencies evenly along log frequency; where nothing passes there is no point. Its
/// label is the caller's to set.
pub(super) fn swept(response: &mut Response, node: NodeId, range: (f64, f64), points: u32) -> Result<Line, Fault> {
    swept_by(range, points, &mut |hertz| Ok(finite(decibels(response, node, hertz)?)))
}

/// The same of any level over frequency; where there is none there is no point.
pub(super) fn swept_by(
    (least, most): (f64, f64),
    points: u32,
    level: &mut dyn FnMut(f64) -> Result<Option<f64>, Fault>,
) -> Result<Line, Fault> {
    let (mut x, mut y) = (Vec::with_capacity(points as usize), Vec::with_capacity(points as usize));
    let octaves = libm::log2(most / least) / f64::from(points - 1);
    for point in 0..points {
        let hertz = least * libm::exp2(octaves * f64::from(point));
        if let Some(db) = level(hertz)? {
            x.push(hertz);
            y.push(db);
        }
    }
    Ok(Line { x, y, ..Line::default() })
}

/// Levels against frequency.
pub(super) fn response_curve(lines: Vec<Line>) -> Curve {
    Curve { key: "response", x: (Unit::Hertz, Scale::Log), y: (Unit::Decibel, Scale::Linear), lines, marks: Vec::new() }
}

/// Gauss's points and weights on −1…1, five of them (Abramowitz and Stegun, table 25.4).
const POINTS: [(f64, f64); 5] = [
    (-0.906_179_845_938_664, 0.236_926_885_056_189_1),
    (-0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
    (0.0, 0.568_888_888_888_888_9),
    (0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
    (0.906_179_845_938_664, 0.236_926_885_056_189_1),
];

/// Mean of `at` over a band, evenly along log frequency, by five Gauss points.
pub(super) fn mean_by_ratio(
    (low, high): (f64, f64),
    at: &mut dyn FnMut(f64) -> Result<f64, Fault>,
) -> Result<f64, Fault> {
    let (middle, half) = (0.5 * libm::log(low * high), 0.5 * libm::log(high / low));
    let mut sum = 0.0;
    for (point, weight) in POINTS {
        sum += 0.5 * weight * at(libm::exp(middle + half * point))?;
    }
    Ok(sum)
}
