//! Assemblies that were made at the bench here, with what was done.

use crate::{Error, Register, log, rows};
use hosewright_core::record::{Assembly, EventRef, Hlc};

impl Register {
    /// Every assembly with a record of the bench, in the order they were made.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn benches(&self) -> Result<Vec<Assembly>, Error> {
        let mut statement = self.db.prepare_cached(
            "SELECT version, content FROM assembly WHERE json_extract(content, '$.bench') IS NOT NULL",
        )?;
        let made = statement
            .query_map([], |row| Ok((rows::parsed(row, "version")?, rows::json(row, "content")?)))?;
        let mut timed: Vec<(Hlc, Assembly)> = Vec::new();
        for row in made {
            let (version, assembly): (EventRef, Assembly) = row?;
            let time = log::get(&self.db, version)?.map(|event| event.time).unwrap_or_default();
            timed.push((time, assembly));
        }
        timed.sort_by_key(|(time, assembly)| (assembly.assembled, *time, assembly.code));
        Ok(timed.into_iter().map(|(_, assembly)| assembly).collect())
    }
}
