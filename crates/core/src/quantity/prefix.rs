/// A decimal prefix.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Prefix {
    /// 10⁻¹².
    Pico,
    /// 10⁻⁹.
    Nano,
    /// 10⁻⁶.
    Micro,
    /// 10⁻³.
    Milli,
    /// 10³.
    Kilo,
    /// 10⁶.
    Mega,
    /// 10⁹.
    Giga,
    /// 10¹².
    Tera,
}

impl Prefix {
    /// Every prefix, smallest first.
    pub const ALL: [Prefix; 8] = [
        Prefix::Pico,
        Prefix::Nano,
        Prefix::Micro,
        Prefix::Milli,
        Prefix::Kilo,
        Prefix::Mega,
        Prefix::Giga,
        Prefix::Tera,
    ];

    /// The symbol: `p n µ m k M G T`.
    #[must_use]
    pub const fn symbol(self) -> char {
        match self {
            Prefix::Pico => 'p',
            Prefix::Nano => 'n',
            Prefix::Micro => 'µ',
            Prefix::Milli => 'm',
            Prefix::Kilo => 'k',
            Prefix::Mega => 'M',
            Prefix::Giga => 'G',
            Prefix::Tera => 'T',
        }
    }

    /// The power of ten.
    #[must_use]
    pub const fn power(self) -> i32 {
        match self {
            Prefix::Pico => -12,
            Prefix::Nano => -9,
            Prefix::Micro => -6,
            Prefix::Milli => -3,
            Prefix::Kilo => 3,
            Prefix::Mega => 6,
            Prefix::Giga => 9,
            Prefix::Tera => 12,
        }
    }

    /// The prefix with this symbol, as shown beside a field; `u` too stands for `µ`.
    #[must_use]
    pub fn of(symbol: &str) -> Option<Prefix> {
        if matches!(symbol, "u" | "μ") {
            return Some(Prefix::Micro);
        }
        let mut letters = symbol.chars();
        let (letter, None) = (letters.next()?, letters.next()) else { return None };
        Prefix::ALL.into_iter().find(|prefix| prefix.symbol() == letter)
    }
}
