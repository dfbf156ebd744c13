//! Which column of a sheet is what, as far as its headings say: a proposal that a person takes or changes.

use super::Column;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The headings of a sheet and what they seem to be.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Headings {
    /// The row they stand in, from 1 as a spreadsheet shows it.
    pub header_row: usize,
    /// Rows beneath it that are not blank.
    pub rows: usize,
    /// The columns, blank ones left out.
    pub columns: Vec<HeadingFound>,
    /// What no row can be without and no column is: a column is chosen for it, or one value given for all rows.
    pub missing: Vec<Column>,
}

/// A column of a sheet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct HeadingFound {
    /// Its number, from 0.
    pub column: usize,
    /// Its heading as it stands there.
    pub heading: String,
    /// What it seems to be; none where nothing fits.
    pub is: Option<Column>,
    /// The unit that stands in its heading.
    pub unit: Option<LengthUnit>,
    /// Its first cells.
    pub examples: Vec<String>,
}

/// Unit of the bare numbers of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
#[ts(rename = "SupplierUnit")]
pub enum LengthUnit {
    /// Millimetres.
    Mm,
    /// Inches.
    In,
}

/// How far down the headings are looked for: titles and notes stand above them.
const LOOKED: usize = 30;

/// Cells of a column that are shown.
const EXAMPLES: usize = 3;

/// Finds the headings, in the row given or in the one that most of them are known of, and what they seem to be.
pub fn headings(cells: &[Vec<String>], header_row: Option<usize>) -> Headings {
    let at = match header_row {
        Some(row) => row.saturating_sub(1),
        None => likeliest(cells),
    };
    let head = cells.get(at).map(Vec::as_slice).unwrap_or_default();
    let body = || cells.iter().skip(at + 1).filter(|row| row.iter().any(|cell| !cell.trim().is_empty()));
    let proposed = proposed(head);
    let columns = head.iter().zip(&proposed).enumerate().map(|(column, (heading, is))| {
        let filled = body().filter_map(|row| row.get(column)).map(|cell| cell.trim());
        let examples = filled.filter(|cell| !cell.is_empty()).take(EXAMPLES).map(str::to_owned).collect();
        HeadingFound { column, heading: heading.trim().to_owned(), is: *is, unit: unit(heading), examples }
    });
    let columns: Vec<_> =
        columns.filter(|column| !column.heading.is_empty() || !column.examples.is_empty()).collect();
    let is = |wanted: &Column| columns.iter().any(|column| column.is == Some(*wanted));
    let missing = Column::NEEDED.into_iter().filter(|wanted| !is(wanted)).collect();
    Headings { header_row: at + 1, rows: body().count(), columns, missing }
}

fn likeliest(cells: &[Vec<String>]) -> usize {
    let known = |row: &Vec<String>| proposed(row).iter().flatten().count();
    let mut best = (0, 0);
    for (at, row) in cells.iter().enumerate().take(LOOKED) {
        let count = known(row);
        if count > best.1 {
            best = (at, count);
        }
    }
    best.0
}

/// What each heading seems to be; no two are the same.
fn proposed(head: &[String]) -> Vec<Option<Column>> {
    let mut taken = Vec::new();
    head.iter()
        .map(|heading| {
            let is = meant(heading).filter(|column| !taken.contains(column))?;
            taken.push(is);
            Some(is)
        })
        .collect()
}

/// Words that name the crimp diameter only where nothing stands beside them.
const ALONE: [&str; 2] = ["crimp", "prensado"];

/// What stands in a heading of something else than the diameter to crimp to: a limit of it, or what it was before.
const NOT_THE_TARGET: [&str; 6] = ["min", "max", "minimum", "maximum", "pre", "before"];

/// The column whose words stand in a heading.
fn meant(heading: &str) -> Option<Column> {
    let plain = plain(heading);
    if ["±", "+/-"].contains(&heading.trim()) {
        return Some(Column::CrimpTolerance);
    }
    let padded = format!(" {plain} ");
    let stands = |words: &str| padded.contains(&format!(" {words} "));
    // "Crimp" alone is the diameter; beside another word it is of what that word says.
    let fits = |words: &&str| stands(words) && (!ALONE.contains(words) || plain == **words);
    let longest =
        |column: &Column| column.words().iter().filter(|words| fits(words)).map(|words| words.len()).max();
    let mut best: Option<(usize, Column)> = None;
    for column in Column::ALL {
        if let Some(length) = longest(&column)
            && best.is_none_or(|(found, _)| length > found)
        {
            best = Some((length, column));
        }
    }
    let other = NOT_THE_TARGET.iter().any(|word| stands(word));
    let best = best.filter(|(_, column)| !(other && *column == Column::CrimpDiameter));
    // A tolerance is one whatever it is a tolerance of, and a size of a hose is the hose's.
    match best {
        Some((_, column)) if column != Column::CrimpTolerance => {
            let tolerance = Column::CrimpTolerance.words().iter().any(fits);
            Some(if tolerance { Column::CrimpTolerance } else { column })
        }
        Some((_, column)) => Some(column),
        None => (plain == "size").then_some(Column::Dn),
    }
}

/// A heading in words: what stands in brackets, signs and capitals are left out.
fn plain(heading: &str) -> String {
    let mut depth = 0_usize;
    let mut out = String::new();
    for letter in heading.to_lowercase().chars() {
        match letter {
            '(' | '[' => depth += 1,
            ')' | ']' => depth = depth.saturating_sub(1),
            _ if depth > 0 => {}
            letter if letter.is_alphanumeric() => out.push(letter),
            _ => out.push(' '),
        }
    }
    let words = out.split_whitespace().filter(|word| !["mm", "in", "inch", "inches", "zoll"].contains(word));
    words.collect::<Vec<_>>().join(" ")
}

/// The unit that stands in a heading.
fn unit(heading: &str) -> Option<LengthUnit> {
    let heading = heading.to_lowercase();
    let words: Vec<&str> = heading.split(|c: char| !c.is_alphanumeric()).collect();
    let has = |names: &[&str]| names.iter().any(|name| words.contains(name));
    match (has(&["mm"]), has(&["in", "inch", "inches", "zoll"]) || heading.contains('"')) {
        (true, false) => Some(LengthUnit::Mm),
        (false, true) => Some(LengthUnit::In),
        // Both say nothing of a bare number.
        (true, true) | (false, false) => None,
    }
}
