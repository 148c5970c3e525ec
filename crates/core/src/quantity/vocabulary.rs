use super::Unit;

/// Symbols and names that take a prefix, in small letters.
pub(super) const fn symbols(unit: Unit) -> &'static [&'static str] {
    match unit {
        Unit::Volt => &["v", "volt", "volts", "vdc", "vac"],
        Unit::Ampere => &["a", "amp", "amps", "ampere", "amperes"],
        Unit::Ohm => &["Ω", "ohm", "ohms"],
        Unit::Farad => &["f", "fd", "farad", "farads"],
        Unit::Henry => &["h", "hy", "hys", "henry", "henries", "henrys"],
        Unit::Hertz => &["hz", "hertz", "c", "cs", "c/s", "cps", "cycle", "cycles", "~"],
        Unit::Metre => &["m", "metre", "metres", "meter", "meters"],
        Unit::Watt => &["w", "watt", "watts"],
        Unit::VoltAmpere => &["va", "volt-amperes", "volt-amps"],
        Unit::Second => &["s", "sec", "secs", "second", "seconds"],
        Unit::Celsius => &["c", "°c", "°", "degc", "celsius"],
        Unit::One => &[],
        Unit::Decibel => &["db", "decibel", "decibels"],
        Unit::Percent => &["%", "percent", "pct"],
        Unit::Degree => &["°", "deg", "degree", "degrees"],
        Unit::Perveance => &["a/v^1.5", "a/v1.5", "perv", "pervs"],
        Unit::PerMetre => {
            &["/m", "1/m", "m^-1", "permetre", "permeter", "t/m", "turns/m", "turnspermetre", "turnspermeter"]
        }
        Unit::OhmPerVolt => &[
            "Ω/v",
            "Ω/volt",
            "ohm/v",
            "ohms/v",
            "ohm/volt",
            "ohms/volt",
            "ohmpervolt",
            "ohmspervolt",
            "/v",
            "/volt",
            "pervolt",
            "Ω",
            "ohm",
            "ohms",
        ],
        Unit::Siemens => &["s", "siemens", "mho", "mhos", "℧", "a/v"],
        Unit::VoltPerPascal => &["v/pa", "volt/pascal", "volts/pascal"],
    }
}

/// Words of their own, in small letters: what they multiply by (digits, power of ten), and what they divide by.
pub(super) const fn specials(unit: Unit) -> &'static [(&'static str, u128, i32, u128)] {
    match unit {
        Unit::Ohm => &[("r", 1, 0, 1), ("meg", 1, 6, 1), ("megs", 1, 6, 1)],
        Unit::Farad => &[
            ("mfd", 1, -6, 1),
            ("mfds", 1, -6, 1),
            ("mmf", 1, -12, 1),
            ("mmfd", 1, -12, 1),
            ("mmfds", 1, -12, 1),
            ("µµ", 1, -12, 1),
            ("uu", 1, -12, 1),
            ("µµf", 1, -12, 1),
            ("uuf", 1, -12, 1),
            ("µµfd", 1, -12, 1),
            ("uufd", 1, -12, 1),
            ("micromicrofarad", 1, -12, 1),
            ("micromicrofarads", 1, -12, 1),
        ],
        Unit::Hertz => &[
            ("mc", 1, 6, 1),
            ("mcs", 1, 6, 1),
            ("mc/s", 1, 6, 1),
            ("mcps", 1, 6, 1),
            ("meg", 1, 6, 1),
            ("megs", 1, 6, 1),
        ],
        Unit::Ampere => &[("mil", 1, -3, 1), ("mils", 1, -3, 1)],
        Unit::Metre => &[
            ("\"", 254, -4, 1),
            ("in", 254, -4, 1),
            ("ins", 254, -4, 1),
            ("inch", 254, -4, 1),
            ("inches", 254, -4, 1),
            ("'", 3048, -4, 1),
            ("ft", 3048, -4, 1),
            ("foot", 3048, -4, 1),
            ("feet", 3048, -4, 1),
            ("mil", 254, -7, 1),
            ("mils", 254, -7, 1),
            ("thou", 254, -7, 1),
            ("mm", 1, -3, 1),
            ("cm", 1, -2, 1),
            ("cms", 1, -2, 1),
        ],
        Unit::Second => &[
            ("min", 60, 0, 1),
            ("mins", 60, 0, 1),
            ("minute", 60, 0, 1),
            ("minutes", 60, 0, 1),
            ("hr", 3600, 0, 1),
            ("hour", 3600, 0, 1),
            ("hours", 3600, 0, 1),
        ],
        Unit::PerMetre => &[
            ("tpi", 1, 4, 254),
            ("t/in", 1, 4, 254),
            ("/in", 1, 4, 254),
            ("perin", 1, 4, 254),
            ("perinch", 1, 4, 254),
            ("turns/in", 1, 4, 254),
            ("turns/inch", 1, 4, 254),
            ("turnsperinch", 1, 4, 254),
            ("/cm", 1, 2, 1),
            ("percm", 1, 2, 1),
            ("t/cm", 1, 2, 1),
            ("turns/cm", 1, 2, 1),
            ("turnspercm", 1, 2, 1),
            ("/mm", 1, 3, 1),
            ("permm", 1, 3, 1),
        ],
        Unit::VoltPerPascal => {
            &[("v/µbar", 1, 1, 1), ("v/ubar", 1, 1, 1), ("mv/µbar", 1, -2, 1), ("mv/ubar", 1, -2, 1)]
        }
        Unit::One => &[("%", 1, -2, 1), ("percent", 1, -2, 1), ("pct", 1, -2, 1)],
        _ => &[],
    }
}
