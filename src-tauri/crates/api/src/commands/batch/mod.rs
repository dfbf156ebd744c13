//! `batch`: several hoses for one machine or visit -> one cut list, parts against stock, and the order of work.

mod cuts;
mod paper;
mod press;

pub use cuts::{BatchCut, CutLength, CutStep};
pub use paper::{BatchPaper, cut_words, lengths, paper, part_row, press_words};
pub use press::PressSetup;

use super::make::{MakeQuestion, Prepared, shared_steps};
use super::stock::{Build, Extra, NeedLine, Said, SaidCode, Shelf, line};
use crate::{Answer, Api, ApiError};
use cuts::cut_list;
use hosewright_core::check::{Finding, Verdict};
use hosewright_core::make::SheetStep;
use hosewright_core::quantity::Millimetres;
use hosewright_core::stock::{Thing, Wanted};
use press::presses;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The hoses of a batch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct BatchQuestion {
    /// In any order.
    pub hoses: Vec<BatchHose>,
    /// From which van or shelf; the one this device works from without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub store: Option<String>,
}

/// A hose of a batch.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct BatchHose {
    /// What it is called in the lists, such as its place.
    pub name: String,
    /// What is to be made, by which settings.
    pub make: MakeQuestion,
    /// How many; one without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub count: Option<u32>,
    /// Sleeves, seals and other things that each takes beside.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[ts(optional, as = "Option<Vec<Extra>>")]
    pub more: Vec<Extra>,
}

/// A batch as it is worked.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "BatchPlan")]
pub struct Planned {
    /// From which van or shelf.
    pub store: String,
    /// The hoses, as they were asked. One that the check stops is in no list below.
    pub hoses: Vec<BatchHoseSaid>,
    /// What is cut from what, hose by hose.
    pub cuts: Vec<BatchCut>,
    /// All parts together against what is there.
    pub parts: Vec<NeedLine>,
    /// What is crimped with which dies, in this order.
    pub presses: Vec<PressSetup>,
    /// How often the dies are changed once the first are in.
    pub die_changes: usize,
    /// By which rule that order is.
    pub rule: String,
    /// The steps that all of them have in common, each with its cautions.
    pub steps: Vec<SheetStep>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// A hose of a batch as it was checked.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BatchHoseSaid {
    /// What it is called.
    pub name: String,
    /// What the check says of it.
    pub verdict: Verdict,
    /// What stops it, in words.
    pub stops: Vec<String>,
    /// What whoever makes it has to know, in words.
    pub cautions: Vec<String>,
    /// Its hose; blank while that is not said.
    pub hose: String,
    /// The length to cut; none while it is not known.
    pub cut_length_mm: Option<Millimetres>,
}

/// Most hoses of a batch.
const MOST: usize = 200;

/// Several hoses -> one cut list over what the store has, all parts against it, and the order of the press.
///
/// # Errors
/// What `check` refuses of a hose; too many hoses; no such store.
pub fn batch(api: &mut Api, asked: BatchQuestion, _: &[u8]) -> Result<Answer<Planned>, ApiError> {
    let shelf = Shelf::of(api, asked.store.as_deref())?;
    let ones = ones(api, asked.hoses)?;
    let planned = plan(api, &shelf, &ones)?;
    Ok(api.answer(planned))
}

/// One hose of a batch, named and checked.
#[derive(Debug)]
pub(super) struct One {
    /// As the lists call it: the copies of one hose are numbered.
    pub name: String,
    /// The hose of the question that it is a copy of.
    pub of: usize,
    /// What that is called.
    pub title: String,
    pub build: Build,
}

