//! Speech, noise and the ear in figures: band tables, A-weighting, the speech intelligibility index.
//!
//! - [`BANDS`]: the one-third octaves that carry speech, with what is in them and what they matter;
//! - [`a_weighting_db`], [`total_db`]: levels as the ear weighs them;
//! - [`intelligibility`]: ANSI S3.5's index of speech in noise;
//! - [`from_mulaw`], [`resample`], [`spoken_rms`]: a clip, and how loud it is where someone speaks.

mod bands;
mod clip;
mod index;
mod mulaw;
mod resample;
mod spectrum;
mod weighting;

pub use bands::{BANDS, Band, COUNT, QUIET_DB, SPEECH, Spectrum, pink, total_db};
pub use clip::spoken_rms;
pub use index::{Audibility, audible, intelligibility, worked};
pub use mulaw::from_mulaw;
pub use resample::resample;
pub use spectrum::{HEARD, Heard, heard};
pub use weighting::{a_weighting_db, exact_mid_band};
