//! The devices that wrote in the register.

use crate::{Error, Register, rows};
use chrono::{DateTime, Utc};
use hosewright_core::fleet::DevicePublic;
use hosewright_core::record::DeviceId;
use rusqlite::OptionalExtension;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A device that wrote.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Device {
    /// Which.
    pub device: DeviceId,
    /// What people call it.
    pub name: Option<String>,
    /// The public key that it told, where it has.
    pub public_key: Option<DevicePublic>,
    /// Events it wrote, as far as they have arrived.
    #[ts(type = "number")]
    pub events: u64,
    /// Time of the latest, by its logical clock.
    pub latest: DateTime<Utc>,
}

impl Register {
    /// What people call the device that writes in this register, where it has a name.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn device_name(&self) -> Result<Option<String>, Error> {
        let name = self
            .db
            .prepare_cached("SELECT name FROM device WHERE device = ?1")?
            .query_row([self.device.to_string()], |row| row.get(0))
            .optional()?;
        Ok(name)
    }

    /// The public key that a device told, where it has.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn device_key(&self, device: DeviceId) -> Result<Option<DevicePublic>, Error> {
        let key = self
            .db
            .prepare_cached("SELECT public_key FROM device_key WHERE device = ?1")?
            .query_row([device.to_string()], |row| rows::parsed(row, "public_key"))
            .optional()?;
        Ok(key)
    }

    /// Whether a device told that public key for its own.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn knows_key(&self, key: &DevicePublic) -> Result<bool, Error> {
        let mut statement =
            self.db.prepare_cached("SELECT EXISTS (SELECT 1 FROM device_key WHERE public_key = ?1)")?;
        Ok(statement.query_row([key.to_string()], |row| row.get(0))?)
    }

    /// The devices that wrote, the latest first.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn devices(&self) -> Result<Vec<Device>, Error> {
        // A device's clock never goes back in its own series: its last event is its latest.
        let mut statement = self.db.prepare_cached(concat!(
            include_str!("series.sql"),
            "SELECT e.device, d.name, k.public_key, e.number AS events, e.ms
             FROM last JOIN event e ON e.device = last.device AND e.number = last.number
             LEFT JOIN device d ON d.device = e.device LEFT JOIN device_key k ON k.device = e.device
             ORDER BY e.ms DESC, e.device"
        ))?;
        let devices = statement.query_map([], |row| {
            Ok(Device {
                device: rows::parsed(row, "device")?,
                name: row.get("name")?,
                public_key: rows::optional(row, "public_key")?,
                events: rows::unsigned(row, "events")?,
                latest: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
            })
        })?;
        Ok(devices.collect::<Result<_, _>>()?)
    }
}
