//! The tables' rows against what a print says.

use super::clues::{Clues, Size};
use super::pressure::Pressure;
use super::words::can_be;
use crate::catalogue::{Catalogue, HoseRow};
use crate::quantity::Dn;

/// A bore in inches fits a row whose nominal bore is this near, mm: tables round inches.
const INCH_TOLERANCE_MM: f64 = 0.45;

/// How a row stands to each part of a print; none where the print says nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Fit {
    pub(super) standard: Option<bool>,
    pub(super) kind: Option<bool>,
    pub(super) size: Option<bool>,
    pub(super) pressure: Option<bool>,
}

impl Fit {
    /// Whether nothing but the pressure speaks against the row: ratings differ between editions.
    pub(super) fn is_consistent(self) -> bool {
        self.standard != Some(false) && self.kind != Some(false) && self.size != Some(false)
    }

    pub(super) fn of(catalogue: &Catalogue, row: &HoseRow, clues: &Clues<'_>) -> Self {
        let any = |mentions: &[super::names::Mention<'_>], name: &str| {
            (!mentions.is_empty()).then(|| mentions.iter().any(|mention| mention.names.contains(&name)))
        };
        let sizes = &clues.sizes;
        Self {
            standard: any(&clues.standards, &row.standard),
            kind: any(&clues.kinds, &row.kind),
            size: (!sizes.is_empty()).then(|| sizes.iter().all(|size| size_fits(catalogue, size, row))),
            pressure: pressure_fits(catalogue, row, clues),
        }
    }
}

fn size_fits(catalogue: &Catalogue, size: &Size, row: &HoseRow) -> bool {
    match size {
        Size::Dn(figure) => dn_fits(catalogue, figure, row.dn),
        Size::Dash(dash) => row.dash == Some(*dash),
        Size::Inch(bore) => (row.id_nom_mm.get() - bore).abs() <= INCH_TOLERANCE_MM,
        Size::Bare(number) => {
            row.dash.map(u32::from) == Some(*number) || dn_fits(catalogue, &number.to_string(), row.dn)
        }
    }
}

/// Whether a printed nominal diameter can be that row's by any of its forms: a worn `?2` is 12, or
/// the 32 that stands for 31.
fn dn_fits(catalogue: &Catalogue, figure: &str, dn: Dn) -> bool {
    let figure = figure.trim_start_matches('0');
    match figure.parse::<Dn>() {
        // A decimal that names no size, such as 1.0, is one whose full stop stands for a worn digit.
        Ok(read) if !figure.contains('.') || catalogue.numbers_of_size(read).count() > 1 => {
            catalogue.one_size(read, dn)
        }
        Ok(_) => {
            let pattern = figure.replace('.', "?");
            catalogue.numbers_of_size(dn).any(|number| can_be(&pattern, &number.to_string()))
        }
        Err(_) => catalogue.numbers_of_size(dn).any(|number| can_be(figure, &number.to_string())),
    }
}

/// Whether a printed nominal diameter is that row's to the letter.
pub(super) fn is_exact(row: &HoseRow, sizes: &[Size]) -> bool {
    sizes.iter().all(|size| match size {
        Size::Dn(figure) => figure.trim_start_matches('0') == row.dn.to_string(),
        _ => true,
    })
}

/// A figure that nothing calls the working pressure may be the row's burst pressure: it then speaks
/// neither for the row nor against it.
fn pressure_fits(catalogue: &Catalogue, row: &HoseRow, clues: &Clues<'_>) -> Option<bool> {
    let printed = clues.pressure.as_ref()?;
    let rated = row.max_working_pressure_bar?.get();
    let newer = catalogue.newer_edition(row).and_then(|(_, newer)| newer.max_working_pressure_bar);
    match printed.can_be(rated) || newer.is_some_and(|newer| printed.can_be(newer.get())) {
        true => Some(true),
        false if is_burst_of(row, printed) => None,
        false => Some(false),
    }
}

/// Whether an unmarked figure can be the burst pressure of that row.
pub(super) fn is_burst_of(row: &HoseRow, printed: &Pressure) -> bool {
    !printed.is_marked && row.min_burst_pressure_bar.is_some_and(|burst| printed.can_be_burst(burst.get()))
}
