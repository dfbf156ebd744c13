//! What a build used, taken from stock with its record; and the build undone, which gives it back.

use super::build::Build;
use super::cutting::aged;
use super::doing::Doing;
use super::names::{hose_name, item_name, mm, tenths};
use super::said::{Said, SaidCode};
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::{Body, EventRef, PieceId, Proof, StockUnit, StockWhy, TagWithdrawn, Voided};
use hosewright_core::stock::Item;
use hosewright_core::tag::TagCode;
use hosewright_store::{NewEvent, Status, StockUsed, UsedWhat};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What a build used.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(rename = "StockUsed")]
pub struct Used {
    /// From which van or shelf the counted things are.
    pub store: String,
    /// The hose.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pieces: Vec<UsedPiece>,
    /// Ends, ferrules and the rest.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub items: Vec<UsedItem>,
}

/// A length that was cut from a piece.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct UsedPiece {
    /// From which piece.
    pub piece: PieceId,
    /// The length as it was cut; the saw's kerf comes to it.
    pub length_mm: Millimetres,
    /// Whether what was left of the piece was thrown away.
    #[serde(default)]
    pub scrap_rest: bool,
}

/// Counted things that were used.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct UsedItem {
    /// What.
    pub item: Item,
    /// How many.
    #[ts(type = "number")]
    pub count: i64,
    /// Out of which bin; out of those that have some without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub bin: Option<String>,
}

/// What a build takes from stock.
#[derive(Debug, Default)]
pub(in crate::commands) struct Taken {
    /// The events that take it.
    pub bodies: Vec<Body>,
    /// When its hose was made, as the piece says.
    pub made: Option<NaiveDate>,
    /// What a person must see of it.
    pub said: Vec<Said>,
}

/// Takes from stock what a build used.
///
/// # Errors
/// A piece of another hose than is built, a part that is none of the build's, or more than there can be.
pub(in crate::commands) fn used_bodies(
    api: &mut Api,
    used: Used,
    build: &Build,
    code: TagCode,
) -> Result<Taken, ApiError> {
    let mut doing = Doing::begin(api)?;
    let kerf = build.kerf;
    let (mut made, mut said) = (None, Vec::new());
    let named =
        |at: usize, what: &str, error: ApiError| ApiError { field: format!("used.{what}[{at}]"), ..error };
    for (at, one) in used.pieces.iter().enumerate() {
        let wrong = |error| named(at, "pieces", error);
        let length = tenths("length_mm", one.length_mm).map_err(wrong)?;
        let (piece, before) = doing.piece(one.piece).map_err(wrong)?;
        if build.hose.as_ref() != Some(&piece.hose) {
            let built = build.hose.as_ref().map_or_else(|| "not said".to_owned(), hose_name);
            let why = format!("the piece is {}, the hose that is built is {built}", hose_name(&piece.hose));
            return Err(wrong(ApiError::input("piece", why)));
        }
        made = made.or(piece.made);
        said.extend(aged(api, &piece));
        // A piece that comes out even needs no cut behind it.
        let kerf = kerf.map_or(Ok(0), |kerf| tenths("kerf_mm", kerf)).map_err(wrong)?;
        let kerf = kerf.min((before - length).max(0));
        let left = doing.lengthen(one.piece, -(length + kerf), StockWhy::Used, Some(code)).map_err(wrong)?;
        if one.scrap_rest && left > 0 {
            doing.lengthen(one.piece, -left, StockWhy::Scrapped, Some(code)).map_err(wrong)?;
        }
    }
    if !used.items.is_empty() {
        let store =
            doing.store(&used.store).map_err(|error| ApiError { field: "used.store".into(), ..error })?;
        for (at, one) in used.items.into_iter().enumerate() {
            let wrong = |error| named(at, "items", error);
            let at_store = doing.at(api, &store, one.item).map_err(wrong)?;
            if !build.may_use(api.catalogue, &at_store.item) {
                let why = format!("{} is no part of what is built", item_name(&at_store.item, api.words()));
                return Err(wrong(ApiError::input("item", why)));
            }
            if !(1..=1000).contains(&one.count) {
                return Err(wrong(ApiError::input("", "a whole number from 1 to 1000 is expected")));
            }
            let bin = one.bin.map(|bin| doing.bin(&store, &bin));
            doing.take_out(&at_store, bin.as_deref(), one.count, StockWhy::Used, Some(code));
        }
    }
    said.extend(doing.said(api));
    if kerf.is_none() && !used.pieces.is_empty() {
        said.push(Said::of(api.words(), SaidCode::KerfNotKnown, &[]));
    }
    Ok(Taken { bodies: doing.bodies, made, said })
}

