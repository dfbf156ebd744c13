//! Pressure below the atmosphere: the hose's vacuum rating and the helix that holds it open.

use crate::catalogue::Reinforcement;
use crate::check::limit::Limit;
use crate::check::subject::{Hose, Subject, hose_name, practice};
use crate::check::{Finding, Verdict, cases};
use crate::spec::Line;

/// Standard atmosphere (ISO 2533): from here up nothing is sucked in.
const ATMOSPHERE_KPA: f64 = 101.325;

const VACUUM: Limit = Limit {
    rule: "vacuum",
    unit: "kPa abs",
    ok: cases::VACUUM_OK,
    unverified: cases::VACUUM_UNVERIFIED,
    broken: cases::VACUUM_TOO_DEEP,
};

pub(super) fn suction(subject: &Subject<'_>) -> Vec<Finding> {
    let Some(hose) = subject.hose else { return Vec::new() };
    let sucks = subject.service.line == Some(Line::Suction);
    let asked = subject.service.vacuum_kpa_abs;
    let below_atmosphere = asked.is_some_and(|asked| asked < ATMOSPHERE_KPA);
    let mut findings = Vec::new();
    if sucks || below_atmosphere {
        findings.push(vacuum(hose, asked).about("hose", hose_name(hose.row)));
    }
    if sucks {
        findings.push(helix(hose).about("hose", hose_name(hose.row)));
    }
    findings
}

fn vacuum(hose: Hose<'_>, asked: Option<f64>) -> Finding {
    let (deepest, source) = hose.vacuum_kpa_abs();
    let unheld = |verdict, case| {
        let finding = Finding::new(VACUUM.rule, verdict, case).from(&source);
        Finding { value: asked, limit: deepest, unit: VACUUM.unit, ..finding }
    };
    match (deepest, asked) {
        (None, _) => unheld(Verdict::Stop, cases::VACUUM_UNRATED),
        (Some(_), None) => unheld(Verdict::Caution, cases::VACUUM_MISSING),
        (Some(deepest), Some(asked)) => VACUUM.at_least(asked, deepest, &source),
    }
}

fn helix(hose: Hose<'_>) -> Finding {
    let (verdict, case) = match hose.kind.reinforcement {
        Some(Reinforcement::SuctionHelix) => (Verdict::Pass, cases::SUCTION_HELIX_OK),
        _ => (Verdict::Caution, cases::SUCTION_HELIX_MISSING),
    };
    Finding::new("suction-helix", verdict, case).from(&practice())
}
