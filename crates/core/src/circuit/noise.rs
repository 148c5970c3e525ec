//! Noise at a node, and what a source does there, from one solve of the transposed matrix.

use alloc::{vec, vec::Vec};

use super::{
    Complex, NodeId, PartId, Phasors,
    network::{Law, Valve},
    sums::by_source,
};

/// Boltzmann's constant, in J/K (exact since 2019; BIPM, The International System of Units, 9th edition).
const BOLTZMANN: f64 = 1.380_649e-23;

/// A triode's plate current fluctuates as if a resistor of this over gm stood at its grid, at room temperature.
///
/// # Source
/// W. A. Harris, "Fluctuations in vacuum tube amplifiers and input systems", RCA Review 5 (1941): 2.5/gm.
const TRIODE: f64 = 2.5;

impl Phasors<'_> {
    /// Square of the noise volts at `node` in one hertz of bandwidth at this frequency, in V²/Hz, its sources independent:
    /// every resistance at `kelvin` (of coils too, and both sides of a wiper), and of every tube 2.5/gm at that
    /// temperature as a resistor in its grid's lead, which only its plate current knows of. Flicker is left out.
    ///
    /// # Source
    /// H. Nyquist, "Thermal agitation of electric charge in conductors", Phys. Rev. 32 (1928).
    pub fn noise_density(&mut self, node: NodeId, kelvin: f64) -> f64 {
        let Some(weights) = self.weigh(node) else { return 0.0 };
        let response = &*self.response;
        let across = |a: NodeId, b: NodeId| (weights[a.0] - weights[b.0]).square();
        let mut squares = 0.0;
        for branch in response.network.branches.iter().filter(|branch| branch.part.is_some()) {
            let siemens = match branch.law {
                Law::Conductance(siemens) => siemens,
                Law::Capacitance(_) => continue,
                Law::Inductance { ohms, .. } => ohms * branch.law.admittance(response.omega).square(),
            };
            squares += siemens * across(branch.a, branch.b);
        }
        for (valve, (_, gm, _)) in response.network.valves.iter().zip(&response.valves) {
            // deep in the knee gm turns over; there a triode is no amplifier, and this has nothing to say
            squares += TRIODE * gm.max(0.0) * across(valve.plate, valve.cathode);
        }
        4.0 * BOLTZMANN * kelvin * squares
    }

    /// Volts at `node` for 1 V of the source `part`'s emf alone, whatever signal it has.
    pub fn gain_from(&mut self, part: PartId, node: NodeId) -> Complex {
        let Some(weights) = self.weigh(node) else { return Complex::ZERO };
        let sums = by_source(&self.response.network, self.by_node(&weights, node));
        sums.into_iter().find(|(source, _)| *source == part).map_or(Complex::ZERO, |(_, by_volt)| by_volt)
    }

    /// Volts at `node` for 1 A that enters each node in turn; none at ground.
    pub(super) fn weigh(&mut self, node: NodeId) -> Option<Vec<Complex>> {
        let row = self.response.network.row.get(node.0).copied()?;
        let response = &mut *self.response;
        response.scratch.fill(Complex::ZERO);
        response.scratch[row] = Complex::real(1.0);
        response.elimination.solve_transposed(&response.network.order, &mut response.scratch);
        Some(response.network.row.iter().map(|row| response.scratch[*row]).collect())
    }

    /// Derivative of `node`'s volts by those of each node above its class.
    pub(super) fn by_node(&self, weights: &[Complex], node: NodeId) -> Vec<Complex> {
        let network = &self.response.network;
        let mut by_node = vec![Complex::ZERO; network.row.len()];
        by_node[node.0] = Complex::real(1.0);
        for branch in &network.branches {
            let weight = weights[branch.a.0] - weights[branch.b.0];
            let current = branch.law.admittance(self.response.omega) * weight;
            by_node[branch.a.0] -= current;
            by_node[branch.b.0] += current;
        }
        for (Valve { plate, grid, cathode, .. }, (_, gm, gp)) in network.valves.iter().zip(&self.response.valves) {
            let weight = weights[plate.0] - weights[cathode.0];
            by_node[grid.0] -= weight.scale(*gm);
            by_node[plate.0] -= weight.scale(*gp);
            by_node[cathode.0] += weight.scale(gm + gp);
        }
        by_node
    }
}