/// A build that is undone.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
#[ts(optional_fields)]
pub struct BenchUndo {
    /// The code of the hose.
    pub code: TagCode,
    /// Why.
    pub reason: String,
    /// Whether what it used comes back. Without: all of it, but nothing of a hose that failed its proof, which is scrap.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub give_back: Option<bool>,
}

/// What was undone.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BenchUndone {
    /// The event; it is on the disk.
    pub written: EventRef,
    /// What came back.
    pub given_back: Vec<GivenBack>,
}

/// Something that came back.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "StockGivenBack")]
pub struct GivenBack {
    /// It in words.
    pub name: String,
    /// How much: a number, of hose millimetres.
    pub quantity: f64,
    /// Counted in.
    pub unit: StockUnit,
}

/// Strikes out the record of a build, and with it what it used; its tag is withdrawn. Done twice, on two devices, it gives back once.
///
/// # Errors
/// There is no such hose, or it sits or sat on a machine; no reason; the register can not be written.
pub fn undo(api: &mut Api, asked: BenchUndo, _: &[u8]) -> Result<Answer<BenchUndone>, ApiError> {
    let register = api.register()?;
    let hose = register.hose(&asked.code)?;
    let none = || ApiError::nothing("code", format!("the register has no build of {}", asked.code));
    let hose = hose.ok_or_else(none)?;
    let made = hose.assembly.as_ref().ok_or_else(none)?;
    if matches!(hose.status, Status::Fitted | Status::TakenOff) {
        let why =
            format!("{} was fitted: what sat on a machine was made; void its fitting first", asked.code);
        return Err(ApiError::input("code", why));
    }
    let failed = matches!(made.record.proof, Proof::Failed { .. });
    let used = match asked.give_back.unwrap_or(!failed) {
        true => register.used_for(asked.code)?,
        false => Vec::new(),
    };
    let versions = hose.history.iter().filter(|one| !one.void && matches!(one.body, Body::AssemblyMade(_)));
    let mut struck: Vec<EventRef> = versions.map(|one| one.event).collect();
    struck.extend(used.iter().map(|one| one.version));
    let given_back = given_back(api, used)?;
    let now = api.world.now();
    // A tag may be out already: with the record of its build it loses all that it rests on.
    let reason = api.words.say("stock-undone-tag", &[("reason", &asked.reason)]);
    let withdrawn = (!matches!(hose.status, Status::Withdrawn { .. }))
        .then(|| NewEvent::from(Body::TagWithdrawn(TagWithdrawn { code: asked.code, reason })));
    let voided = NewEvent::on(Body::Voided(Voided { reason: asked.reason }), struck);
    let written = api.register()?.append(withdrawn.into_iter().chain([voided]), now)?;
    let written =
        written.into_iter().next_back().ok_or_else(|| ApiError::file("db", "nothing was written"))?;
    Ok(api.answer(BenchUndone { written, given_back }))
}

fn given_back(api: &mut Api, used: Vec<StockUsed>) -> Result<Vec<GivenBack>, ApiError> {
    let pieces = api.register()?.pieces()?;
    let words = api.words();
    let one = |used: StockUsed| match used.what {
        UsedWhat::Item { item, count, .. } => {
            GivenBack { name: item_name(&item, words), quantity: count as f64, unit: StockUnit::Pieces }
        }
        UsedWhat::Piece { piece, tenths_mm } => {
            let kept = pieces.iter().find(|kept| kept.piece.record.piece == piece);
            let name = kept.map_or_else(|| piece.to_string(), |kept| hose_name(&kept.piece.record.hose));
            GivenBack { name, quantity: mm(tenths_mm).get(), unit: StockUnit::Millimetres }
        }
    };
    Ok(used.into_iter().map(one).collect())
}
