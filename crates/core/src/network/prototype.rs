use alloc::vec::Vec;
use core::f64::consts::{LN_10, PI};

/// Elements `g1 … gn` of a Butterworth ladder between equal ends of 1 Ω, half power at 1 rad/s.
///
/// # Source
/// `2·sin((2k − 1)π/2n)`: W. R. Bennett (1932); Matthaei, Young and Jones, *Microwave Filters, Impedance-Matching
/// Networks, and Coupling Structures* (1964), table 4.05-1.
#[must_use]
pub fn butterworth(order: usize) -> Vec<f64> {
    (1..=order).map(|k| 2.0 * half_angle(k, order)).collect()
}

/// Elements `g1 … gn` of a Chebyshev ladder between equal ends of 1 Ω, ripple edge at 1 rad/s. Of odd order: an even one
/// needs unequal ends, and there is none.
///
/// # Source
/// Matthaei, Young and Jones (1964), equation 4.05-2; its `17.37` is `40/ln 10`.
#[must_use]
pub fn chebyshev(order: usize, ripple_db: f64) -> Option<Vec<f64>> {
    if order.is_multiple_of(2) || ripple_db <= 0.0 {
        return None;
    }
    // ln coth(x) = −ln tanh(x)
    let beta = -libm::log(libm::tanh(ripple_db * LN_10 / 40.0));
    let gamma = libm::sinh(beta / (2.0 * order as f64));
    let b = |k: usize| {
        let sine = libm::sin(PI * k as f64 / order as f64);
        gamma * gamma + sine * sine
    };
    let mut elements = Vec::with_capacity(order);
    let mut g = 2.0 * half_angle(1, order) / gamma;
    elements.push(g);
    for k in 2..=order {
        g = 4.0 * half_angle(k - 1, order) * half_angle(k, order) / (b(k - 1) * g);
        elements.push(g);
    }
    Some(elements)
}

/// `sin((2k − 1)π/2n)`.
fn half_angle(k: usize, order: usize) -> f64 {
    libm::sin((2.0 * k as f64 - 1.0) * PI / (2.0 * order as f64))
}
