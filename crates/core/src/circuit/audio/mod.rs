//! A circuit in time, for sound: the tubes not linear, the grids drawing current.

mod bracket;
mod half_band;
mod ports;
mod reduced;
mod small;

use alloc::{vec, vec::Vec};

use super::{Circuit, DcPoint, Fault, NodeId};
use half_band::HalfBand;
use ports::Ports;
use reduced::Reduced;

/// A circuit that a sampled emf is sent through, from one node's volts.
///
/// Every capacitor and coil is its companion of the trapezoidal rule, at twice the rate of the samples; the network is
/// reduced once to the tubes' ports, so that a step costs a few hundred multiplications and a Newton on two unknowns a
/// tube, begun where the last steps point. Where that fails, as where a plate bottoms, a bracket cannot. Sources at
/// their direct volts give the rest; their signal is multiplied by the samples. Grids draw current by the tube's law,
/// also at rest.
///
/// Against the response of the same circuit, small signals are within 0.1 dB to a twelfth of the rate and within
/// 0.25 dB to a sixth.
///
/// # Source
/// L. W. Nagel, *SPICE2* thesis, UCB/ERL M520 (1975), chapter 4 (companion models), from memory; the reduction is that
/// of K-method simulation: G. Borin, G. De Poli, D. Rocchesso, IEEE Trans. Speech Audio Proc. 8 (2000), from memory.
#[derive(Clone, Debug)]
pub struct Audio {
    network: Reduced,
    ports: Ports,
    up: HalfBand,
    down: HalfBand,
    /// Companion currents, then the emf.
    state: Vec<f64>,
    /// What follows from them.
    follows: Vec<f64>,
    linear: bool,
}

impl Audio {
    pub(super) fn new(circuit: &Circuit, point: &DcPoint, output: NodeId, rate: f64) -> Result<Self, Fault> {
        let network = Reduced::new(circuit, point, output, 0.5 / rate)?;
        let ports = Ports::new(&network, point);
        let mut audio = Audio {
            up: HalfBand::new(),
            down: HalfBand::new(),
            state: vec![0.0; network.states + 1],
            follows: vec![0.0; network.width()],
            linear: false,
            network,
            ports,
        };
        audio.rest(point);
        Ok(audio)
    }

    /// The same with its tubes as straight lines through their dc point and no grid current: for a first look.
    #[must_use]
    pub fn linear(mut self) -> Self {
        self.linear = true;
        self.state.fill(0.0);
        self
    }

    /// The volts of the output node beyond its dc point for each sample of the emf, as much later as the two filters
    /// are long: [`Audio::DELAY`] samples.
    pub fn sample(&mut self, emf: f64) -> f64 {
        let (first, second) = self.up.doubled(emf);
        let (first, second) = (self.step(first), self.step(second));
        self.down.halved(first, second)
    }

    /// How many samples later the output comes.
    pub const DELAY: usize = half_band::DELAY;

    /// The highest that any grid has been to its cathode, in volts; minus infinity without a tube.
    #[must_use]
    pub fn highest_grid(&self) -> f64 {
        self.ports.highest_grid
    }

    /// The most tries that one step has taken, and how many steps needed the bracket.
    #[must_use]
    pub const fn tries(&self) -> (u32, u32) {
        (self.ports.most_tries, self.ports.bracketed)
    }

    /// The charges that grid current leaves at rest.
    fn rest(&mut self, point: &DcPoint) {
        let excess = self.ports.rest(point);
        self.network.charge(point, &excess, &mut self.state);
    }

    fn step(&mut self, emf: f64) -> f64 {
        let Audio { network, ports, state, follows, .. } = self;
        let states = network.states;
        state[states] = emf;
        network.known(state, follows);
        if !self.linear {
            ports.solve(&follows[states..states + 2 * network.tubes]);
            network.more(&ports.excess, follows);
        }
        state[..states].copy_from_slice(&follows[..states]);
        follows[follows.len() - 1]
    }
}
