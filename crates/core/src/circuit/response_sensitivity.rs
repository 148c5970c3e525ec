//! How the response follows the parts, by way of the matrix and by way of the dc point.

use alloc::vec::Vec;

use super::{
    Complex, DcPoint, NodeId, Parameter, PartId, Phasors, ResponseDerivative, TubePoint,
    network::{Law, Valve},
    sums::{Sums, by_source},
};
use crate::tube::Triode;

impl Phasors<'_> {
    /// How magnitude and phase of a node's volts follow each figure of each part, at this frequency and around this dc
    /// point (the one the response was made from). Empty where the node has no volts.
    ///
    /// Exact derivatives from the matrix, but for the curvature of the tubes' law, which is taken by differences of its
    /// exact gm and gp (about 1e-5 of itself).
    #[must_use]
    pub fn sensitivities(&mut self, point: &DcPoint, node: NodeId) -> Vec<ResponseDerivative> {
        let volts = self.volts(node);
        if volts == Complex::ZERO {
            return Vec::new();
        }
        let sums = self.gradient(point, node);
        let each = |(part, parameter, by_ln): (PartId, Parameter, Complex)| {
            let relative = by_ln / volts;
            ResponseDerivative { part, parameter, ln_gain_by_ln: relative.re, radians_by_ln: relative.im }
        };
        sums.sorted().into_iter().map(each).collect()
    }

    fn gradient(&mut self, point: &DcPoint, node: NodeId) -> Sums<Complex> {
        let mut sums = Sums::new();
        let Some(weights) = self.weigh(node) else { return sums };
        let response = &*self.response;
        let network = &response.network;
        let across = |a: NodeId, b: NodeId| weights[a.0] - weights[b.0];
        for branch in &network.branches {
            let (weight, admittance) = (across(branch.a, branch.b), branch.law.admittance(response.omega));
            let Some(part) = branch.part else { continue };
            let by_admittance = -(weight * self.volts_between(branch.a, branch.b));
            match branch.law {
                Law::Conductance(siemens) => sums.add(part, branch.parameter, by_admittance.scale(-siemens)),
                Law::Capacitance(_) => sums.add(part, branch.parameter, by_admittance * admittance),
                Law::Inductance { henries, ohms } => {
                    let by_impedance = -(by_admittance * admittance * admittance);
                    let reactance = Complex::new(0.0, response.omega * henries);
                    sums.add(part, Parameter::Henries, by_impedance * reactance);
                    if ohms > 0.0 {
                        sums.add(part, Parameter::Ohms, by_impedance.scale(ohms));
                    }
                }
            }
            if branch.by_setting != 0.0 {
                sums.add(part, Parameter::Setting, (by_admittance * admittance).scale(branch.by_setting));
            }
        }
        for valve in &network.valves {
            let weight = across(valve.plate, valve.cathode);
            let by_gm = -(weight * self.volts_between(valve.grid, valve.cathode));
            let by_gp = -(weight * self.volts_between(valve.plate, valve.cathode));
            if let Some(tube) = point.tube(valve.part) {
                by_way_of_dc(&mut sums, point, valve, &tube, (by_gm, by_gp));
            }
        }
        for (part, by_volt) in by_source(network, self.by_node(&weights, node)) {
            if let Some(signal) = network.rigid.volts(part).filter(|signal| *signal != 0.0) {
                sums.add(part, Parameter::Signal, by_volt.scale(signal));
            }
        }
        sums
    }
}

/// What each figure does by moving one tube's gm and gp.
fn by_way_of_dc(
    sums: &mut Sums<Complex>,
    point: &DcPoint,
    valve: &Valve,
    tube: &TubePoint,
    (by_gm, by_gp): (Complex, Complex),
) {
    let curvature = Curvature::of(&valve.law, tube.grid_volts, tube.plate_volts);
    let by_grid = by_gm.scale(curvature.gm_by_grid) + by_gp.scale(curvature.gm_by_plate);
    let by_plate = by_gm.scale(curvature.gm_by_plate) + by_gp.scale(curvature.gp_by_plate);
    for (electrode, by_volt) in [(valve.grid, by_grid), (valve.plate, by_plate)] {
        for (part, parameter, by_ln) in point.gradient(&[(electrode, 1.0), (valve.cathode, -1.0)]).sorted() {
            sums.add(part, parameter, by_volt.scale(by_ln));
        }
    }
    sums.add(valve.part, Parameter::Perveance, by_gm.scale(tube.gm) + by_gp.scale(tube.gp));
    sums.add(valve.part, Parameter::Mu, by_gm.scale(curvature.gm_by_ln_mu) + by_gp.scale(curvature.gp_by_ln_mu));
}

/// How gm and gp change.
struct Curvature {
    gm_by_grid: f64,
    gm_by_plate: f64,
    gp_by_plate: f64,
    gm_by_ln_mu: f64,
    gp_by_ln_mu: f64,
}

impl Curvature {
    fn of(law: &Triode, grid: f64, plate: f64) -> Self {
        // A tenth of the volts in which the emission in deep cut-off changes by e, referred to each electrode.
        let grid_step = 0.01;
        let plate_step = f64::min(grid_step * law.mu, plate / 16.0);
        let at = |steps: f64| law.plate(grid + steps * grid_step, plate);
        let gm_by_grid = slope(|k| at(k).gm, grid_step);
        if plate_step <= 0.0 {
            return Curvature { gm_by_grid, gm_by_plate: 0.0, gp_by_plate: 0.0, gm_by_ln_mu: 0.0, gp_by_ln_mu: 0.0 };
        }
        let along = |steps: f64| law.plate(grid, plate + steps * plate_step);
        // In cut-off the plate's share of the drive moves by (plate / mu) times this.
        let mu_step = f64::min(1e-2, 0.01 * law.mu / plate);
        let other = |steps: f64| Triode { mu: law.mu * (1.0 + steps * mu_step), ..*law }.plate(grid, plate);
        Curvature {
            gm_by_grid,
            gm_by_plate: slope(|k| at(k).gp, grid_step),
            gp_by_plate: slope(|k| along(k).gp, plate_step),
            gm_by_ln_mu: slope(|k| other(k).gm, mu_step),
            gp_by_ln_mu: slope(|k| other(k).gp, mu_step),
        }
    }
}

/// Derivative by central differences of the fourth order.
fn slope(value: impl Fn(f64) -> f64, step: f64) -> f64 {
    (8.0 * (value(1.0) - value(-1.0)) - (value(2.0) - value(-2.0))) / (12.0 * step)
}
