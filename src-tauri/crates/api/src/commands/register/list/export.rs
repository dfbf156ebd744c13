//! The register's hoses as lists, and what falls due as a calendar.

use super::everything::Everything;
use crate::commands::File;
use crate::commands::care::{DueExport, DueQuestion, ListKind, due_export};
use crate::sheet::key;
use crate::{Api, ApiError};
use hosewright_core::hose_list::Column;
use hosewright_core::quantity::{Bar, Degrees, Dn, Millimetres};
use hosewright_core::record::{Assembly, MachineId};
use hosewright_core::spec::Role;
use hosewright_papers::table;
use hosewright_store::{Hose, Stay};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::HashMap;
use ts_rs::TS;

/// What is to be written out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Export {
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: ExportKind,
}

/// Kinds of files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ExportKind {
    /// One row for each stay of each hose; `import` reads it.
    Csv,
    /// The same as a workbook.
    Xlsx,
    /// Everything as a set of CSV tables, in one archive.
    Zip,
    /// Everything as one document.
    Json,
    /// What falls due, for a calendar.
    Ics,
}

/// All hoses, or what falls due, as a file.
///
/// # Errors
/// The register can not be read.
pub fn export(api: &mut Api, asked: Export, _: &[u8]) -> Result<File, ApiError> {
    let wrong = |error: table::TableError| ApiError::file("", error);
    let (ending, mime, bytes) = match asked.kind {
        ExportKind::Csv => ("csv", "text/csv; charset=utf-8", table::to_csv(&rows(api)?)),
        ExportKind::Xlsx => (
            "xlsx",
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            table::to_xlsx("hoses", &rows(api)?).map_err(wrong)?,
        ),
        ExportKind::Zip => {
            let everything = Everything::of(api.register()?)?;
            ("zip", "application/zip", table::to_zip(&everything.tables()?).map_err(wrong)?)
        }
        ExportKind::Json => ("json", "application/json", json(api)?),
        ExportKind::Ics => {
            return due_export(api, DueExport { due: DueQuestion::default(), kind: ListKind::Ics }, &[]);
        }
    };
    let name = match asked.kind {
        ExportKind::Zip | ExportKind::Json => "register",
        ExportKind::Csv | ExportKind::Xlsx | ExportKind::Ics => "hoses",
    };
    Ok(File { name: format!("{name}.{ending}"), mime, bytes })
}

/// Every hose that was ever fitted once, in the order of first fitting.
fn hoses(api: &mut Api) -> Result<Vec<(Vec<Stay>, Hose)>, ApiError> {
    let register = api.register()?;
    let mut found: Vec<(Vec<Stay>, Hose)> = Vec::new();
    let mut at = HashMap::new();
    for stay in register.stays()? {
        match at.get(&stay.code) {
            Some(index) => {
                if let Some((stays, _)) = found.get_mut::<usize>(*index) {
                    stays.push(stay);
                }
            }
            None => {
                if let Some(hose) = register.hose(&stay.code)? {
                    at.insert(stay.code, found.len());
                    found.push((vec![stay], hose));
                }
            }
        }
    }
    Ok(found)
}

fn json(api: &mut Api) -> Result<Vec<u8>, ApiError> {
    let everything = Everything::of(api.register()?)?;
    serde_json::to_vec_pretty(&api.answer(everything)).map_err(|error| ApiError::input("", error))
}

fn rows(api: &mut Api) -> Result<Vec<Vec<String>>, ApiError> {
    let mut machines: HashMap<MachineId, (String, Option<f64>)> = HashMap::new();
    let register = api.register()?;
    for row in register.machines()? {
        let hours = register.machine(row.machine)?.and_then(|sheet| sheet.hours).map(|read| read.hours);
        machines.insert(row.machine, (row.sort, hours));
    }
    let mut rows = vec![Column::ALL.iter().map(|column| column.name().to_owned()).collect()];
    for (stays, hose) in hoses(api)? {
        for stay in stays {
            let machine = stay.at.machine.and_then(|machine| machines.get(&machine));
            let cells = cells(&stay, &hose, machine);
            rows.push(
                Column::ALL.iter().map(|column| cells.get(column).cloned().unwrap_or_default()).collect(),
            );
        }
    }
    Ok(rows)
}

/// The cells of one stay by column.
fn cells(stay: &Stay, hose: &Hose, machine: Option<&(String, Option<f64>)>) -> HashMap<Column, String> {
    let mut cells = HashMap::new();
    let mut put = |column: Column, value: Option<String>| {
        if let Some(value) = value {
            cells.insert(column, value);
        }
    };
    put(Column::Site, stay.at.site_name.clone());
    put(Column::Machine, stay.at.machine_name.clone());
    put(Column::Kind, machine.map(|(sort, _)| sort.clone()));
    put(Column::MachineHours, machine.and_then(|(_, hours)| hours.map(|hours| hours.to_string())));
    put(Column::Place, stay.at.number.map(|number| number.to_string()));
    put(Column::PlaceName, stay.at.place_name.clone());
    put(Column::Code, Some(stay.code.to_string()));
    put(Column::Fitted, stay.on_date.map(|day| day.to_string()));
    put(Column::FittedHours, stay.on_hours.map(|hours| hours.to_string()));
    put(Column::Removed, stay.off_date.map(|day| day.to_string()));
    put(Column::RemovedHours, stay.off_hours.map(|hours| hours.to_string()));
    put(Column::Cause, stay.cause.clone());
    put(Column::Note, stay.note.clone());
    if let Some(made) = &hose.assembly {
        put_assembly(&made.record, &mut put);
    }
    cells
}

/// The cells of the hose itself.
fn put_assembly(assembly: &Assembly, mut put: impl FnMut(Column, Option<String>)) {
    let (spec, service) = (&assembly.spec, &assembly.service);
    put(Column::Line, service.line.map(|line| key(&line)));
    put(Column::Relief, service.relief_bar.map(|Bar(bar)| bar.to_string()));
    put(Column::Working, service.working_pressure_bar.map(|Bar(bar)| bar.to_string()));
    put(Column::Fluid, service.fluid.clone());
    put(Column::Standard, spec.hose.as_ref().map(|hose| hose.standard.clone()));
    put(Column::Type, spec.hose.as_ref().map(|hose| hose.kind.clone()));
    put(Column::Dn, spec.hose.as_ref().map(|hose| Dn::to_string(&hose.dn)));
    put(Column::Cover, spec.cover.map(|cover| key(&cover)));
    put(Column::Length, spec.overall_length_mm.map(|Millimetres(mm)| mm.to_string()));
    put(Column::Turn, spec.turn_deg.map(|Degrees(deg)| deg.to_string()));
    put(Column::HoseMade, assembly.hose_made.map(|day| day.to_string()));
    put(Column::Assembled, assembly.assembled.map(|day| day.to_string()));
    for (role, [family, size, gender, form]) in [
        (Role::A, [Column::AFamily, Column::ASize, Column::AGender, Column::AForm]),
        (Role::B, [Column::BFamily, Column::BSize, Column::BGender, Column::BForm]),
    ] {
        if let Some(end) = spec.end(role) {
            put(family, Some(end.family.clone()));
            put(size, Some(end.size.clone()));
            put(gender, end.gender.map(|gender| key(&gender)));
            put(form, end.form.clone());
        }
    }
}
