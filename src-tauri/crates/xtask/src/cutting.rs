//! Which piece is cut from what, beside a general-purpose solver on the same random batches.

use crate::peers::{PACKAGES, asked, python};
use hosewright_core::cutting::{Batch, CutPlan, Stock, StockSort, cut};
use hosewright_core::quantity::Millimetres;
use serde_json::{Value, json};
use std::io::{Error, Result};
use std::path::Path;
use std::time::Instant;

/// What the saw takes, and from which length a rest is kept, in mm.
const KERF: f64 = 3.0;
const USEFUL: f64 = 300.0;

/// Most pieces and offcuts of a batch.
const PIECES: u64 = 40;
const OFFCUTS: u64 = 60;

/// How often each batch is timed.
const RUNS: usize = 5;

/// The bar of one batch.
const BAR_MS: f64 = 50.0;

/// The part of all batches that is to be within a kerf of the peer.
const BAR_PART: f64 = 0.95;

/// Figures of one batch, in mm.
struct Compared {
    /// Our new hose less the peer's: above nothing where the peer found better.
    reel: f64,
    /// Our scrap less the peer's, where both take the same new hose.
    scrap: Option<f64>,
    /// Whether the peer proved that nothing takes less new hose.
    proved: bool,
    ms: f64,
}

/// Runs both and prints how far apart they are. A bar that is missed is an error.
pub fn print(count: usize, seed: u64, limit: f64) -> Result<()> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../..");
    let python = python(&root.join("target/peers"), &PACKAGES)?;
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/benches/peers/cutting.py");
    let mut chance = Chance(seed);
    let batches: Vec<Batch> = (0..count).map(|_| batch(&mut chance)).collect();
    let mut ours = Vec::new();
    for batch in &batches {
        ours.push(timed(batch)?);
    }
    let answered =
        asked(&python, &script, &Value::from_iter(batches.iter().map(|batch| case(batch, limit))))?;
    let peers = answered.as_array().into_iter().flatten();
    let compared: Vec<Compared> =
        ours.iter().zip(peers).filter_map(|(ours, peer)| compared(ours, peer)).collect();
    if ours.iter().any(|(plan, _)| !plan.unmade.is_empty()) {
        return Err(Error::other("a batch was left unmade that has enough new hose"));
    }
    told(&compared, count, seed, limit);
    let proved = ours.iter().filter(|(plan, _)| plan.proved).count();
    println!("  ours proved by itself that nothing is better: {proved} of {count}");
    let missed = missed(&compared, count);
    if missed.is_empty() { Ok(()) } else { Err(Error::other(missed.join("; "))) }
}

/// The bars that are missed. Times are judged of a release alone.
fn missed(compared: &[Compared], count: usize) -> Vec<String> {
    let mut missed = Vec::new();
    if compared.len() < count {
        missed.push(format!("the peer answered {} of {count} batches", compared.len()));
    }
    let scraps: Vec<f64> = compared.iter().filter_map(|one| one.scrap).collect();
    let reels: Vec<f64> = compared.iter().map(|one| one.reel).collect();
    for (what, gaps) in [("new hose", reels), ("scrap", scraps)] {
        let within = gaps.iter().filter(|gap| **gap <= KERF + 1e-6).count();
        if (within as f64) < BAR_PART * gaps.len() as f64 {
            missed.push(format!(
                "{what}: {within} of {} within a kerf, {BAR_PART} of them are asked",
                gaps.len()
            ));
        }
    }
    let slow = compared.iter().filter(|one| one.ms > BAR_MS).count();
    if slow > 0 && !cfg!(debug_assertions) {
        missed.push(format!("{slow} batches took more than {BAR_MS} ms"));
    }
    missed
}

