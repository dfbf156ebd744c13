//! Looking whether the log is whole and the tables are what it says.

use crate::{Error, Register, rebuild};
use hosewright_core::record::{BodyText, Event, Hash, Hlc};
use rusqlite::types::ValueRef;
use rusqlite::{Connection, Row, TransactionBehavior};

/// The answer of a verification.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Verified {
    /// Events looked at.
    pub events: u64,
    /// Devices that wrote them.
    pub devices: u64,
    /// What is wrong; empty when all is well.
    pub faults: Vec<Fault>,
}

/// One thing wrong.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// Which event, as far as its name can be read; empty where it is not about one event.
    pub event: String,
    /// What is wrong with it.
    pub problem: Problem,
}

/// What can be wrong.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Problem {
    /// The event can not be read.
    Unreadable,
    /// The event is not what was written: its hash differs.
    Changed,
    /// The event does not continue the one before it.
    BrokenChain,
    /// The projected tables are not what the log gives: rebuild them.
    Tables,
    /// SQLite finds the file damaged.
    File(String),
}

impl Register {
    /// Walks every series and reckons every hash anew, has SQLite check the file, and compares the
    /// projected tables with what the log gives. Changes nothing.
    ///
    /// # Errors
    /// The register is in use or can not be read at all.
    pub fn verify(&mut self) -> Result<Verified, Error> {
        let mut verified = walk(&self.db)?;
        let file: Vec<String> = self
            .db
            .prepare("PRAGMA integrity_check")?
            .query_map([], |row| row.get(0))?
            .collect::<Result<_, _>>()?;
        verified.faults.extend(
            file.into_iter()
                .filter(|line| line != "ok")
                .map(|line| Fault { event: String::new(), problem: Problem::File(line) }),
        );
        // A broken log gives no tables to compare with.
        if verified.faults.is_empty() && !self.tables_match()? {
            verified.faults.push(Fault { event: String::new(), problem: Problem::Tables });
        }
        Ok(verified)
    }

    fn tables_match(&mut self) -> Result<bool, Error> {
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let live = rebuild::dump(&tx)?;
        rebuild::rebuild(&tx)?;
        let rebuilt = rebuild::dump(&tx)?;
        tx.rollback()?;
        Ok(live == rebuilt)
    }
}

fn walk(db: &Connection) -> Result<Verified, Error> {
    let mut verified = Verified { events: 0, devices: 0, faults: Vec::new() };
    let mut statement = db.prepare("SELECT * FROM event ORDER BY device, number")?;
    let mut rows = statement.query([])?;
    let mut series = String::new();
    let mut end: Option<(i64, String)> = None;
    while let Some(row) = rows.next()? {
        verified.events += 1;
        let device = text(row, "device");
        if device != series {
            verified.devices += 1;
            series.clone_from(&device);
            end = None;
        }
        let number: i64 = row.get("number").unwrap_or_default();
        let (last, hash) = end.take().unwrap_or((0, Hash::NONE.to_string()));
        let mut fault = |problem| {
            verified.faults.push(Fault { event: format!("{device}/{number}"), problem });
        };
        if number != last + 1 || text(row, "previous") != hash {
            fault(Problem::BrokenChain);
        }
        let stored = text(row, "hash");
        match event(row).and_then(|event| event.hash().ok()) {
            None => fault(Problem::Unreadable),
            Some(hash) if hash.to_string() != stored => fault(Problem::Changed),
            Some(_) => {}
        }
        end = Some((number, stored));
    }
    Ok(verified)
}

/// The event of a row; none where any of its columns can not be read.
fn event(row: &Row<'_>) -> Option<Event> {
    let body: BodyText = text(row, "body").parse().ok()?;
    if body.kind() != text(row, "kind") {
        return None;
    }
    Some(Event {
        device: text(row, "device").parse().ok()?,
        number: u64::try_from(row.get::<_, i64>("number").ok()?).ok()?,
        previous: text(row, "previous").parse().ok()?,
        builds_on: serde_json::from_str(&text(row, "builds_on")).ok()?,
        schema: row.get("schema").ok()?,
        time: Hlc { ms: row.get("ms").ok()?, count: row.get("count").ok()? },
        body,
    })
}

/// A text as far as it can be read: a damaged file may hold anything.
fn text(row: &Row<'_>, column: &str) -> String {
    match row.get_ref(column) {
        Ok(ValueRef::Text(bytes)) => String::from_utf8_lossy(bytes).into_owned(),
        _ => String::new(),
    }
}
