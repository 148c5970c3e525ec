//! Prints how near the tubes come to published resistance-coupled charts; fails where a bound is not kept.

#[path = "../charts.rs"]
mod charts;

use std::process::ExitCode;

fn main() -> ExitCode {
    let figures = charts::figures();
    for figure in &figures {
        println!("{figure}");
    }
    if figures.iter().all(charts::Figure::holds) { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
