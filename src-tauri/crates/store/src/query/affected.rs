//! The hoses that rest on rows of the tables.

use super::PlaceAt;
use crate::{Error, Register, rows};
use hosewright_core::catalogue::RowMark;
use hosewright_core::tag::TagCode;
use rusqlite::params;

/// A hose that rests on a row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Resting {
    /// Its code.
    pub code: TagCode,
    /// Where it sits.
    pub at: Option<PlaceAt>,
    /// The version of the tables it was recorded by.
    pub catalogue: String,
}

impl Register {
    /// Every row of the tables that any hose rests on, as it was then, and how many do. A blank table stands for hoses
    /// recorded without their rows: its digest is the version of the tables.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn rested_on(&self) -> Result<Vec<(RowMark, u32)>, Error> {
        let mut statement = self.db.prepare_cached(
            "SELECT source, row, digest, count(*) AS hoses FROM rests GROUP BY source, row, digest
             ORDER BY source, row, digest",
        )?;
        let marks = statement.query_map([], |row| {
            let mark =
                RowMark { table: row.get("source")?, row: row.get("row")?, digest: row.get("digest")? };
            Ok((mark, row.get("hoses")?))
        })?;
        Ok(marks.collect::<Result<_, _>>()?)
    }

    /// The hoses that rest on a row as it was then.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn resting_on(&self, mark: &RowMark, most: u32) -> Result<Vec<Resting>, Error> {
        let mut statement = self.db.prepare_cached(
            "SELECT r.code, json_extract(a.content, '$.catalogue') AS catalogue, h.place, p.number,
                    p.name AS place_name, h.machine, m.name AS machine_name, h.site, t.name AS site_name
             FROM rests r JOIN assembly a ON a.code = r.code LEFT JOIN hose h ON h.code = r.code
             LEFT JOIN place p ON p.place = h.place LEFT JOIN machine m ON m.machine = h.machine
             LEFT JOIN site t ON t.site = h.site
             WHERE r.source = ?1 AND r.row = ?2 AND r.digest = ?3
             ORDER BY h.place IS NULL, t.name, m.name, p.number, r.code LIMIT ?4",
        )?;
        let hoses = statement.query_map(params![mark.table, mark.row, mark.digest, most], |row| {
            let place: Option<String> = row.get("place")?;
            Ok(Resting {
                code: rows::parsed(row, "code")?,
                at: place.map(|_| super::place::place_at(row)).transpose()?,
                catalogue: row.get("catalogue")?,
            })
        })?;
        Ok(hoses.collect::<Result<_, _>>()?)
    }
}
