//! Supplies made at random, and the rectifier sheets: `supply [random|energy|speed|sheets|picture]`. One figure a line.

#[path = "../../../../tests/common/generate.rs"]
mod generate;
#[path = "../supply/mod.rs"]
mod supply;

use std::{env, process::ExitCode};

fn main() -> ExitCode {
    match env::args().nth(1).as_deref() {
        Some("random") => supply::random(),
        Some("energy") => supply::energy(),
        Some("speed") => supply::speed(),
        Some("sheets") => supply::sheets(),
        _ => {
            eprintln!("supply random|energy|speed|sheets");
            return ExitCode::from(2);
        }
    }
    ExitCode::SUCCESS
}
