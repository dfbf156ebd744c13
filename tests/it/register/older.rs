//! Registers of every program there was open in this one. `cargo xtask sample` leaves the present one's.

use super::fleet::{a_site, device, now};
use hosewright_store::Register;
use hosewright_tests::faults::{State, sample_name};
use std::path::{Path, PathBuf};

fn samples() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("databases");
    let files = std::fs::read_dir(folder).expect("is there").map(|file| file.expect("a file").path());
    files.filter(|file| file.extension().is_some_and(|ending| ending == "db")).collect()
}

/// What a sample says, what is written in another form since then in that form: the rate of labour was a whole number of
/// the currency's parts and is the amount as it is typed. Made in a copy, by hand and not by a migration.
fn as_said_now(sample: &Path, copy: &Path) -> Result<State, String> {
    std::fs::copy(sample, copy).expect("is copied");
    let db = rusqlite::Connection::open(copy).expect("opens");
    db.execute(
        r#"UPDATE setting SET value = replace(replace(value, '"currency_digits":2,', ''), ':7800,', ':"78.00",')
           WHERE key = 'pricing'"#,
        [],
    )
    .expect("is said so");
    drop(db);
    State::read(copy)
}

#[test]
fn a_register_of_every_schema_is_upgraded_whole_and_goes_on() {
    for sample in samples() {
        let name = sample.file_name().expect("a name").to_string_lossy().into_owned();
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("register.db");
        std::fs::copy(&sample, &path).expect("is copied");
        let before = as_said_now(&sample, &folder.path().join("as-said-now.db"))
            .unwrap_or_else(|why| panic!("{name}: {why}"));
        let mut register = Register::open(&path, device(9)).unwrap_or_else(|why| panic!("{name}: {why}"));
        assert_eq!(register.verify().expect("verifies").faults, [], "{name}");
        let counts = register.counts().expect("reads");
        assert!(counts.machines > 0 && counts.hoses > 1 && counts.drafts == 1, "{name}: {counts:?}");
        let stands = register.diagnosis().expect("reads");
        assert!(
            stands.schema[0] == stands.schema[1] && stands.projection[0] == stands.projection[1],
            "{name}"
        );
        assert_eq!(State::read(&path).expect("reads"), before, "{name}: what was written stands as it was");
        register
            .append([a_site(200, "An invented yard")], now())
            .unwrap_or_else(|why| panic!("{name}: {why}"));
    }
}

#[test]
fn the_present_schemas_have_their_sample() {
    let present = sample_name();
    let named = samples().into_iter().any(|sample| sample.ends_with(&present));
    assert!(named, "{present} is missing: cargo build --features hosewright-cli/serve && cargo xtask sample");
}
