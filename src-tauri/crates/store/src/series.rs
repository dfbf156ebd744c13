//! The series of the log, for an exchange with other devices.

use crate::rows::{parsed, unsigned};
use crate::{Error, Register, log};
use hosewright_core::record::{DeviceId, Event, EventRef, Hash};
use std::collections::BTreeMap;
use std::ops::RangeInclusive;

impl Register {
    /// The number of the last event of each device that the log has.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn ends(&self) -> Result<BTreeMap<DeviceId, u64>, Error> {
        let mut statement = self
            .db
            .prepare_cached(concat!(include_str!("query/series.sql"), "SELECT device, number FROM last"))?;
        let ends = statement.query_map([], |row| Ok((parsed(row, "device")?, unsigned(row, "number")?)))?;
        Ok(ends.collect::<Result<_, _>>()?)
    }

    /// Whether the log has that very event; none where it has none of that number.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn has(&self, at: EventRef, hash: Hash) -> Result<Option<bool>, Error> {
        Ok(log::hash_of(&self.db, at)?.map(|had| had == hash))
    }

    /// These events of a device, in their order; those of them that the log has.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn series(&self, device: DeviceId, numbers: RangeInclusive<u64>) -> Result<Vec<Event>, Error> {
        log::series(&self.db, device, numbers)
    }
}
