//! A sheet of cells -> rows of a hose list.

use super::{Column, Row};
use crate::catalogue::{Catalogue, UnknownName};
use crate::print;
use crate::quantity::{Degrees, Dn};
use crate::sheet::cell::{CellError, dn, hours, pressure, sure_length};
use crate::sheet::{Cell, DayError, How, Part, Sheet, SheetError, SheetRefused, SheetRow, day};
use crate::spec::{Cover, EndSpec, Gender, HoseRef, Line, Role, Service, Spec};
use chrono::NaiveDate;
use serde::de::DeserializeOwned;
use serde_json::Value;
use std::cell::RefCell;
use std::collections::HashMap;
use std::hash::Hash;
use std::str::FromStr;
use thiserror::Error;

/// What a list holds: every row that is not blank is in one of these.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct ListRead {
    /// Rows that can be taken.
    pub rows: Vec<Row>,
    /// Rows that a person leaves out.
    pub left_out: Vec<usize>,
    /// Rows that can not be read.
    pub refused: Vec<SheetRefused<Column>>,
}

/// Why a cell can not be read.
#[derive(Debug, Clone, PartialEq, Error)]
enum Wrong {
    #[error("it is blank; it is needed")]
    Blank,
    #[error(transparent)]
    Cell(#[from] CellError),
    #[error(transparent)]
    Day(#[from] DayError),
    #[error(transparent)]
    Name(#[from] UnknownName),
    #[error("{0}")]
    Text(String),
    #[error("\"{0}\" is no number of a place, such as 14")]
    Place(String),
    #[error("\"{0}\" is none of {1}")]
    Choice(String, String),
    #[error("\"{0}\" is no hose of the tables; write standard, type and size in columns of their own")]
    NoHose(String),
    #[error("\"{0}\" may be {1}; write standard, type and size in columns of their own")]
    ManyHoses(String, String),
    #[error("{removed} is before {fitted}, when it was fitted")]
    Before { removed: NaiveDate, fitted: NaiveDate },
}

/// Family and size as they were written, and what the tables call them.
type EndsKnown = HashMap<[String; 2], Result<[String; 2], UnknownName>>;

type At = (Column, Wrong);

/// Reads the rows of one list. A list has many hoses of few kinds: each name is looked up once.
#[derive(Debug)]
pub struct Reader<'a> {
    catalogue: &'a Catalogue,
    today: NaiveDate,
    /// The hose's size stands in a column of dash sizes.
    dashes: bool,
    hoses: RefCell<HashMap<[String; 3], Result<HoseRef, At>>>,
    printed: RefCell<HashMap<String, Result<HoseRef, Wrong>>>,
    ends: RefCell<EndsKnown>,
}

/// What was found for a key before, or is found now.
fn once<K: Eq + Hash + Clone, V: Clone>(
    known: &RefCell<HashMap<K, V>>,
    key: K,
    find: impl FnOnce(&K) -> V,
) -> V {
    if let Some(found) = known.borrow().get(&key) {
        return found.clone();
    }
    let found = find(&key);
    known.borrow_mut().insert(key, found.clone());
    found
}

/// Reads a list. Every row that is not blank is taken, left out or refused with its reason.
///
/// # Errors
/// No rows; something that no row can be without is in no column.
pub fn read(
    catalogue: &Catalogue,
    cells: &[Vec<String>],
    how: &How<Column>,
    today: NaiveDate,
) -> Result<ListRead, SheetError<Column>> {
    let sheet = Sheet::of(cells, how, today)?;
    let reader = Reader::of(&sheet, catalogue, today);
    let mut read = ListRead { left_out: sheet.left_out(), ..ListRead::default() };
    for row in sheet.rows() {
        match reader.row(row) {
            Ok(row) => read.rows.push(row),
            Err(refused) => read.refused.push(refused),
        }
    }
    Ok(read)
}

impl<'a> Reader<'a> {
    /// For the rows of that sheet.
    pub fn of(sheet: &Sheet<'_, Column>, catalogue: &'a Catalogue, today: NaiveDate) -> Self {
        let dashes = sheet.heading(Column::Dn).is_some_and(|heading| heading.to_lowercase().contains("dash"));
        Self {
            catalogue,
            today,
            dashes,
            hoses: RefCell::default(),
            printed: RefCell::default(),
            ends: RefCell::default(),
        }
    }

    /// What a row says.
    ///
    /// # Errors
    /// Its column and why, where it can not be taken.
    pub fn row(&self, row: SheetRow<'_, Column>) -> Result<Row, SheetRefused<Column>> {
        self.read(row).map_err(|(column, wrong)| SheetRefused {
            row: row.number,
            column: Some(column),
            why: wrong.to_string(),
        })
    }

    fn read(&self, row: SheetRow<'_, Column>) -> Result<Row, At> {
        let (number, place_name) = place(row)?;
        let fitted = self.day(row, Column::Fitted, Part::Whole)?.ok_or((Column::Fitted, Wrong::Blank))?;
        let removed = self.day(row, Column::Removed, Part::Whole)?;
        if let Some(removed) = removed.filter(|removed| *removed < fitted) {
            return Err((Column::Removed, Wrong::Before { removed, fitted }));
        }
        Ok(Row {
            row: row.number,
            site: needed(row, Column::Site)?,
            machine: needed(row, Column::Machine)?,
            kind: row.text(Column::Kind).unwrap_or_else(|| "other".to_owned()).to_lowercase(),
            machine_hours: hours_in(row, Column::MachineHours)?,
            number,
            place_name,
            code: parsed(row, Column::Code)?,
            spec: self.spec(row)?,
            service: service(row)?,
            hose_made: self.day(row, Column::HoseMade, Part::MonthWillDo)?,
            assembled: self.day(row, Column::Assembled, Part::MonthWillDo)?,
            fitted,
            fitted_hours: hours_in(row, Column::FittedHours)?,
            removed,
            removed_hours: hours_in(row, Column::RemovedHours)?,
            cause: self.cause(row)?,
            note: row.text(Column::Note),
        })
    }

    fn day(&self, row: SheetRow<'_, Column>, column: Column, part: Part) -> Result<Option<NaiveDate>, At> {
        with(row, column, |cell| day(&cell.text, cell.days, part, self.today))
    }

    fn cause(&self, row: SheetRow<'_, Column>) -> Result<Option<String>, At> {
        let known = |cell: &Cell| {
            let code = cell.text.to_uppercase();
            if self.catalogue.causes.iter().any(|cause| cause.code == code) {
                return Ok(code);
            }
            let codes: Vec<&str> = self.catalogue.causes.iter().map(|cause| cause.code.as_ref()).collect();
            Err(Wrong::Text(format!("\"{}\" is no cause; there are {}", cell.text, codes.join(", "))))
        };
        with(row, Column::Cause, known)
    }

    /// The spec with its names as the tables have them.
    fn spec(&self, row: SheetRow<'_, Column>) -> Result<Spec, At> {
        use Column::{AFamily, AForm, AGender, ASize, BFamily, BForm, BGender, BSize};
        Ok(Spec {
            hose: Some(self.hose(row)?),
            ends: vec![
                self.end(row, Role::A, [AFamily, ASize, AGender, AForm])?,
                self.end(row, Role::B, [BFamily, BSize, BGender, BForm])?,
            ],
            adapters: Vec::new(),
            overall_length_mm: with(row, Column::Length, sure_length)?,
            turn_deg: parsed::<Degrees>(row, Column::Turn)?,
            cover: choice::<Cover>(row, Column::Cover)?,
        })
    }

    /// From its own columns, or where one of these is blank from the text that says all.
    fn hose(&self, row: SheetRow<'_, Column>) -> Result<HoseRef, At> {
        let own =
            [Column::Standard, Column::Type, Column::Dn].iter().all(|column| row.get(*column).is_some());
        match row.text(Column::Hose) {
            Some(text) if !own => {
                let found = once(&self.printed, text, |text| self.printed(text));
                found.map_err(|wrong| (Column::Hose, wrong))
            }
            None if !row.has(Column::Standard) => Err((Column::Hose, Wrong::Blank)),
            _ => {
                let [standard, kind] = [needed(row, Column::Standard)?, needed(row, Column::Type)?];
                let named = [standard, kind, needed(row, Column::Dn)?];
                once(&self.hoses, named, |[standard, kind, size]| self.named(standard, kind, size))
            }
        }
    }

    fn named(&self, standard: &str, kind: &str, size: &str) -> Result<HoseRef, At> {
        let found = self.catalogue.hose_type(standard, kind).map_err(|error| {
            let column = if error.what == "standard" { Column::Standard } else { Column::Type };
            (column, Wrong::from(error))
        })?;
        let bare = size.chars().all(|letter| letter.is_ascii_digit());
        // A bare 10 in a column of dash sizes is the dash, and DN 10 is another hose.
        let size = if self.dashes && bare { format!("-{size}") } else { size.to_owned() };
        let dn = dn(&size, self.catalogue, &found.standard, &found.kind);
        let dn = dn.map_err(|error| (Column::Dn, Wrong::from(error)))?;
        Ok(HoseRef::named(&found.standard, &found.kind, dn))
    }

    /// The one hose that a text means.
    fn printed(&self, text: &str) -> Result<HoseRef, Wrong> {
        let printed = print::read(self.catalogue, text).map_err(|error| Wrong::Text(error.to_string()))?;
        if let (Some(standard), Some(kind), Some(dn)) = (&printed.standard, &printed.kind, printed.dn) {
            return Ok(HoseRef::named(standard, kind, dn));
        }
        let said: Vec<String> = printed
            .candidates
            .iter()
            .map(|hose| format!("{} {} DN{}", hose.standard, hose.kind, Dn::to_string(&hose.dn)))
            .collect();
        match said.len() {
            0 => Err(Wrong::NoHose(text.to_owned())),
            _ => Err(Wrong::ManyHoses(text.to_owned(), shortened(&said))),
        }
    }

    fn end(
        &self,
        row: SheetRow<'_, Column>,
        role: Role,
        [family, size, gender, form]: [Column; 4],
    ) -> Result<EndSpec, At> {
        let named = [needed(row, family)?, needed(row, size)?];
        let found = once(&self.ends, named, |[family, size]| {
            let found = self.catalogue.connection(family, size)?;
            Ok([found.family().to_owned(), found.size().to_owned()])
        });
        let [found_family, found_size] = found.map_err(|error| {
            let column = if error.what == "family" { family } else { size };
            (column, Wrong::from(error))
        })?;
        Ok(EndSpec {
            role,
            family: found_family,
            size: found_size,
            gender: choice::<Gender>(row, gender)?,
            form: row.text(form),
            drop_mm: None,
            cutoff_mm: None,
            rating_bar: None,
        })
    }
}

/// The first few of many.
fn shortened(said: &[String]) -> String {
    const SHOWN: usize = 3;
    let first = said.iter().take(SHOWN).map(String::as_str).collect::<Vec<_>>().join(" or ");
    if said.len() > SHOWN { format!("{first} or another") } else { first }
}

/// The place's number and name: `14`, `#14`, `Pos. 14`; or its name alone.
fn place(row: SheetRow<'_, Column>) -> Result<(Option<u32>, String), At> {
    let name = row.text(Column::PlaceName);
    let Some(text) = row.text(Column::Place) else {
        let column = if row.has(Column::PlaceName) { Column::PlaceName } else { Column::Place };
        return name.map(|name| (None, name)).ok_or((column, Wrong::Blank));
    };
    let figures = text.trim_start_matches(|c: char| !c.is_ascii_digit() && c != '-');
    let number = figures.parse().map_err(|_| (Column::Place, Wrong::Place(text.clone())))?;
    Ok((Some(number), name.unwrap_or(text)))
}

fn service(row: SheetRow<'_, Column>) -> Result<Service, At> {
    Ok(Service {
        line: choice::<Line>(row, Column::Line)?,
        relief_bar: with(row, Column::Relief, pressure)?,
        working_pressure_bar: with(row, Column::Working, pressure)?,
        fluid: row.text(Column::Fluid),
        ..Service::default()
    })
}

fn needed(row: SheetRow<'_, Column>, column: Column) -> Result<String, At> {
    row.text(column).ok_or((column, Wrong::Blank))
}

fn with<T, E: Into<Wrong>>(
    row: SheetRow<'_, Column>,
    column: Column,
    read: impl Fn(&Cell) -> Result<T, E>,
) -> Result<Option<T>, At> {
    row.get(column).map(|cell| read(&cell).map_err(|error| (column, error.into()))).transpose()
}

fn hours_in(row: SheetRow<'_, Column>, column: Column) -> Result<Option<f64>, At> {
    with(row, column, |cell| hours(&cell.text))
}

fn parsed<T: FromStr<Err: std::fmt::Display>>(
    row: SheetRow<'_, Column>,
    column: Column,
) -> Result<Option<T>, At> {
    with(row, column, |cell| cell.text.parse().map_err(|error: T::Err| Wrong::Text(error.to_string())))
}

/// One of the names that a choice of the contract has, such as `return` or `female`.
fn choice<T: DeserializeOwned>(row: SheetRow<'_, Column>, column: Column) -> Result<Option<T>, At> {
    with(row, column, |cell| {
        let name = cell.text.to_lowercase().replace(' ', "-");
        serde_json::from_value(Value::String(name)).map_err(|error| {
            let error = error.to_string();
            let known = error.split_once("expected ").map_or(error.as_str(), |(_, known)| known);
            Wrong::Choice(cell.text.clone(), known.replace('`', "").trim_start_matches("one of ").to_owned())
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(rows: &[&str]) -> Vec<Vec<String>> {
        rows.iter().map(|row| row.split(';').map(str::to_owned).collect()).collect()
    }

    const HEAD: &str =
        "Standort;Maschine;Bezeichnung;Schlauch;End A;Size A;End B;Size B;L\u{e4}nge;Betriebsdruck;Eingebaut";

    fn list(rows: &[&str]) -> Result<ListRead, SheetError<Column>> {
        let all: Vec<&str> = std::iter::once(HEAD).chain(rows.iter().copied()).collect();
        let today = NaiveDate::from_ymd_opt(2026, 11, 26).unwrap();
        read(Catalogue::embedded(), &cells(&all), &How::default(), today)
    }

    #[test]
    fn a_messy_row_is_read_with_its_own_units_and_names() {
        let read = list(&[
            "Nord;Bagger 3;Ausleger links;EN 853 2SN DN 16;ORFS;-10;JIC 37 flare;-10;1240 mm;3000 psi;25.03.2024",
        ]);
        let read = read.unwrap();
        assert_eq!(read.refused, []);
        let row = &read.rows[0];
        assert_eq!((row.number, row.place_name.as_str()), (None, "Ausleger links"));
        assert_eq!(row.spec.hose, Some(HoseRef::named("EN 853", "2SN", "16".parse().unwrap())));
        assert!((row.service.working_pressure_bar.unwrap().get() - 206.84).abs() < 0.01);
        assert_eq!(row.fitted.to_string(), "2024-03-25");
    }

    #[test]
    fn what_is_not_sure_is_refused_with_what_would_be_right() {
        let good =
            "Nord;Bagger 3;Ausleger links;EN 853 2SN DN 16;ORFS;-10;ORFS;-10;1240 mm;207 bar;25.03.2024";
        for (from, to, column, why) in [
            ("25.03.2024", "03/04/2024", Column::Fitted, "2024-04-03 or 2024-03-04"),
            ("25.03.2024", "03/2024", Column::Fitted, "says no day"),
            ("25.03.2024", "", Column::Fitted, "blank"),
            ("1240 mm", "1240", Column::Length, "mm or in"),
            ("1240 mm", "1.240 mm", Column::Length, "1.240 or 1240"),
            ("207 bar", "3,000 psi", Column::Working, "3.000 or 3000"),
            ("207 bar", "207", Column::Working, "bar, psi or MPa"),
            ("EN 853 2SN DN 16", "rubber", Column::Hose, "no hose"),
            ("ORFS;-10;ORFS", "bayonet;-10;ORFS", Column::AFamily, "bayonet"),
        ] {
            let read = list(&[&good.replacen(from, to, 1)]).unwrap();
            let [refused] = read.refused.as_slice() else { panic!("{to}: {read:?}") };
            assert_eq!(refused.column, Some(column), "{to}: {}", refused.why);
            assert!(refused.why.contains(why), "{to}: {}", refused.why);
        }
    }
}
