//! One row of a hose list, read into what it says.

use super::columns as column;
use crate::answer::in_words;
use chrono::NaiveDate;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::quantity::{Bar, Degrees, Millimetres};
use hosewright_core::spec::{Cover, EndSpec, Gender, HoseRef, Line, Role, Service, Spec};
use hosewright_core::tag::TagCode;
use serde::de::DeserializeOwned;
use serde_json::Value;
use std::collections::HashMap;
use std::str::FromStr;

/// A hose that sat at a place.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Row {
    /// Its number as a spreadsheet shows it.
    pub(super) row: usize,
    pub(super) site: String,
    pub(super) machine: String,
    pub(super) kind: String,
    pub(super) machine_hours: Option<f64>,
    pub(super) number: u32,
    pub(super) place_name: String,
    pub(super) code: Option<TagCode>,
    pub(super) spec: Spec,
    pub(super) service: Service,
    pub(super) hose_made: Option<NaiveDate>,
    pub(super) assembled: Option<NaiveDate>,
    pub(super) fitted: NaiveDate,
    pub(super) fitted_hours: Option<f64>,
    pub(super) removed: Option<NaiveDate>,
    pub(super) removed_hours: Option<f64>,
    pub(super) cause: Option<String>,
    pub(super) note: Option<String>,
}

/// The cells of one row by the names of their columns.
pub(super) struct Cells<'a> {
    names: &'a HashMap<String, usize>,
    cells: &'a [String],
}

/// Why a cell can not be read: which column, and what would be right.
pub(super) type Wrong = String;

impl<'a> Cells<'a> {
    pub(super) fn new(names: &'a HashMap<String, usize>, cells: &'a [String]) -> Self {
        Self { names, cells }
    }

