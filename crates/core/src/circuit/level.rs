//! How much passes at a frequency, with its slope.

use alloc::vec::Vec;
use core::f64::consts::PI;

use super::{Complex, Fault, GROUND, Level, NodeId, Response, Sweep, footing::Footing};

impl Response {
    /// How d(volts)/d ln(frequency) of the unknowns stands at the last frequency: into `scratch`.
    fn follow(&mut self) {
        let Response { network, elimination, coils, capacitors, x, scratch, omega, .. } = self;
        scratch.fill(Complex::ZERO);
        let mut add = |footing: &Footing, by_ln_omega: Complex| {
            let across = x[footing.row.0] - x[footing.row.1] + Complex::real(footing.offset);
            scratch[footing.row.0] -= by_ln_omega * across;
            scratch[footing.row.1] += by_ln_omega * across;
        };
        for (footing, farads) in capacitors.iter() {
            add(footing, Complex::new(0.0, *omega * farads));
        }
        for (footing, henries, ohms) in coils.iter() {
            let admittance = Complex::new(*ohms, *omega * henries).inverse();
            add(footing, Complex::new(0.0, -*omega * henries) * admittance * admittance);
        }
        elimination.solve(&network.order, scratch);
    }

    /// Level of a node at a frequency, against a signal of 1 V, with its slope: what a [`Sweep`] scans.
    pub fn level(&mut self, hertz: f64, node: NodeId) -> Result<Level, Fault> {
        self.level_between(hertz, node, GROUND)
    }

    /// As [`Response::level`], of the volts from one node to another.
    pub fn level_between(&mut self, hertz: f64, node: NodeId, reference: NodeId) -> Result<Level, Fault> {
        self.at(hertz)?;
        let volts = self.volts_of(&self.x, node) - self.volts_of(&self.x, reference);
        self.follow();
        let row = |node: NodeId| self.network.row.get(node.0).map_or(Complex::ZERO, |row| self.scratch[*row]);
        let slope = ((row(node) - row(reference)) / volts).re;
        Ok(Level { ln_gain: volts.ln_magnitude(), slope: if slope.is_finite() { slope } else { 0.0 } })
    }

    /// Scans the level of a node from `least` to `most` hertz, closer where a coil and a capacitor may resonate.
    ///
    /// ```
    /// use tagstrip_core::circuit::{Circuit, GROUND, Kind, Part};
    ///
    /// // 10 ohms, 1 mH and 1 nF in series, the output across the capacitor: a peak near 159 kHz, Q = 100
    /// let mut circuit = Circuit::new();
    /// let (source, tap, output) = (circuit.node("source"), circuit.node("tap"), circuit.node("output"));
    /// circuit.add(Part::new("Vin", "source", &[source, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
    /// circuit.add(Part::new("L1", "coil", &[source, tap], Kind::Coil { henries: 1e-3, ohms: 10.0 }));
    /// circuit.add(Part::new("R1", "wire", &[tap, output], Kind::Resistor { ohms: 0.0 }));
    /// circuit.add(Part::new("C1", "capacitor", &[output, GROUND], Kind::Capacitor { farads: 1e-9 }));
    /// let mut response = circuit.response(&circuit.dc().unwrap()).unwrap();
    /// let mut sweep = response.sweep(output, 0.01, 100e6, 6).unwrap();
    /// assert!((sweep.greatest().ln_gain.exp() - 100.0).abs() < 0.01);
    /// let corners = sweep.corners().unwrap();
    /// let width = corners.high.unwrap() - corners.low.unwrap();
    /// assert!((sweep.greatest().hertz / width - 100.0).abs() < 0.1);
    /// ```
    pub fn sweep(
        &mut self,
        node: NodeId,
        least: f64,
        most: f64,
        per_decade: u32,
    ) -> Result<Sweep<impl FnMut(f64) -> Result<Level, Fault> + use<'_>>, Fault> {
        let pairs = self.coils.iter().flat_map(|(_, henries, _)| {
            self.capacitors.iter().map(move |(_, farads)| 1.0 / (2.0 * PI * crate::root::sqrt(henries * farads)))
        });
        let resonances: Vec<f64> = pairs.filter(|hertz| hertz.is_finite()).collect();
        Sweep::new(least, most, per_decade, &resonances, move |hertz| self.level(hertz, node))
    }
}
