//! Reading one cell of a supplier's table.

use super::LengthUnit;
use crate::catalogue::Catalogue;
use crate::make::Skive;
use crate::quantity::{Dn, Millimetres, parse_length};
use thiserror::Error;

/// A cell that can not be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum CellError {
    /// No length.
    #[error("\"{cell}\" is no length; write for example 27.4, 27,4 mm or 1 1/16 in")]
    Length {
        /// The cell.
        cell: String,
    },
    /// What a spreadsheet made of a fraction.
    #[error("\"{cell}\" is a date: the spreadsheet made it of a fraction; write the fraction as text")]
    Date {
        /// The cell.
        cell: String,
    },
    /// A tolerance that is not the same either way.
    #[error(
        "\"{cell}\" is not the same either way; write the middle as diameter and half the width as tolerance"
    )]
    Uneven {
        /// The cell.
        cell: String,
    },
    /// No size of that hose.
    #[error("\"{cell}\" is no size of {hose}; there are {sizes}")]
    Size {
        /// The cell.
        cell: String,
        /// The hose.
        hose: String,
        /// Its sizes.
        sizes: String,
    },
}

/// A cell in one line: blanks of every kind are one blank.
pub(super) fn tidy(cell: &str) -> String {
    cell.split(|c: char| c.is_whitespace() || c == '\u{a0}' || c == '\u{202f}')
        .filter(|word| !word.is_empty())
        .collect::<Vec<_>>()
        .join(" ")
}

/// Whether a cell has a number and no unit.
pub(super) fn is_bare(cell: &str) -> bool {
    cell.chars().all(|c| c.is_ascii_digit() || ['.', ',', ' ', '-', '/'].contains(&c))
}

/// A length; a unit in the cell stands over that of the column.
pub(super) fn length(cell: &str, unit: Option<LengthUnit>) -> Result<Millimetres, CellError> {
    let wrong = || CellError::Length { cell: cell.to_owned() };
    if is_date(cell) {
        return Err(CellError::Date { cell: cell.to_owned() });
    }
    let bare = is_bare(cell);
    let inches = unit == Some(LengthUnit::In) && bare;
    // Two figures in one cell, as in `27.4 1.079`, are no fraction.
    if bare && cell.contains(' ') && !cell.contains('/') {
        return Err(wrong());
    }
    let text = if inches { format!("{cell} in") } else { cell.to_owned() };
    let (value, _) = parse_length(&text).map_err(|_| wrong())?;
    if value >= 0.0 && value.is_finite() { Ok(Millimetres(value)) } else { Err(wrong()) }
}

/// `2026-05-08`, as a spreadsheet stores what was typed as 5/8.
fn is_date(cell: &str) -> bool {
    chrono::NaiveDate::parse_from_str(cell.split(' ').next().unwrap_or_default(), "%Y-%m-%d").is_ok()
}

/// A diameter, with its tolerance where that stands behind it: `27.4 ±0.15`.
pub(super) fn diameter(
    cell: &str,
    unit: Option<LengthUnit>,
) -> Result<(Millimetres, Option<Millimetres>), CellError> {
    let plain = cell.replace("+/-", "±");
    match plain.split_once('±') {
        Some((diameter, tolerance)) => {
            Ok((length(diameter.trim(), unit)?, Some(length(tolerance.trim(), unit)?)))
        }
        None => Ok((length(&plain, unit)?, None)),
    }
}

/// A tolerance either way: `0.15`, `±0,15`, `+0.15/-0.15`.
pub(super) fn tolerance(cell: &str, unit: Option<LengthUnit>) -> Result<Millimetres, CellError> {
    let plain = cell.replace("+/-", "±").replace('\u{2212}', "-");
    let plain = plain.trim_start_matches('±').trim();
    let Some(sides) = plain.strip_prefix('+') else { return length(plain, unit) };
    let uneven = || CellError::Uneven { cell: cell.to_owned() };
    let (plus, minus) = sides.split_once('-').ok_or_else(uneven)?;
    let [plus, minus] = [plus, minus].map(|side| length(side.trim_matches(['/', ' ']), unit));
    let (plus, minus) = (plus?, minus?);
    if (plus.get() - minus.get()).abs() < 1e-9 { Ok(plus) } else { Err(uneven()) }
}

/// What is taken off: a word for nothing, or the length.
pub(super) fn skive(cell: &str, unit: Option<LengthUnit>) -> Result<Option<Millimetres>, CellError> {
    let nothing = ["no", "none", "no skive", "no-skive", "0", "-", "\u{2013}", "nein", "ohne", "sin"];
    if nothing.contains(&cell.to_lowercase().as_str()) { Ok(None) } else { length(cell, unit).map(Some) }
}

/// Cover and tube together; none where neither was said.
pub(super) fn skives(
    outer: Option<Option<Millimetres>>,
    inner: Option<Option<Millimetres>>,
) -> Option<Skive> {
    match (outer.flatten(), inner.flatten()) {
        (Some(outer_mm), Some(inner_mm)) => Some(Skive::Both { outer_mm, inner_mm }),
        (Some(length_mm), None) => Some(Skive::Outer { length_mm }),
        (None, Some(length_mm)) => Some(Skive::Inner { length_mm }),
        (None, None) => (outer.is_some() || inner.is_some()).then_some(Skive::None),
    }
}

/// The size of a hose: `16`, `DN 16`, the dash `-10`, or inches `5/8`.
pub(super) fn dn(cell: &str, catalogue: &Catalogue, standard: &str, kind: &str) -> Result<Dn, CellError> {
    let sizes = || catalogue.sizes(standard, kind);
    if is_date(cell) {
        return Err(CellError::Date { cell: cell.to_owned() });
    }
    let wrong = || CellError::Size {
        cell: cell.to_owned(),
        hose: format!("{standard} {kind}"),
        sizes: sizes().map(|row| row.dn.to_string()).collect::<Vec<_>>().join(", "),
    };
    let dash = match cell.strip_prefix(['-', '#', '\u{2212}']) {
        Some(dash) => Some(dash.trim().parse().map_err(|_| wrong())?),
        None if cell.contains(['/', '"', '\u{2033}']) || cell.to_lowercase().ends_with("in") => {
            let (inches, _) = parse_length(cell).map_err(|_| wrong())?;
            let sixteenths = inches / Millimetres::PER_INCH * 16.0;
            let whole = sixteenths.round();
            ((sixteenths - whole).abs() < 1e-6 && (1.0..=200.0).contains(&whole)).then_some(whole as u16)
        }
        None => None,
    };
    let found = match dash {
        Some(dash) => sizes().find(|row| row.dash == Some(dash)),
        None => {
            let dn: Dn = cell.to_uppercase().parse().map_err(|_| wrong())?;
            sizes().find(|row| row.dn == dn).or_else(|| sizes().find(|row| catalogue.one_size(row.dn, dn)))
        }
    };
    found.map(|row| row.dn).ok_or_else(wrong)
}
