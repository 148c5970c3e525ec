use super::{Antenna, NoNetwork};

/// A parallel tank with a link to the antenna, the link tuned by a capacitor in series. Reactances at the one frequency
/// it is made for; parts without loss.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Link {
    /// Susceptance at the plate, the tube's own capacitance in it.
    pub input_siemens: f64,
    /// Reactance of the tank coil.
    pub coil_ohms: f64,
    /// Reactance of the link.
    pub link_ohms: f64,
    /// Reactance of the capacitor in series with it, as a positive figure.
    pub output_ohms: f64,
    /// The coupling that brings the load over, 0 to 1.
    pub coupling: f64,
}

impl Link {
    /// The tank of that `q` (load over the reactance of its capacitor) whose link has `link_q` times the antenna's
    /// resistance for its reactance.
    ///
    /// With the link tuned, the antenna comes over as a resistance in series with the tank coil, `(ωM)²/R`; the coupling
    /// is then `1/√(q·link_q)`.
    ///
    /// # Errors
    /// [`NoNetwork::LowQ`] where that would have to be 1 or more; [`NoNetwork::Reactance`] where the antenna is more
    /// capacitive than the link is inductive.
    ///
    /// # Source
    /// F. E. Terman, *Radio Engineers' Handbook* (1943), section 3: coupled circuits, secondary at resonance.
    pub fn new(load_ohms: f64, antenna: Antenna, q: f64, link_q: f64) -> Result<Link, NoNetwork> {
        let link_ohms = link_q * antenna.ohms;
        let output_ohms = link_ohms + antenna.reactance;
        if output_ohms <= 0.0 {
            return Err(NoNetwork::Reactance);
        }
        if q * link_q <= 1.0 {
            return Err(NoNetwork::LowQ);
        }
        Ok(Link {
            input_siemens: q / load_ohms,
            coil_ohms: load_ohms * q / (1.0 + q * q),
            link_ohms,
            output_ohms,
            coupling: 1.0 / crate::root::sqrt(q * link_q),
        })
    }
}
