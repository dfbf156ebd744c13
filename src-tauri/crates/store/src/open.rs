//! Opening a register: the right file, the right schema, the right settings.

use crate::{Error, rebuild};
use hosewright_core::record::DeviceId;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags, TransactionBehavior, params};
use std::path::{Path, PathBuf};
use std::time::Duration;

/// Marks the file as a register in its header: the letters `hose`.
pub(crate) const APPLICATION_ID: i64 = 0x686f_7365;

/// The steps from an empty file to the present schema, in order; never edited once released. A
/// file's `user_version` is the number of steps it has had.
pub(crate) const MIGRATIONS: [&str; 10] = [
    include_str!("../../../../migrations/0001_register.sql"),
    include_str!("../../../../migrations/0002_supplier.sql"),
    include_str!("../../../../migrations/0003_stock.sql"),
    include_str!("../../../../migrations/0004_tags.sql"),
    include_str!("../../../../migrations/0005_device_key.sql"),
    include_str!("../../../../migrations/0006_unfinished.sql"),
    include_str!("../../../../migrations/0007_bins.sql"),
    include_str!("../../../../migrations/0008_care.sql"),
    include_str!("../../../../migrations/0009_members.sql"),
    include_str!("../../../../migrations/0010_bulk.sql"),
];

/// Raise it when any projection is computed in another way: files made by an older program are
/// then rebuilt from their log when they are opened.
pub(crate) const PROJECTION: i64 = 6;

/// How long to wait for another program to finish writing.
const PATIENCE: Duration = Duration::from_secs(5);

/// An open register: one file in which one device writes.
#[derive(Debug)]
pub struct Register {
    pub(crate) db: Connection,
    pub(crate) path: PathBuf,
    pub(crate) device: DeviceId,
}

impl Register {
    /// Opens the register at that path, or begins one there if there is no file. `new_device` is
    /// the id a new register writes under, made of random bytes; an old one keeps its own.
    ///
    /// # Errors
    /// The file is something else, is damaged, in use, can not be written, or a newer program's. A
    /// file that is refused is left as it is.
    pub fn open(path: impl AsRef<Path>, new_device: DeviceId) -> Result<Self, Error> {
        let path = path.as_ref().to_owned();
        let mut db = connect(&path, Access::Write)?;
        set_up(&db)?;
        migrate(&mut db, new_device)?;
        let device = device_of(&db)?;
        let mut register = Self { db, path, device };
        if register.projection()? != PROJECTION {
            register.rebuild()?;
        }
        Ok(register)
    }

    /// The device this register writes as.
    pub fn device(&self) -> DeviceId {
        self.device
    }

    /// The register's file.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Takes away a register in which nothing was ever written, so that a command that began one and then
    /// failed leaves none behind. One that holds anything stays, be it a setting or a half-finished job alone.
    ///
    /// # Errors
    /// The register can not be read, or its file not taken away.
    pub fn discard_if_empty(self) -> Result<(), Error> {
        let written: bool = self.db.query_row(
            "SELECT EXISTS (SELECT 1 FROM event) OR EXISTS (SELECT 1 FROM held) OR EXISTS (SELECT 1 FROM person)
             OR EXISTS (SELECT 1 FROM setting) OR EXISTS (SELECT 1 FROM draft)
             OR EXISTS (SELECT 1 FROM supplier_row) OR EXISTS (SELECT 1 FROM scan)
             OR EXISTS (SELECT 1 FROM unfinished)",
            [],
            |row| row.get(0),
        )?;
        let keys = self.keys_path().exists();
        let Self { db, path, .. } = self;
        if written || keys {
            return Ok(());
        }
        // The last connection takes the files of its log with it.
        db.close().map_err(|(_, error)| error)?;
        std::fs::remove_file(&path).map_err(|source| Error::CannotOpen { path, source })
    }

