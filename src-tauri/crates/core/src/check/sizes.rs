//! The sizes of a type in which the oil runs no faster than is usual in the line.

use super::subject::{Hose, Subject, hose_name};
use super::{Finding, Verdict, cases, findings, gravest};
use crate::catalogue::{Catalogue, HoseRow};
use crate::flow::velocity;
use crate::quantity::LitresPerMinute;

/// The sizes of a hose's type in which that flow runs no faster, the smallest first.
pub(crate) fn wide_enough<'a>(
    catalogue: &'a Catalogue,
    hose: &HoseRow,
    flow: LitresPerMinute,
    most_m_s: f64,
) -> Vec<&'a HoseRow> {
    let sizes = catalogue.sizes(&hose.standard, &hose.kind);
    let mut wide: Vec<&HoseRow> = sizes.filter(|row| velocity(flow, row.id_nom_mm) <= most_m_s).collect();
    wide.sort_by(|a, b| a.id_nom_mm.get().total_cmp(&b.id_nom_mm.get()));
    wide
}

/// Names the size that cures too fast a flow: the smallest that the whole check lets pass, since a larger hose may bend
/// too wide for the place or carry too little. Done for the spec's own hose alone: its rivals of the same size have the
/// same to say.
pub(super) fn name_cure(subject: &Subject<'_>, found: &mut [Finding]) {
    let too_fast = found.iter_mut().find(|finding| finding.case == cases::FLOW_TOO_FAST);
    let (Some(too_fast), Some(hose), Some(flow)) = (too_fast, subject.hose, subject.service.flow_l_min)
    else {
        return;
    };
    let Some(most_m_s) = too_fast.limit else { return };
    let wide = wide_enough(subject.catalogue, hose.row, flow, most_m_s);
    let passes = |row: &&HoseRow| {
        let other = Hose::of(subject.catalogue, row);
        other.is_some_and(|other| gravest(&findings(&subject.with(other))) != Verdict::Stop)
    };
    match (wide.iter().find(|row| passes(row)), wide.first()) {
        (Some(row), _) => {
            let brought_to = velocity(flow, row.id_nom_mm);
            too_fast.case = cases::FLOW_TOO_FAST_SIZE;
            too_fast.names.insert("hose", hose_name(row));
            too_fast.names.insert("speed", format!("{brought_to:.1}"));
        }
        (None, Some(row)) => {
            too_fast.case = cases::FLOW_TOO_FAST_STOPPED;
            too_fast.names.insert("hose", hose_name(row));
        }
        (None, None) => {}
    }
}
