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
    let tables: [(&str, Vec<Compared>); 5] = [
        ("flow", flow_figures::flow_cases()),
        ("viscosity", viscosity_figures::viscosity_cases()),
        ("surge", surge_figures::surge_cases()),
        ("life", life_figures::life_cases()),
        ("route", route_figures::route_cases()),
    ];
    for (name, compared) in tables {
        println!(
            "  {name}: {} values, {} outside their tolerance",
            compared.len(),
            compared.iter().filter(|row| !row.agrees()).count()
        );
        for (group, worst) in worst_by_group(&compared) {
            println!("    {group:<34}{worst:.1e}");
        }
    }
}
