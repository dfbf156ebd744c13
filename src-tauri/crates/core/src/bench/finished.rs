//! The finished assembly held against its tolerances.

use crate::catalogue::Basis;
use crate::make::BuildSheet;
use crate::measure::{Judged, Lies, Tolerance};
use crate::quantity::{Degrees, Millimetres};
use crate::record::Finished;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A measure of the finished assembly and what it is held against.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct FinishedCheck {
    /// `length` or `turn`.
    pub code: &'static str,
    /// May be ticked on `pass` alone.
    pub verdict: Judged,
    /// What is done, by the words `bench-<code>`.
    #[serde(rename = "do")]
    pub next_do: &'static str,
    /// What was measured; none was not.
    pub value: Option<f64>,
    /// Lower limit; none where the practice has no tolerance.
    pub low: Option<f64>,
    /// Upper limit.
    pub high: Option<f64>,
    /// Lowest that is accepted, by the instrument's error; none where it leaves no room.
    pub accept_low: Option<f64>,
    /// Highest that is accepted.
    pub accept_high: Option<f64>,
    /// Unit of all.
    pub unit: &'static str,
    /// Where the tolerance is from.
    pub source: String,
    /// How sure that is.
    pub basis: Basis,
}

/// What is done about the finished assembly.
pub const CODES: &[&str] =
    &["tick", "measure", "too-long", "too-short", "turned-off", "doubtful-finished", "no-tolerance"];

/// Standard error of a tape along a hose, and of an angle gauge, where nobody says (common practice).
const TAPE_MM: f64 = 1.0;
const GAUGE_DEG: f64 = 0.5;

/// Coverage factor of the expanded uncertainty.
const COVERAGE: f64 = 2.0;

/// Length, and the turn where both ends are bent.
pub(super) fn checks(sheet: &BuildSheet, finished: &Finished) -> Vec<FinishedCheck> {
    std::iter::once(length(sheet, finished)).chain(turn(sheet, finished)).collect()
}

fn length(sheet: &BuildSheet, finished: &Finished) -> FinishedCheck {
    let error = finished.length_error_mm.map_or(TAPE_MM, |error| error.get());
    let overall = sheet.cut.overall_length_mm.get();
    let tolerance = sheet.cut.length_tolerance_mm.map(|[minus, plus]| Tolerance {
        low: overall + minus,
        high: overall + plus,
        expanded: COVERAGE * error,
    });
    let source = sheet.cut.length_source.as_ref();
    FinishedCheck {
        source: source.map(|source| source.source.clone()).unwrap_or_default(),
        basis: source.map_or(Basis::None, |source| source.basis),
        ..held(
            "length",
            finished.length_mm.map(|mm| mm.get()),
            tolerance,
            Millimetres::UNIT,
            ("too-short", "too-long"),
        )
    }
}

/// The turn is held as the way round from what it shall be: 359 degrees is one short of nought.
fn turn(sheet: &BuildSheet, finished: &Finished) -> Option<FinishedCheck> {
    let turn = sheet.turn.as_ref()?;
    let error = finished.turn_error_deg.map_or(GAUGE_DEG, |error| error.get());
    let wanted = turn.turn_deg.get();
    let tolerance = turn.tolerance.as_ref().map(|either_way| Tolerance {
        low: wanted - either_way.value,
        high: wanted + either_way.value,
        expanded: COVERAGE * error,
    });
    let measured =
        finished.turn_deg.map(|deg| wanted + (deg.get() - wanted + 180.0).rem_euclid(360.0) - 180.0);
    let source = turn.tolerance.as_ref();
    Some(FinishedCheck {
        source: source.map(|figure| figure.source.clone()).unwrap_or_default(),
        basis: source.map_or(Basis::None, |figure| figure.basis),
        ..held("turn", measured, tolerance, Degrees::UNIT, ("turned-off", "turned-off"))
    })
}

fn held(
    code: &'static str,
    value: Option<f64>,
    tolerance: Option<Tolerance>,
    unit: &'static str,
    (low, high): (&'static str, &'static str),
) -> FinishedCheck {
    let lies = value.zip(tolerance).map(|(value, tolerance)| tolerance.lies(value));
    let next_do = match (value, lies) {
        (None, _) => "measure",
        (Some(_), None) => "no-tolerance",
        (Some(_), Some(Lies::Inside)) => "tick",
        (Some(_), Some(Lies::Low)) => low,
        (Some(_), Some(Lies::High)) => high,
        (Some(_), Some(Lies::DoubtfulLow | Lies::DoubtfulHigh)) => "doubtful-finished",
    };
    let accepted = tolerance.and_then(|tolerance| tolerance.accepted());
    FinishedCheck {
        code,
        verdict: lies.map_or(Judged::Unsettled, Judged::from),
        next_do,
        value,
        low: tolerance.map(|tolerance| tolerance.low),
        high: tolerance.map(|tolerance| tolerance.high),
        accept_low: accepted.map(|(low, _)| low),
        accept_high: accepted.map(|(_, high)| high),
        unit,
        source: String::new(),
        basis: Basis::None,
    }
}
