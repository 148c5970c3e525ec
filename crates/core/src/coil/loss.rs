/// Lengths over diameters of the rows below; the last row is the endless coil.
const RATIOS: [f64; 11] = [0.0, 0.2, 0.4, 0.6, 0.8, 1.0, 2.0, 4.0, 6.0, 8.0, 10.0];

/// Medhurst's φ in thousandths, against wire over pitch from 0.1 to 1 by tenths.
///
/// Two figures stand here in place of those remembered, which are out of line with all their neighbours: 1.27 for 1.20 at
/// (0, 0.4) and 2.36 for 2.27 at (10, 0.7).
///
/// # Source
/// R. G. Medhurst, Wireless Engineer 24 (1947), table VIII (from memory, ±0.02; the last row agrees with a computation for
/// perfect conductors).
const PHI: [[u16; 10]; 12] = [
    [1020, 1070, 1160, 1270, 1440, 1740, 2120, 2740, 3730, 5310],
    [1020, 1080, 1190, 1290, 1480, 1770, 2200, 2830, 3840, 5450],
    [1030, 1080, 1210, 1330, 1540, 1830, 2280, 2970, 3990, 5650],
    [1030, 1100, 1220, 1380, 1600, 1890, 2380, 3100, 4110, 5800],
    [1030, 1100, 1230, 1420, 1640, 1920, 2440, 3200, 4170, 5800],
    [1030, 1100, 1240, 1450, 1670, 1940, 2470, 3170, 4100, 5550],
    [1040, 1130, 1280, 1500, 1740, 1980, 2320, 2740, 3360, 4100],
    [1040, 1150, 1320, 1540, 1780, 2010, 2270, 2600, 3050, 3540],
    [1040, 1160, 1340, 1560, 1800, 2030, 2290, 2600, 2920, 3310],
    [1040, 1165, 1340, 1570, 1810, 2080, 2340, 2620, 2900, 3200],
    [1040, 1170, 1350, 1580, 1830, 2100, 2360, 2650, 2930, 3230],
    [1050, 1190, 1395, 1650, 1930, 2220, 2510, 2815, 3110, 3410],
];

/// What the neighbouring turns make of a coil's resistance where the skin is thin: R of the coil over R of the straight
/// wire.
///
/// `ratio` is length over diameter, `wire_over_pitch` from 0 (where it is 1) to 1. Between the points of the table by
/// straight lines, beyond ten diameters in their reciprocal. Measured on coils of 30 turns and more; ±0.02 in the table.
#[must_use]
pub fn phi(ratio: f64, wire_over_pitch: f64) -> f64 {
    let (row, along) = if ratio >= 10.0 {
        (10, 1.0 - 10.0 / ratio)
    } else {
        let row = RATIOS.partition_point(|at| *at <= ratio).clamp(1, 10) - 1;
        (row, (ratio - RATIOS[row]) / (RATIOS[row + 1] - RATIOS[row]))
    };
    let place = 10.0 * wire_over_pitch.clamp(0.0, 1.0);
    let (under, over) = (at(PHI.get(row), place), at(PHI.get(row + 1), place));
    under + (over - under) * along
}

fn at(row: Option<&[u16; 10]>, place: f64) -> f64 {
    let Some(row) = row else { return 1.0 };
    let cell = libm::floor(place).min(9.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // 0 to 9
    let first = cell as usize;
    let low = first.checked_sub(1).and_then(|k| row.get(k)).map_or(1.0, |phi| 0.001 * f64::from(*phi));
    let high = row.get(first).map_or(1.0, |phi| 0.001 * f64::from(*phi));
    low + (high - low) * (place - cell)
}