    fn get(&self, name: &str) -> Option<&'a str> {
        let cell = self.cells.get(*self.names.get(name)?)?.trim();
        (!cell.is_empty()).then_some(cell)
    }

    fn needed(&self, name: &str) -> Result<&'a str, Wrong> {
        self.get(name).ok_or_else(|| format!("{name} is blank; it is needed"))
    }

    fn parsed<T: FromStr<Err: std::fmt::Display>>(&self, name: &str) -> Result<Option<T>, Wrong> {
        self.get(name).map(|cell| cell.parse().map_err(|error| format!("{name}: {error}"))).transpose()
    }

    /// One of the names that a choice of the contract has, such as `return` or `female`.
    fn choice<T: DeserializeOwned>(&self, name: &str) -> Result<Option<T>, Wrong> {
        let choose = |cell: &str| {
            serde_json::from_value(Value::String(cell.to_lowercase().replace(' ', "-")))
                .map_err(|error| format!("{name}: {}", in_words(&error.to_string())))
        };
        self.get(name).map(choose).transpose()
    }

    fn number(&self, name: &str) -> Result<Option<f64>, Wrong> {
        let read = |cell: &str| {
            let number: Option<f64> = cell.replace(',', ".").parse().ok();
            number
                .filter(|number| number.is_finite() && *number >= 0.0)
                .ok_or_else(|| format!("{name}: \"{cell}\" is no number from 0 up"))
        };
        self.get(name).map(read).transpose()
    }

    /// A day as 2026-11-25 or 25.11.2026.
    fn day(&self, name: &str) -> Result<Option<NaiveDate>, Wrong> {
        let read = |cell: &str| {
            ["%Y-%m-%d", "%d.%m.%Y"]
                .iter()
                .find_map(|form| NaiveDate::parse_from_str(cell, form).ok())
                .ok_or_else(|| format!("{name}: \"{cell}\" is no day; write 2026-11-25"))
        };
        self.get(name).map(read).transpose()
    }

    /// What the row says.
    pub(super) fn read(&self, row: usize, catalogue: &Catalogue) -> Result<Row, Wrong> {
        let number = self.needed(column::PLACE)?;
        let fitted = self.day(column::FITTED)?;
        let row = Row {
            row,
            site: self.needed(column::SITE)?.to_owned(),
            machine: self.needed(column::MACHINE)?.to_owned(),
            kind: self.get(column::KIND).unwrap_or("other").to_lowercase(),
            machine_hours: self.number(column::MACHINE_HOURS)?,
            number: number
                .parse()
                .map_err(|_| format!("place: \"{number}\" is no number of a place, such as 14"))?,
            place_name: self.get(column::PLACE_NAME).map_or_else(|| number.to_owned(), str::to_owned),
            code: self.parsed(column::CODE)?,
            spec: self.spec(catalogue)?,
            service: self.service()?,
            hose_made: self.day(column::HOSE_MADE)?,
            assembled: self.day(column::ASSEMBLED)?,
            fitted: fitted
                .ok_or_else(|| "fitted is blank; the day the hose was fitted is needed".to_owned())?,
            fitted_hours: self.number(column::FITTED_HOURS)?,
            removed: self.day(column::REMOVED)?,
            removed_hours: self.number(column::REMOVED_HOURS)?,
            cause: self.cause(catalogue)?,
            note: self.get(column::NOTE).map(str::to_owned),
        };
        match row.removed {
            Some(removed) if removed < row.fitted => {
                Err(format!("removed {removed} is before fitted {}", row.fitted))
            }
            _ => Ok(row),
        }
    }

    fn cause(&self, catalogue: &Catalogue) -> Result<Option<String>, Wrong> {
        let known = |cell: &str| {
            let code = cell.to_uppercase();
            let found = catalogue.causes.iter().any(|cause| cause.code == code);
            let codes =
                || catalogue.causes.iter().map(|cause| cause.code.to_string()).collect::<Vec<_>>().join(", ");
            if found {
                Ok(code)
            } else {
                Err(format!("cause: \"{cell}\" is no cause; there are {}", codes()))
            }
        };
        self.get(column::CAUSE).map(known).transpose()
    }

    fn service(&self) -> Result<Service, Wrong> {
        Ok(Service {
            line: self.choice::<Line>(column::LINE)?,
            relief_bar: self.parsed::<Bar>(column::RELIEF)?,
            working_pressure_bar: self.parsed::<Bar>(column::WORKING)?,
            fluid: self.get(column::FLUID).map(str::to_owned),
            ..Service::default()
        })
    }

    /// The spec with its names as the tables have them.
    fn spec(&self, catalogue: &Catalogue) -> Result<Spec, Wrong> {
        let (standard, kind) = (self.needed(column::STANDARD)?, self.needed(column::TYPE)?);
        let dn = self.parsed(column::DN)?.ok_or_else(|| "dn is blank; it is needed".to_owned())?;
        let hose = catalogue.hose(standard, kind, dn).map_err(|error| {
            let column = match error.what {
                "standard" => column::STANDARD,
                "dn" => column::DN,
                _ => column::TYPE,
            };
            format!("{column}: {error}")
        })?;
        Ok(Spec {
            hose: Some(HoseRef::named(&hose.standard, &hose.kind, hose.dn)),
            ends: vec![
                self.end(
                    catalogue,
                    Role::A,
                    [column::A_FAMILY, column::A_SIZE, column::A_GENDER, column::A_FORM],
                )?,
                self.end(
                    catalogue,
                    Role::B,
                    [column::B_FAMILY, column::B_SIZE, column::B_GENDER, column::B_FORM],
                )?,
            ],
            adapters: Vec::new(),
            overall_length_mm: self.parsed::<Millimetres>(column::LENGTH)?,
            turn_deg: self.parsed::<Degrees>(column::TURN)?,
            cover: self.choice::<Cover>(column::COVER)?,
        })
    }

    fn end(
        &self,
        catalogue: &Catalogue,
        role: Role,
        [family, size, gender, form]: [&str; 4],
    ) -> Result<EndSpec, Wrong> {
        let found = catalogue.connection(self.needed(family)?, self.needed(size)?);
        let found = found.map_err(|error| {
            let column = if error.what == "family" { family } else { size };
            format!("{column}: {error}")
        })?;
        Ok(EndSpec {
            role,
            family: found.family().to_owned(),
            size: found.size().to_owned(),
            gender: self.choice::<Gender>(gender)?,
            form: self.get(form).map(str::to_owned),
            drop_mm: None,
            cutoff_mm: None,
            rating_bar: None,
        })
    }
}
