//! Which column of a sheet is what, as far as its headings say: a proposal that a person takes or changes.

use super::cell::{is_bare, tidy};
use super::day::{DayError, Part, day, speaks_for};
use super::{Asks, Column, DayOrder, Holds, Matched, Unit};
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// The headings of a sheet and what they seem to be.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "SheetHeadings")]
pub struct Headings<C> {
    /// The row they stand in, from 1 as a spreadsheet shows it.
    pub header_row: usize,
    /// Rows beneath it that are not blank.
    pub rows: usize,
    /// The columns, blank ones left out.
    pub columns: Vec<HeadingFound<C>>,
    /// What no row can be without and no column is: a column is chosen for it, or one value given for all rows.
    pub missing: Vec<C>,
}

/// A column of a sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[ts(rename = "SheetHeading")]
pub struct HeadingFound<C> {
    /// Its number, from 0.
    pub column: usize,
    /// Its heading as it stands there.
    pub heading: String,
    /// What it seems to be; none where nothing fits.
    pub is: Option<C>,
    /// The units that its bare numbers can have; none of what is no length or pressure.
    pub units: Vec<Unit>,
    /// The unit that was said, or stands in its heading.
    pub unit: Option<Unit>,
    /// Which stands first in its days: as was said, or where its own days can be read one way only.
    pub days: Option<DayOrder>,
    /// What a person must still say before it can be read.
    pub asks: Option<Asks>,
    /// Its first cells.
    pub examples: Vec<String>,
}

/// How far down the headings are looked for: titles and notes stand above them.
const LOOKED: usize = 30;

/// Cells of a column that are shown.
const EXAMPLES: usize = 3;

/// Finds the headings, in the row given or in the one that most of them are known of, and what they seem to be; or, where a
/// person said what the columns are, what is missing and asked then.
pub fn headings<C: Column>(
    cells: &[Vec<String>],
    header_row: Option<usize>,
    said: Option<&[Matched<C>]>,
    today: NaiveDate,
) -> Headings<C> {
    let at = match header_row {
        Some(row) => row.saturating_sub(1),
        None => likeliest::<C>(cells),
    };
    let head = cells.get(at).map(Vec::as_slice).unwrap_or_default();
    let body = || cells.iter().skip(at + 1).filter(|row| row.iter().any(|cell| !cell.trim().is_empty()));
    let proposed = proposed::<C>(head);
    let columns = head.iter().zip(&proposed).enumerate().map(|(column, (heading, proposed))| {
        let filled = || {
            let cells = body().filter_map(move |row| row.get(column));
            cells.map(|cell| cell.trim()).filter(|cell| !cell.is_empty())
        };
        let said = said.map(|said| said.iter().find(|matched| matched.column == column));
        let is = said.map_or(*proposed, |said| said.map(|matched| matched.is));
        let said = said.flatten();
        let holds = is.map(C::holds);
        let unit = said.and_then(|matched| matched.unit).or_else(|| unit(heading));
        let unit = unit.filter(|unit| holds.is_some_and(|holds| holds.units().contains(unit)));
        let (days, asks) = match holds {
            Some(Holds::Day) => match said.and_then(|matched| matched.days) {
                Some(days) => (Some(days), None),
                None => order(filled(), today),
            },
            Some(holds) => (None, asks_unit::<C>(holds, unit, filled()).then_some(Asks::Unit)),
            None => (None, None),
        };
        HeadingFound {
            column,
            heading: heading.trim().to_owned(),
            is,
            units: holds.map(Holds::units).unwrap_or_default().to_vec(),
            unit,
            days,
            asks,
            examples: filled().take(EXAMPLES).map(str::to_owned).collect(),
        }
    });
    let columns: Vec<HeadingFound<C>> =
        columns.filter(|column| !column.heading.is_empty() || !column.examples.is_empty()).collect();
    let present: Vec<C> = columns.iter().filter_map(|column| column.is).collect();
    Headings { header_row: at + 1, rows: body().count(), missing: C::missing(&present), columns }
}

