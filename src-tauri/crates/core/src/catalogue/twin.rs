//! Types that share the sizes of another type, and types that come in classes of pressure.

use super::hose::{ColumnBases, HoseRow};
use super::hose_type::HoseType;
use super::table::{CatalogueError, Row};
use super::{Basis, Provenance};
use crate::quantity::Bar;

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
