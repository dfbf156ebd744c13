//! `tag`: a checked spec -> its tag and label; a picture or a typed code -> the hose.

mod adopt;
mod batch;
mod found;
mod label;
mod scan;

pub use adopt::{TagAdopt, TagAdopted, adopt};
pub use batch::{BatchLabel, LabelBatch, LabelBatchOf, LabelBatchQuestion, LabelPaper, batch, batch_paper};
pub use found::TagFinding;
pub use label::{
    DiameterFrom, LabelCurve, LabelDrawn, LabelKind, LabelPreview, LabelQuestion, LabelRefusal, LabelRefused,
    label, preview,
};
pub use scan::{
    OpenQuestion, ReadQuestion, Scan, ScanList, ScanListQuestion, Scanned, TagJudged, open, read, scans,
};

use super::check::checked;
use crate::{Answer, Api, ApiError};
use found::Place;
use hosewright_core::check::{Finding, Question, Verdict};
use hosewright_core::record;
use hosewright_core::spec::Service;
use hosewright_core::tag::{self, Assembled, OnRecord, Proof, TagCode, TagContent, TagFindingCode};
use hosewright_store::{Hose, Status};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What a tag is made for.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct TagQuestion {
    /// What `check` is asked: no tag is made of what must not be made.
    pub question: Question,
    /// A code that the hose already has; a new one is made without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<TagCode>,
    /// When it was assembled; the present day without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembled: Option<Assembled>,
    /// Whether it was proved; not proved without. Of a hose on record the record says it.
    #[serde(default = "not_proved")]
    pub proof: Proof,
}

fn not_proved() -> Proof {
    Proof::NotProved
}

/// Who says whether a hose was proved.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ProofFrom {
    /// Whoever asked for the tag: nothing is on record of the hose.
    Given,
    /// The register.
    Record,
}

/// A tag, or why there is none.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TagMade {
    /// The check's verdict; with a stop there is no tag.
    pub verdict: Verdict,
    /// Whether it was checked against a service; else the tag carries the rating of the parts alone.
    pub service_checked: bool,
    /// What the tag says.
    pub tag: Option<TagContent>,
    /// Its text, as a phone shows it.
    pub text: Option<String>,
    /// What stopped it.
    pub stops: Vec<Finding>,
    /// Who says whether it was proved.
    pub proof_from: ProofFrom,
    /// What the record says otherwise than was asked.
    pub notices: Vec<TagFinding>,
}

/// Cases of the check that say nothing of a spec but that its service was not given.
const OF_SERVICE: [&str; 2] = ["working-pressure-missing", "fluid-missing"];

/// A spec that may be made -> what its tag says. A spec alone, with no service, gets a tag with the rating
/// of its parts, and the answer cautions that it was not checked against any service. What the register says of the
/// hose's proof stands, whatever was asked.
///
/// # Errors
/// Names the field that can not be; refuses an assembly that failed its proof and a tag that was withdrawn.
pub fn make(api: &mut Api, asked: TagQuestion, _: &[u8]) -> Result<Answer<TagMade>, ApiError> {
    let on_record = asked.code.map(|code| taggable(api, code)).transpose()?.flatten();
    let checked = checked(api, &asked.question)?;
    let service_checked = asked.question.service != Service::default();
    let stops: Vec<Finding> = checked
        .findings
        .into_iter()
        .filter(|finding| finding.verdict == Verdict::Stop)
        .filter(|finding| service_checked || !OF_SERVICE.contains(&finding.case.key))
        .collect();
    let verdict = match (stops.is_empty(), service_checked) {
        (false, _) => Verdict::Stop,
        (true, false) => Verdict::Caution,
        (true, true) => checked.verdict,
    };
    let recorded = on_record.as_ref().and_then(|hose| hose.assembly.as_ref()).map(|made| &made.record);
    let proof = recorded.and_then(|made| tag::proof_of(&made.proof));
    let mut notices = Vec::new();
    if proof.is_some_and(|proof| claims_more(asked.proof, proof)) {
        notices.push(TagFindingCode::OtherProof);
    }
    if recorded.is_some_and(|made| made.spec != checked.spec) {
        notices.push(TagFindingCode::OtherSpec);
    }
    let notices =
        notices.into_iter().map(|code| found::worded(&api.words, code, &Place::default())).collect();
    let mut tag = match verdict {
        Verdict::Stop => None,
        _ => Some(TagContent {
            code: asked.code.unwrap_or_else(|| api.new_code()),
            spec: checked.spec,
            pressure_bar: checked.assembly_pressure_bar,
            line: asked.question.service.line,
            fluid: asked.question.service.fluid,
            duties: asked.question.service.duties,
            assembled: asked.assembled.or_else(|| Assembled::on(api.today())),
            proof: proof.unwrap_or(asked.proof),
            catalogue: api.catalogue.version.clone(),
            seal: None,
        }),
    };
    if let Some(tag) = &mut tag {
        seal(api, tag)?;
    }
    let text = tag.as_ref().map(tag::write);
    let proof_from = if proof.is_some() { ProofFrom::Record } else { ProofFrom::Given };
    Ok(api.answer(TagMade { verdict, service_checked, tag, text, stops, proof_from, notices }))
}

