use super::elliptic::first_and_difference;
use crate::root::sqrt;

/// The magnetic constant in H/m, as the tables used here have it: 4π·10⁻⁷.
pub const MU: f64 = 4e-7 * core::f64::consts::PI;

/// Mutual inductance in henries of two coaxial circles of radius `first` and `second` metres, `apart` metres from plane to
/// plane. The circles must not coincide.
///
/// M = 2·µ0·√(A·a)/√k₁·(K₁ − E₁), k₁ = (r₁ − r₂)/(r₁ + r₂), r₁ and r₂ the greatest and the least distance between them.
/// Exact for filaments.
///
/// # Source
/// J. C. Maxwell, *A Treatise on Electricity and Magnetism* (1873), §701; Rosa and Grover (1916), formula (2).
#[must_use]
pub fn loops(first: f64, second: f64, apart: f64) -> f64 {
    // Lengths of coils: their squares are far from either end of what a figure can be.
    let from = |across: f64| sqrt(across * across + apart * apart);
    let (far, near) = (from(first + second), from(first - second));
    let sum = far + near;
    let root = 2.0 * sqrt(first * second) / sum;
    let (modulus, complement) = (root * root, 2.0 * sqrt(far * near) / sum);
    let (_, difference) = first_and_difference(modulus, complement);
    // √(A·a)/√k₁ is half of the sum.
    MU * sum * difference
}
