//! What a person waits for at every step: the benches of the core and of the reader, and the command line's start.

use crate::promises::Promise;
use crate::timed::Times;
use serde_json::Value;
use std::io::{Error, Result};
use std::path::Path;
use std::process::{Command, Stdio};

/// The benches by their names, and their limits in ms. Their cases stand in `benches/`.
const BENCHES: [(&str, f64); 13] = [
    ("read the catalogue", 20.0),
    ("find a hose by a name people use", 1.0),
    ("candidates: hose and both ends measured", 1.0),
    ("find with next reading: nothing read", 5.0),
    ("find with next reading: hose measured", 5.0),
    ("find with next reading: print and one diameter", 5.0),
    ("find with next reading: hose and both ends measured", 5.0),
    ("one pose, cold", 3.0),
    ("one pose, followed", 0.8),
    ("forty poses with length change", 60.0),
    ("read/12 megapixels with a code", 300.0),
    ("read/640x480 with a code", 15.0),
    ("read/640x480 without", 15.0),
];

/// From the start of the command line to its answer, in ms.
const START_MS: f64 = 50.0;
const STARTS: u64 = 40;

/// Runs them.
pub fn measure() -> Result<Vec<Promise>> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../..");
    let mut promises = vec![start(&root)?];
    // Criterion takes one pattern for all.
    let wanted: Vec<String> = BENCHES.iter().map(|(name, _)| format!("^{name}$")).collect();
    cargo(
        &["bench", "--quiet", "-p", "hosewright-core", "-p", "hosewright-sight", "--", &wanted.join("|")],
        &root,
    )?;
    for (name, limit) in BENCHES {
        // A colon is no part of a file's name everywhere.
        let folder = root.join("target/criterion").join(name.replace(':', "_"));
        let told = std::fs::read(folder.join("new/estimates.json"))?;
        let told: Value = serde_json::from_slice(&told).map_err(Error::other)?;
        let nanoseconds = told["median"]["point_estimate"].as_f64().unwrap_or(f64::NAN);
        promises.push(Promise::of(name, nanoseconds / 1e6, "ms", limit));
    }
    Ok(promises)
}

/// The command line is asked for the burst hose of the demo.
fn start(root: &Path) -> Result<Promise> {
    cargo(&["build", "--quiet", "--release", "-p", "hosewright-cli"], root)?;
    let program = root.join("target/release/hosewright");
    let times = Times::of(STARTS, |_| {
        let asked = ["find", "demo/burst-readings.json"];
        let ran = Command::new(&program).current_dir(root).args(asked).stdout(Stdio::null()).status()?;
        if ran.success() { Ok(()) } else { Err(Error::other("the command line failed")) }
    })?;
    // Its own process's time is not this one's.
    Ok(Promise::of("the command line, from start to answer", times.middle().wall, "ms", START_MS))
}

fn cargo(arguments: &[&str], root: &Path) -> Result<()> {
    let ran = Command::new(env!("CARGO")).current_dir(root).args(arguments).status()?;
    if ran.success() { Ok(()) } else { Err(Error::other(format!("cargo {arguments:?} failed"))) }
}
