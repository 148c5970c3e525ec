use alloc::{vec, vec::Vec};

use super::{
    bench, cautions, curves,
    given::{RectifierGiven, RegulatorGiven},
    netlist::Supply,
    regulated::Regulated,
    settled::{Idle, Settled, idle_volts, settle_supply},
};
use crate::{
    calculators::{Outcome, Want},
    circuit::{Chain, Connection, Cycle, Rectifier, Series, Steps, discharge_seconds, turn_on_peak},
    value::{Inputs, Problem, Value, check},
};

/// Volts that may be touched: IEC 62368-1 has 60 V dc for what anyone may touch; OSHA guards parts from 50 V.
pub(super) const TOUCHABLE: f64 = 60.0;
pub(super) const GUARDED: f64 = 50.0;

/// What a silicon diode drops where the rectifier is a tube and silicon is compared with it.
const SILICON_DROP: f64 = 0.8;

/// Everything worked once, for the answers, cautions and pictures.
pub(super) struct Worked<'a> {
    pub inputs: &'a Inputs,
    pub rectifier: RectifierGiven,
    pub regulator: Option<RegulatorGiven>,
    pub supply: Supply,
    pub loaded: Settled,
    pub idle: Idle,
    pub regulated: Option<Regulated>,
    pub discharge: [Option<f64>; 2],
    pub inverse_volts: f64,
    pub turn_on_amps: f64,
    /// Choke input only; none where no choke would do.
    pub critical_henries: Option<f64>,
    /// Ohms in series with silicon that restore the volts, and the open volts then.
    pub silicon: Option<(f64, f64)>,
}

pub(super) fn work(inputs: &Inputs, want: Want) -> Result<Outcome, Vec<Problem>> {
    worked(inputs, Steps::USUAL)?.outcome(want)
}

/// The answers with `times` as many steps, to see what the number of steps does to them.
///
/// # Errors
/// As [`work`](crate::calculators::work).
pub fn work_at(inputs: &Value, times: usize) -> Result<Value, Vec<Problem>> {
    let inputs = check(super::fields::INPUTS, inputs)?;
    let want = Want { answers: true, ..Want::default() };
    Ok(worked(&inputs, Steps::USUAL.times(times))?.outcome(want)?.describe(want))
}

fn worked(inputs: &Inputs, steps: Steps) -> Result<Worked<'_>, Vec<Problem>> {
    let rectifier = RectifierGiven::of(inputs);
    let regulator = RegulatorGiven::of(inputs);
    if inputs.text("rectifier_circuit") == "doubler" && inputs.text("sections[0].series") != "none" {
        return Err(vec![Problem::no_solution("sections[0].series", "doubler_begins_with_capacitors")]);
    }
    let supply = Supply::new(inputs, &rectifier, regulator.as_ref());
    let idle = Idle::of(&supply, regulator.as_ref())?;
    let lit = regulator.as_ref().map(|given| (given, idle.strikes));
    let loaded = settle_supply(&supply, 1.0, lit, steps, None)?;
    let regulated = match &regulator {
        Some(given) => Some(Regulated::of(inputs, &supply, given)?),
        None => None,
    };
    let dark = supply.chain(super::netlist::IDLE);
    let stands = idle.volts.first().copied().unwrap_or(0.0);
    let silicon = rectifier.perveance.and_then(|_| in_silicon(&supply, &loaded, &idle));
    Ok(Worked {
        inputs,
        discharge: [TOUCHABLE, GUARDED].map(|below| discharge_seconds(&dark, stands, below)),
        inverse_volts: inverse_volts(inputs, &idle),
        turn_on_amps: turn_on_peak(&dark),
        critical_henries: critical_henries(&loaded),
        silicon,
        rectifier,
        regulator,
        supply,
        loaded,
        idle,
        regulated,
    })
}

/// Across one rectifier while another conducts, nothing drawn.
fn inverse_volts(inputs: &Inputs, idle: &Idle) -> f64 {
    let chain = &idle.chain;
    let open = chain.open_volts() * chain.share();
    let stands = idle.volts.first().map_or(0.0, |volts| volts * chain.share());
    match inputs.text("rectifier_circuit") {
        "bridge" => chain.peak,
        // Behind a choke the cathode follows the other plate up.
        _ if chain.input_choke().is_some() && chain.connection == Connection::FullWave => chain.peak + open,
        _ => chain.peak + stands,
    }
}

/// How far over the estimate the choke is tried, so that its current is sure not to stop.
const ABOVE: [f64; 6] = [1.3, 1.05, 1.01, 1.002, 1.001, 1.001];
const DOUBLINGS: usize = 12;

/// The choke whose current just touches zero: its ripple goes as one over its inductance, and is read a little above.
/// None where no choke would do: half a wave, or nothing drawn.
fn critical_henries(loaded: &Settled) -> Option<f64> {
    let mut chain = loaded.chain.clone();
    let (_, ohms) = chain.input_choke()?;
    let mean = loaded.reading.amps;
    if chain.connection != Connection::FullWave || mean <= 1e-9 {
        return None;
    }
    let load = loaded.reading.volts.first()? / mean;
    let mut estimate = load / (6.0 * core::f64::consts::PI * chain.hertz);
    let mut near: Option<Cycle> = None;
    let mut doublings = 0;
    for above in ABOVE {
        loop {
            let henries = above * estimate;
            if let Some(first) = chain.rungs.first_mut() {
                first.series = Series::Choke { henries, ohms };
            }
            let cycle = Cycle::find(&chain, Steps::ROUGH, near.as_ref())?;
            let reading = cycle.read();
            near = Some(cycle);
            if reading.least_amps > 0.0 {
                estimate = henries * (1.0 - reading.least_amps / reading.amps);
                break;
            }
            doublings += 1;
            if doublings > DOUBLINGS {
                return None;
            }
            estimate *= 2.0;
        }
    }
    Some(estimate)
}

