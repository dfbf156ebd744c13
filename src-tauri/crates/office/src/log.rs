//! The log: what the database lacks of each series, and how it gets there.

use crate::OfficeError;
use crate::rows::line;
use chrono::{DateTime, SecondsFormat};
use hosewright_core::record::{DeviceId, Event, EventRef, Hash};
use hosewright_store::{Cell, Moment};
use postgres::Transaction;
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::io::Write;
use std::ops::RangeInclusive;

/// What the database lacks.
pub(crate) struct Ahead {
    /// Of each series.
    pub runs: Vec<(DeviceId, RangeInclusive<u64>)>,
    /// Whether that is all, or as much as was asked for.
    pub is_all: bool,
}

/// What the database lacks, at most so many events. Nothing is brought over to a database that has what the register
/// has not.
pub(crate) fn ahead(tx: &mut Transaction<'_>, moment: &Moment<'_>, most: u64) -> Result<Ahead, OfficeError> {
    let cursors = cursors(tx)?;
    for (device, (number, hash)) in &cursors {
        let (device, number) = (*device, *number);
        match moment.has(EventRef { device, number }, *hash)? {
            Some(true) => {}
            Some(false) => return Err(OfficeError::Other { device, number }),
            None => return Err(OfficeError::Behind { device, number }),
        }
    }
    let mut ahead = Ahead { runs: Vec::new(), is_all: true };
    let mut room = most;
    for (device, (end, _)) in moment.ends()? {
        let from = cursors.get(&device).map_or(1, |(number, _)| number + 1);
        let to = end.min(from - 1 + room);
        ahead.is_all &= to == end;
        if from <= to {
            room -= to + 1 - from;
            ahead.runs.push((device, from..=to));
        }
    }
    Ok(ahead)
}

/// How far each series was taken over.
fn cursors(tx: &mut Transaction<'_>) -> Result<BTreeMap<DeviceId, (u64, Hash)>, OfficeError> {
    let changed = |what: &dyn std::fmt::Display| OfficeError::Changed { what: what.to_string() };
    let mut cursors = BTreeMap::new();
    for row in tx.query("SELECT device, number, hash FROM hosewright.series", &[])? {
        let (device, number, hash): (String, i64, String) = (row.get(0), row.get(1), row.get(2));
        let device: DeviceId = device.parse().map_err(|error| changed(&error))?;
        let number = u64::try_from(number).map_err(|error| changed(&error))?;
        cursors.insert(device, (number, hash.parse().map_err(|error| changed(&error))?));
    }
    Ok(cursors)
}

/// Brings these events over and moves the cursors. Gives how many.
pub(crate) fn bring(
    tx: &mut Transaction<'_>,
    moment: &Moment<'_>,
    runs: &[(DeviceId, RangeInclusive<u64>)],
) -> Result<u64, OfficeError> {
    let mut came = 0;
    for (device, numbers) in runs {
        let events = moment.series(*device, numbers.clone())?;
        let mut to = tx.copy_in(
            "COPY hosewright.log (device, number, hash, previous, builds_on, schema, written, count, kind, body) FROM STDIN",
        )?;
        let mut last = Hash::NONE;
        let mut text = String::new();
        for event in &events {
            last = event.hash().map_err(hosewright_store::Error::from)?;
            text.clear();
            line(&cells(event, last), &mut text);
            to.write_all(text.as_bytes())?;
        }
        to.finish()?;
        tx.execute(
            "INSERT INTO hosewright.series (device, number, hash) VALUES ($1, $2, $3)
             ON CONFLICT (device) DO UPDATE SET number = excluded.number, hash = excluded.hash",
            &[&device.to_string(), &(*numbers.end() as i64), &last.to_string()],
        )?;
        came += events.len() as u64;
    }
    Ok(came)
}

fn cells(event: &Event, hash: Hash) -> [Cell<'_>; 10] {
    let builds_on: Vec<String> = event.builds_on.iter().map(ToString::to_string).collect();
    // Every time of an event lies between 1970 and 9999.
    let written = DateTime::from_timestamp_millis(event.time.ms).unwrap_or_default();
    [
        Cow::Owned(event.device.to_string()),
        event.number.to_string().into(),
        hash.to_string().into(),
        event.previous.to_string().into(),
        format!("{{{}}}", builds_on.join(",")).into(),
        event.schema.to_string().into(),
        written.to_rfc3339_opts(SecondsFormat::Millis, true).into(),
        event.time.count.to_string().into(),
        event.body.kind().replace('\0', "\u{fffd}").into(),
        event.body.as_str().into(),
    ]
    .map(Some)
}
