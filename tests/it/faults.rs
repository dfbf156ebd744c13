//! What goes wrong around the program: it is killed, the power fails, the disk is full or may not be written, the file is
//! damaged or another program's. Nothing that was acknowledged is lost, and each answer names the way out.
//! `cargo xtask faults` does the first two 5,000 and 1,000 times.

use assert_cmd::Command;
use hosewright_api::commands::NAMES;
use hosewright_core::record::DeviceId;
use hosewright_store::{Register, backups, backups_of};
use hosewright_tests::faults::{Cut, READING, WRITING, cuts, kills};
use rstest::rstest;
use rusqlite::Connection;
use serde_json::json;
use std::fs;
use std::path::{Path, PathBuf};
use tempfile::TempDir;

fn program() -> PathBuf {
    Command::cargo_bin("hosewright").expect("the command line is built").get_program().into()
}

#[test]
fn a_program_killed_while_it_writes_loses_nothing_it_answered_for() {
    let outcome = kills(&program(), 60, 1);
    assert_eq!((outcome.faults, &outcome.lost, &outcome.corrupt), (60, &vec![], &vec![]));
    assert!(outcome.after > 0 && outcome.before > 0, "kills came before and after: {outcome:?}");
}

#[test]
fn a_power_cut_while_it_writes_loses_nothing_it_answered_for() {
    let outcome = cuts(&program(), 60, 1, Cut::Honest);
    assert_eq!((outcome.faults, &outcome.lost, &outcome.corrupt), (60, &vec![], &vec![]));
    let lying = cuts(&program(), 20, 1, Cut::Lying);
    assert!(lying.lost.len() + lying.corrupt.len() > 0, "a loss would be seen: {lying:?}");
}

#[test]
fn every_command_is_known_to_write_or_to_answer_alone() {
    let mut named: Vec<&str> = WRITING.iter().chain(&READING).copied().collect();
    named.sort_unstable();
    let mut all = NAMES.to_vec();
    all.sort_unstable();
    assert_eq!(named, all, "a new command that writes is called by the script of the faults");
}

/// A register with some rows of the demo's list, in a folder of its own.
fn begun() -> (TempDir, PathBuf) {
    let folder = tempfile::tempdir().expect("a folder");
    let register = folder.path().join("fleet.db");
    let (exit, _, error) = hosewright(&register, &["import", "../demo/fleet.csv"]);
    assert_eq!(exit, 0, "{error}");
    (folder, register)
}

fn hosewright(register: &Path, arguments: &[&str]) -> (i32, String, String) {
    let mut command = Command::cargo_bin("hosewright").expect("the command line is built");
    said(command.arg("register").arg("--db").arg(register).args(arguments))
}

fn said(command: &mut Command) -> (i32, String, String) {
    let output = command.output().expect("it runs");
    // The terminal's lines are put together again: a message is looked for whole.
    let text = |bytes: &[u8]| String::from_utf8_lossy(bytes).split_whitespace().collect::<Vec<_>>().join(" ");
    (output.status.code().unwrap_or(-1), text(&output.stdout), text(&output.stderr))
}

/// The bytes at the beginning, or in pages of the tables.
#[rstest]
#[case::the_header(0, 64, "is not a register; choose a register's own file")]
#[case::a_page(8192, 4096 * 40, "restore the latest backup")]
fn a_damaged_file_is_left_as_it_is_and_the_answer_says_what_to_do(
    #[case] from: usize,
    #[case] count: usize,
    #[case] way_out: &str,
) {
    let (_folder, register) = begun();
    let mut bytes = fs::read(&register).expect("reads");
    let to = (from + count).min(bytes.len());
    bytes[from..to].fill(0xA5);
    fs::write(&register, &bytes).expect("writes");
    let (exit, _, error) = hosewright(&register, &["verify"]);
    assert_eq!(exit, 4, "{error}");
    assert!(error.contains(way_out), "{error}");
    assert_eq!(fs::read(&register).expect("reads"), bytes, "it was left as it is");
}

#[test]
fn a_damaged_register_is_replaced_by_its_last_good_backup_and_kept_beside_it() {
    let (_folder, register) = begun();
    let (exit, listed, error) = hosewright(&register, &["backups", "--keep"]);
    assert_eq!(exit, 0, "{error}");
    let name = backups(&register).expect("reads")[0].name.clone();
    assert!(listed.contains(&name) && listed.contains("each proved by restoring it"), "{listed}");
    let mut bytes = fs::read(&register).expect("reads");
    let size = bytes.len();
    bytes[4096..size / 2].fill(0xA5);
    fs::write(&register, &bytes).expect("writes");
    // The list is there though the register is not, and a backup can be put under a new name.
    let (exit, listed, error) = hosewright(&register, &["backups"]);
    assert!(exit == 0 && listed.contains(&name), "{listed} {error}");
    let kept = backups_of(&register).join(&name);
    let (exit, verified, error) =
        hosewright(&register.with_file_name("new.db"), &["restore", &kept.display().to_string()]);
    assert!(exit == 0 && verified.contains("events"), "{verified} {error}");

    // The screens put it in its place.
    let mut api = super::settings::api();
    assert!(api.open(&register).is_err(), "it is damaged");
    let asked = |kept: &str| json!({ "kept": kept });
    let none = api.call("register.restore", asked("../fleet.db"), &[]).expect_err("no such backup");
    assert_eq!(none.field, "kept");
    api.call("register.restore", asked(&name), &[]).expect("is put in place");
    let whole = super::settings::answer(&mut api, "register.verify", json!({})).expect("verifies");
    assert_eq!(whole["faults"], json!([]));
    let beside: Vec<String> = fs::read_dir(register.parent().expect("a folder"))
        .expect("reads")
        .map(|file| file.expect("a file").file_name().to_string_lossy().into_owned())
        .collect();
    let aside = beside.iter().find(|name| name.starts_with("fleet.db.before-")).expect("it is kept");
    assert_eq!(fs::read(register.with_file_name(aside)).expect("reads"), bytes);
}

