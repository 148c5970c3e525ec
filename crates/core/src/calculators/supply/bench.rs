//! What a builder takes to the bench: parts, readings, joins, the netlist.

use alloc::{string::String, vec::Vec};

use super::{
    netlist::{PERVEANCE, Supply},
    settled::settle_supply,
    work::Worked,
};
use crate::{
    calculators::{
        Outcome, PartRow, TestPoint, Want,
        bench::{Socket, banded, describe_with, is_fed, join_parts, meter_ohms, standard_volts, standard_watts},
    },
    circuit::{Cycle, GROUND, Kind, NodeId, Part, PartId, Steps},
    value::{Problem, Value},
};

pub(super) fn bench(outcome: &mut Outcome, want: Want, worked: &Worked) -> Result<(), Vec<Problem>> {
    let supply = &worked.supply;
    let sockets = sockets(worked);
    if want.parts {
        let bought = supply.circuit.parts().filter(|(_, part)| !is_fed(part) && !part.reference.is_empty());
        outcome.parts = bought.map(|(id, part)| row(worked, id, part)).collect();
    }
    if want.test_points {
        outcome.test_points = readings(worked, &sockets)?;
    }
    if want.wiring {
        outcome.wiring = join_parts(&supply.circuit, &sockets, &[]);
    }
    if want.circuit {
        let volts = |node: NodeId| worked.volts(node);
        outcome.circuit = Some(describe_with(&supply.circuit, &volts, &sockets, &[]));
    }
    Ok(())
}

impl Worked<'_> {
    /// Mean volts of a node of the drawing, to ground.
    pub fn volts(&self, node: NodeId) -> f64 {
        let place = self.supply.nodes.iter().position(|own| *own == node);
        let known = place.and_then(|place| self.loaded.reading.volts.get(place).copied());
        let reading = &self.loaded.reading;
        let first = reading.volts.first().copied().unwrap_or(0.0);
        match self.supply.circuit.name(node) {
            _ if known.is_some() => known.unwrap_or(0.0),
            "rectified" => {
                first + self.loaded.chain.rungs.first().map_or(0.0, crate::circuit::Rung::ohms) * reading.amps
            }
            "middle" => 0.5 * first,
            _ => 0.0,
        }
    }

    /// Share of a tube's direct rating that one conducting plate or two have.
    pub fn plates_share(&self) -> f64 {
        if matches!(self.inputs.text("rectifier_circuit"), "half-wave" | "doubler") { 0.5 } else { 1.0 }
    }
}

fn sockets<'a>(worked: &'a Worked) -> Vec<Socket<'a>> {
    let circuit = &worked.supply.circuit;
    let tubes = circuit.parts().filter_map(|(_, part)| match part.kind {
        Kind::Rectifier { .. } => {
            let row = worked.rectifier.row?;
            let [first, second, cathode, heater, other] = row.pins;
            let (plates, to) = (part.nodes.len() - 1, *part.nodes.last()?);
            let mut pins = alloc::vec![(first, "plate_1", part.nodes.first().copied())];
            pins.push((second, "plate_2", (plates > 1).then(|| part.nodes.get(1).copied()).flatten()));
            pins.push((cathode, if row.filament { "filament" } else { "cathode_1" }, Some(to)));
            pins.extend([(heater, "heater", None), (other, "heater", None)]);
            Some(Socket {
                reference: &part.reference,
                name: row.name,
                base: row.base,
                pins,
                heater: [&row.pins[3..4], &row.pins[4..]],
            })
        }
        Kind::Regulator { .. } => {
            let row = worked.regulator.as_ref()?.row?;
            let nodes = (part.nodes.first().copied(), part.nodes.get(1).copied());
            let pins = alloc::vec![(row.pins.0, "plate_1", nodes.0), (row.pins.1, "cathode_1", nodes.1)];
            Some(Socket { reference: &part.reference, name: row.name, base: row.base, pins, heater: [&[], &[]] })
        }
        _ => None,
    });
    tubes.collect()
}

