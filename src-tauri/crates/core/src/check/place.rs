//! What a place says before a hose is made for it: how its sisters on the same circuit stand, and what failed there.

use super::subject::practice;
use super::{Case, Finding, Verdict, cases};
use crate::catalogue::{Catalogue, Provenance};
use crate::quantity::Bar;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Failures at one place from which making the same again is not the first thing to do (common practice: one is
/// chance, two ask for a cause).
const REPEATED: usize = 2;

/// Two ratings on one circuit that differ by more than this are more than a step of the standards' pressures
/// apart: one of the hoses may be the wrong one (common practice).
const MUCH: f64 = 1.25;

/// How a job at a place is gone about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// Same for same: flow and route are not looked at.
    Short,
    /// Route, flow and the cause of the failures first.
    Long,
}

/// What failed at a place.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Failures {
    /// How often.
    pub times: usize,
    /// Why, the commonest first.
    pub causes: Vec<CauseCount>,
    /// How the next job there is gone about.
    pub way: Way,
}

/// How often hoses failed for one cause.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct CauseCount {
    /// By the code of the failure causes.
    pub cause: String,
    /// What it is called.
    pub name: String,
    /// How often.
    pub times: usize,
}

impl Failures {
    /// From the cause of every failure at the place.
    pub fn of<'c>(catalogue: &Catalogue, failed: impl Iterator<Item = &'c str>) -> Self {
        let mut causes: Vec<CauseCount> = Vec::new();
        for code in failed {
            match causes.iter_mut().find(|known| known.cause == code) {
                Some(known) => known.times += 1,
                None => {
                    let named = catalogue.causes.iter().find(|cause| cause.code == code);
                    let name = named.map_or_else(|| code.to_owned(), |cause| cause.name.clone());
                    causes.push(CauseCount { cause: code.to_owned(), name, times: 1 });
                }
            }
        }
        causes.sort_by_key(|cause| std::cmp::Reverse(cause.times));
        let times = causes.iter().map(|cause| cause.times).sum();
        let way = if times >= REPEATED { Way::Long } else { Way::Short };
        Self { times, causes, way }
    }

    /// What to say before the same is offered again; none where nothing failed.
    pub fn finding(&self) -> Option<Finding> {
        let key = match self.way {
            _ if self.times == 0 => return None,
            Way::Short => cases::FAILED_BEFORE,
            Way::Long => cases::FAILED_REPEATEDLY,
        };
        let causes = self.causes.iter().map(|cause| format!("{} ({})", cause.name, cause.times));
        Some(
            Finding::new("failed-here", Verdict::Caution, key)
                .measured(self.times as f64, REPEATED as f64, "")
                .about("causes", causes.collect::<Vec<_>>().join(", "))
                .from(&practice()),
        )
    }
}

/// What a hose on a circuit carries; none is not known.
#[derive(Debug, Clone, PartialEq)]
pub struct OnCircuit {
    /// Number of its place on the machine's drawing.
    pub place: u32,
    /// What it may carry.
    pub pressure: Option<Bar>,
}

/// The hose of a place beside its sisters on the same circuit, which see the same relief setting and the same peaks.
pub fn circuit(
    catalogue: &Catalogue,
    own: &OnCircuit,
    relief: Option<Bar>,
    sisters: &[OnCircuit],
) -> Vec<Finding> {
    let caution = catalogue.cautions.iter().find(|caution| caution.id == "C31");
    let from = caution.map_or_else(practice, |caution| caution.provenance.clone());
    let above = sisters.iter().chain([own]).filter_map(|hose| relief_above(hose, relief, &from));
    let beside = sisters.iter().map(|sister| compared(own, sister, &from));
    let mut findings: Vec<Finding> = above.chain(beside).collect();
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.verdict));
    findings
}

