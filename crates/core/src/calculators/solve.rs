//! Finding the one figure that gives a wanted answer.

/// How many places a decade the range is looked over at.
const PER_DECADE: f64 = 6.0;

/// So near to what was wanted is there, in the answer's unit: decibels, or an index of 0 to 1.
const NEAR: f64 = 1e-6;

/// What looking over a range found.
pub(super) struct Found {
    /// The figure at which the answer is what was wanted, the nearest by ratio to what it was; none where it never is.
    pub figure: Option<f64>,
    /// The least and the most by which the answer passed or missed what was wanted.
    pub extent: (f64, f64),
}

/// Looks over `range` by ratio for the figure at which `short` is 0, nearest to `was`, and closes in on it by halving
/// until rounding is all that is left.
///
/// # Errors
/// Whatever `short` fails with.
pub(super) fn by_ratio<E>(
    range: (f64, f64),
    was: f64,
    mut short: impl FnMut(f64) -> Result<f64, E>,
) -> Result<Found, E> {
    let (least, most) = range;
    let cells = libm::ceil(PER_DECADE * libm::log10(most / least));
    let at = |place: f64| least * libm::pow(most / least, place / cells);
    let mut before = short(least)?;
    let mut found = Found { figure: None, extent: (before, before) };
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // whole, a few hundred at most
    let count = cells as u32;
    for cell in 1..=count {
        let (low, high) = (at(f64::from(cell) - 1.0), at(f64::from(cell)));
        let after = short(high)?;
        found.extent = (f64::min(found.extent.0, after), f64::max(found.extent.1, after));
        if (before < 0.0) != (after < 0.0) {
            let root = halve((low, high), before < 0.0, &mut short)?;
            let away = |figure: f64| libm::fabs(libm::log(figure / was));
            // Where the answer leaps over what was wanted, halving ends at the leap, which is no solution.
            let there = libm::fabs(short(root)?) < NEAR;
            if there && found.figure.is_none_or(|other| away(root) < away(other)) {
                found.figure = Some(root);
            }
        }
        before = after;
    }
    Ok(found)
}

fn halve<E>(
    (mut low, mut high): (f64, f64),
    rises: bool,
    short: &mut impl FnMut(f64) -> Result<f64, E>,
) -> Result<f64, E> {
    for _ in 0..60 {
        let middle = crate::root::sqrt(low * high);
        if middle <= low || middle >= high {
            break;
        }
        if (short(middle)? < 0.0) == rises {
            low = middle;
        } else {
            high = middle;
        }
    }
    Ok(crate::root::sqrt(low * high))
}
