//! What the readings of a crimp say.

use super::advice;
use super::{CrimpError, CrimpQuestion, DIRECTIONS, PLACES, WANTED};
use crate::catalogue::Basis;
use crate::measure::{Fit, Judged, Lies, Spread, Tolerance};
use crate::quantity::Millimetres;
use crate::spec::Role;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What the readings of a crimp say, and what is done next.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Crimped {
    /// Which end.
    pub role: Option<Role>,
    /// May be ticked on `pass` alone.
    pub verdict: Judged,
    /// The next thing to do: the first of the codes.
    #[serde(rename = "do")]
    pub next_do: &'static str,
    /// All that is to be done, by the words `bench-<code>`.
    pub codes: Vec<&'static str>,
    /// The readings that were taken.
    pub readings: Vec<CrimpReading>,
    /// The places along the ferrule at which any was taken.
    pub places: Vec<CrimpPlace>,
    /// How many readings were taken.
    pub count: usize,
    /// How many are wanted.
    pub wanted: usize,
    /// The reading to be taken next, from 0; none once all are.
    pub next: Option<usize>,
    /// Mean of all.
    pub mean_mm: Option<Millimetres>,
    /// The smallest.
    pub min_mm: Option<Millimetres>,
    /// The largest.
    pub max_mm: Option<Millimetres>,
    /// Standard deviation of all.
    pub spread_mm: Option<Millimetres>,
    /// Out of round: from the smallest to the largest at one place, where that is most.
    pub oval_mm: Option<Millimetres>,
    /// Mean of the last place less that of the first: negative where the ferrule narrows towards its end.
    pub taper_mm: Option<Millimetres>,
    /// Mean less target: what the press is followed by.
    pub deviation_mm: Option<Millimetres>,
    /// The tolerance and what is accepted by it; none where none was entered.
    pub limits: Option<CrimpLimits>,
    /// What the instrument is for this tolerance; none where none was entered.
    pub instrument: Option<InstrumentFit>,
    /// The decision rule.
    pub source: &'static str,
    /// How sure that is.
    pub basis: Basis,
}

/// One reading.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct CrimpReading {
    /// Its number, from 0.
    pub index: usize,
    /// The diameter.
    pub mm: Millimetres,
    /// Where it lies; none without a tolerance.
    pub lies: Option<Lies>,
}

/// One place along the ferrule.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct CrimpPlace {
    /// Its number, from 1 behind the mouth.
    pub place: usize,
    /// How many readings.
    pub count: usize,
    /// Their mean.
    pub mean_mm: Millimetres,
    /// The smallest.
    pub min_mm: Millimetres,
    /// The largest.
    pub max_mm: Millimetres,
    /// Out of round: the largest less the smallest.
    pub oval_mm: Millimetres,
}

/// A tolerance, and what is accepted by it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct CrimpLimits {
    /// Target less tolerance.
    pub low_mm: Millimetres,
    /// Target and tolerance.
    pub high_mm: Millimetres,
    /// The lower limit and the expanded uncertainty; none where the instrument leaves no room.
    pub accept_low_mm: Option<Millimetres>,
    /// The upper limit less the expanded uncertainty.
    pub accept_high_mm: Option<Millimetres>,
}

/// What an instrument is for a tolerance.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct InstrumentFit {
    /// Expanded uncertainty of one reading, coverage factor 2.
    pub expanded_mm: Millimetres,
    /// Tolerance over expanded uncertainty (measurement capability index).
    pub capability: f64,
    /// What that makes it.
    pub fit: Fit,
    /// The coarsest instrument that would be good for it.
    pub would_do_mm: Millimetres,
}

/// The decision rule: a guard band as wide as the expanded uncertainty.
const SOURCE: &str = "JCGM 106:2012 8.3.2, guard band w = U; U = 2u, GUM 6.2";

