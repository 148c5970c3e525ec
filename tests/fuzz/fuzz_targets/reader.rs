//! Any text for the reader, in any unit: the first byte is the unit, the second the prefix shown, the rest the text.
#![no_main]

use libfuzzer_sys::fuzz_target;
use tagstrip_core::quantity::{CODES, NOTATIONS, Prefix, Unit, read};

fuzz_target!(|bytes: &[u8]| {
    let [unit, shown, text @ ..] = bytes else { return };
    let Ok(text) = str::from_utf8(text) else { return };
    let unit = Unit::ALL[usize::from(*unit) % Unit::ALL.len()];
    let shown = Prefix::ALL.get(usize::from(*shown) % (2 * Prefix::ALL.len())).copied();
    match read(text, unit, shown) {
        Ok(reading) => {
            assert!(reading.value.is_finite() && NOTATIONS.contains(&reading.notation), "{reading:?}");
            assert!(reading.tolerance.is_none_or(|share| (0.0..=1.0).contains(&share)), "{reading:?}");
        }
        Err(unread) => {
            assert!(CODES.contains(&unread.code), "{unread:?}");
            for mend in unread.mends {
                let again = read(&mend.text, unit, shown).map(|reading| reading.value.to_bits());
                assert_eq!(again, Ok(mend.value.to_bits()), "{text:?} offers {:?}", mend.text);
            }
        }
    }
});
