//! The cut list of one hose of a batch.

use super::One;
use crate::commands::stock::{Cutting, NeedLine, Said, Shelf};
use crate::{Api, ApiError};
use hosewright_core::cutting::StockSort;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::PieceId;
use hosewright_core::stock::{Stands, Thing};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// The cut list of one hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BatchCut {
    /// The hose.
    pub hose: String,
    /// The pieces that are cut, each with what is cut from it.
    pub steps: Vec<CutStep>,
    /// What no piece can give.
    pub unmade: Vec<CutLength>,
    /// New hose taken off the reels, kerf included.
    pub reel_mm: Millimetres,
    /// Rests of cut offcuts that are too short to keep.
    pub scrap_mm: Millimetres,
    /// Nothing better exists: less left unmade, then less off the reels, then less scrap.
    pub proved: bool,
    /// No plan that leaves as little unmade takes less than this off the reels.
    pub least_reel_mm: Millimetres,
}

/// A piece and what is cut from it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutStep {
    /// The piece.
    pub piece: PieceId,
    /// Reel or offcut.
    pub sort: StockSort,
    /// Its bin; blank is not said.
    pub bin: String,
    /// The supplier's name for it.
    pub label: String,
    /// Its length before.
    pub length_mm: Millimetres,
    /// What is cut, longest first.
    pub cuts: Vec<CutLength>,
    /// Its length after.
    pub left_mm: Millimetres,
    /// Whether the rest is kept; one of an offcut that is too short is scrap.
    pub kept: bool,
}

/// A length to cut, and for which hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct CutLength {
    /// What the hose is called.
    pub name: String,
    /// The length.
    pub length_mm: Millimetres,
}

/// What is cut from what of one hose, and the line of the parts' list.
pub(super) fn cut_list(
    api: &mut Api,
    shelf: &Shelf,
    hose: &Thing,
    made: &[&One],
    said: &mut Vec<Said>,
) -> Result<(BatchCut, Option<NeedLine>), ApiError> {
    let own: Vec<&One> = made.iter().filter(|one| one.build.hose.as_ref() == Some(hose)).copied().collect();
    let known: Vec<(&One, Millimetres)> =
        own.iter().filter_map(|one| Some((*one, one.build.cut_mm?))).collect();
    // The widest cut that any of them is made with: every plan can then be cut.
    let kerfs = own.iter().filter_map(|one| one.build.kerf);
    let kerf = kerfs.max_by(|one, other| one.get().total_cmp(&other.get()));
    let lengths: Vec<Option<Millimetres>> = known.iter().map(|(_, length)| Some(*length)).collect();
    let cut = Cutting::of(api, shelf, &Some(hose.clone()), &lengths, kerf)?;
    said.extend(cut.said);
    let named = |place: &usize| {
        known.get(*place).map(|(one, length)| CutLength { name: one.name.clone(), length_mm: *length })
    };
    let nothing = Millimetres(0.0);
    let mut list = BatchCut {
        hose: hose.name(),
        steps: Vec::new(),
        unmade: Vec::new(),
        reel_mm: nothing,
        scrap_mm: nothing,
        proved: false,
        least_reel_mm: nothing,
    };
    if let Some(plan) = cut.plan {
        for (from, stock) in cut.from.into_iter().zip(&plan.cuts) {
            list.steps.push(CutStep {
                piece: from.piece,
                sort: from.sort,
                bin: from.bin,
                label: from.label,
                length_mm: from.length_mm,
                cuts: stock.pieces.iter().filter_map(named).collect(),
                left_mm: from.left_mm,
                kept: from.kept,
            });
        }
        list.unmade = plan.unmade.iter().filter_map(named).collect();
        (list.reel_mm, list.scrap_mm) = (plan.reel_mm, plan.scrap_mm);
        (list.proved, list.least_reel_mm) = (plan.proved, plan.least_reel_mm);
    }
    // Lengths that are not known make what is wanted not known.
    let line = cut.line.map(|mut line| {
        if known.len() < own.len() {
            line.state = Stands::NotKnown;
        }
        line
    });
    Ok((list, line))
}
