//! The triode: plate current and its derivatives from grid and plate volts.

use super::{
    drawn::Drawn,
    emission::{Emissions, Exact},
    knee, spread,
};

/// A triode's static law, four figures fitted to its data sheet.
///
/// `Ip = G·F̄·(1 − exp(−3x²))`, `x = Vp/(1.3·F̄^(2/3))`, with F̄ the mean over the cathode of the emission drawn by
/// `Vg + contact_volts + Vp·m`. Sensible where `perveance` > 0, `mu` ≥ 1, 0 ≤ `mu_spread` ≤ 0.6.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Triode {
    /// G, in A/V^1.5.
    pub perveance: f64,
    /// Amplification factor where every part of the cathode emits: 1 over the mean of m.
    pub mu: f64,
    /// Relative deviation of m along the cathode, 0…0.6.
    pub mu_spread: f64,
    /// Contact potential of grid against cathode and the like, in volts, added to the grid volts.
    pub contact_volts: f64,
}

/// Plate current with its derivatives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlateCurrent {
    /// Plate current, in A; never negative.
    pub amps: f64,
    /// ∂Ip/∂Vg, in S. Negative only where the plate is below about 0.43·F̄^(2/3) volts.
    pub gm: f64,
    /// ∂Ip/∂Vp, in S: 1 over the plate resistance.
    pub gp: f64,
}

/// What runs where the grid takes its part of the current.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GridAndPlate {
    /// Into the plate.
    pub plate: PlateCurrent,
    /// Into the grid, in A.
    pub grid_amps: f64,
    /// ∂Ig/∂Vg, in S.
    pub grid_by_grid: f64,
    /// ∂Ig/∂Vp, in S.
    pub grid_by_plate: f64,
}

const NOTHING: PlateCurrent = PlateCurrent { amps: 0.0, gm: 0.0, gp: 0.0 };

/// The mean emission at one point: in A for the tube's own perveance, derivatives in S.
struct Cathode {
    mean: f64,
    amps: f64,
    by_grid: f64,
    by_plate: f64,
}

impl Triode {
    /// Plate current at `grid_volts` and `plate_volts`, both against the cathode, the grid drawing none.
    ///
    /// Nothing flows at or below 0 V on the plate. Finite for volts within ±1e5; accurate to about 2e-10 of the
    /// current and 2e-9 of gm and gp.
    #[must_use]
    pub fn plate(&self, grid_volts: f64, plate_volts: f64) -> PlateCurrent {
        if plate_volts <= 0.0 {
            return NOTHING;
        }
        let cathode = self.cathode(grid_volts, plate_volts);
        let share = knee::share(plate_volts, cathode.mean);
        let carried = share.taken + share.by_current;
        PlateCurrent {
            amps: cathode.amps * share.taken,
            gm: cathode.by_grid * carried,
            gp: cathode.by_plate * carried + cathode.amps * share.by_plate,
        }
    }

    /// ∂Ip/∂`mu` at the same point, in A; for tolerance bands.
    #[must_use]
    pub fn d_mu(&self, grid_volts: f64, plate_volts: f64) -> f64 {
        if plate_volts <= 0.0 {
            return 0.0;
        }
        // m scales as 1/mu, and X·m is all that the plate does to the emission
        let cathode = self.cathode(grid_volts, plate_volts);
        let share = knee::share(plate_volts, cathode.mean);
        -cathode.by_plate * (share.taken + share.by_current) * plate_volts / self.mu
    }

    /// Plate and grid current at the same point: for overdrive, where the grid goes positive.
    ///
    /// `Ig = G·F̄·σ·√(y/(y + Vp/mu))`, `y = w·ln(1 + exp(Vg/w))`, w = 0.0434 V, σ = 0.2; the plate then takes its share
    /// of what is left. σ was set by one class-C row, so grid current is good to a factor of two only.
    #[must_use]
    pub fn grid_and_plate(&self, grid_volts: f64, plate_volts: f64) -> GridAndPlate {
        let plate_volts = plate_volts.max(0.0);
        self.shared(&self.cathode(grid_volts, plate_volts), grid_volts, plate_volts)
    }

