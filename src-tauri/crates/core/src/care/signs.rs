//! What was seen at inspections and still stands, by the table of signs.

use super::{Standing, after_days};
use crate::catalogue::{Catalogue, Sign, StandsUntil};
use crate::check::Verdict;
use crate::record::Graded;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// What a sign that the tables do not have counts as: the table's own rows for anything else.
const OTHER: &str = "OTHER";
const OTHER_STOP: &str = "OTHER-STOP";

/// An inspection of a hose.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Inspection {
    /// When.
    pub date: NaiveDate,
    /// What was seen.
    pub findings: Vec<Graded>,
}

/// How grave a finding is: the graver of what was said and what the table says.
pub fn grade(catalogue: &Catalogue, finding: &Graded) -> Verdict {
    let said = if finding.grade == Verdict::Pass { None } else { Some(finding.grade) };
    let table = known(catalogue, &finding.sign).map(|sign| sign.grade);
    said.into_iter().chain(table).max().unwrap_or(Verdict::Pass)
}

/// What stands after these inspections, in any order; the gravest and soonest first. What does not heal stands as long
/// as the hose is in use; the rest until a later day's inspection does not find it any more.
pub fn standing(catalogue: &Catalogue, inspections: &[Inspection]) -> Vec<Standing> {
    let mut by_day: Vec<&Inspection> = inspections.iter().collect();
    by_day.sort_by_key(|inspection| inspection.date);
    let mut stands: BTreeMap<&str, (Standing, StandsUntil)> = BTreeMap::new();
    for inspection in by_day {
        stands
            .retain(|_, (standing, until)| *until == StandsUntil::Off || standing.seen_on == inspection.date);
        for finding in &inspection.findings {
            let grade = grade(catalogue, finding);
            let Some(effect) = effect(catalogue, &finding.sign, grade) else { continue };
            let days = effect.within_days.filter(|_| grade != Verdict::Stop).unwrap_or(0);
            let due = after_days(inspection.date, f64::from(days)).unwrap_or(inspection.date);
            let new = Standing { sign: finding.sign.clone(), grade, seen_on: inspection.date, due };
            let graver = stands.get(finding.sign.as_str()).is_none_or(|(had, _)| had.grade <= grade);
            if graver {
                stands.insert(&finding.sign, (new, effect.until));
            }
        }
    }
    let mut standing: Vec<Standing> = stands.into_values().map(|(standing, _)| standing).collect();
    standing.sort_by(|one, other| other.grade.cmp(&one.grade).then(one.due.cmp(&other.due)));
    standing
}

fn known<'c>(catalogue: &'c Catalogue, code: &str) -> Option<&'c Sign> {
    catalogue.signs.iter().find(|sign| sign.code == code)
}

/// The row that says how soon and how long: the sign's own, else that of anything else so grave.
fn effect<'c>(catalogue: &'c Catalogue, code: &str, grade: Verdict) -> Option<&'c Sign> {
    let other = match grade {
        Verdict::Pass => return None,
        Verdict::Caution => OTHER,
        Verdict::Stop => OTHER_STOP,
    };
    known(catalogue, code).or_else(|| known(catalogue, other))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seen(day: &str, findings: &[(&str, Verdict)]) -> Inspection {
        let findings =
            findings.iter().map(|(sign, grade)| Graded { sign: (*sign).to_owned(), grade: *grade });
        Inspection { date: day.parse().expect("a day"), findings: findings.collect() }
    }

    #[track_caller]
    fn stands(inspections: &[Inspection], expected: &[(&str, Verdict, &str)]) {
        let standing = standing(Catalogue::embedded(), inspections);
        let standing: Vec<_> =
            standing.iter().map(|one| (one.sign.as_str(), one.grade, one.due.to_string())).collect();
        let expected: Vec<_> =
            expected.iter().map(|(sign, grade, due)| (*sign, *grade, (*due).to_owned())).collect();
        assert_eq!(standing, expected);
    }

    #[test]
    fn what_does_not_heal_stands_and_the_rest_until_it_is_not_found_any_more() {
        use Verdict::{Caution, Stop};
        let first = seen("2026-05-01", &[("ABR-WIRE", Stop), ("RUB", Caution)]);
        let both = [("ABR-WIRE", Stop, "2026-05-01"), ("RUB", Caution, "2026-05-31")];
        stands(std::slice::from_ref(&first), &both);
        stands(&[first.clone(), seen("2026-06-01", &[])], &both[..1]);
        stands(&[seen("2026-06-01", &[]), first.clone()], &both[..1]);
        // Of two on one day nobody knows which was later: what was seen stands.
        stands(&[first, seen("2026-05-01", &[])], &both);
    }

    #[test]
    fn a_finding_is_never_graded_below_the_table_and_an_unknown_sign_counts_by_its_grade() {
        use Verdict::{Caution, Pass, Stop};
        stands(&[seen("2026-05-01", &[("ABR-WIRE", Pass)])], &[("ABR-WIRE", Stop, "2026-05-01")]);
        stands(&[seen("2026-05-01", &[("RUB", Stop)])], &[("RUB", Stop, "2026-05-01")]);
        stands(&[seen("2026-05-01", &[("ABR", Caution)])], &[("ABR", Caution, "2026-05-31")]);
        stands(&[seen("2026-05-01", &[("ABR", Stop)])], &[("ABR", Stop, "2026-05-01")]);
        stands(&[seen("2026-05-01", &[("ABR", Pass)])], &[]);
    }

    #[test]
    fn every_sign_leads_to_a_cause_of_the_tables_and_what_is_not_in_the_table_has_a_row() {
        let catalogue = Catalogue::embedded();
        for sign in &catalogue.signs {
            assert!(
                catalogue.causes.iter().any(|cause| cause.code == sign.cause),
                "{}: {}",
                sign.code,
                sign.cause
            );
        }
        for (code, grade) in [(OTHER, Verdict::Caution), (OTHER_STOP, Verdict::Stop)] {
            assert_eq!(known(catalogue, code).map(|sign| sign.grade), Some(grade), "{code}");
        }
    }
}
