//! What may stand in for what is short: another hose, or another end with an adapter on it.

use super::build::{Build, Part};
use super::names::{end, hose_name, item_name, mm, tenths};
use super::said::{Said, SaidCode};
use super::shelf::Shelf;
use crate::commands::check::checked;
use crate::{Api, ApiError};
use hosewright_core::check::{Verdict, alternatives_of};
use hosewright_core::quantity::{Bar, Millimetres};
use hosewright_core::record::PieceId;
use hosewright_core::spec::{Adapter, Between, EndSpec, HoseRef, Role, Spec};
use hosewright_core::stock::{Found, Item, Stands, StockKind, Thing};
use hosewright_store::PieceKept;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Another hose that may be made in its place.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseSubstitute {
    /// Which.
    pub hose: Thing,
    /// It in words.
    pub name: String,
    /// What the whole check says of it; never stop.
    pub verdict: Verdict,
    /// For and against, in words.
    pub reasons: Vec<String>,
    /// The longest piece.
    pub piece: PieceId,
    /// Its bin.
    pub bin: String,
    /// Its length.
    pub length_mm: Millimetres,
}

/// Another end with an adapter on it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct AdapterWay {
    /// At which end.
    pub role: Role,
    /// The end that goes on the hose.
    pub end: Item,
    /// The adapter between it and the machine.
    pub adapter: Item,
    /// Both in words.
    pub names: Vec<String>,
    /// What the whole check says of it; never stop.
    pub verdict: Verdict,
    /// Rating of the whole with the adapter in the chain.
    pub assembly_pressure_bar: Option<Bar>,
    /// What would be made. Its length is to be measured anew: the adapter has one of its own.
    pub spec: Spec,
}

/// Other hoses of the store that are long enough for the length asked for, put through the whole check.
pub(super) fn substitutes(api: &Api, shelf: &Shelf, build: &Build) -> Result<Vec<HoseSubstitute>, ApiError> {
    let Some(length) = build.cut_mm else { return Ok(Vec::new()) };
    let length = tenths("cut_length_mm", length)?;
    let mut longest: Vec<&PieceKept> = Vec::new();
    for kept in shelf.pieces().filter(|kept| kept.tenths_mm >= length) {
        match longest.iter_mut().find(|one| one.piece.record.hose == kept.piece.record.hose) {
            Some(one) if one.tenths_mm < kept.tenths_mm => *one = kept,
            Some(_) => {}
            None => longest.push(kept),
        }
    }
    let hoses: Vec<HoseRef> = longest.iter().filter_map(|kept| reference(&kept.piece.record.hose)).collect();
    let tried = alternatives_of(api.catalogue, &build.question, &hoses)?;
    let may = tried.into_iter().filter(|tried| tried.verdict != Verdict::Stop);
    let found = may.filter_map(|mut tried| {
        // Another size is another bore and other ends.
        let own = build.question.spec.hose.as_ref()?.dn;
        if !api.catalogue.one_size(own, tried.dn) {
            return None;
        }
        let hose = Thing::Hose { standard: tried.standard, kind: tried.kind, dn: tried.dn };
        let kept = longest.iter().find(|kept| kept.piece.record.hose == hose)?;
        for ground in &mut tried.grounds {
            crate::commands::check::word(api.words(), ground);
        }
        Some(HoseSubstitute {
            name: hose_name(&hose),
            hose,
            verdict: tried.verdict,
            reasons: tried.grounds.into_iter().map(|ground| ground.why).collect(),
            piece: kept.piece.record.piece,
            bin: kept.piece.record.bin.clone(),
            length_mm: mm(kept.tenths_mm),
        })
    });
    Ok(found.collect())
}

fn reference(hose: &Thing) -> Option<HoseRef> {
    match hose {
        Thing::Hose { standard, kind, dn } => Some(HoseRef::named(standard.as_str(), kind.as_str(), *dn)),
        _ => None,
    }
}

/// For each end that is not there: every other end of the store that an adapter of the store makes it of, by the whole
/// check with the adapter's rating in the chain. An adapter that the check can not reckon with is said.
pub(super) fn adapters(
    api: &Api,
    shelf: &Shelf,
    build: &Build,
    found: &[Found],
    said: &mut Vec<Said>,
) -> Vec<AdapterWay> {
    let mut items: Vec<Item> = Vec::new();
    for kept in shelf.items().into_iter().filter(|kept| kept.quantity > 0) {
        if !items.contains(&kept.item) {
            items.push(kept.item);
        }
    }
    let mut ways = Vec::new();
    for wanted in &build.question.spec.ends {
        let short = |part: &&Part| {
            part.role == Some(wanted.role)
                && part.item.kind() == StockKind::End
                && found.iter().any(|one| one.wanted.item == part.item && one.stands != Stands::There)
        };
        if !build.wanted.iter().any(|part| short(&part)) {
            continue;
        }
        for adapter in &items {
            for other in &items {
                match way(api, build, wanted, adapter, other) {
                    Ok(way) => ways.extend(way),
                    Err(_) => not_reckoned(api, adapter, said),
                }
            }
        }
    }
    ways.sort_by_key(|way| way.verdict);
    ways
}

/// One adapter that another device took in as it can not be does not keep the others from being found.
fn not_reckoned(api: &Api, adapter: &Item, said: &mut Vec<Said>) {
    let name = item_name(adapter, api.words());
    let one = Said::of(api.words(), SaidCode::AdapterNotReckoned, &[("name", &name)]);
    if !said.contains(&one) {
        said.push(one);
    }
}

/// That end with that adapter in the place of the wanted end, where they fit and the check does not stop it.
fn way(
    api: &Api,
    build: &Build,
    wanted: &EndSpec,
    adapter: &Item,
    other: &Item,
) -> Result<Option<AdapterWay>, ApiError> {
    let Item::Thing(Thing::Adapter {
        name,
        hose_side: Some(hose_side),
        machine_side: Some(machine_side),
        rating_bar,
    }) = adapter
    else {
        return Ok(None);
    };
    let Item::Thing(Thing::End { family, size, gender, form, dn, .. }) = other else { return Ok(None) };
    let fits_hose = build.hose.as_ref().is_some_and(|hose| match hose {
        Thing::Hose { dn: own, .. } => api.catalogue.one_size(*own, *dn),
        _ => false,
    });
    let instead = end(wanted.role, family, size, *gender, form.clone());
    if !fits_hose || !machine_side.is_like(wanted) || !hose_side.takes(&instead) {
        return Ok(None);
    }
    let mut question = build.question.clone();
    for end in question.spec.ends.iter_mut().filter(|end| end.role == wanted.role) {
        *end = instead.clone();
    }
    question.spec.adapters.push(Adapter {
        name: name.clone(),
        rating_bar: *rating_bar,
        between: Some(Between {
            role: wanted.role,
            hose_side: hose_side.clone(),
            machine_side: machine_side.clone(),
        }),
    });
    let checked = checked(api, &question)?;
    if checked.verdict == Verdict::Stop {
        return Ok(None);
    }
    Ok(Some(AdapterWay {
        role: wanted.role,
        end: other.clone(),
        adapter: adapter.clone(),
        names: vec![item_name(other, api.words()), item_name(adapter, api.words())],
        verdict: checked.verdict,
        assembly_pressure_bar: checked.assembly_pressure_bar,
        spec: question.spec,
    }))
}
