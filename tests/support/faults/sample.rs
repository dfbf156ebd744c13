//! A register of the present program with something of every kind in it, kept so that later programs can be tried on it.

use super::script::{Others, script};
use super::served::{Served, answer};
use hosewright_core::record::{DeviceId, SCHEMA};
use hosewright_store::{Register, backups, backups_of};
use std::path::Path;
use std::process::Command;

/// Leaves it at that path: as it stood when the script had it backed up, before it takes things away again.
///
/// # Panics
/// The program can not be run, or refuses a command of the script.
pub fn sample(program: &Path, to: &Path) {
    let folder = tempfile::tempdir().expect("a folder");
    let others = Others::made(program, folder.path());
    let register = folder.path().join("register.db");
    let served = Served::start(Command::new(program), &register);
    script(&others, |name, input, bytes| {
        answer(served.begin(name, &input, bytes)).expect("it is answered").document
    });
    let kept = backups(&register).expect("reads");
    let newest = kept.first().expect("the script keeps one");
    std::fs::copy(backups_of(&register).join(&newest.name), to).expect("is copied");
}

/// The name of the present program's sample: the schema of its file, of its projected tables and of its events' bodies.
///
/// # Panics
/// A register can not be begun in a folder of its own.
pub fn sample_name() -> String {
    let folder = tempfile::tempdir().expect("a folder");
    let register = Register::open(folder.path().join("a.db"), DeviceId::from_bytes([1; 16])).expect("opens");
    let stands = register.diagnosis().expect("reads");
    format!("file-{}-tables-{}-events-{SCHEMA}.db", stands.schema[1], stands.projection[1])
}
