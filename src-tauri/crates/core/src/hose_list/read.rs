//! A sheet of cells -> rows of a hose list.

use super::end_words::{self, EndWords};
use super::{Column, Row};
use crate::catalogue::{Catalogue, UnknownName};
use crate::print;
use crate::quantity::{Degrees, Dn, Millimetres};
use crate::sheet::cell::{CellError, dn, hours, pressure, sure_length};
use crate::sheet::{Cell, DayError, How, Part, Sheet, SheetError, SheetRefused, SheetRow, day};
use crate::spec::{Cover, EndSpec, Gender, HoseRef, Line, Role, Service, Spec};
use chrono::{Datelike, NaiveDate};
use serde::de::DeserializeOwned;
use serde_json::Value;
use std::cell::RefCell;
use std::collections::HashMap;
use std::hash::Hash;
use std::ops::RangeInclusive;
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
    #[error("\"{0}\" is no end of the tables; write family and size in columns of their own")]
    NoEnd(String),
    #[error("\"{0}\" may be {1}; write family and size in columns of their own")]
    ManyEnds(String, String),
    #[error("{0} is still to come")]
    ToCome(NaiveDate),
    #[error("{day} is before {other}, when it was {what}")]
    Before { day: NaiveDate, other: NaiveDate, what: &'static str },
    #[error("no hose assembly is {0:.0} mm long; is its unit right?")]
    Length(f64),
    #[error("its size is said to be {said}, and \"{text}\" is DN{dn}")]
    OtherSize { text: String, dn: Dn, said: String },
}

/// What was found for what was written, so that it is looked up once.
type Known<K, V, E> = RefCell<HashMap<K, Result<V, E>>>;

type At = (Column, Wrong);

/// Shortest and longest hose assembly that a list is believed, in mm (common practice: two ferrules and hose between them;
/// a line to a boom's end). A figure beyond is most often one of another unit.
const LENGTHS: RangeInclusive<f64> = 100.0..=50_000.0;

