//! Doubt about the original: the replacement must satisfy every original that is still plausible.

use crate::catalogue::{Basis, HoseRow, Provenance};
use crate::check::edition;
use crate::check::rivals::{Rivals, UNLIKELY};
use crate::check::subject::{Hose, Subject, hose_name, practice};
use crate::check::{Case, Evidence, Finding, Verdict, cases};
use crate::quantity::{Bar, Celsius, Millimetres};

const RULE: &str = "original";

pub(super) fn original(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(hose) = subject.hose else { return Vec::new() };
    let Some(found) = subject.found().filter(|found| says_something(found)) else {
        return vec![Finding::new(RULE, Verdict::Caution, cases::ORIGINAL_MISSING).from(&practice())];
    };
    let rivals = &subject.rivals;
    let mut findings = pressure(subject, hose.row, found);
    findings.extend(edition::findings(subject));
    if !rivals.rows.is_empty() {
        findings.push(bore(subject, hose.row, rivals));
        findings.extend(heat(subject, hose.row, rivals));
        findings.extend(cold(subject, hose.row, rivals));
        findings.extend(bend(subject, hose, rivals));
        findings.extend(vacuum(subject, hose, rivals));
    }
    let compared = findings.into_iter().map(|finding| finding.about("hose", hose_name(hose.row)));
    unknown(found, rivals).into_iter().chain(compared).collect()
}

fn says_something(found: &Evidence) -> bool {
    !found.hose.is_empty() || found.printed_pressure_bar.is_some()
}

/// A strange original asks for nothing that could be held against the spec.
fn unknown(found: &Evidence, rivals: &Rivals<'_>) -> Option<Finding> {
    let strange = rivals.strange > 0 || found.unknown.hose > UNLIKELY;
    strange.then(|| {
        Finding::new(RULE, Verdict::Caution, cases::ORIGINAL_UNKNOWN)
            .measured(found.unknown.hose, UNLIKELY, "probability")
            .from(&practice())
    })
}

/// Never below what was printed or recorded, nor below any plausible original.
fn pressure(subject: &Subject<'_>, own: &HoseRow, found: &Evidence) -> Vec<Finding> {
    let rivals = &subject.rivals;
    let rating = own.max_working_pressure_bar.map(Bar::get);
    let enough = |asked: f64| rating.is_some_and(|rating| rating >= asked);
    let judged = |asked: f64, ok, below| match enough(asked) {
        true => Finding::new(RULE, Verdict::Pass, ok),
        false => Finding::new(RULE, Verdict::Stop, below),
    };
    let held = |finding: Finding, asked: f64| Finding {
        value: rating,
        limit: Some(asked),
        unit: Bar::UNIT,
        ..finding
    };
    let printed = found.printed_pressure_bar.map(|printed| {
        let finding = judged(printed.get(), cases::PRINTED_PRESSURE_OK, cases::PRINTED_PRESSURE_ABOVE);
        held(finding, printed.get()).from(&practice())
    });
    let rated = |row: &HoseRow| edition::rated(subject, row).0.map(Bar::get);
    let of_rivals = rivals.most(rated).map(|(rival, asked)| {
        let finding = judged(asked, cases::ORIGINAL_PRESSURE_OK, cases::ORIGINAL_PRESSURE_ABOVE);
        held(finding, asked).about("rival", hose_name(rival)).from(&edition::rated(subject, rival).1)
    });
    let unrated = rivals.rows.iter().find(|row| row.max_working_pressure_bar.is_none());
    let unrated = unrated.filter(|_| found.printed_pressure_bar.is_none()).map(|rival| {
        Finding::new(RULE, Verdict::Caution, cases::ORIGINAL_PRESSURE_UNKNOWN)
            .about("rival", hose_name(rival))
            .from(&rival.pressure_provenance())
    });
    printed.into_iter().chain(of_rivals).chain(unrated).collect()
}

/// A smaller bore chokes the line; a larger one is a person's to decide.
fn bore(subject: &Subject<'_>, own: &HoseRow, rivals: &Rivals<'_>) -> Finding {
    let other = |row: &HoseRow| (!subject.catalogue.one_size(row.dn, own.dn)).then(|| row.dn.get());
    let larger = rivals.most(other).filter(|(_, dn)| *dn > own.dn.get());
    let smaller = || rivals.least(other);
    let judged = |verdict, case, (rival, dn): (&HoseRow, f64)| {
        Finding::new(RULE, verdict, case).measured(own.dn.get(), dn, "DN").about("rival", hose_name(rival))
    };
    let finding = if let Some(rival) = larger {
        judged(Verdict::Stop, cases::ORIGINAL_BORE_LARGER, rival)
    } else if let Some(rival) = smaller() {
        judged(Verdict::Caution, cases::ORIGINAL_BORE_SMALLER, rival)
    } else {
        Finding::new(RULE, Verdict::Pass, cases::ORIGINAL_BORE_OK).measured(own.dn.get(), own.dn.get(), "DN")
    };
    finding.from(&practice())
}

/// What was measured at the machine counts; without it the spec must bear what the original bore.
fn less_than_original(measured: bool, unmeasured_case: Case, measured_case: Case) -> (Verdict, Case) {
    if measured { (Verdict::Caution, measured_case) } else { (Verdict::Stop, unmeasured_case) }
}

