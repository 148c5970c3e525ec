//! Where branches and tubes stand in the matrix.

use super::scalar::Scalar;

/// A branch: two slots, two rows, and the known volts between its ends.
#[derive(Clone, Copy, Debug)]
pub(super) struct Footing {
    pub slot: (usize, usize),
    pub row: (usize, usize),
    pub offset: f64,
}

/// A tube's rows, slots, and the known part of its volts to the cathode.
#[derive(Clone, Copy, Debug)]
pub(super) struct ValveFooting {
    pub plate: usize,
    pub grid: usize,
    pub cathode: usize,
    pub plate_to_grid: usize,
    pub plate_to_cathode: usize,
    pub cathode_to_grid: usize,
    pub cathode_to_plate: usize,
    pub grid_offset: f64,
    pub plate_offset: f64,
}

impl Footing {
    /// Adds an admittance between the two ends.
    pub(super) fn stamp<T: Scalar>(&self, slots: &mut [T], admittance: T) {
        slots[self.slot.0] += admittance;
        slots[self.slot.1] += admittance;
    }

    /// Adds the current that leaves `a` and enters `b` because of the known volts between them.
    pub(super) fn inject(&self, currents: &mut [f64], admittance: f64) {
        if self.row.0 != self.row.1 {
            currents[self.row.0] -= admittance * self.offset;
            currents[self.row.1] += admittance * self.offset;
        }
    }
}

impl ValveFooting {
    /// Grid and plate volts to the cathode, the known part left out.
    pub(super) fn unknown_volts<T: Scalar>(&self, x: &[T]) -> (T, T) {
        (x[self.grid] - x[self.cathode], x[self.plate] - x[self.cathode])
    }

    /// Grid and plate volts to the cathode.
    pub(super) fn volts(&self, x: &[f64]) -> (f64, f64) {
        let (grid, plate) = self.unknown_volts(x);
        (grid + self.grid_offset, plate + self.plate_offset)
    }

    /// Adds the tube's derivatives: the current `gm·v(grid) + gp·v(plate)` from plate to cathode, volts to the cathode.
    pub(super) fn stamp(&self, slots: &mut [f64], gm: f64, gp: f64) {
        slots[self.plate_to_grid] -= gm;
        slots[self.plate_to_cathode] += gm + gp;
        slots[self.cathode_to_grid] += gm;
        slots[self.cathode_to_plate] += gp;
    }

    /// Adds a current that enters the circuit at the plate and leaves it at the cathode.
    pub(super) fn inject<T: Scalar>(&self, currents: &mut [T], amps: T) {
        if self.plate != self.cathode {
            currents[self.plate] += amps;
            currents[self.cathode] -= amps;
        }
    }
}
