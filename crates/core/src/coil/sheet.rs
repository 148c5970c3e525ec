use super::elliptic::first_and_difference;

/// Nagaoka's coefficient for a coil of `ratio` = length over diameter: what the inductance of a current sheet is of that
/// of an endless one, µ0·N²·π·r²/l.
///
/// Lorenz's exact form, 4/(3π·k')·[(k'²/k²)·(K − E) + E − k], with k = D/√(D² + l²) and k' = l/√(D² + l²). Any
/// `ratio` over 0; the error is rounding, 1e-10 at worst (very flat coils).
///
/// # Source
/// L. Lorenz, Annalen der Physik 7 (1879); E. B. Rosa and F. W. Grover, Bulletin of the Bureau of Standards 8 (1911).
#[must_use]
pub fn nagaoka(ratio: f64) -> f64 {
    let across = crate::root::sqrt(1.0 + ratio * ratio);
    let (k, complement) = (1.0 / across, ratio / across);
    let (first, difference) = first_and_difference(k, complement);
    let square = complement * complement;
    let second_less_k = if complement < 1e-3 {
        // E − 1 by its series about k = 1, for there E and k cancel (Abramowitz and Stegun 17.3, from memory).
        let log = libm::log(4.0 / complement);
        square * (0.5 * (log - 0.5) + square * 0.1875 * (log - 13.0 / 12.0)) + square / (1.0 + k)
    } else {
        first - difference - k
    };
    4.0 / (3.0 * core::f64::consts::PI * complement) * (square / (k * k) * difference + second_less_k)
}
