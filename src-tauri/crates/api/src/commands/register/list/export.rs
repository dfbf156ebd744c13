//! The register's hoses as lists, and what falls due as a calendar.

use super::columns as column;
use crate::commands::File;
use crate::commands::care::{DueExport, DueQuestion, ListKind, due_export};
use crate::sheet::key;
use crate::{Api, ApiError};
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
    /// Every hose with its full history.
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
        ExportKind::Json => ("json", "application/json", json(api)?),
        ExportKind::Ics => {
            return due_export(api, DueExport { due: DueQuestion::default(), kind: ListKind::Ics }, &[]);
        }
    };
    Ok(File { name: format!("hoses.{ending}"), mime, bytes })
}

/// Every hose once, in the order of first fitting.
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
    #[derive(Serialize)]
    struct Hoses {
        hoses: Vec<Hose>,
    }
    let hoses = hoses(api)?.into_iter().map(|(_, hose)| hose).collect();
    serde_json::to_vec_pretty(&api.answer(Hoses { hoses })).map_err(|error| ApiError::input("", error))
}

fn rows(api: &mut Api) -> Result<Vec<Vec<String>>, ApiError> {
    let mut machines: HashMap<MachineId, (String, Option<f64>)> = HashMap::new();
    let register = api.register()?;
    for row in register.machines()? {
        let hours = register.machine(row.machine)?.and_then(|sheet| sheet.hours).map(|read| read.hours);
        machines.insert(row.machine, (row.sort, hours));
    }
    let mut rows = vec![column::ALL.iter().map(|name| (*name).to_owned()).collect()];
    for (stays, hose) in hoses(api)? {
        for stay in stays {
            let machine = stay.at.machine.and_then(|machine| machines.get(&machine));
            let cells = cells(&stay, &hose, machine);
            rows.push(column::ALL.iter().map(|name| cells.get(name).cloned().unwrap_or_default()).collect());
        }
    }
    Ok(rows)
}

/// The cells of one stay by column.
fn cells(stay: &Stay, hose: &Hose, machine: Option<&(String, Option<f64>)>) -> HashMap<&'static str, String> {
    let mut cells = HashMap::new();
    let mut put = |name: &'static str, value: Option<String>| {
        if let Some(value) = value {
            cells.insert(name, value);
        }
    };
    put(column::SITE, stay.at.site_name.clone());
    put(column::MACHINE, stay.at.machine_name.clone());
    put(column::KIND, machine.map(|(sort, _)| sort.clone()));
    put(column::MACHINE_HOURS, machine.and_then(|(_, hours)| hours.map(|hours| hours.to_string())));
    put(column::PLACE, stay.at.number.map(|number| number.to_string()));
    put(column::PLACE_NAME, stay.at.place_name.clone());
    put(column::CODE, Some(stay.code.to_string()));
    put(column::FITTED, stay.on_date.map(|day| day.to_string()));
    put(column::FITTED_HOURS, stay.on_hours.map(|hours| hours.to_string()));
    put(column::REMOVED, stay.off_date.map(|day| day.to_string()));
    put(column::REMOVED_HOURS, stay.off_hours.map(|hours| hours.to_string()));
    put(column::CAUSE, stay.cause.clone());
    put(column::NOTE, stay.note.clone());
    if let Some(made) = &hose.assembly {
        put_assembly(&made.record, &mut put);
    }
    cells
}

/// The cells of the hose itself.
fn put_assembly(assembly: &Assembly, mut put: impl FnMut(&'static str, Option<String>)) {
    let (spec, service) = (&assembly.spec, &assembly.service);
    put(column::LINE, service.line.map(|line| key(&line)));
    put(column::RELIEF, service.relief_bar.map(|Bar(bar)| bar.to_string()));
    put(column::WORKING, service.working_pressure_bar.map(|Bar(bar)| bar.to_string()));
    put(column::FLUID, service.fluid.clone());
    put(column::STANDARD, spec.hose.as_ref().map(|hose| hose.standard.clone()));
    put(column::TYPE, spec.hose.as_ref().map(|hose| hose.kind.clone()));
    put(column::DN, spec.hose.as_ref().map(|hose| Dn::to_string(&hose.dn)));
    put(column::COVER, spec.cover.map(|cover| key(&cover)));
    put(column::LENGTH, spec.overall_length_mm.map(|Millimetres(mm)| mm.to_string()));
    put(column::TURN, spec.turn_deg.map(|Degrees(deg)| deg.to_string()));
    put(column::HOSE_MADE, assembly.hose_made.map(|day| day.to_string()));
    put(column::ASSEMBLED, assembly.assembled.map(|day| day.to_string()));
    for (role, [family, size, gender, form]) in [
        (Role::A, [column::A_FAMILY, column::A_SIZE, column::A_GENDER, column::A_FORM]),
        (Role::B, [column::B_FAMILY, column::B_SIZE, column::B_GENDER, column::B_FORM]),
    ] {
        if let Some(end) = spec.end(role) {
            put(family, Some(end.family.clone()));
            put(size, Some(end.size.clone()));
            put(gender, end.gender.map(|gender| key(&gender)));
            put(form, end.form.clone());
        }
    }
}
