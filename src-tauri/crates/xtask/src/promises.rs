//! What the README promises, measured: figure, limit or peer, ratio and machine, in one run.

use crate::timed::Spent;
use crate::{cutting, imports, lives, million, peers, quick};
use serde::{Deserialize, Serialize};
use std::fmt;
use std::io::{Error, Result};
use std::path::Path;

/// A promise with what was measured of it.
#[derive(Serialize, Deserialize)]
pub(crate) struct Promise {
    what: String,
    unit: String,
    figure: f64,
    /// The processor's time in the mean, where that was measured: what else the machine does is no part of it.
    busy: Option<f64>,
    limit: Option<f64>,
    peer: Option<(String, f64)>,
}

impl Promise {
    /// A figure that keeps below a limit.
    pub(crate) fn of(what: impl Into<String>, figure: f64, unit: &str, limit: f64) -> Self {
        Self { what: what.into(), unit: unit.to_owned(), figure, busy: None, limit: Some(limit), peer: None }
    }

    /// A time that keeps below a limit, in ms.
    pub(crate) fn time(what: impl Into<String>, spent: Spent, limit: f64) -> Self {
        Self { busy: spent.busy, ..Self::of(what, spent.wall, "ms", limit) }
    }

    /// A time that keeps below a peer's in the same run, in ms.
    pub(crate) fn beside(what: impl Into<String>, ms: f64, peer: &str, peers: f64) -> Self {
        Self { limit: None, ..Self::of(what, ms, "ms", f64::NAN) }.and_peer(peer, peers)
    }

    /// The same with what a peer took for it.
    pub(crate) fn and_peer(self, peer: &str, figure: f64) -> Self {
        Self { peer: Some((peer.to_owned(), figure)), ..self }
    }

    /// A figure that is no number meets nothing.
    fn is_met(&self) -> bool {
        self.limit.or(self.peer.as_ref().map(|(_, figure)| *figure)).is_some_and(|limit| self.figure <= limit)
    }
}

impl fmt::Display for Promise {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { what, unit, figure, .. } = self;
        write!(f, "{:<6}  {what:<62}{figure:>9.2} {unit:<2}", if self.is_met() { "met" } else { "MISSED" })?;
        match self.busy {
            Some(busy) => write!(f, "  (processor {busy:>8.2})")?,
            None => write!(f, "{:23}", "")?,
        }
        if let Some(limit) = self.limit {
            write!(f, "  limit {limit} {unit}: {:.2} of it", figure / limit)?;
        }
        if let Some((peer, theirs)) = &self.peer {
            write!(f, "  {peer} {theirs:.1} {unit}: {:.1} times ours", theirs / figure)?;
        }
        Ok(())
    }
}

/// Prints each promise with its figure.
///
/// # Errors
/// One was missed.
pub(crate) fn judged(promises: Vec<Promise>) -> Result<()> {
    println!("\n{}", machine());
    promises.iter().for_each(|promise| println!("{promise}"));
    let missed = promises.iter().filter(|promise| !promise.is_met()).count();
    if missed == 0 { Ok(()) } else { Err(Error::other(format!("{missed} of {} missed", promises.len()))) }
}

/// Measures all of them.
pub fn print(register: &Path) -> Result<()> {
    let mut all = quick::measure()?;
    all.extend(peers::measure()?);
    all.extend(cutting::measure(&cutting::Batches::default())?);
    all.extend(lives::measure(lives::COUNT)?);
    all.extend(imports::measure(imports::ROWS)?);
    all.extend(million::measure(million::HOSES, register, million::SEED)?);
    judged(all)
}

/// What it is measured on, and what else that does.
fn machine() -> String {
    let read = |path: &str| std::fs::read_to_string(path).unwrap_or_default();
    let (info, load) = (read("/proc/cpuinfo"), read("/proc/loadavg"));
    let model =
        info.lines().find_map(|line| line.strip_prefix("model name")?.split_once(": ").map(|(_, name)| name));
    let cores = std::thread::available_parallelism().map_or(0, usize::from);
    let load = load.split_whitespace().next().unwrap_or("?").to_owned();
    format!(
        "{cores} cores of {}, load {load}, release build, {}",
        model.unwrap_or(std::env::consts::ARCH),
        chrono::Utc::now().date_naive()
    )
}
