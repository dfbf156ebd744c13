//! A bad table names its line and column and says what would be right; no text makes it panic.

use hosewright_core::catalogue::{Catalogue, CatalogueError, Table};
use proptest::prelude::*;
use rstest::rstest;

fn with(bad: Table, text: &str) -> Result<Catalogue, CatalogueError> {
    Catalogue::read(|table| if table == bad { text } else { table.embedded() })
}

#[track_caller]
fn error_of(table: Table, from: &str, to: &str) -> String {
    let text = table.embedded().replacen(from, to, 1);
    assert_ne!(text, table.embedded(), "\"{from}\" stands in {}", table.file());
    with(table, &text).expect_err("the table is bad").to_string()
}

#[rstest]
#[case::a_number(Table::Hoses, "1ST,5,3,4.8,", "1ST,5,3,4.8 mm,", &["hoses.csv line 2", "id_nom_mm", "\"4.8 mm\"", "a number"])]
#[case::nothing_infinite(Table::Hoses, "1ST,5,3,4.8,", "1ST,5,3,inf,", &["line 2", "id_nom_mm", "a number"])]
#[case::nought(Table::Hoses, "13.5,250,500,1000", "13.5,0,500,1000", &["line 2", "max_working_pressure_bar", "above 0"])]
#[case::a_size(Table::Hoses, "1ST,5,3,", "1ST,five,3,", &["line 2", "dn", "a nominal diameter"])]
#[case::limits_crossed(Table::Hoses, "4.6,5.4,", "5.4,4.6,", &["line 2", "id_max_mm", "5.4 or more"])]
#[case::half_a_band(Table::Hoses, "4.6,5.4,", "4.6,,", &["line 2", "id_max_mm", "id_min_mm has one"])]
#[case::a_basis(Table::Hoses, ",published,published,published,memory,", ",hearsay,published,published,memory,", &["line 2", "id_basis", "hearsay", "`published`", "`memory`"])]
#[case::a_row_twice(Table::Hoses, "EN 853,1ST,6,", "EN 853,1ST,5,", &["hoses.csv", "EN 853 1ST 5", "two rows"])]
#[case::layers(Table::HoseTypes, "one wire braid,1,1,", "one wire braid,2,1,", &["hose_types.csv line 2", "layers_max", "2 or more"])]
#[case::a_header(Table::Ends, "family,standard,size", "family,norm,size", &["ends.csv", "family,norm,size", "family,standard,size"])]
#[case::a_seal(Table::Ends, ",no,60,cone,", ",no,60,rubber,", &["line 2", "seals", "rubber", "`o-ring-face`"])]
#[case::yes_or_no(Table::Ends, ",24,no,60,", ",24,maybe,60,", &["line 2", "taper", "yes or no"])]
#[case::a_missing_cell(Table::Flanges, "flange 61,SAE J518-1 / ISO 6162-1,-8", "SAE J518-1 / ISO 6162-1,-8", &["flanges.csv", "line: 2"])]
#[case::no_source(Table::Cautions, "public toolbox talk on fluid injection (quarry)\",published", "\",published", &[])]
#[case::a_limit_in_words_and_number(Table::Limits, "burst to max working pressure,4,,", "burst to max working pressure,4,four,", &["limits.csv line 2", "value", "not both"])]
fn a_bad_table_says_where_and_what_would_be_right(
    #[case] table: Table,
    #[case] from: &str,
    #[case] to: &str,
    #[case] said: &[&str],
) {
    if said.is_empty() {
        // Part of a source may go; the whole may not.
        let text = table.embedded().replacen(from, to, 1);
        assert!(with(table, &text).is_ok(), "a shorter source is a source");
        return;
    }
    let error = error_of(table, from, to);
    for part in said {
        assert!(error.contains(part), "the error should say \"{part}\": {error}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn no_text_in_place_of_a_table_panics(index in 0..Table::ALL.len(), text in "(?s).{0,400}") {
        let table = Table::ALL[index];
        // The header alone is a table without rows; nothing else that is drawn here can be read.
        prop_assert!(with(table, &text).is_err(), "{} was read from {text:?}", table.file());
    }

    #[test]
    fn no_text_in_a_cell_panics(index in 0..Table::ALL.len(), row in 1_usize..30, cell in 0_usize..30, text in "\\PC{0,20}") {
        let table = Table::ALL[index];
        let mut lines: Vec<csv::StringRecord> = csv::ReaderBuilder::new()
            .has_headers(false)
            .from_reader(table.embedded().as_bytes())
            .records()
            .map(|line| line.expect("the embedded table is sound"))
            .collect();
        let row = row % lines.len();
        let cell = cell % lines[row].len();
        lines[row] = lines[row].iter().enumerate().map(|(place, old)| if place == cell { &text } else { old }).collect();
        let mut out = csv::Writer::from_writer(Vec::new());
        for line in &lines {
            out.write_record(line).expect("written to memory");
        }
        let changed = String::from_utf8(out.into_inner().expect("written to memory")).expect("it was text");
        match with(table, &changed) {
            Ok(catalogue) => prop_assert_eq!(catalogue.version.len(), 12),
            Err(error) => prop_assert!(error.to_string().starts_with(table.file()), "{error}"),
        }
    }
}
