/// A whole number of up to 640 bits, least significant limb first.
///
/// It carries a figure between decimal and binary exactly, where the figure is within 10^±90, and needs none of the
/// large tables of powers that a fast conversion brings along.
pub(super) struct Limbs([u32; 20]);

/// The largest power of ten that a limb holds.
const STEP: u32 = 9;

/// The low half of a double limb.
#[allow(clippy::cast_possible_truncation)] // that is the point
const fn low(double: u64) -> u32 {
    double as u32
}

impl Limbs {
    /// `figure` times 2^(32·`place`), for `place` up to 16.
    pub fn new(figure: u128, place: usize) -> Self {
        let mut limbs = [0; 20];
        let mut rest = figure;
        for limb in limbs.iter_mut().skip(place).take(4) {
            *limb = (rest & u128::from(u32::MAX)).try_into().unwrap_or(0);
            rest >>= 32;
        }
        Limbs(limbs)
    }

    /// Times 10^`power`, rounded down; answers whether anything was cut off.
    pub fn scale(&mut self, power: i32) -> bool {
        let (mut left, mut cut) = (power.unsigned_abs(), false);
        while left > 0 {
            let step = left.min(STEP);
            let ten = 10_u32.pow(step);
            if power > 0 {
                self.times(ten);
            } else {
                cut |= self.over(ten) != 0;
            }
            left -= step;
        }
        cut
    }

    /// How many bits the number has.
    pub fn bits(&self) -> u32 {
        let limbs = (1_u32..).zip(&self.0).filter(|(_, limb)| **limb != 0);
        limbs.last().map_or(0, |(count, limb)| count * 32 - limb.leading_zeros())
    }

    /// The `count` bits (at most 64) under the bit `top`, and whether any bit below them is set.
    pub fn under(&self, top: u32, count: u32) -> (u64, bool) {
        let bottom = top.saturating_sub(count);
        let taken = (bottom..top).rev().fold(0, |taken, bit| (taken << 1) | u64::from(self.bit(bit)));
        (taken, (0..bottom).any(|bit| self.bit(bit)))
    }

    fn bit(&self, bit: u32) -> bool {
        let limb = self.0.get((bit / 32) as usize);
        limb.is_some_and(|limb| limb >> (bit % 32) & 1 == 1)
    }

    fn times(&mut self, factor: u32) {
        let mut carry = 0;
        for limb in &mut self.0 {
            let product = u64::from(*limb) * u64::from(factor) + carry;
            (*limb, carry) = (low(product), product >> 32);
        }
    }

    fn over(&mut self, divisor: u32) -> u32 {
        let (mut rest, divisor) = (0, u64::from(divisor));
        for limb in self.0.iter_mut().rev() {
            let here = (rest << 32) | u64::from(*limb);
            (*limb, rest) = (low(here / divisor), here % divisor);
        }
        low(rest)
    }
}
