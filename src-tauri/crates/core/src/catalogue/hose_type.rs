//! Hose types of the standards.

use super::table::{CatalogueError, Row};
use super::{Basis, Provenance, Reinforcement};
use crate::quantity::{Bar, Celsius};

/// A hose type of a standard.
#[derive(Debug, Clone, PartialEq)]
pub struct HoseType {
    /// Standard.
    pub standard: String,
    /// Type.
    pub kind: String,
    /// What carries the pressure; none where the standard leaves it to the maker.
    pub reinforcement: Option<Reinforcement>,
    /// The same in the table's words.
    pub reinforcement_text: String,
    /// Fewest layers.
    pub layers_min: u8,
    /// Most layers.
    pub layers_max: u8,
    /// Tube materials usual for the type, by the names of the fluid table (`NBR`, `PA`, `TPE-E`, `PTFE`).
    pub tube: Vec<String>,
    /// The same in the table's words.
    pub tube_text: String,
    /// What the cover is, in the table's words.
    pub cover: String,
    /// Fluid classes the standard names, by the names of the fluid table; a class in neither list
    /// is not named by the standard.
    pub fluids: Vec<String>,
    /// Fluid classes the standard excludes.
    pub fluids_excluded: Vec<String>,
    /// The fluids in the standard's words.
    pub fluids_text: String,
    /// Shortest length change at working pressure, percent.
    pub length_change_min_pct: Option<f64>,
    /// Longest length change at working pressure, percent.
    pub length_change_max_pct: Option<f64>,
    /// Impulse cycles of the type test.
    pub impulse_cycles: Option<u32>,
    /// Impulse pressure over working pressure.
    pub impulse_pressure_factor: Option<f64>,
    /// Temperature of the impulse test.
    pub impulse_temp_c: Option<Celsius>,
    /// The type of the same standard that took its place.
    pub superseded_by: Option<String>,
    /// The type whose size rows this one shares.
    pub sizes_of: Option<(String, String)>,
    /// Hottest fluid, where it is not that of the shared size rows.
    pub temp_max_c: Option<Celsius>,
    /// The pressure class, for types of a standard that marks the pressure as a class.
    pub pressure_class_bar: Option<Bar>,
    /// Types it can be exchanged with, from the standards' own cross references.
    pub interchange: Vec<Interchange>,
    /// Where it was read and how sure.
    pub provenance: Provenance,
    /// Bases of single columns.
    pub columns: TypeBases,
    /// Remarks.
    pub note: String,
}

/// Basis of each column of a [`HoseType`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TypeBases {
    /// Kind of reinforcement.
    pub reinforcement: Basis,
    /// Number of layers.
    pub layers: Basis,
    /// Tube material.
    pub tube: Basis,
    /// Cover.
    pub cover: Basis,
    /// Fluids.
    pub fluids: Basis,
    /// Length change.
    pub length_change: Basis,
    /// Impulse cycles and their temperature.
    pub impulse: Basis,
    /// Impulse pressure.
    pub impulse_factor: Basis,
    /// That the size rows of [`HoseType::sizes_of`] hold for this type too.
    pub sizes: Basis,
}

/// A type of another standard said to be exchangeable.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Interchange {
    /// Standard.
    pub standard: String,
    /// Type.
    pub kind: String,
    /// False where sizes or pressures are said to differ.
    pub equal: bool,
    /// Where it was read and how sure.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

pub(super) const INTERCHANGE_COLUMNS: &str = "standard,type,with_standard,with_type,equal,source,basis,note";

impl Interchange {
    /// Whose it is and what it can be exchanged with.
    pub(super) fn read(row: &Row<'_>) -> Result<((String, String), Self), CatalogueError> {
        let with = Self {
            standard: row.text("with_standard")?,
            kind: row.text("with_type")?,
            equal: row.yes("equal")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        };
        Ok(((row.text("standard")?, row.text("type")?), with))
    }
}

pub(super) const TYPE_COLUMNS: &str = "\
    standard,type,reinforcement,reinforcement_text,layers_min,layers_max,tube,tube_text,cover,fluids,\
    fluids_excluded,fluids_text,length_change_min_pct,length_change_max_pct,impulse_cycles,\
    impulse_pressure_factor,impulse_temp_c,superseded_by,sizes_of_standard,sizes_of_type,temp_max_c,\
    reinforcement_basis,layers_basis,tube_basis,cover_basis,fluids_basis,\
    length_change_basis,impulse_basis,impulse_factor_basis,sizes_basis,source,basis,note";

impl HoseType {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let layers_min = row.value("layers_min", "a number of layers such as 2")?;
        let layers_max = row.value("layers_max", "a number of layers such as 2")?;
        if layers_max < layers_min {
            return Err(row.wrong("layers_max", format!("{layers_min} or more")));
        }
        Ok(Self {
            standard: row.text("standard")?,
            kind: row.text("type")?,
            reinforcement: row.optional_name("reinforcement")?,
            reinforcement_text: row.text("reinforcement_text")?,
            layers_min,
            layers_max,
            tube: row.words("tube"),
            tube_text: row.text("tube_text")?,
            cover: row.text("cover")?,
            fluids: row.words("fluids"),
            fluids_excluded: row.words("fluids_excluded"),
            fluids_text: row.text("fluids_text")?,
            length_change_min_pct: row.optional_number("length_change_min_pct")?,
            length_change_max_pct: row.optional_number("length_change_max_pct")?,
            impulse_cycles: row.optional_value("impulse_cycles", "a number of cycles such as 200000")?,
            impulse_pressure_factor: row.optional_number("impulse_pressure_factor")?,
            impulse_temp_c: row.optional_number("impulse_temp_c")?.map(Celsius),
            superseded_by: row.optional_text("superseded_by"),
            sizes_of: row.optional_text("sizes_of_standard").zip(row.optional_text("sizes_of_type")),
            temp_max_c: row.optional_number("temp_max_c")?.map(Celsius),
            pressure_class_bar: None,
            interchange: Vec::new(),
            provenance: row.provenance()?,
            columns: TypeBases {
                reinforcement: row.basis("reinforcement_basis")?,
                layers: row.basis("layers_basis")?,
                tube: row.basis("tube_basis")?,
                cover: row.basis("cover_basis")?,
                fluids: row.basis("fluids_basis")?,
                length_change: row.basis("length_change_basis")?,
                impulse: row.basis("impulse_basis")?,
                impulse_factor: row.basis("impulse_factor_basis")?,
                sizes: row.basis("sizes_basis")?,
            },
            note: row.note("note"),
        })
    }
}
