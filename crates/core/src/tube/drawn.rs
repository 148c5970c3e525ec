//! Emissions looked up, where a law is asked a hundred thousand times a second.

use alloc::vec::Vec;

use super::emission::{Emission, Emissions};

/// Where the fine table begins, where the coarse one takes over, where that ends; in volts of drive.
const LEAST: f64 = -4.0;
const MIDDLE: f64 = 4.0;
const MOST: f64 = 516.0;
/// Places a volt.
const FINE: f64 = 64.0;
const COARSE: f64 = 4.0;

/// Ψ over the drive as a polynomial of the fifth degree in each cell, which has Ψ, Φ and F right at both ends: its
/// derivatives are Φ and F within 1e-6 of F everywhere.
#[derive(Clone, Debug)]
pub(crate) struct Drawn {
    fine: Vec<[f64; 6]>,
    coarse: Vec<[f64; 6]>,
}

impl Drawn {
    pub(crate) fn new() -> Self {
        Drawn { fine: cells(LEAST, MIDDLE, FINE), coarse: cells(MIDDLE, MOST, COARSE) }
    }

    /// The cell that a drive is in, how far along, and the places a volt.
    fn cell(&self, drive: f64) -> Option<(&[f64; 6], f64, f64)> {
        let (cells, place, places) = if drive < MIDDLE {
            (&self.fine, (drive - LEAST) * FINE, FINE)
        } else {
            (&self.coarse, (drive - MIDDLE) * COARSE, COARSE)
        };
        if place < 0.0 {
            return None;
        }
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // beyond the last it is none
        let index = place as usize;
        cells.get(index).map(|cell| (cell, place - index as f64, places))
    }
}

impl Emissions for Drawn {
    fn current_and_slope(&self, drive: f64) -> (f64, f64) {
        let Some(([_, _, c2, c3, c4, c5], t, places)) = self.cell(drive) else {
            return Emission::at(drive).current_and_slope();
        };
        let second = 2.0 * c2 + t * (6.0 * c3 + t * (12.0 * c4 + t * 20.0 * c5));
        let third = 6.0 * c3 + t * (24.0 * c4 + t * 60.0 * c5);
        (second * places * places, third * places * places * places)
    }

    fn sums(&self, drive: f64) -> [f64; 3] {
        let Some(([c0, c1, c2, c3, c4, c5], t, places)) = self.cell(drive) else {
            return Emission::at(drive).sums();
        };
        let value = c0 + t * (c1 + t * (c2 + t * (c3 + t * (c4 + t * c5))));
        let first = c1 + t * (2.0 * c2 + t * (3.0 * c3 + t * (4.0 * c4 + t * 5.0 * c5)));
        let second = 2.0 * c2 + t * (6.0 * c3 + t * (12.0 * c4 + t * 20.0 * c5));
        [second * places * places, first * places, value]
    }
}

fn cells(first: f64, last: f64, places: f64) -> Vec<[f64; 6]> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // two thousand
    let count = ((last - first) * places) as usize;
    let end = |k: usize| {
        let [current, once, twice] = Emission::at(first + k as f64 / places).sums();
        [twice, once / places, current / (places * places)]
    };
    let cell = |k: usize| {
        let ([y0, d0, s0], [y1, d1, s1]) = (end(k), end(k + 1));
        let (rise, turn, bend) = (y1 - y0 - d0 - 0.5 * s0, d1 - d0 - s0, s1 - s0);
        let c3 = 10.0 * rise - 4.0 * turn + 0.5 * bend;
        let c4 = -15.0 * rise + 7.0 * turn - bend;
        let c5 = 6.0 * rise - 3.0 * turn + 0.5 * bend;
        [y0, d0, 0.5 * s0, c3, c4, c5]
    };
    (0..count).map(cell).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_looked_up_is_what_is_worked_out() {
        let drawn = Drawn::new();
        let mut drive = -4.5;
        while drive < 530.0 {
            let (got, want) = (drawn.sums(drive), Emission::at(drive).sums());
            for (got, want) in got.into_iter().zip(want) {
                assert!((got - want).abs() <= 1e-6 * want, "{drive}: {got} for {want}");
            }
            let (got, want) = (drawn.current_and_slope(drive).1, Emission::at(drive).current_and_slope().1);
            assert!((got - want).abs() <= 1e-4 * want, "{drive}: slope {got} for {want}");
            drive += 0.00317 + 1e-3 * drive.abs();
        }
    }
}
