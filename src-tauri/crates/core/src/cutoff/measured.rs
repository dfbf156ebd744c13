//! A cut-off measured on a new end: from sealing point to hose stop.

use crate::measure::{Instrument, InstrumentError, Judged, Spread};
use crate::quantity::Millimetres;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use thiserror::Error;
use ts_rs::TS;

/// The readings of one new end.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CutoffReadings {
    /// From sealing point to hose stop, the end taken up anew each time.
    pub readings_mm: Vec<Millimetres>,
    /// What they were read with.
    pub instrument: Instrument,
}

/// A cut-off that was measured.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutoffMeasured {
    /// The mean; none without a reading.
    pub cutoff_mm: Option<Millimetres>,
    /// Standard deviation of the readings; none of a single one.
    pub spread_mm: Option<Millimetres>,
    /// Expanded uncertainty of the mean, coverage factor 2: the spread of the mean and the instrument's error.
    pub expanded_mm: Option<Millimetres>,
    /// How many readings.
    pub count: usize,
    /// Whether it may be taken: `pass` once three readings agree.
    pub verdict: Judged,
    /// What is done next, by the words `bench-<code>`.
    #[serde(rename = "do")]
    pub next_do: &'static str,
    /// How it is measured, by the words `bench-<code>`.
    pub steps: &'static [&'static str],
}

/// A reading that can not be.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum CutoffError {
    /// No such cut-off.
    #[error("readings_mm has {value}; a length above 0 and up to {MOST_MM} mm is expected")]
    Reading {
        /// What was given.
        value: f64,
    },
    /// More than anyone reads.
    #[error("readings_mm has {count} readings; up to {MOST} are expected")]
    TooMany {
        /// How many.
        count: usize,
    },
    /// The instrument.
    #[error(transparent)]
    Instrument(#[from] InstrumentError),
}

impl CutoffError {
    /// The field that is wrong.
    pub fn field(&self) -> &'static str {
        match self {
            Self::Reading { .. } | Self::TooMany { .. } => "readings_mm",
            Self::Instrument(_) => "instrument.error_mm",
        }
    }
}

/// How a cut-off is measured.
pub const STEPS: &[&str] = &["cutoff-new-end", "cutoff-find-stop", "cutoff-find-seal", "cutoff-read"];

/// What is done next.
pub const CODES: &[&str] = &["tick", "cutoff-repeat", "cutoff-apart", "cutoff-coarse"];

const MOST_MM: f64 = 1000.0;
const MOST: usize = 20;

/// Readings that are wanted, and how far apart they may lie (common practice: half of what the cut may be off).
const WANTED: usize = 3;
const APART_MM: f64 = 1.0;
/// An instrument less sure than the cut's own allowance, either way, tells nothing of a cut-off (common practice).
const MOST_UNSURE_MM: f64 = 2.0;

/// What the readings say.
///
/// # Errors
/// A reading or an instrument that can not be.
pub fn measured(asked: &CutoffReadings) -> Result<CutoffMeasured, CutoffError> {
    asked.instrument.plausible()?;
    let readings: Vec<f64> = asked.readings_mm.iter().map(|reading| reading.get()).collect();
    if readings.len() > MOST {
        return Err(CutoffError::TooMany { count: readings.len() });
    }
    if let Some(value) = readings.iter().copied().find(|value| !(*value > 0.0 && *value <= MOST_MM)) {
        return Err(CutoffError::Reading { value });
    }
    let spread = Spread::of(readings);
    let count = spread.map_or(0, |spread| spread.count);
    let coarse = 2.0 * asked.instrument.standard_mm() > MOST_UNSURE_MM;
    let (verdict, next_do) = match spread {
        Some(spread) if spread.range() > APART_MM => (Judged::Stop, "cutoff-apart"),
        Some(_) if coarse => (Judged::Unsettled, "cutoff-coarse"),
        Some(_) if count >= WANTED => (Judged::Pass, "tick"),
        _ => (Judged::Unsettled, "cutoff-repeat"),
    };
    // GUM 4.2.3 and 5.1.2: the mean's own deviation and the instrument's error, which no repeating takes away.
    let expanded = |spread: Spread| {
        let of_mean = spread.deviation? / (spread.count as f64).sqrt();
        Some(2.0 * of_mean.hypot(asked.instrument.standard_mm()))
    };
    Ok(CutoffMeasured {
        cutoff_mm: spread.map(|spread| Millimetres(spread.mean)),
        spread_mm: spread.and_then(|spread| spread.deviation).map(Millimetres),
        expanded_mm: spread.and_then(expanded).map(Millimetres),
        count,
        verdict,
        next_do,
        steps: STEPS,
    })
}
