//! The steady state under a sinusoidal drive large enough that the tubes are no longer linear.

mod balance;
mod goal;
mod ports;
mod steady;
mod walk;
mod waves;

use alloc::vec::Vec;

use super::{Circuit, Complex, DcPoint, Fault, NodeId, PartId, TubePoint};
use crate::tube::Triode;
use balance::State;
use goal::{Excess, Goal};
use ports::Ports;
pub use steady::Steady;
use waves::Waves;

/// What a drive is limited by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// The peak of this tube's grid reaches 0 V to its cathode.
    GridPeak(PartId),
    /// This tube's plate current falls to one hundredth of its rest.
    PlateCurrent(PartId),
}

/// Why there is no such steady state.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unreached {
    /// A bound is passed without any drive, or there is no tube that could set one.
    AtRest,
    /// The signal does not get there.
    NotDriven,
    /// No drive does it: what it makes grows no further.
    OutOfReach,
    /// The solution was not found within the bound on the work.
    NoConvergence,
}

/// A tube and its rest.
#[derive(Clone, Copy, Debug)]
struct Valve {
    part: PartId,
    law: Triode,
    rest: TubePoint,
}

/// A circuit made ready for its steady states at one fundamental frequency.
///
/// The waveform is balanced in even samples of one period: at each the tubes carry what their law says, and the volts are
/// what the linear network makes of the currents, harmonic by harmonic. Grids draw no current. With 32 samples the bounds
/// and the first harmonics are good to 1e-5 where the tube is not driven far into cut-off, and to 1 % where its plate
/// bottoms (a wave with corners); more samples draw nearer, and [`Steady::unresolved`] says whether they are needed.
///
/// ```
/// use tagstrip_core::circuit::{Bound, Circuit, GROUND, Kind, Part};
/// use tagstrip_core::tube::Triode;
///
/// let mut circuit = Circuit::new();
/// let (supply, plate) = (circuit.node("supply"), circuit.node("plate"));
/// let (grid, cathode) = (circuit.node("grid"), circuit.node("cathode"));
/// circuit.add(Part::new("B1", "supply", &[supply, GROUND], Kind::Source { volts: 250.0, signal: 0.0 }));
/// circuit.add(Part::new("Vin", "source", &[grid, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
/// circuit.add(Part::new("R3", "plate", &[supply, plate], Kind::Resistor { ohms: 100e3 }));
/// circuit.add(Part::new("R2", "cathode", &[cathode, GROUND], Kind::Resistor { ohms: 1500.0 }));
/// circuit.add(Part::new("C2", "cathode", &[cathode, GROUND], Kind::Capacitor { farads: 25e-6 }));
/// let law = Triode { perveance: 0.98e-3, mu: 105.0, mu_spread: 0.2, contact_volts: 0.31 };
/// let farads = (1.6e-12, 1.6e-12, 0.5e-12);
/// let tube = circuit.add(Part::new("V1", "tube", &[plate, grid, cathode], Kind::Triode {
///     law, grid_plate_farads: farads.0, grid_cathode_farads: farads.1, plate_cathode_farads: farads.2,
/// }));
/// let rest = circuit.dc().unwrap();
/// let periodic = circuit.periodic(&rest, 1000.0, 32).unwrap();
/// let most = periodic.greatest().unwrap();
/// assert_eq!(most.bound(), Some(Bound::GridPeak(tube)));
/// let half = periodic.reaching(plate, GROUND, 0.5 * most.volts_rms(plate)).unwrap();
/// assert!(half.distortion(plate) < most.distortion(plate));
/// ```
///
/// # Source
/// M. S. Nakhla and J. Vlach, "A piecewise harmonic balance technique for determination of periodic response of
/// nonlinear systems", IEEE Trans. Circuits Syst. 23 (1976), with the balance taken at the samples.
#[derive(Clone, Debug)]
pub struct Periodic {
    waves: Waves,
    ports: Ports,
    tubes: Vec<Valve>,
    /// Grid and plate volts of each tube in the samples, for the sources' signal.
    drive_waves: Vec<(Vec<f64>, Vec<f64>)>,
    nodes: usize,
}

