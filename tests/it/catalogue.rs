//! The embedded tables: complete, joined, plausible; names people use find their rows; and a bad
//! table says what is wrong with it.

mod bad;
mod hoses;
mod names;
mod others;
mod partners;

use hosewright_core::catalogue::{Basis, Catalogue, Provenance, Table};
use hosewright_core::quantity::Dn;

fn embedded() -> &'static Catalogue {
    Catalogue::embedded()
}

fn dn(number: f64) -> Dn {
    Dn::new(number).expect("a size")
}

/// The cells of a file of the catalogue, by line and column.
fn lines(table: Table) -> Vec<std::collections::BTreeMap<String, String>> {
    csv::Reader::from_reader(table.embedded().as_bytes())
        .deserialize()
        .map(|line| line.unwrap_or_else(|error| panic!("{}: {error}", table.file())))
        .collect()
}

/// A row says where it was read and how sure it is.
#[track_caller]
fn assert_sourced(row: &str, from: &Provenance) {
    assert!(!from.source.trim().is_empty(), "{row} has no source");
    assert!(
        !matches!(from.basis, Basis::Yours | Basis::ReferenceLibrary),
        "{row} is no user's entry and no library's figure, but says {:?}",
        from.basis
    );
}

#[test]
fn every_row_of_every_table_has_a_source_and_a_basis() {
    for table in Table::ALL.iter().filter(|table| **table != Table::Sources) {
        for (line, cells) in lines(*table).iter().enumerate() {
            for column in ["source", "basis"] {
                let cell = cells.get(column).map(String::as_str).unwrap_or_default();
                assert!(!cell.is_empty(), "{} row {}: {column} is blank", table.file(), line + 1);
            }
        }
    }
}

#[test]
fn no_label_of_a_source_is_left_unexplained() {
    for end in &embedded().ends {
        let left: Vec<_> = end
            .provenance
            .source
            .split("; ")
            .filter(|part| part.len() == 3 && part.starts_with('S'))
            .collect();
        assert!(left.is_empty(), "{} {}: nothing says what {left:?} stands for", end.family, end.size);
    }
}

#[test]
fn the_version_changes_with_the_tables() {
    let version = &embedded().version;
    assert_eq!(version.len(), 12, "{version} is twelve digits of the hash");
    let longer = format!("{},recalled,memory\n", Table::Cautions.embedded().trim_end());
    let changed = Table::Cautions.embedded().replacen("Call an ambulance", "Call the ambulance", 1);
    assert_ne!(changed, Table::Cautions.embedded(), "the caution stands in the table");
    let other = Catalogue::read(|table| if table == Table::Cautions { &changed } else { table.embedded() })
        .expect("one word changed");
    assert_ne!(&other.version, version, "another word is another version");
    assert!(
        Catalogue::read(|table| if table == Table::Cautions { &longer } else { table.embedded() }).is_err(),
        "a cell too many is an error"
    );
}
