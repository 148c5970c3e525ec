use alloc::{vec, vec::Vec};
use core::f64::consts::PI;

use super::{
    Circuit, Complex, DcPoint, Fault, NodeId, PartId,
    currents::Currents,
    elimination::Elimination,
    footing::{Footing, ValveFooting},
    network::{Branch, Law, Network},
    newton::LEAST_GP,
    rigid::Mode,
};

/// What a circuit does with small signals around its dc point.
///
/// Every admittance is `g + jωc` and stamped once; a frequency costs one elimination and allocates nothing.
///
/// ```
/// use tagstrip_core::circuit::{Circuit, GROUND, Kind, Part};
///
/// let mut circuit = Circuit::new();
/// let (source, output) = (circuit.node("source"), circuit.node("output"));
/// circuit.add(Part::new("Vin", "source", &[source, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
/// circuit.add(Part::new("C1", "coupling", &[source, output], Kind::Capacitor { farads: 1e-9 }));
/// circuit.add(Part::new("R1", "load", &[output, GROUND], Kind::Resistor { ohms: 470e3 }));
/// let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
/// let corner = 1.0 / (2.0 * core::f64::consts::PI * 470e3 * 1e-9);
/// let gain = response.at(corner).unwrap().volts(output);
/// assert!((gain.magnitude() - 0.5f64.sqrt()).abs() < 1e-15);
/// assert!((gain.angle().to_degrees() - 45.0).abs() < 1e-12);
/// ```
#[derive(Clone, Debug)]
pub struct Response {
    pub(super) network: Network,
    pub(super) elimination: Elimination<Complex>,
    /// Real part and capacitance of each slot.
    terms: Vec<(f64, f64)>,
    /// Likewise of the currents that the sources' signal drives into each row.
    drive: Vec<(f64, f64)>,
    pub(super) coils: Vec<(Footing, f64, f64)>,
    pub(super) capacitors: Vec<(Footing, f64)>,
    /// Of each tube of the network: its place, gm and gp.
    pub(super) valves: Vec<(ValveFooting, f64, f64)>,
    /// Volts of the unknowns at the last frequency.
    pub(super) x: Vec<Complex>,
    pub(super) scratch: Vec<Complex>,
    pub(super) omega: f64,
}

impl Response {
    pub(super) fn new(circuit: &Circuit, point: &DcPoint) -> Result<Self, Fault> {
        let network = Network::new(circuit, Mode::Ac)?;
        let rows = network.unknowns() + 1;
        let (mut real, mut farads) = (vec![0.0; network.order.slots], vec![0.0; network.order.slots]);
        let (mut real_drive, mut farads_drive) = (vec![0.0; rows], vec![0.0; rows]);
        let (mut coils, mut capacitors) = (Vec::new(), Vec::new());
        for branch in &network.branches {
            let footing = network.footing(branch.a, branch.b);
            match branch.law {
                Law::Conductance(siemens) => {
                    footing.stamp(&mut real, siemens);
                    footing.inject(&mut real_drive, siemens);
                }
                Law::Capacitance(value) => {
                    footing.stamp(&mut farads, value);
                    footing.inject(&mut farads_drive, value);
                    capacitors.push((footing, value));
                }
                Law::Inductance { henries, ohms } => coils.push((footing, henries, ohms)),
            }
        }
        let mut valves = Vec::with_capacity(network.valves.len());
        for valve in &network.valves {
            let footing = network.valve_footing(valve);
            let (gm, gp) = point.tube(valve.part).map_or((0.0, LEAST_GP), |tube| (tube.gm, tube.gp.max(LEAST_GP)));
            footing.stamp(&mut real, gm, gp);
            footing.inject(&mut real_drive, -(gm * footing.grid_offset + gp * footing.plate_offset));
            valves.push((footing, gm, gp));
        }
        Ok(Response {
            elimination: Elimination::new(&network.order),
            terms: real.into_iter().zip(farads).collect(),
            drive: real_drive.into_iter().zip(farads_drive).collect(),
            coils,
            capacitors,
            valves,
            x: vec![Complex::ZERO; rows],
            scratch: vec![Complex::ZERO; rows],
            omega: 0.0,
            network,
        })
    }

