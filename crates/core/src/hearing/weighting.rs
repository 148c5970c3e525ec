/// The poles of A-weighting, in hertz: IEC 61672-1, annex E (from memory; the table of A-weighting agrees).
const POLES: [f64; 4] = [20.598_997, 107.652_65, 737.862_23, 12_194.217];

/// A-weighting at a frequency, in dB; 0 at 1 kHz.
///
/// `A = 20·lg(f4²·f⁴ / ((f² + f1²)·√((f² + f2²)·(f² + f3²))·(f² + f4²)))`, less the same at 1 kHz. Within 0.05 dB of
/// the standard's table, which is rounded to 0.1 dB.
///
/// # Source
/// IEC 61672-1:2013, annex E.
#[must_use]
pub fn a_weighting_db(hertz: f64) -> f64 {
    20.0 * libm::log10(passed(hertz) / passed(1000.0))
}

fn passed(hertz: f64) -> f64 {
    let [f1, f2, f3, f4] = POLES.map(|pole| hertz * hertz + pole * pole);
    let square = hertz * hertz;
    square * square / (f1 * crate::root::sqrt(f2 * f3) * f4)
}

/// The exact middle of the one-third octave that is nominally at `nominal` hertz: 10^(n/10).
///
/// # Source
/// IEC 61260-1: base-ten bands.
#[must_use]
pub fn exact_mid_band(nominal: f64) -> f64 {
    libm::pow(10.0, 0.1 * libm::round(10.0 * libm::log10(nominal)))
}
