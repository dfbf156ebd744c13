//! Fluids, how tube materials stand them, and lines that are none of this trade's.

use super::Provenance;
use super::table::{CatalogueError, Row};
use crate::quantity::Celsius;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A class of fluid.
#[derive(Debug, Clone, PartialEq)]
pub struct FluidClass {
    /// The class of ISO 6743-4 (`HM`), or a stable name (`diesel-fuel`).
    pub class: String,
    /// What it is.
    pub name: String,
    /// What kind of fluid.
    pub group: FluidGroup,
    /// The class whose ratings hold for this one too.
    pub rated_as: Option<String>,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// A kind of fluid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FluidGroup {
    /// Mineral oil.
    Oil,
    /// Emulsion or solution in water.
    WaterBased,
    /// Water.
    Water,
    /// Synthetic without water.
    Synthetic,
    /// Breaks down in the ground.
    Biodegradable,
    /// Fuel.
    Fuel,
    /// Gas.
    Gas,
    /// Something else.
    Other,
}

/// How a tube material stands a fluid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FluidRating {
    /// Made for it.
    Recommended,
    /// For weak duty; ask the supplier.
    Limited,
    /// Destroyed by it.
    Not,
}

/// One fluid against one tube material.
#[derive(Debug, Clone, PartialEq)]
pub struct FluidRow {
    /// The fluid's class.
    pub class: String,
    /// Tube material.
    pub elastomer: String,
    /// How it stands it.
    pub rating: FluidRating,
    /// Hottest; none is not known.
    pub max_temp_c: Option<Celsius>,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// A fluid or line that is refused.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OutOfScope {
    /// Stable name, the key of its words.
    pub key: String,
    /// Names people use for it.
    pub names: Vec<String>,
    /// Why it is refused.
    pub why: String,
    /// Source and basis.
    pub provenance: Provenance,
}

pub(super) const CLASS_COLUMNS: &str = "class,name,group,rated_as,source,basis,note";
pub(super) const FLUID_COLUMNS: &str = "class,elastomer,rating,max_temp_c,source,basis,note";
pub(super) const SCOPE_COLUMNS: &str = "key,names,why,source,basis";

impl FluidClass {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            class: row.text("class")?,
            name: row.text("name")?,
            group: row.name("group")?,
            rated_as: row.optional_text("rated_as"),
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl FluidRow {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            class: row.text("class")?,
            elastomer: row.text("elastomer")?,
            rating: row.name("rating")?,
            max_temp_c: row.optional_number("max_temp_c")?.map(Celsius),
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

impl OutOfScope {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            key: row.text("key")?,
            names: row.text("names")?.split(';').map(|name| name.trim().to_owned()).collect(),
            why: row.text("why")?,
            provenance: row.provenance()?,
        })
    }
}
