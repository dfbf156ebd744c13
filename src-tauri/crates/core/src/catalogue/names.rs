//! Names people use beside those of the tables, and the nearest names where one is not known.

use super::table::{CatalogueError, Row};
use crate::quantity::Dn;
use thiserror::Error;

/// A name that is not in the tables, or that could be more than one thing.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{given}\" is no {what} of the tables; right would be {}", .nearest.join(", "))]
pub struct UnknownName {
    /// What was looked for: `standard`, `type`, `dn`, `family`, `size`, `fluid`.
    pub what: &'static str,
    /// The name as given.
    pub given: String,
    /// The nearest names that would be right, or all that it could be.
    pub nearest: Vec<String>,
}

/// How many nearest names are offered.
const OFFERED: usize = 5;

impl UnknownName {
    /// With the names out of `known` that are nearest to the one given.
    pub(super) fn near<'n>(what: &'static str, given: &str, known: impl Iterator<Item = &'n str>) -> Self {
        let nearest = nearest(given, known).into_iter().take(OFFERED).map(str::to_owned).collect();
        Self { what, given: given.to_owned(), nearest }
    }

    /// With every name that would be right.
    pub(super) fn of(what: &'static str, given: &str, right: Vec<String>) -> Self {
        Self { what, given: given.to_owned(), nearest: right }
    }
}

/// The names, those first that the fewest changed letters part from the one given.
pub fn nearest<'n>(given: &str, known: impl Iterator<Item = &'n str>) -> Vec<&'n str> {
    let given = plain(given);
    let mut near: Vec<_> = known.map(|name| (distance(&given, &plain(name)), name)).collect();
    near.sort_unstable();
    near.dedup();
    near.into_iter().map(|(_, name)| name).collect()
}

/// A name without spaces, points, hyphens and capitals: `DIN EN 853` and `din-en853` are one.
pub(super) fn plain(name: &str) -> String {
    name.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

/// A size without the ways of writing it: `1 1/4 in`, `1-1/4"` and `1-1/4` are one.
pub(super) fn plain_size(size: &str) -> String {
    let size = size.trim().to_lowercase().replace(['\u{d7}', '*'], "x").replace(',', ".");
    let size = size.trim_end_matches(['"', '\'']).trim_end_matches("in").trim();
    size.split_whitespace().collect::<Vec<_>>().join("-").replace("-x-", "x").replace("dn-", "dn")
}

/// Single letters to put in, leave out or change to make one text of the other (Levenshtein).
fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, letter) in a.chars().enumerate() {
        let mut before = i;
        let mut left = i + 1;
        for (cell, other) in row.iter_mut().skip(1).zip(&b) {
            let here = (before + usize::from(letter != *other)).min(left + 1).min(*cell + 1);
            before = *cell;
            *cell = here;
            left = here;
        }
        if let Some(first) = row.first_mut() {
            *first = i + 1;
        }
    }
    row.last().copied().unwrap_or_default()
}

/// A name people use and the table's name.
#[derive(Debug)]
pub(super) struct Alias {
    /// As [`plain`] makes it.
    pub alias: String,
    pub name: String,
}

impl Alias {
    pub(super) fn read(row: &Row<'_>, name: &str) -> Result<Self, CatalogueError> {
        // Each alias says how sure it is, though nothing asks for it while a name is looked up.
        row.provenance()?;
        Ok(Self { alias: plain(&row.text("alias")?), name: row.text(name)? })
    }
}

/// A name people use for a hose standard, or for a type of one.
#[derive(Debug)]
pub(super) struct HoseAlias {
    /// The standard whose type it is; none for a standard.
    pub standard: Option<String>,
    pub alias: Alias,
}

impl HoseAlias {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        let standard = row.optional_text("standard");
        match (row.optional("what"), &standard) {
            (Some("standard"), None) | (Some("type"), Some(_)) => {}
            (Some("standard"), Some(_)) => return Err(row.wrong("standard", "blank, as what is standard")),
            (Some("type"), None) => return Err(row.wrong("standard", "the standard of the type")),
            _ => return Err(row.wrong("what", "standard or type")),
        }
        Ok(Self { standard, alias: Alias::read(row, "name")? })
    }
}

/// Two numbers of one size.
#[derive(Debug)]
pub(super) struct DnAlias(Dn, Dn);

impl DnAlias {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        row.provenance()?;
        let dn = |column| row.dn(column)?.ok_or_else(|| row.wrong(column, "a nominal diameter such as 12"));
        Ok(Self(dn("dn")?, dn("also")?))
    }
}

/// All names people use beside those of the tables.
#[derive(Debug)]
pub(super) struct Names {
    pub families: Vec<Alias>,
    pub hoses: Vec<HoseAlias>,
    pub dns: Vec<DnAlias>,
    pub fluids: Vec<Alias>,
}

impl Names {
    /// Whether both are numbers of one size.
    pub fn one_size(&self, a: Dn, b: Dn) -> bool {
        self.numbers_of_size(a).any(|number| number == b)
    }

    /// Every number that names a size, the given one first.
    pub fn numbers_of_size(&self, dn: Dn) -> impl Iterator<Item = Dn> {
        let other = move |pair: &DnAlias| match pair {
            DnAlias(one, other) if *one == dn => Some(*other),
            DnAlias(other, one) if *one == dn => Some(*other),
            _ => None,
        };
        std::iter::once(dn).chain(self.dns.iter().filter_map(other))
    }
}

pub(super) const FAMILY_ALIAS_COLUMNS: &str = "alias,family,source,basis";
pub(super) const FLUID_ALIAS_COLUMNS: &str = "alias,class,source,basis";
pub(super) const HOSE_ALIAS_COLUMNS: &str = "what,standard,alias,name,source,basis";
pub(super) const DN_ALIAS_COLUMNS: &str = "dn,also,source,basis";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ways_of_writing_a_name_are_one_name() {
        assert_eq!(plain("DIN EN-853"), plain("din en 853"));
        assert_eq!(plain("37 (74 included)"), "3774included");
    }

    #[test]
    fn ways_of_writing_a_size_are_one_size() {
        for (written, size) in [
            ("1 1/4 in", "1-1/4"),
            ("1-1/4\"", "1-1/4"),
            ("M22 x 1,5", "m22x1.5"),
            ("M22\u{d7}1.5", "m22x1.5"),
            ("-8", "-8"),
        ] {
            assert_eq!(plain_size(written), size, "{written} is {size}");
        }
    }

    #[test]
    fn the_distance_of_two_names_is_their_single_letter_changes() {
        for (a, b, apart) in
            [("", "", 0), ("", "abc", 3), ("kitten", "sitting", 3), ("2sn", "2st", 1), ("abc", "", 3)]
        {
            assert_eq!(distance(a, b), apart, "from \"{a}\" to \"{b}\"");
        }
    }
}
