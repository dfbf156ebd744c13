//! What was written and does not count: how much of whom, and what it is.

use crate::query::{Contradiction, Written};
use crate::{Error, Register, log, members, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::{DeviceId, EventRef, LeftOut, MemberRole, Membership};
use rusqlite::{Connection, params};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// How much of a device does not count, for one reason.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct LeftOutOf {
    /// Which.
    pub device: DeviceId,
    /// What people call it.
    pub name: Option<String>,
    /// Why.
    pub why: LeftOut,
    /// How many of its events.
    #[ts(type = "number")]
    pub count: u64,
}

/// An event that does not count.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Unheard {
    /// Which.
    pub event: EventRef,
    /// When it was written, by the writing device's logical clock.
    pub time: DateTime<Utc>,
    /// Why.
    pub why: LeftOut,
    /// What it is about.
    pub about: Contradiction,
}

/// The kinds that a device writes of itself, see [`Body::needs`](hosewright_core::record::Body::needs).
const OF_ITSELF: &str = "('device-named', 'device-key')";

/// The events of a device in a stretch of which nothing of the job counts. What is its own counts unless it was withdrawn.
const STRETCH: &str = "FROM event WHERE device = ?1 AND number BETWEEN ?2 AND ?3";

impl Register {
    /// How much of whom does not count.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn left_out(&self) -> Result<Vec<LeftOutOf>, Error> {
        let members = members::read(&self.db)?;
        if members.founder().is_none() {
            return Ok(Vec::new());
        }
        let mut counts: BTreeMap<(DeviceId, LeftOut), u64> = BTreeMap::new();
        let devices = self.devices()?;
        for device in &devices {
            for (stretch, why) in members.left_out(device.device, device.events) {
                let sql = format!("SELECT count(*) AS count {STRETCH}{}", but_of_itself(why));
                let count: u64 = self.db.prepare_cached(&sql)?.query_row(
                    params![device.device.to_string(), *stretch.start() as i64, *stretch.end() as i64],
                    |row| rows::unsigned(row, "count"),
                )?;
                *counts.entry((device.device, why)).or_default() += count;
            }
        }
        for (at, why) in planners_words(&self.db, &members)? {
            *counts.entry((at.device, why)).or_default() += 1;
        }
        let names: BTreeMap<DeviceId, Option<String>> =
            devices.into_iter().map(|device| (device.device, device.name)).collect();
        Ok(counts
            .into_iter()
            .filter(|(_, count)| *count > 0)
            .map(|((device, why), count)| LeftOutOf {
                device,
                name: names.get(&device).cloned().flatten(),
                why,
                count,
            })
            .collect())
    }

    /// The latest of a device's events that do not count, `most` of them.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn left_out_of(&self, device: DeviceId, most: usize) -> Result<Vec<Unheard>, Error> {
        let members = members::read(&self.db)?;
        let mut found: Vec<(EventRef, LeftOut)> =
            planners_words(&self.db, &members)?.into_iter().filter(|(at, _)| at.device == device).collect();
        for (stretch, why) in members.left_out(device, log::end(&self.db, device)?.number) {
            let sql = format!("SELECT number {STRETCH}{} ORDER BY number DESC LIMIT ?4", but_of_itself(why));
            let mut statement = self.db.prepare_cached(&sql)?;
            let numbers = statement.query_map(
                params![device.to_string(), *stretch.start() as i64, *stretch.end() as i64, most as i64],
                |row| rows::unsigned(row, "number"),
            )?;
            for number in numbers {
                found.push((EventRef { device, number: number? }, why));
            }
        }
        found.sort_by_key(|(at, _)| std::cmp::Reverse(*at));
        found.truncate(most);
        found.into_iter().map(|(at, why)| self.unheard(at, why)).collect()
    }

    fn unheard(&self, at: EventRef, why: LeftOut) -> Result<Unheard, Error> {
        let known = || Error::NotKnown { what: "event", id: at.to_string() };
        let event = log::get(&self.db, at)?.ok_or_else(known)?;
        let time = DateTime::from_timestamp_millis(event.time.ms).unwrap_or_default();
        let body = event.body.read();
        let written = Written { event: at, time, by: None, builds_on: event.builds_on, void: false, body };
        Ok(Unheard { event: at, time, why, about: self.about_events(&[written])? })
    }
}

fn but_of_itself(why: LeftOut) -> String {
    if why == LeftOut::Withdrawn { String::new() } else { format!(" AND kind NOT IN {OF_ITSELF}") }
}

/// What planners alone say, said by members that may not: of those whose other events count.
fn planners_words(db: &Connection, members: &Membership) -> Result<Vec<(EventRef, LeftOut)>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT device, number FROM track
         WHERE key BETWEEN 'policy/' AND 'policy0' OR key BETWEEN 'member/' AND 'member0'",
    )?;
    let mut words = Vec::new();
    for at in statement.query_map([], log::at)? {
        let at = at?;
        if members.works(at)
            && let Err(why) = members.judge(at, Some(MemberRole::Planner))
        {
            words.push((at, why));
        }
    }
    Ok(words)
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::fleet::DeviceKey;
    use hosewright_core::record::{Body, BodyText, DeviceKeyTold, DeviceNamed};

    #[test]
    fn what_a_device_writes_of_itself_is_of_the_kinds_that_need_no_role() {
        let device = DeviceId::from_bytes([1; 16]);
        let told = DeviceKeyTold::of(device, &DeviceKey::from_bytes([1; 32]));
        let bodies = [Body::DeviceNamed(DeviceNamed { name: "Van".into() }), Body::DeviceKey(told)];
        let kinds = bodies.map(|body| {
            assert_eq!(body.needs(), None);
            format!("'{}'", BodyText::of(&body).expect("writes").kind())
        });
        assert_eq!(format!("({})", kinds.join(", ")), OF_ITSELF);
    }
}
