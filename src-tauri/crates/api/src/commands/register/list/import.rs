//! A hose list into the register: all rows or none.

use super::columns;
use super::plan::Plan;
use super::row::{Cells, Row};
use crate::{Answer, Api, ApiError};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{HashMap, HashSet};
use ts_rs::TS;

/// A list to be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Import {
    /// The file's name, for messages.
    pub name: String,
    /// Say what would be made and refused; change nothing.
    #[serde(default)]
    pub dry_run: bool,
}

/// What was, or would be, made of a list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Imported {
    /// Nothing was changed.
    pub dry_run: bool,
    /// Rows of the list.
    pub rows: usize,
    /// Sites that were new. Like the counts below, none where a row is refused: all rows or none.
    pub sites: usize,
    /// Machines that were new.
    pub machines: usize,
    /// Places that were new.
    pub places: usize,
    /// Hoses that were new.
    pub hoses: usize,
    /// Rows whose hose the register has already, by its code or, without one, by its place, the day it was
    /// fitted and its spec: left as it is.
    pub known: usize,
    /// Rows that can not be taken in, with the reason. Unless this is a dry run there are none.
    pub refused: Vec<RowRefused>,
}

/// A row that can not be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct RowRefused {
    /// Its number as a spreadsheet shows it.
    pub row: usize,
    /// Why, and what would be right.
    pub why: String,
}

/// Refused rows that a message names; the dry run lists them all.
const NAMED: usize = 5;

/// Takes in a list of hoses from CSV or XLSX, all rows or none.
///
/// # Errors
/// The file is no table, lacks a column, or has a row that can not be taken in.
pub fn import(api: &mut Api, asked: Import, list: &[u8]) -> Result<Answer<Imported>, ApiError> {
    let table = hosewright_papers::table::read(list, &asked.name)
        .map_err(|error| ApiError::input(&asked.name, error))?;
    let (rows, known, mut refused) = rows(api, &asked.name, &table)?;
    let mut plan = Plan::over(api)?;
    let count = rows.len() + known + refused.len();
    refused.extend(plan.add(api, rows)?);
    refused.sort_by_key(|refused| refused.row);
    if !refused.is_empty() && !asked.dry_run {
        return Err(refusal(&asked.name, &refused));
    }
    if !refused.is_empty() {
        plan.makes_nothing();
    } else if !asked.dry_run {
        let now = api.world.now();
        api.register()?.append(std::mem::take(&mut plan.events), now)?;
    }
    Ok(api.answer(Imported {
        dry_run: asked.dry_run,
        rows: count,
        sites: plan.sites_made,
        machines: plan.machines_made,
        places: plan.places_made,
        hoses: plan.hoses_made,
        known: known + plan.known,
        refused,
    }))
}

fn refusal(name: &str, refused: &[RowRefused]) -> ApiError {
    let first: Vec<String> =
        refused.iter().take(NAMED).map(|row| format!("\nrow {}: {}", row.row, row.why)).collect();
    let more = match refused.len().saturating_sub(NAMED) {
        0 => String::new(),
        more => format!("\nand {more} more, which a dry run lists"),
    };
    ApiError::input(name, format!("nothing was taken in{}{more}", first.concat()))
}

type Sorted = (Vec<Row>, usize, Vec<RowRefused>);

/// Reads all rows: those to be taken in, how many are known already, and those refused.
fn rows(api: &mut Api, name: &str, table: &[Vec<String>]) -> Result<Sorted, ApiError> {
    let catalogue = api.catalogue;
    let (head, body) = table.split_first().ok_or_else(|| ApiError::input(name, "the list is empty"))?;
    let names = columns_of(name, head)?;
    let (mut rows, mut known, mut refused) = (Vec::new(), 0, Vec::new());
    let mut codes = HashSet::new();
    for (at, cells) in
        body.iter().enumerate().filter(|(_, cells)| cells.iter().any(|cell| !cell.trim().is_empty()))
    {
        let row = at + 2;
        match Cells::new(&names, cells).read(row, catalogue) {
            Err(why) => refused.push(RowRefused { row, why }),
            Ok(read) => match read.code {
                Some(code) if !codes.insert(code) => {
                    refused.push(RowRefused { row, why: format!("code {code} stands in the list twice") });
                }
                Some(code) if api.register()?.hose(&code)?.is_some() => known += 1,
                _ => rows.push(read),
            },
        }
    }
    Ok((rows, known, refused))
}

/// Where each column stands. A column that the list has and we do not know is an error that names it.
fn columns_of(name: &str, head: &[String]) -> Result<HashMap<String, usize>, ApiError> {
    let mut names = HashMap::new();
    for (at, cell) in head.iter().enumerate() {
        let column = cell.trim().to_lowercase();
        if column.is_empty() {
            continue;
        }
        if !columns::ALL.contains(&column.as_str()) {
            let all = columns::ALL.join(", ");
            return Err(ApiError::input(
                name,
                format!("column \"{}\" is not known; the columns are {all}", cell.trim()),
            ));
        }
        names.insert(column, at);
    }
    Ok(names)
}
