//! Which piece is cut from what, beside a general-purpose solver on the same random batches.

use crate::peers::{PACKAGES, asked, python};
use crate::promises::Promise;
use crate::timed::{Spent, Times};
use hosewright_core::cutting::{Batch, CutPlan, Stock, StockSort, cut};
use hosewright_core::quantity::Millimetres;
use serde_json::{Value, json};
use std::io::{Error, Result};
use std::path::Path;

/// What the saw takes, and from which length a rest is kept, in mm.
const KERF: f64 = 3.0;
const USEFUL: f64 = 300.0;

/// Most pieces and offcuts of a batch.
const PIECES: u64 = 40;
const OFFCUTS: u64 = 60;

/// How often each batch is timed; the middle counts.
const RUNS: u64 = 5;

/// The bar of one batch.
const BAR_MS: f64 = 50.0;

/// The part of all batches, in %, that may be more than a kerf over the peer.
const BAR_PART: f64 = 5.0;

/// Which batches, and how long the peer may search.
pub struct Batches {
    /// How many.
    pub count: usize,
    /// Another seed gives other batches.
    pub seed: u64,
    /// Seconds for the new hose and again for the scrap.
    pub limit: f64,
}

impl Default for Batches {
    fn default() -> Self {
        Self { count: 200, seed: 4060, limit: 5.0 }
    }
}

/// Figures of one batch, in mm.
struct Compared {
    /// Our new hose less the peer's: above nothing where the peer found better.
    reel: f64,
    /// Our scrap less the peer's, where both take the same new hose.
    scrap: Option<f64>,
    /// Whether the peer proved that nothing takes less new hose.
    proved: bool,
    spent: Spent,
}

/// Runs both and prints how far apart they are.
pub fn measure(batches: &Batches) -> Result<Vec<Promise>> {
    let Batches { count, seed, limit } = *batches;
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
    if compared.len() < count {
        return Err(Error::other(format!("the peer answered {} of {count} batches", compared.len())));
    }
    println!(
        "{count} random batches of up to {PIECES} pieces and {OFFCUTS} offcuts, seed {seed}, kerf {KERF} mm; the peer \
         has {limit} s for each aim"
    );
    let proved = ours.iter().filter(|(plan, _)| plan.proved).count();
    println!("  ours proved by itself that nothing is better: {proved} of {count}");
    Ok(told(&compared))
}

fn told(compared: &[Compared]) -> Vec<Promise> {
    let proved: Vec<f64> = compared.iter().filter(|one| one.proved).map(|one| one.reel).collect();
    spread("new hose where the peer proved its own", &proved);
    let gaps = [
        ("new hose", compared.iter().map(|one| one.reel).collect::<Vec<_>>()),
        ("scrap, where new hose is the same", compared.iter().filter_map(|one| one.scrap).collect()),
    ];
    let mut promises = Vec::new();
    for (what, gaps) in &gaps {
        let over = spread(what, gaps);
        promises.push(Promise::of(format!("batches over the peer by a kerf, {what}"), over, "%", BAR_PART));
    }
    let mut times = Times::default();
    compared.iter().for_each(|one| times.push(one.spent));
    println!("  a plan takes {:.1} ms in the middle", times.middle().wall);
    promises.push(Promise::time("a cutting plan, the worst", times.at(1.0), BAR_MS));
    promises
}

/// Prints how far ours is over the peer, and gives the part that is so by more than a kerf, in %.
fn spread(what: &str, gaps: &[f64]) -> f64 {
    let over = gaps.iter().filter(|gap| **gap > KERF + 1e-6).count();
    let better = gaps.iter().filter(|gap| **gap < -0.05).count();
    let worst = gaps.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mean = gaps.iter().map(|gap| gap.max(0.0)).sum::<f64>() / gaps.len().max(1) as f64;
    println!(
        "  {what}: {over} of {} over by more than a kerf; mean {mean:.2} mm over, worst {worst:.1} mm; ours better in {better}",
        gaps.len()
    );
    100.0 * over as f64 / gaps.len() as f64
}

/// The plan, and the middle time of a few runs.
fn timed(batch: &Batch) -> Result<(CutPlan, Spent)> {
    let plan = cut(batch).map_err(Error::other)?;
    let times = Times::of(RUNS, |_| cut(batch).map(|_| ()).map_err(Error::other))?;
    Ok((plan, times.middle()))
}

fn compared((plan, spent): &(CutPlan, Spent), peer: &Value) -> Option<Compared> {
    let reel = plan.reel_mm.get() - peer["reel"].as_f64()?;
    let scrap = peer["scrap"].as_f64().filter(|_| reel.abs() < 0.05).map(|scrap| plan.scrap_mm.get() - scrap);
    Some(Compared { reel, scrap, proved: peer["reel_proved"].as_bool().unwrap_or(false), spent: *spent })
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
