use crate::{
    calculators::swept::decibels,
    circuit::{Fault, NodeId, Response},
};

/// Where consonants stand out, and the body of the voice, in hertz.
const HIGH: (f64, f64) = (2200.0, 2800.0);
const LOW: (f64, f64) = (300.0, 500.0);

/// Gauss's points and weights on −1…1, five of them (Abramowitz and Stegun, table 25.4).
const POINTS: [(f64, f64); 5] = [
    (-0.906_179_845_938_664, 0.236_926_885_056_189_1),
    (-0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
    (0.0, 0.568_888_888_888_888_9),
    (0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
    (0.906_179_845_938_664, 0.236_926_885_056_189_1),
];

/// Mean response in dB over 2200–2800 Hz less that over 300–500 Hz, both evenly along log frequency.
///
/// Five Gauss points a band: within 1e-6 dB of the integral for networks of resistors and capacitors.
pub(super) fn tilt(response: &mut Response, output: NodeId) -> Result<f64, Fault> {
    Ok(mean(response, output, HIGH)? - mean(response, output, LOW)?)
}

fn mean(response: &mut Response, output: NodeId, (low, high): (f64, f64)) -> Result<f64, Fault> {
    let (middle, half) = (0.5 * libm::log(low * high), 0.5 * libm::log(high / low));
    let mut sum = 0.0;
    for (point, weight) in POINTS {
        sum += 0.5 * weight * decibels(response, output, libm::exp(middle + half * point))?;
    }
    Ok(sum)
}
