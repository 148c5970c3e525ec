use core::ops::{Add, AddAssign, Mul, Sub, SubAssign};

use super::Complex;

/// What the elimination works in: real numbers at dc, complex ones at a frequency.
pub(super) trait Scalar:
    Copy + PartialEq + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self> + AddAssign + SubAssign
{
    const ZERO: Self;

    /// One over it.
    fn inverse(self) -> Self;

    /// How large, to within a factor of the square root of two.
    fn size(self) -> f64;
}

impl Scalar for f64 {
    const ZERO: Self = 0.0;

    fn inverse(self) -> Self {
        1.0 / self
    }

    fn size(self) -> f64 {
        self.abs()
    }
}

impl Scalar for Complex {
    const ZERO: Self = Complex::ZERO;

    fn inverse(self) -> Self {
        Complex::inverse(self)
    }

    fn size(self) -> f64 {
        self.re.abs() + self.im.abs()
    }
}
