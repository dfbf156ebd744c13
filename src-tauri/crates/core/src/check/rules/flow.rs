//! The speed of the oil by the kind of line: a limit of prudence.

use crate::catalogue::{Catalogue, OilSpeed, Practice};
use crate::check::subject::{Subject, practice};
use crate::check::{Finding, Verdict, cases};
use crate::flow::{bore_for, velocity};
use crate::spec::Line;

const RULE: &str = "flow-speed";

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
    let finding = Finding::new(RULE, Verdict::Caution, cases::FLOW_TOO_FAST)
        .about("bore", format!("{:.1}", bore.get()));
    vec![finding.measured(speed, usual.high_m_s, "m/s").from(&usual.provenance)]
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
