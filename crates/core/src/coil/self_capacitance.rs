/// Medhurst's H in pF a centimetre of diameter, against length over diameter.
///
/// # Source
/// R. G. Medhurst, Wireless Engineer 24 (1947) 35 and 80 (1 to 5 seen in a transcription, the rest from memory).
const H: [(f64, f64); 33] = [
    (0.1, 0.96),
    (0.15, 0.79),
    (0.2, 0.7),
    (0.25, 0.64),
    (0.3, 0.6),
    (0.35, 0.57),
    (0.4, 0.54),
    (0.45, 0.52),
    (0.5, 0.5),
    (0.6, 0.48),
    (0.7, 0.47),
    (0.8, 0.46),
    (0.9, 0.46),
    (1.0, 0.46),
    (1.5, 0.47),
    (2.0, 0.5),
    (2.5, 0.56),
    (3.0, 0.61),
    (3.5, 0.67),
    (4.0, 0.72),
    (4.5, 0.77),
    (5.0, 0.81),
    (6.0, 0.92),
    (7.0, 1.01),
    (8.0, 1.12),
    (9.0, 1.22),
    (10.0, 1.32),
    (15.0, 1.86),
    (20.0, 2.36),
    (25.0, 2.9),
    (30.0, 3.4),
    (40.0, 4.6),
    (50.0, 5.8),
];

/// Self-capacitance in farads of a single-layer coil with one end grounded: H·D.
///
/// Between the points of the table by straight lines; beyond its ends by Medhurst's own formula, 0.1126·l + 0.08·D +
/// 0.27·√(D³/l), brought to the table's end. Medhurst states 5 % for coils of many turns.
#[must_use]
pub fn self_farads(diameter: f64, length: f64) -> f64 {
    let ratio = length / diameter;
    let formula = |ratio: f64| 0.1126 * ratio + 0.08 + 0.27 / crate::root::sqrt(ratio);
    let [first, .., last] = H;
    let picofarads = if ratio <= first.0 {
        first.1 * formula(ratio) / formula(first.0)
    } else if ratio >= last.0 {
        last.1 * formula(ratio) / formula(last.0)
    } else {
        let at = H.partition_point(|(at, _)| *at <= ratio).clamp(1, H.len() - 1);
        let ((low, under), (high, over)) = (H[at - 1], H[at]);
        under + (over - under) * (ratio - low) / (high - low)
    };
    1e-10 * picofarads * diameter
}
