//! Figures as people write them: reading them, the preferred values, markings and colours on parts.

mod decimal;
mod limbs;
mod preferred;
mod prefix;
mod read;
mod reading;
mod unit;

pub use preferred::{Preferred, Series, nearest, step};
pub use prefix::Prefix;
pub use read::{CODES, NOTATIONS, read};
pub use reading::{Mend, Reading, Unread};
pub use unit::Unit;
