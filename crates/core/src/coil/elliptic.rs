/// The complete elliptic integral of the first kind K, and K − E with that of the second kind, for the modulus `k` whose
/// complement is `complement`, √(1 − k²).
///
/// The arithmetic-geometric mean: K = π/(2·a), K − E = K·½·Σ 2ⁿ·cₙ². Neither subtracts, so that K − E keeps its digits
/// where it is small; both come to rounding.
///
/// # Source
/// Abramowitz and Stegun, *Handbook of Mathematical Functions* (1964), 17.6 (from memory; held to Maxwell's examples).
pub(super) fn first_and_difference(k: f64, complement: f64) -> (f64, f64) {
    let (mut a, mut b, mut c) = (1.0, complement, k);
    let (mut sum, mut weight) = (0.0, 0.5);
    // The mean doubles its digits with each step: ten are more than any modulus here needs.
    for _ in 0..40 {
        sum += weight * c * c;
        weight += weight;
        (a, b, c) = (0.5 * (a + b), crate::root::sqrt(a * b), 0.5 * (a - b));
        if c <= 1e-9 * a {
            break;
        }
    }
    sum += weight * c * c;
    let first = core::f64::consts::FRAC_PI_2 / a;
    (first, first * sum)
}
