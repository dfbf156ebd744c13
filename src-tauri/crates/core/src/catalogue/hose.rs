//! Hoses: types and their sizes.

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
    /// Diameter over the reinforcement.
    pub reinforcement_od_mm: Option<Band>,
    /// Diameter over the cover. Only one of the limits is in some standards.
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
    /// Bend radius.
    pub bend: Basis,
    /// Vacuum.
    pub vacuum: Basis,
}

impl HoseRow {
    /// The provenance of the working pressure.
    pub fn pressure_provenance(&self) -> Provenance {
        Provenance { source: self.source.clone(), basis: self.columns.pressure }
    }

    /// The provenance of the bend radius.
    pub fn bend_provenance(&self) -> Provenance {
        Provenance { source: self.source.clone(), basis: self.columns.bend }
    }
}

/// A hose type of a standard.
#[derive(Debug, Clone, PartialEq)]
pub struct HoseType {
    /// Standard.
    pub standard: String,
    /// Type.
    pub kind: String,
    /// What carries the pressure.
    pub reinforcement: Reinforcement,
    /// Fewest layers.
    pub layers_min: u8,
    /// Most layers.
    pub layers_max: u8,
    /// Tube materials, by the names of the fluid table (`NBR`, `PA`, `TPE-E`, `PTFE`).
    pub tube: Vec<String>,
    /// What the cover is, in the table's words.
    pub cover: String,
    /// Fluid classes the standard names, by the names of the fluid table; empty is not known.
    pub fluids: Vec<String>,
    /// Fluid classes the standard excludes.
    pub fluids_excluded: Vec<String>,
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
    /// The type that took its place.
    pub superseded_by: Option<String>,
    /// The type of another standard whose size rows this one shares.
    pub sizes_of: Option<(String, String)>,
    /// Types it can be exchanged with, from the standards' own cross references.
    pub interchange: Vec<Interchange>,
    /// Where it was read and how sure.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// A type of another standard said to be exchangeable.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Interchange {
    /// Standard.
    pub standard: String,
    /// Type; none where only the standard is named.
    pub kind: Option<String>,
    /// False where sizes or pressures are said to differ.
    pub equal: bool,
}
