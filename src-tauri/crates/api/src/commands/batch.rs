//! `batch`: several hoses for one machine or visit -> one cut list, parts against stock, and the order of work.

use super::File;
use super::make::{MakeQuestion, PaperKind, PaperSize, Prepared};
use super::stock::{Build, Cutting, Extra, NeedLine, Said, Shelf, line};
use crate::{Answer, Api, ApiError, PROGRAM};
use hosewright_core::check::Verdict;
use hosewright_core::cutting::StockSort;
use hosewright_core::quantity::Millimetres;
use hosewright_core::record::PieceId;
use hosewright_core::stock::{CrimpTurn, Thing, ToCrimp, Wanted, setups};
use hosewright_papers::sheet::{Body, Section, Sheet, Step};
use hosewright_words::{Words, length};
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
    /// The hoses. One that the check stops is in no list below.
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
    /// Its hose; blank while that is not said.
    pub hose: String,
    /// The length to cut; none while it is not known.
    pub cut_length_mm: Option<Millimetres>,
}

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

/// What is crimped with one set of dies.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PressSetup {
    /// The die set; none while it is not known.
    pub die_set: Option<String>,
    /// The crimps in order.
    pub crimps: Vec<CrimpTurn>,
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
    pub name: String,
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
            let name = hose.name.trim();
            let name = if count > 1 { format!("{name} {copy}/{count}") } else { name.to_owned() };
            let prepared = Prepared::of(api, hose.make.clone());
            let build = prepared.and_then(|prepared| Build::of(api.catalogue, prepared, hose.more.clone()));
            let build = build.map_err(|error| {
                let field = format!("hoses[{at}].{}", error.field);
                ApiError { field: field.trim_end_matches('.').to_owned(), ..error }
            })?;
            ones.push(One { name, build });
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
        said.push(Said::of(api.words(), "cut-length-not-known", &[("name", &one.name)]));
    }
    if made.iter().any(|one| one.build.kerf.is_none()) {
        said.push(Said::of(api.words(), "kerf-not-known", &[]));
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

fn cut_list(
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
            line.state = hosewright_core::stock::Stands::NotKnown;
        }
        line
    });
    Ok((list, line))
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
        let stops = checked.findings.iter().filter(|finding| finding.verdict == Verdict::Stop);
        BatchHoseSaid {
            name: one.name.clone(),
            verdict: checked.verdict,
            stops: stops.map(|finding| finding.why.clone()).collect(),
            hose: one.build.hose.as_ref().map(Thing::name).unwrap_or_default(),
            cut_length_mm: one.build.cut_mm,
        }
    };
    ones.iter().map(said).collect()
}

fn presses(made: &[&One]) -> Vec<PressSetup> {
    let crimps = made.iter().enumerate().flat_map(|(hose, one)| {
        let dn = match &one.build.hose {
            Some(Thing::Hose { dn, .. }) => dn.get(),
            _ => 0.0,
        };
        let settings = &one.build.settings;
        one.build.question.spec.ends.iter().map(move |end| {
            let own = settings.iter().find(|settings| settings.role == end.role);
            ToCrimp {
                hose,
                role: end.role,
                die_set: own.and_then(|own| own.die_set.clone()),
                dn,
                diameter_mm: own.and_then(|own| own.crimp_diameter_mm),
            }
        })
    });
    let turn = |crimp: ToCrimp| CrimpTurn {
        name: made.get(crimp.hose).map(|one| one.name.clone()).unwrap_or_default(),
        role: crimp.role,
        diameter_mm: crimp.diameter_mm,
    };
    setups(crimps.collect())
        .into_iter()
        .map(|setup| PressSetup {
            die_set: setup.die_set,
            crimps: setup.crimps.into_iter().map(turn).collect(),
        })
        .collect()
}

/// A batch as a paper: cut list, parts, order of work.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct BatchPaper {
    /// The batch.
    pub batch: BatchQuestion,
    /// What the sheet is for, such as the machine.
    #[serde(default)]
    pub subject: String,
    /// Size of the paper.
    pub paper: PaperSize,
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: PaperKind,
}

/// The batch as a file.
///
/// # Errors
/// As [`batch`], and when the pages can not be written.
pub fn paper(api: &mut Api, asked: BatchPaper, _: &[u8]) -> Result<File, ApiError> {
    let planned = batch(api, asked.batch, &[])?;
    let sheet = sheet(&planned.content, &asked.subject, &planned.catalogue, api.words());
    super::paper::file(api, "batch", &sheet, &planned, asked.paper, asked.kind)
}

