//! `round.paper`: the sheet of a day's round, with the tags to scan.

use crate::PROGRAM;
use crate::commands::File;
use crate::commands::make::{PaperKind, PaperSize};
use crate::commands::paper;
use crate::commands::round::{LoadLine, Round, RoundQuestion, Visit, VisitPlace, round};
use crate::{Api, ApiError};
use hosewright_papers::sheet::{Body, Section, Sheet, Step};
use hosewright_papers::{Drawing, tags};
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A round on paper.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct RoundPaper {
    /// The round.
    pub round: RoundQuestion,
    /// Size of the paper.
    pub paper: PaperSize,
    /// The kind of file.
    pub kind: PaperKind,
    /// Whether each hose's code stands on it to be scanned.
    #[serde(default)]
    pub tags: bool,
}

/// The sheet of a round: machine by machine what is replaced, with boxes to tick, and what to load.
///
/// # Errors
/// What [`round`] refuses; a paper that can not be written.
pub fn paper(api: &mut Api, asked: RoundPaper, _: &[u8]) -> Result<File, ApiError> {
    let answer = round(api, asked.round, &[])?;
    let sheet = sheet(&answer.content, asked.tags, &answer.catalogue, api.words());
    paper::file(api, "round", &sheet, &answer, asked.paper, asked.kind)
}

fn sheet(round: &Round, tags: bool, catalogue: &str, words: &Words) -> Sheet {
    let say = |id: &str| words.say(id, &[]);
    let mut sections = Vec::new();
    for visit in &round.visits {
        let parts = [&visit.site, &visit.machine].into_iter().filter(|part| !part.is_empty());
        let heading = parts.cloned().collect::<Vec<_>>().join(", ");
        let steps = visit.places.iter().map(|place| step(place, words)).collect();
        sections.push(Section { heading, body: Body::Steps(steps) });
        let strips = if tags { strips(visit) } else { Vec::new() };
        sections.extend(strips.into_iter().map(|drawing| Section {
            heading: String::new(),
            body: Body::Drawing { drawing, said: String::new() },
        }));
    }
    if round.visits.is_empty() {
        sections.push(Section { heading: String::new(), body: Body::Text(vec![say("round-sheet-nothing")]) });
    }
    if !round.load.is_empty() {
        let head = ["batch-part", "batch-wanted", "round-there", "round-missing"].map(say).to_vec();
        let rows = round.load.iter().map(load).collect();
        sections.push(Section { heading: say("round-sheet-load"), body: Body::Table { head, rows } });
    }
    if !round.said.is_empty() {
        let said = round.said.iter().map(|said| said.words.clone()).collect();
        sections.push(Section { heading: say("batch-mind"), body: Body::Text(said) });
    }
    sections.push(Section { heading: say("sheet-first"), body: Body::Text(vec![say("sheet-maker-first")]) });
    Sheet {
        title: say("round-sheet-title"),
        subject: format!("{} {}", round.on, round.store),
        sections,
        footer: words.say("sheet-footer", &[("program", &PROGRAM), ("catalogue", &catalogue)]),
    }
}

/// A place in a step: what sits there, since when it is due, what is made, and why not where nothing is.
fn step(place: &VisitPlace, words: &Words) -> Step {
    let due = place.due.map(|day| words.say("round-sheet-due", &[("day", &day.to_string())]));
    let code = place.code.map(|code| code.to_string());
    let parts = [Some(place.name.clone()), code, due, place.hose.clone()];
    let text = parts.into_iter().flatten().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("; ");
    Step { text, cautions: place.why_not.clone().into_iter().collect() }
}

/// Codes that stand on a page together.
const TAGS_TOGETHER: usize = 25;

/// The codes of a visit's hoses side by side; none where no hose has one.
fn strips(visit: &Visit) -> Vec<Drawing> {
    let codes: Vec<(String, String)> = visit
        .places
        .iter()
        .filter_map(|place| place.code.map(|code| (code.to_string(), place.name.clone())))
        .collect();
    codes.chunks(TAGS_TOGETHER).filter_map(|some| tags(some, crate::sheet::DRAWN_MM)).collect()
}

fn load(line: &LoadLine) -> Vec<String> {
    vec![line.name.clone(), line.wanted.clone(), line.there.clone(), line.missing.clone()]
}
