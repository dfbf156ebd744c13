//! What stands on the cover -> fields: standard, type, size, working pressure, date, whole or worn.
//!
//! Words are split, what is certain is taken first, and the tables are asked which hose it can be.

mod clues;
mod date;
mod names;
mod pressure;
mod reader;
mod rows;
mod words;

pub use date::Made;
pub(crate) use pressure::is_one_pressure;

use crate::catalogue::{Catalogue, HoseRow};
use crate::quantity::{Bar, Dn};
use crate::spec::Cover;
use clues::{Clues, Size};
use names::Names;
use rows::Fit;
use schemars::JsonSchema;
use serde::Serialize;
use thiserror::Error;
use ts_rs::TS;

/// What a print says, as far as it can be read. A field is empty where the print does not say it, or
/// leaves more than one reading; `candidates` has every hose it can be. Where any letter is worn, a
/// field is stated only if every hose that the rest leaves possible agrees on it.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema, TS)]
pub struct Printed {
    /// Standard; the first of several. A type alone is given the standard whose own sizes it has.
    pub standard: Option<String>,
    /// Type.
    #[serde(rename = "type")]
    pub kind: Option<String>,
    /// Nominal diameter, by the table's name for it.
    pub dn: Option<Dn>,
    /// Dash size.
    pub dash: Option<u16>,
    /// Working pressure as printed; burst figures are never taken for it.
    pub pressure_bar: Option<Bar>,
    /// When it was made. Of several readings of a date (12/24 is December or week 12) the customary one.
    pub made: Option<Made>,
    /// The other readings of that date.
    pub made_or: Vec<Made>,
    /// A cover with a duty of its own.
    pub cover: Option<Cover>,
    /// Words that said nothing known.
    pub unread: String,
    /// Every row of the tables that the print can mean, in their order.
    pub candidates: Vec<PrintCandidate>,
}

/// A hose that a print can mean.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PrintCandidate {
    /// Standard.
    pub standard: String,
    /// Type.
    #[serde(rename = "type")]
    pub kind: String,
    /// Nominal diameter.
    pub dn: Dn,
    /// Dash size.
    pub dash: Option<u16>,
    /// The table's working pressure, which may differ from the printed one.
    pub pressure_bar: Option<Bar>,
}

/// Why a print can not be read.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum PrintError {
    /// More than stands on any hose.
    #[error("the print has {letters} letters; give one repeat of it, {most} at most")]
    TooLong {
        /// Letters given.
        letters: usize,
        /// Letters that can be read.
        most: usize,
    },
}

/// The longest print that is read. One repeat on a hose is at most 760 mm long (SAE J517).
const LONGEST: usize = 500;

/// Logarithm of the chance that a part of a print is another than it reads: misread, or a cover of
/// another hose. Common practice: a print that can be read is nearly always right.
const LN_MISREAD: f64 = -9.2;
/// The same for the pressure, which changed between editions of the standards.
const LN_OTHER_PRESSURE: f64 = -3.0;
/// Logarithm of the chance that a hose of none of the tables bears that standard, type, size or
/// pressure.
const LN_BY_CHANCE: f64 = -4.5;
/// Logarithm of the chance that a whole cover names a hose that it is not. Common practice, no source.
const LN_OTHER_COVER: f64 = -5.0;

/// Reads what stands on a cover. Worn letters are given as `?` or `.` (one) and `*` or `...` (any
/// number).
///
/// # Errors
/// More letters than stand on a hose.
pub fn read(catalogue: &Catalogue, text: &str) -> Result<Printed, PrintError> {
    let names = Names::of(catalogue);
    let clues = clues_of(&names, text)?;
    let consistent: Vec<(&HoseRow, Fit)> = all_rows(catalogue)
        .map(|row| (row, Fit::of(catalogue, row, &clues)))
        .filter(|(_, fit)| fit.is_consistent())
        .collect();
    let says_hose = clues.names_hose();
    let named = name(catalogue, &clues, &consistent);
    let (dn, dash) = size(&clues, &consistent, &named);
    Ok(Printed {
        standard: named.standard.map(str::to_owned).or_else(|| only_standard(&clues)),
        kind: named.kind.map(str::to_owned),
        dn,
        dash,
        pressure_bar: working_pressure(&clues, &consistent),
        made: clues.made.first().copied(),
        made_or: clues.made.iter().skip(1).copied().collect(),
        cover: clues.cover,
        candidates: if says_hose || clues.pressure.is_some() { candidates(&consistent) } else { Vec::new() },
        unread: clues.unread,
    })
}

