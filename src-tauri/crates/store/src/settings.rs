//! Settings of the device, beside the log: they are its user's own, and no other device ever has them.

use crate::{Error, Register, rows};
use serde_json::{Map, Value};

impl Register {
    /// Every setting that was ever kept, by its key.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn settings(&self) -> Result<Map<String, Value>, Error> {
        let mut statement = self.db.prepare_cached("SELECT key, value FROM setting ORDER BY key")?;
        let settings = statement.query_map([], |row| Ok((row.get("key")?, rows::json(row, "value")?)))?;
        Ok(settings.collect::<Result<_, _>>()?)
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