/// Whether a tag would say proved where the record does not, or at another pressure.
fn claims_more(asked: Proof, recorded: Proof) -> bool {
    matches!(asked, Proof::Proved { .. }) && asked != recorded
}

/// The hose of that code, where the register has it and it may have a tag.
///
/// # Errors
/// It failed its proof; its tag was withdrawn.
fn taggable(api: &Api, code: TagCode) -> Result<Option<Hose>, ApiError> {
    let Some(register) = &api.register else { return Ok(None) };
    let Some(hose) = register.hose(&code)? else { return Ok(None) };
    // Its proof counts, whatever became of it since.
    if hose.assembly.as_ref().is_some_and(|made| matches!(made.record.proof, record::Proof::Failed { .. })) {
        let why = format!("{code} failed its proof: it is scrap and gets no tag; make it anew");
        return Err(ApiError::input("code", why));
    }
    if let Status::Withdrawn { reason } = &hose.status {
        let why = format!(
            "the tag {code} was withdrawn ({reason}) and is not made again; give the hose a new code"
        );
        return Err(ApiError::input("code", why));
    }
    Ok(Some(hose))
}

/// Puts the seal of this device's fleet on a tag, in the place of any it had; without a fleet it has none.
fn seal(api: &Api, tag: &mut TagContent) -> Result<(), ApiError> {
    tag.seal = None;
    let Some(register) = &api.register else { return Ok(()) };
    if let Some(own) = register.keys()?.own() {
        tag::seal(tag, &own.key);
    }
    Ok(())
}

/// What a tag is held against.
fn on_record(hose: &Hose) -> OnRecord<'_> {
    let made = hose.assembly.as_ref().map(|made| &made.record);
    OnRecord {
        withdrawn: matches!(hose.status, Status::Withdrawn { .. }),
        sits: hose.stays.iter().find(|stay| stay.off.is_none()).map(|stay| stay.at.place),
        spec: made.map(|made| &made.spec),
        proof: made.map(|made| &made.proof),
    }
}

/// Whether the hose had a label before: one was printed or seen, or it was made here and got its label then.
fn had_a_label(hose: &Hose) -> bool {
    hose.labelled || hose.assembly.as_ref().is_some_and(|made| made.record.verdict.is_some())
}

/// Which hose's tag.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct TagOfQuestion {
    /// The hose.
    pub code: TagCode,
}

/// The tag of a hose on record.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TagOf {
    /// What it says, from the record alone.
    pub tag: TagContent,
    /// Its text, as a phone shows it.
    pub text: String,
    /// Whether a label made of it now says that the hose had one before.
    pub reprint: bool,
}

/// The tag of a hose on record, under the code it has.
///
/// # Errors
/// [`ApiError::nothing`] when the register has no record of its making; it failed its proof; its tag was withdrawn.
pub fn of(api: &mut Api, asked: TagOfQuestion, _: &[u8]) -> Result<Answer<TagOf>, ApiError> {
    let (tag, hose) = recorded(api, asked.code)?;
    let text = tag::write(&tag);
    Ok(api.answer(TagOf { tag, text, reprint: had_a_label(&hose) }))
}

/// The tag of a hose on record, sealed, and the hose.
fn recorded(api: &mut Api, code: TagCode) -> Result<(TagContent, Hose), ApiError> {
    api.register()?;
    let hose = taggable(api, code)?;
    let content = hose.as_ref().and_then(|hose| tag::of_record(&hose.assembly.as_ref()?.record));
    let (Some(mut content), Some(hose)) = (content, hose) else {
        return Err(ApiError::nothing("code", format!("the register has no record of how {code} was made")));
    };
    seal(api, &mut content)?;
    Ok((content, hose))
}
