use super::decimal::Decimal;

/// A series of preferred values of IEC 60063, named by how many values it has in a decade.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Series {
    /// 3 a decade.
    E3,
    /// 6 a decade, for ±20 %.
    E6,
    /// 12 a decade, for ±10 %.
    E12,
    /// 24 a decade, for ±5 %.
    E24,
    /// 48 a decade, for ±2 %.
    E48,
    /// 96 a decade, for ±1 %.
    E96,
    /// 192 a decade, for ±0.5 % and less.
    E192,
}

/// The preferred value nearest to a figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Preferred {
    /// The preferred value, the double nearest to its decimal.
    pub value: f64,
    /// How far it is over the figure: preferred / figure − 1.
    pub error: f64,
}

/// Where the two-figure series leave their rule, as index of E24 and standard value (IEC 60063, table of E24: the
/// values settled before the rule was).
const E24_SETTLED: [(u32, u32); 8] = [(10, 27), (11, 30), (12, 33), (13, 36), (14, 39), (15, 43), (16, 47), (22, 82)];

impl Series {
    /// Every series, coarsest first.
    pub const ALL: [Series; 7] =
        [Series::E3, Series::E6, Series::E12, Series::E24, Series::E48, Series::E96, Series::E192];

    /// The name, `E24`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Series::E3 => "E3",
            Series::E6 => "E6",
            Series::E12 => "E12",
            Series::E24 => "E24",
            Series::E48 => "E48",
            Series::E96 => "E96",
            Series::E192 => "E192",
        }
    }

    /// The series with this name.
    #[must_use]
    pub fn of(name: &str) -> Option<Series> {
        Series::ALL.into_iter().find(|series| series.name() == name)
    }

    /// How many values a decade has.
    #[must_use]
    pub const fn count(self) -> u32 {
        match self {
            Series::E3 => 3,
            Series::E6 => 6,
            Series::E12 => 12,
            Series::E24 => 24,
            Series::E48 => 48,
            Series::E96 => 96,
            Series::E192 => 192,
        }
    }

    /// The value at `index` of a decade in hundredths, 100 to 988; counts on into the next decades.
    ///
    /// E48 and finer: 10^(index/count) to three figures, but 9.20 of E192 where the rule gives 9.19. E24: two figures,
    /// eight of them off the rule; the coarser ones take every second, fourth and eighth of E24.
    ///
    /// # Source
    /// IEC 60063 (rule and exceptions from memory, the values against a public list).
    #[must_use]
    pub fn hundredths(self, index: u32) -> u32 {
        let (count, index) = (self.count(), index % self.count());
        if count > 24 {
            let rule = rounded(100.0, index, count);
            return if (count, index) == (192, 185) { 920 } else { rule };
        }
        let index = index * (24 / count);
        let settled = E24_SETTLED.iter().find(|(at, _)| *at == index);
        10 * settled.map_or_else(|| rounded(10.0, index, 24), |(_, value)| *value)
    }

    /// The exact double of a value: hundredths at `index`, times 10^`decade`.
    fn value(self, index: u32, decade: i32) -> Option<f64> {
        Decimal::new(u128::from(self.hundredths(index)), decade - 2).value()
    }
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // 10 to 1000
fn rounded(scale: f64, index: u32, count: u32) -> u32 {
    libm::round(scale * libm::pow(10.0, f64::from(index) / f64::from(count))) as u32
}

/// The nearest preferred value by ratio; nothing for what is not over 0 or not within 10^±58.
///
/// ```
/// use tagstrip_core::quantity::{Series, nearest};
/// assert_eq!(nearest(5.1e-9, Series::E12).unwrap().value, 4.7e-9);
/// ```
///
/// # Source
/// IEC 60063; by ratio, since tolerances are ratios.
#[must_use]
pub fn nearest(value: f64, series: Series) -> Option<Preferred> {
    let (below, above) = around(value, series)?;
    // Equal ratios meet at the geometric mean.
    let preferred = if value / below < above / value { below } else { above };
    Some(Preferred { value: preferred, error: preferred / value - 1.0 })
}

/// The next preferred value over (`up`) or under `value`, as ▲ and ▼ of a field take it: from 200k up in E24 is 220k,
/// from 215k up is 220k too. Nothing for what is not over 0 or not within 10^±58.
///
/// ```
/// use tagstrip_core::quantity::{Series, step};
/// assert_eq!(step(220e3, Series::E24, true), Some(240e3));
/// ```
///
/// # Source
/// IEC 60063.
#[must_use]
pub fn step(value: f64, series: Series, up: bool) -> Option<f64> {
    let (decade, index) = place(value, series)?;
    let at = |offset: i32| {
        let count = i32::try_from(series.count()).ok()?;
        let index = i32::try_from(index).ok()? + offset;
        series.value(index.rem_euclid(count).unsigned_abs(), decade + index.div_euclid(count))
    };
    if up {
        at(1)
    } else if at(0)? < value {
        at(0)
    } else {
        at(-1)
    }
}

/// The preferred values at or under, and over, a figure.
fn around(value: f64, series: Series) -> Option<(f64, f64)> {
    let (decade, index) = place(value, series)?;
    let below = series.value(index, decade)?;
    Some((below, step(value, series, true)?))
}

/// The decade and index of the largest preferred value that is not over `value`.
fn place(value: f64, series: Series) -> Option<(i32, u32)> {
    let decade = libm::floor(libm::log10(value));
    if !(-58.0..=58.0).contains(&decade) {
        return None;
    }
    #[allow(clippy::cast_possible_truncation)] // within ±58
    let mut decade = decade as i32;
    // The logarithm may be off by its last bit on either side of a power of ten.
    if series.value(0, decade + 1)? <= value {
        decade += 1;
    } else if series.value(0, decade)? > value {
        decade -= 1;
    }
    let index = (0..series.count()).rev().find(|index| series.value(*index, decade).is_some_and(|at| at <= value))?;
    Some((decade, index))
}
