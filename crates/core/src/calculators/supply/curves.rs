use alloc::{string::String, vec, vec::Vec};

use super::{settled::settle_supply, work::Worked};
use crate::{
    calculators::{Curve, Line},
    circuit::{Start, Steps},
    quantity::Unit,
    value::{Problem, Scale},
};

/// Every so manieth sample of the ripple is drawn, and so many points of the regulation.
const STRIDE: usize = 4;
const POINTS: usize = 16;
const MOST_LOAD: f64 = 1.5;

fn over_time(key: &'static str, lines: Vec<Line>, marks: Vec<(String, f64, f64)>) -> Curve {
    Curve { key, x: (Unit::Second, Scale::Linear), y: (Unit::Volt, Scale::Linear), lines, marks }
}

/// A line a node, told apart by its number from 1.
fn lines(x: &[f64], nodes: Vec<Vec<f64>>) -> Vec<Line> {
    let line =
        |(node, y): (usize, Vec<f64>)| Line { label: "node".into(), figure: Some(node as f64 + 1.0), x: x.to_vec(), y };
    nodes.into_iter().enumerate().map(line).collect()
}

pub(super) fn curves(worked: &Worked) -> Result<Vec<Curve>, Vec<Problem>> {
    let [ripple, charging] = cycle(worked);
    Ok(vec![start(worked), ripple, charging, regulation(worked)?])
}

fn start(worked: &Worked) -> Curve {
    let warm = (worked.rectifier.warm_seconds(worked.inputs), worked.inputs.number("load_warm_seconds"));
    let Start { seconds, nodes } = Start::follow(&worked.idle.chain, &worked.loaded.chain, warm);
    let highest = |line: &Vec<f64>| {
        let most = line.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (line.iter().position(|volts| *volts >= most).unwrap_or(0), most)
    };
    let marks = nodes.last().and_then(|line| {
        let (place, most) = highest(line);
        Some(("highest".into(), *seconds.get(place)?, most))
    });
    let marks = marks.into_iter().collect();
    over_time("start", lines(&seconds, nodes), marks)
}

/// One cycle: the ripple at each node, and the pulses that charge them.
fn cycle(worked: &Worked) -> [Curve; 2] {
    let trace = worked.loaded.cycle.trace(STRIDE);
    let nodes = trace.nodes.into_iter().zip(&worked.loaded.reading.volts);
    let about = nodes.map(|(line, mean)| line.into_iter().map(|volts| volts - mean).collect()).collect();
    let ripple = over_time("ripple", lines(&trace.seconds, about), Vec::new());
    let line = Line { label: "charging".into(), figure: None, x: trace.seconds, y: trace.amps };
    [ripple, Curve { y: (Unit::Ampere, Scale::Linear), ..over_time("charging", vec![line], Vec::new()) }]
}

fn regulation(worked: &Worked) -> Result<Curve, Vec<Problem>> {
    let count = worked.idle.volts.len();
    let mut drawn = Vec::new();
    let mut nodes = vec![Vec::new(); count];
    let lit = worked.regulator.as_ref().map(|given| (given, worked.idle.strikes));
    for point in 0..=POINTS {
        let share = MOST_LOAD * point as f64 / POINTS as f64;
        let (amps, volts) = if point == 0 {
            let (amps, siemens) = worked.idle.chain.drawn();
            (amps + siemens * worked.idle.volts.first().copied().unwrap_or(0.0), worked.idle.volts.clone())
        } else {
            let settled = settle_supply(&worked.supply, share, lit, Steps::ROUGH, None)?;
            (settled.reading.amps, settled.reading.volts)
        };
        drawn.push(amps);
        for (line, volts) in nodes.iter_mut().zip(volts) {
            line.push(volts);
        }
    }
    let reading = &worked.loaded.reading;
    let last = reading.volts.last().copied().unwrap_or(0.0);
    let mut marks = vec![("here".into(), reading.amps, last)];
    if let Some(row) = worked.rectifier.row {
        let rated = row.amps * worked.plates_share();
        let place = drawn.partition_point(|amps| *amps < rated).clamp(1, drawn.len() - 1);
        let line = nodes.last().map_or(&[][..], Vec::as_slice);
        if let ([.., a, b], [.., low, high]) = (&drawn[..=place], line.get(..=place).unwrap_or(&[])) {
            let share = ((rated - a) / (b - a)).clamp(0.0, 1.0);
            marks.push(("rated".into(), rated, low + share * (high - low)));
        }
    }
    Ok(Curve {
        key: "regulation",
        x: (Unit::Ampere, Scale::Linear),
        y: (Unit::Volt, Scale::Linear),
        lines: lines(&drawn, nodes),
        marks,
    })
}
