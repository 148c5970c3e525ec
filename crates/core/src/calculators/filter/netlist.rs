use alloc::{string::String, vec::Vec};

use crate::text::{counted, together};
use crate::{
    circuit::{Circuit, GROUND, Kind, NodeId, Part},
    value::{Inputs, Problem, Value, code},
};

/// Ladder nodes from source to load, and the nodes inside branches of several parts.
const LADDER: [&str; 12] = ["n1", "n2", "n3", "n4", "n5", "n6", "n7", "n8", "n9", "n10", "n11", "n12"];
const INSIDE: [&str; 24] = [
    "m1", "m2", "m3", "m4", "m5", "m6", "m7", "m8", "m9", "m10", "m11", "m12", "m13", "m14", "m15", "m16", "m17",
    "m18", "m19", "m20", "m21", "m22", "m23", "m24",
];

/// A ladder between its source and its load.
pub(super) struct Ladder {
    pub circuit: Circuit,
    pub input: NodeId,
    pub output: NodeId,
}

struct Builder<'a> {
    circuit: Circuit,
    inputs: &'a Inputs,
    counts: [usize; 3],
    inside: usize,
}

/// The circuit of `inputs`, branches from source to load.
///
/// # Errors
/// A branch without a part in it, by its path.
pub(super) fn build(inputs: &Inputs) -> Result<Ladder, Vec<Problem>> {
    let mut builder = Builder { circuit: Circuit::new(), inputs, counts: [0; 3], inside: 0 };
    let branches = inputs.items("branches");
    let empty = |branch: &Value| ["ohms", "farads", "henries"].iter().all(|key| branch.get(key).is_none());
    let problems: Vec<Problem> = (0..branches.len())
        .filter(|index| branches.get(*index).is_some_and(empty))
        .map(|index| Problem::new(together(&["branches[", &counted(index), "]"]), code::EMPTY_BRANCH))
        .collect();
    if !problems.is_empty() {
        return Err(problems);
    }
    let source = builder.circuit.node("source");
    builder.circuit.add(Part::new("Source", "source", &[source, GROUND], Kind::Source { volts: 0.0, signal: 1.0 }));
    let series = branches.iter().filter(|branch| place(branch) == "series").count();
    let source_ohms = inputs.number("source_ohms");
    let mut names = LADDER.iter();
    let mut left = series;
    let mut next = |builder: &mut Builder, left: usize| {
        let name = if left == 0 { "output" } else { names.next().copied().unwrap_or("output") };
        builder.circuit.node(name)
    };
    let input = if source_ohms > 0.0 { next(&mut builder, left) } else { source };
    if source_ohms > 0.0 {
        builder.resistor("Rs", "source_resistance", "source_ohms", [source, input], source_ohms);
    }
    let mut here = input;
    for (index, branch) in branches.iter().enumerate() {
        let to = if place(branch) == "series" {
            left -= 1;
            next(&mut builder, left)
        } else {
            GROUND
        };
        builder.branch(index, branch, [here, to]);
        if to != GROUND {
            here = to;
        }
    }
    builder.resistor("RL", "load", "load_ohms", [here, GROUND], inputs.number("load_ohms"));
    Ok(Ladder { circuit: builder.circuit, input, output: here })
}

fn place(branch: &Value) -> &str {
    branch.get("place").and_then(Value::text).unwrap_or("")
}

impl Builder<'_> {
    fn branch(&mut self, index: usize, branch: &Value, ends: [NodeId; 2]) {
        let parallel = branch.get("together").and_then(Value::text) == Some("parallel");
        let given: Vec<(usize, &str, f64)> = ["ohms", "farads", "henries"]
            .into_iter()
            .enumerate()
            .filter_map(|(sort, key)| Some((sort, key, branch.get(key)?.number()?)))
            .collect();
        let mut from = ends[0];
        for (place, (sort, key, figure)) in given.iter().copied().enumerate() {
            let last = place + 1 == given.len();
            let to = if parallel || last { ends[1] } else { self.inner() };
            self.part(
                sort,
                &together(&["branches[", &counted(index), "].", key]),
                [if parallel { ends[0] } else { from }, to],
                figure,
            );
            from = to;
        }
    }

    fn inner(&mut self) -> NodeId {
        let name = INSIDE.get(self.inside).copied().unwrap_or("m24");
        self.inside += 1;
        self.circuit.node(name)
    }

    fn part(&mut self, sort: usize, field: &str, nodes: [NodeId; 2], figure: f64) {
        self.counts[sort] += 1;
        let count = self.counts[sort];
        let (letter, role, kind) = match sort {
            0 => ("R", "branch_resistor", Kind::Resistor { ohms: figure }),
            1 => ("C", "branch_capacitor", Kind::Capacitor { farads: figure }),
            _ => ("L", "branch_coil", Kind::Coil { henries: figure, ohms: 0.0 }),
        };
        let reference: String = together(&[letter, &counted(count)]);
        let tolerance = self.inputs.tolerance(field).unwrap_or(if sort == 0 { 0.05 } else { 0.10 });
        self.circuit.add(Part::new(reference, role, &nodes, kind).from_field(field).within(tolerance));
    }

    fn resistor(&mut self, reference: &str, role: &'static str, field: &str, nodes: [NodeId; 2], ohms: f64) {
        let part = Part::new(reference, role, &nodes, Kind::Resistor { ohms });
        self.circuit.add(part.from_field(field).within(self.inputs.tolerance(field).unwrap_or(0.05)));
    }
}
