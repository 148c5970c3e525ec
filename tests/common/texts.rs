//! Texts near what the reader's grammar takes: pieces of it put together with slips, and now and then anything at all.

use super::generate::Chance;

const FIGURES: [&str; 34] = [
    "0",
    "1",
    "4",
    "8",
    "10",
    "18",
    "47",
    "100",
    "104",
    "220",
    "365",
    "473",
    "1000",
    "4700",
    ".001",
    ".02",
    "0.5",
    "4.7",
    "1,5",
    "1,234",
    "12,345.6",
    "1.234,5",
    "1e-6",
    "1E3",
    "2.2e+99",
    "1/2",
    "1 1/2",
    "½",
    "3⅛",
    "0x1F",
    "1.2.3",
    "00",
    "1 000",
    "999999999999999999999999999999999999",
];
const PREFIXES: [&str; 17] =
    ["k", "K", "M", "m", "meg", "µ", "u", "μ", "mu", "n", "p", "G", "T", "kilo", "milli", "micro", "micromicro"];
const UNITS: [&str; 40] = [
    "Ω", "ohm", "ohms", "R", "F", "mfd", "MFD", "mmf", "µµF", "uuf", "H", "hy", "henries", "V", "volts", "A", "mA",
    "Hz", "kc", "mc", "cps", "c/s", "~", "W", "s", "min", "in", "\"", "'", "mm", "cm", "ft", "AWG", "SWG", "%", "dB",
    "°F", "A/V^1.5", "per volt", "mho",
];
const COLOURS: [&str; 18] = [
    "black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "purple", "grey", "gray", "white", "gold",
    "silver", "pink", "none", "yelow", "bn",
];
const MARKS: [&str; 24] = [
    " ", "  ", "\u{a0}", "\u{202f}", "-", "−", "+", "±", "+/-", "#", ".", ",", "/", "=", "O", "l", "|", "×10^", "⁻³",
    "·", "\u{200b}", "?", "“", "５",
];
const LETTERS: [&str; 12] = ["J", "K", "M", "F", "G", "Z", "C", "D", "B", "H", "S", "j"];

/// A text to read.
pub fn text(chance: &mut Chance) -> String {
    match chance.below(16) {
        0 => anything(chance),
        1 => colours(chance),
        2 | 3 => slipped(chance),
        4 => pieces(chance),
        _ => likely(chance),
    }
}

fn pick<'a>(from: &[&'a str], chance: &mut Chance) -> &'a str {
    from[chance.below(from.len())]
}

/// A figure with its prefix, unit and tolerance, each there or not.
pub fn likely(chance: &mut Chance) -> String {
    let mut text = String::new();
    if chance.one_in(12) {
        text.push_str(pick(&MARKS, chance));
    }
    text.push_str(&figure(chance));
    if chance.one_in(3) {
        text.push(' ');
    }
    if !chance.one_in(3) {
        text.push_str(pick(&PREFIXES, chance));
        if chance.one_in(5) {
            text.push_str(&figure(chance));
        }
    }
    if chance.one_in(4) {
        text.push(' ');
    }
    if chance.one_in(2) {
        text.push_str(pick(&UNITS, chance));
    }
    match chance.below(8) {
        0 => text.push_str(pick(&LETTERS, chance)),
        1 => text.extend([" ±", &figure(chance), " %"]),
        2 => text.extend([" ", &chance.below(120).to_string(), "%"]),
        _ => {}
    }
    text
}

fn figure(chance: &mut Chance) -> String {
    if chance.one_in(3) {
        let whole = chance.below(100_000);
        return match chance.below(4) {
            0 => format!("{whole}"),
            1 => format!("{}.{}", whole / 100, whole % 100),
            2 => format!(".{whole:05}"),
            _ => format!("{}", whole / 10 + 1),
        };
    }
    pick(&FIGURES, chance).into()
}

fn colours(chance: &mut Chance) -> String {
    let count = 1 + chance.below(7);
    let names: Vec<&str> = (0..count).map(|_| pick(&COLOURS, chance)).collect();
    names.join(pick(&[" ", ", ", "-"], chance))
}

/// A likely text with a letter changed, left out or doubled.
fn slipped(chance: &mut Chance) -> String {
    let mut letters: Vec<char> = likely(chance).chars().collect();
    for _ in 0..=chance.below(3) {
        if letters.is_empty() {
            break;
        }
        let at = chance.below(letters.len());
        match chance.below(4) {
            0 => drop(letters.remove(at)),
            1 => letters.insert(at, letters[at]),
            2 => {
                let other = (at + 1) % letters.len();
                letters.swap(at, other);
            }
            _ => letters[at] = pick(&MARKS, chance).chars().next().unwrap_or(' '),
        }
    }
    letters.into_iter().collect()
}

fn pieces(chance: &mut Chance) -> String {
    let all = [&FIGURES[..], &PREFIXES, &UNITS, &COLOURS, &MARKS, &LETTERS];
    let count = 1 + chance.below(8);
    (0..count).map(|_| pick(all[chance.below(all.len())], chance)).collect()
}

fn anything(chance: &mut Chance) -> String {
    let count = chance.below(24);
    let letters = (0..count).map(|_| {
        let (first, many) = match chance.below(4) {
            0 => (0, 0x11_0000),
            1 => (0x2000, 0x300),
            _ => (0x20, 0x5f),
        };
        u32::try_from(first + chance.below(many)).ok().and_then(char::from_u32).unwrap_or('\u{fffd}')
    });
    letters.collect()
}
