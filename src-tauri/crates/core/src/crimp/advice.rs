//! What is done about a crimp, as codes: their words are `bench-<code>` and `bench-<code>-how`.

use super::answer::{CrimpPlace, CrimpReading};
use crate::measure::{Fit, Judged, Lies, Spread, Tolerance};

/// It may be ticked.
const TICK: &str = "tick";
/// Not all is read.
pub(super) const READ_ON: &str = "read-on";
/// There is nothing to hold it against.
const ENTER_TARGET: &str = "enter-target";
/// The instrument leaves no room, or little.
const FINER_INSTRUMENT: &str = "finer-instrument";
/// A slip is possible: read those again.
const READ_AGAIN: &str = "read-again";
/// Too loose: pressed once more, smaller.
const PRESS_SMALLER: &str = "press-smaller";
/// Too tight: scrap.
const SCRAP: &str = "scrap";
/// Out of round: no one setting of the press brings all inside.
const UNEVEN_OVAL: &str = "uneven-oval";
/// Wider at one end than at the other by more than the tolerance.
const UNEVEN_TAPER: &str = "uneven-taper";

/// Every code.
pub const CODES: &[&str] = &[
    TICK,
    READ_ON,
    ENTER_TARGET,
    FINER_INSTRUMENT,
    READ_AGAIN,
    PRESS_SMALLER,
    SCRAP,
    UNEVEN_OVAL,
    UNEVEN_TAPER,
];

/// The sums of decimals must not decide at an edge.
const EDGE: f64 = 1e-9;

/// What is known of the crimp.
pub(super) struct Seen<'a> {
    pub(super) verdict: Judged,
    pub(super) readings: &'a [CrimpReading],
    pub(super) places: &'a [CrimpPlace],
    pub(super) next: Option<usize>,
    pub(super) tolerance: Option<Tolerance>,
}

/// What is done, the next thing first.
pub(super) fn codes(seen: &Seen<'_>) -> Vec<&'static str> {
    match seen.verdict {
        Judged::Pass => vec![TICK],
        Judged::Stop => outside(seen),
        Judged::Unsettled => open(seen),
    }
}

/// A ferrule that is too tight can not be opened again; one that is too loose can be pressed smaller, unless that
/// would take its narrow side below.
fn outside(seen: &Seen<'_>) -> Vec<&'static str> {
    let mut codes = Vec::new();
    if seen.has(Lies::Low) {
        codes.push(SCRAP);
    } else if !seen.uneven() {
        codes.push(PRESS_SMALLER);
    }
    if seen.uneven() {
        codes.push(if seen.tapered() { UNEVEN_TAPER } else { UNEVEN_OVAL });
    }
    // One alone among readings that lie inside is as likely a slip as a fault.
    let out = |reading: &&CrimpReading| matches!(reading.lies, Some(Lies::Low | Lies::High));
    let alone = seen.readings.iter().filter(out).count() == 1 && seen.readings.len() > 1;
    codes.insert(if alone { 0 } else { codes.len() }, READ_AGAIN);
    codes
}

fn open(seen: &Seen<'_>) -> Vec<&'static str> {
    let mut codes = Vec::new();
    let fit = seen.tolerance.map(|tolerance| tolerance.fit());
    match fit {
        None => codes.push(ENTER_TARGET),
        // What is read by it settles nothing: the other instrument comes first.
        Some(Fit::TooCoarse) => codes.push(FINER_INSTRUMENT),
        Some(Fit::Good | Fit::Narrow) => {}
    }
    if seen.next.is_some() {
        codes.push(READ_ON);
    }
    let doubtful = [Lies::DoubtfulLow, Lies::DoubtfulHigh].into_iter().any(|lies| seen.has(lies));
    if doubtful && fit != Some(Fit::TooCoarse) {
        codes.push(if fit == Some(Fit::Narrow) { FINER_INSTRUMENT } else { READ_AGAIN });
        if seen.has(Lies::DoubtfulHigh) && !seen.uneven() {
            codes.push(PRESS_SMALLER);
        }
    }
    codes
}

impl Seen<'_> {
    fn has(&self, lies: Lies) -> bool {
        self.readings.iter().any(|reading| reading.lies == Some(lies))
    }

    /// Whether the readings lie further apart than what is accepted is wide.
    fn uneven(&self) -> bool {
        let Some(tolerance) = self.tolerance else { return false };
        let (low, high) = tolerance.accepted().unwrap_or((tolerance.low, tolerance.high));
        let all = Spread::of(self.readings.iter().map(|reading| reading.mm.get()));
        all.is_some_and(|all| all.range() > high - low + EDGE)
    }

    /// Whether it is the places along the ferrule that differ, more than the directions at one of them.
    fn tapered(&self) -> bool {
        let along = Spread::of(self.places.iter().map(|place| place.mean_mm.get()));
        along.is_some_and(|along| self.places.iter().all(|place| place.oval_mm.get() < along.range()))
    }
}
