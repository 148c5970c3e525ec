//! Responses as curves.

use alloc::vec::Vec;

use super::{Curve, Line, finite};
use crate::{
    circuit::{Fault, NodeId, Response},
    quantity::Unit,
    value::Scale,
};

/// 20·log of the volts at `node` for an emf of 1 V; minus infinity where nothing passes.
pub(super) fn decibels(response: &mut Response, node: NodeId, hertz: f64) -> Result<f64, Fault> {
    Ok(20.0 * libm::log10(response.at(hertz)?.volts(node).magnitude()))
}

/// The level of `node` at `points` frequencies evenly along log frequency; where nothing passes there is no point. Its
/// label is the caller's to set.
pub(super) fn swept(
    response: &mut Response,
    node: NodeId,
    (least, most): (f64, f64),
    points: u32,
) -> Result<Line, Fault> {
    let (mut x, mut y) = (Vec::with_capacity(points as usize), Vec::with_capacity(points as usize));
    let octaves = libm::log2(most / least) / f64::from(points - 1);
    for point in 0..points {
        let hertz = least * libm::exp2(octaves * f64::from(point));
        if let Some(db) = finite(decibels(response, node, hertz)?) {
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
