//! Coupling networks and ladder filters by their closed formulas: what the parts must be. What they then do is the
//! circuit's to say.
//!
//! - [`Pi`]: from a tube's load to an antenna, also with a second coil (pi-L);
//! - [`Link`]: a parallel tank with a link to the antenna;
//! - [`butterworth`], [`chebyshev`]: prototypes of low-pass ladders, and [`refitted`] their coils for capacitors as sold.

mod link;
mod pi;
mod prototype;
mod refit;

pub use link::Link;
pub use pi::{Antenna, Counts, NoNetwork, Pi};
pub use prototype::{butterworth, chebyshev};
pub use refit::{Deviation, deviation, refitted};