/// Reads the rows of one list. A list has many hoses of few kinds: each name is looked up once.
#[derive(Debug)]
pub struct Reader<'a> {
    catalogue: &'a Catalogue,
    today: NaiveDate,
    /// The hose's size stands in a column of dash sizes.
    dashes: bool,
    hoses: Known<[String; 3], HoseRef, At>,
    printed: Known<[Option<String>; 2], HoseRef, At>,
    ends: Known<[String; 2], [String; 2], UnknownName>,
    ends_in_words: Known<String, EndWords, Vec<[String; 2]>>,
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
            ends_in_words: RefCell::default(),
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
        let hose_made = self.day(row, Column::HoseMade, Part::MonthWillDo)?;
        let assembled = self.day(row, Column::Assembled, Part::MonthWillDo)?;
        in_order((Column::Removed, removed), Some(fitted), "fitted")?;
        in_order((Column::Fitted, Some(fitted)), assembled, "assembled")?;
        in_order((Column::Fitted, Some(fitted)), hose_made, "made")?;
        // Of both the year alone may be known: its first day is taken.
        let in_a_later_year = |made: &NaiveDate| assembled.is_some_and(|day| day.year() < made.year());
        in_order((Column::Assembled, assembled), hose_made.filter(in_a_later_year), "made")?;
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
            hose_made,
            assembled,
            fitted,
            fitted_hours: hours_in(row, Column::FittedHours)?,
            removed,
            removed_hours: hours_in(row, Column::RemovedHours)?,
            cause: self.cause(row)?,
            note: row.text(Column::Note),
        })
    }

    fn day(&self, row: SheetRow<'_, Column>, column: Column, part: Part) -> Result<Option<NaiveDate>, At> {
        with(row, column, |cell| match day(&cell.text, cell.days, part, self.today)? {
            day if day > self.today => Err(Wrong::ToCome(day)),
            day => Ok(day),
        })
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
            overall_length_mm: with(row, Column::Length, assembly_length)?,
            turn_deg: parsed::<Degrees>(row, Column::Turn)?,
            cover: choice::<Cover>(row, Column::Cover)?,
        })
    }

    /// From its own columns, or where one of these is blank from the text that says all, or all but the size.
    fn hose(&self, row: SheetRow<'_, Column>) -> Result<HoseRef, At> {
        let own =
            [Column::Standard, Column::Type, Column::Dn].iter().all(|column| row.get(*column).is_some());
        match row.text(Column::Hose) {
            Some(text) if !own => once(&self.printed, [Some(text), row.text(Column::Dn)], |[text, size]| {
                self.printed(text.as_deref().unwrap_or_default(), size.as_deref())
            }),
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

    /// The one hose that a text means, with the size of a column of its own where there is one.
    fn printed(&self, text: &str, size: Option<&str>) -> Result<HoseRef, At> {
        let printed = print::read(self.catalogue, text)
            .map_err(|error| (Column::Hose, Wrong::Text(error.to_string())))?;
        if let (Some(standard), Some(kind)) = (&printed.standard, &printed.kind) {
            let of_size = size.map(|size| self.named(standard, kind, size)).transpose()?;
            match (printed.dn, of_size) {
                (Some(dn), Some(of_size)) if of_size.dn != dn => {
                    let said = size.unwrap_or_default().to_owned();
                    return Err((Column::Dn, Wrong::OtherSize { text: text.to_owned(), dn, said }));
                }
                (Some(dn), _) => return Ok(HoseRef::named(standard, kind, dn)),
                (None, Some(of_size)) => return Ok(of_size),
                (None, None) => {}
            }
        }
        let said: Vec<String> = printed
            .candidates
            .iter()
            .map(|hose| format!("{} {} DN{}", hose.standard, hose.kind, Dn::to_string(&hose.dn)))
            .collect();
        let wrong = match said.len() {
            0 => Wrong::NoHose(text.to_owned()),
            _ => Wrong::ManyHoses(text.to_owned(), shortened(&said)),
        };
        Err((Column::Hose, wrong))
    }

    fn end(
        &self,
        row: SheetRow<'_, Column>,
        role: Role,
        [family, size, gender, form]: [Column; 4],
    ) -> Result<EndSpec, At> {
        let end = match row.text(size) {
            Some(_) => self.end_in_columns(row, family, size)?,
            None => self.end_in_words(row, family, size)?,
        };
        let [named_family, named_size] = end.named;
        Ok(EndSpec {
            role,
            family: named_family,
            size: named_size,
            gender: choice::<Gender>(row, gender)?.or(end.gender),
            form: row.text(form).or(end.form),
            drop_mm: None,
            cutoff_mm: None,
            rating_bar: None,
        })
    }

    fn end_in_columns(
        &self,
        row: SheetRow<'_, Column>,
        family: Column,
        size: Column,
    ) -> Result<EndWords, At> {
        let named = [needed(row, family)?, needed(row, size)?];
        let found = once(&self.ends, named, |[family, size]| {
            let found = self.catalogue.connection(family, size)?;
            Ok([found.family().to_owned(), found.size().to_owned()])
        });
        let named = found.map_err(|error| {
            let column = if error.what == "family" { family } else { size };
            (column, Wrong::from(error))
        })?;
        Ok(EndWords { named, gender: None, form: None })
    }

    /// The family's cell says the size too.
    fn end_in_words(&self, row: SheetRow<'_, Column>, family: Column, size: Column) -> Result<EndWords, At> {
        let text = needed(row, family)?;
        let found = once(&self.ends_in_words, text.clone(), |text| end_words::read(self.catalogue, text));
        found.map_err(|several| match several.is_empty() {
            true if self.catalogue.families_named(&text).is_ok() => (size, Wrong::Blank),
            true => (family, Wrong::NoEnd(text)),
            false => {
                let said: Vec<String> = several.iter().map(|named| named.join(" ")).collect();
                (family, Wrong::ManyEnds(text, shortened(&said)))
            }
        })
    }
}

/// Of two days that can not be the other way round one is a slip.
fn in_order(
    (column, day): (Column, Option<NaiveDate>),
    other: Option<NaiveDate>,
    what: &'static str,
) -> Result<(), At> {
    match (day, other) {
        (Some(day), Some(other)) if day < other => Err((column, Wrong::Before { day, other, what })),
        _ => Ok(()),
    }
}

fn assembly_length(cell: &Cell) -> Result<Millimetres, Wrong> {
    let length = sure_length(cell)?;
    if LENGTHS.contains(&length.get()) { Ok(length) } else { Err(Wrong::Length(length.get())) }
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
            ("1240 mm", "48 mm", Column::Length, "48 mm long"),
            ("1240 mm", "3000 in", Column::Length, "76200 mm long"),
            ("25.03.2024", "25.03.2027", Column::Fitted, "still to come"),
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

    #[test]
    fn days_that_can_not_follow_each_other_are_refused_and_a_month_or_year_alone_is_not() {
        let head = format!("{HEAD};Herstelldatum;Konfektioniert");
        let row = "Nord;Bagger 3;Ausleger;EN 853 2SN DN 16;ORFS;-10;ORFS;-10;1240 mm;207 bar;25.03.2024";
        let today = NaiveDate::from_ymd_opt(2026, 11, 26).unwrap();
        for (made, assembled, refused) in [
            ("15.02.2024", "2024", None),
            ("2024", "2024", None),
            ("03/2024", "03/2024", None),
            ("26.03.2024", "", Some(Column::Fitted)),
            ("", "26.03.2024", Some(Column::Fitted)),
            ("2024", "2023", Some(Column::Assembled)),
        ] {
            let list = cells(&[&head, &format!("{row};{made};{assembled}")]);
            let read = read(Catalogue::embedded(), &list, &How::default(), today).unwrap();
            let why = read.refused.first().map(|refused| refused.column);
            assert_eq!(why, refused.map(Some), "made {made}, assembled {assembled}: {:?}", read.refused);
        }
    }

    #[test]
    fn a_hose_in_words_takes_its_size_from_a_column_of_its_own() {
        let head = format!("{HEAD};DN");
        let today = NaiveDate::from_ymd_opt(2026, 11, 26).unwrap();
        for (hose, size, is) in [
            ("EN 853 2SN", "16", Ok("16")),
            ("EN 853 2SN", "-10", Ok("16")),
            ("EN 853 2SN DN 16", "", Ok("16")),
            ("EN 853 2SN DN 16", "-10", Ok("16")),
            ("EN 853 2SN DN 16", "12", Err(Column::Dn)),
            ("EN 853 2SN", "", Err(Column::Hose)),
            ("EN 853 2SN", "17", Err(Column::Dn)),
        ] {
            let row =
                format!("Nord;Bagger 3;Ausleger;{hose};ORFS;-10;ORFS;-10;1240 mm;207 bar;25.03.2024;{size}");
            let read = read(Catalogue::embedded(), &cells(&[&head, &row]), &How::default(), today).unwrap();
            let found = match (read.rows.first(), read.refused.first()) {
                (Some(row), _) => Ok(row.spec.hose.clone().unwrap().dn.to_string()),
                (None, refused) => Err(refused.unwrap().column.unwrap()),
            };
            assert_eq!(found, is.map(str::to_owned), "{hose} and {size}: {:?}", read.refused);
        }
    }

    #[test]
    fn an_end_in_words_needs_no_column_of_its_size() {
        let head = "Standort;Maschine;Bezeichnung;Schlauch;End A;End B;Size B;Eingebaut";
        let today = NaiveDate::from_ymd_opt(2026, 11, 26).unwrap();
        let of = |ends: &str| {
            let row = format!("Nord;Bagger 3;Ausleger;EN 853 2SN DN 16;{ends};25.03.2024");
            read(Catalogue::embedded(), &cells(&[head, &row]), &How::default(), today).unwrap()
        };
        let taken = of("ORFS -10 female 90°;JIC -10;");
        let [a, b] = taken.rows[0].spec.ends.as_slice() else { panic!("{taken:?}") };
        assert_eq!((a.family.as_str(), a.size.as_str(), a.gender), ("ORFS", "-10", Some(Gender::Female)));
        assert_eq!(a.form.as_deref(), Some("elbow90"));
        assert_eq!((b.family.as_str(), b.size.as_str()), ("JIC 37 flare", "-10"));
        for (ends, column) in [
            ("ORFS;ORFS;-10", Column::ASize),
            ("ORFS -10;ORFS;", Column::BSize),
            ("bayonet -10;ORFS;-10", Column::AFamily),
            (";ORFS;-10", Column::AFamily),
        ] {
            assert_eq!(of(ends).refused[0].column, Some(column), "{ends}");
        }
    }
}