fn heat(subject: &Subject<'_>, own: &HoseRow, rivals: &Rivals<'_>) -> Option<Finding> {
    let (rival, asked) = rivals.most(|row| Some(row.temp_max_c.get()))?;
    let (verdict, case) = if own.temp_max_c.get() >= asked {
        (Verdict::Pass, cases::ORIGINAL_HEAT_OK)
    } else {
        let measured = subject.service.fluid_max_c.is_some();
        less_than_original(measured, cases::ORIGINAL_HEAT_ABOVE, cases::ORIGINAL_HEAT_MEASURED)
    };
    Some(rival_finding(verdict, case, own.temp_max_c.get(), asked, Celsius::UNIT, rival))
}

fn cold(subject: &Subject<'_>, own: &HoseRow, rivals: &Rivals<'_>) -> Option<Finding> {
    let (rival, asked) = rivals.least(|row| Some(row.temp_min_c.get()))?;
    let (verdict, case) = if own.temp_min_c.get() <= asked {
        (Verdict::Pass, cases::ORIGINAL_COLD_OK)
    } else {
        let measured = subject.service.fluid_min_c.is_some();
        less_than_original(measured, cases::ORIGINAL_COLD_BELOW, cases::ORIGINAL_COLD_MEASURED)
    };
    Some(rival_finding(verdict, case, own.temp_min_c.get(), asked, Celsius::UNIT, rival))
}

/// Only while nobody measured the bend: a measured one is held against the hose itself.
fn bend(subject: &Subject<'_>, own: Hose<'_>, rivals: &Rivals<'_>) -> Option<Finding> {
    if subject.service.bend_radius_mm.is_some() {
        return None;
    }
    let (rival, asked) = rivals.least(|row| row.min_bend_radius_mm.map(Millimetres::get))?;
    let (own, source) = own.min_bend_radius();
    let own = own.map(Millimetres::get);
    let as_tight = own.is_some_and(|own| own <= asked);
    let (verdict, case) = if as_tight {
        (Verdict::Pass, cases::ORIGINAL_BEND_OK)
    } else {
        (Verdict::Stop, cases::ORIGINAL_BEND_TIGHTER)
    };
    let finding = Finding {
        value: own,
        limit: Some(asked),
        unit: Millimetres::UNIT,
        ..Finding::new(RULE, verdict, case)
    };
    Some(finding.about("rival", hose_name(rival)).from(&compared_by(source, rival.bend_provenance())))
}

/// An original made to be sucked on may sit in a suction line, whatever anybody said of the line.
fn vacuum(subject: &Subject<'_>, own: Hose<'_>, rivals: &Rivals<'_>) -> Option<Finding> {
    let (rival, asked) = rivals.least(|row| row.vacuum_kpa_abs)?;
    let (own, source) = own.vacuum_kpa_abs();
    let as_deep = own.is_some_and(|own| own <= asked);
    let (verdict, case) = if as_deep {
        (Verdict::Pass, cases::ORIGINAL_VACUUM_OK)
    } else {
        let measured = subject.service.line.is_some();
        less_than_original(measured, cases::ORIGINAL_VACUUM_DEEPER, cases::ORIGINAL_VACUUM_NOT_ASKED)
    };
    let finding = Finding::new(RULE, verdict, case).about("rival", hose_name(rival));
    let finding = finding.from(&compared_by(source, rival.vacuum_provenance()));
    Some(Finding { value: own, limit: Some(asked), unit: "kPa abs", ..finding })
}

/// What a comparison rests on: a figure of the user's own is said to be theirs, else the original's source.
fn compared_by(own: Provenance, rival: Provenance) -> Provenance {
    if own.basis == Basis::Yours { own } else { rival }
}

fn rival_finding(
    verdict: Verdict,
    case: Case,
    value: f64,
    limit: f64,
    unit: &'static str,
    rival: &HoseRow,
) -> Finding {
    let source = Provenance { source: rival.source.clone(), basis: rival.basis };
    Finding::new(RULE, verdict, case)
        .measured(value, limit, unit)
        .about("rival", hose_name(rival))
        .from(&source)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;
    use crate::check::{Question, check};
    use crate::spec::HoseRef;

    /// The original may have been the very hose, and nobody measured the bend.
    fn bend_of_original(own: Option<f64>) -> Finding {
        let catalogue = Catalogue::embedded();
        let row = catalogue.hoses.iter().find(|row| row.min_bend_radius_mm.is_some()).expect("a row");
        let hose = HoseRef {
            min_bend_radius_mm: own.map(Millimetres),
            ..HoseRef::named(row.standard.as_str(), row.kind.as_str(), row.dn)
        };
        let candidate = serde_json::json!({
            "standard": row.standard, "type": row.kind, "dn": row.dn, "probability": 1.0
        });
        let question: Question = serde_json::from_value(serde_json::json!({
            "spec": { "hose": hose }, "found": { "hose": [candidate] }
        }))
        .expect("a question");
        let checked = check(catalogue, &question).expect("is checked");
        let of_bend = |finding: &Finding| finding.case.key.starts_with("original-bend");
        checked.findings.into_iter().find(of_bend).expect("the bend is compared")
    }

    #[test]
    fn a_comparison_that_rests_on_a_figure_of_the_users_says_so() {
        let table = bend_of_original(None);
        assert_eq!((table.verdict, table.basis == Basis::Yours), (Verdict::Pass, false), "{table:?}");
        for (own, verdict) in [(1.0, Verdict::Pass), (9999.0, Verdict::Stop)] {
            let yours = bend_of_original(Some(own));
            assert_eq!(
                (yours.verdict, yours.basis, yours.value),
                (verdict, Basis::Yours, Some(own)),
                "{yours:?}"
            );
        }
    }
}
