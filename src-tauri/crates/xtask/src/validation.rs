//! How far the program is from published and reference values: a report of every case, and the worst by group.

use hosewright_api::PROGRAM;
use hosewright_core::catalogue::Catalogue;
use hosewright_tests::find_figures::{Answered, connections, figures, hoses, markings};
use hosewright_tests::vectors::{Compared, worst_by_group};
use hosewright_tests::{flow_figures, life_figures, route_figures, surge_figures, viscosity_figures};
use std::fmt::Write as _;
use std::io::{Error, Result};
use std::path::Path;

/// Writes the report and prints its summary.
pub fn write(report: &Path) -> Result<()> {
    let catalogue = Catalogue::embedded();
    let named = [
        ("connections", connections(catalogue)),
        ("hoses", hoses(catalogue)),
        ("markings", markings(catalogue)),
    ];
    let values: [(&str, Vec<Compared>); 6] = [
        ("flow", flow_figures::flow_cases()),
        ("viscosity", viscosity_figures::viscosity_cases()),
        ("surge", surge_figures::surge_cases()),
        ("life", life_figures::life_cases()),
        ("life, intervals and late entries", life_figures::mixed_life_cases()),
        ("route", route_figures::route_cases()),
    ];
    let summary = summary(&named, &values);
    println!("{summary}");
    let mut text = format!(
        "# Validation\n\n{PROGRAM}, tables {}. Made by `cargo xtask validation` from `tests/vectors`.\n\n{summary}",
        catalogue.version
    );
    for (name, answered) in &named {
        text += &cases(name, answered);
    }
    for (name, compared) in &values {
        text += &rows(name, compared);
    }
    if let Some(folder) = report.parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::write(report, text)?;
    println!("written: {}", report.display());
    let outside = values.iter().flat_map(|(_, compared)| compared).filter(|row| !row.agrees()).count();
    if outside == 0 { Ok(()) } else { Err(Error::other(format!("{outside} values outside their tolerance"))) }
}

fn summary(named: &[(&str, Vec<Answered>)], values: &[(&str, Vec<Compared>)]) -> String {
    let mut text =
        "Published parts: in the set of classes that holds 95 %, mean size of that set\n\n".to_owned();
    for (name, answered) in named {
        let found = figures(answered);
        let (cases, hits, size) = (found.cases, found.hits * 100.0, found.mean_size);
        let _ = writeln!(text, "- {name}: {cases} cases, {hits:.1} %, {size:.2}");
    }
    text += "\nWorst relative deviation from check values, by group\n\n";
    for (name, compared) in values {
        let outside = compared.iter().filter(|row| !row.agrees()).count();
        let _ = writeln!(text, "- {name}: {} values, {outside} outside their tolerance", compared.len());
        for (group, worst) in worst_by_group(compared) {
            let _ = writeln!(text, "  - {group}: {worst:.1e}");
        }
    }
    text + &stable_routes()
}

/// The stable rows of the elastica table, whose bars are 1 % of the radius and 0.5 % of the energy.
fn stable_routes() -> String {
    let misses = route_figures::stable_misses();
    let worst = |of: fn(&(String, f64, f64)) -> f64| misses.iter().map(of).fold(0.0, f64::max);
    format!(
        "- route, {} stable rows: worst radius {:.1e} (bar 1e-2), worst energy {:.1e} (bar 5e-3)\n",
        misses.len(),
        worst(|miss| miss.1),
        worst(|miss| miss.2)
    )
}

/// Every published part, and the set that holds 95 %.
fn cases(name: &str, answered: &[Answered]) -> String {
    let mut text =
        format!("\n## Published {name}\n\n| case | published | in the set | the set |\n|---|---|---|---|\n");
    for case in answered {
        let set: Vec<&str> =
            case.held.iter().filter_map(|(names, _)| names.first()).map(String::as_str).collect();
        let published = case.published.first().map_or("", String::as_str);
        let is_hit = if case.is_hit() { "yes" } else { "no" };
        let _ = writeln!(text, "| {} | {published} | {is_hit} | {} |", case.id, cell(&set.join("; ")));
    }
    text
}

/// Every check value, what was found, and where the check value is from.
fn rows(name: &str, compared: &[Compared]) -> String {
    let mut text = format!(
        "\n## Values of {name}\n\n| case | value | published | found | deviation | allowed | source |\n|---|---|---|---|---|---|---|\n"
    );
    for row in compared {
        let Compared { case, quantity, expected, found, tolerance, source, .. } = row;
        let (apart, source) = (row.deviation(), cell(source));
        let mark = if row.agrees() { "" } else { " **outside**" };
        let _ = writeln!(
            text,
            "| {case} | {quantity} | {expected} | {found} | {apart:.1e}{mark} | {tolerance:e} | {source} |"
        );
    }
    text
}

/// Text as it may stand in a cell.
fn cell(text: &str) -> String {
    text.replace('|', "\\|")
}
