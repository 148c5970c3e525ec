//! The emission averaged over a cathode whose grid does not hold it back equally everywhere.
//!
//! Under the wires of a grid the field is held more strongly than between them, so the amplification 1/m differs along
//! the cathode. Near cut-off only the weakly held islands still emit: that is why a tube's mu falls and its cut-off is
//! remote. Here m has a density that falls linearly to zero over its range.
//!
//! Source: the "island effect" (Inselbildung), W. Schottky and others; the linear density is this project's choice.

use super::emission::Emissions;

/// Nodes on 0…1 and weights of the five-point Gauss rule for the weight 2(1 − t) (Gauss–Jacobi 1, 0), worked out
/// to 40 digits from its moments.
const NODES: [(f64, f64); 5] = [
    (0.03980985705146874, 0.19356318045330336),
    (0.19801341787360817, 0.3343492761887391),
    (0.43797481024738614, 0.29277397416933962),
    (0.6954642733536361, 0.14781774014523334),
    (0.9014649142011736, 0.03149582904338455),
];

/// No emission is taken smaller than this, in V^1.5, so that its powers stay above zero.
const FLOOR: f64 = 1e-250;

/// The mean emission, in V^1.5, with its derivatives.
#[derive(Clone, Copy)]
pub(super) struct Mean {
    /// F̄ for a perveance of 1, in V^1.5.
    pub(super) current: f64,
    /// ∂F̄/∂(least drive), in √V.
    pub(super) by_drive: f64,
    /// ∂F̄/∂(width), in √V.
    pub(super) by_width: f64,
}

/// The mean over drives from `least` to `least + width` volts, their density falling linearly to zero at the end.
///
/// `width` is 0 or more. A narrow spread is summed over five points; a wide one goes by the closed form
/// `F̄ = −2Φ(Ua)/d + 2(Ψ(Ub) − Ψ(Ua))/d²`, which loses figures as the width goes to zero. Accuracy about 2e-10 of the
/// mean and 2e-9 of its derivatives.
pub(super) fn mean(from: &dyn Emissions, least: f64, width: f64) -> Mean {
    let narrow = width < f64::max(0.2, 0.1 * least);
    let mut mean = if narrow { summed(from, least, width) } else { closed(from, least, width) };
    mean.current = mean.current.max(FLOOR);
    mean
}

fn summed(from: &dyn Emissions, least: f64, width: f64) -> Mean {
    let mut mean = Mean { current: 0.0, by_drive: 0.0, by_width: 0.0 };
    for (node, weight) in NODES {
        let (current, slope) = from.current_and_slope(least + width * node);
        let slope = weight * slope;
        mean.current += weight * current;
        mean.by_drive += slope;
        mean.by_width += slope * node;
    }
    mean
}

fn closed(from: &dyn Emissions, least: f64, width: f64) -> Mean {
    let ([low, phi_low, psi_low], [_, phi_high, psi_high]) = (from.sums(least), from.sums(least + width));
    let psi = 2.0 * (psi_high - psi_low) / width;
    Mean {
        current: (psi - 2.0 * phi_low) / width,
        by_drive: 2.0 * ((phi_high - phi_low) / width - low) / width,
        by_width: 2.0 * (phi_low + phi_high - psi) / (width * width),
    }
}
