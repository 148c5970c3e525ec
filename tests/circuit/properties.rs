//! What must hold whatever the circuit: an answer, finite, that obeys Kirchhoff and follows its inputs without a jump.

use proptest::{prelude::*, test_runner::Config};
use tagstrip_core::{
    circuit::{Circuit, GROUND, Kind, NodeId, Part, Unreached},
    tube::Triode,
};

/// One tube with what hangs on it.
#[derive(Clone, Debug)]
struct Stage {
    law: Triode,
    plate_ohms: f64,
    cathode_ohms: f64,
    /// What the grid hangs on: 0 ground, 1 volts of its own, 2 nothing but a capacitor, 3 the plate before.
    grid: usize,
    grid_ohms: f64,
    grid_volts: f64,
    bypass_farads: f64,
}

fn log(least: f64, most: f64) -> impl Strategy<Value = f64> {
    (least..most).prop_map(|exponent| 10f64.powf(exponent))
}

fn or_none(value: impl Strategy<Value = f64> + 'static) -> BoxedStrategy<f64> {
    prop_oneof![1 => Just(0.0), 6 => value].boxed()
}

fn stage() -> impl Strategy<Value = Stage> {
    let law = (log(-5.0, -2.0), 2.0..120.0, 0.0..0.6, -0.5..1.0)
        .prop_map(|(perveance, mu, mu_spread, contact_volts)| Triode { perveance, mu, mu_spread, contact_volts });
    let resistors = (or_none(log(-3.0, 9.0)), or_none(log(-3.0, 9.0)), or_none(log(-3.0, 9.0)));
    (law, resistors, 0..4usize, -60.0..60.0, or_none(log(-14.0, -1.0))).prop_map(
        |(law, (plate_ohms, cathode_ohms, grid_ohms), grid, grid_volts, bypass_farads)| Stage {
            law,
            plate_ohms,
            cathode_ohms,
            grid,
            grid_ohms,
            grid_volts,
            bypass_farads,
        },
    )
}

const NAMES: [[&str; 4]; 3] = [["p1", "g1", "k1", "c1"], ["p2", "g2", "k2", "c2"], ["p3", "g3", "k3", "c3"]];

fn build(supply_volts: f64, stages: &[Stage], coupling: f64) -> Circuit {
    let mut circuit = Circuit::new();
    let (supply, source) = (circuit.node("supply"), circuit.node("source"));
    let put = |circuit: &mut Circuit, a: NodeId, b: NodeId, kind: Kind| {
        circuit.add(Part::new("", "", &[a, b], kind));
    };
    put(&mut circuit, supply, GROUND, Kind::Source { volts: supply_volts, signal: 0.0 });
    put(&mut circuit, source, GROUND, Kind::Source { volts: 0.0, signal: 1.0 });
    let mut before = source;
    for (stage, names) in stages.iter().zip(NAMES) {
        let [plate, grid, cathode, cell] = names.map(|name| circuit.node(name));
        put(&mut circuit, supply, plate, Kind::Resistor { ohms: stage.plate_ohms });
        put(&mut circuit, cathode, GROUND, Kind::Resistor { ohms: stage.cathode_ohms });
        put(&mut circuit, cathode, GROUND, Kind::Capacitor { farads: stage.bypass_farads });
        match stage.grid {
            0 => put(&mut circuit, grid, GROUND, Kind::Resistor { ohms: stage.grid_ohms }),
            1 => {
                put(&mut circuit, cell, GROUND, Kind::Source { volts: stage.grid_volts, signal: 0.0 });
                put(&mut circuit, grid, cell, Kind::Resistor { ohms: 1.0 + stage.grid_ohms });
            }
            2 => {}
            _ => put(&mut circuit, before, grid, Kind::Resistor { ohms: stage.grid_ohms }),
        }
        if stage.grid != 3 {
            put(&mut circuit, before, grid, Kind::Capacitor { farads: coupling });
        }
        let tube = Kind::Triode {
            law: stage.law,
            grid_plate_farads: 2e-12,
            grid_cathode_farads: 1.5e-12,
            plate_cathode_farads: 0.5e-12,
        };
        circuit.add(Part::new("", "", &[plate, grid, cathode], tube));
        before = plate;
    }
    circuit
}

