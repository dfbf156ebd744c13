//! One row of a hose list.

use crate::spec::{Service, Spec};
use crate::tag::TagCode;
use chrono::NaiveDate;

/// A hose that sat at a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Its number as a spreadsheet shows it.
    pub row: usize,
    /// Where the machine works.
    pub site: String,
    /// What people call the machine.
    pub machine: String,
    /// What the machine is.
    pub kind: String,
    /// Its hours now.
    pub machine_hours: Option<f64>,
    /// The place's number; none where the list has names alone.
    pub number: Option<u32>,
    /// What people call the place; its number where the list has no name.
    pub place_name: String,
    /// Code of the tag.
    pub code: Option<TagCode>,
    /// What it is, by the names of the tables.
    pub spec: Spec,
    /// What the place asks of it.
    pub service: Service,
    /// When the hose was made, at the earliest.
    pub hose_made: Option<NaiveDate>,
    /// When it was assembled, at the earliest.
    pub assembled: Option<NaiveDate>,
    /// When it was fitted.
    pub fitted: NaiveDate,
    /// The machine's hours then.
    pub fitted_hours: Option<f64>,
    /// When it came off.
    pub removed: Option<NaiveDate>,
    /// The machine's hours then.
    pub removed_hours: Option<f64>,
    /// Why it failed.
    pub cause: Option<String>,
    /// Words.
    pub note: Option<String>,
}