    fn projection(&self) -> Result<i64, Error> {
        Ok(self.db.query_row("SELECT projection FROM register", [], |row| row.get(0))?)
    }
}

/// What a file is opened for.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Access {
    /// To write in it; a file that is not there is begun.
    Write,
    /// To read a register that is there.
    Read,
}

/// Opens the file and makes sure that it is a register this program knows, or one to be begun.
/// Changes nothing.
pub(crate) fn connect(path: &Path, access: Access) -> Result<Connection, Error> {
    let cannot = |source| Error::CannotOpen { path: path.to_owned(), source };
    match std::fs::metadata(path) {
        Ok(meta) if meta.is_dir() => return Err(cannot(std::io::ErrorKind::IsADirectory.into())),
        Ok(meta) if access == Access::Write && meta.permissions().readonly() => return Err(Error::ReadOnly),
        Ok(_) => {}
        Err(missing) if access == Access::Write && missing.kind() == std::io::ErrorKind::NotFound => {}
        Err(other) => return Err(cannot(other)),
    }
    let flags = match access {
        Access::Write => OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_CREATE,
        Access::Read => OpenFlags::SQLITE_OPEN_READ_ONLY,
    };
    let db = Connection::open_with_flags(path, flags | OpenFlags::SQLITE_OPEN_NO_MUTEX)
        .map_err(|error| cannot(std::io::Error::other(error.to_string())))?;
    db.busy_timeout(PATIENCE)?;

    let header = |name| db.pragma_query_value(None, name, |row| row.get::<_, i64>(0));
    let (application, schema) = match (header("application_id"), header("user_version")) {
        (Ok(application), Ok(schema)) => (application, schema),
        (Err(error), _) | (_, Err(error)) => {
            return Err(match Error::from(error) {
                Error::Damaged => Error::NotARegister { path: path.to_owned() },
                other => other,
            });
        }
    };
    let tables: i64 = db.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
    let to_be_begun = access == Access::Write && application == 0 && schema == 0 && tables == 0;
    if application != APPLICATION_ID && !to_be_begun {
        return Err(Error::NotARegister { path: path.to_owned() });
    }
    let known = MIGRATIONS.len() as i64;
    if schema > known {
        return Err(Error::NewerSchema { path: path.to_owned(), found: schema, known });
    }
    Ok(db)
}

/// Settings of a connection: what is committed survives a power cut, what is erased is overwritten.
fn set_up(db: &Connection) -> Result<(), Error> {
    db.pragma_update(None, "journal_mode", "WAL")?;
    db.pragma_update(None, "synchronous", "FULL")?;
    db.pragma_update(None, "foreign_keys", true)?;
    db.pragma_update(None, "secure_delete", true)?;
    // So many KiB of pages are held: what a list of 50,000 hoses or a merge touches, and the upper steps of the trees of a million.
    db.pragma_update(None, "cache_size", -65_536)?;
    // What a statement may have to take back is noted in memory: in a file it is written for every event anew.
    db.pragma_update(None, "temp_store", "MEMORY")?;
    // A plan does not depend on the values that are bound: else SQLite plans every question of a table with a partial
    // index anew, each time it is asked.
    db.set_db_config(DbConfig::SQLITE_DBCONFIG_ENABLE_QPSG, true)?;
    db.set_prepared_statement_cache_capacity(128);
    Ok(())
}

fn migrate(db: &mut Connection, new_device: DeviceId) -> Result<(), Error> {
    for (step, sql) in (1_i64..).zip(MIGRATIONS) {
        let tx = db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let done: i64 = tx.pragma_query_value(None, "user_version", |row| row.get(0))?;
        if done >= step {
            continue;
        }
        tx.execute_batch(sql)?;
        tx.pragma_update(None, "user_version", step)?;
        if step == 1 {
            tx.pragma_update(None, "application_id", APPLICATION_ID)?;
            tx.execute(
                "INSERT INTO register (id, device, projection) VALUES (1, ?1, ?2)",
                params![new_device.to_string(), PROJECTION],
            )?;
        }
        tx.commit()?;
    }
    Ok(())
}