proptest! {
    #![proptest_config(Config { cases: 1500, failure_persistence: None, ..Config::default() })]

    #[test]
    fn every_circuit_of_tubes_has_a_dc_point_that_obeys_kirchhoff(
        volts in 0.0..450.0f64, stages in prop::collection::vec(stage(), 1..4), coupling in or_none(log(-14.0, -4.0)),
    ) {
        let circuit = build(volts, &stages, coupling);
        let point = circuit.dc();
        prop_assert!(point.is_ok(), "{:?}", point.err());
        let point = point.unwrap();
        let (mut sum, mut turned) = (0.0, 0.0);
        for (id, part) in circuit.parts() {
            prop_assert!((0..part.nodes.len()).all(|terminal| point.terminal_amps(id, terminal).is_finite()));
            sum += point.watts(id);
            turned += point.watts(id).abs();
        }
        prop_assert!(sum.abs() <= 1e-9 * turned + 1e-12, "power {} of {}", sum, turned);
        for (node, _) in circuit.nodes() {
            prop_assert!(point.volts(node).is_finite());
            prop_assert!(point.sensitivities(node).iter().all(|one| one.by_ln.is_finite()));
        }
        // from its own answer the search stays there
        let again = circuit.dc_from(&point).unwrap();
        for (node, _) in circuit.nodes() {
            prop_assert!((again.volts(node) - point.volts(node)).abs() <= 1e-9 * (volts + 1.0));
        }
    }

    #[test]
    fn every_response_is_finite(
        volts in 0.0..450.0f64, stages in prop::collection::vec(stage(), 1..4), coupling in log(-14.0, -4.0), hertz in log(-2.0, 9.0),
    ) {
        let circuit = build(volts, &stages, coupling);
        let point = circuit.dc().unwrap();
        let mut response = circuit.response(&point).unwrap();
        for (node, _) in circuit.nodes() {
            let level = response.level(hertz, node).unwrap();
            prop_assert!(level.ln_gain.is_finite() && level.slope.is_finite());
            let mut phasors = response.at(hertz).unwrap();
            prop_assert!(phasors.impedance(node).square().is_finite());
            let all = phasors.sensitivities(&point, node);
            prop_assert!(all.iter().all(|one| one.ln_gain_by_ln.is_finite() && one.radians_by_ln.is_finite()));
        }
    }

    #[test]
    fn a_small_change_makes_no_jump(
        volts in 20.0..450.0f64, mut one in stage(), which in 0..4usize, coupling in log(-10.0, -5.0),
    ) {
        one.grid = one.grid.min(1);
        let before = build(volts, &[one.clone()], coupling).dc().unwrap();
        let nudge = 1.0 + 1e-7;
        match which {
            0 => one.plate_ohms *= nudge,
            1 => one.cathode_ohms *= nudge,
            2 => one.law.mu *= nudge,
            _ => one.law.perveance *= nudge,
        }
        let circuit = build(volts, &[one], coupling);
        let after = circuit.dc().unwrap();
        for (node, _) in circuit.nodes() {
            prop_assert!((after.volts(node) - before.volts(node)).abs() <= 2e-7 * (volts + 60.0));
        }
    }
}

proptest! {
    #![proptest_config(Config { cases: 150, failure_persistence: None, ..Config::default() })]

    #[test]
    fn a_drive_is_found_or_refused(
        volts in 0.0..450.0f64, stages in prop::collection::vec(stage(), 1..3), coupling in log(-10.0, -5.0), wanted in log(-3.0, 3.0),
    ) {
        let circuit = build(volts, &stages, coupling);
        let point = circuit.dc().unwrap();
        let periodic = circuit.periodic(&point, 1000.0, 32).unwrap();
        let plate = circuit.find_node("p1").unwrap();
        for steady in [periodic.greatest(), periodic.reaching(plate, GROUND, wanted), periodic.driven(wanted)] {
            match steady {
                Ok(steady) => {
                    prop_assert!(steady.drive() > 0.0 && steady.drive().is_finite());
                    prop_assert!((0..=7).all(|harmonic| steady.harmonic(plate, harmonic).square().is_finite()));
                }
                Err(why) => prop_assert!(matches!(
                    why,
                    Unreached::AtRest | Unreached::NotDriven | Unreached::OutOfReach | Unreached::NoConvergence
                )),
            }
        }
    }
}
