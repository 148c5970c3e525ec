use super::{
    given::RegulatorGiven,
    netlist::Supply,
    settled::{Settled, settle_supply},
};
use crate::{
    circuit::{Kind, Steps},
    value::{Inputs, Problem},
};
use alloc::vec::Vec;

/// The gas regulator at the corners of mains and load.
pub(super) struct Regulated {
    /// Mains low, load large; 0 where it is out.
    pub amps_least: f64,
    /// Mains high, load small.
    pub amps_most: f64,
    /// Whether it strikes with the mains low and the load large.
    pub strikes: bool,
}

impl Regulated {
    pub fn of(inputs: &Inputs, supply: &Supply, given: &RegulatorGiven) -> Result<Self, Vec<Problem>> {
        let corner = |percent: &str, key: &str, lit: bool| -> Result<Settled, Vec<Problem>> {
            let mut supply = supply.clone();
            supply.mains(inputs, inputs.number(percent));
            let last = supply.sections.last().cloned().unwrap_or_default();
            if let (Some(amps), Some(load)) = (inputs.maybe(key), last.amps) {
                supply.circuit.set(load, Kind::Load { amps });
            } else if let Some(amps) = inputs.maybe(key) {
                supply.draw_last(amps);
            }
            settle_supply(&supply, 1.0, Some((given, lit)), Steps::ROUGH, None)
        };
        let dark = corner("mains_least_percent", "amps_most", false)?;
        let strikes = dark.reading.volts.last().is_some_and(|volts| *volts >= given.striking_volts);
        let amps = |settled: Settled| settled.regulator_amps.unwrap_or(0.0);
        Ok(Regulated {
            amps_least: amps(corner("mains_least_percent", "amps_most", true)?),
            amps_most: amps(corner("mains_most_percent", "amps_least", true)?),
            strikes,
        })
    }
}
