//! A hose list into the register: all rows or none.

use super::names::Names;
use super::plan::{Became, Plan};
use crate::commands::supplier::cells;
use crate::{Answer, Api, ApiError};
use hosewright_core::hose_list::{Column, ListRead, Reader, Row};
use hosewright_core::sheet::{Headings, How, Matched, Sheet, SheetRefused, headings};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, HashSet};
use ts_rs::TS;

/// A list to be looked at.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct ListMatchQuestion {
    /// The file's name, for messages.
    pub name: String,
    /// The row of its headings, from 1; found by itself without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub header_row: Option<usize>,
    /// What a person says they are, to see what is missing and asked then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub columns: Option<Vec<Matched<Column>>>,
}

/// What the columns of a list seem to be: a proposal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct ListMatches {
    /// The headings.
    #[serde(flatten)]
    #[ts(flatten)]
    pub headings: Headings<Column>,
    /// Everything that a column can be.
    pub choices: Vec<Column>,
}

/// What the columns of a list seem to be.
///
/// # Errors
/// The file is no table.
pub fn matches(
    api: &mut Api,
    asked: ListMatchQuestion,
    file: &[u8],
) -> Result<Answer<ListMatches>, ApiError> {
    let cells = cells(&asked.name, file)?;
    let headings = headings(&cells, asked.header_row, asked.columns.as_deref(), api.today());
    Ok(api.answer(ListMatches { headings, choices: Column::ALL.to_vec() }))
}

/// A list to be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Import {
    /// The file's name, for messages.
    pub name: String,
    /// Say what would be made and refused; change nothing.
    #[serde(default)]
    pub dry_run: bool,
    /// The row of its headings, from 1; found by itself without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub header_row: Option<usize>,
    /// What the columns are; as their headings propose without. A heading that nothing proposes is an error then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub columns: Option<Vec<Matched<Column>>>,
    /// What stands in no column and holds for every row, such as the site.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    #[ts(type = "Partial<Record<ListColumn, string>>")]
    pub fixed: BTreeMap<Column, String>,
    /// Rows that are left out, as a spreadsheet numbers them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub leave_out: Vec<usize>,
}

/// What was, or would be, made of a list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Imported {
    /// Nothing was changed.
    pub dry_run: bool,
    /// Rows of the list.
    pub rows: usize,
    /// Sites that were new. Like the counts below, of the rows that are not refused: while one is, a dry run tells what
    /// they would make without it, and nothing is taken in.
    pub sites: usize,
    /// Machines that were new.
    pub machines: usize,
    /// Places that were new.
    pub places: usize,
    /// Hoses that were new.
    pub hoses: usize,
    /// Hoses that the register has on a machine and the list off it: taken off.
    pub changed: usize,
    /// Rows whose hose the register has already, by its code or, without one, by its place, the day it was
    /// fitted and its spec: left as it is.
    pub known: usize,
    /// Rows that can not be taken in, with the reason. Unless this is a dry run there are none.
    pub refused: Vec<RowRefused>,
    /// Every row that is not blank, in their order, with what becomes of it.
    pub told: Vec<RowTold>,
}

/// A row that can not be taken in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct RowRefused {
    /// Its number as a spreadsheet shows it.
    pub row: usize,
    /// Why, and what would be right; begins with the column, as the list calls it, where one is wrong.
    pub why: String,
}

/// What becomes of a row.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct RowTold {
    /// Its number as a spreadsheet shows it.
    pub row: usize,
    /// What becomes of it.
    pub is: RowIs,
    /// Site, machine and place as far as it could be read, or why it is refused.
    pub what: String,
}

/// What becomes of a row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum RowIs {
    /// Its hose is new.
    Made,
    /// Its hose is taken off.
    Changed,
    /// It is known already.
    Known,
    /// It can not be taken in.
    Refused,
    /// The person leaves it out.
    LeftOut,
}

/// Refused rows that a message names; the dry run lists them all.
const NAMED: usize = 5;

/// Rows after which it is looked whether somebody stopped it.
const LOOK_AFTER: usize = 256;

