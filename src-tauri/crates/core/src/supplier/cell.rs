//! Reading one cell of a supplier's table.

use crate::make::Skive;
use crate::quantity::Millimetres;
use crate::sheet::Unit;
use crate::sheet::cell::{CellError, length};
use thiserror::Error;

/// A figure that can not be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum FigureError {
    /// No length.
    #[error(transparent)]
    Cell(#[from] CellError),
    /// A tolerance that is not the same either way.
    #[error(
        "\"{cell}\" is not the same either way; write the middle as diameter and half the width as tolerance"
    )]
    Uneven {
        /// The cell.
        cell: String,
    },
}

/// A diameter, with its tolerance where that stands behind it: `27.4 ±0.15`.
pub(super) fn diameter(
    cell: &str,
    unit: Option<Unit>,
) -> Result<(Millimetres, Option<Millimetres>), FigureError> {
    let plain = cell.replace("+/-", "±");
    match plain.split_once('±') {
        Some((diameter, tolerance)) => {
            Ok((length(diameter.trim(), unit)?, Some(length(tolerance.trim(), unit)?)))
        }
        None => Ok((length(&plain, unit)?, None)),
    }
}

/// A tolerance either way: `0.15`, `±0,15`, `+0.15/-0.15`.
pub(super) fn tolerance(cell: &str, unit: Option<Unit>) -> Result<Millimetres, FigureError> {
    let plain = cell.replace("+/-", "±").replace('\u{2212}', "-");
    let plain = plain.trim_start_matches('±').trim();
    let Some(sides) = plain.strip_prefix('+') else { return Ok(length(plain, unit)?) };
    let uneven = || FigureError::Uneven { cell: cell.to_owned() };
    let (plus, minus) = sides.split_once('-').ok_or_else(uneven)?;
    let [plus, minus] = [plus, minus].map(|side| length(side.trim_matches(['/', ' ']), unit));
    let (plus, minus) = (plus?, minus?);
    if (plus.get() - minus.get()).abs() < 1e-9 { Ok(plus) } else { Err(uneven()) }
}

/// What is taken off: a word for nothing, or the length.
pub(super) fn skive(cell: &str, unit: Option<Unit>) -> Result<Option<Millimetres>, FigureError> {
    let nothing = ["no", "none", "no skive", "no-skive", "0", "-", "\u{2013}", "nein", "ohne", "sin"];
    if nothing.contains(&cell.to_lowercase().as_str()) { Ok(None) } else { Ok(Some(length(cell, unit)?)) }
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
