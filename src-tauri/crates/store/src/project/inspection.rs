//! Inspections and what they found.

use crate::Error;
use hosewright_core::check::Verdict;
use hosewright_core::record::{Arranged, Body};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, params};

pub(super) fn project(db: &Connection, code: &TagCode, inspections: &Arranged) -> Result<(), Error> {
    for node in &inspections.nodes {
        let Body::Inspected(seen) = &node.current.body else { continue };
        let version = node.current.at.to_string();
        db.prepare_cached("INSERT INTO inspection (version, code, date, opened) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![version, code.to_string(), seen.date.to_string(), seen.opened])?;
        for (position, finding) in (0_i64..).zip(&seen.findings) {
            db.prepare_cached(
                "INSERT INTO inspection_finding (version, position, sign, grade) VALUES (?1, ?2, ?3, ?4)",
            )?
            .execute(params![version, position, finding.sign, grade_name(finding.grade)])?;
        }
    }
    Ok(())
}

/// A verdict as it is stored; its JSON has the same writing.
pub(crate) const fn grade_name(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Pass => "pass",
        Verdict::Caution => "caution",
        Verdict::Stop => "stop",
    }
}
