//! The linear network of one step, reduced to what remembers, what is driven and what is heard.

use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::super::{
    Circuit, DcPoint, Fault, NodeId,
    elimination::Elimination,
    footing::{Footing, ValveFooting},
    network::{Law, Network},
    newton::LEAST_GP,
    rigid::Mode,
};

/// Where the rule's frequencies are right.
const RIGHT_HERTZ: f64 = 3500.0;

/// A capacitor or coil as the trapezoidal rule sees it: the conductance `siemens`, and beside it the companion current
/// J that remembers. With the volts v of a step, J becomes `by_volts`·v + `by_itself`·J.
#[derive(Clone, Copy, Debug)]
struct Companion {
    siemens: f64,
    by_volts: f64,
    by_itself: f64,
}

impl Companion {
    fn of(law: Law, step: f64) -> Option<Self> {
        match law {
            Law::Conductance(_) => None,
            Law::Capacitance(farads) => {
                let siemens = 2.0 * farads / step;
                Some(Companion { siemens, by_volts: 2.0 * siemens, by_itself: -1.0 })
            }
            Law::Inductance { henries, ohms } => {
                let reactance = 2.0 * henries / step;
                let siemens = 1.0 / (reactance + ohms);
                let by_itself = (reactance - ohms) * siemens;
                Some(Companion { siemens, by_volts: siemens * (1.0 + by_itself), by_itself })
            }
        }
    }
}

/// What remembers: a companion, the branch's nodes.
#[derive(Clone, Copy, Debug)]
struct Memory {
    companion: Companion,
    law: Law,
    nodes: (NodeId, NodeId),
}

/// The network of one step. A column says what follows from one thing: companion currents of what remembers,
/// the emf, and each tube's plate and grid current beyond its straight line through the dc point.
#[derive(Clone, Debug)]
pub(super) struct Reduced {
    pub states: usize,
    pub tubes: usize,
    /// Column after column: next companion currents; grid and plate volts of each tube beyond the dc point; volts of the
    /// output.
    columns: Vec<f64>,
    memories: Vec<Memory>,
}

impl Reduced {
    pub(super) fn new(circuit: &Circuit, point: &DcPoint, output: NodeId, step: f64) -> Result<Self, Fault> {
        // The trapezoidal rule bends frequencies; with this step it is right at 3.5 kHz and near to either side.
        let turn = PI * RIGHT_HERTZ;
        let step = libm::tan(turn * step) / turn;
        let network = Network::new(circuit, Mode::Ac)?;
        let order = &network.order;
        let valves: Vec<ValveFooting> = network.valves.iter().map(|valve| network.valve_footing(valve)).collect();
        let mut emf = vec![0.0; network.unknowns() + 1];
        let mut terms = vec![0.0; order.slots];
        let idle = idle(&network, output);
        let mut memories: Vec<(Memory, Footing)> = Vec::new();
        for (branch, idle) in network.branches.iter().zip(idle) {
            let footing = network.footing(branch.a, branch.b);
            let companion = Companion::of(branch.law, step);
            let siemens = companion.map_or_else(|| branch.law.admittance(0.0).re, |companion| companion.siemens);
            footing.stamp(&mut terms, siemens);
            footing.inject(&mut emf, siemens);
            if let Some(companion) = companion.filter(|_| !idle) {
                memories.push((Memory { companion, law: branch.law, nodes: (branch.a, branch.b) }, footing));
            }
        }
        for (valve, footing) in network.valves.iter().zip(&valves) {
            let (gm, gp) = point.tube(valve.part).map_or((0.0, LEAST_GP), |tube| (tube.gm, tube.gp.max(LEAST_GP)));
            footing.stamp(&mut terms, gm, gp);
            footing.inject(&mut emf, -(gm * footing.grid_offset + gp * footing.plate_offset));
        }
        let mut elimination = Elimination::new(order);
        let factored = elimination.factor(order, |slots| slots.copy_from_slice(&terms));
        factored.map_err(|row| Fault::Singular { node: network.names[row] })?;

        let (states, tubes) = (memories.len(), valves.len());
        let width = states + 1 + 2 * tubes;
        let mut columns = vec![0.0; width * width];
        for column in 0..width {
            let mut x = vec![0.0; network.unknowns() + 1];
            let driven = if column == states { 1.0 } else { 0.0 };
            match column.checked_sub(states) {
                None => {
                    let (a, b) = memories[column].1.row;
                    x[a] += 1.0;
                    x[b] -= 1.0;
                }
                Some(0) => x.copy_from_slice(&emf),
                Some(current) => {
                    let tube = &valves[(current - 1) / 2];
                    x[if current % 2 == 1 { tube.plate } else { tube.grid }] -= 1.0;
                    x[tube.cathode] += 1.0;
                }
            }
            elimination.solve(order, &mut x);
            let mut put = |row: usize, value: f64| columns[column * width + row] = value;
            for (row, (memory, footing)) in memories.iter().enumerate() {
                let volts = x[footing.row.0] - x[footing.row.1] + driven * footing.offset;
                let itself = if row == column { memory.companion.by_itself } else { 0.0 };
                put(row, memory.companion.by_volts * volts + itself);
            }
            for (tube, footing) in valves.iter().enumerate() {
                let (grid, plate) = footing.unknown_volts(&x);
                put(states + 2 * tube, grid + driven * footing.grid_offset);
                put(states + 2 * tube + 1, plate + driven * footing.plate_offset);
            }
            let offset = network.rigid.offset.get(output.0).copied().unwrap_or(0.0);
            put(width - 1, network.row.get(output.0).map_or(0.0, |row| x[*row]) + driven * offset);
        }
        let memories = memories.into_iter().map(|(memory, _)| memory).collect();
        Ok(Reduced { states, tubes, columns, memories })
    }

