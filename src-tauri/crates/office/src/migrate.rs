//! The database's tables, step by step.

use crate::OfficeError;
use postgres::Client;

/// The steps from nothing to the present tables, in order; never edited once released.
const MIGRATIONS: [&str; 1] = [include_str!("../../../../migrations/office/0001_office.sql")];

/// A number that means this program's tables, for a lock that others do not take: the letters `hose`.
const LOCK: i64 = 0x686f_7365;

/// Takes the steps that the tables have not had, all or none.
pub(crate) fn migrate(client: &mut Client) -> Result<(), OfficeError> {
    // What it says of what is there already is nobody's concern.
    client.batch_execute("SET client_min_messages = warning")?;
    let mut tx = client.transaction()?;
    tx.execute("SELECT pg_advisory_xact_lock($1)", &[&LOCK])?;
    let is_there: bool = tx.query_one("SELECT to_regclass('hosewright.copied') IS NOT NULL", &[])?.get(0);
    let done: i32 =
        if is_there { tx.query_one("SELECT migration FROM hosewright.copied", &[])?.get(0) } else { 0 };
    let known = MIGRATIONS.len() as i32;
    if done > known {
        return Err(OfficeError::Newer { found: done, known });
    }
    for (step, sql) in (1_i32..).zip(MIGRATIONS).filter(|(step, _)| *step > done) {
        tx.batch_execute(sql)?;
        tx.execute("UPDATE hosewright.copied SET migration = $1", &[&step])?;
    }
    Ok(tx.commit()?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::Path;

    #[test]
    fn every_step_is_taken_in_order() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../migrations/office");
        let mut files: Vec<_> = std::fs::read_dir(folder)
            .expect("the folder is there")
            .map(|file| file.expect("a file").path())
            .collect();
        files.sort();
        let texts: Vec<_> = files.iter().map(|file| std::fs::read_to_string(file).expect("reads")).collect();
        assert_eq!(texts, MIGRATIONS);
    }
}
