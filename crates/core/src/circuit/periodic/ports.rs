//! The linear network as the tubes see it, harmonic by harmonic.

use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::{
    super::{Circuit, Complex, DcPoint, Fault, NodeId, Response},
    waves::Waves,
};

/// Harmonics of which the volts of every node are kept.
pub(super) const KEPT: usize = 7;

/// What one ampere more from plate to cathode of one tube does to another tube's volts, in the samples.
#[derive(Clone, Debug)]
pub(super) struct Influence {
    pub grid: Vec<f64>,
    pub plate: Vec<f64>,
}

/// A circuit with its tubes as they are for small signals: the tubes' current beyond that is what is solved for.
#[derive(Clone, Debug)]
pub(super) struct Ports {
    /// Of tube `t` by tube `s`: `t * tubes + s`.
    pub influence: Vec<Influence>,
    /// Grid and plate volts of each tube, phasors for the sources' signal.
    pub drive: Vec<(Complex, Complex)>,
    /// Volts of every node for the sources' signal.
    pub node_drive: Vec<Complex>,
    /// For each harmonic kept, from 0: volts of every node for one ampere in each tube, `tube * nodes + node`.
    pub node_influence: Vec<Vec<Complex>>,
}

impl Ports {
    pub(super) fn new(circuit: &Circuit, point: &DcPoint, hertz: f64, waves: &Waves) -> Result<Self, Fault> {
        let mut response = Response::new(circuit, point)?;
        let tubes = point.network.valves.len().min(response.valves.len());
        let nodes = circuit.node_count();
        let highest = waves.highest();
        let mut impedances = vec![(Vec::with_capacity(highest + 1), Vec::with_capacity(highest + 1)); tubes * tubes];
        let mut node_influence = Vec::new();
        let (mut drive, mut node_drive) = (Vec::new(), Vec::new());
        for harmonic in 0..=highest {
            if harmonic == 1 {
                let phasors = response.at(hertz)?;
                node_drive = (0..nodes).map(|node| phasors.volts(NodeId(node))).collect();
                let between = |a: NodeId, b: NodeId| node_drive[a.0] - node_drive[b.0];
                let valves = phasors.response.network.valves.iter().take(tubes);
                drive = valves.map(|v| (between(v.grid, v.cathode), between(v.plate, v.cathode))).collect();
            } else if harmonic > 1 {
                response.factor(2.0 * PI * hertz * harmonic as f64)?;
            }
            let mut volts = Vec::with_capacity(tubes * nodes);
            for tube in 0..tubes {
                let column = if harmonic == 0 { direct(point, tube, nodes) } else { response.injected(tube, nodes) };
                for (other, valve) in response.network.valves.iter().take(tubes).enumerate() {
                    let (grid, plate) = &mut impedances[other * tubes + tube];
                    grid.push(column[valve.grid.0] - column[valve.cathode.0]);
                    plate.push(column[valve.plate.0] - column[valve.cathode.0]);
                }
                volts.extend(column);
            }
            if harmonic <= KEPT {
                node_influence.push(volts);
            }
        }
        let influence =
            impedances.iter().map(|(grid, plate)| Influence { grid: waves.kernel(grid), plate: waves.kernel(plate) });
        Ok(Ports { influence: influence.collect(), drive, node_drive, node_influence })
    }
}

/// Direct volts of every node for one ampere more in a tube.
fn direct(point: &DcPoint, tube: usize, nodes: usize) -> Vec<Complex> {
    let network = &point.network;
    let mut x = vec![0.0; network.unknowns() + 1];
    network.valve_footing(&network.valves[tube]).inject(&mut x, -1.0);
    point.elimination.solve(&network.order, &mut x);
    let volts = |node: usize| network.row.get(node).map_or(0.0, |row| x[*row]);
    (0..nodes).map(|node| Complex::real(volts(node))).collect()
}

impl Response {
    /// Volts of every node for one ampere more in a tube, at the frequency last factored.
    fn injected(&mut self, tube: usize, nodes: usize) -> Vec<Complex> {
        self.scratch.fill(Complex::ZERO);
        self.valves[tube].0.inject(&mut self.scratch, Complex::real(-1.0));
        self.elimination.solve(&self.network.order, &mut self.scratch);
        (0..nodes).map(|node| self.scratch[self.network.row[node]]).collect()
    }
}
