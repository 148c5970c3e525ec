//! Tubes: the law against quadrature, the table against its sources, the fits against the sheets, the charts.

mod calculator;
mod chart_bounds;
#[path = "../crates/tools/src/charts.rs"]
#[allow(dead_code)]
mod charts;
mod fits;
mod law;
mod regulators;
mod shape;
mod table;
