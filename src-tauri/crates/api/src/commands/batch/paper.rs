//! A batch as a paper, and its lines in words.

use super::{BatchHoseSaid, BatchQuestion, CutLength, CutStep, Planned, PressSetup, batch};
use crate::commands::File;
use crate::commands::make::{PaperKind, PaperSize};
use crate::commands::stock::{NeedLine, amount};
use crate::{Api, ApiError, PROGRAM};
use hosewright_core::check::Verdict;
use hosewright_core::cutting::StockSort;
use hosewright_papers::sheet::{Body, Section, Sheet, Step};
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

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
    crate::commands::paper::file(api, "batch", &sheet, &planned, asked.paper, asked.kind)
}

fn sheet(planned: &Planned, subject: &str, catalogue: &str, words: &Words) -> Sheet {
    let say = |id: &str| words.say(id, &[]);
    let section = |heading: &str, body: Body| Section { heading: say(heading), body };
    let mut sections = vec![section("sheet-first", Body::Text(vec![say("sheet-maker-first")]))];
    let stopped: Vec<String> = planned
        .hoses
        .iter()
        .filter(|hose| hose.verdict == Verdict::Stop)
        .map(|hose| format!("{} {}: {}", say("verdict-stop"), hose.name, hose.stops.join(" ")))
        .collect();
    if !stopped.is_empty() {
        sections.push(section("batch-stopped", Body::Text(stopped)));
    }
    let named = |hose: &BatchHoseSaid| {
        let name = hose.name.clone();
        hose.cautions.iter().map(move |caution| format!("{name}: {caution}")).collect::<Vec<_>>()
    };
    let cautions: Vec<String> = planned.hoses.iter().flat_map(named).collect();
    if !cautions.is_empty() {
        sections.push(section("sheet-cautions", Body::Text(cautions)));
    }
    // Of the pieces and the parts: it is to be read before anything is cut.
    if !planned.said.is_empty() {
        let said = planned.said.iter().map(|said| said.words.clone()).collect();
        sections.push(section("batch-mind", Body::Text(said)));
    }
    for cut in &planned.cuts {
        let heading = words.say("batch-cut-list", &[("hose", &cut.hose)]);
        let cuts = cut.steps.iter().map(|step| cut_words(step, words));
        sections.push(Section { heading, body: Body::Steps(at_the_first(cuts, planned, "cut")) });
        if !cut.unmade.is_empty() {
            let unmade = words.say("batch-unmade", &[("pieces", &lengths(&cut.unmade, words))]);
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
    let crimps = planned.presses.iter().map(|setup| press_words(setup, words));
    sections.push(section("batch-order", Body::Steps(at_the_first(crimps, planned, "crimp"))));
    sections.push(Section { heading: String::new(), body: Body::Text(vec![planned.rule.clone()]) });
    let then = planned.steps.iter().filter(|step| !["cut", "crimp"].contains(&step.code));
    let then: Vec<Step> = then.map(|step| crate::sheet::step(step, words)).collect();
    if !then.is_empty() {
        sections.push(section("batch-each", Body::Steps(then)));
    }
    Sheet {
        title: say("batch-title"),
        subject: subject.to_owned(),
        sections,
        footer: words.say("sheet-footer", &[("program", &PROGRAM), ("catalogue", &catalogue)]),
    }
}

/// Steps of one kind: what to mind at them stands beneath the first.
fn at_the_first(texts: impl Iterator<Item = String>, planned: &Planned, code: &str) -> Vec<Step> {
    let cautions = planned.steps.iter().find(|step| step.code == code).map(|step| &step.cautions);
    let mut cautions: Vec<String> =
        cautions.into_iter().flatten().map(|caution| caution.caution.clone()).collect();
    texts.map(|text| Step { text, cautions: std::mem::take(&mut cautions) }).collect()
}

/// The lengths in a line, each with its hose.
pub fn lengths(cuts: &[CutLength], words: &Words) -> String {
    let one = |cut: &CutLength| format!("{} ({})", words.length(cut.length_mm.get(), 1), cut.name);
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
            ("length", &words.length(step.length_mm.get(), 1)),
            ("where", &where_),
            ("pieces", &lengths(&step.cuts, words)),
            ("left", &words.length(step.left_mm.get(), 1)),
        ],
    )
}

/// A part and how it stands, in cells.
pub fn part_row(part: &NeedLine, words: &Words) -> Vec<String> {
    let state = words.say(&format!("stock-state-{}", crate::key(&part.state)), &[]);
    vec![
        part.name.clone(),
        amount(part.wanted, part.unit),
        format!("{state}, {}", amount(part.quantity, part.unit)),
        part.bins.join(", "),
    ]
}

/// What is crimped with one set of dies, in words.
pub fn press_words(setup: &PressSetup, words: &Words) -> String {
    let crimps: Vec<String> = setup
        .crimps
        .iter()
        .map(|crimp| {
            let diameter = crimp
                .diameter_mm
                .map_or_else(String::new, |mm| format!(" \u{2300} {}", words.length(mm.get(), 2)));
            format!("{} {:?}{diameter}", crimp.name, crimp.role)
        })
        .collect();
    match &setup.die_set {
        Some(die) => words.say("batch-die-set", &[("die", die), ("crimps", &crimps.join(", "))]),
        None => words.say("batch-die-set-unknown", &[("crimps", &crimps.join(", "))]),
    }
}