    /// Factors the matrix at an angular frequency.
    pub(super) fn factor(&mut self, omega: f64) -> Result<(), Fault> {
        self.omega = omega;
        let Response { network, elimination, terms, coils, .. } = self;
        let factored = elimination.factor(&network.order, |slots| {
            for (slot, (real, farads)) in slots.iter_mut().zip(terms.iter()) {
                *slot = Complex::new(*real, omega * farads);
            }
            for (footing, henries, ohms) in coils.iter() {
                footing.stamp(slots, Complex::new(*ohms, omega * henries).inverse());
            }
        });
        factored.map_err(|row| Fault::Singular { node: network.names[row] })
    }

    /// Every node's phasor at a frequency, as long as that is the last one asked for.
    ///
    /// # Errors
    /// [`Fault::Singular`]: an undamped resonance.
    pub fn at(&mut self, hertz: f64) -> Result<Phasors<'_>, Fault> {
        self.factor(2.0 * PI * hertz)?;
        self.drive();
        Ok(Phasors { response: self })
    }

    /// Solves for the sources' signal.
    fn drive(&mut self) {
        for (x, (real, farads)) in self.x.iter_mut().zip(&self.drive) {
            *x = Complex::new(*real, self.omega * farads);
        }
        for (footing, henries, ohms) in &self.coils {
            let through = Complex::new(*ohms, self.omega * henries).inverse().scale(footing.offset);
            if footing.row.0 != footing.row.1 {
                self.x[footing.row.0] -= through;
                self.x[footing.row.1] += through;
            }
        }
        self.elimination.solve(&self.network.order, &mut self.x);
    }

    /// The phasor of a node, from the unknowns.
    pub(super) fn volts_of(&self, x: &[Complex], node: NodeId) -> Complex {
        match self.network.row.get(node.0) {
            Some(row) => x[*row] + Complex::real(self.network.rigid.offset[node.0]),
            None => Complex::ZERO,
        }
    }
}

/// The small-signal state of a circuit at one frequency. Amplitudes are those of the sources' `signal`.
#[derive(Debug)]
pub struct Phasors<'r> {
    pub(super) response: &'r mut Response,
}

impl Phasors<'_> {
    /// Volts of a node to ground.
    #[must_use]
    pub fn volts(&self, node: NodeId) -> Complex {
        self.response.volts_of(&self.response.x, node)
    }

    /// Volts from one node to another.
    #[must_use]
    pub fn volts_between(&self, node: NodeId, reference: NodeId) -> Complex {
        self.volts(node) - self.volts(reference)
    }

    /// Volts of one node over those of another; `None` where the other has none.
    #[must_use]
    pub fn transfer(&self, node: NodeId, over: NodeId) -> Option<Complex> {
        let (volts, over) = (self.volts(node), self.volts(over));
        let ratio = volts / over;
        (ratio.re.is_finite() && ratio.im.is_finite()).then_some(ratio)
    }

    /// Impedance between a node and ground, in ohms, every source's signal taken away.
    pub fn impedance(&mut self, node: NodeId) -> Complex {
        let response = &mut *self.response;
        let Some(row) = response.network.row.get(node.0).copied() else { return Complex::ZERO };
        response.scratch.fill(Complex::ZERO);
        response.scratch[row] = Complex::real(1.0);
        response.elimination.solve(&response.network.order, &mut response.scratch);
        response.scratch[row]
    }

    /// Current into a part at one of its terminals, in the order of its nodes.
    #[must_use]
    pub fn terminal_amps(&self, part: PartId, terminal: usize) -> Complex {
        let response = &*self.response;
        let admittance = |branch: &Branch| branch.law.admittance(response.omega);
        let across = |a: NodeId, b: NodeId| self.volts_between(a, b);
        let tube_amps = |tube: usize| {
            let (valve, (_, gm, gp)) = (&response.network.valves[tube], response.valves[tube]);
            self.volts_between(valve.grid, valve.cathode).scale(gm)
                + self.volts_between(valve.plate, valve.cathode).scale(gp)
        };
        Currents::new(&response.network, admittance, across, tube_amps).entering(part, terminal)
    }
}
