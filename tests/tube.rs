//! Tubes: the law against quadrature, the table against its sources, the fits against the sheets, the charts.

mod common;

#[path = "tube/calculator.rs"]
mod calculator;
#[path = "tube/chart_bounds.rs"]
mod chart_bounds;
#[path = "../crates/tools/src/charts.rs"]
#[allow(dead_code)]
mod charts;
#[path = "tube/fits.rs"]
mod fits;
#[path = "tube/law.rs"]
mod law;
#[path = "tube/regulators.rs"]
mod regulators;
#[path = "tube/shape.rs"]
mod shape;
#[path = "tube/table.rs"]
mod table;
