//! What the tubes draw in one step: Newton on their grid and plate volts.

use alloc::{vec, vec::Vec};

use super::{
    super::{DcPoint, TubePoint},
    bracket::Bracket,
    reduced::Reduced,
    small,
};
use crate::tube::{Drawn, Triode};

/// Newton's tries before the bracket.
const TRIES: u32 = 8;
/// A last step this small leaves an error of its square, far below what is heard: grid, plate, in volts.
const NEAR: [f64; 2] = [2e-5, 1e-3];
/// The tubes' law holds within these volts.
const FAR: f64 = 1e5;

/// One tube: its law and its straight line through the dc point.
#[derive(Clone, Copy, Debug)]
pub(super) struct Valve {
    pub law: Triode,
    pub rest: TubePoint,
}

/// Plate and grid current beyond a tube's straight line, and how they follow grid and plate volts.
#[derive(Clone, Copy, Debug)]
pub(super) struct Excess {
    pub amps: [f64; 2],
    pub by: [[f64; 2]; 2],
}

impl Valve {
    /// At volts beyond the dc point.
    pub(super) fn excess(&self, drawn: &Drawn, grid: f64, plate: f64) -> Excess {
        let TubePoint { grid_volts, plate_volts, amps, gm, gp } = self.rest;
        let (vg, vp) = ((grid_volts + grid).clamp(-FAR, FAR), (plate_volts + plate).clamp(-FAR, FAR));
        let at = self.law.grid_and_plate_quick(drawn, vg, vp);
        Excess {
            amps: [at.plate.amps - amps - gm * grid - gp * plate, at.grid_amps],
            by: [[at.plate.gm - gm, at.plate.gp - gp], [at.grid_by_grid, at.grid_by_plate]],
        }
    }
}

/// The tubes' ports. Volts are grid and plate of each tube beyond the dc point, currents plate and grid.
#[derive(Clone, Debug)]
pub(super) struct Ports {
    valves: Vec<Valve>,
    drawn: Drawn,
    /// Volts of a port for a current: row after row.
    transfer: Vec<f64>,
    bracket: Bracket,
    open: Vec<f64>,
    volts: Vec<f64>,
    /// The last three steps' currents: what comes next is extrapolated from them.
    past: [Vec<f64>; 3],
    /// The currents found.
    pub excess: Vec<f64>,
    matrix: Vec<f64>,
    left: Vec<f64>,
    pub highest_grid: f64,
    pub most_tries: u32,
    pub bracketed: u32,
}

impl Ports {
    pub(super) fn new(network: &Reduced, point: &DcPoint) -> Self {
        let valves: Vec<Valve> = point.valves().take(network.tubes).map(|(law, rest)| Valve { law, rest }).collect();
        let size = 2 * valves.len();
        let transfer = (0..size * size).map(|at| network.transfer(at / size, at % size)).collect();
        Self::of(valves, Drawn::new(), transfer)
    }

    fn of(valves: Vec<Valve>, drawn: Drawn, transfer: Vec<f64>) -> Self {
        let size = 2 * valves.len();
        let none = vec![0.0; size];
        Ports {
            bracket: Bracket::new(&valves, &transfer),
            valves,
            drawn,
            transfer,
            open: none.clone(),
            volts: none.clone(),
            past: [none.clone(), none.clone(), none.clone()],
            excess: none.clone(),
            matrix: vec![0.0; size * size],
            left: none,
            highest_grid: f64::NEG_INFINITY,
            most_tries: 0,
            bracketed: 0,
        }
    }

    /// The further currents at rest, grid current among them: the same equations over the direct network.
    pub(super) fn rest(&mut self, point: &DcPoint) -> Vec<f64> {
        let mut still = Self::of(self.valves.clone(), self.drawn.clone(), point.direct_transfer());
        still.find();
        for past in &mut self.past {
            past.copy_from_slice(&still.excess);
        }
        self.excess.copy_from_slice(&still.excess);
        still.excess
    }

