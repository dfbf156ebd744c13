//! The speed of the oil by the kind of line: a limit of prudence.

use crate::catalogue::{OilSpeed, Practice};
use crate::check::subject::{Subject, practice};
use crate::check::{Finding, Verdict, cases};
use crate::flow::velocity;
use crate::spec::Line;

const RULE: &str = "flow-speed";

pub(super) fn flow(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(flow) = subject.service.flow_l_min else {
        return vec![Finding::new("flow-not-checked", Verdict::Caution, cases::FLOW_MISSING).from(&practice())];
    };
    let (Some(hose), Some(line)) = (subject.hose, subject.service.line) else { return Vec::new() };
    let Some(usual) = usual(subject, line) else { return Vec::new() };
    let speed = velocity(flow, hose.row.id_nom_mm);
    let (verdict, key) = if speed <= usual.high_m_s {
        (Verdict::Pass, cases::FLOW_OK)
    } else {
        (Verdict::Caution, cases::FLOW_TOO_FAST)
    };
    vec![Finding::new(RULE, verdict, key).measured(speed, usual.high_m_s, "m/s").from(&usual.provenance)]
}

/// The usual speeds of European practice. A line to a cylinder carries the pump's flow, as a pressure
/// line does; leakage goes back to the tank.
fn usual<'a>(subject: &Subject<'a>, line: Line) -> Option<&'a OilSpeed> {
    let like = match line {
        Line::Suction => Line::Suction,
        Line::Return | Line::CaseDrain => Line::Return,
        Line::Pressure | Line::Pilot | Line::Cylinder => Line::Pressure,
    };
    subject.catalogue.speeds(like, Practice::European).next()
}