    /// The same to about 1e-7, the emissions looked up: for a hundred thousand askings a second.
    pub(crate) fn grid_and_plate_quick(&self, drawn: &Drawn, grid_volts: f64, plate_volts: f64) -> GridAndPlate {
        let plate_volts = plate_volts.max(0.0);
        self.shared(&self.cathode_by(drawn, grid_volts, plate_volts), grid_volts, plate_volts)
    }

    fn shared(&self, cathode: &Cathode, grid_volts: f64, plate_volts: f64) -> GridAndPlate {
        let pull = GridPull::at(grid_volts, plate_volts, self.mu);
        let grid_amps = cathode.amps * pull.share;
        let grid_by_grid = cathode.by_grid * pull.share + cathode.amps * pull.by_grid;
        let grid_by_plate = cathode.by_plate * pull.share + cathode.amps * pull.by_plate;
        let plate = if plate_volts > 0.0 {
            let share = knee::share(plate_volts, cathode.mean);
            let left = 1.0 - pull.share;
            let by_mean = share.by_current * left;
            PlateCurrent {
                amps: (cathode.amps - grid_amps) * share.taken,
                gm: (cathode.by_grid - grid_by_grid) * share.taken + cathode.by_grid * by_mean,
                gp: (cathode.by_plate - grid_by_plate) * share.taken
                    + cathode.by_plate * by_mean
                    + (cathode.amps - grid_amps) * share.by_plate,
            }
        } else {
            NOTHING
        };
        GridAndPlate { plate, grid_amps, grid_by_grid, grid_by_plate }
    }

    fn cathode(&self, grid_volts: f64, plate_volts: f64) -> Cathode {
        self.cathode_by(&Exact, grid_volts, plate_volts)
    }

    fn cathode_by(&self, from: &dyn Emissions, grid_volts: f64, plate_volts: f64) -> Cathode {
        // a linearly falling density of deviation s and mean 1 runs from 1 − w/3 to 1 + 2w/3, w = s·√18
        let width = self.mu_spread * ROOT_18;
        let (first, range) = ((1.0 - width / 3.0) / self.mu, width / self.mu);
        let mean = spread::mean(from, grid_volts + self.contact_volts + plate_volts * first, plate_volts * range);
        Cathode {
            mean: mean.current,
            amps: self.perveance * mean.current,
            by_grid: self.perveance * mean.by_drive,
            by_plate: self.perveance * (first * mean.by_drive + range * mean.by_width),
        }
    }
}

const ROOT_18: f64 = 4.242_640_687_119_285;

/// The share of the cathode's current that a positive grid takes, with its derivatives per volt.
struct GridPull {
    share: f64,
    by_grid: f64,
    by_plate: f64,
}

impl GridPull {
    /// How soon a grid takes current as it nears 0 V, in volts.
    const SOFT: f64 = 0.0434;
    /// The share a grid takes whose pull is all there is.
    const MOST: f64 = 0.2;

    fn at(grid_volts: f64, plate_volts: f64, mu: f64) -> Self {
        let over = grid_volts / Self::SOFT;
        if over < -700.0 {
            return Self { share: 0.0, by_grid: 0.0, by_plate: 0.0 };
        }
        let (pull, open) = if over > 40.0 {
            (grid_volts, 1.0)
        } else {
            let e = libm::exp(over);
            // what the series leaves out is 3e-11 of it
            let log = if e < 1e-5 { e - 0.5 * e * e } else { libm::log1p(e) };
            (Self::SOFT * log, e / (1.0 + e))
        };
        let whole = pull + plate_volts / mu;
        let share = Self::MOST * crate::root::sqrt(pull / whole);
        let half = 0.5 * share / whole;
        Self { share, by_grid: half * (plate_volts / mu) / pull * open, by_plate: -half / mu }
    }
}