impl<C: Column> Headings<C> {
    /// The columns as the headings propose them.
    pub fn matched(&self) -> Vec<Matched<C>> {
        let known = self.columns.iter().filter_map(|column| Some((column, column.is?)));
        known
            .map(|(found, is)| Matched { column: found.column, is, unit: found.unit, days: found.days })
            .collect()
    }
}

/// Which stands first in the days of a column: what its own days allow. Where they allow both, or contradict each other, a
/// person is asked.
fn order<'a>(cells: impl Iterator<Item = &'a str>, today: NaiveDate) -> (Option<DayOrder>, Option<Asks>) {
    let (mut day_first, mut month_first, mut either) = (false, false, false);
    for cell in cells {
        match speaks_for(cell, today) {
            Some(DayOrder::DayFirst) => day_first = true,
            Some(DayOrder::MonthFirst) => month_first = true,
            None => either |= matches!(day(cell, None, Part::Whole, today), Err(DayError::Either { .. })),
        }
    }
    match (day_first, month_first) {
        (true, false) => (Some(DayOrder::DayFirst), None),
        (false, true) => (Some(DayOrder::MonthFirst), None),
        (true, true) => (None, Some(Asks::Days)),
        (false, false) => (None, either.then_some(Asks::Days)),
    }
}

fn asks_unit<'a, C: Column>(
    holds: Holds,
    unit: Option<Unit>,
    mut cells: impl Iterator<Item = &'a str>,
) -> bool {
    let bare_is_known = holds == Holds::Length && C::BARE_LENGTH.is_some();
    unit.is_none() && !holds.units().is_empty() && !bare_is_known && cells.any(|cell| is_bare(&tidy(cell)))
}

fn likeliest<C: Column>(cells: &[Vec<String>]) -> usize {
    let known = |row: &Vec<String>| proposed::<C>(row).iter().flatten().count();
    let mut best = (0, 0);
    for (at, row) in cells.iter().enumerate().take(LOOKED) {
        let count = known(row);
        if count > best.1 {
            best = (at, count);
        }
    }
    best.0
}

/// What each heading seems to be; no two are the same.
fn proposed<C: Column>(head: &[String]) -> Vec<Option<C>> {
    let mut taken = Vec::new();
    head.iter()
        .map(|heading| {
            let is = C::meant(heading, &plain(heading)).filter(|column| !taken.contains(column))?;
            taken.push(is);
            Some(is)
        })
        .collect()
}

/// A heading in words: what stands in brackets, signs, capitals and units are left out.
fn plain(heading: &str) -> String {
    let mut depth = 0_usize;
    let mut out = String::new();
    for letter in heading.to_lowercase().chars() {
        match letter {
            '(' | '[' => depth += 1,
            ')' | ']' => depth = depth.saturating_sub(1),
            _ if depth > 0 => {}
            letter if letter.is_alphanumeric() => out.push(letter),
            _ => out.push(' '),
        }
    }
    let units = ["mm", "in", "inch", "inches", "zoll", "bar", "psi", "mpa", "deg"];
    out.split_whitespace().filter(|word| !units.contains(word)).collect::<Vec<_>>().join(" ")
}

/// The unit that stands in a heading; none where two do, which says nothing of a bare number.
fn unit(heading: &str) -> Option<Unit> {
    let heading = heading.to_lowercase();
    let words: Vec<&str> = heading.split(|c: char| !c.is_alphanumeric()).collect();
    let has = |names: &[&str]| names.iter().any(|name| words.contains(name));
    let found = [
        (has(&["mm"]), Unit::Mm),
        (has(&["in", "inch", "inches", "zoll"]) || heading.contains('"'), Unit::In),
        (has(&["bar"]), Unit::Bar),
        (has(&["psi"]), Unit::Psi),
        (has(&["mpa"]), Unit::Mpa),
    ];
    let mut units = found.into_iter().filter(|(has, _)| *has).map(|(_, unit)| unit);
    match (units.next(), units.next()) {
        (Some(unit), None) => Some(unit),
        _ => None,
    }
}
