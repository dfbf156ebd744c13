//! The crimp tables of the user's own suppliers, beside the log: taken in, replaced and taken away as they are.

use crate::{Error, Register, rows};
use chrono::{DateTime, Utc};
use hosewright_core::quantity::Dn;
use hosewright_core::supplier::SupplierRow;
use rusqlite::{Connection, OptionalExtension, Row, TransactionBehavior, params};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// A row of a supplier's table as it is kept.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct SupplierKept {
    /// Its number here.
    #[ts(type = "number")]
    pub id: i64,
    /// The row.
    pub row: SupplierRow,
    /// When it was kept.
    pub kept: DateTime<Utc>,
}

/// What became of rows that were to be kept.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct SupplierCounts {
    /// Rows for what there was none for.
    pub new: usize,
    /// Rows that took the place of an earlier one.
    pub changed: usize,
    /// Rows that were there already.
    pub same: usize,
}

/// What is taken away.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SupplierRemoval<'a> {
    /// All rows of one supplier.
    Supplier(&'a str),
    /// One row.
    Row(i64),
}

impl Register {
    /// Keeps rows, all or none. One for the same supplier, hose, end and series takes the earlier one's place. With
    /// `dry_run` it is only said what would become of them.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn keep_supplier_rows(
        &mut self,
        rows: &[SupplierRow],
        now: DateTime<Utc>,
        dry_run: bool,
    ) -> Result<SupplierCounts, Error> {
        let tx = self.db.transaction_with_behavior(TransactionBehavior::Immediate)?;
        let mut counts = SupplierCounts::default();
        for row in rows {
            match same_key(&tx, row)? {
                None => counts.new += 1,
                Some(kept) if kept == *row => {
                    counts.same += 1;
                    continue;
                }
                Some(_) => counts.changed += 1,
            }
            if !dry_run {
                put(&tx, row, now)?;
            }
        }
        tx.commit()?;
        Ok(counts)
    }

    /// Every row by supplier, hose and end.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn supplier_rows(&self) -> Result<Vec<SupplierKept>, Error> {
        let sql = "SELECT id, content, ms FROM supplier_row
                   ORDER BY supplier, standard, kind, dn, family, size, series";
        let mut statement = self.db.prepare_cached(sql)?;
        let kept = statement.query_map([], kept)?;
        Ok(kept.collect::<Result<_, _>>()?)
    }

    /// Every row for a hose, whatever the end, by supplier.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn supplier_rows_for(&self, standard: &str, kind: &str, dn: Dn) -> Result<Vec<SupplierKept>, Error> {
        let sql = "SELECT id, content, ms FROM supplier_row WHERE standard = ?1 AND kind = ?2 AND dn = ?3
                   ORDER BY supplier, family, size, series";
        let mut statement = self.db.prepare_cached(sql)?;
        let kept = statement.query_map(params![standard, kind, dn.get()], kept)?;
        Ok(kept.collect::<Result<_, _>>()?)
    }

    /// Takes rows away for good; says how many there were.
    ///
    /// # Errors
    /// The register can not be written.
    pub fn remove_supplier_rows(&mut self, what: SupplierRemoval<'_>) -> Result<usize, Error> {
        Ok(match what {
            SupplierRemoval::Supplier(name) => {
                self.db.execute("DELETE FROM supplier_row WHERE supplier = ?1", [name])?
            }
            SupplierRemoval::Row(id) => self.db.execute("DELETE FROM supplier_row WHERE id = ?1", [id])?,
        })
    }
}

fn same_key(db: &Connection, row: &SupplierRow) -> Result<Option<SupplierRow>, Error> {
    let mut statement = db.prepare_cached(
        "SELECT content FROM supplier_row WHERE supplier = ?1 AND standard = ?2 AND kind = ?3 AND dn = ?4
         AND family = ?5 AND size = ?6 AND series = ?7",
    )?;
    let [family, size, series] =
        [&row.family, &row.size, &row.series].map(|text| text.as_deref().unwrap_or(""));
    let key = params![row.supplier, row.standard, row.kind, row.dn.get(), family, size, series];
    Ok(statement.query_row(key, |row| rows::json(row, "content")).optional()?)
}

fn put(db: &Connection, row: &SupplierRow, now: DateTime<Utc>) -> Result<(), Error> {
    let [family, size, series] =
        [&row.family, &row.size, &row.series].map(|text| text.as_deref().unwrap_or(""));
    db.prepare_cached(
        "INSERT INTO supplier_row (supplier, standard, kind, dn, family, size, series, content, ms)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
         ON CONFLICT (supplier, standard, kind, dn, family, size, series)
         DO UPDATE SET content = excluded.content, ms = excluded.ms",
    )?
    .execute(params![
        row.supplier,
        row.standard,
        row.kind,
        row.dn.get(),
        family,
        size,
        series,
        serde_json::to_string(row)?,
        now.timestamp_millis(),
    ])?;
    Ok(())
}

fn kept(row: &Row<'_>) -> rusqlite::Result<SupplierKept> {
    Ok(SupplierKept {
        id: row.get("id")?,
        row: rows::json(row, "content")?,
        kept: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
    })
}