const SECANTS: usize = 6;

/// Silicon in the tube's place: the resistor in each path that brings node 0 back to its volts, and what the last node
/// stands at with the loads off.
fn in_silicon(supply: &Supply, loaded: &Settled, idle: &Idle) -> Option<(f64, f64)> {
    let drop = Rectifier::Drop(SILICON_DROP * supply.in_series);
    let want = *loaded.reading.volts.first()?;
    let mut chain = Chain { rectifier: drop, ..loaded.chain.clone() };
    let own = chain.ohms;
    let mut near: Option<Cycle> = None;
    let mut over = |ohms: f64| {
        chain.ohms = own + ohms;
        let cycle = Cycle::find(&chain, Steps::ROUGH, near.as_ref())?;
        let volts = *cycle.read().volts.first()?;
        near = Some(cycle);
        Some(volts - want)
    };
    let (mut a, mut over_a) = (0.0, over(0.0)?);
    let mut b = loaded.reading.rectifier_watts / f64::max(loaded.reading.square, 1e-12);
    if over_a <= 0.0 || b <= 0.0 {
        return None;
    }
    for _ in 0..SECANTS {
        let over_b = over(b)?;
        let next = b - over_b * (b - a) / (over_b - over_a);
        if !next.is_finite() {
            return None;
        }
        (a, over_a) = (b, over_b);
        b = f64::max(next, 0.0);
        if libm::fabs(b - a) <= 1e-9 * b {
            break;
        }
    }
    let open = idle_volts(&Chain { rectifier: drop, ohms: own + b, ..idle.chain.clone() }).ok()?;
    Some((b, *open.last()?))
}

impl Worked<'_> {
    fn outcome(&self, want: Want) -> Result<Outcome, Vec<Problem>> {
        let mut outcome = Outcome::default();
        if want.answers {
            self.answers(&mut outcome);
        }
        if want.cautions {
            cautions::cautions(&mut outcome, self);
        }
        if want.curves {
            outcome.curves = curves::curves(self)?;
        }
        bench::bench(&mut outcome, want, self)?;
        Ok(outcome)
    }

    /// Of one half where the winding is tapped.
    pub fn winding_rms(&self) -> f64 {
        let halves = if self.inputs.text("rectifier_circuit") == "centre-tap" { 2.0 } else { 1.0 };
        crate::root::sqrt(self.loaded.reading.square / halves)
    }

    /// Heat in what leads to each node.
    pub fn section_watts(&self) -> Vec<f64> {
        let rungs = self.loaded.chain.rungs.iter().zip(&self.loaded.reading.series_square);
        rungs.map(|(rung, square)| rung.ohms() * square).collect()
    }

    fn answers(&self, outcome: &mut Outcome) {
        let reading = &self.loaded.reading;
        outcome.answer("node_volts", reading.volts.clone());
        outcome.answer("node_ripple_pp", reading.swing.clone());
        outcome.answer("node_ripple_rms", reading.ripple.clone());
        outcome.answer("output_volts", reading.volts.last().copied());
        outcome.answer("output_ripple_pp", reading.swing.last().copied());
        outcome.answer("output_no_load_volts", self.idle.volts.last().copied());
        outcome.answer("rectifier_dc_amps", reading.amps);
        outcome.answer("peak_rectifier_amps", reading.peak_amps);
        outcome.answer("winding_rms_amps", self.winding_rms());
        outcome.answer("peak_inverse_volts", self.inverse_volts);
        outcome.answer("no_load_volts", self.idle.volts.clone());
        outcome.answer("turn_on_peak_amps", self.turn_on_amps);
        outcome.answer("discharge_seconds", self.discharge[0]);
        outcome.answer("discharge_50_seconds", self.discharge[1]);
        outcome.answer("section_watts", self.section_watts());
        outcome.answer("capacitor_ripple_amps", reading.capacitor_amps.clone());
        let last = reading.volts.last().copied().unwrap_or(0.0);
        let open = self.idle.volts.last().copied().unwrap_or(0.0);
        outcome.answer("regulation_percent", (last > 1e-3).then(|| 100.0 * (open - last) / last));
        if self.loaded.chain.input_choke().is_some() {
            outcome.answer("critical_henries", self.critical_henries);
        }
        if let Some(regulated) = &self.regulated {
            outcome.answer("regulator_amps_least", regulated.amps_least);
            outcome.answer("regulator_amps_most", regulated.amps_most);
            outcome.answer("regulator_strikes", regulated.strikes);
        }
        if let Some((ohms, volts)) = self.silicon {
            outcome.answer("silicon_series_ohms", ohms);
            outcome.answer("silicon_no_load_volts", volts);
        }
        outcome.answer("input_watts", reading.input_watts);
        outcome.answer("winding_watts", self.loaded.chain.ohms * reading.square);
        outcome.answer("rectifier_watts", reading.rectifier_watts);
    }
}
