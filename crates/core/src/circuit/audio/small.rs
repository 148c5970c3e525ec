/// Solves a small dense system in place, the matrix row after row, by elimination with partial pivoting. A singular one
/// leaves whatever comes: who asks looks whether it helped.
pub(super) fn solve(matrix: &mut [f64], x: &mut [f64]) {
    let size = x.len();
    if size == 2 {
        // one tube, the usual case
        let [a, b, c, d] = [matrix[0], matrix[1], matrix[2], matrix[3]];
        let inverse = 1.0 / (a * d - b * c);
        (x[0], x[1]) = ((d * x[0] - b * x[1]) * inverse, (a * x[1] - c * x[0]) * inverse);
        return;
    }
    for k in 0..size {
        let largest = |best: usize, row: usize| {
            if matrix[row * size + k].abs() > matrix[best * size + k].abs() { row } else { best }
        };
        let best = (k..size).fold(k, largest);
        for column in 0..size {
            matrix.swap(k * size + column, best * size + column);
        }
        x.swap(k, best);
        for row in k + 1..size {
            let factor = matrix[row * size + k] / matrix[k * size + k];
            for column in k..size {
                matrix[row * size + column] -= factor * matrix[k * size + column];
            }
            x[row] -= factor * x[k];
        }
    }
    for k in (0..size).rev() {
        let known: f64 = (k + 1..size).map(|column| matrix[k * size + column] * x[column]).sum();
        x[k] = (x[k] - known) / matrix[k * size + k];
    }
}