/// A relief valve that opens above what a hose carries does not save it.
fn relief_above(hose: &OnCircuit, relief: Option<Bar>, from: &Provenance) -> Option<Finding> {
    let (relief, rating) = relief.zip(hose.pressure)?;
    (relief > rating).then(|| {
        on_circuit(Verdict::Stop, cases::CIRCUIT_RELIEF_ABOVE, hose, from).measured(
            relief.get(),
            rating.get(),
            Bar::UNIT,
        )
    })
}

fn compared(own: &OnCircuit, sister: &OnCircuit, from: &Provenance) -> Finding {
    let Some((own, other)) = own.pressure.zip(sister.pressure) else {
        return on_circuit(Verdict::Caution, cases::CIRCUIT_UNKNOWN, sister, from);
    };
    let (verdict, case) = if own.get() > other.get() * MUCH {
        (Verdict::Caution, cases::CIRCUIT_SISTER_WEAKER)
    } else if other.get() > own.get() * MUCH {
        (Verdict::Caution, cases::CIRCUIT_WEAKER)
    } else {
        (Verdict::Pass, cases::CIRCUIT_OK)
    };
    on_circuit(verdict, case, sister, from).measured(own.get(), other.get(), Bar::UNIT)
}

fn on_circuit(verdict: Verdict, case: Case, hose: &OnCircuit, from: &Provenance) -> Finding {
    Finding::new("circuit", verdict, case).about("place", hose.place.to_string()).from(from)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hose(place: u32, pressure: Option<f64>) -> OnCircuit {
        OnCircuit { place, pressure: pressure.map(Bar) }
    }

    #[track_caller]
    fn says(own: Option<f64>, relief: Option<f64>, sister: Option<f64>, expected: &[(&str, Verdict)]) {
        let sisters = [hose(2, sister)];
        let found = circuit(Catalogue::embedded(), &hose(1, own), relief.map(Bar), &sisters);
        let found: Vec<_> = found.iter().map(|finding| (finding.case.key, finding.verdict)).collect();
        assert_eq!(found, expected);
    }

    #[test]
    fn sisters_are_compared_and_what_is_not_known_is_no_pass() {
        says(Some(250.0), Some(210.0), Some(250.0), &[("circuit-ok", Verdict::Pass)]);
        says(Some(400.0), Some(210.0), Some(250.0), &[("circuit-sister-weaker", Verdict::Caution)]);
        says(Some(250.0), Some(210.0), Some(400.0), &[("circuit-weaker", Verdict::Caution)]);
        says(None, Some(210.0), Some(250.0), &[("circuit-unknown", Verdict::Caution)]);
        says(Some(250.0), None, None, &[("circuit-unknown", Verdict::Caution)]);
    }

    #[test]
    fn a_relief_above_any_hose_of_the_circuit_stops() {
        says(
            Some(250.0),
            Some(280.0),
            Some(250.0),
            &[
                ("circuit-relief-above", Verdict::Stop),
                ("circuit-relief-above", Verdict::Stop),
                ("circuit-ok", Verdict::Pass),
            ],
        );
    }

    #[test]
    fn a_second_failure_leads_the_long_way_with_counts_and_causes() {
        let of = |codes: &[&str]| Failures::of(Catalogue::embedded(), codes.iter().copied());
        assert_eq!((of(&[]).way, of(&[]).finding()), (Way::Short, None));
        assert_eq!(of(&["abrasion"]).finding().map(|finding| finding.case.key), Some("failed-before"));
        let twice = of(&["twist", "abrasion", "abrasion"]);
        let counts: Vec<_> = twice.causes.iter().map(|cause| (cause.cause.as_str(), cause.times)).collect();
        assert_eq!((twice.way, twice.times, counts), (Way::Long, 3, vec![("abrasion", 2), ("twist", 1)]));
        let finding = twice.finding().expect("it is said");
        assert_eq!((finding.case.key, finding.value), ("failed-repeatedly", Some(3.0)));
    }
}