    /// How many things follow, and from how many.
    pub(super) const fn width(&self) -> usize {
        self.states + 2 * self.tubes + 1
    }

    /// What a port's volts follow from one further current.
    pub(super) fn transfer(&self, port: usize, current: usize) -> f64 {
        self.columns[(self.states + 1 + current) * self.width() + self.states + port]
    }

    /// What follows from the companion currents and the emf.
    pub(super) fn known(&self, known: &[f64], follows: &mut [f64]) {
        follows.fill(0.0);
        add(follows, &self.columns, known);
    }

    /// Adds what follows from the further currents.
    pub(super) fn more(&self, excess: &[f64], follows: &mut [f64]) {
        add(follows, &self.columns[(self.states + 1) * self.width()..], excess);
    }

    /// The companion currents at a rest that the tubes' further currents have moved off the dc point.
    pub(super) fn charge(&self, point: &DcPoint, excess: &[f64], state: &mut [f64]) {
        let volts = point.moved(excess);
        for (memory, state) in self.memories.iter().zip(state) {
            let across = volts(memory.nodes.0) - volts(memory.nodes.1);
            let Companion { siemens, by_itself, .. } = memory.companion;
            *state = match memory.law {
                // A winding without resistance has no volts, and what it carries more at rest is not known here.
                Law::Inductance { ohms, .. } if ohms > 0.0 => siemens * across + by_itself * across / ohms,
                Law::Inductance { .. } => 0.0,
                // No current at rest: J is what the conductance draws.
                _ => siemens * across,
            };
        }
    }
}

/// Which branches carry no current, since nothing else stands at one end: a throw that the switch leaves open.
fn idle(network: &Network, output: NodeId) -> Vec<bool> {
    let mut idle = vec![false; network.branches.len()];
    let row = |node: NodeId| network.row.get(node.0).copied().unwrap_or(0);
    let mut held = vec![0_usize; network.unknowns() + 1];
    for branch in &network.branches {
        held[row(branch.a)] += 1;
        held[row(branch.b)] += 1;
    }
    for valve in &network.valves {
        for node in [valve.plate, valve.grid, valve.cathode] {
            held[row(node)] += 2;
        }
    }
    held[row(output)] += 2;
    held[network.unknowns()] += 2;
    loop {
        let mut found = false;
        for (branch, idle) in network.branches.iter().zip(&mut idle) {
            let (a, b) = (row(branch.a), row(branch.b));
            if !*idle && (a == b || held[a] == 1 || held[b] == 1) {
                (*idle, found) = (true, true);
                held[a] -= 1;
                held[b] -= 1;
            }
        }
        if !found {
            return idle;
        }
    }
}

/// Column after column, so that no sum waits for the one before; two in one pass, which halves the walks over the sums.
fn add(follows: &mut [f64], columns: &[f64], figures: &[f64]) {
    let width = follows.len();
    for (columns, figures) in columns.chunks(2 * width).zip(figures.chunks(2)) {
        let (first, second) = columns.split_at(width);
        if let [one, other] = figures {
            for ((sum, by), next) in follows.iter_mut().zip(first).zip(second) {
                *sum = *sum + by * one + next * other;
            }
        } else if let [one] = figures {
            for (sum, by) in follows.iter_mut().zip(first) {
                *sum += by * one;
            }
        }
    }
}