/// Takes in a list of hoses from CSV or XLSX, all rows or none. It can be stopped while it goes on; then nothing was
/// taken in.
///
/// # Errors
/// The file is no table, lacks a column, has one that is not known, or a row that can not be taken in; it was stopped.
pub fn import(api: &mut Api, asked: Import, list: &[u8]) -> Result<Answer<Imported>, ApiError> {
    let cells = cells(&asked.name, list)?;
    let matched = asked.columns.is_some();
    let how = How {
        header_row: asked.header_row,
        columns: asked.columns,
        fixed: asked.fixed,
        leave_out: asked.leave_out,
    };
    let sheet = Sheet::of(&cells, &how, api.today()).map_err(|error| ApiError::input(&asked.name, error));
    if !matched {
        all_known(&asked.name, &headings(&cells, how.header_row, None, api.today()))?;
    }
    let sheet = sheet?;
    let names = Names::of(&sheet, &api.words);
    let read = rows(api, &sheet)?;
    let (told, mut plan) = planned(api, read, &names)?;
    let refused = refused(&told);
    if !refused.is_empty() && !asked.dry_run {
        return Err(refusal(&asked.name, &refused));
    }
    if !asked.dry_run {
        keep(api, &mut plan)?;
    }
    let count = |is: RowIs| told.iter().filter(|row| row.is == is).count();
    Ok(api.answer(Imported {
        dry_run: asked.dry_run,
        rows: told.len(),
        sites: plan.sites_made,
        machines: plan.machines_made,
        places: plan.places_made,
        hoses: plan.hoses_made,
        changed: plan.changed,
        known: count(RowIs::Known),
        refused,
        told,
    }))
}

/// A heading that nothing is known of is named, unless a person said what the columns are.
fn all_known(name: &str, headings: &Headings<Column>) -> Result<(), ApiError> {
    match headings.columns.iter().find(|column| column.is.is_none() && !column.heading.is_empty()) {
        None => Ok(()),
        Some(column) => {
            let all = Column::ALL.iter().map(|column| column.name()).collect::<Vec<_>>().join(", ");
            let why = format!(
                "column \"{}\" is not known; match the columns, or name it one of {all}",
                column.heading
            );
            Err(ApiError::input(name, why))
        }
    }
}

fn refused(told: &[RowTold]) -> Vec<RowRefused> {
    let refused = told.iter().filter(|row| row.is == RowIs::Refused);
    refused.map(|row| RowRefused { row: row.row, why: row.what.clone() }).collect()
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

/// Reads the rows of a list.
fn rows(api: &Api, sheet: &Sheet<'_, Column>) -> Result<ListRead, ApiError> {
    let reader = Reader::of(sheet, api.catalogue, api.today());
    let mut read = ListRead { left_out: sheet.left_out(), ..ListRead::default() };
    let going = api.work.begin(sheet.headings.rows);
    for (at, row) in sheet.rows().enumerate() {
        if at.is_multiple_of(LOOK_AFTER) && !going.at(at) {
            return Err(hosewright_store::Error::Stopped.into());
        }
        match reader.row(row) {
            Ok(row) => read.rows.push(row),
            Err(refused) => read.refused.push(refused),
        }
    }
    Ok(read)
}

/// What becomes of every row, and the events that do it.
fn planned(api: &mut Api, read: ListRead, names: &Names) -> Result<(Vec<RowTold>, Plan), ApiError> {
    let mut told: Vec<RowTold> = read.left_out.iter().map(|row| left_out(*row)).collect();
    told.extend(read.refused.iter().map(|refused| unreadable(refused, names)));
    let mut codes = HashSet::new();
    let (twice, once): (Vec<Row>, Vec<Row>) =
        read.rows.into_iter().partition(|row| row.code.is_some_and(|code| !codes.insert(code)));
    told.extend(twice.iter().filter_map(|row| {
        let code = row.code?;
        let what = format!("code {code} stands in the list twice");
        Some(RowTold { row: row.row, is: RowIs::Refused, what })
    }));
    let mut plan = Plan::over(api)?;
    for (row, what, became) in plan.add(api, once, names)? {
        told.push(match became {
            Ok(became) => RowTold { row, is: is(became), what },
            Err(why) => RowTold { row, is: RowIs::Refused, what: why },
        });
    }
    told.sort_by_key(|row| row.row);
    Ok((told, plan))
}

fn is(became: Became) -> RowIs {
    match became {
        Became::Made => RowIs::Made,
        Became::Changed => RowIs::Changed,
        Became::Known => RowIs::Known,
    }
}

fn left_out(row: usize) -> RowTold {
    RowTold { row, is: RowIs::LeftOut, what: String::new() }
}

fn unreadable(refused: &SheetRefused<Column>, names: &Names) -> RowTold {
    let column = refused.column.map_or_else(String::new, |column| format!("{}: ", names.of_column(column)));
    RowTold { row: refused.row, is: RowIs::Refused, what: format!("{column}{}", refused.why) }
}

/// Writes the events down, all or none.
fn keep(api: &mut Api, plan: &mut Plan) -> Result<(), ApiError> {
    let events = std::mem::take(&mut plan.events);
    let (now, work) = (api.world.now(), api.work());
    let going = work.begin(events.len());
    let goes_on = |written: usize| !written.is_multiple_of(LOOK_AFTER) || going.at(written);
    api.register()?.append_while(events, now, goes_on)?;
    Ok(())
}