fn told(compared: &[Compared], count: usize, seed: u64, limit: f64) {
    let profile = if cfg!(debug_assertions) { "development" } else { "release" };
    println!(
        "{count} random batches of up to {PIECES} pieces and {OFFCUTS} offcuts, seed {seed}, kerf {KERF} mm"
    );
    println!("  the peer answered {} within {limit} s for each aim", compared.len());
    spread("new hose, ours less the peer's", compared.iter().map(|one| one.reel).collect());
    let proved: Vec<f64> = compared.iter().filter(|one| one.proved).map(|one| one.reel).collect();
    spread("the same where the peer proved its own", proved);
    spread("scrap, where new hose is the same", compared.iter().filter_map(|one| one.scrap).collect());
    let mut times: Vec<f64> = compared.iter().map(|one| one.ms).collect();
    times.sort_by(f64::total_cmp);
    let within = times.iter().filter(|ms| **ms <= BAR_MS).count();
    if let (Some(median), Some(worst)) = (times.get(times.len() / 2), times.last()) {
        println!("  ms a batch ({profile}): median {median:.1}, worst {worst:.1}; {within} within {BAR_MS}");
    }
}

fn spread(what: &str, gaps: Vec<f64>) {
    let within = gaps.iter().filter(|gap| **gap <= KERF + 1e-6).count();
    let better = gaps.iter().filter(|gap| **gap < -0.05).count();
    let worst = gaps.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mean = gaps.iter().map(|gap| gap.max(0.0)).sum::<f64>() / gaps.len().max(1) as f64;
    println!(
        "  {what}: {within} of {} within a kerf; mean {mean:.2} mm over, worst {worst:.1} mm; ours better in {better}",
        gaps.len()
    );
}

/// The plan, and the least time of a few runs in ms: what else the machine does is no part of it.
fn timed(batch: &Batch) -> Result<(CutPlan, f64)> {
    let mut least = f64::INFINITY;
    for _ in 1..RUNS {
        least = least.min(once(batch)?.1);
    }
    let (plan, ms) = once(batch)?;
    Ok((plan, least.min(ms)))
}

fn once(batch: &Batch) -> Result<(CutPlan, f64)> {
    let began = Instant::now();
    let plan = cut(batch).map_err(Error::other)?;
    Ok((plan, began.elapsed().as_secs_f64() * 1e3))
}

fn compared((plan, ms): &(CutPlan, f64), peer: &Value) -> Option<Compared> {
    let reel = plan.reel_mm.get() - peer["reel"].as_f64()?;
    let scrap = peer["scrap"].as_f64().filter(|_| reel.abs() < 0.05).map(|scrap| plan.scrap_mm.get() - scrap);
    Some(Compared { reel, scrap, proved: peer["reel_proved"].as_bool().unwrap_or(false), ms: *ms })
}

fn case(batch: &Batch, limit: f64) -> Value {
    let stock = batch
        .stock
        .iter()
        .map(|stock| json!({"reel": stock.sort == StockSort::Reel, "length": stock.length_mm.get()}));
    json!({
        "pieces": batch.pieces_mm.iter().map(|piece| piece.get()).collect::<Vec<_>>(),
        "stock": stock.collect::<Vec<_>>(),
        "kerf": KERF, "useful": USEFUL, "limit": limit,
    })
}

/// Lengths as a van has them, in whole mm: pieces of 0.3 to 3 m, offcuts of 0.3 to 2.5 m, and reels that are long enough
/// for all pieces.
fn batch(chance: &mut Chance) -> Batch {
    let mm = |length: u64| Millimetres(length as f64);
    let pieces: Vec<Millimetres> = (0..chance.from(5, PIECES)).map(|_| mm(chance.from(300, 3000))).collect();
    let offcuts: Vec<Stock> = (0..chance.from(5, OFFCUTS))
        .map(|_| Stock { sort: StockSort::Offcut, length_mm: mm(chance.from(300, 2500)) })
        .collect();
    let wanted: f64 = pieces.iter().map(|piece| piece.get() + KERF).sum();
    let reels = (0..chance.from(1, 3)).map(|_| Stock {
        sort: StockSort::Reel,
        length_mm: Millimetres((wanted + chance.from(0, 20_000) as f64).round()),
    });
    let stock = reels.collect::<Vec<_>>().into_iter().chain(offcuts).collect();
    Batch { pieces_mm: pieces, stock, kerf_mm: Millimetres(KERF), useful_mm: Millimetres(USEFUL) }
}

/// Numbers that look random and are the same for a seed (SplitMix64, Steele and others 2014).
struct Chance(u64);

impl Chance {
    fn from(&mut self, least: u64, most: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        least + (mixed ^ (mixed >> 31)) % (most - least + 1)
    }
}
