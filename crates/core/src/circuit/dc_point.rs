use alloc::{vec, vec::Vec};

use super::{
    Circuit, Fault, NodeId, Part, PartId,
    currents::Currents,
    elimination::Elimination,
    network::{Branch, Law, Network},
    newton::Newton,
    rigid::Mode,
};
use crate::tube::Triode;

/// A tube at its dc point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TubePoint {
    /// Grid to cathode.
    pub grid_volts: f64,
    /// Plate to cathode.
    pub plate_volts: f64,
    /// Plate current.
    pub amps: f64,
    /// d amps / d grid volts, in siemens.
    pub gm: f64,
    /// d amps / d plate volts, in siemens: one over the plate resistance.
    pub gp: f64,
}

/// Direct volts and amperes of a circuit, with what they follow from.
#[derive(Clone, Debug)]
pub struct DcPoint {
    pub(super) network: Network,
    pub(super) elimination: Elimination<f64>,
    volts: Vec<f64>,
    pub(super) tubes: Vec<TubePoint>,
    currents: Currents<f64>,
    watts: Vec<f64>,
}

impl DcPoint {
    pub(super) fn find(circuit: &Circuit, start: Option<&DcPoint>) -> Result<Self, Fault> {
        let network = Network::new(circuit, Mode::Dc)?;
        let start = start.map(|point| point.carried_to(&network));
        let mut newton = Newton::new(&network);
        let found = newton.find(start.as_deref()).map_err(|row| Fault::Singular { node: network.names[row] })?;
        let (row, residual) = newton.worst;
        if !found || !residual.is_finite() {
            let residual = if residual.is_finite() { residual } else { f64::MAX };
            return Err(Fault::NoConvergence { node: network.names[row], residual });
        }
        let (elimination, unknowns, states) = (newton.elimination, newton.x, newton.tubes);
        let volts: Vec<f64> = (0..circuit.node_count()).map(|node| network.volts(&unknowns, NodeId(node))).collect();
        let tubes: Vec<TubePoint> = network
            .valves
            .iter()
            .zip(states)
            .map(|(valve, state)| TubePoint {
                grid_volts: volts[valve.grid.0] - volts[valve.cathode.0],
                plate_volts: volts[valve.plate.0] - volts[valve.cathode.0],
                amps: state.amps,
                gm: state.gm,
                gp: state.gp,
            })
            .collect();
        let siemens = |branch: &Branch| match branch.law {
            Law::Conductance(siemens) => siemens,
            Law::Capacitance(_) | Law::Inductance { .. } => 0.0,
        };
        let across = |a: NodeId, b: NodeId| volts[a.0] - volts[b.0];
        let currents = Currents::new(&network, siemens, across, |tube| tubes[tube].amps);
        let taken = |(id, part): (PartId, &Part)| {
            let terminals = part.nodes.iter().zip(currents.of(id));
            terminals.map(|(node, amps)| volts.get(node.0).map_or(0.0, |volts| volts * amps)).sum()
        };
        let watts = circuit.parts().map(taken).collect();
        Ok(DcPoint { network, elimination, volts, tubes, currents, watts })
    }

    /// The unknowns of another network with (mostly) the same nodes.
    fn carried_to(&self, network: &Network) -> Vec<f64> {
        let mut unknowns = vec![0.0; network.unknowns() + 1];
        for root in &network.rigid.root {
            if let Some(volts) = self.volts.get(root.0) {
                unknowns[network.row[root.0]] = volts - network.rigid.offset[root.0];
            }
        }
        unknowns[network.unknowns()] = 0.0;
        unknowns
    }

    /// Volts of a node to ground.
    #[must_use]
    pub fn volts(&self, node: NodeId) -> f64 {
        self.volts.get(node.0).copied().unwrap_or(0.0)
    }

    /// Volts from one node to another.
    #[must_use]
    pub fn volts_between(&self, node: NodeId, reference: NodeId) -> f64 {
        self.volts(node) - self.volts(reference)
    }

    /// Current into a part at its first terminal, in amperes: through a resistor from its first node to its second, into
    /// a tube's plate; a source that delivers current counts negative.
    #[must_use]
    pub fn amps(&self, part: PartId) -> f64 {
        self.terminal_amps(part, 0)
    }

    /// Current into a part at one of its terminals, in the order of its nodes.
    #[must_use]
    pub fn terminal_amps(&self, part: PartId, terminal: usize) -> f64 {
        self.currents.entering(part, terminal)
    }

    /// Power that a part takes up; a source that delivers power counts negative.
    #[must_use]
    pub fn watts(&self, part: PartId) -> f64 {
        self.watts.get(part.0).copied().unwrap_or(0.0)
    }

    /// A tube's volts, current and derivatives; `None` for any other part.
    #[must_use]
    pub fn tube(&self, part: PartId) -> Option<TubePoint> {
        let index = self.network.valves.iter().position(|valve| valve.part == part)?;
        self.tubes.get(index).copied()
    }

    /// Each tube's law and state.
    pub(super) fn valves(&self) -> impl Iterator<Item = (Triode, TubePoint)> + '_ {
        self.network.valves.iter().map(|valve| valve.law).zip(self.tubes.iter().copied())
    }

    /// Unknowns for the tubes' plate and grid currents beyond their straight lines, tube after tube.
    fn moved_unknowns(&self, excess: &[f64]) -> Vec<f64> {
        let mut x = vec![0.0; self.network.unknowns() + 1];
        for (valve, amps) in self.network.valves.iter().zip(excess.chunks_exact(2)) {
            let footing = self.network.valve_footing(valve);
            x[footing.plate] -= amps[0];
            x[footing.grid] -= amps[1];
            x[footing.cathode] += amps[0] + amps[1];
        }
        self.elimination.solve(&self.network.order, &mut x);
        x
    }

    /// How far such currents move the volts of a node.
    pub(super) fn moved(&self, excess: &[f64]) -> impl Fn(NodeId) -> f64 + '_ {
        let x = self.moved_unknowns(excess);
        move |node| self.network.row.get(node.0).map_or(0.0, |row| x[*row])
    }

    /// Grid and plate volts of each tube for one such ampere in each: port after port.
    pub(super) fn direct_transfer(&self) -> Vec<f64> {
        let size = 2 * self.network.valves.len();
        let mut transfer = vec![0.0; size * size];
        for column in 0..size {
            let unit: Vec<f64> = (0..size).map(|current| if current == column { 1.0 } else { 0.0 }).collect();
            let x = self.moved_unknowns(&unit);
            for (tube, valve) in self.network.valves.iter().enumerate() {
                let (grid, plate) = self.network.valve_footing(valve).unknown_volts(&x);
                transfer[2 * tube * size + column] = grid;
                transfer[(2 * tube + 1) * size + column] = plate;
            }
        }
        transfer
    }
}
