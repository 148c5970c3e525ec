use alloc::vec::Vec;

use super::{MU, gap_term, loops, nagaoka, turns_term};

/// Sections of fewer turns than the first are summed ring by ring, of more than the second taken as a sheet.
const FEW: (f64, f64) = (10.0, 12.0);
/// Wire thicker than the second of the mean diameter is summed ring by ring, thinner than the first taken as a sheet.
const THICK: (f64, f64) = (0.09, 0.11);
/// Rings as far apart as this share of the mean diameter are no sheet either.
const WIDE: (f64, f64) = (0.18, 0.26);
/// Rings this many radii apart and more act as small dipoles on one another; the series is then good to 3e-8.
const DISTANT: f64 = 16.0;

/// An evenly wound single layer of round wire; lengths in metres, to the wire's axis.
///
/// Inductance is that of the current sheet (Lorenz 1879) with Rosa's corrections for round wire, both exact. Few turns,
/// thick wire and wide spacing are summed as rings (Maxwell's circles, the last weighted by its fraction), and between
/// the two methods they are blended.
#[derive(Clone, Debug)]
pub struct Winding {
    radius: f64,
    pitch: f64,
    wire: f64,
    inner: f64,
    /// Mutual inductance of two rings, at one pitch and up.
    rings: Vec<f64>,
}

fn smooth((least, most): (f64, f64), figure: f64) -> f64 {
    let share = ((figure - least) / (most - least)).clamp(0.0, 1.0);
    share * share * (3.0 - 2.0 * share)
}

/// A count of turns as an index.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // whole and small
fn index(turns: f64) -> usize {
    turns as usize
}

/// Mutual inductance in henries of two like rings: Maxwell's circles, or where far apart their series in a²/z².
fn rings(radius: f64, apart: f64) -> f64 {
    if apart < DISTANT * radius {
        return loops(radius, radius, apart);
    }
    let ratio = radius / apart;
    let square = ratio * ratio;
    let series = 1.0 + square * (-3.0 + square * (9.375 - 30.625 * square));
    MU * radius * core::f64::consts::FRAC_PI_2 * square * ratio * series
}

impl Winding {
    /// A winding of mean `diameter`, `pitch` and `wire` diameter, of at most `turns` turns; `inner` is the wire's inner
    /// inductance over that at dc ([`super::Skin`]).
    #[must_use]
    pub fn new(diameter: f64, pitch: f64, wire: f64, inner: f64, turns: f64) -> Self {
        let mut winding = Winding { radius: 0.5 * diameter, pitch, wire, inner, rings: Vec::new() };
        let summed = if winding.coarse() > 0.0 { turns } else { f64::min(turns, FEW.1) };
        let ring = |k: usize| rings(winding.radius, k as f64 * pitch);
        winding.rings = (1..=index(summed) + 1).map(ring).collect();
        winding
    }

    /// How far the wire and its spacing are from a sheet, 0 to 1.
    fn coarse(&self) -> f64 {
        let diameter = 2.0 * self.radius;
        f64::max(smooth(THICK, self.wire / diameter), smooth(WIDE, self.pitch / diameter))
    }

    /// The share of the ring sum in a section of so many turns.
    fn ring_share(&self, turns: f64) -> f64 {
        1.0 - smooth(FEW, turns) * (1.0 - self.coarse())
    }

    fn blend(&self, turns: f64, rings: impl Fn() -> f64, sheet: impl Fn() -> f64) -> f64 {
        let share = self.ring_share(turns);
        let by_rings = if share > 0.0 { share * rings() } else { 0.0 };
        by_rings + if share < 1.0 { (1.0 - share) * sheet() } else { 0.0 }
    }

    /// Inductance in henries of `turns` turns.
    #[must_use]
    pub fn henries(&self, turns: f64) -> f64 {
        self.section(0.0, turns)
    }

    /// Inductance in henries of the turns between two places, counted in turns from one end.
    #[must_use]
    pub fn section(&self, from: f64, to: f64) -> f64 {
        self.blend(to - from, || self.summed(from, to), || self.sheet(to - from))
    }

    /// Mutual inductance in henries of the turns on both sides of a tap, in a winding of `turns`.
    #[must_use]
    pub fn across_tap(&self, tap: f64, turns: f64) -> f64 {
        let rings = || self.summed(0.0, turns) - self.summed(0.0, tap) - self.summed(tap, turns);
        let sheet = || self.sheet(turns) - self.sheet(tap) - self.sheet(turns - tap);
        0.5 * self.blend(turns, rings, sheet)
    }

    /// Sheet and round wire: µ0·N²·π·r²/l·K − µ0·N·r·(A + B).
    fn sheet(&self, turns: f64) -> f64 {
        let length = turns * self.pitch;
        let endless = MU * turns * core::f64::consts::PI * self.radius * self.radius / self.pitch;
        let round = gap_term(self.wire / self.pitch) - 0.25 * self.inner + turns_term(turns);
        endless * nagaoka(length / (2.0 * self.radius)) - MU * turns * self.radius * round
    }

    /// One ring: µ0·r·(ln(8r/a) − 2 + Y), Y = ¼ of the inner inductance over that at dc.
    fn own(&self) -> f64 {
        MU * self.radius * (libm::log(16.0 * self.radius / self.wire) - 2.0 + 0.25 * self.inner)
    }

    fn ring(&self, apart: usize) -> f64 {
        apart.checked_sub(1).and_then(|k| self.rings.get(k)).copied().unwrap_or(0.0)
    }

    /// The rings from one place to another, those at the ends weighted by their fraction.
    fn summed(&self, from: f64, to: f64) -> f64 {
        let (start, end) = (libm::floor(from), libm::floor(to));
        if end <= start {
            return (to - from) * (to - from) * self.own();
        }
        let (first, last) = (1.0 - (from - start), to - end);
        let whole = index(end - start - 1.0);
        let mut sum = (first * first + last * last + whole as f64) * self.own();
        for k in 1..=whole {
            sum += 2.0 * ((whole - k) as f64 + first + last) * self.ring(k);
        }
        sum + 2.0 * first * last * self.ring(whole + 1)
    }

    /// Mutual inductance in henries of `turns` of this winding and a link of `link_turns` wound at the same pitch with mean
    /// diameter `link_diameter`: over the first turns, or beside them, one pitch before the first.
    #[must_use]
    pub fn to_link(&self, turns: f64, link_diameter: f64, link_turns: f64, beside: bool) -> f64 {
        let (count, links) = (index(libm::ceil(turns)), index(libm::ceil(link_turns)));
        let apart = |k: usize| {
            let pitches = if beside { k + 1 } else { k } as f64;
            loops(self.radius, 0.5 * link_diameter, pitches * self.pitch)
        };
        let table: Vec<f64> = (0..count + links).map(apart).collect();
        let mut sum = 0.0;
        for turn in 0..count {
            let share = f64::min(turns - turn as f64, 1.0);
            for link in 0..links {
                let place = if beside { turn + link } else { turn.abs_diff(link) };
                let both = share * f64::min(link_turns - link as f64, 1.0);
                sum += both * table.get(place).copied().unwrap_or(0.0);
            }
        }
        sum
    }
}