/// How a print speaks for each of some rows, as logarithms of likelihoods.
#[derive(Debug)]
pub(crate) struct PrintEvidence {
    /// For each row.
    pub(crate) rows: Vec<f64>,
    /// For a hose of none of the tables.
    pub(crate) unknown: f64,
    /// What it says in so many words.
    pub(crate) said: Said,
}

/// What a print says of the hose, to hold against what is seen of it.
#[derive(Debug, Default)]
pub(crate) struct Said {
    /// Whether it names a standard, type or size.
    pub(crate) names_hose: bool,
    /// Places of the rows it can mean; none where it names no hose or contradicts itself.
    pub(crate) meant: Vec<usize>,
    /// Standard, type and size as read.
    pub(crate) named: String,
    /// Working pressure as printed.
    pub(crate) pressure: Option<Bar>,
    /// Year in which it was made, where all that its date can be agrees on it.
    pub(crate) year: Option<u16>,
    /// A cover with a duty of its own.
    pub(crate) cover: Option<Cover>,
}

/// What a print says for and against rows. It lowers, and never forces: readings can outweigh it.
///
/// # Errors
/// More letters than stand on a hose.
pub(crate) fn evidence(
    catalogue: &Catalogue,
    text: &str,
    rows: &[&HoseRow],
) -> Result<PrintEvidence, PrintError> {
    // Most hoses come without: nothing is looked up for them.
    if text.is_empty() {
        return Ok(PrintEvidence { rows: vec![0.0; rows.len()], unknown: 0.0, said: Said::default() });
    }
    let names = Names::of(catalogue);
    let clues = clues_of(&names, text)?;
    let against = |fits: Option<bool>, ln: f64| if fits == Some(false) { ln } else { 0.0 };
    let fits: Vec<(&HoseRow, Fit)> = rows.iter().map(|row| (*row, Fit::of(catalogue, row, &clues))).collect();
    let ln_likelihood = |(_, fit): &(&HoseRow, Fit)| {
        against(fit.standard, LN_MISREAD)
            + against(fit.kind, LN_MISREAD)
            + against(fit.size, LN_MISREAD)
            + against(fit.pressure, LN_OTHER_PRESSURE)
    };
    let said = [
        !clues.standards.is_empty(),
        !clues.kinds.is_empty(),
        !clues.sizes.is_empty(),
        clues.pressure.is_some(),
    ];
    let by_chance = LN_BY_CHANCE * said.into_iter().filter(|said| *said).count() as f64;
    // A cover that names a hose of the tables belongs to no other hose, in a table or not, but by mistake.
    let names_type = !(clues.standards.is_empty() && clues.kinds.is_empty());
    let names_row = names_type && fits.iter().any(|(_, fit)| fit.is_consistent());
    let of_another = LN_OTHER_COVER + by_chance;
    Ok(PrintEvidence {
        rows: fits.iter().map(|fit| ln_likelihood(fit).max(of_another)).collect(),
        unknown: if names_row { of_another } else { by_chance },
        said: said_of(&clues, &fits),
    })
}

fn said_of(clues: &Clues<'_>, fits: &[(&HoseRow, Fit)]) -> Said {
    let names_hose = clues.names_hose();
    let places = fits.iter().enumerate().filter(|(_, (_, fit))| names_hose && fit.is_consistent());
    let consistent: Vec<(&HoseRow, Fit)> =
        fits.iter().filter(|(_, fit)| fit.is_consistent()).copied().collect();
    Said {
        names_hose,
        meant: places.map(|(at, _)| at).collect(),
        named: clues.named(),
        pressure: working_pressure(clues, &consistent),
        year: clues.year(),
        cover: clues.cover,
    }
}

fn clues_of<'c>(names: &Names<'c>, text: &str) -> Result<Clues<'c>, PrintError> {
    let letters = text.chars().count();
    if letters > LONGEST {
        return Err(PrintError::TooLong { letters, most: LONGEST });
    }
    Ok(clues::clues(&words::words(text), names))
}

fn all_rows(catalogue: &Catalogue) -> impl Iterator<Item = &HoseRow> {
    catalogue.hoses.iter().chain(&catalogue.twins)
}

/// Standard and type as the print names them, where it names but one.
#[derive(Debug, Default)]
struct Named<'c> {
    standard: Option<&'c str>,
    kind: Option<&'c str>,
}

