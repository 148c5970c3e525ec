use alloc::{string::String, vec, vec::Vec};

use super::Amplifier;
use crate::text::together;
use crate::{
    calculators::{
        Outcome, TestPoint, WiringStep,
        bench::{Buying, Point, TubeAtSocket, describe, meter_ohms, parts, pin_at, test_points, wiring},
        solved,
    },
    circuit::{DcPoint, NodeId, TubePoint},
    value::{Inputs, Problem},
};

/// The stage with no signal: direct volts and currents, and the tube's state.
pub(in crate::calculators) struct Rest {
    pub dc: DcPoint,
    pub tube: TubePoint,
}

impl Rest {
    /// # Errors
    /// `no_solution` where the dc point is not found, naming the node.
    pub fn of(amplifier: &Amplifier) -> Result<Self, Vec<Problem>> {
        let dc = solved(amplifier.circuit.dc())?;
        let tube = amplifier.valve.and_then(|valve| dc.tube(valve));
        let none = TubePoint { grid_volts: 0.0, plate_volts: 0.0, amps: 0.0, gm: 0.0, gp: 0.0 };
        Ok(Rest { dc, tube: tube.unwrap_or(none) })
    }

    pub fn plate_watts(&self) -> f64 {
        self.tube.amps * self.tube.plate_volts
    }
}

/// Under this a tube is cut off, and its plate resistance and mu say nothing.
const NO_CURRENT: f64 = 1e-12;

/// The rest state's answers, the same in every calculator with a triode.
pub(in crate::calculators) fn answer_rest(outcome: &mut Outcome, amplifier: &Amplifier, rest: &Rest) {
    let flows = rest.tube.amps > NO_CURRENT && rest.tube.gp > 0.0;
    outcome.answer("plate_amps", rest.tube.amps);
    outcome.answer("plate_volts", rest.dc.volts(amplifier.plate));
    outcome.answer("cathode_volts", rest.dc.volts(amplifier.cathode));
    outcome.answer("bias_volts", rest.tube.grid_volts);
    outcome.answer("plate_watts", rest.plate_watts());
    outcome.answer("gm", rest.tube.gm);
    outcome.answer("plate_resistance", flows.then(|| 1.0 / rest.tube.gp));
    outcome.answer("mu", flows.then(|| rest.tube.gm / rest.tube.gp));
}

/// What to read at each point that a lead can reach, dc to ground, and the heater.
///
/// # Errors
/// `no_solution` where the dc point with the meter on is not found.
pub(in crate::calculators) fn readings(
    inputs: &Inputs,
    amplifier: &Amplifier,
    rest: &Rest,
    output: NodeId,
) -> Result<Vec<TestPoint>, Vec<Problem>> {
    let mut nodes = vec![amplifier.supply];
    if amplifier.decoupled != amplifier.supply {
        nodes.push(amplifier.decoupled);
    }
    nodes.extend([amplifier.plate, amplifier.cathode, amplifier.grid, output]);
    nodes.retain(|node| *node != crate::circuit::GROUND);
    let sockets = [amplifier.socket()];
    let points = nodes.into_iter().map(|node| Point {
        node,
        name: String::from(amplifier.circuit.name(node)),
        pin: pin_at(&sockets, node),
    });
    let mut readings = solved(test_points(&amplifier.circuit, &rest.dc, points.collect(), meter_ohms(inputs)))?;
    readings.extend(amplifier.tube.row.map(heater));
    Ok(readings)
}

/// Mains within 5 %: the sheet's heater volts move with it. Common practice, no source.
const MAINS: f64 = 0.05;

fn heater(tube: &crate::tube::Tube) -> TestPoint {
    let volts = tube.heater_supply().0;
    TestPoint {
        name: "heater".into(),
        pin: None,
        unit: "V",
        nominal: volts,
        least: volts * (1.0 - MAINS),
        most: volts * (1.0 + MAINS),
        usual_least: volts * (1.0 - MAINS),
        usual_most: volts * (1.0 + MAINS),
    }
}

/// The leads of what comes before and after the stage: their parts are not bought here, but the stage is dumb without them.
fn from_elsewhere(steps: &mut Vec<WiringStep>, amplifier: &Amplifier, sockets: &[TubeAtSocket]) {
    let Some(source) = amplifier.source.and_then(|source| amplifier.circuit.part(source)) else { return };
    let name = if source.role == "microphone" { "mic" } else { "source" };
    let grid = pin_at(sockets, amplifier.grid).unwrap_or_else(|| String::from("grid"));
    let ground = || String::from("ground");
    let leads = [
        (String::from(name), grid),
        (together(&[name, "_return"]), ground()),
        (String::from("output_return"), ground()),
        (String::from("supply_return"), ground()),
    ];
    for (from, to) in leads {
        steps.push(WiringStep { from, to, part: None, step: steps.len() + 1 });
    }
}

/// Fills in what is wanted of parts, test points, wiring and netlist.
///
/// # Errors
/// As [`readings`].
pub(in crate::calculators) fn bench(
    outcome: &mut Outcome,
    want: crate::calculators::Want,
    inputs: &Inputs,
    amplifier: &Amplifier,
    rest: &Rest,
    output: NodeId,
) -> Result<(), Vec<Problem>> {
    let sockets = [amplifier.socket()];
    if want.parts {
        let cold_volts = libm::fabs(inputs.number("supply_volts"));
        let buying = Buying { dc: &rest.dc, cold_volts, tube: &amplifier.tube.name };
        outcome.parts = parts(&amplifier.circuit, &buying);
    }
    if want.test_points {
        outcome.test_points = readings(inputs, amplifier, rest, output)?;
    }
    if want.wiring {
        outcome.wiring = wiring(&amplifier.circuit, &sockets, &amplifier.seen_as);
        from_elsewhere(&mut outcome.wiring, amplifier, &sockets);
    }
    if want.circuit {
        outcome.circuit = Some(describe(&amplifier.circuit, &rest.dc, &sockets, &amplifier.seen_as));
    }
    Ok(())
}
