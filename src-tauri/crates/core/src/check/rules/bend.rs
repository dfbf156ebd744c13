//! The radius at the inside of the bend.

use crate::check::limit::Limit;
use crate::check::subject::{Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases};
use crate::quantity::Millimetres;

const BEND: Limit = Limit {
    rule: "bend",
    unit: Millimetres::UNIT,
    ok: cases::BEND_OK,
    unverified: cases::BEND_UNVERIFIED,
    broken: cases::BEND_TOO_TIGHT,
};

pub(super) fn bend(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(asked) = subject.service.bend_radius_mm else {
        return vec![
            Finding::new("bend-not-checked", Verdict::Caution, cases::BEND_MISSING).from(&practice()),
        ];
    };
    let Some(hose) = subject.hose else { return Vec::new() };
    let (smallest, source) = hose.min_bend_radius();
    let finding = match smallest {
        Some(smallest) => BEND.at_least(asked.get(), smallest.get(), &source),
        None => Finding::new(BEND.rule, Verdict::Stop, cases::BEND_LIMIT_UNKNOWN)
            .measured(asked.get(), None, BEND.unit)
            .from(&source),
    };
    vec![finding.about("hose", hose_name(hose.row))]
}
