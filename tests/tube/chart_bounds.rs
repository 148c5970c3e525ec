//! Published resistance-coupled charts, which no fit ever saw.

#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

use crate::charts::{figures, rows};

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
