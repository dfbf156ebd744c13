//! Kills the program and cuts the power while it writes, and prints what was lost.

use hosewright_tests::faults::{Cut, Outcome, cuts, kills};
use std::path::Path;

/// So many failures are printed; the rest is counted.
const SHOWN: usize = 10;

/// Prints what became of so many kills and so many power cuts.
///
/// # Errors
/// Something was lost or corrupt, or a disk that lies about syncing lost nothing: then the test sees nothing.
pub fn print(program: &Path, killed: usize, cut: usize, seed: u64) -> std::io::Result<()> {
    let mut bad = Vec::new();
    let mut look = |what: &str, outcome: &Outcome, must_lose: bool| {
        let (lost, corrupt) = (outcome.lost.len(), outcome.corrupt.len());
        println!(
            "{what}: {} faults, {lost} lost, {corrupt} corrupt; what was under way was there {} times and not there {}",
            outcome.faults, outcome.after, outcome.before
        );
        if must_lose == (lost + corrupt == 0) && outcome.faults > 0 {
            bad.push(what.to_owned());
            for line in outcome.lost.iter().chain(&outcome.corrupt).take(SHOWN) {
                println!("  {line}");
            }
        }
    };
    look("kills", &kills(program, killed, seed), false);
    look("power cuts", &cuts(program, cut, seed, Cut::Honest), false);
    look(
        "power cuts of a disk that does not sync (must lose)",
        &cuts(program, cut.min(100), seed, Cut::Lying),
        true,
    );
    if bad.is_empty() {
        Ok(())
    } else {
        Err(std::io::Error::other(format!("not as it must be: {}", bad.join(", "))))
    }
}
