use super::MU;

/// Resistivity of copper in Ω·m at `celsius`: 1/58 µΩ·m at 20 °C, 0.393 % more a degree.
///
/// # Source
/// IEC 60028:1925 (from memory).
#[must_use]
pub fn copper_ohm_metres(celsius: f64) -> f64 {
    1e-6 / 58.0 * (1.0 + 0.00393 * (celsius - 20.0))
}

/// Skin depth in metres: √(ρ/(π·f·µ0)).
#[must_use]
pub fn skin_depth(ohm_metres: f64, hertz: f64) -> f64 {
    crate::root::sqrt(ohm_metres / (core::f64::consts::PI * hertz * MU))
}

/// What alternating current makes of a round wire.
#[derive(Clone, Copy, Debug)]
pub struct Skin {
    /// Resistance of the straight wire over that at dc.
    pub resistance: f64,
    /// Inner inductance over that at dc, µ0/(8π) a metre.
    pub inner: f64,
    /// Loss in a field across the wire, so counted that it nears `resistance` where the skin is thin and dies with f²
    /// where it is thick.
    pub across: f64,
}

/// Past this radius over skin depth the series for large arguments is good to 1e-8.
const THICK: f64 = 20.0;
/// Terms of the continued fraction, enough up to [`THICK`].
const TERMS: u32 = 64;

/// Skin effect in a round wire of `ratio` = radius over skin depth.
///
/// Z/R = (ka/2)·J0(ka)/J1(ka), k = (1 − j)/δ: by Gauss's continued fraction, or by Hankel's series where `ratio` is large.
/// The wire in a field across it turns 2·J1/(ka·J0) − 1 = R/Z − 1 of it, whose imaginary part is its loss. Exact for a
/// straight wire alone; the field across is taken as even over the wire.
///
/// # Source
/// Kelvin; A. Russell, *Alternating Currents* (1914); the transverse field after S. Butterworth (1925) (from memory; held
/// to Bessel functions by scipy).
#[must_use]
pub fn skin(ratio: f64) -> Skin {
    let (r, x) = if ratio < THICK { fraction(ratio) } else { series(ratio) };
    let square = ratio * ratio;
    Skin { resistance: r, inner: 4.0 * x / square, across: 0.5 * square * x / (r * r + x * x) }
}

/// 1 − (s/2)/(4 − s/(6 − s/(8 − …))) with s = (ka)² = −2j·ratio², from the last term back.
fn fraction(ratio: f64) -> (f64, f64) {
    let s = -2.0 * ratio * ratio;
    // `term` is the denominator so far; s/term is j·s·(re − j·im)/|term|².
    let (mut re, mut im) = (2.0 * f64::from(TERMS), 0.0);
    for n in (2..TERMS).rev() {
        let scale = s / (re * re + im * im);
        (re, im) = (2.0 * f64::from(n) - scale * im, -scale * re);
    }
    let scale = 0.5 * s / (re * re + im * im);
    (1.0 - scale * im, -scale * re)
}

/// y/2 + 1/4 + 3/(16y) + 3/(16y²) + 63/(256y³) + 27/(64y⁴), y = (1 + j)·ratio.
fn series(ratio: f64) -> (f64, f64) {
    let one = 0.5 / ratio; // 1/y = (1 − j)·one
    let (square, cube, fourth) = (2.0 * one * one, 2.0 * one * one * one, -4.0 * one * one * one * one);
    // 1/y² = −j·square, 1/y³ = −(1 + j)·cube, 1/y⁴ = fourth.
    let r = 0.5 * ratio + 0.25 + 0.1875 * one - 0.246_093_75 * cube + 0.421_875 * fourth;
    let x = 0.5 * ratio - 0.1875 * one - 0.1875 * square - 0.246_093_75 * cube;
    (r, x)
}
