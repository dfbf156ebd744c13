//! Hour meters of machines.

use crate::{Error, rows};
use hosewright_core::care::Meter;
use hosewright_core::record::MachineId;
use rusqlite::{Connection, OptionalExtension, params};

/// Works a machine's meter out anew; whether it is another than it was.
pub(super) fn project(db: &Connection, machine: MachineId) -> Result<bool, Error> {
    let id = machine.to_string();
    let before = db
        .prepare_cached("SELECT read_on, hours, per_day FROM meter WHERE machine = ?1")?
        .query_row([&id], |row| {
            Ok(Meter {
                read_on: rows::parsed(row, "read_on")?,
                hours: row.get("hours")?,
                per_day: row.get("per_day")?,
            })
        })
        .optional()?;
    let mut statement = db.prepare_cached(include_str!("readings.sql"))?;
    let readings =
        statement.query_map([&id], |row| Ok((rows::parsed(row, "date")?, row.get::<_, f64>("hours")?)))?;
    let now = Meter::of(readings.collect::<Result<_, _>>()?);
    if now == before {
        return Ok(false);
    }
    db.prepare_cached("DELETE FROM meter WHERE machine = ?1")?.execute([&id])?;
    if let Some(meter) = now {
        db.prepare_cached("INSERT INTO meter (machine, read_on, hours, per_day) VALUES (?1, ?2, ?3, ?4)")?
            .execute(params![id, meter.read_on.to_string(), meter.hours, meter.per_day])?;
    }
    Ok(true)
}
