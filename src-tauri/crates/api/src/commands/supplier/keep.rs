//! Rows that are entered by hand, listed and taken away.

use crate::{Answer, Api, ApiError};
use hosewright_core::supplier::{RowError, SupplierRow};
use hosewright_store::{SupplierKept, SupplierRemoval};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

impl From<RowError> for ApiError {
    fn from(error: RowError) -> Self {
        ApiError::input(format!("row.{}", error.field()), &error)
    }
}

/// A row entered by hand.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct SupplierRowQuestion {
    /// The row.
    pub row: SupplierRow,
}

/// Which row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SupplierId {
    /// Its number here.
    #[ts(type = "number")]
    pub id: i64,
}

/// Keeps a row that was entered by hand; it takes the place of an earlier one for the same.
///
/// # Errors
/// A name that is not in the tables, a figure that can not be; the register can not be written.
pub fn keep(api: &mut Api, asked: SupplierRowQuestion, _: &[u8]) -> Result<Answer<SupplierId>, ApiError> {
    let row = named(api, asked.row)?;
    row.plausible()?;
    let now = api.world.now();
    let register = api.register()?;
    register.keep_supplier_rows(std::slice::from_ref(&row), now, false)?;
    let kept = register.supplier_rows_for(&row.standard, &row.kind, row.dn)?;
    let kept = kept.into_iter().find(|kept| kept.row.same_as(&row));
    let id = kept.map(|kept| kept.id).ok_or_else(|| ApiError::file("db", "the row was not written"))?;
    Ok(api.answer(SupplierId { id }))
}

/// The row with its hose and end by the names of the tables.
fn named(api: &Api, row: SupplierRow) -> Result<SupplierRow, ApiError> {
    let unknown = |error: hosewright_core::catalogue::UnknownName| {
        ApiError::input(format!("row.{}", error.what), &error)
    };
    let hose = api.catalogue.hose(&row.standard, &row.kind, row.dn).map_err(unknown)?;
    let (standard, kind, dn) = (hose.standard.clone(), hose.kind.clone(), hose.dn);
    let (family, size) = match (&row.family, &row.size) {
        (Some(family), Some(size)) => {
            let found = api.catalogue.connection(family, size).map_err(unknown)?;
            (Some(found.family().to_owned()), Some(found.size().to_owned()))
        }
        (None, Some(_)) => return Err(ApiError::input("row.family", "a size needs its family beside it")),
        (Some(family), None) => match api.catalogue.families_named(family).map_err(unknown)?.as_slice() {
            [one] => (Some((*one).to_owned()), None),
            _ => {
                return Err(ApiError::input(
                    "row.size",
                    "this name is of several families; give the size too",
                ));
            }
        },
        (None, None) => (None, None),
    };
    Ok(SupplierRow { standard, kind, dn, family, size, ..row })
}

/// What is listed.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct SupplierListQuestion {
    /// Of this supplier; of all without.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub supplier: Option<String>,
}

/// The suppliers and their rows.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct SupplierList {
    /// Every supplier.
    pub suppliers: Vec<SupplierName>,
    /// The rows asked for.
    pub rows: Vec<SupplierKept>,
}

/// A supplier and how many rows there are.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SupplierName {
    /// Its name.
    pub supplier: String,
    /// How many rows.
    pub rows: usize,
}

/// The suppliers of this register and their rows.
///
/// # Errors
/// The register can not be read.
pub fn list(api: &mut Api, asked: SupplierListQuestion, _: &[u8]) -> Result<Answer<SupplierList>, ApiError> {
    let mut rows = api.register()?.supplier_rows()?;
    let suppliers = rows.chunk_by(|one, other| one.row.supplier == other.row.supplier);
    let suppliers = suppliers
        .filter_map(|of| Some(SupplierName { supplier: of.first()?.row.supplier.clone(), rows: of.len() }));
    let suppliers = suppliers.collect();
    if let Some(supplier) = &asked.supplier {
        rows.retain(|kept| kept.row.supplier == *supplier);
    }
    Ok(api.answer(SupplierList { suppliers, rows }))
}

/// What is taken away: a supplier with all rows, or one row.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct SupplierRemove {
    /// All rows of this supplier.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub supplier: Option<String>,
    /// This row.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[ts(type = "number | null")]
    pub id: Option<i64>,
}

/// What was taken away.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct SupplierRemoved {
    /// How many rows.
    pub removed: usize,
}

/// Takes a supplier's rows, or one row, away for good.
///
/// # Errors
/// Both or neither are named; there is none such; the register can not be written.
pub fn remove(api: &mut Api, asked: SupplierRemove, _: &[u8]) -> Result<Answer<SupplierRemoved>, ApiError> {
    let what = match (&asked.supplier, asked.id) {
        (Some(supplier), None) => SupplierRemoval::Supplier(supplier),
        (None, Some(id)) => SupplierRemoval::Row(id),
        _ => return Err(ApiError::input("supplier", "name a supplier, or the id of one row, and not both")),
    };
    let removed = api.register()?.remove_supplier_rows(what)?;
    if removed == 0 {
        return Err(ApiError::nothing("supplier", "there is no such supplier or row here; list them"));
    }
    Ok(api.answer(SupplierRemoved { removed }))
}