fn sheet(planned: &Planned, subject: &str, catalogue: &str, words: &Words) -> Sheet {
    let say = |id: &str| words.say(id, &[]);
    let section = |heading: &str, body: Body| Section { heading: say(heading), body };
    let mut sections = Vec::new();
    let stopped: Vec<String> = planned
        .hoses
        .iter()
        .filter(|hose| hose.verdict == Verdict::Stop)
        .map(|hose| format!("{} {}: {}", say("verdict-stop"), hose.name, hose.stops.join(" ")))
        .collect();
    if !stopped.is_empty() {
        sections.push(section("batch-stopped", Body::Text(stopped)));
    }
    for cut in &planned.cuts {
        let heading = words.say("batch-cut-list", &[("hose", &cut.hose)]);
        sections.push(Section {
            heading,
            body: Body::Steps(cut.steps.iter().map(|step| cut_step(step, words)).collect()),
        });
        if !cut.unmade.is_empty() {
            let unmade = words.say("batch-unmade", &[("pieces", &lengths(&cut.unmade))]);
            sections.push(Section { heading: String::new(), body: Body::Text(vec![unmade]) });
        }
    }
    sections.push(section(
        "batch-parts",
        Body::Table {
            head: ["batch-part", "batch-wanted", "batch-state", "batch-bin"].map(say).to_vec(),
            rows: planned.parts.iter().map(|part| part_row(part, words)).collect(),
        },
    ));
    let setups = planned.presses.iter().map(|setup| press_step(setup, words));
    sections.push(section("batch-order", Body::Steps(setups.collect())));
    sections.push(Section { heading: String::new(), body: Body::Text(vec![planned.rule.clone()]) });
    if !planned.said.is_empty() {
        let said = planned.said.iter().map(|said| said.words.clone()).collect();
        sections.push(section("batch-mind", Body::Text(said)));
    }
    Sheet {
        title: say("batch-title"),
        subject: subject.to_owned(),
        sections,
        footer: words.say("sheet-footer", &[("program", &PROGRAM), ("catalogue", &catalogue)]),
    }
}

/// The lengths in a line, each with its hose.
pub fn lengths(cuts: &[CutLength]) -> String {
    let one = |cut: &CutLength| format!("{} ({})", length(cut.length_mm.get(), 1), cut.name);
    cuts.iter().map(one).collect::<Vec<_>>().join(", ")
}

/// What is cut from a piece, in words.
pub fn cut_words(step: &CutStep, words: &Words) -> String {
    let sort = match step.sort {
        StockSort::Reel => "reel",
        StockSort::Offcut => "offcut",
    };
    let key = format!("batch-cut-{sort}-{}", if step.kept { "kept" } else { "scrap" });
    let named = [step.label.as_str(), step.bin.as_str()];
    let named: Vec<&str> = named.into_iter().filter(|part| !part.is_empty()).collect();
    let where_ = if named.is_empty() { String::new() } else { format!(" ({})", named.join(", ")) };
    words.say(
        &key,
        &[
            ("length", &length(step.length_mm.get(), 1)),
            ("where", &where_),
            ("pieces", &lengths(&step.cuts)),
            ("left", &length(step.left_mm.get(), 1)),
        ],
    )
}

fn cut_step(step: &CutStep, words: &Words) -> Step {
    Step { text: cut_words(step, words), cautions: Vec::new() }
}

/// A part and how it stands, in cells.
pub fn part_row(part: &NeedLine, words: &Words) -> Vec<String> {
    let state = words.say(&format!("stock-state-{}", crate::key(&part.state)), &[]);
    vec![
        part.name.clone(),
        super::stock::amount(part.wanted, part.unit),
        format!("{state}, {}", super::stock::amount(part.quantity, part.unit)),
        part.bins.join(", "),
    ]
}

/// What is crimped with one set of dies, in words.
pub fn press_words(setup: &PressSetup, words: &Words) -> String {
    let crimps: Vec<String> = setup
        .crimps
        .iter()
        .map(|crimp| {
            let diameter =
                crimp.diameter_mm.map_or_else(String::new, |mm| format!(" \u{2300} {}", length(mm.get(), 2)));
            format!("{} {:?}{diameter}", crimp.name, crimp.role)
        })
        .collect();
    match &setup.die_set {
        Some(die) => words.say("batch-die-set", &[("die", die), ("crimps", &crimps.join(", "))]),
        None => words.say("batch-die-set-unknown", &[("crimps", &crimps.join(", "))]),
    }
}

fn press_step(setup: &PressSetup, words: &Words) -> Step {
    Step { text: press_words(setup, words), cautions: Vec::new() }
}