/// The line of a parts list, with the rule its size was found by.
fn row(worked: &Worked, id: PartId, part: &Part) -> PartRow {
    let mut row = PartRow {
        reference: part.reference.clone(),
        role: part.role,
        kind: part.kind.name(),
        field: part.field.clone(),
        tolerance: (part.tolerance > 0.0).then_some(part.tolerance),
        value: part.kind.value().map(Value::Number),
        ..PartRow::default()
    };
    let reading = &worked.loaded.reading;
    let place = |of: fn(&super::netlist::Section) -> Option<PartId>| {
        worked.supply.sections.iter().position(|section| of(section) == Some(id))
    };
    match part.kind {
        Kind::Resistor { ohms } => {
            let (watts, volts) = if let Some(k) = place(|section| section.series) {
                (worked.section_watts()[k], crate::root::sqrt(reading.series_square[k]) * ohms)
            } else {
                let volts = worked.high_line(worked.idle.volts.last().copied().unwrap_or(0.0));
                (volts * volts / ohms, volts)
            };
            row.watts = Some(standard_watts(watts, volts));
            row.rule = "twice_watts";
        }
        Kind::Coil { .. } => {
            let k = place(|section| section.series).unwrap_or(0);
            row.amps = Some(crate::root::sqrt(reading.series_square[k]));
            row.rule = "choke_current";
        }
        Kind::Capacitor { .. } => {
            let k = place(|section| section.capacitor).unwrap_or(0);
            let halves = if part.role == "doubler_capacitor" { 0.5 } else { 1.0 };
            row.volts = Some(standard_volts(halves * worked.high_line(worked.idle.volts[k])));
            row.amps = Some(reading.capacitor_amps[k]);
            row.rule = "no_load_high_line";
        }
        Kind::Winding { .. } => {
            row.amps = Some(worked.winding_rms());
            row.rule = "winding_rms";
        }
        Kind::Diode { .. } => {
            row.kind = "rectifier";
            row.value = Some(Value::Text(String::from("silicon")));
            row.volts = Some(1.5 * worked.high_line(worked.inverse_volts));
            row.amps = Some(reading.amps);
            row.rule = "inverse_half_again";
        }
        Kind::Rectifier { .. } => {
            row.kind = "tube";
            row.value = Some(Value::Text(worked.rectifier.name.clone()));
        }
        Kind::Regulator { .. } => {
            row.kind = "tube";
            row.value = worked.regulator.as_ref().map(|given| Value::Text(given.name.clone()));
        }
        _ => {}
    }
    row
}

/// Mean volts at each node with the meter on it, and how far they may be off.
fn readings(worked: &Worked, sockets: &[Socket]) -> Result<Vec<TestPoint>, Vec<Problem>> {
    let supply = &worked.supply;
    let base = means(worked, supply, None)?;
    let mut reaches: Vec<Vec<f64>> = base.0.iter().map(|_| Vec::new()).collect();
    for (id, part) in supply.circuit.parts().filter(|(_, part)| part.tolerance > 0.0) {
        for kind in varied(part.kind, part.tolerance) {
            let mut other = supply.clone();
            other.circuit.set(id, kind);
            let moved = means(worked, &other, Some(&base.1))?;
            for ((reach, volts), base) in reaches.iter_mut().zip(&moved.0).zip(&base.0) {
                reach.push(libm::fabs(volts - base));
            }
        }
    }
    let meter = meter_ohms(worked.inputs);
    let mut points = Vec::new();
    for (k, node) in supply.nodes.iter().enumerate() {
        if supply.nodes[..k].contains(node) {
            continue;
        }
        let mut metered = supply.clone();
        let reads = metered.circuit.add(Part::new("", "meter", &[*node, GROUND], Kind::Resistor { ohms: meter }));
        metered.sections[k].meter = Some(reads);
        let nominal = means(worked, &metered, Some(&base.1))?.0[k];
        let pin = sockets.iter().find_map(|socket| socket.pin_at(*node));
        points.push(banded(supply.circuit.name(*node).into(), pin, nominal, &reaches[k]));
    }
    Ok(points)
}

fn means(worked: &Worked, supply: &Supply, near: Option<&Cycle>) -> Result<(Vec<f64>, Cycle), Vec<Problem>> {
    let lit = worked.regulator.as_ref().map(|given| (given, worked.idle.strikes));
    let settled = settle_supply(supply, 1.0, lit, Steps::ROUGH, near)?;
    Ok((settled.reading.volts, settled.cycle))
}

/// The part at the end of its tolerance, a figure at a time.
fn varied(kind: Kind, share: f64) -> Vec<Kind> {
    let more = 1.0 + share;
    match kind {
        Kind::Resistor { ohms } => alloc::vec![Kind::Resistor { ohms: ohms * more }],
        Kind::Capacitor { farads } => alloc::vec![Kind::Capacitor { farads: farads * more }],
        Kind::Coil { henries, ohms } => {
            alloc::vec![Kind::Coil { henries: henries * more, ohms }, Kind::Coil { henries, ohms: ohms * more }]
        }
        Kind::Winding { volts, ohms } => {
            alloc::vec![
                Kind::Winding { volts: volts * more, ohms },
                Kind::Winding { volts, ohms: ohms * (1.0 + 2.0 * share) }
            ]
        }
        Kind::Load { amps } => alloc::vec![Kind::Load { amps: amps * more }],
        Kind::Rectifier { perveance } => alloc::vec![Kind::Rectifier { perveance: perveance * (1.0 + PERVEANCE) }],
        _ => Vec::new(),
    }
}
