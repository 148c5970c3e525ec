//! Where to begin: the direct volts at which the rectifier's mean current and the chain's agree, ripple left out.

use alloc::vec::Vec;
use core::f64::consts::PI;

use super::Chain;

/// Halvings of the interval, and samples of a period, that are plenty for a beginning.
const HALVINGS: usize = 18;
const SAMPLES: usize = 24;

/// So far under the highest volts there are the rectifier is sure to conduct: a map without conduction has no inverse.
const CONDUCTS: f64 = 1.0 - 1e-3;

/// Unknowns at the emf's zero.
pub(super) fn rough(chain: &Chain) -> Vec<f64> {
    let (amps, siemens) = chain.drawn();
    let highest = chain.open_volts();
    let choked = chain.input_choke().is_some();
    let over = |volts: f64| {
        let drawn = amps + siemens * volts;
        if choked {
            let mean = chain.peak * if chain.half_cycles() == 1 { 2.0 / PI } else { 1.0 / PI };
            mean - chain.source_ohms() * drawn - chain.rectifier.volts(drawn) - volts
        } else {
            chain.share() * delivered(chain, volts) - drawn
        }
    };
    let (mut low, mut high) = (0.0, highest);
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if over(middle) > 0.0 { low = middle } else { high = middle }
    }
    unknowns(chain, f64::min(0.5 * (low + high), CONDUCTS * highest))
}

/// Mean current over a period against steady volts at node 0.
fn delivered(chain: &Chain, volts: f64) -> f64 {
    let turn = PI * chain.half_cycles() as f64;
    let sum: f64 = (0..SAMPLES)
        .map(|sample| {
            let emf = chain.emf(turn * (sample as f64 + 0.5) / SAMPLES as f64);
            let drive = emf - chain.rectifier.threshold() - chain.share() * volts;
            chain.rectifier.amps(chain.source_ohms(), drive).0
        })
        .sum();
    sum / SAMPLES as f64
}

/// Unknowns with node 0 at `volts` and everything behind it at rest there.
pub(super) fn unknowns(chain: &Chain, volts: f64) -> Vec<f64> {
    let layout = chain.layout();
    let nodes = chain.ladder(volts);
    let mut unknowns = alloc::vec![0.0; layout.size];
    for (k, volts) in nodes.iter().enumerate() {
        let (place, root) = layout.nodes[k];
        unknowns[place] = root * volts;
        if let (Some((place, root)), Some(before)) = (layout.chokes[k], k.checked_sub(1).map(|k| nodes[k])) {
            unknowns[place] = root * (before - volts) / f64::max(chain.rungs[k].ohms(), super::chain::WIRE);
        }
    }
    let (amps, siemens) = chain.drawn();
    if chain.input_choke().is_some() {
        unknowns.push(amps + siemens * volts);
    } else if chain.connection == super::Connection::Doubler {
        unknowns.push(0.0);
    }
    unknowns
}
