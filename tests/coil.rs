//! Coils against published tables and figures computed outside the project.

mod common;

use common::{Within, check, rows};
use tagstrip_core::coil::{
    MU, Winding, copper_ohm_metres, gap_term, loops, nagaoka, phi, self_farads, skin, skin_depth, turns_term,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn figures(row: &[&str]) -> Vec<f64> {
    row[..row.len() - 1].iter().map_while(|cell| cell.parse().ok()).collect()
}

fn hold(got: f64, want: f64, within: Within, what: &str) {
    assert!(within.holds(got, want), "{what}: got {got}, expected {want}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn nagaoka_is_exact_and_the_tables_are_as_near_as_they_are_known_to_be() {
    let table = rows(include_str!("vectors/coil_nagaoka.tsv"));
    assert!(table.len() > 150);
    for row in table {
        let f = figures(&row);
        // The exact column has eight figures or more, and 1/(D/l) one rounding.
        hold(nagaoka(f[0]), f[2], Within::Absolute(6e-8), row[0]);
        hold(nagaoka(f[0]), f[1], Within::Absolute(f[3]), row[0]);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn very_flat_coils_join_the_series_without_a_step() {
    let (under, over) = (nagaoka(0.999_999_9e-3), nagaoka(1.000_001e-3));
    hold(over, under, Within::Relative(3e-6), "step");
    // K → (2l/πD)·(ln(4D/l) − ½), Rayleigh and Niven (from memory).
    let ratio = 1e-5;
    let flat = 2.0 * ratio / std::f64::consts::PI * ((4.0_f64 / ratio).ln() - 0.5);
    hold(nagaoka(ratio), flat, Within::Relative(1e-8), "flat");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_corrections_for_round_wire_are_exact() {
    for row in rows(include_str!("vectors/coil_rosa_a.tsv")) {
        let f = figures(&row);
        hold(gap_term(f[0]), f[2], Within::Absolute(6e-6), row[0]);
        hold(gap_term(f[0]) - 0.25, f[1], Within::Absolute(2e-4), row[0]);
    }
    for row in rows(include_str!("vectors/coil_rosa_b.tsv")) {
        let f = figures(&row);
        hold(turns_term(f[0]), f[2], Within::Absolute(6e-8), row[0]);
        hold(turns_term(f[0]), f[1], Within::Absolute(1.2e-3), row[0]);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn circles_have_maxwells_mutual_inductance() {
    check(include_str!("vectors/coil_loops.tsv"), Within::Relative(6e-8), |[first, second, apart]: [f64; 3]| {
        1e6 * loops(0.01 * first, 0.01 * second, 0.01 * apart)
    });
    check(include_str!("vectors/coil_loops_f.tsv"), Within::Relative(2e-9), |[near]: [f64; 1]| {
        // Two circles of 1 cm whose far distance is 1/near of the near one: d² = 4·near²/(1 − near²) cm².
        let apart = 0.02 * near / (1.0 - near * near).sqrt();
        1e6 * loops(0.01, 0.01, apart)
    });
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn skin_effect_is_that_of_bessel_functions() {
    for row in rows(include_str!("vectors/coil_skin.tsv")) {
        let f = figures(&row);
        // The table's own argument, √2·radius/depth, for the column beside it is rounded.
        let skin = skin(f[0] / std::f64::consts::SQRT_2);
        hold(skin.resistance, f[2], Within::Relative(2e-8), row[0]);
        hold(skin.inner, f[3], Within::Either(2e-8, 6e-9), row[0]);
    }
    for row in rows(include_str!("vectors/coil_copper.tsv")) {
        let (hertz, wire, want): (f64, f64, f64) =
            (row[1].parse().unwrap(), row[2].parse().unwrap(), row[3].parse().unwrap());
        let depth = skin_depth(copper_ohm_metres(20.0), hertz);
        let got = if row[0] == "depth" { depth } else { skin(0.5 * wire / depth).resistance };
        hold(got, want, Within::Relative(1e-8), row[1]);
    }
    let (under, over) = (skin(20.0 - 1e-9), skin(20.0));
    for (under, over) in [(under.resistance, over.resistance), (under.inner, over.inner), (under.across, over.across)] {
        hold(over, under, Within::Relative(2e-8), "where the methods change");
    }
    // The loss in a field across nears that along, and dies with the square of frequency.
    hold(skin(500.0).across / skin(500.0).resistance, 1.0, Within::Absolute(3e-3), "thin skin");
    hold(skin(0.02).across / skin(0.01).across, 16.0, Within::Relative(1e-3), "thick skin");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn self_capacitance_and_proximity_are_medhursts() {
    check(include_str!("vectors/coil_self_capacitance.tsv"), Within::Relative(1e-9), |[ratio]: [f64; 1]| {
        1e12 * self_farads(0.01, 0.01 * ratio)
    });
    let table = rows(include_str!("vectors/coil_phi.tsv"));
    assert!(table.len() > 120);
    for row in table {
        let f = figures(&row);
        hold(phi(f[0], f[1]), f[2], Within::Absolute(f[3]), &format!("{} {}", row[0], row[1]));
    }
    hold(phi(3.0, 1e-6), 1.0, Within::Absolute(1e-6), "wide turns");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn worked_coils_come_out_between_sheet_and_rings() {
    let table = rows(include_str!("vectors/coil_worked.tsv"));
    assert!(table.len() >= 5);
    for row in table {
        let f = figures(&row);
        for (inner, sheet, rings) in [(1.0, f[4], f[6]), (0.0, f[5], f[7])] {
            let got = 1e6 * Winding::new(1e-3 * f[0], 1e-3 * f[1], 1e-3 * f[2], inner, f[3]).henries(f[3]);
            let (least, most) = (sheet.min(rings), sheet.max(rings));
            assert!(got >= least * (1.0 - 1e-6) && got <= most * (1.0 + 1e-6), "{row:?}: {got}");
        }
    }
    for row in rows(include_str!("vectors/coil_handbook.tsv")) {
        let f = figures(&row);
        let (diameter, length) = (0.0254 * f[0], 0.0254 * f[1]);
        let area = std::f64::consts::PI * diameter * diameter / 4.0;
        let sheet = 1e6 * MU * f[2] * f[2] * area / length * nagaoka(length / diameter);
        hold(sheet, f[4], Within::Relative(6e-5), "current sheet");
        // The handbooks' own formula is good to about three percent on these shapes.
        hold(sheet, f[3], Within::Relative(0.04), "handbook");
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn taps_couple_as_rings_do() {
    let table = rows(include_str!("vectors/coil_taps.tsv"));
    assert!(table.len() >= 11);
    for row in table {
        let f = figures(&row);
        let (turns, tap) = (f[3], f[4]);
        let coil = Winding::new(1e-3 * f[0], 1e-3 * f[1], 1e-3 * f[2], 0.0, turns);
        let (cold, hot, mutual) = (coil.section(0.0, tap), coil.section(tap, turns), coil.across_tap(tap, turns));
        hold(1e6 * cold, f[5], Within::Relative(1.5e-3), "cold");
        hold(1e6 * hot, f[6], Within::Relative(1.5e-3), "hot");
        hold(1e6 * mutual, f[7], Within::Relative(1.5e-3), "mutual");
        hold(mutual / (cold * hot).sqrt(), f[8], Within::Relative(2e-3), "coupling");
        hold(1e6 * (hot - mutual * mutual / cold), f[9], Within::Relative(1.5e-3), "cold part shorted");
    }
}

/// A link of a few turns over and beside a coil, against the mutual inductance of the two current sheets (Maxwell's circles
/// integrated over both by Gauss, scipy). Where the link stands beside, Rosa's B says what strips have more than wires.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_link_couples_as_two_current_sheets_do() {
    for row in rows(include_str!("vectors/coil_links.tsv")) {
        let f = figures(&row);
        let coil = Winding::new(1e-3 * f[0], 1e-3 * f[1], 0.5e-3 * f[1], 0.0, f[2]);
        let beside = f[5] > 0.0;
        let got = 1e6 * coil.to_link(f[2], 1e-3 * f[3], f[4], beside);
        let strips = |turns: f64| turns * turns_term(turns);
        let more = 0.25e3 * MU * f[0] * (strips(f[2] + f[4]) - strips(f[2]) - strips(f[4]));
        let want = if beside { f[6] - more } else { f[6] };
        hold(got, want, Within::Relative(if beside { 1e-3 } else { 4e-3 }), &format!("{row:?}"));
    }
}
