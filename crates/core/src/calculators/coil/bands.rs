use alloc::vec::Vec;
use core::f64::consts::PI;

use super::turns::reached;
use crate::{coil::Winding, value::Inputs};

/// One way of using a tap: what the turns from the cold end up to it amount to, and how they couple to the rest.
pub(super) struct Tapped {
    pub henries: f64,
    pub coupling: f64,
}

/// The turns up to `tap` alone with the rest open, or with the rest shorted: L − M²/L of the rest.
pub(super) fn tapped(winding: &Winding, turns: f64, tap: f64, shorted: bool) -> Tapped {
    let (below, above) = (winding.section(0.0, tap), winding.section(tap, turns));
    let mutual = winding.across_tap(tap, turns);
    let coupling = mutual / crate::root::sqrt(below * above);
    Tapped { henries: if shorted { below - mutual * mutual / above } else { below }, coupling }
}

/// For each band, the turn at which its capacitor resonates with what is below; none where the whole coil has too little.
pub(super) fn band_turns(inputs: &Inputs, winding: &Winding, turns: f64, factor: f64) -> Vec<Option<f64>> {
    let shorted = inputs.text("tap_use") == "shorted";
    let one = |band: &crate::value::Value| {
        let figure = |key| band.get(key).and_then(crate::value::Value::number).unwrap_or(1.0);
        let omega = 2.0 * PI * figure("hertz");
        let wanted = 1.0 / (omega * omega * figure("farads") * factor);
        if libm::fabs(winding.henries(turns) / wanted - 1.0) < 1e-9 {
            return Some(turns);
        }
        let least = f64::min(0.05, 0.5 * turns);
        let whole =
            |tap: f64| if tap < turns { tapped(winding, turns, tap, shorted).henries } else { winding.henries(turns) };
        reached((least, turns), &|tap| whole(tap) / wanted)
    };
    inputs.items("bands").iter().map(one).collect()
}
