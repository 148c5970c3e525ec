use alloc::{vec, vec::Vec};

use super::{
    given::RegulatorGiven,
    netlist::{Hung, IDLE, Supply},
};
use crate::{
    circuit::{Chain, Cycle, Reading, Steps},
    value::Problem,
};

/// A constant current is drawn in full from a node over so many volts, and in proportion below.
const SOFT: f64 = 1.0;

/// A supply that has come to rest, as far as a rectifier rests.
pub(super) struct Settled {
    pub chain: Chain,
    pub cycle: Cycle,
    pub reading: Reading,
    /// Nodes too low for their constant current.
    pub collapsed: Vec<usize>,
    /// Current of the gas regulator; none where it is out or not fitted.
    pub regulator_amps: Option<f64>,
}

fn unfound() -> Vec<Problem> {
    vec![Problem::no_solution("", "no_convergence")]
}

/// The repeating cycle of `chain`, loads drawing what their nodes allow.
pub(super) fn settle(mut chain: Chain, steps: Steps, near: Option<&Cycle>) -> Result<Settled, Vec<Problem>> {
    let asked: Vec<f64> = chain.rungs.iter().map(|rung| rung.amps).collect();
    let mut soft = vec![false; asked.len()];
    let mut cycle = Cycle::find(&chain, steps, near).ok_or_else(unfound)?;
    let mut reading = cycle.read();
    for _ in 0..3 * asked.len() {
        let short = (0..asked.len()).filter(|k| !soft[*k] && asked[*k] > 0.0 && reading.volts[*k] < SOFT);
        let lowest = short.min_by(|a, b| reading.volts[*a].total_cmp(&reading.volts[*b]));
        let again = (0..asked.len()).find(|k| soft[*k] && reading.volts[*k] > SOFT);
        let Some(node) = lowest.or(again) else { break };
        let by = asked[node] / SOFT;
        soft[node] = !soft[node];
        chain.rungs[node].amps = if soft[node] { 0.0 } else { asked[node] };
        chain.rungs[node].siemens += if soft[node] { by } else { -by };
        cycle = Cycle::find(&chain, steps, None).ok_or_else(unfound)?;
        reading = cycle.read();
    }
    let collapsed = (0..soft.len()).filter(|k| soft[*k]).collect();
    Ok(Settled { chain, cycle, reading, collapsed, regulator_amps: None })
}

/// The supply with `loads` of its loads; the gas regulator glows where it has struck and current is left for it.
pub(super) fn settle_supply(
    supply: &Supply,
    loads: f64,
    regulator: Option<(&RegulatorGiven, bool)>,
    steps: Steps,
    near: Option<&Cycle>,
) -> Result<Settled, Vec<Problem>> {
    if let Some((given, true)) = regulator {
        let mut lit = settle(supply.chain(Hung { loads, lit: true }), steps, near)?;
        let amps = (lit.reading.volts.last().copied().unwrap_or(0.0) - given.foot()) / given.ohms();
        if amps > 0.0 {
            lit.regulator_amps = Some(amps);
            return Ok(lit);
        }
    }
    settle(supply.chain(Hung { loads, lit: false }), steps, near)
}

/// The loads taken off, the bleeder kept.
pub(super) struct Idle {
    pub chain: Chain,
    pub volts: Vec<f64>,
    /// Whether the gas regulator strikes then.
    pub strikes: bool,
}

impl Idle {
    pub fn of(supply: &Supply, regulator: Option<&RegulatorGiven>) -> Result<Self, Vec<Problem>> {
        let chain = supply.chain(IDLE);
        let volts = idle_volts(&chain)?;
        let strikes = regulator.is_some_and(|given| {
            volts.last().is_some_and(|volts| *volts >= f64::max(given.striking_volts, given.foot()))
        });
        if !strikes {
            return Ok(Idle { chain, volts, strikes });
        }
        let chain = supply.chain(Hung { lit: true, ..IDLE });
        let volts = idle_volts(&chain)?;
        Ok(Idle { chain, volts, strikes })
    }
}

/// Mean volts of each node of a chain without loads: the peak where nothing at all is drawn.
pub(super) fn idle_volts(chain: &Chain) -> Result<Vec<f64>, Vec<Problem>> {
    if chain.rungs.iter().all(|rung| rung.siemens == 0.0) {
        return Ok(vec![chain.open_volts(); chain.rungs.len()]);
    }
    Ok(Cycle::find(chain, Steps::ROUGH, None).ok_or_else(unfound)?.read().volts)
}
