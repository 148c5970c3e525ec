use super::limbs::Limbs;

/// A figure as written: a whole number times a power of ten, so that nothing is rounded before the last step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Decimal {
    /// The digits, without a point.
    pub digits: u128,
    /// The power of ten they are times.
    pub power: i32,
}

/// The limb that stands for 1 where there are fractions.
const ONE: usize = 12;
const ONE_BITS: i32 = 32 * 12;
/// Figures are kept within 10^±60, far past any part.
const REACH: i32 = 60;
const EXACT_TENS: [f64; 23] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20,
    1e21, 1e22,
];

impl Decimal {
    /// `digits`·10^`power`.
    pub const fn new(digits: u128, power: i32) -> Self {
        Decimal { digits, power }
    }

    /// The same digits times 10^`power`.
    pub const fn times_ten(self, power: i32) -> Self {
        Decimal { digits: self.digits, power: self.power.saturating_add(power) }
    }

    /// The power of ten of the first digit; 0 for nought.
    pub fn magnitude(self) -> i32 {
        let places = self.digits.checked_ilog10().unwrap_or(0);
        if self.digits == 0 { 0 } else { self.power.saturating_add(i32::try_from(places).unwrap_or(0)) }
    }

    /// The same figure without noughts at the end.
    pub fn trimmed(mut self) -> Self {
        if self.digits == 0 {
            return Decimal::new(0, 0);
        }
        while self.digits.is_multiple_of(10) {
            self.digits /= 10;
            self.power += 1;
        }
        self
    }

    /// The nearest double, ties to even; nothing beyond 10^±60.
    pub fn value(self) -> Option<f64> {
        if self.digits == 0 {
            return Some(0.0);
        }
        if self.magnitude().abs() > REACH {
            return None;
        }
        // Digits and power of ten both exact: one operation rounds once (Clinger 1990).
        let tens = EXACT_TENS.get(self.power.unsigned_abs() as usize);
        if let (Some(tens), Ok(digits)) = (tens, u64::try_from(self.digits))
            && digits < 1 << 53
        {
            let digits = digits as f64;
            return Some(if self.power < 0 { digits / tens } else { digits * tens });
        }
        let fraction = self.power < 0;
        let mut limbs = Limbs::new(self.digits, if fraction { ONE } else { 0 });
        let cut = limbs.scale(self.power);
        let bits = limbs.bits();
        let (taken, below) = limbs.under(bits, 54);
        // Under 54 bits the number is whole and small: nothing to round.
        let (kept, half) = if bits < 54 { (taken << 1, false) } else { (taken, taken & 1 == 1) };
        let mut whole = kept >> 1;
        if half && (below || cut || whole & 1 == 1) {
            whole += 1;
        }
        let shift = i32::try_from(bits.max(53)).unwrap_or(0) - 53 - if fraction { ONE_BITS } else { 0 };
        Some(libm::ldexp(whole as f64, shift))
    }

    /// A positive double rounded to `count` figures (at most 15), halves up; nothing beyond 10^±60.
    pub fn rounded(value: f64, count: i32) -> Option<Self> {
        let size = libm::floor(libm::log10(value));
        if !(-60.0..=60.0).contains(&size) {
            return None;
        }
        #[allow(clippy::cast_possible_truncation)] // within ±60
        let size = size as i32;
        let taken = Decimal::at(value, size + 1 - count)?;
        // The logarithm may be off by its last bit, and rounding may carry: 999.6 has the figures 100 of the next decade.
        let most = 10_u128.pow(count.unsigned_abs());
        if taken.digits >= most {
            Decimal::at(value, size + 2 - count)
        } else if taken.digits * 10 < most {
            Decimal::at(value, size - count)
        } else {
            Some(taken)
        }
    }

    /// A positive double as a whole number of 10^`power`, halves up.
    fn at(value: f64, power: i32) -> Option<Self> {
        let (fraction, exponent) = libm::frexp(value);
        // 53 bits as a whole number, placed so that limb 12 counts ones.
        let place = u32::try_from(exponent - 53 + ONE_BITS).ok()?;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // whole, over 0, under 2^53
        let digits = libm::ldexp(fraction, 53) as u64;
        let mut limbs = Limbs::new(u128::from(digits) << (place % 32), (place / 32) as usize);
        limbs.scale(-power);
        let bits = limbs.bits();
        let ones = ONE_BITS.unsigned_abs();
        let whole = limbs.under(bits.max(ones), bits.saturating_sub(ones)).0;
        let half = limbs.under(ones, 1).0;
        Some(Decimal::new(u128::from(whole + half), power))
    }
}
