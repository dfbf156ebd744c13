//! A list of hoses: bytes to cells to rows. No row that is not blank may get lost, and none is taken that can not be.

#![no_main]

use chrono::NaiveDate;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::hose_list::{Column, read};
use hosewright_core::sheet::{How, headings};
use hosewright_papers::table;
use libfuzzer_sys::fuzz_target;
use std::collections::BTreeMap;

fuzz_target!(|bytes: &[u8]| {
    let Ok(cells) = table::read(bytes, "list") else { return };
    let said = [
        (Column::Site, "Yard"),
        (Column::Machine, "Loader"),
        (Column::Place, "1"),
        (Column::Hose, "EN 853 2SN DN 16"),
        (Column::AFamily, "ORFS"),
        (Column::ASize, "-10"),
        (Column::BFamily, "ORFS"),
        (Column::BSize, "-10"),
        (Column::Fitted, "2024-03-25"),
    ];
    let fixed: BTreeMap<Column, String> = said.map(|(column, text)| (column, text.to_owned())).into();
    let how = How { fixed, ..How::default() };
    let today = NaiveDate::from_ymd_opt(2026, 11, 26).unwrap_or_default();
    if let Ok(read) = read(Catalogue::embedded(), &cells, &how, today) {
        for row in &read.rows {
            assert!(row.removed.is_none_or(|removed| removed >= row.fitted), "{row:?}");
            assert!(row.spec.overall_length_mm.is_none_or(|length| length.get() >= 0.0), "{row:?}");
            assert!(row.service.working_pressure_bar.is_none_or(|pressure| pressure.get() >= 0.0), "{row:?}");
        }
        let rows = headings::<Column>(&cells, None, None, today).rows;
        assert_eq!(read.rows.len() + read.refused.len(), rows, "every row that is not blank is taken or refused");
    }
});
