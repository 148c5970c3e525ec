//! The order in which unknowns are eliminated, worked out once for a shape of circuit and laid down as flat lists.

use alloc::{vec, vec::Vec};

/// One off-diagonal term: its slot, and the row (or column) at its other end.
#[derive(Clone, Copy, Debug)]
pub(super) struct Entry {
    pub slot: usize,
    pub place: usize,
}

/// One unknown's elimination: where its lists end (they begin where those of the step before end).
#[derive(Clone, Copy, Debug)]
pub(super) struct Step {
    pub row_end: usize,
    pub column_end: usize,
}

/// Slots of the matrix and what to do with them.
///
/// Slot `k` below the number of unknowns is row `k`'s term to ground; the others are off-diagonal terms, those that
/// elimination fills in included; the last is where terms go that have no place in the matrix.
#[derive(Clone, Debug)]
pub(super) struct Order {
    size: usize,
    /// Place of each class; ground's is `size`.
    place: Vec<usize>,
    /// Slot of each pair of places, `size` columns a row.
    slot: Vec<usize>,
    pub steps: Vec<Step>,
    /// Terms of each step's row to unknowns still there.
    pub row: Vec<Entry>,
    /// Terms of rows still there to each step's unknown.
    pub column: Vec<Entry>,
    /// For each term of the column, the slots that the terms of the row are added to.
    pub target: Vec<usize>,
    pub slots: usize,
}

/// Which terms there are, before the order is known.
pub(super) struct Pattern {
    size: usize,
    present: Vec<bool>,
}

impl Order {
    /// The empty pattern of that many unknowns (classes 1 and up; 0 is ground).
    pub(super) fn pattern(size: usize) -> Pattern {
        Pattern { size, present: vec![false; size * size] }
    }

    pub(super) fn place(&self, class: usize) -> usize {
        if class == 0 { self.size } else { self.place[class - 1] }
    }

    /// The slot of the term in `row` to `column`, both places; the last slot where there is none.
    pub(super) fn slot(&self, row: usize, column: usize) -> usize {
        if row >= self.size || row == column {
            self.slots - 1
        } else if column >= self.size {
            row
        } else {
            self.slot[row * self.size + column]
        }
    }
}

impl Pattern {
    /// The row of class `row` has a term to class `column`.
    pub(super) fn join(&mut self, row: usize, column: usize) {
        if row != column && row != 0 && column != 0 {
            self.present[(row - 1) * self.size + column - 1] = true;
        }
    }

    /// Least product of row and column counts first (Markowitz 1957; minimum degree where the pattern is symmetric).
    pub(super) fn compile(mut self) -> Order {
        let size = self.size;
        let mut place = vec![usize::MAX; size];
        let mut sequence = Vec::with_capacity(size);
        let mut left: Vec<usize> = (0..size).collect();
        while let Some(at) = self.cheapest(&left) {
            let class = left.remove(at);
            place[class] = sequence.len();
            sequence.push(class);
            for row in left.iter().filter(|row| self.present[**row * size + class]).copied().collect::<Vec<_>>() {
                for column in &left {
                    if *column != row && self.present[class * size + column] {
                        self.present[row * size + column] = true;
                    }
                }
            }
        }
        self.laid(&sequence, place)
    }

    fn cheapest(&self, left: &[usize]) -> Option<usize> {
        let size = self.size;
        let cost = |class: usize| {
            let row = left.iter().filter(|other| self.present[class * size + **other]).count();
            let column = left.iter().filter(|other| self.present[**other * size + class]).count();
            row * column
        };
        (0..left.len()).min_by_key(|at| cost(left[*at]))
    }

    fn laid(&self, sequence: &[usize], place: Vec<usize>) -> Order {
        let size = self.size;
        let present = |row: usize, column: usize| self.present[sequence[row] * size + sequence[column]];
        let mut slot = vec![usize::MAX; size * size];
        let mut slots = size;
        for row in 0..size {
            for column in 0..size {
                if row != column && present(row, column) {
                    slot[row * size + column] = slots;
                    slots += 1;
                }
            }
        }
        let nowhere = slots;
        for slot in slot.iter_mut().filter(|slot| **slot == usize::MAX) {
            *slot = nowhere;
        }
        let (mut steps, mut rows, mut columns, mut target) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        for step in 0..size {
            let entry = |slot, place| Entry { slot, place };
            let start = rows.len();
            rows.extend(
                (step + 1..size)
                    .filter(|column| present(step, *column))
                    .map(|column| entry(slot[step * size + column], column)),
            );
            for row in (step + 1..size).filter(|row| present(*row, step)) {
                columns.push(entry(slot[row * size + step], row));
                target.extend(rows[start..].iter().map(|term: &Entry| {
                    let column = term.place;
                    if column == row { nowhere } else { slot[row * size + column] }
                }));
            }
            steps.push(Step { row_end: rows.len(), column_end: columns.len() });
        }
        Order { size, place, slot, steps, row: rows, column: columns, target, slots: slots + 1 }
    }
}
