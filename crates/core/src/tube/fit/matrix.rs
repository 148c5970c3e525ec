//! Small symmetric systems.

use super::levenberg::N;

/// A matrix of the parameters.
pub(super) type Square = [[f64; N]; N];

/// Cholesky's lower factor of a symmetric positive matrix, or none if it is singular to working precision.
fn factor(matrix: &Square) -> Option<Square> {
    let mut lower = [[0.0; N]; N];
    for i in 0..N {
        for j in 0..=i {
            let done: f64 = (0..j).map(|k| lower[i][k] * lower[j][k]).sum();
            let left = matrix[i][j] - done;
            if i == j {
                if left.is_nan() || left <= 1e-14 * matrix[i][i] {
                    return None;
                }
                lower[i][i] = crate::root::sqrt(left);
            } else {
                lower[i][j] = left / lower[j][j];
            }
        }
    }
    Some(lower)
}

/// Solves `matrix`·x = `right`.
pub(super) fn solve(matrix: &Square, right: &[f64; N]) -> Option<[f64; N]> {
    let lower = factor(matrix)?;
    let mut x = *right;
    for i in 0..N {
        let done: f64 = (0..i).map(|k| lower[i][k] * x[k]).sum();
        x[i] = (x[i] - done) / lower[i][i];
    }
    for i in (0..N).rev() {
        let done: f64 = (i + 1..N).map(|k| lower[k][i] * x[k]).sum();
        x[i] = (x[i] - done) / lower[i][i];
    }
    Some(x)
}

/// The inverse: of an information matrix, the covariance.
pub(super) fn inverse(matrix: &Square) -> Option<Square> {
    let mut inverse = [[0.0; N]; N];
    for k in 0..N {
        let unit = core::array::from_fn(|j| if j == k { 1.0 } else { 0.0 });
        let column = solve(matrix, &unit)?;
        for (row, value) in inverse.iter_mut().zip(column) {
            row[k] = value;
        }
    }
    Some(inverse)
}
