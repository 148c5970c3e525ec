use alloc::{string::String, vec::Vec};

use super::{
    Prefix,
    fault::{
        DOUBLED_PREFIX, Fault, NO_FIGURE, PREFIX_NOT_HERE, TWO_NUMBERS, UNKNOWN_MARK, UNKNOWN_WORD, WHICH_PREFIX,
        WRONG_UNIT,
    },
    figure::Form,
    phrase::joined,
    sentence::Sentence,
    words::{Meaning, meaning},
    written::with_prefix,
};
use crate::text::{is_letter, together};

impl Sentence<'_> {
    /// Why words with this meaning are not read, and texts to try instead.
    pub fn refuse(&self, found: Meaning) -> Fault {
        match found {
            Meaning::Ask(prefixes) => Fault::new(WHICH_PREFIX).or_all(self.with_each(prefixes)),
            Meaning::Doubled(first, second) if first == second => {
                Fault::new(DOUBLED_PREFIX).or_all(self.with_each(&[first]))
            }
            Meaning::Doubled(first, second) => Fault::new(DOUBLED_PREFIX).or_all(self.with_each(&[first, second])),
            Meaning::NotHere => PREFIX_NOT_HERE.into(),
            Meaning::Other => WRONG_UNIT.into(),
            Meaning::Scale { .. } | Meaning::Fahrenheit | Meaning::Unknown => self.unknown(),
        }
    }

    /// `4k7k`: the code alone, or the last letter as its tolerance.
    pub fn twice_marked(&self) -> Fault {
        let (code, words) = (self.front, &self.behind.words);
        let letter = (words.len() == 1).then(|| together(&[code, &words.to_ascii_uppercase()]));
        Fault::new(DOUBLED_PREFIX).or(code).or_all(letter)
    }

    /// The same fault, its texts behind the figure.
    pub fn with_front(&self, fault: Fault) -> Fault {
        let (front, raw) = (self.front, self.behind.raw.trim_end_matches(' '));
        let texts = fault.instead.into_iter().map(|text| together(&[front, raw, " ", &text]));
        Fault::new(fault.code).or_all(texts)
    }

    /// The same fault, its texts with the sign before and the tolerance behind them.
    pub fn with_rest(&self, fault: Fault) -> Fault {
        let texts = fault.instead.into_iter().map(|text| self.signed(&text));
        Fault::new(fault.code).or_all(texts)
    }

    fn signed(&self, text: &str) -> String {
        let sign = if self.negative { "-" } else { "" };
        match self.behind.tolerance {
            Some(tolerance) => together(&[sign, text, " ±", tolerance.trim()]),
            None => together(&[sign, text]),
        }
    }

    fn with_each(&self, prefixes: &[Prefix]) -> Vec<String> {
        let unit = self.unit;
        let texts = prefixes.iter().filter(|prefix| unit.takes(**prefix)).filter_map(|prefix| match self.figure.form {
            Form::Fraction => {
                Some(together(&[self.figure.text, " ", prefix.symbol().encode_utf8(&mut [0; 4]), unit.symbol()]))
            }
            _ => with_prefix(self.figure.decimal, *prefix, unit),
        });
        texts.map(|text| self.signed(&text)).collect()
    }

    /// `1 234` taken as one figure in groups.
    fn grouped(&self) -> Option<String> {
        let rest = self.behind.raw.strip_prefix(' ')?;
        let group = rest.bytes().take_while(u8::is_ascii_digit).count();
        let fits = group == 3 && self.figure.form == Form::Whole && self.mark.is_none() && self.figure.text.len() <= 3;
        fits.then(|| together(&[self.front, rest]))
    }

    fn unknown(&self) -> Fault {
        let raw = self.behind.raw;
        if let Some(at) = raw.find(|letter: char| letter.is_ascii_digit()) {
            // From the sign or point before the next figure on.
            let (first, second) = raw.split_at(at);
            let trimmed = first.trim_end_matches(['.', '-', '+']);
            let second = together(&[first.get(trimmed.len()..).unwrap_or(""), second]);
            let fault = Fault::new(TWO_NUMBERS).or(together(&[self.front, trimmed.trim_end_matches(' ')])).or(second);
            return fault.or_all(self.grouped());
        }
        let is_known = |letter: char| is_letter(letter) || letter.is_ascii_digit() || " .-/%°\"'~^℧".contains(letter);
        if !raw.chars().all(is_known) {
            let plain: String = raw.chars().filter(|letter| is_known(*letter)).collect();
            return Fault::new(UNKNOWN_MARK).or(together(&[self.front, plain.trim_end_matches(' ')]));
        }
        let mut shorter = raw;
        while let Some((words, _)) = shorter.rsplit_once(' ') {
            shorter = words.trim_end_matches(' ');
            if matches!(meaning(&joined(shorter), self.unit), Meaning::Scale { .. } | Meaning::Fahrenheit) {
                return Fault::new(UNKNOWN_WORD).or(together(&[self.front, shorter]));
            }
        }
        UNKNOWN_WORD.into()
    }
}

/// Why a text that begins with no figure is not read: what stands from the first digit on may be.
pub(super) fn no_figure(text: &str) -> Fault {
    let Some(digit) = text.find(|letter: char| letter.is_ascii_digit()) else { return NO_FIGURE.into() };
    let (before, from) = text.split_at(digit);
    let trimmed = before.trim_end_matches('.');
    let from = together(&[before.get(trimmed.len()..).unwrap_or(""), from]);
    let known = before.chars().all(|letter| is_letter(letter) || letter.is_ascii_digit() || " .-".contains(letter));
    let behind_equals = text.rsplit_once('=').map(|(_, behind)| behind.trim().into());
    Fault::new(if known { UNKNOWN_WORD } else { UNKNOWN_MARK }).or_all(behind_equals).or(from)
}
