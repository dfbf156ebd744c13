//! The speed of the oil by the kind of line: a limit of prudence.

use crate::check::subject::{Subject, practice};
use crate::check::{Finding, Verdict, cases};
use crate::spec::Line;

const RULE: &str = "flow-speed";

pub(super) fn flow(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(flow) = subject.service.flow_l_min else {
        return vec![Finding::new("flow-not-checked", Verdict::Caution, cases::FLOW_MISSING).from(&practice())];
    };
    let (Some(hose), Some(line)) = (subject.hose, subject.service.line) else { return Vec::new() };
    let Some((fastest, source)) = subject.rule(fastest(line)) else { return Vec::new() };
    let speed = speed_m_s(flow.get(), hose.row.id_nom_mm.get());
    let (verdict, key) = if speed <= fastest {
        (Verdict::Pass, cases::FLOW_OK)
    } else {
        (Verdict::Caution, cases::FLOW_TOO_FAST)
    };
    vec![Finding::new(RULE, verdict, key).measured(speed, fastest, "m/s").from(source)]
}

/// The rule with the highest usual speed. A line to a cylinder carries the pump's flow, as a
/// pressure line does; leakage goes back to the tank.
fn fastest(line: Line) -> &'static str {
    match line {
        Line::Suction => "L070",
        Line::Return | Line::CaseDrain => "L072",
        Line::Pressure | Line::Pilot | Line::Cylinder => "L074",
    }
}
