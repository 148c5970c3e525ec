use core::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

/// A complex number: the phasor of a volt or an ampere, an impedance, a transfer.
///
/// The project's own, so that no library between it and `libm` can change the bits of a result.
///
/// ```
/// use tagstrip_core::circuit::Complex;
///
/// let z = Complex::new(3.0, -4.0);
/// assert_eq!(z.magnitude(), 5.0);
/// assert_eq!(z * z.conjugate(), Complex::real(25.0));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Complex {
    /// In phase.
    pub re: f64,
    /// A quarter turn ahead.
    pub im: f64,
}

impl Complex {
    /// Nothing.
    pub const ZERO: Self = Self { re: 0.0, im: 0.0 };

    /// From its two parts.
    #[must_use]
    pub const fn new(re: f64, im: f64) -> Self {
        Self { re, im }
    }

    /// A real number.
    #[must_use]
    pub const fn real(re: f64) -> Self {
        Self { re, im: 0.0 }
    }

    /// The same magnitude turned the other way.
    #[must_use]
    pub const fn conjugate(self) -> Self {
        Self { re: self.re, im: -self.im }
    }

    /// `k` times as large.
    #[must_use]
    pub fn scale(self, k: f64) -> Self {
        Self { re: self.re * k, im: self.im * k }
    }

    /// Square of the magnitude; under- and overflows where the square does.
    #[must_use]
    pub fn square(self) -> f64 {
        self.re * self.re + self.im * self.im
    }

    /// Distance from zero, without under- or overflow on the way.
    #[must_use]
    pub fn magnitude(self) -> f64 {
        match self.sound_square() {
            Some(square) => crate::root::sqrt(square),
            None => libm::hypot(self.re, self.im),
        }
    }

    /// The square of the magnitude, where it neither under- nor overflows.
    fn sound_square(self) -> Option<f64> {
        Some(self.square()).filter(|square| (1e-280..1e280).contains(square))
    }

    /// Twenty times the common logarithm of the magnitude; of zero, minus infinity.
    #[must_use]
    pub fn decibels(self) -> f64 {
        self.sound_square()
            .map_or_else(|| 20.0 * libm::log10(libm::hypot(self.re, self.im)), |square| 10.0 * libm::log10(square))
    }

    /// Natural logarithm of the magnitude; of zero, that of the smallest number there is (about -744).
    #[must_use]
    pub fn ln_magnitude(self) -> f64 {
        self.sound_square().map_or_else(
            || libm::log(libm::hypot(self.re, self.im).clamp(f64::from_bits(1), f64::MAX)),
            |square| 0.5 * libm::log(square),
        )
    }

    /// Angle in radians, from -pi to pi; of zero, zero.
    #[must_use]
    pub fn angle(self) -> f64 {
        libm::atan2(self.im, self.re)
    }

    /// One over it.
    #[must_use]
    pub fn inverse(self) -> Self {
        let k = 1.0 / self.square();
        Self { re: self.re * k, im: -self.im * k }
    }
}

impl Add for Complex {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { re: self.re + other.re, im: self.im + other.im }
    }
}

impl Sub for Complex {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self { re: self.re - other.re, im: self.im - other.im }
    }
}

impl Mul for Complex {
    type Output = Self;
    fn mul(self, other: Self) -> Self {
        Self { re: self.re * other.re - self.im * other.im, im: self.re * other.im + self.im * other.re }
    }
}

impl Div for Complex {
    type Output = Self;
    #[allow(clippy::suspicious_arithmetic_impl)] // a quotient is a product with the inverse
    fn div(self, other: Self) -> Self {
        self * other.inverse()
    }
}

impl Neg for Complex {
    type Output = Self;
    fn neg(self) -> Self {
        Self { re: -self.re, im: -self.im }
    }
}

impl AddAssign for Complex {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl SubAssign for Complex {
    fn sub_assign(&mut self, other: Self) {
        *self = *self - other;
    }
}
