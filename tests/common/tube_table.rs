//! The fitted tubes as a table for the page "How we know": parameters, what stayed at its prior, the farthest datum.

use tagstrip_core::tube::{fit, tubes};

/// A header line and a line a tube, tab-separated.
pub fn tube_table() -> String {
    let mut table =
        String::from("tube\tmA/V^1.5\tmu\tspread of mu\tcontact V\tat its usual value\tfarthest datum %\tsources\n");
    for tube in tubes() {
        let fit = fit(&tube.sheet).expect("the table's tubes are fitted");
        let kept = [
            ("spread", fit.mu_spread.at_prior),
            ("contact volts", fit.contact_volts.at_prior),
            ("perveance", fit.perveance.at_prior),
            ("mu", fit.mu.at_prior),
        ];
        let kept: Vec<&str> = kept.into_iter().filter(|(_, at)| *at).map(|(name, _)| name).collect();
        let worst = fit.residuals.iter().map(|residual| 100.0 * residual.log_ratio.exp_m1().abs()).fold(0.0, f64::max);
        let mut sources: Vec<&str> = tube.sheet.points.iter().map(|point| point.source).collect();
        sources.extend(tube.sheet.cutoffs.iter().map(|cutoff| cutoff.source));
        if !tube.sheet.readings.is_empty() {
            sources.push(tube.sheet.readings_source);
        }
        sources.sort_unstable();
        sources.dedup();
        let names = std::iter::once(tube.name).chain(tube.aliases.iter().copied()).collect::<Vec<_>>().join(", ");
        let row = format!(
            "{names}\t{:.4}\t{:.2}\t{:.3}\t{:.3}\t{}\t{worst:.1}\t{}\n",
            tube.law.perveance * 1e3,
            tube.law.mu,
            tube.law.mu_spread,
            tube.law.contact_volts,
            if kept.is_empty() { "none".into() } else { kept.join(", ") },
            sources.join("; "),
        );
        table.push_str(&row);
    }
    table
}