pub(crate) fn device_of(db: &Connection) -> Result<DeviceId, Error> {
    Ok(db.query_row("SELECT device FROM register", [], |row| crate::rows::parsed(row, "device"))?)
}

impl Register {
    /// Throws the projected tables away and computes them anew from the log.
    ///
    /// # Errors
    /// The register can not be written, or its log can not be read.
    pub fn rebuild(&mut self) -> Result<(), Error> {
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        rebuild::rebuild(&tx)?;
        tx.execute("UPDATE register SET projection = ?1", [PROJECTION])?;
        Ok(tx.commit()?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rusqlite::StatementStatus;

    #[test]
    fn a_register_that_holds_only_a_setting_or_a_half_finished_job_is_not_taken_away() {
        type Write = fn(&mut Register);
        let writes: [(&str, Write, bool); 4] = [
            ("nothing", |_| {}, false),
            (
                "a setting",
                |register| {
                    let setting = serde_json::Map::from_iter([("paper".to_owned(), "a4".into())]);
                    register.keep_settings(&setting).expect("kept");
                },
                true,
            ),
            (
                "a job",
                |register| {
                    let job = hosewright_core::record::JobId::from_bytes([3; 16]);
                    register.keep_draft(job, &"typed".into(), chrono::DateTime::UNIX_EPOCH).expect("kept");
                },
                true,
            ),
            (
                "a supplier's sheet that was begun",
                |register| {
                    let begun = crate::Begun::SupplierSheet;
                    register
                        .keep_unfinished(begun, &"typed".into(), None, chrono::DateTime::UNIX_EPOCH)
                        .expect("kept");
                },
                true,
            ),
        ];
        for (what, write, stays) in writes {
            let folder = tempfile::tempdir().expect("a folder");
            let path = folder.path().join("register.db");
            let mut register = Register::open(&path, DeviceId::from_bytes([1; 16])).expect("opens");
            write(&mut register);
            register.discard_if_empty().expect("closes");
            assert_eq!(path.exists(), stays, "{what}");
        }
    }

    #[test]
    fn a_question_is_prepared_once_whatever_it_is_asked_for() {
        let folder = tempfile::tempdir().expect("a folder");
        let register =
            Register::open(folder.path().join("a.db"), DeviceId::from_bytes([1; 16])).expect("opens");
        for sql in [
            "SELECT s.code FROM stint s JOIN place p ON p.place = s.place WHERE s.code = ?1",
            "SELECT e.body FROM track t JOIN event e ON e.device = t.device AND e.number = t.number WHERE t.key = ?1",
            concat!(include_str!("derive/facts.sql"), "WHERE h.code = ?1"),
        ] {
            let mut statement = register.db.prepare(sql).expect("prepares");
            for code in ["one", "other", "third"] {
                let mut found = statement.query([code]).expect("asks");
                assert!(found.next().expect("reads").is_none());
            }
            assert_eq!(statement.get_status(StatementStatus::RePrepare), 0, "{sql}");
        }
    }

    #[test]
    fn every_migration_file_is_run_in_order() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../migrations");
        let mut files: Vec<_> = std::fs::read_dir(folder)
            .expect("the folder is there")
            .map(|file| file.expect("a file").path())
            // The office copy's own steps lie in a folder beside them.
            .filter(|path| path.is_file())
            .collect();
        files.sort();
        let texts: Vec<_> = files.iter().map(|file| std::fs::read_to_string(file).expect("reads")).collect();
        assert_eq!(texts, MIGRATIONS, "open.rs does not run the files of migrations/ in their order");
        for (step, file) in (1..).zip(&files) {
            let name = file.file_name().expect("a name").to_string_lossy().into_owned();
            assert!(name.starts_with(&format!("{step:04}_")), "{name} is not number {step}");
        }
    }
}
