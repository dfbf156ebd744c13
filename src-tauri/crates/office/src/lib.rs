//! The register as tables of a PostgreSQL database, for a planner's own tools.
//!
//! An [`Office`] is such a database. [`Office::keep`] brings it up to a register: the log goes over series by series,
//! with a cursor for each device that is moved in the same transaction, and then, in the last of these transactions, the
//! rows that are no longer as the register has them are replaced. Whatever is killed when, the next call goes on, and the
//! database comes out as if nothing had happened.

mod address;
mod connect;
mod error;
mod log;
mod migrate;
mod rows;

pub use address::Address;
pub use error::OfficeError;

use chrono::{DateTime, Utc};
use hosewright_store::{Moment, Register};
use postgres::{Client, Transaction};
use serde::Serialize;

/// Most events that go over in one transaction: what a line that is cut after some seconds still carries.
const MOST: u64 = 20_000;

/// The office's database.
pub struct Office {
    client: Client,
}

/// What was brought over.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Kept {
    /// When.
    pub at: DateTime<Utc>,
    /// Events that are in the database now.
    pub events: u64,
    /// Those of them that were not there before.
    pub came: u64,
    /// Rows that were written.
    pub written: u64,
    /// Rows that were taken away, those that others took the place of included.
    pub removed: u64,
}

impl Office {
    /// Connects to the database and makes its tables, or brings them to this program's form.
    ///
    /// # Errors
    /// The database does not answer, refuses, or was made by a newer program.
    pub fn open(address: &Address) -> Result<Self, OfficeError> {
        let mut client = connect::connect(address)?;
        migrate::migrate(&mut client)?;
        Ok(Self { client })
    }

    /// Brings the database up to the register as it is now. What a call that fails had brought over stays, and the next
    /// goes on from there.
    ///
    /// # Errors
    /// The database goes away, or has events that the register has not; the register can not be read.
    pub fn keep(
        &mut self,
        register: &Register,
        program: &str,
        now: DateTime<Utc>,
    ) -> Result<Kept, OfficeError> {
        let moment = register.moment()?;
        let mut kept = Kept { at: now, events: 0, came: 0, written: 0, removed: 0 };
        loop {
            let mut tx = self.client.transaction()?;
            // Of two that bring over at once one waits, and then finds what the other did.
            tx.batch_execute("LOCK TABLE hosewright.series IN EXCLUSIVE MODE")?;
            let ahead = log::ahead(&mut tx, &moment, MOST)?;
            kept.came += log::bring(&mut tx, &moment, &ahead.runs)?;
            if ahead.is_all {
                finish(&mut tx, &moment, program, &mut kept)?;
            }
            tx.commit()?;
            if ahead.is_all {
                return Ok(kept);
            }
        }
    }
}

/// The rows, and of what they are the copy.
fn finish(
    tx: &mut Transaction<'_>,
    moment: &Moment<'_>,
    program: &str,
    kept: &mut Kept,
) -> Result<(), OfficeError> {
    let rows = rows::replace(tx, moment)?;
    (kept.written, kept.removed) = (rows.written, rows.removed);
    kept.events = moment.ends()?.values().map(|(number, _)| number).sum();
    let at = kept.at.to_rfc3339();
    tx.execute(
        "UPDATE hosewright.copied SET copied_at = $1::text::timestamptz, program = $2",
        &[&at, &program],
    )?;
    Ok(())
}
