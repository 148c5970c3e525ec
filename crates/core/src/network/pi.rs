/// What a network works into: a resistance with a reactance in series, positive where inductive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Antenna {
    /// The series resistance, over 0.
    pub ohms: f64,
    /// The series reactance.
    pub reactance: f64,
}

/// What a figure of Q counts. Both are published, and the parts differ by some ten percent.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counts {
    /// The plate load over the reactance of the input capacitor (handbooks up to the 1980s).
    InputSide,
    /// That and the antenna's resistance over the reactance of the output capacitor (since 1995; E. Wingfield, QST,
    /// August 1983).
    BothSides,
}

/// Why there is no such network.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoNetwork {
    /// A network of so low a Q does not span the two resistances.
    LowQ,
    /// The antenna's own reactance is more than the last part can make up for.
    Reactance,
    /// The middle resistance of a pi-L is not over the antenna's.
    Middle,
}

/// A pi network: capacitor, coil, capacitor, and where it is a pi-L a second coil to the antenna. Susceptances and
/// reactances at the one frequency it is made for; parts without loss.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pi {
    /// Susceptance at the plate, the tube's own capacitance in it.
    pub input_siemens: f64,
    /// Reactance of the coil.
    pub coil_ohms: f64,
    /// Susceptance of the second capacitor.
    pub output_siemens: f64,
    /// Reactance of the second coil; none in a plain pi.
    pub second_ohms: Option<f64>,
}

impl Pi {
    /// The pi network that makes `antenna` look like `load_ohms`. The antenna's reactance is taken into the output
    /// capacitor; its resistance in `q` is the one in series.
    ///
    /// # Errors
    /// [`NoNetwork::LowQ`], [`NoNetwork::Reactance`].
    ///
    /// # Source
    /// Two L networks back to back: F. E. Terman, *Radio Engineers' Handbook* (1943), section 3; the two meanings of Q
    /// as in [`Counts`]. The quadratic for both sides is our own rearrangement of them.
    pub fn plain(load_ohms: f64, antenna: Antenna, q: f64, counts: Counts) -> Result<Pi, NoNetwork> {
        let Antenna { ohms, reactance } = antenna;
        let square = ohms * ohms + reactance * reactance;
        // The antenna as a resistance beside a susceptance.
        let (beside, own) = (square / ohms, -reactance / square);
        let input = input_q(load_ohms, beside, q + ohms * own, beside / ohms, counts, q)?;
        Self::spanning(load_ohms, beside, input, own)
    }

    /// The pi-L network: a pi to `middle_ohms`, then a shunt capacitor, taken into the pi's second, and a coil in series
    /// with the antenna, which takes the antenna's reactance in. Of `q` it is the pi's alone.
    ///
    /// # Errors
    /// [`NoNetwork::LowQ`], [`NoNetwork::Reactance`], [`NoNetwork::Middle`].
    ///
    /// # Source
    /// As for the pi; the L is `q = √(middle/antenna − 1)` of any handbook.
    pub fn with_second(
        load_ohms: f64,
        middle_ohms: f64,
        antenna: Antenna,
        q: f64,
        counts: Counts,
    ) -> Result<Pi, NoNetwork> {
        let step = middle_ohms / antenna.ohms - 1.0;
        if step <= 0.0 {
            return Err(NoNetwork::Middle);
        }
        let l_q = crate::root::sqrt(step);
        let second = l_q * antenna.ohms - antenna.reactance;
        if second <= 0.0 {
            return Err(NoNetwork::Reactance);
        }
        let input = input_q(load_ohms, middle_ohms, q, 1.0, counts, q)?;
        let pi = Self::spanning(load_ohms, middle_ohms, input, -l_q / middle_ohms)?;
        Ok(Pi { second_ohms: Some(second), ..pi })
    }

    /// The pi of that input Q between two resistances, `own` the susceptance that is already beside the second.
    fn spanning(load_ohms: f64, beside: f64, input: f64, own: f64) -> Result<Pi, NoNetwork> {
        let series = load_ohms / (1.0 + input * input);
        let step = beside / series - 1.0;
        if step < 0.0 {
            return Err(NoNetwork::LowQ);
        }
        let output = crate::root::sqrt(step);
        let output_siemens = output / beside - own;
        if output_siemens <= 0.0 {
            return Err(NoNetwork::Reactance);
        }
        let coil_ohms = (input + output) * series;
        Ok(Pi { input_siemens: input / load_ohms, coil_ohms, output_siemens, second_ohms: None })
    }

    /// The coil's reactance that makes the load real again with other capacitors, and what the tube then sees; `None`
    /// where no coil does.
    #[must_use]
    pub fn retuned(self, antenna: Antenna) -> Option<(f64, f64)> {
        let reactance = antenna.reactance + self.second_ohms.unwrap_or(0.0);
        let square = antenna.ohms * antenna.ohms + reactance * reactance;
        // Antenna and second coil as a conductance, with the output capacitor beside it; then as a series impedance.
        let (g, b) = (antenna.ohms / square, self.output_siemens - reactance / square);
        let whole = g * g + b * b;
        let (series, capacitive) = (g / whole, b / whole);
        let twice = 2.0 * self.input_siemens * series;
        let room = 1.0 - twice * twice;
        if room < 0.0 {
            return None;
        }
        let left = (1.0 + crate::root::sqrt(room)) / (2.0 * self.input_siemens);
        Some((left + capacitive, (series * series + left * left) / series))
    }
}

/// The input side's share of `q`: all of it, or what is left beside the output's. `sum` is q with the antenna's own
/// susceptance counted back, `share` how many times the resistance in series goes into the one beside.
fn input_q(load_ohms: f64, beside: f64, sum: f64, share: f64, counts: Counts, q: f64) -> Result<f64, NoNetwork> {
    if counts == Counts::InputSide {
        return Ok(q);
    }
    // (beside/load)(x² + 1) − 1 = share²(sum − x)², written as a·x² + 2b·x + c = 0.
    let ratio = beside / load_ohms;
    let (a, b, c) = (ratio - share * share, share * share * sum, ratio - 1.0 - share * share * sum * sum);
    let root = b * b - a * c;
    let input = -c / (b + crate::root::sqrt(f64::max(root, 0.0)));
    if root < 0.0 || !(0.0..=sum).contains(&input) {
        return Err(NoNetwork::LowQ);
    }
    Ok(input)
}
