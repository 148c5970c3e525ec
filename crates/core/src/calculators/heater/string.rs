//! Heaters as resistors on a winding. All volts are rms.

use alloc::vec::Vec;

use crate::text::{counted, together};
use crate::{
    circuit::{Circuit, GROUND, Kind, NodeId, Part, PartId},
    tube::{self, Tube},
    value::{Inputs, Value},
};

const BETWEEN: [&str; 12] = ["h1", "h2", "h3", "h4", "h5", "h6", "h7", "h8", "h9", "h10", "h11", "h12"];

/// Usual tolerances where none is written with the value. Common practice, no source.
const RESISTOR: f64 = 0.05;
const HEATER: f64 = 0.05;
const MAINS: f64 = 0.05;

/// How a heater's ends are used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way {
    /// It has two ends and no more.
    Whole,
    /// It has a tap, which is left alone.
    EndToEnd,
    /// Its halves are side by side, from both ends to the tap.
    Halves,
}

impl Way {
    pub fn code(self) -> &'static str {
        match self {
            Way::Whole => "whole",
            Way::EndToEnd => "end_to_end",
            Way::Halves => "halves",
        }
    }
}

/// One heater as it is joined.
pub(super) struct Heater {
    pub tube: Option<&'static Tube>,
    pub way: Way,
    pub volts: f64,
    pub amps: f64,
    pub cathode_volts: f64,
}

impl Heater {
    fn of(item: &Value) -> Self {
        let figure = |key: &str| item.get(key).and_then(Value::number).unwrap_or(0.0);
        let tube = item.get("tube").and_then(Value::text).and_then(tube::tube);
        let tapped = matches!(item.get("tapped"), Some(Value::Flag(true)));
        let (volts, amps, tapped) = match tube {
            Some(row) => (row.heater.volts, row.heater.amps, row.heater.tapped),
            None => (figure("volts"), figure("amps"), tapped),
        };
        let way = if tapped { Way::EndToEnd } else { Way::Whole };
        Heater { tube, way, volts, amps, cathode_volts: figure("cathode_volts") }
    }

    /// Uses the tap if that brings it nearer, by ratio, to the volts or amperes there are.
    fn settle(&mut self, have: f64, own: f64, halved: f64) {
        let off = |figure: f64| libm::fabs(libm::log(figure / have));
        if self.way == Way::EndToEnd && have > 0.0 && off(halved) < off(own) {
            self.way = Way::Halves;
            self.volts /= 2.0;
            self.amps *= 2.0;
        }
    }

    pub fn ohms(&self) -> f64 {
        self.volts / self.amps
    }

    /// The pins at either end, as joined; none for a heater of the person's own.
    pub fn pins(&self) -> Option<[&'static [u8]; 2]> {
        let sides = self.tube?.heater_pins();
        match (self.way, sides) {
            (Way::EndToEnd, [[first, second], _]) => {
                Some([core::slice::from_ref(first), core::slice::from_ref(second)])
            }
            _ => Some(sides),
        }
    }
}

/// The heaters and the winding that feeds them.
pub(super) struct Lot {
    pub heaters: Vec<Heater>,
    pub series: bool,
    pub circuit: Circuit,
    pub winding: PartId,
    /// Where the heaters begin.
    pub top: NodeId,
    pub parts: Vec<PartId>,
    winding_volts: f64,
    /// In line with them but for the series resistor.
    line_ohms: f64,
}

impl Lot {
    pub fn of(inputs: &Inputs) -> Self {
        let series = inputs.text("arrangement") == "series";
        let winding_volts = inputs.number("winding_volts");
        let mut heaters: Vec<Heater> = inputs.items("heaters").iter().map(Heater::of).collect();
        let untapped = heaters.iter().find(|heater| heater.way == Way::Whole).map_or(0.0, |heater| heater.amps);
        for heater in &mut heaters {
            let (volts, amps) = (heater.volts, heater.amps);
            if series {
                heater.settle(untapped, amps, 2.0 * amps);
            } else {
                heater.settle(winding_volts, volts, 0.5 * volts);
            }
        }
        let mut circuit = Circuit::new();
        let emf = circuit.node("winding");
        let source = Kind::Source { volts: winding_volts, signal: 0.0 };
        let source = Part::new("T1", "heater_winding", &[emf, GROUND], source).from_field("winding_volts");
        let winding = circuit.add(source.within(MAINS));
        let mut here = emf;
        let line = [
            ("RW", "winding_resistance", "winding_ohms", "behind_winding"),
            ("RL", "lead", "lead_ohms", "behind_leads"),
            ("R1", "heater_resistor", "series_ohms", "behind_resistor"),
        ];
        for (reference, role, field, next) in line {
            let ohms = inputs.number(field);
            if ohms > 0.0 {
                let to = circuit.node(next);
                let part = Part::new(reference, role, &[here, to], Kind::Resistor { ohms }).from_field(field);
                circuit.add(part.within(inputs.tolerance(field).unwrap_or(RESISTOR)));
                here = to;
            }
        }
        let line_ohms = inputs.number("winding_ohms") + inputs.number("lead_ohms");
        let mut lot = Lot { heaters, series, circuit, winding, top: here, parts: Vec::new(), winding_volts, line_ohms };
        lot.join();
        lot
    }

    fn join(&mut self) {
        let count = self.heaters.len();
        let mut below = GROUND;
        for (index, heater) in self.heaters.iter().enumerate() {
            let last = index + 1 == count;
            let above = match BETWEEN.get(index).filter(|_| self.series && !last) {
                Some(name) => self.circuit.node(name),
                None => self.top,
            };
            let ends = [above, if self.series { below } else { GROUND }];
            let reference = together(&["V", &counted(index + 1)]);
            let key = if heater.tube.is_some() { "].tube" } else { "].volts" };
            let field = together(&["heaters[", &counted(index), key]);
            let part = Part::new(reference, "heater", &ends, Kind::Resistor { ohms: heater.ohms() });
            self.parts.push(self.circuit.add(part.from_field(field).within(HEATER)));
            below = above;
        }
    }

    /// The series resistor that gives the heaters what they are rated for, and its watts: the least of the volts where
    /// they stand side by side, the least of the amperes in a string. 0 where the winding gives no more than that.
    pub fn resistor(&self) -> (f64, f64) {
        let least = |figure: fn(&Heater) -> f64| self.heaters.iter().map(figure).fold(f64::INFINITY, f64::min);
        let (volts, amps) = if self.series {
            let amps = least(|heater| heater.amps);
            (amps * self.heaters.iter().map(Heater::ohms).sum::<f64>(), amps)
        } else {
            let volts = least(|heater| heater.volts);
            (volts, self.heaters.iter().map(|heater| volts / heater.ohms()).sum())
        };
        let ohms = f64::max(0.0, (self.winding_volts - volts) / amps - self.line_ohms);
        (ohms, amps * amps * ohms)
    }
}
