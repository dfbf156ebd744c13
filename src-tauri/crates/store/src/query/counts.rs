//! How much the register holds.

use crate::{Error, Register, rows};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// How much the register holds.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Counts {
    /// Sites.
    pub sites: u32,
    /// Machines.
    pub machines: u32,
    /// Places.
    pub places: u32,
    /// Hoses that were made or tagged.
    pub hoses: u32,
    /// Hoses on a machine.
    pub in_service: u32,
    /// Jobs that are not done.
    pub drafts: u32,
    /// Things that two events contradict each other about.
    pub conflicts: u32,
    /// Events in the log.
    pub events: u32,
    /// Events that wait for earlier ones of their device.
    pub held: u32,
}

impl Register {
    /// How much the register holds.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn counts(&self) -> Result<Counts, Error> {
        let mut statement = self.db.prepare_cached(include_str!("counts.sql"))?;
        Ok(statement.query_row([], |row| {
            Ok(Counts {
                sites: rows::unsigned(row, "sites")?,
                machines: rows::unsigned(row, "machines")?,
                places: rows::unsigned(row, "places")?,
                hoses: rows::unsigned(row, "hoses")?,
                in_service: rows::unsigned(row, "in_service")?,
                drafts: rows::unsigned(row, "drafts")?,
                conflicts: rows::unsigned(row, "conflicts")?,
                events: rows::unsigned(row, "events")?,
                held: rows::unsigned(row, "held")?,
            })
        })?)
    }
}
