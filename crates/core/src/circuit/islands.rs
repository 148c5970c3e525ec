//! Nodes that no current can reach, and what defines their volts.

use alloc::{vec, vec::Vec};

use super::{
    GROUND, Parameter,
    network::{Branch, Law, Valve},
    rigid::{Mode, Rigid},
    sets::Sets,
};

/// Leakage of a capacitor that holds an otherwise undefined node: its conductance per farad (a time constant of thirty
/// thousand years: through the node it also joins those on its other sides, and must not show there). In proportion to the farads, so that the node stands where the capacitances alone would divide the volts.
const LEAK_PER_FARAD: f64 = 1e-12;

/// From a node that nothing at all defines, to ground.
const LAST_LEAK: f64 = 1e-15;

/// Adds leakage to the branches so that every class has a path to ground: across capacitors to those that have none, and
/// from those that have no capacitor either to ground. In dc the capacitors that carry no leakage are taken out.
///
/// A tube is half a path: a lone one can only be cut off, two in series (a cascode) define the node between them.
pub(super) fn join_islands(rigid: &Rigid, branches: &mut Vec<Branch>, valves: &[Valve], mode: Mode) {
    let mut sets = Sets::apart(rigid.root.len());
    let class = |branch: &Branch| (rigid.class[branch.a.0], rigid.class[branch.b.0]);
    for branch in branches.iter() {
        if mode == Mode::Ac || matches!(branch.law, Law::Conductance(_)) {
            let (a, b) = class(branch);
            sets.join(a, b);
        }
    }
    let mut tubes = vec![0; rigid.root.len()];
    for valve in valves {
        let (plate, cathode) = (sets.of(rigid.class[valve.plate.0]), sets.of(rigid.class[valve.cathode.0]));
        if plate != cathode {
            tubes[plate] += 1;
            tubes[cathode] += 1;
        }
    }
    let adrift: Vec<bool> =
        (0..rigid.root.len()).map(|class| sets.of(class) != 0 && tubes[sets.of(class)] < 2).collect();
    if mode == Mode::Dc {
        branches.retain_mut(|branch| {
            let Law::Capacitance(farads) = branch.law else { return true };
            let (a, b) = class(branch);
            branch.law = Law::Conductance(farads * LEAK_PER_FARAD);
            branch.parameter = Parameter::Leakage;
            a != b && (adrift[a] || adrift[b])
        });
        for branch in branches.iter() {
            let (a, b) = class(branch);
            sets.join(a, b);
        }
    }
    for valve in valves {
        let (plate, cathode) = (rigid.class[valve.plate.0], rigid.class[valve.cathode.0]);
        if !adrift[plate] && !adrift[cathode] {
            sets.join(plate, cathode);
        }
    }
    for class in 1..rigid.root.len() {
        if sets.of(class) != 0 {
            sets.join(class, 0);
            let law = Law::Conductance(LAST_LEAK);
            let (a, b, ends) = (rigid.root[class], GROUND, (0, 1));
            branches.push(Branch { part: None, a, b, ends, law, parameter: Parameter::Leakage, by_setting: 0.0 });
        }
    }
}