    /// The further currents at these volts without them, into `excess`.
    pub(super) fn solve(&mut self, open: &[f64]) {
        self.open.copy_from_slice(open);
        let [first, second, third] = &self.past;
        for (((now, first), second), third) in self.excess.iter_mut().zip(first).zip(second).zip(third) {
            *now = 3.0 * (first - second) + third;
        }
        self.find();
        self.past.rotate_right(1);
        self.past[0].copy_from_slice(&self.excess);
        for (valve, volts) in self.valves.iter().zip(self.volts.chunks_exact(2)) {
            self.highest_grid = f64::max(self.highest_grid, valve.rest.grid_volts + volts[0]);
        }
    }

    /// From the currents guessed in `excess` to those that hold.
    fn find(&mut self) {
        let size = self.open.len();
        for (port, volts) in self.volts.iter_mut().enumerate() {
            let along = self.transfer[port * size..].iter().zip(&self.excess);
            *volts = self.open[port] + along.map(|(by, amps)| by * amps).sum::<f64>();
        }
        for tries in 1..=TRIES {
            if self.step() {
                self.most_tries = self.most_tries.max(tries);
                return;
            }
        }
        self.bracketed += 1;
        let tries = self.bracket.find(&self.valves, &self.drawn, &self.open, &mut self.volts, &mut self.excess);
        self.most_tries = self.most_tries.max(TRIES + tries);
    }

    /// One Newton step; whether it was so small that it was the last.
    fn step(&mut self) -> bool {
        let size = self.open.len();
        let Ports { valves, drawn, transfer, open, volts, excess, matrix, left, .. } = self;
        left.copy_from_slice(open);
        matrix.fill(0.0);
        for (tube, valve) in valves.iter().enumerate() {
            let (grid, plate) = (volts[2 * tube], volts[2 * tube + 1]);
            let Excess { amps, by } = valve.excess(drawn, grid, plate);
            excess[2 * tube..2 * tube + 2].copy_from_slice(&amps);
            for port in 0..size {
                let by_amps = &transfer[port * size + 2 * tube..][..2];
                left[port] += by_amps[0] * amps[0] + by_amps[1] * amps[1];
                let row = &mut matrix[port * size + 2 * tube..][..2];
                row[0] = -(by_amps[0] * by[0][0] + by_amps[1] * by[1][0]);
                row[1] = -(by_amps[0] * by[0][1] + by_amps[1] * by[1][1]);
            }
            // kept for the currents at the end of the step
            self.bracket.slopes[tube] = by;
        }
        for port in 0..size {
            matrix[port * size + port] += 1.0;
            left[port] -= volts[port];
        }
        small::solve(matrix, left);
        let mut last = true;
        for (tube, by) in self.bracket.slopes.iter().enumerate() {
            let (grid, plate) = (left[2 * tube], left[2 * tube + 1]);
            let rest = &valves[tube].rest;
            let (grid, plate) =
                (held(grid, rest.grid_volts + volts[2 * tube]), kept(plate, rest.plate_volts + volts[2 * tube + 1]));
            volts[2 * tube] += grid;
            volts[2 * tube + 1] += plate;
            // Along the tangent the network's own equations hold exactly, and only the law is off, by a square.
            excess[2 * tube] += by[0][0] * grid + by[0][1] * plate;
            excess[2 * tube + 1] += by[1][0] * grid + by[1][1] * plate;
            last &= grid.abs() <= NEAR[0] && plate.abs() <= NEAR[1];
        }
        last
    }
}

/// A grid's step, which may not run far ahead of the current that will hold it.
fn held(step: f64, from: f64) -> f64 {
    f64::min(step, f64::max(from, 0.3 - from) + 0.3)
}

/// A plate's step, which may not take it to where nothing flows and no slope leads back.
fn kept(step: f64, from: f64) -> f64 {
    if from > 0.0 { f64::max(step, -0.8 * from) } else { step }
}
