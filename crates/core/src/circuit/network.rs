//! A circuit laid flat for one kind of analysis: two-terminal branches, tubes, and the unknowns they stand between.

use alloc::vec::Vec;

use super::{
    Circuit, Complex, Fault, Kind, NodeId, Parameter, PartId,
    footing::{Footing, ValveFooting},
    islands::join_islands,
    order::Order,
    rigid::{Mode, Rigid},
};
use crate::tube::Triode;

/// What a branch does with the volts across it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Law {
    Conductance(f64),
    Capacitance(f64),
    Inductance { henries: f64, ohms: f64 },
}

impl Law {
    pub(super) fn admittance(self, omega: f64) -> Complex {
        match self {
            Law::Conductance(siemens) => Complex::real(siemens),
            Law::Capacitance(farads) => Complex::new(0.0, omega * farads),
            Law::Inductance { henries, ohms } => Complex::new(ohms, omega * henries).inverse(),
        }
    }
}

/// Two terminals of one part.
#[derive(Clone, Copy, Debug)]
pub(super) struct Branch {
    /// None for the leakage that defines a node nothing else does.
    pub part: Option<PartId>,
    pub a: NodeId,
    pub b: NodeId,
    /// The part's terminals at `a` and `b`.
    pub ends: (usize, usize),
    pub law: Law,
    /// What the law's figure is called.
    pub parameter: Parameter,
    /// For a potentiometer's piece, d ln(conductance) / d ln(setting).
    pub by_setting: f64,
}

/// A tube.
#[derive(Clone, Copy, Debug)]
pub(super) struct Valve {
    pub part: PartId,
    pub plate: NodeId,
    pub grid: NodeId,
    pub cathode: NodeId,
    pub law: Triode,
}

/// See the module.
#[derive(Clone, Debug)]
pub(super) struct Network {
    pub rigid: Rigid,
    pub branches: Vec<Branch>,
    pub valves: Vec<Valve>,
    pub order: Order,
    /// Number of terminals of each part.
    pub terminals: Vec<usize>,
    /// Row of each node: its class's place in the order of elimination; ground's is the last, one past the unknowns.
    pub row: Vec<usize>,
    /// Names of the unknowns, by row.
    pub names: Vec<&'static str>,
}

impl Network {
    pub(super) fn new(circuit: &Circuit, mode: Mode) -> Result<Self, Fault> {
        let rigid = Rigid::new(circuit, mode)?;
        let mut branches = Vec::with_capacity(circuit.part_list().len() + 8);
        let mut valves = Vec::new();
        for (id, part) in circuit.parts() {
            let mut branch = |first: usize, second: usize, law: Law, parameter: Parameter, by_setting: f64| {
                let (a, b) = (part.node(first), part.node(second));
                branches.push(Branch { part: Some(id), a, b, ends: (first, second), law, parameter, by_setting });
            };
            match part.kind {
                Kind::Resistor { ohms } if ohms > 0.0 => {
                    branch(0, 1, Law::Conductance(1.0 / ohms), Parameter::Ohms, 0.0);
                }
                Kind::Capacitor { farads } if farads > 0.0 => {
                    branch(0, 1, Law::Capacitance(farads), Parameter::Farads, 0.0);
                }
                Kind::Coil { henries, ohms } if mode == Mode::Ac && (henries > 0.0 || ohms > 0.0) => {
                    branch(0, 1, Law::Inductance { henries, ohms }, Parameter::Henries, 0.0);
                }
                Kind::Coil { ohms, .. } if mode == Mode::Dc && ohms > 0.0 => {
                    branch(0, 1, Law::Conductance(1.0 / ohms), Parameter::Ohms, 0.0);
                }
                Kind::Coupled { henries: [one, other], coupling } if mode == Mode::Ac => {
                    // The inverse of the matrix of inductances, as six branches; two pairs are negative.
                    let left = 1.0 - coupling * coupling;
                    let across = crate::root::sqrt(one * other) * left / coupling;
                    for (first, second, henries) in [
                        (0, 1, one * left),
                        (2, 3, other * left),
                        (0, 2, across),
                        (1, 3, across),
                        (0, 3, -across),
                        (1, 2, -across),
                    ] {
                        if part.node(first) != part.node(second) {
                            branch(first, second, Law::Inductance { henries, ohms: 0.0 }, Parameter::Henries, 0.0);
                        }
                    }
                }
                Kind::Potentiometer { ohms, setting } => {
                    let (above, below) = (ohms * (1.0 - setting), ohms * setting);
                    if above > 0.0 {
                        branch(0, 1, Law::Conductance(1.0 / above), Parameter::Ohms, setting / (1.0 - setting));
                    }
                    if below > 0.0 {
                        branch(1, 2, Law::Conductance(1.0 / below), Parameter::Ohms, -1.0);
                    }
                }
                Kind::Triode { law, grid_plate_farads, grid_cathode_farads, plate_cathode_farads } => {
                    for (first, second, farads, parameter) in [
                        (1, 0, grid_plate_farads, Parameter::GridPlateFarads),
                        (1, 2, grid_cathode_farads, Parameter::GridCathodeFarads),
                        (0, 2, plate_cathode_farads, Parameter::PlateCathodeFarads),
                    ] {
                        if farads > 0.0 {
                            branch(first, second, Law::Capacitance(farads), parameter, 0.0);
                        }
                    }
                    let (plate, grid, cathode) = (part.node(0), part.node(1), part.node(2));
                    valves.push(Valve { part: id, plate, grid, cathode, law });
                }
                _ => {}
            }
        }
        join_islands(&rigid, &mut branches, &valves, mode);
        Ok(Self::laid(circuit, rigid, branches, valves))
    }

