//! The radius at the inside of the bend.

use crate::catalogue::Provenance;
use crate::check::limit::Limit;
use crate::check::subject::{Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases};
use crate::quantity::Millimetres;
use crate::route;

const BEND: Limit = Limit {
    rule: "bend",
    unit: Millimetres::UNIT,
    ok: cases::BEND_OK,
    unverified: cases::BEND_UNVERIFIED,
    broken: cases::BEND_TOO_TIGHT,
};

/// The same of a bend that was routed.
const ROUTED: Limit = Limit { ok: cases::BEND_ESTIMATED_OK, ..BEND };

/// A bend that was routed: an estimate can not tell apart what lies within a tenth of the limit.
fn estimated(routed: Millimetres, smallest: Millimetres, source: &Provenance) -> Finding {
    let finding = ROUTED.at_least(routed.get(), smallest.get(), source);
    if finding.verdict == Verdict::Pass && routed.get() < smallest.get() * (1.0 + route::MARGIN) {
        return Finding::new(BEND.rule, Verdict::Caution, cases::BEND_ESTIMATED_NEAR)
            .measured(routed.get(), smallest.get(), BEND.unit)
            .from(source);
    }
    finding
}

pub(super) fn bend(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.bend_radius_mm else {
        return vec![
            Finding::new("bend-not-checked", Verdict::Caution, cases::BEND_MISSING).from(&practice()),
        ];
    };
    let Some(hose) = subject.hose else { return Vec::new() };
    let (smallest, source) = hose.min_bend_radius();
    let finding = match smallest {
        Some(smallest) if subject.service.is_bend_estimated() => estimated(asked, smallest, &source),
        Some(smallest) => BEND.at_least(asked.get(), smallest.get(), &source),
        None => Finding::new(BEND.rule, Verdict::Stop, cases::BEND_LIMIT_UNKNOWN)
            .measured(asked.get(), None, BEND.unit)
            .from(&source),
    };
    vec![finding.about("hose", hose_name(hose.row))]
}
