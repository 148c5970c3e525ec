//! The square root.

/// Square root, correctly rounded, as IEEE 754 asks of every machine; NaN below zero.
///
/// Natively `libm` takes the processor's own instruction. For WebAssembly it works digit by digit, some twenty times as long,
/// since no stable Rust names the scalar instruction outside the standard library; the one on a pair of lanes is the same.
/// Every browser that this suite's page runs in has it.
#[cfg(not(target_arch = "wasm32"))]
#[inline]
pub(crate) fn sqrt(figure: f64) -> f64 {
    libm::sqrt(figure)
}

/// The same, by the instruction on a pair of lanes.
#[cfg(target_arch = "wasm32")]
#[target_feature(enable = "simd128")]
pub(crate) fn sqrt(figure: f64) -> f64 {
    use core::arch::wasm32::{f64x2_extract_lane, f64x2_splat, f64x2_sqrt};
    f64x2_extract_lane::<0>(f64x2_sqrt(f64x2_splat(figure)))
}
