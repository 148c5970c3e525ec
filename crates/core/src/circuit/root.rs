//! Where a function of one figure crosses zero.

/// Steps at most; bisection alone would need some fifty.
const STEPS: usize = 80;

/// The zero between two places with values of opposite signs, to rounding.
///
/// Brent's method: interpolation through the last places, bisection where that gets no nearer.
///
/// # Source
/// R. P. Brent, *Algorithms for Minimization without Derivatives* (1973), chapter 4.
pub(super) fn crossing<E>(
    ((a, value_a), (b, value_b)): ((f64, f64), (f64, f64)),
    mut value: impl FnMut(f64) -> Result<f64, E>,
) -> Result<f64, E> {
    // `b` is the best so far, `a` the one before, `c` on the other side of the zero.
    let (mut a, mut value_a, mut b, mut value_b) = (a, value_a, b, value_b);
    let (mut c, mut value_c) = (a, value_a);
    let mut step = b - a;
    let mut before = step;
    for _ in 0..STEPS {
        if value_c.abs() < value_b.abs() {
            (a, b, c) = (b, c, b);
            (value_a, value_b, value_c) = (value_b, value_c, value_b);
        }
        let near = 2.0 * f64::EPSILON * b.abs() + f64::MIN_POSITIVE;
        let half = 0.5 * (c - b);
        if half.abs() <= near || value_b == 0.0 {
            break;
        }
        let interpolated = interpolate((a, value_a), (b, value_b), (c, value_c));
        if before.abs() >= near
            && value_a.abs() > value_b.abs()
            && interpolated * half > 0.0
            && interpolated.abs() < f64::min(1.5 * half.abs() - 0.5 * near, 0.5 * before.abs())
        {
            (before, step) = (step, interpolated);
        } else {
            (before, step) = (half, half);
        }
        (a, value_a) = (b, value_b);
        b += if step.abs() > near { step } else { libm::copysign(near, half) };
        value_b = value(b)?;
        if (value_b > 0.0) == (value_c > 0.0) {
            (c, value_c) = (a, value_a);
            before = b - a;
            step = before;
        }
    }
    Ok(b)
}

/// The step from `b` to the zero of the line or inverse parabola through the places known.
fn interpolate((a, value_a): (f64, f64), (b, value_b): (f64, f64), (c, value_c): (f64, f64)) -> f64 {
    let s = value_b / value_a;
    if a.to_bits() == c.to_bits() {
        return (c - b) * s / (s - 1.0);
    }
    let (q, r) = (value_a / value_c, value_b / value_c);
    let numerator = s * ((c - b) * q * (q - r) - (b - a) * (r - 1.0));
    -numerator / ((q - 1.0) * (r - 1.0) * (s - 1.0))
}
