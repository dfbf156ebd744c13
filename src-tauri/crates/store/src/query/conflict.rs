//! What contradicts each other, for a person to settle.

use super::{Stay, Written, stay, written};
use crate::{Error, Register, rows};
use hosewright_core::record::EventRef;
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::BTreeMap;
use ts_rs::TS;

/// Two or more things that can not all be true.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[serde(tag = "what", rename_all = "kebab-case")]
pub enum Conflict {
    /// Events about one thing. Settled by an event that builds on all of them, or by voiding some.
    Events {
        /// The events, by time.
        events: Vec<Written>,
    },
    /// Several hoses at one place. Settled by taking off, or voiding, all but one.
    Place {
        /// The stays that have not ended.
        stays: Vec<Stay>,
    },
}

impl Register {
    /// Everything that contradicts itself. Until a person settles it, the tables show the later.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn conflicts(&self) -> Result<Vec<Conflict>, Error> {
        let mut statement =
            self.db.prepare_cached("SELECT track, event FROM conflict ORDER BY track, event")?;
        let mut tracks: BTreeMap<String, Vec<EventRef>> = BTreeMap::new();
        let rows = statement.query_map([], |row| Ok((row.get("track")?, rows::parsed(row, "event")?)))?;
        for row in rows {
            let (track, event) = row?;
            tracks.entry(track).or_default().push(event);
        }
        let mut conflicts = Vec::new();
        for (track, named) in tracks {
            let mut events = written::of_tracks(&self.db, &[track])?;
            events.retain(|written| named.contains(&written.event));
            conflicts.push(Conflict::Events { events });
        }
        let mut places = self.db.prepare_cached(
            "SELECT place FROM stint WHERE off_version IS NULL GROUP BY place HAVING count(*) > 1 ORDER BY place",
        )?;
        for place in places.query_map([], |row| rows::parsed(row, "place"))? {
            let mut stays = stay::of(&self.db, None, Some(place?))?;
            stays.retain(|stay| stay.off.is_none());
            conflicts.push(Conflict::Place { stays });
        }
        Ok(conflicts)
    }
}
