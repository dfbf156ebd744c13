//! Settings of the device, beside the log: they are its user's own, and no other device ever has them.

use crate::{Error, Register};
use serde_json::{Map, Value};

/// What was kept of the settings.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct SettingsKept {
    /// Those that can be read, by their key.
    pub read: Map<String, Value>,
    /// The keys of those whose value is no JSON, in order. They hide none of the others.
    pub unreadable: Vec<String>,
}

impl Register {
    /// Every setting that was ever kept.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn settings(&self) -> Result<SettingsKept, Error> {
        let mut statement = self.db.prepare_cached("SELECT key, value FROM setting ORDER BY key")?;
        let rows = statement.query_map([], |row| Ok((row.get("key")?, row.get("value")?)))?;
        let mut kept = SettingsKept::default();
        for row in rows {
            let (key, text): (String, String) = row?;
            match serde_json::from_str(&text) {
                Ok(value) => {
                    kept.read.insert(key, value);
                }
                Err(_) => kept.unreadable.push(key),
            }
        }
        Ok(kept)
    }

    /// Keeps settings, all or none. Those of other keys stay.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn keep_settings(&mut self, settings: &Map<String, Value>) -> Result<(), Error> {
        let tx = self.db.transaction()?;
        for (key, value) in settings {
            tx.prepare_cached("INSERT OR REPLACE INTO setting (key, value) VALUES (?1, ?2)")?
                .execute((key, value.to_string()))?;
        }
        Ok(tx.commit()?)
    }
}
