//! A rectifier supply: winding, rectifier, filter sections, loads.

mod bench;
mod cautions;
mod curves;
mod fields;
mod given;
mod netlist;
mod ratings;
mod regulated;
mod settled;
mod work;

pub use work::work_at;

use super::Calculator;

/// A rectifier supply with its filter.
pub(super) static SUPPLY: Calculator =
    Calculator { id: "supply", group: "power", inputs: fields::INPUTS, answers: fields::ANSWERS, work: work::work };
