use alloc::{string::String, vec::Vec};

use crate::{
    calculators::TestPoint,
    circuit::{Circuit, DcPoint, Fault, GROUND, Kind, NodeId, Parameter, Part},
    value::Inputs,
};

/// A tube of a type, new or worn, against its sheet: common practice, no source.
const PERVEANCE_SPREAD: f64 = 0.20;
const MU_SPREAD: f64 = 0.15;

/// Two-sided 99.5 % of a normal spread: outside it something is wrong.
const OUTSIDE: f64 = 2.81;
/// 5 % and 95 % of a normal spread.
const USUAL: f64 = 1.645;

/// A node to read, and where the meter reaches it.
pub(in crate::calculators) struct Point {
    pub node: NodeId,
    pub name: String,
    pub pin: Option<String>,
}

/// What a meter of `meter_ohms` reads to ground at each of `points`, in volts dc.
///
/// The meter is a resistor of the circuit while it reads, so its loading is solved, not corrected for. Every part is
/// taken as equally likely anywhere within its tolerance (its deviation is the tolerance over √3), parts are
/// independent, and the point follows them as the derivatives at the nominal say; least and most lie 2.81
/// deviations out, yet never beyond what all parts at their limits together would give.
pub(in crate::calculators) fn test_points(
    circuit: &Circuit,
    rest: &DcPoint,
    points: Vec<Point>,
    meter_ohms: f64,
) -> Result<Vec<TestPoint>, Fault> {
    points.into_iter().map(|point| read(circuit, rest, point, meter_ohms)).collect()
}

fn read(circuit: &Circuit, rest: &DcPoint, point: Point, meter_ohms: f64) -> Result<TestPoint, Fault> {
    let mut loaded = circuit.clone();
    loaded.add(Part::new("", "meter", &[point.node, GROUND], Kind::Resistor { ohms: meter_ohms }));
    let dc = loaded.dc_from(rest)?;
    let nominal = dc.volts(point.node);
    let mut reaches = Vec::new();
    for derivative in dc.sensitivities(point.node) {
        let tolerance = match derivative.parameter {
            Parameter::Perveance => PERVEANCE_SPREAD,
            Parameter::Mu => MU_SPREAD,
            Parameter::Setting => 0.0,
            _ => loaded.part(derivative.part).map_or(0.0, |part| part.tolerance),
        };
        reaches.push(libm::fabs(derivative.by_ln) * tolerance);
    }
    Ok(banded(point.name, point.pin, nominal, &reaches))
}

/// The bands of a reading that each part by itself, at its limit, moves by one of `reaches`.
pub(in crate::calculators) fn banded(name: String, pin: Option<String>, nominal: f64, reaches: &[f64]) -> TestPoint {
    let squares: f64 = reaches.iter().map(|reach| reach * reach / 3.0).sum();
    let limit: f64 = reaches.iter().sum();
    let deviation = crate::root::sqrt(squares);
    let (outside, usual) = (f64::min(OUTSIDE * deviation, limit), f64::min(USUAL * deviation, limit));
    TestPoint {
        name,
        pin,
        unit: "V",
        nominal,
        least: nominal - outside,
        most: nominal + outside,
        usual_least: nominal - usual,
        usual_most: nominal + usual,
    }
}

/// Ohms of the meter in the inputs.
pub(in crate::calculators) fn meter_ohms(inputs: &Inputs) -> f64 {
    match (inputs.maybe("meter.ohms_per_volt"), inputs.maybe("meter.range")) {
        (Some(sensitivity), Some(range)) => sensitivity * range,
        _ => inputs.number("meter.ohms"),
    }
}
