//! What a register's folder holds, as far as it does not depend on clock and chance.

use hosewright_core::record::DeviceId;
use hosewright_store::{Register, backups, backups_of, photos_of, restore};
use rusqlite::{Connection, OpenFlags};
use std::path::Path;

/// Everything that is ever written, a line each: so many events, the names, settings and jobs, the fleets, the backups.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct State(Vec<String>);

/// What is read of a register, by its heading. Ids and times come from chance and the clock and are left out, as is how the
/// last exchange went. A device tells its key when it is first needed: that is no part of what a command does.
const READ: [(&str, &str); 7] = [
    (
        "events",
        "SELECT kind || ' ' || count(*) FROM event WHERE kind <> 'device-key' GROUP BY kind ORDER BY kind",
    ),
    ("held", "SELECT count(*) FROM held"),
    ("people", "SELECT coalesce(name, 'erased') FROM person ORDER BY 1"),
    ("settings", "SELECT key || '=' || value FROM setting WHERE key <> 'exchanged' ORDER BY 1"),
    ("jobs", "SELECT content FROM draft ORDER BY 1"),
    ("supplier", "SELECT supplier || ' ' || family || size || series || kind FROM supplier_row ORDER BY 1"),
    ("scans", "SELECT count(*) FROM scan"),
];

/// Of each photo on record whether a file of its length is there.
fn photos_here(db: &Connection, register: &Path) -> rusqlite::Result<Vec<bool>> {
    let folder = photos_of(register);
    let mut statement = db.prepare("SELECT sha256, length FROM photo ORDER BY sha256")?;
    let here = statement.query_map([], |row| {
        let (name, length): (String, i64) = (row.get(0)?, row.get(1)?);
        Ok(std::fs::metadata(folder.join(name)).is_ok_and(|file| i64::try_from(file.len()) == Ok(length)))
    })?;
    here.collect()
}

impl State {
    /// What stands in a register that a program has open or that was left whole.
    ///
    /// # Errors
    /// It can not be read.
    pub fn read(register: &Path) -> Result<Self, String> {
        let said = |error: rusqlite::Error| error.to_string();
        let db = Connection::open_with_flags(register, OpenFlags::SQLITE_OPEN_READ_ONLY).map_err(said)?;
        let mut lines = Vec::new();
        for (heading, sql) in READ {
            let mut statement = db.prepare(sql).map_err(said)?;
            let rows =
                statement.query_map([], |row| row.get::<_, rusqlite::types::Value>(0)).map_err(said)?;
            let rows = rows.collect::<Result<Vec<_>, _>>().map_err(said)?;
            lines.push(format!("{heading}: {rows:?}"));
        }
        let keys: Vec<u8> = std::fs::read(format!("{}.keys", register.display())).unwrap_or_default();
        let keys: serde_json::Value = match keys.is_empty() {
            true => serde_json::Value::Null,
            false => serde_json::from_slice(&keys).map_err(|error| format!("the keys: {error}"))?,
        };
        let fleets: Vec<_> =
            keys["fleets"].as_array().into_iter().flatten().map(|fleet| &fleet["name"]).collect();
        // A device has its own key from when it is first needed: that is no part of what a command does.
        lines.push(format!("fleets: {fleets:?}"));
        lines.push(format!("photos here: {:?}", photos_here(&db, register).map_err(said)?));
        lines.push(format!("backups: {}", backups(register).map_err(|error| error.to_string())?.len()));
        Ok(Self(lines))
    }

    /// What stands in a register after a fault: it is opened as a user would, must verify, and so must each of its backups.
    ///
    /// # Errors
    /// It can not be opened, does not verify, or a backup can not be restored.
    pub fn after_fault(register: &Path) -> Result<Self, String> {
        let stranger = DeviceId::from_bytes([0xEE; 16]);
        let mut opened = Register::open(register, stranger).map_err(|error| error.to_string())?;
        let verified = opened.verify().map_err(|error| error.to_string())?;
        if !verified.faults.is_empty() {
            return Err(format!("does not verify: {:?}", verified.faults));
        }
        for photo in opened.photos(None).map_err(|error| error.to_string())? {
            opened.photo(photo.sha256).map_err(|error| format!("the photo {}: {error}", photo.sha256))?;
        }
        for kept in backups(register).map_err(|error| error.to_string())? {
            let to = register.with_extension("tried");
            restore(backups_of(register).join(&kept.name), &to, stranger)
                .map_err(|error| format!("the backup {}: {error}", kept.name))?;
            std::fs::remove_file(&to).map_err(|error| error.to_string())?;
        }
        Self::read(register)
    }

    /// Whether only this one's file of keys has gone on to the other: it is written before the register, and a fault may
    /// come between the two. The fleet is there then and has no founder, which the program says with the way out.
    pub fn keys_go_first(&self, found: &Self, next: &Self) -> bool {
        let is_of_keys = |line: &str| line.starts_with("fleets: ");
        let both = self.0.iter().zip(&next.0).zip(&found.0);
        both.into_iter().all(|((was, will), found)| found == if is_of_keys(was) { will } else { was })
    }

    /// Where this one and another differ.
    pub fn unlike(&self, other: &Self) -> String {
        let lines = self.0.iter().zip(&other.0).filter(|(one, other)| one != other);
        lines.map(|(one, other)| format!("{one} in place of {other}")).collect::<Vec<_>>().join("; ")
    }
}
