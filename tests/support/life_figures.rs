//! Lives against their check values.

use crate::vectors::{Compared, Row, rows, text};
use hosewright_core::life::{Covariance, Fit, Record, fit, life, read_csv, turnbull};

/// The table is written to ten significant digits.
const DIGITS: i32 = 10;
/// Standard normal deviate that leaves 2.5 % above.
const NORMAL_97_5: f64 = 1.959_963_984_540_054;

/// `life_cases.csv`: fits, bounds, quantiles and Kaplan-Meier of the data sets beside it.
pub fn life_cases() -> Vec<Compared> {
    rows("life_cases.csv").iter().flat_map(life_case).collect()
}

/// `life_mixed_cases.csv`: fits, bounds and Turnbull's estimate where some were found failed since nobody knows when and some
/// were entered old.
pub fn mixed_life_cases() -> Vec<Compared> {
    rows("life_mixed_cases.csv").iter().map(mixed_life_case).collect()
}

fn mixed_life_case(row: &Row) -> Compared {
    let set = row.text("data_set");
    let records = mixed_history(set);
    let fit = fit(&records).unwrap_or_else(|why| panic!("{}: {why:?}", row.id()));
    let found = match row.text("quantity") {
        "shape" => Some(fit.weibull.shape),
        "scale" => Some(fit.weibull.scale),
        "log likelihood" => Some(fit.log_likelihood),
        "survival" => {
            let time = row.number("time");
            Some(turnbull(&records).iter().rev().find(|[at, _]| *at <= time).map_or(1.0, |[_, left]| *left))
        }
        bound => profile(&fit, bound),
    };
    row.compare("value", found.unwrap_or_else(|| panic!("{}: no answer", row.id())), DIGITS)
}

/// The history of a set of `life_mixed_data.csv`.
pub fn mixed_history(set: &str) -> Vec<Record> {
    let table = text("life_mixed_data.csv");
    let rows: Vec<&str> = table.lines().filter_map(|line| line.strip_prefix(&format!("{set},"))).collect();
    assert!(!rows.is_empty(), "there is no data set {set}");
    read_csv(&format!("time,failed,entered,after\n{}", rows.join("\n")))
        .unwrap_or_else(|error| panic!("{set}: {error}"))
}

/// The history of a data set.
pub fn history(data_set: &str) -> Vec<Record> {
    let file = format!("life_data_{data_set}.csv");
    read_csv(&text(&file)).unwrap_or_else(|error| panic!("{file}: {error}"))
}

fn life_case(row: &Row) -> Vec<Compared> {
    let records = history(row.text("data_set"));
    let fit = fit(&records).unwrap_or_else(|why| panic!("{}: {why:?}", row.id()));
    let quantity = row.text("quantity");
    let found = match row.text("group") {
        "counts" => count(row, &records),
        "weibull_mle" | "printed_parameter" => parameter(&fit, quantity),
        "ci95_wald_log" => wald(&fit, quantity, |estimate, half| estimate * half.exp()),
        "ci95_wald_linear" => wald(&fit, quantity, |estimate, half| estimate * (1.0 + half)),
        "ci95_likelihood_ratio" => profile(&fit, quantity),
        "life_quantile" => Some(fit.weibull.quantile(percent(quantity))),
        "life_quantile_ci95" => {
            let [lower, upper] = fit.quantile_ci95(percent(quantity));
            Some(if quantity.contains("lower") { lower } else { upper })
        }
        "kaplan_meier" => survival_after(&records, row.number("time")),
        group => panic!("{}: no comparison for group {group}", row.id()),
    };
    let found = found.unwrap_or_else(|| panic!("{}: no answer for {quantity}", row.id()));
    let mut compared = vec![row.compare("value", found, DIGITS)];
    if row.text("group") == "printed_parameter" {
        let printed = row.number("second_value");
        compared.push(row.compare_with("printed value", printed, found, DIGITS));
    }
    compared
}

fn count(row: &Row, records: &[Record]) -> Option<f64> {
    let answer = life(records);
    match row.text("quantity") {
        "units" => Some(answer.n as f64),
        "failures" => Some(answer.failures as f64),
        _ => None,
    }
}

fn parameter(fit: &Fit, quantity: &str) -> Option<f64> {
    let weibull = &fit.weibull;
    Some(match quantity {
        "scale eta" | "scale eta printed" | "eta printed (km)" | "scale printed" => weibull.scale,
        "shape beta" | "shape beta printed" | "beta printed" | "shape printed" => weibull.shape,
        "log likelihood" | "log likelihood printed (sign lost in print)" => fit.log_likelihood,
        "mean life printed" => weibull.mean(),
        "standard deviation printed" => weibull.standard_deviation(),
        "mu = ln eta printed" => weibull.scale.ln(),
        "sigma = 1/beta printed" => 1.0 / weibull.shape,
        _ => return None,
    })
}

/// A bound by the normal approximation, from the estimate and half the width of its interval in logarithms.
fn wald(fit: &Fit, quantity: &str, bound: fn(f64, f64) -> f64) -> Option<f64> {
    let Covariance { ln_shape, ln_scale, .. } = fit.covariance;
    let (estimate, variance) = match quantity.split(' ').next()? {
        "beta" => (fit.weibull.shape, ln_shape),
        "eta" => (fit.weibull.scale, ln_scale),
        _ => return None,
    };
    let half = NORMAL_97_5 * variance.sqrt();
    Some(bound(estimate, if quantity.contains("lower") { -half } else { half }))
}

fn profile(fit: &Fit, quantity: &str) -> Option<f64> {
    let [lower, upper] = match quantity.split(' ').next()? {
        "beta" | "shape" => fit.shape_ci95,
        "eta" | "scale" => fit.scale_ci95,
        _ => return None,
    };
    if quantity.contains("lower") { lower } else { upper }
}

/// `B10 life` is the time by which 10 % have failed.
fn percent(quantity: &str) -> f64 {
    let digits = quantity.trim_start_matches('B').split(' ').next().unwrap_or_default();
    digits.parse::<f64>().unwrap_or_else(|_| panic!("{quantity} names no percentage")) / 100.0
}

fn survival_after(records: &[Record], time: f64) -> Option<f64> {
    life(records).survival.iter().rev().find(|[at, _]| *at <= time).map(|[_, survival]| *survival)
}
