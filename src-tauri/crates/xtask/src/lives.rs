//! How long 100,000 hoses last, beside a general-purpose library on the same history in one run.

use crate::peers::{asked, python};
use crate::promises::Promise;
use crate::timed::{Spent, Times};
use hosewright_core::life::{Life, Record, Weibull, life};
use serde_json::{Value, json};
use std::io::{Error, Result};
use std::path::Path;

/// What the peer is made of, by version.
const PACKAGES: [&str; 1] = ["lifelines==0.30.3"];

/// How many hoses.
pub(crate) const COUNT: u32 = 100_000;

/// How often ours is run; the median counts.
const RUNS: u64 = 9;
/// The bar of one answer.
const BAR_MS: f64 = 300.0;
/// As far as both may differ: the peer stops its search at about 1e-6.
const SAME: f64 = 1e-5;
/// Times at which the part in service is compared.
const AT: [f64; 5] = [500.0, 2000.0, 4000.0, 6000.0, 9000.0];

/// Runs both and prints their answers, which are to be the same.
pub fn measure(count: u32) -> Result<Vec<Promise>> {
    println!("{count} lives of hoses, beside {}", PACKAGES[0]);
    Ok(vec![
        compare("from new", &fleet(count, false)?)?,
        compare("a third entered old", &fleet(count, true)?)?,
    ])
}

/// Lives at the quantiles of a law, half of them taken off whole before; with `entered_old` one in three was entered old.
/// Times are whole, as hours are.
fn fleet(count: u32, entered_old: bool) -> Result<Vec<Record>> {
    let law = Weibull { shape: 2.4, scale: 6500.0 };
    let record = |i: u32| {
        let life = law.quantile((f64::from(i) + 0.5) / f64::from(count));
        let taken_off = f64::from(i.wrapping_mul(2_654_435_761) % 12_000) + 1.0;
        let time = life.min(taken_off).ceil();
        let entered = if entered_old && i.is_multiple_of(3) { (0.4 * time).floor() } else { 0.0 };
        Record::new(time, life <= taken_off, entered).map_err(Error::other)
    };
    (0..count).map(record).collect()
}

fn compare(what: &str, records: &[Record]) -> Result<Promise> {
    let (ours, spent) = timed(records)?;
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../..");
    let python = python(&root.join("target/peers-lives"), &PACKAGES)?;
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/benches/peers/lives.py");
    let peer = asked(&python, &script, &question(records))?;
    let peer_ms = peer["seconds"].as_f64().unwrap_or(f64::NAN) * 1e3;
    println!("{what}: {} failed", ours.failures);
    let mut worst = 0.0_f64;
    for (name, ours) in
        [("shape", ours.shape), ("scale", ours.scale), ("log_likelihood", ours.log_likelihood)]
    {
        worst = worst.max(told(name, ours, peer[name].as_f64()));
    }
    for (index, at) in AT.iter().enumerate() {
        let left = ours.survival.iter().rev().find(|[time, _]| time <= at).map_or(1.0, |[_, left]| *left);
        worst = worst.max(told(&format!("in service at {at}"), Some(left), peer["survival"][index].as_f64()));
    }
    // No comparison at all is no agreement.
    if !worst.is_finite() || worst >= SAME {
        return Err(Error::other("the answers differ"));
    }
    let what = format!("{} lives, {what}", records.len());
    Ok(Promise::time(what, spent, BAR_MS).and_peer("lifelines", peer_ms))
}

/// Prints both values and gives how far they are apart; infinitely where one is not there.
fn told(name: &str, ours: Option<f64>, peer: Option<f64>) -> f64 {
    let (Some(ours), Some(peer)) = (ours, peer) else { return f64::INFINITY };
    let apart = (ours / peer - 1.0).abs();
    println!("  {name:<20}{ours:>16.8}{peer:>16.8}{apart:>12.1e}");
    if apart.is_nan() { f64::INFINITY } else { apart }
}

fn question(records: &[Record]) -> Value {
    json!({
        "time": records.iter().map(Record::time).collect::<Vec<_>>(),
        "failed": records.iter().map(|record| u8::from(record.failed())).collect::<Vec<_>>(),
        "entered": records.iter().map(Record::entered).collect::<Vec<_>>(),
        "at": AT,
    })
}

/// The answer, and the middle of a few runs.
fn timed(records: &[Record]) -> Result<(Life, Spent)> {
    let times = Times::of(RUNS, |_| {
        std::hint::black_box(life(std::hint::black_box(records)));
        Ok::<(), Error>(())
    })?;
    Ok((life(records), times.middle()))
}
