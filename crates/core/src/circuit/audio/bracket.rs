//! Where Newton fails, as where a plate bottoms: one unknown at a time between bounds that it cannot leave.

use alloc::{vec, vec::Vec};
use core::convert::Infallible;

use super::{
    super::root::crossing,
    ports::{Excess, Valve},
    small,
};
use crate::tube::Drawn;

/// Rounds over the tubes; one tube alone is done in the first.
const ROUNDS: u32 = 30;
/// Rounds have settled when the volts move by less.
const SETTLED: f64 = 1e-6;
/// Doublings until a bracket is one.
const DOUBLINGS: u32 = 60;

/// What the ports see without the tubes' straight lines.
#[derive(Clone, Debug)]
pub(super) struct Bracket {
    /// From volts with the straight lines in to volts without them.
    apart: Vec<f64>,
    /// Volts of a port for a current, row after row.
    transfer: Vec<f64>,
    bare: Vec<f64>,
    /// Each tube's slopes at the last try, for who asks.
    pub slopes: Vec<[[f64; 2]; 2]>,
}

impl Bracket {
    pub(super) fn new(valves: &[Valve], transfer: &[f64]) -> Self {
        let size = 2 * valves.len();
        // open = volts − Z·(i − i0 − g·volts), so (1 + Z·g)·volts = open + Z·(i − i0)
        let mut matrix = vec![0.0; size * size];
        for port in 0..size {
            for (tube, valve) in valves.iter().enumerate() {
                let by_plate = transfer[port * size + 2 * tube];
                matrix[port * size + 2 * tube] = by_plate * valve.rest.gm;
                matrix[port * size + 2 * tube + 1] = by_plate * valve.rest.gp;
            }
            matrix[port * size + port] += 1.0;
        }
        let solved = |column: &mut dyn FnMut(usize) -> f64| {
            let mut x: Vec<f64> = (0..size).map(&mut *column).collect();
            small::solve(&mut matrix.clone(), &mut x);
            x
        };
        let (mut apart, mut bare) = (vec![0.0; size * size], vec![0.0; size * size]);
        for column in 0..size {
            let unit = solved(&mut |row| if row == column { 1.0 } else { 0.0 });
            let by_current = solved(&mut |row| transfer[row * size + column]);
            for row in 0..size {
                apart[row * size + column] = unit[row];
                bare[row * size + column] = by_current[row];
            }
        }
        Bracket { apart, transfer: bare, bare: vec![0.0; size], slopes: vec![[[0.0; 2]; 2]; valves.len()] }
    }

    /// Volts and further currents that hold, whatever the tubes do; how many times the law was asked, at most.
    pub(super) fn find(
        &mut self,
        valves: &[Valve],
        drawn: &Drawn,
        open: &[f64],
        volts: &mut [f64],
        excess: &mut [f64],
    ) -> u32 {
        let size = open.len();
        for (port, bare) in self.bare.iter_mut().enumerate() {
            *bare = self.apart[port * size..].iter().zip(open).map(|(by, open)| by * open).sum();
        }
        // what each tube draws beyond its rest
        let mut more = vec![0.0; size];
        let mut asked = 0;
        for _ in 0..ROUNDS {
            let mut moved: f64 = 0.0;
            for (tube, valve) in valves.iter().enumerate() {
                let (grid, plate) = (2 * tube, 2 * tube + 1);
                let from_others = |port: usize| {
                    let others = (0..size).filter(|current| current / 2 != tube);
                    self.bare[port] + others.map(|at| self.transfer[port * size + at] * more[at]).sum::<f64>()
                };
                let z = |port: usize, current: usize| self.transfer[port * size + current];
                let mut alone = Alone {
                    valve,
                    drawn,
                    open: [from_others(grid), from_others(plate)],
                    z: [[z(grid, grid), z(grid, plate)], [z(plate, grid), z(plate, plate)]],
                    asked: 0,
                };
                let (at, amps) = alone.find();
                asked += alone.asked;
                moved = moved.max((volts[grid] - at[0]).abs()).max((volts[plate] - at[1]).abs());
                volts[grid..=plate].copy_from_slice(&at);
                (more[grid], more[plate]) = (amps[0] - valve.rest.amps, amps[1]);
                excess[grid] = more[grid] - valve.rest.gm * at[0] - valve.rest.gp * at[1];
                excess[plate] = amps[1];
            }
            if valves.len() == 1 || moved < SETTLED {
                break;
            }
        }
        asked
    }
}

/// One tube at a network that gives `open` volts at no further current.
struct Alone<'a> {
    valve: &'a Valve,
    drawn: &'a Drawn,
    open: [f64; 2],
    /// Volts of grid and plate for plate and grid current.
    z: [[f64; 2]; 2],
    asked: u32,
}

impl Alone<'_> {
    /// Grid and plate volts beyond rest, plate and grid current.
    fn find(&mut self) -> ([f64; 2], [f64; 2]) {
        let mut found = ([0.0; 2], [0.0; 2]);
        crossing_from_zero(|plate_amps| {
            let (volts, grid_amps, drawn) = self.with_grid(plate_amps);
            found = (volts, [plate_amps, grid_amps]);
            plate_amps - drawn
        });
        found
    }

    /// The grid's current and the volts with a given plate current, and what the plate would draw there.
    fn with_grid(&mut self, plate_amps: f64) -> ([f64; 2], f64, f64) {
        let plate_more = plate_amps - self.valve.rest.amps;
        let mut found = ([0.0; 2], 0.0, 0.0);
        crossing_from_zero(|grid_amps| {
            let volts =
                [0, 1].map(|port: usize| self.open[port] + self.z[port][0] * plate_more + self.z[port][1] * grid_amps);
            self.asked += 1;
            let Excess { amps, .. } = self.valve.excess(self.drawn, volts[0], volts[1]);
            let drawn = amps[0] + self.valve.rest.amps + self.valve.rest.gm * volts[0] + self.valve.rest.gp * volts[1];
            found = (volts, grid_amps, drawn);
            grid_amps - amps[1]
        });
        found
    }
}

/// Ends with the argument, at least 0, at which a function of it changes from below zero, within a bracket that doubles
/// until it is one.
fn crossing_from_zero(mut value: impl FnMut(f64) -> f64) {
    let (mut low, mut value_low) = (0.0, value(0.0));
    let (mut high, mut value_high) = (-value_low, 0.0);
    for _ in 0..DOUBLINGS {
        if value_low >= 0.0 {
            return;
        }
        value_high = value(high);
        if value_high >= 0.0 {
            break;
        }
        (low, value_low) = (high, value_high);
        high *= 2.0;
    }
    let found = crossing(((low, value_low), (high, value_high)), |at| Ok::<f64, Infallible>(value(at)));
    value(found.unwrap_or(high));
}
