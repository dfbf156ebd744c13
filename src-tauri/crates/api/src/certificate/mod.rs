//! What stands on record of a hose, as a certificate or as a report to share.

mod crimps;
mod whole;

use crate::sheet::{DRAWN_MM, drawn_end};
use chrono::NaiveDate;
use hosewright_core::catalogue::Provenance;
use hosewright_core::check::Finding;
use hosewright_core::record::{Assembly, PersonId};
use hosewright_core::spec::Role;
use hosewright_papers::sheet::{Body, Section, Sheet};
use hosewright_papers::{AssemblyDrawn, signature};
use hosewright_store::Stay;
use hosewright_words::Words;
use serde::Serialize;
use std::collections::BTreeMap;

/// What stands on record of a hose.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct Certificate {
    pub(crate) assembly: Assembly,
    pub(crate) stays: Vec<Stay>,
    /// What sat at its place before it.
    pub(crate) before: Option<Stay>,
    /// What keeps it from a pass by the tables of today; none where that can not be asked.
    pub(crate) found: Option<Vec<Finding>>,
    /// The tolerance of its length by the practice that is worked to.
    pub(crate) tolerance: Option<LengthHeld>,
    pub(crate) signed_by: Option<String>,
    pub(crate) signed_on: Option<NaiveDate>,
    /// Names of people as they stand at present.
    #[serde(skip)]
    pub(crate) names: BTreeMap<PersonId, String>,
    #[serde(skip)]
    pub(crate) strokes: Option<Vec<Vec<[f64; 2]>>>,
}

/// A tolerance of length: minus (negative) and plus, and where it is from.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(crate) struct LengthHeld {
    pub(crate) mm: [f64; 2],
    pub(crate) from: Provenance,
}

/// All of it: for whoever answers for the hose.
pub(crate) fn certificate(of: &Certificate, words: &Words) -> Sheet {
    let mut sections = beginning(of, words);
    sections.push(section("certificate-settings", whole::settings(of, words), words));
    sections.extend(crimps::crimps(of, words));
    sections.push(section("certificate-proof", Body::Facts(whole::proof(of, words)), words));
    sections.extend(whole::steps(of, words));
    ending("certificate-title", of, sections, words)
}

/// What concerns whoever owns the machine.
pub(crate) fn report(of: &Certificate, words: &Words) -> Sheet {
    let mut sections = beginning(of, words);
    sections.push(section("certificate-proof", Body::Facts(whole::proof(of, words)), words));
    sections.extend(whole::stays(of, words));
    ending("certificate-report", of, sections, words)
}

fn section(heading: &str, body: Body, words: &Words) -> Section {
    Section { heading: words.say(heading, &[]), body }
}

fn beginning(of: &Certificate, words: &Words) -> Vec<Section> {
    let mut sections = vec![section("certificate-what", Body::Facts(whole::facts(of, words)), words)];
    sections.extend(whole::found(of, words));
    sections.push(section("certificate-drawing", drawing(of, words), words));
    sections.push(section("certificate-lengths", Body::Facts(whole::lengths(of, words)), words));
    sections
}

fn ending(title: &str, of: &Certificate, mut sections: Vec<Section>, words: &Words) -> Sheet {
    let program = of.assembly.program.clone();
    if let (Some(strokes), Some(day)) = (&of.strokes, of.signed_on) {
        let who = of.signed_by.as_deref().unwrap_or_default().trim();
        let signed = format!("{} {who} {day}", words.say("certificate-signed", &[]));
        let caption = signed.split_whitespace().collect::<Vec<_>>().join(" ");
        let drawn = Body::Drawing { drawing: signature(strokes, 70.0, &caption), said: caption };
        sections.push(section("certificate-signature", drawn, words));
    } else {
        sections.push(section(
            "certificate-signature",
            Body::Text(vec![words.say("certificate-unsigned", &[])]),
            words,
        ));
    }
    sections.push(Section {
        heading: String::new(),
        body: Body::Text(vec![words.say("certificate-first", &[])]),
    });
    Sheet {
        title: words.say(title, &[]),
        subject: of.assembly.code.to_string(),
        sections,
        footer: words.say("sheet-footer", &[("program", &program), ("catalogue", &of.assembly.catalogue)]),
    }
}

fn drawing(of: &Certificate, words: &Words) -> Body {
    let spec = &of.assembly.spec;
    let [a, b] =
        [Role::A, Role::B].map(|role| spec.end(role).map(|end| drawn_end(end, words)).unwrap_or_default());
    let bench = of.assembly.bench.as_ref();
    let drawn = AssemblyDrawn {
        ends: [a, b],
        overall: spec.overall_length_mm.map_or_else(|| "?".to_owned(), |mm| words.length(mm.get(), 1)),
        cut: bench
            .and_then(|bench| bench.cut_length_mm)
            .map(|cut| format!("{} {}", words.say("certificate-cut", &[]), words.length(cut.get(), 1))),
        turn_deg: spec.turn_deg.map(|turn| turn.get()),
    };
    Body::Drawing { drawing: drawn.drawing(DRAWN_MM), said: String::new() }
}
