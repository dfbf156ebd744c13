//! The rod beside a general-purpose boundary value solver, on the same elastica cases in one run.

use crate::promises::Promise;
use crate::timed::Times;
use hosewright_core::route::{Settled, Span};
use hosewright_tests::route_figures::spans;
use serde_json::{Value, json};
use std::io::{Error, Result, Write};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// What the peer is made of, by version.
pub(crate) const PACKAGES: [&str; 2] = ["numpy==2.3.5", "scipy==1.17.1"];

/// How often each of our own cases is run; the median counts.
const RUNS: u64 = 9;

/// A peer's shape is the table's where its energy is within this part of it: 0.5 %.
const SAME: f64 = 5e-3;

/// Runs both and prints the times of each case.
pub fn measure() -> Result<Vec<Promise>> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../..");
    let python = python(&root.join("target/peers"), &PACKAGES)?;
    let spans = spans();
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/benches/peers/elastica.py");
    let answered =
        asked(&python, &script, &Value::from_iter(spans.iter().map(|(id, span, _)| case(id, span))))?;
    println!("{:<18}{:>12}{:>12}{:>10}  peer's shape", "case", "ours ms", "peer ms", "ratio");
    let (mut totals, mut same, mut not) = ([0.0; 2], 0, 0);
    for ((id, span, energy), peer) in spans.iter().zip(answered.as_array().into_iter().flatten()) {
        let ours = median(span)?;
        let theirs = peer["seconds"].as_f64().unwrap_or(f64::NAN);
        let shape = shape(peer, energy * span.length_mm);
        println!("{id:<18}{:>12.3}{:>12.1}{:>10.0}  {shape}", ours * 1e3, theirs * 1e3, theirs / ours);
        if shape == "the table's" {
            totals = [totals[0] + ours, totals[1] + theirs];
            same += 1;
        } else {
            not += 1;
        }
    }
    println!("{not} others, in which the peer does not find the table's shape");
    println!("ours searches for the least energy from many starts; the peer solves once from one start");
    let what = format!("the rod, {same} cases");
    Ok(vec![Promise::beside(what, totals[0] * 1e3, "solve_bvp", totals[1] * 1e3)])
}

/// What became of the peer's shape, whose energy is for unit length.
fn shape(peer: &Value, unit_energy: f64) -> &'static str {
    let energy = peer["energy"].as_f64().unwrap_or(f64::NAN);
    match peer["solved"].as_bool() {
        Some(true) if (energy / unit_energy - 1.0).abs() < SAME => "the table's",
        Some(true) => "another one, of more energy or unstable",
        _ => "none",
    }
}

fn case(id: &str, span: &Span) -> Value {
    let unit = |vector: [f64; 3]| vector.map(|part| part / span.length_mm);
    json!({"id": id, "gap": unit(span.gap_mm.0), "start": span.start.0, "end": span.end.0})
}

/// Middle time of a cold search, in seconds.
fn median(span: &Span) -> Result<f64> {
    let times = Times::of(RUNS, |_| {
        let settled: std::result::Result<Settled, _> = std::hint::black_box(span).settle();
        std::hint::black_box(settled.is_ok());
        Ok::<(), Error>(())
    })?;
    Ok(times.middle().wall / 1e3)
}

/// A Python with these packages in it, made once.
pub(crate) fn python(venv: &PathBuf, packages: &[&str]) -> Result<PathBuf> {
    let python = venv.join("bin/python");
    if !python.exists() {
        run(Command::new("python3").args(["-m", "venv"]).arg(venv))?;
    }
    run(Command::new(&python).args(["-m", "pip", "install", "--quiet"]).args(packages))?;
    Ok(python)
}

fn run(command: &mut Command) -> Result<()> {
    let ran = command.status()?;
    if ran.success() { Ok(()) } else { Err(Error::other(format!("{command:?} failed"))) }
}

/// What the script answers to a question.
pub(crate) fn asked(python: &Path, script: &Path, question: &Value) -> Result<Value> {
    let mut child = Command::new(python).arg(script).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn()?;
    if let Some(input) = child.stdin.as_mut() {
        input.write_all(question.to_string().as_bytes())?;
    }
    drop(child.stdin.take());
    let output = child.wait_with_output()?;
    if !output.status.success() {
        return Err(Error::other("the peer failed"));
    }
    serde_json::from_slice(&output.stdout).map_err(Error::other)
}
