//! Bands, weighting and the intelligibility index against ANSI S3.5, IEC 61672-1 and figures computed outside the project.

use crate::common::rows;
use tagstrip_core::hearing::{
    BANDS, COUNT, Spectrum, a_weighting_db, audible, exact_mid_band, intelligibility, total_db, worked,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

fn figure(text: &str) -> f64 {
    text.parse().expect("a figure")
}

fn spectrum(text: &str) -> Spectrum {
    let levels: Vec<f64> = text.split(' ').map(figure).collect();
    levels.try_into().expect("a level for each band")
}

fn near(what: &str, got: f64, want: f64, within: f64) {
    assert!((got - want).abs() <= within, "{what}: got {got}, expected {want}");
}

fn bands(levels: &Spectrum) -> f64 {
    total_db(levels.iter().zip(&BANDS).map(|(level, band)| level + band.bandwidth_db))
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_table_of_bands_is_that_of_ansi_s3_5() {
    let table = rows(include_str!("vectors/hearing_bands.tsv"));
    assert_eq!(table.len(), COUNT);
    for (row, band) in table.iter().zip(&BANDS) {
        let ours = [band.hertz, band.importance, band.bandwidth_db, band.speech_db, band.internal_noise_db];
        for (ours, column) in ours.into_iter().zip([0, 1, 2, 3, 7]) {
            near(row[0], ours, figure(row[column]), 0.0);
        }
    }
    near("importance", BANDS.iter().map(|band| band.importance).sum(), 1.0, 1e-9);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_index_is_as_computed_in_nineteen_cases() {
    let table = rows(include_str!("vectors/hearing_sii_totals.tsv"));
    assert_eq!(table.len(), 19);
    let mut worst: f64 = 0.0;
    for row in table {
        let (speech, noise, threshold) = (spectrum(row[1]), spectrum(row[2]), spectrum(row[3]));
        let shares = worked(&speech, &noise, &threshold).map(|band| band.share());
        let index: f64 = shares.iter().zip(&BANDS).map(|(share, band)| share * band.importance).sum();
        if threshold.iter().all(|db| *db <= 0.0) {
            near(row[0], intelligibility(&speech, &noise), index, 1e-15);
        }
        worst = worst.max((index - figure(row[4])).abs());
        near(row[0], index, figure(row[4]), 1.5e-6);
        near(row[0], bands(&speech), figure(row[5]), 1e-4);
        near(row[0], bands(&noise), figure(row[6]), 1e-4);
    }
    println!("hearing.sii_totals 19 worst {worst:e}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn each_band_is_masked_and_heard_as_computed() {
    let table = rows(include_str!("vectors/hearing_sii_bands.tsv"));
    assert_eq!(table.len(), 7 * COUNT);
    for case in table.chunks(COUNT) {
        let column = |column: usize| -> Spectrum { core::array::from_fn(|k| figure(case[k][column])) };
        for (k, got) in worked(&column(2), &column(3), &column(4)).iter().enumerate() {
            let what = format!("{} at {} Hz", case[k][0], case[k][1]);
            near(&what, got.masking_db, figure(case[k][5]), 6e-5);
            near(&what, got.disturbance_db, figure(case[k][6]), 6e-5);
            near(&what, got.distortion, figure(case[k][7]), 1e-6);
            near(&what, got.heard, figure(case[k][8]), 1e-6);
            near(&what, BANDS[k].importance * got.share(), figure(case[k][9]), 1e-8);
        }
    }
    println!("hearing.sii_bands {}", table.len());
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn the_octave_example_of_the_standard_comes_out() {
    let mut index = 0.0;
    for row in rows(include_str!("vectors/hearing_sii_octave.tsv")) {
        let [_, speech, normal, disturbance, importance, distortion, heard, share] =
            core::array::from_fn(|column| figure(row[column]));
        let got = audible(speech, normal, disturbance);
        near(row[0], got.0, distortion, 1e-6);
        near(row[0], got.1, heard, 1e-6);
        near(row[0], importance * got.0 * got.1, share, 1e-6);
        index += importance * got.0 * got.1;
    }
    near("the standard's total", index, 0.504, 5e-4);
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_weighting_is_that_of_iec_61672() {
    for row in rows(include_str!("vectors/hearing_a_weighting.tsv")) {
        let exact = exact_mid_band(figure(row[0]));
        near(row[0], exact, figure(row[1]), 1e-4);
        near(row[0], a_weighting_db(exact), figure(row[2]), 0.0501);
        near(row[0], a_weighting_db(exact), figure(row[3]), 1e-4);
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_weighted_totals_are_as_computed() {
    let table = rows(include_str!("vectors/hearing_a_totals.tsv"));
    assert_eq!(table.len(), 9);
    let mut worst: f64 = 0.0;
    for row in table {
        let hertz = row[1].split(' ').map(figure);
        let levels: Vec<f64> = row[2].split(' ').map(figure).collect();
        let weighted = hertz.zip(&levels).map(|(hertz, level)| level + a_weighting_db(exact_mid_band(hertz)));
        let weighted = total_db(weighted);
        worst = worst.max((weighted - figure(row[4])).abs());
        near(row[0], total_db(levels.iter().copied()), figure(row[3]), 1e-4);
        near(row[0], weighted, figure(row[4]), 1e-4);
    }
    println!("hearing.a_totals 9 worst {worst:e}");
}
