//! Hoses: types and their sizes.

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
    /// Type; none where only the standard is named.
    pub kind: Option<String>,
    /// False where sizes or pressures are said to differ.
    pub equal: bool,
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

/// A class of working pressure, the same at every size.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct PressureClass {
    standard: String,
    class_bar: Bar,
    max_working_pressure_bar: Bar,
    proof_pressure_bar: Bar,
    min_burst_pressure_bar: Bar,
    provenance: Provenance,
    note: String,
}

pub(super) const CLASS_COLUMNS: &str = "\
    standard,class_bar,max_working_pressure_bar,proof_pressure_bar,min_burst_pressure_bar,source,basis,note";

impl PressureClass {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let bar = |column| row.bar(column)?.ok_or_else(|| row.wrong(column, "a pressure in bar"));
        Ok(Self {
            standard: row.text("standard")?,
            class_bar: bar("class_bar")?,
            max_working_pressure_bar: bar("max_working_pressure_bar")?,
            proof_pressure_bar: bar("proof_pressure_bar")?,
            min_burst_pressure_bar: bar("min_burst_pressure_bar")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}

/// Each type of a standard with pressure classes, in each class: `CC` in class 350 is `CC 350`.
/// The type without its class stays: a worn print may show no more.
pub(super) fn classed(types: &[HoseType], classes: &[PressureClass]) -> Vec<HoseType> {
    let in_class = |kind: &HoseType, class: &PressureClass| HoseType {
        kind: format!("{} {}", kind.kind, class.class_bar.get()),
        sizes_of: Some(kind.sizes_of.clone().unwrap_or_else(|| (kind.standard.clone(), kind.kind.clone()))),
        pressure_class_bar: Some(class.class_bar),
        note: format!("{}; {}", kind.note, class.note),
        ..kind.clone()
    };
    types
        .iter()
        .flat_map(|kind| {
            classes
                .iter()
                .filter(|class| class.standard == kind.standard)
                .map(move |class| in_class(kind, class))
        })
        .collect()
}

/// The rows of the types that share another's sizes, under their own names.
pub(super) fn twins(hoses: &[HoseRow], types: &[HoseType], classes: &[PressureClass]) -> Vec<HoseRow> {
    let rows_of = |kind: &HoseType| {
        let (standard, shared) = kind.sizes_of.clone().unwrap_or_default();
        hoses.iter().filter(move |row| row.standard == standard && row.kind == shared)
    };
    let class_of = |kind: &HoseType| {
        let bar = kind.pressure_class_bar?;
        classes.iter().find(|class| class.standard == kind.standard && class.class_bar == bar)
    };
    types.iter().flat_map(|kind| rows_of(kind).map(|row| twin(row, kind, class_of(kind)))).collect()
}

fn twin(row: &HoseRow, kind: &HoseType, class: Option<&PressureClass>) -> HoseRow {
    // A value can be no surer than that the twins are of one size.
    let weaken = |basis: Basis| if basis == Basis::None { basis } else { basis.max(kind.columns.sizes) };
    let mut twin = HoseRow {
        standard: kind.standard.clone(),
        kind: kind.kind.clone(),
        temp_max_c: kind.temp_max_c.unwrap_or(row.temp_max_c),
        source: format!(
            "{}; size rows of {} {}: {}",
            kind.provenance.source, row.standard, row.kind, row.source
        ),
        basis: weaken(row.basis),
        columns: ColumnBases {
            id: weaken(row.columns.id),
            reinforcement: weaken(row.columns.reinforcement),
            cover: weaken(row.columns.cover),
            pressure: weaken(row.columns.pressure),
            proof: weaken(row.columns.proof),
            burst: weaken(row.columns.burst),
            bend: weaken(row.columns.bend),
            vacuum: weaken(row.columns.vacuum),
        },
        ..row.clone()
    };
    if let Some(class) = class {
        twin.max_working_pressure_bar = Some(class.max_working_pressure_bar);
        twin.proof_pressure_bar = Some(class.proof_pressure_bar);
        twin.min_burst_pressure_bar = Some(class.min_burst_pressure_bar);
        let basis = class.provenance.basis;
        twin.columns = ColumnBases { pressure: basis, proof: basis, burst: basis, ..twin.columns };
    }
    twin
}