#[test]
fn a_register_that_does_not_verify_makes_no_backup_and_keeps_the_older_ones() {
    let (_folder, register) = begun();
    hosewright(&register, &["backups", "--keep"]);
    let db = Connection::open(&register).expect("opens");
    db.execute_batch("DROP TRIGGER event_is_never_changed; UPDATE event SET body = '{}' WHERE number = 3")
        .expect("is changed");
    drop(db);
    let (exit, _, error) = hosewright(&register, &["backups", "--keep"]);
    assert_eq!(exit, 4, "{error}");
    assert!(error.contains("damaged") && error.contains("restore the latest backup"), "{error}");
    let folder = backups_of(&register);
    let left: Vec<_> =
        fs::read_dir(&folder).expect("reads").map(|file| file.expect("a file").path()).collect();
    assert_eq!(left.len(), 1, "{left:?}");
    assert_eq!(backups(&register).expect("reads").len(), 1);
}

#[test]
fn a_folder_that_may_not_be_written_is_said_and_nothing_is_begun() {
    use std::os::unix::fs::PermissionsExt;
    let (folder, register) = begun();
    // The register itself may be written, its log can not be made.
    for path in [folder.path(), register.as_path()] {
        let mode = if path.is_dir() { 0o555 } else { 0o666 };
        fs::set_permissions(path, fs::Permissions::from_mode(mode)).expect("is set");
    }
    // The superuser may write anywhere, so it asks as somebody else.
    let somebody = |arguments: &[&str]| {
        let mut command = Command::new("setpriv");
        command.args(["--reuid=65534", "--regid=65534", "--clear-groups"]).arg(program());
        said(command.arg("register").arg("--db").args(arguments))
    };
    let path = register.display().to_string();
    let (exit, _, error) = somebody(&[&path, "import", "/dev/null"]);
    let (_, _, fresh) =
        somebody(&[&folder.path().join("new.db").display().to_string(), "import", "/dev/null"]);
    fs::set_permissions(folder.path(), fs::Permissions::from_mode(0o755)).expect("is set");
    assert_eq!(exit, 4, "{error}");
    assert!(error.contains("permissions"), "{error}");
    assert!(fresh.contains("folder"), "{fresh}");
    assert!(!folder.path().join("new.db").exists());
}

#[test]
fn two_programs_write_in_one_register_and_neither_loses_anything() {
    let (_folder, register) = begun();
    let before = Register::open(&register, DeviceId::from_bytes([1; 16]))
        .expect("opens")
        .bundle()
        .expect("reads")
        .events
        .len();
    let writers: Vec<_> = (0..2)
        .map(|writer| {
            let register = register.clone();
            std::thread::spawn(move || {
                for number in 0..8 {
                    let site = format!("{writer:016}{number:016}");
                    let named =
                        json!({"body": {"kind": "site-named", "site": site, "name": "An invented yard"}});
                    let mut command = Command::cargo_bin("hosewright").expect("it is built");
                    command
                        .arg("register")
                        .arg("--db")
                        .arg(&register)
                        .args(["record", "-"])
                        .write_stdin(named.to_string());
                    let (exit, _, error) = said(&mut command);
                    assert_eq!(exit, 0, "{error}");
                }
            })
        })
        .collect();
    for writer in writers {
        writer.join().expect("it wrote");
    }
    let mut opened = Register::open(&register, DeviceId::from_bytes([1; 16])).expect("opens");
    assert_eq!(opened.bundle().expect("reads").events.len(), before + 16);
    assert_eq!(opened.verify().expect("verifies").faults, []);
}

#[test]
fn a_restore_does_not_read_the_log_of_a_register_that_was_there_before() {
    let (folder, register) = begun();
    let backup = folder.path().join("kept.hosewright");
    hosewright(&register, &["backup", &backup.display().to_string()]);
    // The file alone was taken away; what its log holds nobody has looked at.
    let new = folder.path().join("new.db");
    fs::write(folder.path().join("new.db-wal"), b"what was not yet in the file").expect("writes");
    let (exit, _, error) = hosewright(&new, &["restore", &backup.display().to_string()]);
    assert_eq!(exit, 4, "{error}");
    assert!(error.contains("new.db-wal holds records") && error.contains("move the file away"), "{error}");
    assert!(!new.exists());
}

#[test]
fn a_clock_set_back_loses_nothing_and_the_list_of_backups_says_so() {
    let (_folder, register) = begun();
    let folder = backups_of(&register);
    hosewright(&register, &["backups", "--keep"]);
    let name = backups(&register).expect("reads")[0].name.clone();
    // As if it had been made when the clock was two years ahead.
    let ahead = format!("2099{}", &name[4..]);
    fs::rename(folder.join(&name), folder.join(&ahead)).expect("is renamed");
    let (exit, listed, _) = hosewright(&register, &["backups"]);
    assert!(exit == 0 && listed.contains("from the future"), "{listed}");
    let (_, listed, _) = hosewright(&register, &["backups", "--keep"]);
    assert!(listed.contains(&ahead), "neither is taken away: {listed}");
    assert_eq!(backups(&register).expect("reads").len(), 2);
    let (exit, whole, error) = hosewright(&register, &["verify"]);
    assert_eq!(exit, 0, "{whole} {error}");
}