/// The standard and type of the rows that the first mentions can mean. In a whole print custom
/// decides between several: rows at the printed pressure go before others; a thick-cover type, which
/// has to be skived and has gone out of use, stands behind its thin-cover sister; of several
/// standards the first of the tables is named (common practice). A worn letter may have said
/// otherwise: there nothing but agreement of all rows will do.
fn name<'c>(catalogue: &Catalogue, clues: &Clues<'_>, consistent: &[(&'c HoseRow, Fit)]) -> Named<'c> {
    let Some(kinds) = clues.kinds.first() else { return Named::default() };
    let standards = clues.standards.first();
    let first_mention = |row: &HoseRow| {
        kinds.names.contains(&row.kind.as_str())
            && standards.is_none_or(|mention| mention.names.contains(&row.standard.as_str()))
    };
    let mut rows = consistent.to_vec();
    keep_if_any(&mut rows, |(row, _)| first_mention(row));
    if !clues.is_worn {
        keep_if_any(&mut rows, |(_, fit)| fit.pressure == Some(true));
        keep_if_any(&mut rows, |(row, _)| !is_skived(catalogue, row));
    }
    let kind = agreed(&rows, |row| row.kind.as_str());
    let standard = match clues.is_worn {
        true => agreed(&rows, |row| row.standard.as_str()),
        false => kind.and_then(|_| Some(rows.first()?.0.standard.as_str())),
    };
    Named { standard, kind }
}

/// What all rows have in common.
fn agreed<'c, T: PartialEq>(rows: &[(&'c HoseRow, Fit)], of: impl Fn(&'c HoseRow) -> T) -> Option<T> {
    let mut all = rows.iter().map(|(row, _)| of(row));
    let first = all.next()?;
    all.all(|other| other == first).then_some(first)
}

fn keep_if_any<T>(all: &mut Vec<T>, keep: impl Fn(&T) -> bool) {
    if all.iter().any(&keep) {
        all.retain(keep);
    }
}

fn is_skived(catalogue: &Catalogue, row: &HoseRow) -> bool {
    catalogue.hose_type(&row.standard, &row.kind).is_ok_and(|kind| kind.cover.contains("(skive)"))
}

/// The working pressure as printed. A figure that nothing calls so is none where it is the burst
/// pressure of a hose the print can mean and the rating of none, or where worn letters can have said
/// so.
fn working_pressure(clues: &Clues<'_>, consistent: &[(&HoseRow, Fit)]) -> Option<Bar> {
    let printed = clues.pressure.as_ref()?;
    let is_rated = consistent.iter().any(|(_, fit)| fit.pressure == Some(true));
    let is_burst = consistent.iter().any(|(row, _)| rows::is_burst_of(row, printed));
    let is_open = is_burst && (clues.is_worn || (clues.names_hose() && !is_rated));
    printed.bar().filter(|_| !is_open)
}

fn only_standard(clues: &Clues<'_>) -> Option<String> {
    match clues.standards.first()?.names.as_slice() {
        [standard] => Some((*standard).to_owned()),
        _ => None,
    }
}

/// Nominal diameter and dash, where size, standard and type leave but one. The printed pressure does
/// not decide: it differs between editions.
fn size(clues: &Clues<'_>, consistent: &[(&HoseRow, Fit)], named: &Named<'_>) -> (Option<Dn>, Option<u16>) {
    if clues.sizes.is_empty() {
        return (None, None);
    }
    let mut rows = consistent.to_vec();
    rows.retain(|(row, _)| {
        named.standard.is_none_or(|standard| row.standard == standard)
            && named.kind.is_none_or(|kind| row.kind == kind)
    });
    keep_if_any(&mut rows, |(row, _)| rows::is_exact(row, &clues.sizes));
    let dn = agreed(&rows, |row| row.dn);
    let printed = clues.sizes.iter().find_map(|size| match size {
        Size::Dash(dash) => Some(*dash),
        _ => None,
    });
    let dash = printed.or_else(|| dn.and_then(|_| agreed(&rows, |row| row.dash)?));
    (dn, dash)
}

/// Every row that can be meant. Of the sizes of a type those at the printed pressure, where there are
/// any; a type without one stays where the print names it with its standard, because ratings differ
/// between editions and several standards stand on one hose.
fn candidates(consistent: &[(&HoseRow, Fit)]) -> Vec<PrintCandidate> {
    let is_of = |a: &HoseRow, b: &HoseRow| a.standard == b.standard && a.kind == b.kind;
    consistent
        .chunk_by(|(a, _), (b, _)| is_of(a, b))
        .flat_map(|sizes| {
            let at_pressure = sizes.iter().any(|(_, fit)| fit.pressure == Some(true));
            sizes.iter().filter(move |(_, fit)| match fit.pressure {
                None | Some(true) => true,
                Some(false) => !at_pressure && fit.standard == Some(true) && fit.kind == Some(true),
            })
        })
        .map(|(row, _)| PrintCandidate {
            standard: row.standard.clone(),
            kind: row.kind.clone(),
            dn: row.dn,
            dash: row.dash,
            pressure_bar: row.max_working_pressure_bar,
        })
        .collect()
}
