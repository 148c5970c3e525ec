//! The way out when a pivot vanishes: a full matrix, its rows scaled, with partial pivoting.

use alloc::{vec, vec::Vec};
use core::cmp::Ordering;

use super::{order::Order, scalar::Scalar};

/// A scaled pivot this small means that rounding decides the answer.
const SINGULAR: f64 = 1e-14;

#[derive(Clone, Debug)]
pub(super) struct Dense<T> {
    size: usize,
    /// Factors, row after row, in the order of `permutation`.
    terms: Vec<T>,
    permutation: Vec<usize>,
}

impl<T: Scalar> Dense<T> {
    /// Factors the matrix whose off-diagonal terms (with the sign of an admittance) stand in the slots.
    ///
    /// # Errors
    /// The column that has no pivot.
    pub(super) fn new(order: &Order, slots: &[T]) -> Result<Self, usize> {
        let size = order.steps.len();
        let mut terms = vec![T::ZERO; size * size];
        let mut scale = vec![0.0; size];
        for row in 0..size {
            let mut diagonal = slots[row];
            for column in (0..size).filter(|column| *column != row) {
                let slot = order.slot(row, column);
                if slot + 1 < slots.len() {
                    diagonal += slots[slot];
                    terms[row * size + column] -= slots[slot];
                    scale[row] = f64::max(scale[row], slots[slot].size());
                }
            }
            terms[row * size + row] = diagonal;
            scale[row] = f64::max(scale[row], diagonal.size());
            scale[row] = f64::max(scale[row], slots[row].size());
        }
        Self::scaled(size, terms, &mut scale)
    }

    /// Factors a matrix given row after row.
    ///
    /// # Errors
    /// The column that has no pivot.
    pub(super) fn of(size: usize, terms: Vec<T>) -> Result<Self, usize> {
        let largest = |row: &[T]| row.iter().fold(0.0, |most, term| f64::max(most, term.size()));
        let mut scale: Vec<f64> = if size == 0 { Vec::new() } else { terms.chunks_exact(size).map(largest).collect() };
        Self::scaled(size, terms, &mut scale)
    }

    fn scaled(size: usize, terms: Vec<T>, scale: &mut [f64]) -> Result<Self, usize> {
        let mut dense = Dense { size, terms, permutation: (0..size).collect() };
        dense.factor(scale)?;
        Ok(dense)
    }

    fn factor(&mut self, scale: &mut [f64]) -> Result<(), usize> {
        let size = self.size;
        for k in 0..size {
            let worth = |row: usize| self.terms[row * size + k].size() / scale[row];
            let best = (k..size).fold(k, |best, row| if worth(row) > worth(best) { row } else { best });
            // A NaN must not pass for a pivot.
            if worth(best).partial_cmp(&SINGULAR) != Some(Ordering::Greater) {
                return Err(k);
            }
            if best != k {
                for column in 0..size {
                    self.terms.swap(k * size + column, best * size + column);
                }
                self.permutation.swap(k, best);
                scale.swap(k, best);
            }
            let (above, below) = self.terms.split_at_mut((k + 1) * size);
            let pivot_row = &above[k * size..];
            let inverse = pivot_row[k].inverse();
            for row in below.chunks_exact_mut(size) {
                let factor = row[k] * inverse;
                row[k] = factor;
                for (term, pivot) in row[k + 1..].iter_mut().zip(&pivot_row[k + 1..]) {
                    *term -= factor * *pivot;
                }
            }
        }
        Ok(())
    }

    pub(super) fn solve(&self, x: &mut [T]) {
        let size = self.size;
        let mut y: Vec<T> = self.permutation.iter().map(|row| x[*row]).collect();
        for k in 0..size {
            let row = &self.terms[k * size..(k + 1) * size];
            let known = row.iter().zip(&y).take(k).fold(T::ZERO, |sum, (term, y)| sum + *term * *y);
            y[k] -= known;
        }
        for k in (0..size).rev() {
            let row = &self.terms[k * size..(k + 1) * size];
            let known = row.iter().zip(&y).skip(k + 1).fold(T::ZERO, |sum, (term, y)| sum + *term * *y);
            y[k] = (y[k] - known) * row[k].inverse();
        }
        x.copy_from_slice(&y);
    }

    pub(super) fn solve_transposed(&self, x: &mut [T]) {
        let size = self.size;
        let mut y: Vec<T> = x.to_vec();
        for k in 0..size {
            y[k] = y[k] * self.terms[k * size + k].inverse();
            let known = y[k];
            let row = &self.terms[k * size..(k + 1) * size];
            for (later, term) in y.iter_mut().zip(row).skip(k + 1) {
                *later -= *term * known;
            }
        }
        for k in (0..size).rev() {
            let known = y[k];
            let row = &self.terms[k * size..(k + 1) * size];
            for (earlier, term) in y.iter_mut().zip(row).take(k) {
                *earlier -= *term * known;
            }
        }
        for (row, value) in self.permutation.iter().zip(y) {
            x[*row] = value;
        }
    }
}
