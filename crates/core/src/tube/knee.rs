//! What a plate near the cathode's own potential fails to collect.

/// How sharp the knee is: the plate takes 1 − exp(−3x²) of the current, x = `plate volts`/(`this`·F̄^(2/3)).
const REACH: f64 = 1.3;

/// Above this 3x² the exponential is below the last bit, and is dropped.
const FULL: f64 = 700.0;

/// The share of the emission that reaches the plate.
#[derive(Clone, Copy)]
pub(super) struct Share {
    /// 0…1.
    pub(super) taken: f64,
    /// ∂(share)/∂(plate volts), per volt.
    pub(super) by_plate: f64,
    /// F̄·∂(share)/∂F̄; never positive.
    pub(super) by_current: f64,
}

/// The share that `plate_volts` > 0 takes of a mean emission of `current` V^1.5.
pub(super) fn share(plate_volts: f64, current: f64) -> Share {
    // the same, without the root, where it is far enough over
    if plate_volts * plate_volts * plate_volts >= 8e3 * current * current {
        return Share { taken: 1.0, by_plate: 0.0, by_current: 0.0 };
    }
    let root = libm::cbrt(current);
    let x = plate_volts / (REACH * root * root);
    let h = 3.0 * x * x;
    if h >= FULL {
        return Share { taken: 1.0, by_plate: 0.0, by_current: 0.0 };
    }
    let missed = libm::expm1(-h);
    let steep = h * (1.0 + missed);
    Share { taken: -missed, by_plate: 2.0 * steep / plate_volts, by_current: -4.0 / 3.0 * steep }
}