/// What the readings of a crimp say. Every reading has to lie inside the acceptance interval: a mean would hide a
/// ferrule that is oval.
///
/// # Errors
/// A diameter, tolerance or instrument that can not be; more readings than places for them.
pub fn crimp(asked: &CrimpQuestion) -> Result<Crimped, CrimpError> {
    asked.plausible()?;
    let tolerance = tolerance(asked);
    let readings = readings(asked, tolerance);
    let places = places(&readings);
    let all = Spread::of(readings.iter().map(|reading| reading.mm.get()));
    let of = |read: fn(&Spread) -> f64| all.as_ref().map(read).map(Millimetres);
    let oval = places.iter().map(|place| place.oval_mm.get()).reduce(f64::max);
    let next = (0..WANTED).find(|index| readings.iter().all(|reading| reading.index != *index));
    let verdict = verdict(&readings, next, tolerance);
    let codes =
        advice::codes(&advice::Seen { verdict, readings: &readings, places: &places, next, tolerance });
    Ok(Crimped {
        role: asked.role,
        verdict,
        next_do: codes.first().copied().unwrap_or(advice::READ_ON),
        codes,
        count: readings.len(),
        wanted: WANTED,
        next,
        mean_mm: of(|all| all.mean),
        min_mm: of(|all| all.min),
        max_mm: of(|all| all.max),
        spread_mm: all.and_then(|all| all.deviation).map(Millimetres),
        oval_mm: oval.map(Millimetres),
        taper_mm: taper(&places),
        deviation_mm: all.zip(asked.target_mm).map(|(all, target)| Millimetres(all.mean - target.get())),
        limits: tolerance.map(limits),
        instrument: tolerance.map(fit),
        readings,
        places,
        source: SOURCE,
        basis: Basis::Derived,
    })
}

fn tolerance(asked: &CrimpQuestion) -> Option<Tolerance> {
    let (target, tolerance) = (asked.target_mm?.get(), asked.tolerance_mm?.get());
    let expanded = asked.instrument.expanded_mm();
    Some(Tolerance { low: target - tolerance, high: target + tolerance, expanded })
}

fn readings(asked: &CrimpQuestion, tolerance: Option<Tolerance>) -> Vec<CrimpReading> {
    let taken = asked.readings_mm.iter().enumerate().filter_map(|(index, mm)| Some((index, (*mm)?)));
    taken
        .map(|(index, mm)| CrimpReading {
            index,
            mm,
            lies: tolerance.map(|tolerance| tolerance.lies(mm.get())),
        })
        .collect()
}

fn places(readings: &[CrimpReading]) -> Vec<CrimpPlace> {
    let at = |place: usize| readings.iter().filter(move |reading| reading.index / DIRECTIONS == place);
    (0..PLACES)
        .filter_map(|place| {
            let spread = Spread::of(at(place).map(|reading| reading.mm.get()))?;
            Some(CrimpPlace {
                place: place + 1,
                count: spread.count,
                mean_mm: Millimetres(spread.mean),
                min_mm: Millimetres(spread.min),
                max_mm: Millimetres(spread.max),
                oval_mm: Millimetres(spread.range()),
            })
        })
        .collect()
}

/// Once every direction of the first and the last place is read: a mean of other directions would make a taper of
/// an oval.
fn taper(places: &[CrimpPlace]) -> Option<Millimetres> {
    let whole = |number| places.iter().find(|place| place.place == number && place.count == DIRECTIONS);
    Some(Millimetres(whole(PLACES)?.mean_mm.get() - whole(1)?.mean_mm.get()))
}

/// A crimp passes once all is read and all of it lies inside; one reading outside stops it.
fn verdict(readings: &[CrimpReading], next: Option<usize>, tolerance: Option<Tolerance>) -> Judged {
    let gravest = readings.iter().filter_map(|reading| reading.lies).map(Judged::from).max();
    let open = if next.is_some() || tolerance.is_none() { Judged::Unsettled } else { Judged::Pass };
    gravest.unwrap_or(Judged::Unsettled).max(open)
}

fn limits(tolerance: Tolerance) -> CrimpLimits {
    let accepted = tolerance.accepted();
    CrimpLimits {
        low_mm: Millimetres(tolerance.low),
        high_mm: Millimetres(tolerance.high),
        accept_low_mm: accepted.map(|(low, _)| Millimetres(low)),
        accept_high_mm: accepted.map(|(_, high)| Millimetres(high)),
    }
}

fn fit(tolerance: Tolerance) -> InstrumentFit {
    InstrumentFit {
        expanded_mm: Millimetres(tolerance.expanded),
        capability: tolerance.capability(),
        fit: tolerance.fit(),
        would_do_mm: Millimetres(tolerance.would_do()),
    }
}
