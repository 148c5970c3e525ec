//! The chain from one sample to the next, without error but that the rectifier's current is straight between them.

use alloc::{vec, vec::Vec};

use super::matrix::Square;

/// x' = hold·x + first·i + last·i' + still over one step; i is the current at its beginning, i' at its end.
#[derive(Clone, Debug)]
pub(super) struct Advance {
    pub seconds: f64,
    pub hold: Square,
    pub first: Vec<f64>,
    pub last: Vec<f64>,
    pub still: Vec<f64>,
}

/// Terms of the series, enough for a norm of a quarter: the next is under 1e-17.
const TERMS: usize = 11;
const NORM: f64 = 0.25;

impl Advance {
    /// For x' = A·x + b·i + c, over `seconds`.
    pub fn new(matrix: &Square, inflow: &[f64], constant: &[f64], seconds: f64) -> Self {
        let mut halvings = 0;
        let mut step = seconds;
        let norm = matrix.norm();
        while norm * step > NORM && halvings < 1000 {
            step *= 0.5;
            halvings += 1;
        }
        let mut advance = Self::short(matrix, inflow, constant, step);
        for _ in 0..halvings {
            advance = advance.twice();
        }
        advance
    }

    fn short(matrix: &Square, inflow: &[f64], constant: &[f64], seconds: f64) -> Self {
        let size = matrix.size;
        let scaled = Square { size, terms: matrix.terms.iter().map(|term| term * seconds).collect() };
        let mut hold = Square::identity(size);
        for term in (1..=TERMS).rev() {
            hold = scaled.times(&hold);
            hold.terms.iter_mut().for_each(|entry| *entry /= term as f64);
            for k in 0..size {
                hold.add(k, k, 1.0);
            }
        }
        // Σ A^k·v·h/(k+1)! and Σ A^k·v·h/(k+2)!
        let sums = |v: &[f64], gap: usize| {
            let nothing = vec![0.0; size];
            let mut sum = nothing.clone();
            let mut next = nothing.clone();
            for term in (0..=TERMS).rev() {
                scaled.apply(&sum, &nothing, &mut next);
                let over = (term + gap + 1) as f64;
                for ((sum, next), v) in sum.iter_mut().zip(&next).zip(v) {
                    *sum = v * seconds + next / over;
                }
            }
            sum
        };
        let whole = sums(inflow, 1);
        let half = sums(inflow, 2).into_iter().map(|term| 0.5 * term).collect::<Vec<_>>();
        let first = whole.iter().zip(&half).map(|(whole, half)| whole - half).collect();
        Advance { seconds, hold, first, last: half, still: sums(constant, 1) }
    }

    /// The same over twice the time, the current straight over all of it.
    pub fn twice(&self) -> Self {
        let nothing = vec![0.0; self.hold.size];
        let carried = |v: &[f64], plus: &[f64]| {
            let mut into = nothing.clone();
            self.hold.apply(v, plus, &mut into);
            into
        };
        let middle = carried(&self.last, &self.first);
        let halved = |plus: &[f64]| middle.iter().zip(plus).map(|(middle, plus)| 0.5 * middle + plus).collect();
        Advance {
            seconds: 2.0 * self.seconds,
            hold: self.hold.times(&self.hold),
            first: halved(&carried(&self.first, &nothing)),
            last: halved(&self.last),
            still: carried(&self.still, &self.still),
        }
    }
}
