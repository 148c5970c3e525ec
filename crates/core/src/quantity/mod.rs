//! Figures as people write them: reading them, the preferred values, markings and colours on parts.

mod bare;
mod code;
mod colours;
mod decimal;
mod fault;
mod figure;
mod gauge;
mod limbs;
mod phrase;
mod preferred;
mod prefix;
mod product;
mod read;
mod reading;
mod refusal;
mod scan;
mod sensitivity;
mod sentence;
mod spelling;
mod tapped;
mod tolerance;
mod unit;
mod vocabulary;
mod words;
mod written;

pub use code::{Marking, letter_code, printed_digits, three_digit};
pub use colours::{Bands, bands, bands_of};
pub use fault::CODES;
pub use gauge::{awg_metres, swg_metres};
pub use preferred::{Preferred, Series, nearest, step};
pub use prefix::Prefix;
pub use read::{NOTATIONS, read};
pub use reading::{Mend, Reading, Unread};
pub use tolerance::{letter_tolerance, tolerance_letter};
pub use unit::Unit;
