//! What a build needs against what is there: the piece to cut from, parts, and what may stand in for what is short.

use super::build::Build;
use super::cutting::{CutFrom, Cutting};
use super::instead::{AdapterWay, HoseSubstitute, adapters, substitutes};
use super::line::{NeedLine, line};
use super::said::Said;
use super::shelf::Shelf;
use super::used::{Used, UsedItem, UsedPiece};
use crate::commands::make::{MakeQuestion, Prepared};
use crate::{Answer, Api, ApiError};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::PieceId;
use hosewright_core::stock::{Found, Item, Shelved, Stands, Wanted};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What is to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "NeedQuestion")]
pub struct NeedQuestion {
    /// What is to be made, by which settings.
    pub make: MakeQuestion,
    /// From which van or shelf; the one this device works from without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub store: Option<String>,
    /// How many such hoses; one without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub count: Option<u32>,
    /// Sleeves, seals and other things that each hose takes beside.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<Extra>>")]
    pub more: Vec<Extra>,
}

/// Something that a hose takes beside hose, ends and ferrules.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "ExtraPart")]
pub struct Extra {
    /// What.
    pub item: Item,
    /// How many for each hose.
    #[ts(type = "number")]
    pub count: i64,
}

/// What is needed, what is there, and what may stand in.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Need {
    /// Of which van or shelf.
    pub store: String,
    /// What the check says of it. Nothing is cut or used while it says stop.
    pub verdict: Verdict,
    /// What is needed against what is there.
    pub lines: Vec<NeedLine>,
    /// What is cut from what.
    pub cuts: Vec<CutFrom>,
    /// Other hoses of this store that are long enough and may be made, each by the whole check.
    pub substitutes: Vec<HoseSubstitute>,
    /// For an end that is short: another end with an adapter on it, by the whole check.
    pub adapters: Vec<AdapterWay>,
    /// What the record of each build may be told that it used, without what was never kept here; none while something is
    /// short or not known.
    pub used: Vec<Used>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// Most hoses that are asked for at once.
const MOST: u32 = 100;

/// What a build needs against what one van or shelf has.
///
/// # Errors
/// What `check` refuses; no such store; the register can not be read.
pub fn need(api: &mut Api, asked: NeedQuestion, _: &[u8]) -> Result<Answer<Need>, ApiError> {
    let count = asked.count.unwrap_or(1);
    if !(1..=MOST).contains(&count) {
        return Err(ApiError::input("count", format!("1 to {MOST} is expected")));
    }
    let prepared = Prepared::of(api, asked.make)?;
    let one = Build::of(api.catalogue, prepared, asked.more)?;
    let shelf = Shelf::of(api, asked.store.as_deref())?;
    let kerf = one.kerf;
    let mut said = one.said(api);
    let cut = Cutting::of(api, &shelf, &one.hose, &vec![one.cut_mm; count as usize], kerf)?;
    said.extend(cut.said.clone());
    let wanted: Vec<Wanted> = one.wanted.iter().map(|part| part.wanted(i64::from(count))).collect();
    let found = shelf.needs(api.catalogue, &wanted);
    let mut lines: Vec<NeedLine> = cut.line.iter().cloned().collect();
    lines.extend(found.iter().map(|found| line(api, &shelf, found, one.roles_of(&found.wanted.item))));
    lines.extend(one.unnamed_ferrules(api));
    let stops = one.checked.verdict == Verdict::Stop;
    let hose_open = stops || lines.first().is_some_and(|line| line.state != Stands::There);
    let substitutes = if hose_open { substitutes(api, &shelf, &one)? } else { Vec::new() };
    let adapters = adapters(api, &shelf, &one, &found, &mut said);
    let used = if stops { Vec::new() } else { used(&shelf, &cut, &found, count) };
    let cuts = if stops { Vec::new() } else { cut.from.clone() };
    let verdict = one.checked.verdict;
    Ok(api.answer(Need { store: shelf.store, verdict, lines, cuts, substitutes, adapters, used, said }))
}

/// What each build uses, where all of it is there but what was never kept here: of that there is nothing to take. One that
/// takes from the doubtful is for a person to say.
fn used(shelf: &Shelf, cut: &Cutting, found: &[Found], count: u32) -> Vec<Used> {
    let never_kept = |one: &Found| one.stands == Stands::NotKept && one.doubtful.is_empty();
    let all_there = found.iter().all(|one| one.stands == Stands::There || never_kept(one));
    let pieces: Option<Vec<PieceId>> = cut.of.iter().copied().collect();
    let lengths: Vec<(PieceId, Millimetres)> =
        cut.from.iter().flat_map(|from| from.cuts_mm.iter().map(|length| (from.piece, *length))).collect();
    let (true, Some(pieces)) = (all_there, pieces) else { return Vec::new() };
    let mut stocked: Vec<(Shelved, i64)> = found.iter().flat_map(|one| one.from.iter().cloned()).collect();
    let builds = pieces.into_iter().enumerate().map(|(at, piece)| {
        let length =
            lengths.iter().find(|(of, _)| *of == piece).map_or(Millimetres(0.0), |(_, length)| *length);
        let rest = i64::from(count) - at as i64;
        let items = stocked.iter_mut().filter_map(|(kept, left)| {
            let own = (*left + rest - 1) / rest;
            *left -= own;
            let (item, bin) = (kept.item.clone(), Some(kept.bin.clone()));
            (own > 0).then_some(UsedItem { item, count: own, bin })
        });
        Used {
            store: shelf.store.clone(),
            items: items.collect(),
            pieces: vec![UsedPiece { piece, length_mm: length, scrap_rest: false }],
        }
    });
    builds.collect()
}
