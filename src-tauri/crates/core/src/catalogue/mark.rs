//! The rows that a hose rests on, each with a digest: whether a row has changed since can be told without its old text.

use super::table::CatalogueError;
use super::{Catalogue, Table};
use crate::spec::Spec;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use std::fmt;
use ts_rs::TS;

/// A row of the tables as it was when something was made by it.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema, TS)]
pub struct RowMark {
    /// Its table, such as `hoses`.
    pub table: String,
    /// What the row is called there.
    pub row: String,
    /// The first 16 hexadecimal digits of the hash over its cells; remarks do not count.
    pub digest: String,
}

impl fmt::Display for RowMark {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{} {}", self.table, self.row)
    }
}

/// How a marked row stands now.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum RowStands {
    /// As it was.
    Same,
    /// Something in it is another.
    Changed,
    /// There is no such row any more.
    Gone,
}

/// The tables whose rows a hose rests on, and the columns that name a row.
const MARKED: [(Table, usize); 5] = [
    (Table::Hoses, 3),
    (Table::HoseTypes, 2),
    (Table::Ends, 3),
    (Table::Flanges, 3),
    (Table::HoseEndRatings, 2),
];

/// The digests of all rows of those tables, by table and name of the row.
pub(super) type Digests = HashMap<(&'static str, String), String>;

/// Reads them.
pub(super) fn digests<'t>(text_of: impl Fn(Table) -> &'t str) -> Result<Digests, CatalogueError> {
    let mut digests = Digests::new();
    for (table, columns) in MARKED {
        let wrong = |error: csv::Error| CatalogueError::Line { table, reason: error.to_string() };
        let mut reader = csv::Reader::from_reader(text_of(table).as_bytes());
        let note = reader.headers().map_err(wrong)?.iter().position(|column| column == "note");
        for record in reader.records() {
            let record = record.map_err(wrong)?;
            let mut hash = Sha256::new();
            for (_, cell) in record.iter().enumerate().filter(|(at, _)| Some(*at) != note) {
                hash.update((cell.len() as u64).to_le_bytes());
                hash.update(cell);
            }
            let digest = hash.finalize().iter().take(8).map(|byte| format!("{byte:02x}")).collect();
            digests.insert((name_of(table), key(table, record.iter().take(columns))), digest);
        }
    }
    Ok(digests)
}

/// Ends and flanges have their standard between family and size; it does not name the row.
fn key<'c>(table: Table, cells: impl Iterator<Item = &'c str>) -> String {
    let with_standard = matches!(table, Table::Ends | Table::Flanges);
    let cells = cells.enumerate().filter(|(at, _)| !(with_standard && *at == 1)).map(|(_, cell)| cell.trim());
    cells.collect::<Vec<_>>().join(" ")
}

fn name_of(table: Table) -> &'static str {
    table.file().trim_end_matches(".csv")
}

impl Catalogue {
    /// The rows that a hose of that spec rests on, as they are now. What the tables do not know has none.
    pub fn marks(&self, spec: &Spec) -> Vec<RowMark> {
        let mut marks = Vec::new();
        if let Some(hose) = &spec.hose
            && let Ok(kind) = self.hose_type(&hose.standard, &hose.kind)
            && let Ok(row) = self.hose(&hose.standard, &hose.kind, hose.dn)
        {
            marks.extend(self.mark(Table::HoseTypes, format!("{} {}", kind.standard, kind.kind)));
            let (standard, sizes) =
                kind.sizes_of.clone().unwrap_or_else(|| (kind.standard.clone(), kind.kind.clone()));
            marks.extend(self.mark(Table::Hoses, format!("{standard} {sizes} {}", row.dn)));
        }
        for end in &spec.ends {
            let Ok(row) = self.connection(&end.family, &end.size) else { continue };
            let name = row.name();
            for table in [Table::Ends, Table::Flanges, Table::HoseEndRatings] {
                marks.extend(self.mark(table, name.clone()));
            }
        }
        marks.sort();
        marks.dedup();
        marks
    }

    fn mark(&self, table: Table, row: String) -> Option<RowMark> {
        let table = name_of(table);
        let digest = self.digests.get(&(table, row.clone()))?.clone();
        Some(RowMark { table: table.to_owned(), row, digest })
    }

    /// How a row stands that something was made by.
    pub fn stands(&self, mark: &RowMark) -> RowStands {
        let now = self.digests.iter().find(|((table, row), _)| *table == mark.table && *row == mark.row);
        match now {
            None => RowStands::Gone,
            Some((_, digest)) if *digest == mark.digest => RowStands::Same,
            Some(_) => RowStands::Changed,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn spec() -> Spec {
        serde_json::from_value(serde_json::json!({
            "hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
            "ends": [
                {"role": "A", "family": "JIC 37 flare", "size": "-10"},
                {"role": "B", "family": "flange 62", "size": "-12"}
            ]
        }))
        .expect("a spec")
    }

    fn names(marks: &[RowMark]) -> Vec<String> {
        marks.iter().map(RowMark::to_string).collect()
    }

    #[test]
    fn a_hose_rests_on_its_type_its_size_and_its_ends() {
        let catalogue = Catalogue::embedded();
        let marks = catalogue.marks(&spec());
        let names = names(&marks);
        for row in
            ["hoses EN 853 2SN 16", "hose_types EN 853 2SN", "ends JIC 37 flare -10", "flanges flange 62 -12"]
        {
            assert!(names.iter().any(|name| name == row), "{row} is not among {names:?}");
        }
        assert!(marks.iter().all(|mark| catalogue.stands(mark) == RowStands::Same));
    }

    #[test]
    fn a_changed_figure_is_seen_a_changed_remark_is_not_and_a_row_that_is_gone_is_said() {
        let marks = Catalogue::embedded().marks(&spec());
        let stands = |from: &str, to: &str| {
            let text = Table::Hoses.embedded().replacen(from, to, 1);
            let text: &'static str = Box::leak(text.into_boxed_str());
            let changed =
                Catalogue::read(|table| if table == Table::Hoses { text } else { table.embedded() })
                    .expect("reads");
            let mark = marks.iter().find(|mark| mark.table == "hoses").expect("is marked");
            changed.stands(mark)
        };
        let line =
            Table::Hoses.embedded().lines().find(|line| line.starts_with("EN 853,2SN,16,")).expect("a row");
        let cells: Vec<&str> = line.split(',').collect();
        let weaker = line.replacen(&format!(",{},", cells[11]), ",111,", 1);
        assert_eq!(stands(line, &weaker), RowStands::Changed);
        assert_eq!(
            stands(line, &format!("{},more\"", line.trim_end_matches('"'))),
            RowStands::Same,
            "{line}"
        );
        assert_eq!(stands("EN 853,2SN,16,", "EN 853,2SN,17,"), RowStands::Gone);
    }
}
