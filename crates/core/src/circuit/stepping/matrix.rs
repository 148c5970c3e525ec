//! Small full matrices, row after row.

use alloc::{vec, vec::Vec};

/// A full square matrix.
#[derive(Clone, Debug)]
pub(super) struct Square {
    pub size: usize,
    pub terms: Vec<f64>,
}

impl Square {
    pub fn zero(size: usize) -> Self {
        Square { size, terms: vec![0.0; size * size] }
    }

    pub fn identity(size: usize) -> Self {
        let mut one = Self::zero(size);
        for k in 0..size {
            one.terms[k * size + k] = 1.0;
        }
        one
    }

    pub fn add(&mut self, row: usize, column: usize, term: f64) {
        self.terms[row * self.size + column] += term;
    }

    /// The largest sum of magnitudes in a row.
    pub fn norm(&self) -> f64 {
        let rows = self.terms.chunks_exact(self.size.max(1));
        rows.map(|row| row.iter().map(|term| libm::fabs(*term)).sum()).fold(0.0, f64::max)
    }

    pub fn times(&self, other: &Self) -> Self {
        Square { size: self.size, terms: self.onto(&other.terms, other.size) }
    }

    /// This matrix times one of `columns` columns.
    pub fn onto(&self, other: &[f64], columns: usize) -> Vec<f64> {
        let mut product = vec![0.0; self.size * columns];
        for (row, into) in self.terms.chunks_exact(self.size.max(1)).zip(product.chunks_exact_mut(columns.max(1))) {
            for (term, from) in row.iter().zip(other.chunks_exact(columns.max(1))) {
                for (sum, other) in into.iter_mut().zip(from) {
                    *sum += term * other;
                }
            }
        }
        product
    }

    /// `into` becomes this matrix times `x`, plus `plus`.
    pub fn apply(&self, x: &[f64], plus: &[f64], into: &mut [f64]) {
        let rows = self.terms.chunks_exact(self.size.max(1));
        for ((row, plus), into) in rows.zip(plus).zip(into) {
            *into = row.iter().zip(x).fold(*plus, |sum, (term, x)| sum + term * x);
        }
    }
}
