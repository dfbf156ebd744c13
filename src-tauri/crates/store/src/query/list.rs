//! The lists of sites and machines.

use crate::{Error, Register, rows};
use hosewright_core::record::{EventRef, MachineId, SiteId};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A site in the list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SiteRow {
    /// Which.
    pub site: SiteId,
    /// The event that stands.
    pub version: EventRef,
    /// What people call it.
    pub name: String,
    /// Machines there.
    pub machines: u32,
    /// Hoses on them.
    pub hoses: u32,
}

/// A machine in the list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct MachineRow {
    /// Which.
    pub machine: MachineId,
    /// The event that stands.
    pub version: EventRef,
    /// What people call it.
    pub name: String,
    /// What it is.
    pub sort: String,
    /// Where it works.
    pub site: Option<SiteId>,
    /// What people call the site.
    pub site_name: Option<String>,
    /// Its places.
    pub places: u32,
    /// Hoses on it.
    pub hoses: u32,
}

impl Register {
    /// All sites, by name.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn sites(&self) -> Result<Vec<SiteRow>, Error> {
        let mut statement = self.db.prepare_cached(include_str!("sites.sql"))?;
        let sites = statement.query_map([], |row| {
            Ok(SiteRow {
                site: rows::parsed(row, "site")?,
                version: rows::parsed(row, "version")?,
                name: row.get("name")?,
                machines: row.get("machines")?,
                hoses: row.get("hoses")?,
            })
        })?;
        Ok(sites.collect::<Result<_, _>>()?)
    }

    /// All machines, by site and name; those without a site come last.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn machines(&self) -> Result<Vec<MachineRow>, Error> {
        let mut statement = self.db.prepare_cached(include_str!("machines.sql"))?;
        let machines = statement.query_map([], |row| {
            Ok(MachineRow {
                machine: rows::parsed(row, "machine")?,
                version: rows::parsed(row, "version")?,
                name: row.get("name")?,
                sort: row.get("sort")?,
                site: rows::optional(row, "site")?,
                site_name: row.get("site_name")?,
                places: row.get("places")?,
                hoses: row.get("hoses")?,
            })
        })?;
        Ok(machines.collect::<Result<_, _>>()?)
    }
}
