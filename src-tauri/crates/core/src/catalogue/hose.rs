//! Sizes of hose types.

use super::table::{CatalogueError, Row};
use super::{Band, Basis, Provenance};
use crate::quantity::{Bar, Celsius, Dn, Millimetres};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What carries the pressure, as it can be seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Reinforcement {
    /// Braided steel wire.
    WireBraid,
    /// Steel wire in crossing spirals.
    WireSpiral,
    /// Braided textile.
    TextileBraid,
    /// Textile round a thermoplastic tube.
    ThermoplasticTextile,
    /// Stainless braid, bare, over PTFE.
    PtfeSteelBraid,
    /// Textile with a wire helix against collapse.
    SuctionHelix,
}

/// One size of a hose type.
#[derive(Debug, Clone, PartialEq)]
pub struct HoseRow {
    /// Standard, such as `EN 853`.
    pub standard: String,
    /// Type, such as `2SN`.
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// Dash size as printed (sixteenths of an inch of bore; tube size for the types that say so).
    pub dash: Option<u16>,
    /// Nominal bore.
    pub id_nom_mm: Millimetres,
    /// Bore of a new hose.
    pub id_mm: Option<Band>,
    /// Smallest diameter over the reinforcement. Only one of the limits stands in some standards.
    pub reinforcement_od_min_mm: Option<Millimetres>,
    /// Largest diameter over the reinforcement.
    pub reinforcement_od_max_mm: Option<Millimetres>,
    /// Smallest diameter over the cover.
    pub cover_od_min_mm: Option<Millimetres>,
    /// Largest diameter over the cover.
    pub cover_od_max_mm: Option<Millimetres>,
    /// Maximum working pressure; blank is not known, never unlimited.
    pub max_working_pressure_bar: Option<Bar>,
    /// Proof pressure.
    pub proof_pressure_bar: Option<Bar>,
    /// Minimum burst pressure.
    pub min_burst_pressure_bar: Option<Bar>,
    /// Minimum bend radius, at the inside of the bend.
    pub min_bend_radius_mm: Option<Millimetres>,
    /// Coldest fluid.
    pub temp_min_c: Celsius,
    /// Hottest fluid (oil).
    pub temp_max_c: Celsius,
    /// Lowest absolute pressure inside, kPa.
    pub vacuum_kpa_abs: Option<f64>,
    /// Where the row was read.
    pub source: String,
    /// The row's basis: that of its weakest column.
    pub basis: Basis,
    /// Bases of single columns where the row's note marks them.
    pub columns: ColumnBases,
    /// Remarks of the table.
    pub note: String,
}

/// Basis of each column of a [`HoseRow`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ColumnBases {
    /// Bore.
    pub id: Basis,
    /// Diameter over the reinforcement.
    pub reinforcement: Basis,
    /// Diameter over the cover.
    pub cover: Basis,
    /// Working pressure.
    pub pressure: Basis,
    /// Proof pressure.
    pub proof: Basis,
    /// Burst pressure.
    pub burst: Basis,
    /// Bend radius.
    pub bend: Basis,
    /// Vacuum.
    pub vacuum: Basis,
}

impl HoseRow {
    /// The provenance of the row: the basis is that of its weakest column.
    pub fn provenance(&self) -> Provenance {
        Provenance { source: self.source.clone(), basis: self.basis }
    }

    /// The provenance of the working pressure.
    pub fn pressure_provenance(&self) -> Provenance {
        Provenance { source: self.source.clone(), basis: self.columns.pressure }
    }

    /// The provenance of the bend radius.
    pub fn bend_provenance(&self) -> Provenance {
        Provenance { source: self.source.clone(), basis: self.columns.bend }
    }

    /// The provenance of the vacuum.
    pub fn vacuum_provenance(&self) -> Provenance {
        Provenance { source: self.source.clone(), basis: self.columns.vacuum }
    }
}

pub(super) const HOSE_COLUMNS: &str = "\
    standard,type,dn,dash,id_nom_mm,id_min_mm,id_max_mm,reinforcement_od_min_mm,reinforcement_od_max_mm,\
    cover_od_min_mm,cover_od_max_mm,max_working_pressure_bar,proof_pressure_bar,min_burst_pressure_bar,\
    min_bend_radius_mm,temp_min_c,temp_max_c,vacuum_kpa_abs,id_basis,reinforcement_basis,cover_basis,\
    pressure_basis,proof_basis,burst_basis,bend_basis,vacuum_basis,source,basis,note";

impl HoseRow {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let Provenance { source, basis } = row.provenance()?;
        Ok(Self {
            standard: row.text("standard")?,
            kind: row.text("type")?,
            dn: row.dn("dn")?.ok_or_else(|| row.wrong("dn", "a nominal diameter such as 12"))?,
            dash: row.optional_value("dash", "a dash size such as 8")?,
            id_nom_mm: row.mm("id_nom_mm")?.ok_or_else(|| row.wrong("id_nom_mm", "the nominal bore"))?,
            id_mm: row.band("id_min_mm", "id_max_mm")?,
            reinforcement_od_min_mm: row.mm("reinforcement_od_min_mm")?,
            reinforcement_od_max_mm: row.mm("reinforcement_od_max_mm")?,
            cover_od_min_mm: row.mm("cover_od_min_mm")?,
            cover_od_max_mm: row.mm("cover_od_max_mm")?,
            max_working_pressure_bar: row.bar("max_working_pressure_bar")?,
            proof_pressure_bar: row.bar("proof_pressure_bar")?,
            min_burst_pressure_bar: row.bar("min_burst_pressure_bar")?,
            min_bend_radius_mm: row.mm("min_bend_radius_mm")?,
            temp_min_c: Celsius(row.number("temp_min_c")?),
            temp_max_c: Celsius(row.number("temp_max_c")?),
            vacuum_kpa_abs: row.optional_number("vacuum_kpa_abs")?,
            source,
            basis,
            columns: ColumnBases {
                id: row.basis("id_basis")?,
                reinforcement: row.basis("reinforcement_basis")?,
                cover: row.basis("cover_basis")?,
                pressure: row.basis("pressure_basis")?,
                proof: row.basis("proof_basis")?,
                burst: row.basis("burst_basis")?,
                bend: row.basis("bend_basis")?,
                vacuum: row.basis("vacuum_basis")?,
            },
            note: row.note("note"),
        })
    }
}
