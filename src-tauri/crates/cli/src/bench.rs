//! Commands of the bench that need a register: what was done, suppliers' tables.

use crate::args::Supplier;
use crate::input::{self, How};
use crate::outcome::Outcome;
use hosewright_api::commands::bench::{BenchQuestion, BenchRecordQuestion};
use hosewright_api::commands::supplier::{
    SupplierImport, SupplierListQuestion, SupplierLookupQuestion, SupplierMatchQuestion, SupplierRemove,
    SupplierRowQuestion,
};
use hosewright_api::commands::{bench as commands, supplier as suppliers};
use hosewright_api::{Api, ApiError};
use hosewright_core::supplier::Column;
use std::path::Path;

/// Opens a register that is there.
pub fn open(api: &mut Api, db: &Path) -> Result<(), ApiError> {
    if !db.exists() {
        let file = db.display().to_string();
        return Err(ApiError::file(
            file.clone(),
            format!("there is no register at {file}; `register` begins one"),
        ));
    }
    api.open(db)
}

/// Judges the bench, or with `record` writes it down.
pub fn bench(
    api: &mut Api,
    work: &Path,
    db: Option<&Path>,
    record: bool,
    json: bool,
) -> Result<Outcome, ApiError> {
    if !record {
        if let Some(db) = db {
            open(api, db)?;
        }
        let asked: BenchQuestion = input::question(work)?;
        return Outcome::of(&commands::judge(api, asked, &[])?, json, api.words());
    }
    let db = db.ok_or_else(|| ApiError::input("db", "the register's file is needed to record in it"))?;
    let asked: BenchRecordQuestion = input::question(work)?;
    writing(api, db, |api| Outcome::of(&commands::record(api, asked, &[])?, json, api.words()))
}

/// Runs what writes in a register; one that it begins stays only if something was written in it.
///
/// # Errors
/// Whatever is refused; nothing is changed then.
pub fn writing(
    api: &mut Api,
    db: &Path,
    write: impl FnOnce(&mut Api) -> Result<Outcome, ApiError>,
) -> Result<Outcome, ApiError> {
    let began = !db.exists();
    api.open(db)?;
    let outcome = write(api);
    if began {
        api.discard_if_empty()?;
    }
    outcome
}

/// Runs a command on suppliers' tables.
pub fn supplier(api: &mut Api, db: &Path, command: &Supplier, json: bool) -> Result<Outcome, ApiError> {
    match command {
        Supplier::Match { sheet } => {
            let asked = SupplierMatchQuestion { name: named(sheet), header_row: None, columns: None };
            Outcome::of(&suppliers::matches(api, asked, &input::bytes(sheet)?)?, json, api.words())
        }
        Supplier::Import { sheet, supplier, how, dry_run } => {
            let mut how: How<Column> = how.as_deref().map(input::question).transpose()?.unwrap_or_default();
            how.fixed.extend(supplier.clone().map(|supplier| (Column::Supplier, supplier)));
            let How { header_row, columns, fixed, leave_out } = how;
            let asked = SupplierImport {
                name: named(sheet),
                dry_run: *dry_run,
                header_row,
                columns,
                fixed,
                leave_out,
            };
            let file = input::bytes(sheet)?;
            writing(api, db, |api| Outcome::of(&suppliers::import(api, asked, &file)?, json, api.words()))
        }
        Supplier::Keep { row } => {
            let row = input::question(row)?;
            writing(api, db, |api| {
                Outcome::of(&suppliers::keep(api, SupplierRowQuestion { row }, &[])?, json, api.words())
            })
        }
        Supplier::List { supplier } => {
            open(api, db)?;
            let asked = SupplierListQuestion { supplier: supplier.clone() };
            Outcome::of(&suppliers::list(api, asked, &[])?, json, api.words())
        }
        Supplier::Lookup { spec } => {
            open(api, db)?;
            let asked = SupplierLookupQuestion { spec: input::question(spec)?, settings: Vec::new() };
            Outcome::of(&suppliers::lookup(api, asked, &[])?, json, api.words())
        }
        Supplier::Remove { supplier } => {
            open(api, db)?;
            let asked = SupplierRemove { supplier: Some(supplier.clone()), id: None };
            Outcome::of(&suppliers::remove(api, asked, &[])?, json, api.words())
        }
    }
}

/// A file as its rows name it: without its folder.
fn named(sheet: &Path) -> String {
    sheet.file_name().map_or_else(|| sheet.display().to_string(), |name| name.to_string_lossy().into_owned())
}