impl Periodic {
    pub(super) fn new(circuit: &Circuit, point: &DcPoint, hertz: f64, samples: usize) -> Result<Self, Fault> {
        let waves = Waves::new(samples.clamp(16, 4096));
        let ports = Ports::new(circuit, point, hertz, &waves)?;
        let wave =
            |phasor: Complex| -> Vec<f64> { (0..waves.samples()).map(|n| (phasor * waves.turn(n, 1)).re).collect() };
        let drive_waves = ports.drive.iter().map(|(grid, plate)| (wave(*grid), wave(*plate))).collect();
        let valves = point.network.valves.iter().zip(&point.tubes).take(ports.drive.len());
        let tubes = valves.map(|(valve, rest)| Valve { part: valve.part, law: valve.law, rest: *rest }).collect();
        Ok(Periodic { waves, ports, tubes, drive_waves, nodes: circuit.node_count() })
    }

    /// The steady state with the sources' signal times `drive`.
    pub fn driven(&self, drive: f64) -> Result<Steady, Unreached> {
        let (state, excess) = self.walk_to(drive)?;
        Ok(self.steady(&state, &excess))
    }

    /// The steady state of the smallest drive that meets a bound: a grid's peak at 0 V, or a plate current's least at one
    /// hundredth of its rest.
    pub fn greatest(&self) -> Result<Steady, Unreached> {
        if self.tubes.is_empty()
            || self.tubes.iter().any(|tube| tube.rest.grid_volts >= 0.0 || tube.rest.amps <= LEAST_REST)
        {
            return Err(Unreached::AtRest);
        }
        self.reach(Goal::FirstBound)
    }

    /// The steady state whose fundamental between two nodes is that many volts rms.
    pub fn reaching(&self, node: NodeId, reference: NodeId, volts_rms: f64) -> Result<Steady, Unreached> {
        self.reach(Self::fundamental(node, reference, volts_rms))
    }

    fn reach(&self, goal: Goal) -> Result<Steady, Unreached> {
        let guess = self.first_guess(goal).ok_or(Unreached::NotDriven)?;
        let start = self.state(alloc::vec![0.0; self.tubes.len() * self.waves.samples()], guess);
        let (state, excess) = match self.balance(goal, start) {
            Ok(found) => found,
            Err(_) => self.walk(goal, guess)?,
        };
        Ok(self.steady(&state, &excess))
    }

    fn steady(&self, state: &State, excess: &Excess) -> Steady {
        let samples = self.waves.samples();
        let mut phasors = Vec::new();
        for (harmonic, influence) in self.ports.node_influence.iter().enumerate() {
            let mut volts = alloc::vec![Complex::ZERO; self.nodes];
            if harmonic == 1 {
                for (volts, drive) in volts.iter_mut().zip(&self.ports.node_drive) {
                    *volts = drive.scale(state.drive);
                }
            }
            for (tube, influence) in influence.chunks_exact(self.nodes).enumerate() {
                let amps = self.waves.harmonic(&state.more[tube * samples..(tube + 1) * samples], harmonic);
                for (volts, influence) in volts.iter_mut().zip(influence) {
                    *volts += *influence * amps;
                }
            }
            phasors.push(volts);
        }
        let (mut extremes, mut unresolved) = (Vec::new(), 0.0);
        for (tube, valve) in self.tubes.iter().enumerate() {
            let range = tube * samples..(tube + 1) * samples;
            let grid_peak = valve.rest.grid_volts + self.waves.greatest(&state.grid[range]).value;
            let amps = state.amps(self, tube);
            extremes.push((valve.part, grid_peak, self.waves.least(&amps).value));
            let size = |harmonic: usize| self.waves.harmonic(&amps, harmonic).magnitude();
            let highest = self.waves.highest();
            unresolved = f64::max(unresolved, f64::max(size(highest), size(highest - 1)) / size(1).max(LEAST_REST));
        }
        Steady::new(state.drive, excess.bound, phasors, extremes, unresolved)
    }

    fn drive_at(&self, node: NodeId) -> Complex {
        self.ports.node_drive.get(node.0).copied().unwrap_or(Complex::ZERO)
    }

    fn influence_at(&self, harmonic: usize, tube: usize, node: NodeId) -> Complex {
        let at = self.ports.node_influence.get(harmonic).and_then(|nodes| nodes.get(tube * self.nodes + node.0));
        at.copied().unwrap_or(Complex::ZERO)
    }
}

/// A tube that rests below this many amperes is cut off.
const LEAST_REST: f64 = 1e-12;
