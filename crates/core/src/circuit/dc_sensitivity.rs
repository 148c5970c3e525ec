//! How the dc point follows the parts: one solution of the transposed matrix for each question.

use alloc::{vec, vec::Vec};

use super::{
    DcPoint, GROUND, NodeId, Parameter, PartDerivative, PartId,
    network::Law,
    sums::{Sums, by_source},
};

impl DcPoint {
    /// How the volts of a node follow each figure of each part. A figure that is zero, or that does not matter for dc, is
    /// left out.
    ///
    /// Exact derivatives from the matrix of the dc point itself (the adjoint network).
    ///
    /// ```
    /// use tagstrip_core::circuit::{Circuit, GROUND, Kind, Parameter, Part};
    ///
    /// let mut circuit = Circuit::new();
    /// let (supply, middle) = (circuit.node("supply"), circuit.node("middle"));
    /// circuit.add(Part::new("B1", "supply", &[supply, GROUND], Kind::Source { volts: 90.0, signal: 0.0 }));
    /// circuit.add(Part::new("R1", "top", &[supply, middle], Kind::Resistor { ohms: 2e3 }));
    /// circuit.add(Part::new("R2", "bottom", &[middle, GROUND], Kind::Resistor { ohms: 1e3 }));
    /// let follows = circuit.dc().unwrap().sensitivities(middle);
    /// assert_eq!(follows[0].parameter, Parameter::Volts);
    /// assert!((follows[0].by_ln - 30.0).abs() < 1e-12);
    /// assert!((follows[1].by_ln + 20.0).abs() < 1e-12); // -90·R1·R2/(R1 + R2)²
    /// assert!((follows[2].by_ln - 20.0).abs() < 1e-12);
    /// ```
    ///
    /// # Source
    /// S. W. Director and R. A. Rohrer, "The generalized adjoint network and network sensitivities", IEEE Trans. Circuit
    /// Theory 16 (1969).
    #[must_use]
    pub fn sensitivities(&self, node: NodeId) -> Vec<PartDerivative> {
        self.sensitivities_between(node, GROUND)
    }

    /// As [`DcPoint::sensitivities`], of the volts from one node to another.
    #[must_use]
    pub fn sensitivities_between(&self, node: NodeId, reference: NodeId) -> Vec<PartDerivative> {
        listed(self.gradient(&[(node, 1.0), (reference, -1.0)]))
    }

    /// How a tube's plate current follows each figure of each part; empty where the part is no tube.
    #[must_use]
    pub fn tube_sensitivities(&self, tube: PartId) -> Vec<PartDerivative> {
        let Some(index) = self.network.valves.iter().position(|valve| valve.part == tube) else { return Vec::new() };
        let (valve, point) = (&self.network.valves[index], &self.tubes[index]);
        let weights = [(valve.grid, point.gm), (valve.plate, point.gp), (valve.cathode, -(point.gm + point.gp))];
        let mut sums = self.gradient(&weights);
        sums.add(tube, Parameter::Perveance, point.amps);
        sums.add(tube, Parameter::Mu, valve.law.mu * valve.law.d_mu(point.grid_volts, point.plate_volts));
        listed(sums)
    }

    /// Of a weighted sum of node volts.
    pub(super) fn gradient(&self, weights: &[(NodeId, f64)]) -> Sums<f64> {
        let network = &self.network;
        let mut adjoint = vec![0.0; network.unknowns() + 1];
        // By the volts of each node above its class.
        let mut by_node = vec![0.0; network.row.len()];
        for (node, weight) in weights {
            if let Some(row) = network.row.get(node.0) {
                adjoint[*row] += weight;
                by_node[node.0] += weight;
            }
        }
        self.elimination.solve_transposed(&network.order, &mut adjoint);
        let across = |a: NodeId, b: NodeId| adjoint[network.row[a.0]] - adjoint[network.row[b.0]];
        let mut sums = Sums::new();
        for branch in &network.branches {
            let Law::Conductance(siemens) = branch.law else { continue };
            let weight = across(branch.a, branch.b);
            by_node[branch.a.0] -= siemens * weight;
            by_node[branch.b.0] += siemens * weight;
            let Some(part) = branch.part else { continue };
            let by_ln_siemens = -weight * siemens * self.volts_between(branch.a, branch.b);
            sums.add(part, branch.parameter, -by_ln_siemens);
            if branch.by_setting != 0.0 {
                sums.add(part, Parameter::Setting, branch.by_setting * by_ln_siemens);
            }
        }
        for (valve, point) in network.valves.iter().zip(&self.tubes) {
            let weight = across(valve.plate, valve.cathode);
            by_node[valve.grid.0] -= point.gm * weight;
            by_node[valve.plate.0] -= point.gp * weight;
            by_node[valve.cathode.0] += (point.gm + point.gp) * weight;
            sums.add(valve.part, Parameter::Perveance, -weight * point.amps);
            let by_ln_mu = valve.law.mu * valve.law.d_mu(point.grid_volts, point.plate_volts);
            sums.add(valve.part, Parameter::Mu, -weight * by_ln_mu);
        }
        for (part, by_volt) in by_source(network, by_node) {
            if let Some(volts) = network.rigid.volts(part) {
                sums.add(part, Parameter::Volts, by_volt * volts);
            }
        }
        sums
    }
}

fn listed(sums: Sums<f64>) -> Vec<PartDerivative> {
    let each = |(part, parameter, by_ln)| PartDerivative { part, parameter, by_ln };
    sums.sorted().into_iter().map(each).collect()
}
