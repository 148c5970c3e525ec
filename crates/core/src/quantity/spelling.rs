use alloc::{string::String, vec::Vec};

/// A text is refused beyond this: no figure with its unit is longer.
const LONGEST: usize = 80;

const VULGAR: [(char, &str); 18] = [
    ('½', "1/2"),
    ('⅓', "1/3"),
    ('⅔', "2/3"),
    ('¼', "1/4"),
    ('¾', "3/4"),
    ('⅕', "1/5"),
    ('⅖', "2/5"),
    ('⅗', "3/5"),
    ('⅘', "4/5"),
    ('⅙', "1/6"),
    ('⅚', "5/6"),
    ('⅐', "1/7"),
    ('⅛', "1/8"),
    ('⅜', "3/8"),
    ('⅝', "5/8"),
    ('⅞', "7/8"),
    ('⅑', "1/9"),
    ('⅒', "1/10"),
];

/// The text in one spelling: one kind of space, minus, micro, ohm, quote and fraction, full-width letters and digits
/// made plain, marks without a width dropped. Spelling it again changes nothing. Nothing if it is too long.
pub(super) fn spell(text: &str) -> Option<String> {
    let given: Vec<char> = text.trim().chars().map(plain).filter(|letter| !is_invisible(*letter)).collect();
    if given.len() > LONGEST {
        return None;
    }
    let mut spelt = String::with_capacity(given.len() + 8);
    for (at, letter) in given.iter().copied().enumerate() {
        let next = given.get(at + 1).copied();
        let before = spelt.chars().next_back();
        let digit_next = next.is_some_and(|next| next.is_ascii_digit());
        if let Some((_, fraction)) = VULGAR.iter().find(|(sign, _)| *sign == letter) {
            if before.is_some_and(|before| before.is_ascii_digit()) {
                spelt.push(' ');
            }
            spelt.push_str(fraction);
            if digit_next {
                spelt.push(' ');
            }
        } else if let Some(raised) = raised(letter) {
            let goes_on = at > 0 && given.get(at - 1).is_some_and(|before| self::raised(*before).is_some());
            if !goes_on {
                spelt.push('^');
            }
            spelt.push(raised);
        } else if letter.is_whitespace() {
            let groups = letter != ' ' && before.is_some_and(|c| c.is_ascii_digit()) && is_group(given.get(at + 1..));
            if !groups && before != Some(' ') {
                spelt.push(' ');
            }
        } else if letter == '·' {
            // A raised point is the old printed decimal point, and a times sign before a power of ten.
            let times = given.get(at + 1..at + 3) == Some(&['1', '0'])
                && given.get(at + 3).is_some_and(|c| *c == '^' || self::raised(*c).is_some());
            spelt.push(if times { '×' } else { '.' });
        } else {
            match letter {
                '℃' => spelt.push_str("°C"),
                '℉' => spelt.push_str("°F"),
                letter => spelt.push(letter),
            }
        }
    }
    Some(signs_taken_together(spelt.trim()))
}

/// Signs typed in two or three strokes.
const STROKES: [(&str, char); 3] = [("''", '"'), ("+/-", '±'), ("+-", '±')];

fn signs_taken_together(text: &str) -> String {
    let mut taken = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(next) = rest.chars().next() {
        let sign = STROKES.iter().find_map(|(strokes, sign)| Some((rest.strip_prefix(strokes)?, *sign)));
        let (left, sign) = sign.unwrap_or((rest.get(next.len_utf8()..).unwrap_or(""), next));
        taken.push(sign);
        rest = left;
    }
    taken
}

/// Whether exactly three digits follow: the next group of a figure set in groups, not a fraction.
fn is_group(rest: Option<&[char]>) -> bool {
    let rest = rest.unwrap_or_default();
    let digits = rest.iter().take_while(|letter| letter.is_ascii_digit()).count();
    digits == 3 && !matches!(rest.get(3), Some('/' | '⁄' | '∕'))
}

fn plain(letter: char) -> char {
    match letter {
        '\u{ff01}'..='\u{ff5e}' => char::from_u32(u32::from(letter) - 0xff01 + 0x21).unwrap_or(letter),
        '\u{3000}' | '\t' | '\n' | '\r' => ' ',
        '−' | '–' | '—' | '﹣' | '‐' | '‑' => '-',
        'μ' => 'µ',
        '\u{2126}' => 'Ω',
        '″' | '“' | '”' => '"',
        '′' | '‘' | '’' => '\'',
        '⁄' | '∕' => '/',
        '⋅' | '∙' => '·',
        '*' => '×',
        'º' | '˚' => '°',
        '№' => '#',
        letter => letter,
    }
}

fn is_invisible(letter: char) -> bool {
    matches!(letter, '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
}

fn raised(letter: char) -> Option<char> {
    let at = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺".chars().position(|raised| raised == letter)?;
    "0123456789-+".chars().nth(at)
}
