//! The speed of the oil by the kind of line: a limit of prudence.

use crate::catalogue::{Catalogue, HoseRow, OilSpeed, Practice};
use crate::check::subject::{Hose, Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases, findings, gravest};
use crate::flow::{bore_for, velocity};
use crate::quantity::Millimetres;
use crate::spec::Line;

pub(crate) const RULE: &str = "flow-speed";

pub(super) fn flow(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(flow) = subject.service.flow_l_min else {
        return vec![
            Finding::new("flow-not-checked", Verdict::Caution, cases::FLOW_MISSING).from(&practice()),
        ];
    };
    let (Some(hose), Some(line)) = (subject.hose, subject.service.line) else { return Vec::new() };
    let Some(usual) = usual_speed(subject.catalogue, line) else { return Vec::new() };
    let speed = velocity(flow, hose.row.id_nom_mm);
    if speed <= usual.high_m_s {
        let finding = Finding::new(RULE, Verdict::Pass, cases::FLOW_OK);
        return vec![finding.measured(speed, usual.high_m_s, "m/s").from(&usual.provenance)];
    }
    let bore = bore_for(flow, usual.high_m_s);
    let finding = match larger(subject, hose, bore) {
        Larger::Will(row) => {
            let brought_to = velocity(flow, row.id_nom_mm);
            Finding::new(RULE, Verdict::Caution, cases::FLOW_TOO_FAST_SIZE)
                .about("hose", hose_name(row))
                .about("speed", format!("{brought_to:.1}"))
        }
        Larger::Stopped(row) => {
            Finding::new(RULE, Verdict::Caution, cases::FLOW_TOO_FAST_STOPPED).about("hose", hose_name(row))
        }
        Larger::None => Finding::new(RULE, Verdict::Caution, cases::FLOW_TOO_FAST),
    };
    let finding = finding.about("bore", format!("{:.1}", bore.get()));
    vec![finding.measured(speed, usual.high_m_s, "m/s").from(&usual.provenance)]
}

/// A larger size of the same type in which the oil runs no faster than is usual.
enum Larger<'a> {
    /// The smallest that the whole check lets pass.
    Will(&'a HoseRow),
    /// There are such sizes, the smallest of them this one, and the check stops them all.
    Stopped(&'a HoseRow),
    /// The tables have none.
    None,
}

/// A cure is put through the whole check before it is named: a larger hose may bend too wide for the place, or
/// carry too little. The sizes tried are wide enough, so that none of them asks for a larger one again.
fn larger<'a>(subject: &Subject<'a>, hose: Hose<'a>, bore: Millimetres) -> Larger<'a> {
    let sizes = subject.catalogue.sizes(&hose.row.standard, &hose.row.kind);
    let larger = |row: &&HoseRow| row.id_nom_mm >= bore && row.id_nom_mm > hose.row.id_nom_mm;
    let mut wide: Vec<&HoseRow> = sizes.filter(larger).collect();
    wide.sort_by(|a, b| a.id_nom_mm.get().total_cmp(&b.id_nom_mm.get()));
    let passes = |row: &&HoseRow| {
        let other = Hose::of(subject.catalogue, row);
        other.is_some_and(|other| gravest(&findings(&subject.with(other))) != Verdict::Stop)
    };
    match (wide.iter().copied().find(passes), wide.first()) {
        (Some(row), _) => Larger::Will(row),
        (None, Some(row)) => Larger::Stopped(row),
        (None, None) => Larger::None,
    }
}

/// The usual speeds of European practice. A line to a cylinder carries the pump's flow, as a pressure
/// line does; leakage goes back to the tank.
pub(crate) fn usual_speed(catalogue: &Catalogue, line: Line) -> Option<&OilSpeed> {
    let like = match line {
        Line::Suction => Line::Suction,
        Line::Return | Line::CaseDrain => Line::Return,
        Line::Pressure | Line::Pilot | Line::Cylinder => Line::Pressure,
    };
    catalogue.speeds(like, Practice::European).next()
}
