//! Elimination that never subtracts: the star-mesh transformation.
//!
//! Every equation says that the currents leaving a node sum to what is injected: `Σ w(k,j)·(v(k) - v(j)) = i(k)`. Ground
//! is one of the `j`, so each row of the matrix sums to zero and its diagonal carries nothing that the off-diagonal terms
//! do not. Taking node `k` out turns the star of its admittances into a mesh between its neighbours,
//! `w(i,j) += w(i,k)·w(k,j) / Σ w(k,·)`: for resistors all terms are positive, nothing is subtracted, and volts come out
//! to rounding though the admittances span 24 decades, where ordinary elimination (which forms a diagonal as a difference)
//! loses every digit of the small ones. Transconductances keep the zero sum; they bring terms of both signs, in which the
//! digits lost are those of the amplification.
//!
//! Sources: A. Rosen, "A new network theorem", J. IEE 62 (1924): star to mesh. W. K. Grassmann, M. I. Taksar and
//! D. P. Heyman, "Regenerative analysis and steady state distributions for Markov chains", Oper. Res. 33 (1985): the
//! pivot as minus the sum of the rest. C. A. O'Cinneide, "Entrywise perturbation theory and error analysis for Markov
//! chains", Numer. Math. 65 (1993): why the digits stay.

use alloc::{vec, vec::Vec};
use core::cmp::Ordering;

use super::{dense::Dense, order::Order, scalar::Scalar};

/// A pivot this small against its own terms is left to the dense solver: six digits would be gone.
const VANISHED: f64 = 1e-6;

/// The matrix in its slots, then its factors.
#[derive(Clone, Debug)]
pub(super) struct Elimination<T> {
    terms: Vec<T>,
    inverse: Vec<T>,
    dense: Option<Dense<T>>,
}

impl<T: Scalar> Elimination<T> {
    pub(super) fn new(order: &Order) -> Self {
        Elimination { terms: vec![T::ZERO; order.slots], inverse: vec![T::ZERO; order.steps.len()], dense: None }
    }

    /// Factors the matrix that `load` writes into the slots (all of them). `load` is called again if a pivot vanishes.
    ///
    /// # Errors
    /// The row at which the matrix was found singular.
    pub(super) fn factor(&mut self, order: &Order, load: impl Fn(&mut [T])) -> Result<(), usize> {
        load(&mut self.terms);
        self.dense = None;
        if self.eliminate(order) {
            return Ok(());
        }
        load(&mut self.terms);
        self.dense = Some(Dense::new(order, &self.terms)?);
        Ok(())
    }

    fn eliminate(&mut self, order: &Order) -> bool {
        let terms = &mut self.terms[..];
        let (mut row_start, mut column_start, mut target) = (0, 0, &order.target[..]);
        for ((k, step), inverse) in order.steps.iter().enumerate().zip(&mut self.inverse) {
            let row = &order.row[row_start..step.row_end];
            let column = &order.column[column_start..step.column_end];
            (row_start, column_start) = (step.row_end, step.column_end);
            let ground = terms[k];
            let (mut pivot, mut size) = (ground, ground.size());
            for entry in row {
                let term = terms[entry.slot];
                pivot += term;
                size += term.size();
            }
            // A NaN must not pass for a pivot.
            if pivot.size().partial_cmp(&(VANISHED * size)) != Some(Ordering::Greater) {
                return false;
            }
            *inverse = pivot.inverse();
            for entry in column {
                let factor = terms[entry.slot] * *inverse;
                terms[entry.slot] = factor;
                terms[entry.place] += factor * ground;
                let (here, rest) = target.split_at(row.len());
                target = rest;
                for (entry, target) in row.iter().zip(here) {
                    let term = factor * terms[entry.slot];
                    terms[*target] += term;
                }
            }
        }
        true
    }

    /// From injected currents to volts, in place. One past the unknowns is ground: whatever is there becomes zero.
    pub(super) fn solve(&self, order: &Order, x: &mut [T]) {
        let (size, terms, inverse) = (order.steps.len(), &self.terms[..], &self.inverse[..]);
        let (steps, row, column) = (&order.steps[..], &order.row[..], &order.column[..]);
        if let Some(dense) = &self.dense {
            dense.solve(&mut x[..size]);
        } else {
            let mut start = 0;
            for (k, step) in steps.iter().enumerate() {
                let here = x[k];
                for entry in &column[start..step.column_end] {
                    x[entry.place] += terms[entry.slot] * here;
                }
                start = step.column_end;
            }
            for k in (0..size).rev() {
                let start = if k == 0 { 0 } else { steps[k - 1].row_end };
                let mut sum = x[k];
                for entry in &row[start..steps[k].row_end] {
                    sum += terms[entry.slot] * x[entry.place];
                }
                x[k] = sum * inverse[k];
            }
        }
        x[size] = T::ZERO;
    }

    /// As [`Self::solve`] with rows and columns exchanged: from weights on volts to weights on injected currents.
    pub(super) fn solve_transposed(&self, order: &Order, x: &mut [T]) {
        let (size, terms, inverse) = (order.steps.len(), &self.terms[..], &self.inverse[..]);
        let (steps, row, column) = (&order.steps[..], &order.row[..], &order.column[..]);
        if let Some(dense) = &self.dense {
            dense.solve_transposed(&mut x[..size]);
        } else {
            let mut start = 0;
            for (k, step) in steps.iter().enumerate() {
                let here = x[k] * inverse[k];
                x[k] = here;
                for entry in &row[start..step.row_end] {
                    x[entry.place] += terms[entry.slot] * here;
                }
                start = step.row_end;
            }
            for k in (0..size).rev() {
                let start = if k == 0 { 0 } else { steps[k - 1].column_end };
                let mut sum = x[k];
                for entry in &column[start..steps[k].column_end] {
                    sum += terms[entry.slot] * x[entry.place];
                }
                x[k] = sum;
            }
        }
        x[size] = T::ZERO;
    }
}
