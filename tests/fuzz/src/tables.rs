//! Tables from outside: CSV and XLSX, and what is read off them. No row that is not blank may get lost.

use chrono::NaiveDate;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::hose_list::{self as hoses, Column as Hose};
use hosewright_core::life as lives;
use hosewright_core::sheet::{How, headings};
use hosewright_core::supplier::{self as suppliers, Column as Supplier};
use hosewright_papers::table as sheet;
use std::collections::BTreeMap;

/// Bytes to cells.
pub(crate) fn table(bytes: &[u8]) {
    let _ = sheet::read(bytes, "list");
}

/// A history of failures as CSV.
pub(crate) fn life(bytes: &[u8]) {
    if let Some(text) = crate::text(bytes) {
        let _ = lives::read_csv(text);
    }
}

/// A list of hoses: none is taken that can not be.
pub(crate) fn hose_list(bytes: &[u8]) {
    let Ok(cells) = sheet::read(bytes, "list") else { return };
    let how = said([
        (Hose::Site, "Yard"),
        (Hose::Machine, "Loader"),
        (Hose::Place, "1"),
        (Hose::Hose, "EN 853 2SN DN 16"),
        (Hose::AFamily, "ORFS"),
        (Hose::ASize, "-10"),
        (Hose::BFamily, "ORFS"),
        (Hose::BSize, "-10"),
        (Hose::Fitted, "2024-03-25"),
    ]);
    let today = NaiveDate::from_ymd_opt(2026, 11, 26).unwrap_or_default();
    let Ok(read) = hoses::read(Catalogue::embedded(), &cells, &how, today) else { return };
    for row in &read.rows {
        assert!(row.removed.is_none_or(|removed| removed >= row.fitted), "{row:?}");
        assert!(row.spec.overall_length_mm.is_none_or(|length| length.get() >= 0.0), "{row:?}");
        assert!(row.service.working_pressure_bar.is_none_or(|pressure| pressure.get() >= 0.0), "{row:?}");
    }
    let rows = headings::<Hose>(&cells, None, None, today).rows;
    assert_eq!(read.rows.len() + read.refused.len(), rows, "every row that is not blank is taken or refused");
}

/// A supplier's sheet.
pub(crate) fn supplier(bytes: &[u8]) {
    let Ok(cells) = sheet::read(bytes, "list") else { return };
    let how = said([
        (Supplier::Supplier, "Invented"),
        (Supplier::Standard, "EN 853"),
        (Supplier::Type, "2SN"),
        (Supplier::Dn, "16"),
    ]);
    let Ok(read) = suppliers::read(Catalogue::embedded(), &cells, "list", &how, NaiveDate::MIN) else {
        return;
    };
    let rows = headings::<Supplier>(&cells, None, None, NaiveDate::MIN).rows;
    let listed = read.rows.len() + read.repeated.len() + read.refused.len();
    assert!(listed <= rows, "{listed} rows of {rows}");
    for (_, row) in &read.rows {
        assert_eq!(row.plausible(), Ok(()));
    }
}

/// How a sheet is read of which a person says this for all rows.
fn said<Column: Ord, const N: usize>(values: [(Column, &str); N]) -> How<Column> {
    let fixed: BTreeMap<_, _> = values.map(|(column, text)| (column, text.to_owned())).into();
    How { fixed, ..How::default() }
}
