//! The labels that a user's printer holds.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;
use thiserror::Error;
use ts_rs::TS;

/// A stock of labels.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct LabelStock {
    /// What the user calls it.
    pub name: String,
    /// Width of what is printed, in the direction of the words.
    pub width_mm: f64,
    /// Height of what is printed.
    pub height_mm: f64,
    /// Dots an inch of the printer it is in, commonly 203, 300 or 600.
    pub dpi: f64,
    /// What it is made of.
    pub material: LabelMaterial,
    /// How it is fixed to the hose.
    pub form: LabelForm,
}

/// How a label is fixed to a hose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelForm {
    /// Its face stands off the hose, flat; the tail that goes round the hose is not printed.
    Flag,
    /// Stuck round the hose.
    Wrap,
    /// Flat, tied on or fixed beside the hose.
    Plate,
}

/// What a label is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelMaterial {
    /// Polyester film.
    Polyester,
    /// Polypropylene film.
    Polypropylene,
    /// Soft vinyl film.
    Vinyl,
    /// Paper: for the bench, not for a machine.
    Paper,
    /// Metal, printed or engraved.
    Metal,
    /// Something else.
    Other,
}

/// What a label holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelHolds {
    /// Its QR code holds the whole text of the tag: the hose can be rebuilt from the label alone.
    FullText,
    /// Its QR code holds the code alone, because the whole text has no room at modules a camera can read; every fact
    /// stands in words.
    CodeAlone,
    /// Its QR code holds the code alone. Beside the code stands in words what warns, and of the rest what has room.
    CodeOnly,
}

/// Which way a label lies that is stuck round a hose.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum LabelDirection {
    /// Its words run along the hose, its height goes round.
    Along,
    /// Its words run round the hose.
    Around,
}

/// A stock that can not be.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum StockError {
    /// No name, or a long one.
    #[error("a label stock needs a name of 1 to {} characters", LabelStock::LONGEST_NAME)]
    Name,
    /// No size for a label, or no printer.
    #[error(
        "a label of {width_mm} x {height_mm} mm at {dpi} dots per inch can't be made; sides may be 10 to 300 mm and printers 150 to 1200 dots per inch"
    )]
    Size {
        /// Width.
        width_mm: f64,
        /// Height.
        height_mm: f64,
        /// Dots per inch.
        dpi: f64,
    },
}

impl LabelStock {
    /// Sides of a label that are made, in mm.
    pub const SIDES_MM: RangeInclusive<f64> = 10.0..=300.0;

    /// Printers that labels are made for. Below, letters of a label can't be read; above is no printer.
    pub const DPI: RangeInclusive<f64> = 150.0..=1200.0;

    /// Longest name, in characters.
    pub const LONGEST_NAME: usize = 60;

    /// Whether labels can be made of it.
    ///
    /// # Errors
    /// No name; a size or a printer out of range.
    pub fn plausible(&self) -> Result<(), StockError> {
        let Self { width_mm, height_mm, dpi, .. } = *self;
        let name = self.name.trim();
        if name.is_empty() || name.chars().count() > Self::LONGEST_NAME {
            return Err(StockError::Name);
        }
        let made = [width_mm, height_mm].iter().all(|side| Self::SIDES_MM.contains(side));
        if made && Self::DPI.contains(&dpi) {
            Ok(())
        } else {
            Err(StockError::Size { width_mm, height_mm, dpi })
        }
    }
}

/// The size that labels for hoses are commonly sold in, in the commonest printer (common practice).
impl Default for LabelStock {
    fn default() -> Self {
        Self {
            name: "60 x 40".to_owned(),
            width_mm: 60.0,
            height_mm: 40.0,
            dpi: 203.0,
            material: LabelMaterial::Polyester,
            form: LabelForm::Flag,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stock_that_can_not_be_says_why() {
        assert_eq!(LabelStock::default().plausible(), Ok(()));
        let named = |name: &str| LabelStock { name: name.to_owned(), ..LabelStock::default() };
        for name in ["", "  ", &"x".repeat(61)] {
            assert_eq!(named(name).plausible(), Err(StockError::Name), "{name}");
        }
        for (width_mm, height_mm, dpi) in [
            (9.9, 40.0, 203.0),
            (60.0, 301.0, 203.0),
            (60.0, f64::NAN, 203.0),
            (60.0, 40.0, 100.0),
            (60.0, 40.0, f64::INFINITY),
        ] {
            let stock = LabelStock { width_mm, height_mm, dpi, ..LabelStock::default() };
            assert!(matches!(stock.plausible(), Err(StockError::Size { .. })), "{stock:?}");
        }
    }
}
