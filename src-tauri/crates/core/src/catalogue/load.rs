//! From the files to the joined tables.

use super::end::{END_COLUMNS, FLANGE_COLUMNS, RATING_COLUMNS};
use super::hose::{CLASS_COLUMNS, HOSE_COLUMNS, PressureClass, TYPE_COLUMNS};
use super::table::{CatalogueError, read, unique};
use super::{Catalogue, EndRating, EndRow, Flange, HoseRow, HoseType, Table};
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use std::sync::OnceLock;

impl Catalogue {
    /// The catalogue built into the program, read once.
    pub fn embedded() -> &'static Self {
        static EMBEDDED: OnceLock<Catalogue> = OnceLock::new();
        EMBEDDED.get_or_init(|| match Self::read(Table::embedded) {
            Ok(catalogue) => catalogue,
            // The tables are part of the program and a test reads them.
            Err(error) => panic!("the embedded catalogue is broken: {error}"),
        })
    }

    /// Reads and joins the tables whose texts `text_of` gives.
    ///
    /// # Errors
    /// The first thing that is wrong, with its table, line and column and what would be right.
    pub fn read<'t>(text_of: impl Fn(Table) -> &'t str) -> Result<Self, CatalogueError> {
        let none = HashMap::new();
        let sources: HashMap<_, _> =
            read(Table::Sources, text_of(Table::Sources), "label,source", &none, |row| {
                Ok((row.text("label")?, row.text("source")?))
            })?
            .into_iter()
            .collect();
        macro_rules! rows {
            ($table:ident, $columns:expr, $make:expr) => {
                read(Table::$table, text_of(Table::$table), $columns, &sources, $make)?
            };
        }
        let hoses = rows!(Hoses, HOSE_COLUMNS, HoseRow::read);
        unique(Table::Hoses, &hoses, |hose| format!("{} {} DN {}", hose.standard, hose.kind, hose.dn))?;
        let mut types = rows!(HoseTypes, TYPE_COLUMNS, HoseType::read);
        let classes = rows!(PressureClasses, CLASS_COLUMNS, PressureClass::read);
        types.extend(super::hose::classed(&types, &classes));
        unique(Table::HoseTypes, &types, |kind| format!("{} {}", kind.standard, kind.kind))?;
        let twins = super::hose::twins(&hoses, &types, &classes);
        let ends = rows!(Ends, END_COLUMNS, EndRow::read);
        unique(Table::Ends, &ends, |end| format!("{} {}", end.family, end.size))?;
        let flanges = rows!(Flanges, FLANGE_COLUMNS, Flange::read);
        unique(Table::Flanges, &flanges, |flange| format!("{} {}", flange.family, flange.size))?;
        let ratings = rows!(HoseEndRatings, RATING_COLUMNS, EndRating::read);
        unique(Table::HoseEndRatings, &ratings, |rating| format!("{} {}", rating.family, rating.size))?;
        Ok(Self {
            hoses,
            types,
            twins,
            ends,
            flanges,
            ratings,
            torques: Vec::new(),
            lookalikes: Vec::new(),
            causes: Vec::new(),
            cautions: Vec::new(),
            fluids: Vec::new(),
            rules: Vec::new(),
            sources,
            version: version(text_of),
        })
    }
}

/// The first twelve digits of the hash over all files.
fn version<'t>(text_of: impl Fn(Table) -> &'t str) -> String {
    let mut hash = Sha256::new();
    for table in Table::ALL {
        hash.update(table.file());
        hash.update(text_of(*table));
    }
    hash.finalize().iter().take(6).map(|byte| format!("{byte:02x}")).collect()
}
