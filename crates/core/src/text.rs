//! Texts put together without the standard formatter, which would bring more code than everything here that it served.

use alloc::string::String;

/// The pieces, one behind the other.
pub(crate) fn together(pieces: &[&str]) -> String {
    pieces.concat()
}

/// A count in digits.
pub(crate) fn counted(count: usize) -> String {
    let mut digits = [b'0'; 20];
    let (mut first, mut rest) = (digits.len(), count);
    while let Some(digit) = first.checked_sub(1).and_then(|place| digits.get_mut(place)) {
        *digit += u8::try_from(rest % 10).unwrap_or(0);
        first -= 1;
        rest /= 10;
        if rest == 0 {
            break;
        }
    }
    digits.iter().skip(first).copied().map(char::from).collect()
}

/// Whether this is a letter of some script: near enough to tell a word that is not known from a mark that is not, without
/// the tables of every script. Beyond ASCII it is everything but the blocks of signs.
pub(crate) fn is_letter(sign: char) -> bool {
    match sign {
        '\0'..='\u{7f}' => sign.is_ascii_alphabetic(),
        'ª' | 'µ' | 'º' | '\u{2126}' | '\u{212a}' | '\u{212b}' => true,
        '\u{80}'..='\u{bf}'
        | '×'
        | '÷'
        | '\u{2000}'..='\u{2bff}'
        | '\u{3000}'..='\u{303f}'
        | '\u{e000}'..='\u{f8ff}'
        | '\u{fe00}'..='\u{fe6f}'
        | '\u{ff00}'..='\u{ffff}'
        | '\u{1f000}'..='\u{1faff}' => false,
        _ => true,
    }
}
