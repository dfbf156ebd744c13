//! Hose assemblies.

use crate::Error;
use hosewright_core::record::{Assembly, Body, Entry, Proof};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, OptionalExtension, params};

pub(super) fn project(db: &Connection, code: &TagCode, current: Option<&Entry>) -> Result<(), Error> {
    let Some(Entry { at, body: Body::AssemblyMade(made), .. }) = current else { return Ok(()) };
    db.prepare_cached(
        "INSERT INTO assembly (code, hose_made, assembled, folded, content, version, standard, kind, dn, length_mm,
                               failed_proof)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)",
    )?
    .execute(params![
        code.to_string(),
        made.hose_made.map(|date| date.to_string()),
        made.assembled.map(|date| date.to_string()),
        folded(made),
        serde_json::to_string(made)?,
        at.to_string(),
        made.spec.hose.as_ref().map(|hose| &hose.standard),
        made.spec.hose.as_ref().map(|hose| &hose.kind),
        made.spec.hose.as_ref().map(|hose| hose.dn.get()),
        made.spec.overall_length_mm.map(|length| length.get()),
        matches!(made.proof, Proof::Failed { .. }),
    ])?;
    rests(db, made)
}

/// Writes down what it rests on.
fn rests(db: &Connection, made: &Assembly) -> Result<(), Error> {
    let code = made.code.to_string();
    let mut insert =
        db.prepare_cached("INSERT OR IGNORE INTO rests (source, row, digest, code) VALUES (?1, ?2, ?3, ?4)")?;
    each_mark(made, |[table, row, digest]| Ok(insert.execute(params![table, row, digest, code]).map(drop)?))
}

/// Takes away what a hose rests on, before the record that says so goes.
pub(super) fn clear_rests(db: &Connection, code: &TagCode) -> Result<(), Error> {
    let code = code.to_string();
    let mut record = db.prepare_cached("SELECT content FROM assembly WHERE code = ?1")?;
    let made: Option<Assembly> =
        record.query_row([&code], |row| crate::rows::json(row, "content")).optional()?;
    let mut delete =
        db.prepare_cached("DELETE FROM rests WHERE source = ?1 AND row = ?2 AND digest = ?3 AND code = ?4")?;
    made.map_or(Ok(()), |made| {
        each_mark(&made, |[table, row, digest]| {
            Ok(delete.execute(params![table, row, digest, code]).map(drop)?)
        })
    })
}

/// The rows of the tables it rests on: table, row and digest. Where nobody wrote them down, the version of the tables in
/// their place.
fn each_mark(made: &Assembly, mut work: impl FnMut([&str; 3]) -> Result<(), Error>) -> Result<(), Error> {
    if made.rests_on.is_empty() {
        return work(["", "", &made.catalogue]);
    }
    made.rests_on.iter().try_for_each(|mark| work([&mark.table, &mark.row, &mark.digest]))
}

/// What is searched: the code with and without its hyphens, hose, ends and length.
fn folded(made: &Assembly) -> String {
    let code = made.code.to_string();
    let mut words = vec![code.to_owned(), code.replace('-', "")];
    if let Some(hose) = &made.spec.hose {
        words.push(format!("{} {} DN{}", hose.standard, hose.kind, hose.dn));
    }
    for end in &made.spec.ends {
        words.push(format!("{} {}", end.family, end.size));
    }
    if let Some(length) = made.spec.overall_length_mm {
        words.push(length.get().to_string());
    }
    words.join(" ").to_lowercase()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hose_is_found_by_code_size_ends_and_length() {
        let made: Assembly = serde_json::from_value(serde_json::json!({
            "code": "7KQ4M-2XR9D-D",
            "spec": {
                "hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
                "ends": [{"role": "A", "family": "JIC 37 flare", "size": "-10"}],
                "overall_length_mm": 1240
            },
            "proof": {"state": "not-proved", "why": "no-rig"},
            "catalogue": "tables",
            "program": "test"
        }))
        .expect("an assembly");
        assert_eq!(folded(&made), "7kq4m-2xr9d-d 7kq4m2xr9dd en 853 2sn dn16 jic 37 flare -10 1240");
    }
}
