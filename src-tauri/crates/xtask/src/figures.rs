//! How far the program is from published and reference values, worst deviation by group.

use hosewright_core::catalogue::Catalogue;
use hosewright_tests::find_figures::{connections, figures, hoses, markings};
use hosewright_tests::vectors::{Compared, worst_by_group};
use hosewright_tests::{flow_figures, life_figures, route_figures, surge_figures, viscosity_figures};

/// Prints all figures.
pub fn print() {
    let catalogue = Catalogue::embedded();
    println!("published cases: in the set that holds 95 %, mean size of that set");
    for (name, answered) in [
        ("connections", connections(catalogue)),
        ("hoses", hoses(catalogue)),
        ("markings", markings(catalogue)),
    ] {
        let found = figures(&answered);
        println!(
            "  {name:<14}{:>4} cases  {:>6.1} %  {:.2}",
            found.cases,
            found.hits * 100.0,
            found.mean_size
        );
    }
    println!("worst relative deviation by group");
    let tables: [(&str, Vec<Compared>); 6] = [
        ("flow", flow_figures::flow_cases()),
        ("viscosity", viscosity_figures::viscosity_cases()),
        ("surge", surge_figures::surge_cases()),
        ("life", life_figures::life_cases()),
        ("life, intervals and late entries", life_figures::mixed_life_cases()),
        ("route", route_figures::route_cases()),
    ];
    for (name, compared) in tables {
        println!(
            "  {name}: {} values, {} outside their tolerance",
            compared.len(),
            compared.iter().filter(|row| !row.agrees()).count()
        );
        if name == "route" {
            stable_routes();
        }
        for (group, worst) in worst_by_group(&compared) {
            println!("    {group:<34}{worst:.1e}");
        }
    }
}

/// The stable rows of the elastica table, whose bars are 1 % of the radius and 0.5 % of the energy.
fn stable_routes() {
    let misses = route_figures::stable_misses();
    let worst = |of: fn(&(String, f64, f64)) -> f64| misses.iter().map(of).fold(0.0, f64::max);
    println!(
        "    {} stable rows: worst radius {:.1e} (bar 1e-2), worst energy {:.1e} (bar 5e-3)",
        misses.len(),
        worst(|miss| miss.1),
        worst(|miss| miss.2)
    );
}
