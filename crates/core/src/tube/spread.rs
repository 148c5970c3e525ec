//! The emission averaged over a cathode whose grid does not hold it back equally everywhere.
//!
//! Under the wires of a grid the field is held more strongly than between them, so the amplification 1/m differs along
//! the cathode. Near cut-off only the weakly held islands still emit: that is why a tube's mu falls and its cut-off is
//! remote. Here m has a density that falls linearly to zero over its range.
//!
//! Source: the "island effect" (Inselbildung), W. Schottky and others; the linear density is this project's choice.

use super::emission::Emission;

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
pub(super) fn mean(least: f64, width: f64) -> Mean {
    let mut mean = if width < f64::max(0.2, 0.1 * least) { summed(least, width) } else { closed(least, width) };
    mean.current = mean.current.max(FLOOR);
    mean
}

fn summed(least: f64, width: f64) -> Mean {
    let mut mean = Mean { current: 0.0, by_drive: 0.0, by_width: 0.0 };
    for (node, weight) in NODES {
        let emission = Emission::at(least + width * node);
        let slope = weight * emission.slope();
        mean.current += weight * emission.current();
        mean.by_drive += slope;
        mean.by_width += slope * node;
    }
    mean
}

fn closed(least: f64, width: f64) -> Mean {
    let (low, high) = (Emission::at(least), Emission::at(least + width));
    let (phi_low, phi_high) = (low.once_summed(), high.once_summed());
    let psi = 2.0 * (high.twice_summed() - low.twice_summed()) / width;
    Mean {
        current: (psi - 2.0 * phi_low) / width,
        by_drive: 2.0 * ((phi_high - phi_low) / width - low.current()) / width,
        by_width: 2.0 * (phi_low + phi_high - psi) / (width * width),
    }
}
