//! What a check did not look at. A replacement same for same leaves flow and route out, and the answer says so.

use super::{Case, Finding, NotChecked, cases};

/// What the check never looks at: `route` and `flow`'s pressure drop are questions of their own.
const NEVER: [&str; 2] = ["route", "pressure-drop"];

/// What a finding says was not given, and so not looked at. Known by its rule too where a person may take it on.
const BY_CASE: [(Case, &str); 12] = [
    (cases::SURGE_MISSING, "surge"),
    (cases::SURGE_RECKONED, "surge"),
    (cases::SURGE_ESTIMATED, "surge"),
    (cases::SURGE_ESTIMATED_ABOVE, "surge"),
    (cases::RELIEF_MISSING, "relief"),
    (cases::HEAT_MISSING, "heat"),
    (cases::COLD_MISSING, "cold"),
    (cases::AMBIENT_MISSING, "ambient"),
    (cases::FLUID_MISSING, "fluid"),
    (cases::LINE_MISSING, "line"),
    (cases::VACUUM_MISSING, "vacuum"),
    (cases::ORIGINAL_MISSING, "original"),
];

const BY_RULE: [(&str, &str); 2] = [("flow-not-checked", "flow"), ("bend-not-checked", "bend")];

/// Everything that was not looked at, in the order of the findings.
pub(super) fn not_checked(findings: &[Finding]) -> Vec<NotChecked> {
    let named = |finding: &Finding| {
        let by_case = BY_CASE.iter().find(|(case, _)| *case == finding.case).map(|(_, what)| *what);
        by_case.or_else(|| BY_RULE.iter().find(|(rule, _)| *rule == finding.rule).map(|(_, what)| *what))
    };
    let left_out = findings.iter().filter_map(named);
    left_out.chain(NEVER).map(|what| NotChecked { what, words: String::new() }).collect()
}
