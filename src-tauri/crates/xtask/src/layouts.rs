//! What becomes of many random layouts.

use hosewright_tests::random_layouts::{TRUE_TO, outcome};
use std::io::{Error, Result};

/// Puts them through the rod and prints what became of them; an error where one is wrong.
pub fn print(count: usize, seed: u64) -> Result<()> {
    let found = outcome(count, seed);
    println!("{} random layouts, seed {seed}", found.layouts);
    println!(
        "  {:>6} have a shape that is true to {TRUE_TO:.0e} of its length and greatest moment",
        found.shapes
    );
    println!("  {:>6} have no such shape at their length, and were told so", found.too_short);
    println!("  {:>6} are wrong {:?}", found.wrong.len(), found.wrong);
    println!("  worst residual by the shape itself {:.1e}", found.worst_residual);
    println!(
        "  worst defect by integrating the rod's equation from place to place {:.1e}",
        found.worst_defect
    );
    if found.wrong.is_empty() { Ok(()) } else { Err(Error::other("some layouts are wrong")) }
}
