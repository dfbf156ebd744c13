//! Whether the log is whole: it can not be changed, and where it was, that is found.

use super::fleet::{self, Kept, begin, device, write};
use hosewright_store::{Error, Problem, Register, restore};
use proptest::prelude::*;
use rstest::rstest;
use rusqlite::Connection;
use std::fs;

fn some() -> Kept {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    kept
}

/// The register's one file, closed and with its write-ahead log folded in.
fn closed(kept: Kept) -> (std::path::PathBuf, tempfile::TempDir) {
    let path = kept.path();
    drop(kept.register);
    (path, kept.folder)
}

#[rstest]
#[case("UPDATE event SET body = replace(body, 'North', 'South')", "never changed")]
#[case("UPDATE event SET ms = 0 WHERE number = 3", "never changed")]
#[case("DELETE FROM event WHERE number = 9", "never removed")]
#[case("DELETE FROM event", "never removed")]
#[case(
    "INSERT OR REPLACE INTO event SELECT device, number, hash, previous, builds_on, schema, ms, count, kind, body
     FROM event WHERE number = 2",
    "never replaced"
)]
#[case(
    "INSERT INTO event SELECT device, 11, hash, previous, builds_on, schema, ms, count, kind, body
     FROM event WHERE number = 9",
    "continues its device's series"
)]
#[case(
    "INSERT INTO event SELECT device, 10, hash, previous, builds_on, schema, ms, count, kind, body
     FROM event WHERE number = 9",
    "continues its device's series"
)]
fn the_log_can_not_be_changed_even_with_another_tool(#[case] sql: &str, #[case] refusal: &str) {
    let kept = some();
    let before = kept.register.dump().expect("reads");
    let error = Connection::open(kept.path()).expect("opens").execute(sql, []).expect_err("was not refused");
    assert!(error.to_string().contains(refusal), "{error}");
    assert_eq!(kept.register.dump().expect("reads"), before);
}

#[test]
fn a_sound_register_verifies() {
    let verified = some().register.verify().expect("verifies");
    assert_eq!((verified.events, verified.devices, verified.faults), (9, 1, vec![]));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, ..ProptestConfig::default() })]

    #[test]
    fn a_flipped_bit_in_an_event_is_found(at in any::<prop::sample::Index>(), bit in 0..8_u32) {
        let (path, _folder) = closed(some());
        let mut bytes = fs::read(&path).expect("reads");
        let (body, hash) = {
            let db = Connection::open(&path).expect("opens");
            db.query_row(
                "SELECT body, hash FROM event WHERE kind = 'assembly-made' LIMIT 1",
                [],
                |row| Ok((row.get::<_, String>(0)?, row.get::<_, String>(1)?)),
            )
            .expect("reads")
        };
        // The row holds the hash, and a few columns on the body, in one piece.
        let start = bytes.windows(64).position(|window| window == hash.as_bytes()).expect("the hash");
        let end = start
            + bytes[start..].windows(body.len()).position(|window| window == body.as_bytes()).expect("the body")
            + body.len();
        let flipped = start + at.index(end - start);
        bytes[flipped] ^= 1 << bit;
        fs::write(&path, &bytes).expect("writes");

        // An opening that is refused has found it as well.
        if let Ok(mut register) = Register::open(&path, device(9)) {
            let found = register.verify().map(|verified| verified.faults);
            prop_assert!(
                found.as_ref().map_or(true, |faults| !faults.is_empty()),
                "byte {} (in the event: {}) with bit {} flipped was not found", flipped, flipped - start, bit
            );
        }
    }
}

#[test]
fn a_backup_with_a_flipped_bit_is_not_restored() {
    let kept = some();
    let backup = kept.folder.path().join("backup.db");
    kept.register.backup(&backup).expect("is backed up");
    let mut bytes = fs::read(&backup).expect("reads");
    let at = bytes.windows(12).position(|window| window == b"North Quarry").expect("is in the file");
    bytes[at] ^= 1;
    fs::write(&backup, bytes).expect("writes");
    let to = kept.folder.path().join("restored.db");
    let restored = restore(&backup, &to, device(5));
    assert!(
        matches!(&restored, Err(Error::BackupDamaged { path, .. }) if *path == backup),
        "{:?}",
        restored.err()
    );
    assert!(!to.exists(), "a damaged backup left a register behind");
}

#[test]
fn tables_that_are_not_what_the_log_gives_are_found_and_mended() {
    let mut kept = some();
    Connection::open(kept.path())
        .expect("opens")
        .execute("UPDATE stint SET off_version = 'x', off_date = '2026-11-25'", [])
        .expect("is changed");
    let faults = kept.register.verify().expect("verifies").faults;
    assert_eq!(faults.iter().map(|fault| &fault.problem).collect::<Vec<_>>(), [&Problem::Tables]);
    kept.register.rebuild().expect("rebuilds");
    assert_eq!(kept.register.verify().expect("verifies").faults, []);
    assert_eq!(kept.register.counts().expect("reads").in_service, 1);
}

#[test]
fn tables_of_an_older_program_are_computed_anew_when_the_register_is_opened() {
    let kept = some();
    let live = kept.register.dump().expect("reads");
    let (path, _folder) = closed(kept);
    Connection::open(&path)
        .expect("opens")
        .execute_batch("UPDATE register SET projection = 0; DELETE FROM assembly; DELETE FROM stint;")
        .expect("is changed");
    let register = Register::open(&path, device(9)).expect("opens");
    assert_eq!(register.dump().expect("reads"), live);
    assert_eq!(register.device(), device(1));
}