    fn laid(circuit: &Circuit, rigid: Rigid, branches: Vec<Branch>, valves: Vec<Valve>) -> Self {
        let unknowns = rigid.unknowns();
        let class = |node: NodeId| rigid.class[node.0];
        let mut order = Order::pattern(unknowns);
        for branch in &branches {
            order.join(class(branch.a), class(branch.b));
            order.join(class(branch.b), class(branch.a));
        }
        for valve in &valves {
            let (plate, grid, cathode) = (class(valve.plate), class(valve.grid), class(valve.cathode));
            for (row, column) in [(plate, grid), (plate, cathode), (cathode, grid), (cathode, plate)] {
                order.join(row, column);
            }
        }
        let order = order.compile();
        let row = rigid.class.iter().map(|class| order.place(*class)).collect();
        let mut names = alloc::vec!["ground"; unknowns + 1];
        for (class, root) in rigid.root.iter().enumerate() {
            names[order.place(class)] = circuit.name(*root);
        }
        let terminals = circuit.part_list().iter().map(|part| part.nodes.len().max(4)).collect();
        Network { rigid, branches, valves, order, terminals, row, names }
    }

    pub(super) fn unknowns(&self) -> usize {
        self.rigid.unknowns()
    }

    /// Where the term `y·(v(a) - v(b))` of the currents leaving `a` and `b` stands.
    pub(super) fn footing(&self, a: NodeId, b: NodeId) -> Footing {
        let (row_a, row_b) = (self.row[a.0], self.row[b.0]);
        let offset = self.rigid.offset[a.0] - self.rigid.offset[b.0];
        Footing { slot: (self.order.slot(row_a, row_b), self.order.slot(row_b, row_a)), row: (row_a, row_b), offset }
    }

    /// Volts of a node above ground, from the unknowns (ground's place included) and the known part.
    pub(super) fn volts(&self, unknowns: &[f64], node: NodeId) -> f64 {
        unknowns[self.row[node.0]] + self.rigid.offset[node.0]
    }

    pub(super) fn valve_footing(&self, valve: &Valve) -> ValveFooting {
        let row = |node: NodeId| self.row[node.0];
        let offset = |node: NodeId| self.rigid.offset[node.0];
        let (plate, grid, cathode) = (row(valve.plate), row(valve.grid), row(valve.cathode));
        ValveFooting {
            plate,
            grid,
            cathode,
            plate_to_grid: self.order.slot(plate, grid),
            plate_to_cathode: self.order.slot(plate, cathode),
            cathode_to_grid: self.order.slot(cathode, grid),
            cathode_to_plate: self.order.slot(cathode, plate),
            grid_offset: offset(valve.grid) - offset(valve.cathode),
            plate_offset: offset(valve.plate) - offset(valve.cathode),
        }
    }
}
