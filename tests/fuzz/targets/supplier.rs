//! A supplier's sheet: bytes to cells to rows. No row that is not blank may get lost.

#![no_main]

use chrono::NaiveDate;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::sheet::{How, headings};
use hosewright_core::supplier::{Column, read};
use hosewright_papers::table;
use libfuzzer_sys::fuzz_target;
use std::collections::BTreeMap;

fuzz_target!(|bytes: &[u8]| {
    let Ok(cells) = table::read(bytes, "list") else { return };
    let found = headings::<Column>(&cells, None, None, NaiveDate::MIN);
    let fixed = BTreeMap::from([
        (Column::Supplier, "Invented".to_owned()),
        (Column::Standard, "EN 853".to_owned()),
        (Column::Type, "2SN".to_owned()),
        (Column::Dn, "16".to_owned()),
    ]);
    let how = How { fixed, ..How::default() };
    if let Ok(read) = read(Catalogue::embedded(), &cells, "list", &how, NaiveDate::MIN) {
        let listed = read.rows.len() + read.repeated.len() + read.refused.len();
        assert!(listed <= found.rows, "{listed} rows of {}", found.rows);
        for (_, row) in &read.rows {
            assert_eq!(row.plausible(), Ok(()));
        }
    }
});