/// Every hose of a batch, each as often as it is wanted.
pub(super) fn ones(api: &mut Api, hoses: Vec<BatchHose>) -> Result<Vec<One>, ApiError> {
    let mut ones = Vec::new();
    for (at, hose) in hoses.into_iter().enumerate() {
        let count = hose.count.unwrap_or(1);
        if count == 0 || ones.len() + count as usize > MOST {
            let why = format!("{MOST} hoses at most are planned at once; make two batches");
            return Err(ApiError::input(format!("hoses[{at}].count"), why));
        }
        for copy in 1..=count {
            let title = hose.name.trim().to_owned();
            let name = if count > 1 { format!("{title} {copy}/{count}") } else { title.clone() };
            let prepared = Prepared::of(api, hose.make.clone());
            let build = prepared.and_then(|prepared| Build::of(api.catalogue, prepared, hose.more.clone()));
            let build = build.map_err(|error| {
                let field = format!("hoses[{at}].{}", error.field);
                ApiError { field: field.trim_end_matches('.').to_owned(), ..error }
            })?;
            ones.push(One { name, of: at, title, build });
        }
    }
    Ok(ones)
}

/// The batch as it is worked.
pub(super) fn plan(api: &mut Api, shelf: &Shelf, ones: &[One]) -> Result<Planned, ApiError> {
    let made: Vec<&One> = ones.iter().filter(|one| one.build.checked.verdict != Verdict::Stop).collect();
    let mut said = Vec::new();
    let (mut cuts, mut parts) = (Vec::new(), Vec::new());
    for hose in hoses_of(&made) {
        let (cut, line) = cut_list(api, shelf, &hose, &made, &mut said)?;
        cuts.push(cut);
        parts.extend(line);
    }
    for one in made.iter().filter(|one| one.build.cut_mm.is_none()) {
        said.push(Said::of(api.words(), SaidCode::CutLengthNotKnown, &[("name", &one.name)]));
    }
    if made.iter().any(|one| one.build.kerf.is_none()) {
        said.push(Said::of(api.words(), SaidCode::KerfNotKnown, &[]));
    }
    let wanted: Vec<Wanted> =
        made.iter().flat_map(|one| one.build.wanted.iter().map(|part| part.wanted(1))).collect();
    parts.extend(shelf.needs(api.catalogue, &wanted).iter().map(|found| line(api, shelf, found, Vec::new())));
    parts.extend(unnamed(api, &made));
    let presses = presses(&made);
    Ok(Planned {
        store: shelf.store.clone(),
        hoses: hoses_said(ones),
        cuts,
        parts,
        die_changes: presses.len().saturating_sub(1),
        presses,
        rule: api.words().say("batch-rule", &[]),
        steps: if made.is_empty() { Vec::new() } else { shared_steps(api) },
        said,
    })
}

/// The hoses of a batch, each once, in the order they come.
fn hoses_of(made: &[&One]) -> Vec<Thing> {
    let mut hoses: Vec<Thing> = Vec::new();
    for hose in made.iter().filter_map(|one| one.build.hose.as_ref()) {
        if !hoses.contains(hose) {
            hoses.push(hose.clone());
        }
    }
    hoses
}

/// Ends whose ferrule nobody named, in one line.
fn unnamed(api: &Api, made: &[&One]) -> Option<NeedLine> {
    let mut lines = made.iter().flat_map(|one| one.build.unnamed_ferrules(api));
    let mut line = lines.next()?;
    line.wanted += lines.map(|line| line.wanted).sum::<i64>();
    line.roles = Vec::new();
    Some(line)
}

fn hoses_said(ones: &[One]) -> Vec<BatchHoseSaid> {
    let said = |one: &One| {
        let checked = &one.build.checked;
        let of = |verdict: Verdict| checked.findings.iter().filter(move |finding| finding.verdict == verdict);
        let caution = |finding: &Finding| format!("{} {}", finding.why, finding.cure).trim().to_owned();
        BatchHoseSaid {
            name: one.title.clone(),
            verdict: checked.verdict,
            stops: of(Verdict::Stop).map(|finding| finding.why.clone()).collect(),
            cautions: of(Verdict::Caution).map(caution).collect(),
            hose: one.build.hose.as_ref().map(Thing::name).unwrap_or_default(),
            cut_length_mm: one.build.cut_mm,
        }
    };
    let each = ones.chunk_by(|one, other| one.of == other.of && one.title == other.title);
    each.filter_map(<[One]>::first).map(said).collect()
}
