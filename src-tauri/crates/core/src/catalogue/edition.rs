//! Editions of a standard that changed what a type may carry and kept its mark.

use super::table::{CatalogueError, Row};
use super::{Catalogue, HoseRow, Provenance};

/// A type whose working pressures changed while its mark did not: the size rows have the older ones.
#[derive(Debug, Clone, PartialEq)]
pub struct Edition {
    /// Standard.
    pub standard: String,
    /// Type.
    pub kind: String,
    /// The year from which hoses of that mark carry the newer pressures; none where it was not found.
    pub from_year: Option<u16>,
    /// The type of the same standard that has the newer pressures, size by size.
    pub pressures_of: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

pub(super) const EDITION_COLUMNS: &str = "standard,type,from_year,pressures_of,source,basis,note";

impl Edition {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            standard: row.text("standard")?,
            kind: row.text("type")?,
            from_year: row.optional_value("from_year", "a year such as 2006")?,
            pressures_of: row.text("pressures_of")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl Catalogue {
    /// The edition that changed what a hose of that mark and size may carry, and the row that has the newer pressure.
    pub fn newer_edition(&self, row: &HoseRow) -> Option<(&Edition, &HoseRow)> {
        let of_type = |edition: &&Edition| edition.standard == row.standard && edition.kind == row.kind;
        let edition = self.editions.iter().find(of_type)?;
        let newer = self.sizes(&edition.standard, &edition.pressures_of).find(|newer| newer.dn == row.dn)?;
        Some((edition, newer))
    }
}
