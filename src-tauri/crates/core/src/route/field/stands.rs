//! What the hose can stand, with where each figure comes from.

use super::error::FieldError;
use super::question::FieldQuestion;
use crate::catalogue::{Basis, Catalogue, HoseRow, HoseType, Provenance, Reinforcement, UnknownName};
use crate::check::{hose_name, yours};
use crate::quantity::{Dn, Millimetres};

/// Nominal size above which textile hose has a length change of its own (ISO 4079:2015 clause 7).
const LARGE_TEXTILE_DN: f64 = 31.5;

/// The hose of a routing.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Stands {
    /// What it is called.
    pub name: String,
    pub dn: Dn,
    pub od_mm: f64,
    pub od_from: Provenance,
    /// Least radius at the inside; none is not known.
    pub least_inside_mm: Option<f64>,
    pub bend_from: Provenance,
    pub change_pct: [f64; 2],
    pub change_from: Provenance,
    /// The standard of this type says nothing of its length change.
    pub change_taken: bool,
}

impl Stands {
    /// The hose of the spec, with the user's own figures over the table's.
    pub fn of(catalogue: &Catalogue, question: &FieldQuestion) -> Result<Self, FieldError> {
        let wanted = "the hose by standard, type and dn: it says how tight it may be bent";
        let named = question.spec.hose.as_ref();
        let named = named.ok_or_else(|| FieldError::Missing { field: "spec.hose".to_owned(), wanted })?;
        let unknown =
            |name: UnknownName| FieldError::Unknown { field: format!("spec.hose.{}", name.what), name };
        let row = catalogue.hose(&named.standard, &named.kind, named.dn).map_err(unknown)?;
        let kind = catalogue.hose_type(&named.standard, &named.kind).map_err(unknown)?;
        let (od_mm, od_from) = outside(question, row)?;
        let own = above_nothing("spec.hose.min_bend_radius_mm", named.min_bend_radius_mm)?;
        let table = row.min_bend_radius_mm.map(Millimetres::get);
        let (least_inside_mm, bend_from) = match own {
            Some(own) => (Some(own), yours()),
            None => (table, row.bend_provenance()),
        };
        let taken = question.length_change_pct.is_none() && of_type(catalogue, kind, row).is_none();
        let (change_pct, change_from) = match question.length_change_pct {
            Some(own) => (own, yours()),
            None => of_type(catalogue, kind, row).unwrap_or_else(|| widest(catalogue)),
        };
        Ok(Self {
            name: hose_name(row),
            dn: row.dn,
            od_mm,
            od_from,
            least_inside_mm,
            bend_from,
            change_pct,
            change_from,
            change_taken: taken,
        })
    }
}

/// The largest diameter that the table allows: it leaves the least radius at the inside.
fn outside(question: &FieldQuestion, row: &HoseRow) -> Result<(f64, Provenance), FieldError> {
    if let Some(own) = above_nothing("hose_od_mm", question.hose_od_mm)? {
        return Ok((own, yours()));
    }
    let wanted = "the diameter over the cover, measured with a caliper; the tables have none for this hose";
    let table = row.cover_od_max_mm.or(row.cover_od_min_mm).map(Millimetres::get);
    let table = table.ok_or_else(|| FieldError::Missing { field: "hose_od_mm".to_owned(), wanted })?;
    Ok((table, Provenance { source: row.source.clone(), basis: row.columns.cover }))
}

/// What the standard of the type allows at working pressure. Large textile hose has limits of its own.
fn of_type(catalogue: &Catalogue, kind: &HoseType, row: &HoseRow) -> Option<([f64; 2], Provenance)> {
    let change = kind.length_change_min_pct.zip(kind.length_change_max_pct)?;
    if kind.reinforcement == Some(Reinforcement::TextileBraid) && row.dn.get() > LARGE_TEXTILE_DN {
        return limits(catalogue, ["length-change-min-textile-large", "length-change-max-textile-large"]);
    }
    let source = kind.provenance.source.clone();
    Some(([change.0, change.1], Provenance { source, basis: kind.columns.length_change }))
}

/// Where the standard is silent: what most rubber hose is allowed, the widest shortening of the tables.
fn widest(catalogue: &Catalogue) -> ([f64; 2], Provenance) {
    let rubber = limits(catalogue, ["length-change-min-rubber", "length-change-max-rubber"]);
    let (change, from) = rubber.unwrap_or((
        [-4.0, 2.0],
        Provenance { source: "trade practice".to_owned(), basis: Basis::CommonPractice },
    ));
    (change, Provenance { basis: Basis::CommonPractice, ..from })
}

fn limits(catalogue: &Catalogue, keys: [&str; 2]) -> Option<([f64; 2], Provenance)> {
    let [least, greatest] = keys.map(|key| catalogue.limit(key));
    let (least, greatest) = least.zip(greatest)?;
    Some(([least.value?, greatest.value?], least.provenance.clone()))
}

fn above_nothing(field: &str, given: Option<Millimetres>) -> Result<Option<f64>, FieldError> {
    match given.map(Millimetres::get) {
        Some(value) if !(value.is_finite() && value > 0.0) => {
            Err(FieldError::Number { field: field.to_owned(), value, wanted: "a length above 0 mm" })
        }
        value => Ok(value),
    }
}
