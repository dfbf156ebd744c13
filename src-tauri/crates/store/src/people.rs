//! Names of people: beside the log, so that they can be erased while the log stays whole.

use crate::{Error, Person, Register, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::PersonId;
use rusqlite::{Connection, OptionalExtension, Row, TransactionBehavior, params};

/// Longest name kept, in characters.
const LONGEST_NAME: usize = 200;

impl Register {
    /// Enters or changes a person's name. The log names people by their id only.
    ///
    /// # Errors
    /// The name is blank or too long, or was erased before; the register can not be written.
    pub fn name_person(&mut self, id: PersonId, name: &str, now: DateTime<Utc>) -> Result<(), Error> {
        let name = name.trim();
        if name.is_empty() || name.chars().count() > LONGEST_NAME {
            return Err(Error::Name { longest: LONGEST_NAME });
        }
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let known = get(&tx, id)?;
        if known.as_ref().is_some_and(|person| person.name.is_none()) {
            return Err(Error::Erased { person: id });
        }
        // Later than the name before it, even by a clock that was set back.
        let ms = now.timestamp_millis().max(known.map_or(0, |person| person.ms + 1));
        put(&tx, &Person { id, name: Some(name.to_owned()), ms })?;
        Ok(tx.commit()?)
    }

    /// Erases a person's name for good, here and on every device that merges from here, and
    /// overwrites it in the file. Backups and bundles made before still have it.
    ///
    /// # Errors
    /// The register can not be written. [`Error::Locked`] may also mean that the name is erased but
    /// another program still holds the old pages open: close that and erase again.
    pub fn erase_person(&mut self, id: PersonId) -> Result<(), Error> {
        put(&self.db, &Person { id, name: None, ms: 0 })?;
        // The old pages leave the write-ahead log too.
        let busy: bool = self.db.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |row| row.get(0))?;
        if busy { Err(Error::Locked) } else { Ok(()) }
    }

    /// Everyone with a name, by name.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn people(&self) -> Result<Vec<Person>, Error> {
        let mut people = all(&self.db)?;
        people.retain(|person| person.name.is_some());
        people.sort_by(|one, other| (&one.name, one.id).cmp(&(&other.name, other.id)));
        Ok(people)
    }
}

/// Every person, erased ones too.
pub(crate) fn all(db: &Connection) -> Result<Vec<Person>, Error> {
    let mut statement = db.prepare_cached("SELECT id, name, ms FROM person ORDER BY id")?;
    let people = statement.query_map([], person)?;
    Ok(people.collect::<Result<_, _>>()?)
}

/// Takes in a name from another device: an erased name stays erased, else the later one stands.
pub(crate) fn merge(db: &Connection, other: &Person) -> Result<(), Error> {
    let stands = match get(db, other.id)? {
        None => true,
        Some(Person { name: None, .. }) => false,
        Some(known) => other.name.is_none() || (other.ms, &other.name) > (known.ms, &known.name),
    };
    if stands { put(db, other) } else { Ok(()) }
}

fn get(db: &Connection, id: PersonId) -> Result<Option<Person>, Error> {
    let mut statement = db.prepare_cached("SELECT id, name, ms FROM person WHERE id = ?1")?;
    Ok(statement.query_row([id.to_string()], person).optional()?)
}

fn put(db: &Connection, person: &Person) -> Result<(), Error> {
    // An erased name carries no time, so that it is the same wherever it was erased.
    let ms = if person.name.is_some() { person.ms } else { 0 };
    db.prepare_cached("INSERT OR REPLACE INTO person (id, name, ms, erased) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![person.id.to_string(), person.name, ms, person.name.is_none()])?;
    Ok(())
}

fn person(row: &Row<'_>) -> rusqlite::Result<Person> {
    Ok(Person { id: rows::parsed(row, "id")?, name: row.get("name")?, ms: row.get("ms")? })
}
