//! Published resistance-coupled charts, which no fit ever saw.

use tagstrip_core::tube::{Triode, tube};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use crate::tube::charts::{figures, rows};

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn charts_are_predicted_within_their_bounds() {
    assert_eq!(rows().len(), 72);
    let figures = figures();
    for figure in &figures {
        println!("{figure}");
    }
    assert_eq!(figures.len(), 5);
    for figure in figures.iter().filter(|figure| figure.bound.is_some()) {
        assert!(figure.holds(), "{figure}");
    }
}

/// The textbook's way: the rest point by halving, then gm into everything that hangs on the plate, side by side.
fn by_hand(law: &Triode, supply: f64, plate_ohms: f64, next_ohms: f64, cathode_ohms: f64) -> f64 {
    let at = |amps: f64| law.plate(-amps * cathode_ohms, supply - amps * (plate_ohms + cathode_ohms));
    let (mut low, mut high) = (0.0, supply / (plate_ohms + cathode_ohms));
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if at(middle).amps > middle { low = middle } else { high = middle }
    }
    let rest = at(low);
    rest.gm / (rest.gp + 1.0 / plate_ohms + 1.0 / next_ohms)
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_whole_stage_agrees_with_the_textbook() {
    for (row, cells) in rows().iter().zip(crate::common::rows(include_str!("../vectors/tube_charts.tsv"))) {
        let [supply, plate, next, cathode] = [2, 3, 4, 5].map(|k| cells[k].parse().expect("a figure"));
        let law = tube(cells[0]).expect("in the table").law;
        let hand = by_hand(&law, supply, plate, next, cathode);
        // the stage's own low and high corners take a little at its best frequency
        assert!((row.predicted / hand - 1.0).abs() < 2e-3, "{cells:?}: {} for {hand}", row.predicted);
    }
}

/// Why the 6SN7GT has a line of its own: one figure of another tube brings its whole chart in, and not by chance.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_remoter_cut_off_explains_the_6sn7gt() {
    let sheet = tube("6SN7GT").expect("in the table").law;
    let remote = Triode { mu_spread: 0.30, ..sheet };
    let mut count = 0;
    for cells in
        crate::common::rows(include_str!("../vectors/tube_charts.tsv")).iter().filter(|cells| cells[0] == "6SN7GT")
    {
        let [supply, plate, next, cathode, printed] = [2, 3, 4, 5, 6].map(|k| cells[k].parse().expect("a figure"));
        let off = |law| by_hand(law, supply, plate, next, cathode) / printed - 1.0;
        assert!(off(&sheet) > 0.05 && off(&remote).abs() < 0.04, "{cells:?}");
        count += 1;
    }
    assert_eq!(count, 14);
    let amps = remote.plate(-8.0, 250.0).amps;
    assert!((amps - 10e-3).abs() < 0.3e-3, "{amps}");
}
