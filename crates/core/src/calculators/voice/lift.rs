use crate::{
    calculators::swept::{decibels, mean_by_ratio},
    circuit::{Fault, NodeId, Response},
};

/// Where consonants stand out, and the body of the voice, in hertz.
const HIGH: (f64, f64) = (2200.0, 2800.0);
const LOW: (f64, f64) = (300.0, 500.0);

/// Mean response in dB over 2200–2800 Hz less that over 300–500 Hz, both evenly along log frequency.
///
/// Five Gauss points a band: within 1e-6 dB of the integral for networks of resistors and capacitors.
pub(super) fn tilt(response: &mut Response, output: NodeId) -> Result<f64, Fault> {
    Ok(mean(response, output, HIGH)? - mean(response, output, LOW)?)
}

fn mean(response: &mut Response, output: NodeId, band: (f64, f64)) -> Result<f64, Fault> {
    mean_by_ratio(band, &mut |hertz| decibels(response, output, hertz))
}
