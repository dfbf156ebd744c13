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
use hosewright_core::record::{self, Body, TakenIn};
use hosewright_core::spec::{Service, Spec};
use hosewright_core::tag::{
    self, Assembled, Off, OnRecord, Proof, TagCode, TagContent, TagFindingCode, TagStanding,
};
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
    /// A code that the hose already has; a new one is made without. On record it is a hose of that very spec.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<TagCode>,
    /// When it was assembled; the present day without. Of a hose on record the record says it.
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
    /// The gravest of the check and of what the record says; with a stop there is no tag.
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
/// of its parts, and the answer cautions that it was not checked against any service. The tag of a code that is on record
/// is that of the record, its proof and its date among it, whatever was asked; another spec under such a code gets none.
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
    let checked_verdict = match (stops.is_empty(), service_checked) {
        (false, _) => Verdict::Stop,
        (true, false) => Verdict::Caution,
        (true, true) => checked.verdict,
    };
    let recorded = on_record.as_ref().and_then(|hose| hose.assembly.as_ref()).map(|made| &made.record);
    let proof_from = if recorded.is_some() { ProofFrom::Record } else { ProofFrom::Given };
    let asked_for = TagContent {
        code: asked.code.unwrap_or_else(|| api.new_code()),
        spec: checked.spec,
        pressure_bar: checked.assembly_pressure_bar,
        line: asked.question.service.line,
        fluid: asked.question.service.fluid,
        duties: asked.question.service.duties,
        assembled: asked.assembled.or_else(|| Assembled::on(api.today())),
        proof: asked.proof,
        catalogue: api.catalogue.version.clone(),
        seal: None,
    };
    let notices = recorded.map(|made| tag::beside(&asked_for, made, false)).unwrap_or_default();
    // What differs in figures alone the record settles, whose tag is made.
    let notices: Vec<TagFinding> = notices
        .into_iter()
        .filter(|code| matches!(code, TagFindingCode::OtherSpec | TagFindingCode::OtherProof))
        .map(|code| found::worded(&api.words, code, &Place::default()))
        .collect();
    let said = notices.iter().map(|notice| notice.verdict).max().unwrap_or(Verdict::Pass);
    let verdict = checked_verdict.max(said);
    let mut tag = match (verdict, recorded) {
        (Verdict::Stop, _) => None,
        (_, Some(made)) => tag::of_record(made),
        (_, None) => Some(asked_for),
    };
    if let Some(tag) = &mut tag {
        seal(api, tag, recorded)?;
    }
    let text = tag.as_ref().map(tag::write);
    Ok(api.answer(TagMade { verdict, service_checked, tag, text, stops, proof_from, notices }))
}

/// The hose of that code, where the register has it and it may have a tag. A code that is used up is used for no other hose.
///
/// # Errors
/// It failed its proof; its tag was withdrawn; its record was struck out, or contradicts itself.
pub(super) fn taggable(api: &Api, code: TagCode) -> Result<Option<Hose>, ApiError> {
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
    if is_undone(&hose) {
        let why =
            format!("the record of {code} was struck out: its tag counts no more; give the hose a new code");
        return Err(ApiError::input("code", why));
    }
    if is_contradicted(&hose) {
        let why = format!(
            "two records of {code} contradict each other: settle which one stands, then make its tag"
        );
        return Err(ApiError::input("code", why));
    }
    Ok(Some(hose))
}

/// Puts the seal of this device's fleet on a tag, in the place of any it had; without a fleet it has none, and none on the
/// word of others: of a hose that was taken in from a tag which no own seal vouched for.
fn seal(api: &Api, tag: &mut TagContent, made: Option<&record::Assembly>) -> Result<(), ApiError> {
    tag.seal = None;
    let Some(register) = &api.register else { return Ok(()) };
    let others = made.and_then(|made| made.taken_in).is_some_and(|taken_in| taken_in != TakenIn::Own);
    if let Some(own) = register.keys()?.own().filter(|_| !others) {
        tag::seal(tag, &own.key);
    }
    Ok(())
}

/// What a tag is held against.
fn on_record(hose: &Hose) -> OnRecord<'_> {
    let last = hose.stays.iter().max_by_key(|stay| stay.off_date);
    let sits = hose.stays.iter().find(|stay| stay.off.is_none());
    let off = last.filter(|_| sits.is_none()).map(|stay| match stay.cause {
        Some(_) => Off::Failed,
        None => Off::Whole,
    });
    OnRecord {
        withdrawn: matches!(hose.status, Status::Withdrawn { .. }),
        undone: is_undone(hose),
        contradicted: is_contradicted(hose),
        off,
        sits: sits.map(|stay| stay.at.place),
        made: hose.assembly.as_ref().map(|made| &made.record),
    }
}

/// Whether a fleet that this device knows vouches for what a tag says.
fn is_vouched_for(standing: TagStanding) -> bool {
    matches!(standing, TagStanding::Own | TagStanding::Partner)
}

/// A tag's spec as far as it is believed: its maker's own figures stand over the tables' only under a true seal.
fn believed(content: &TagContent, standing: TagStanding) -> Spec {
    if is_vouched_for(standing) { content.spec.clone() } else { content.spec.without_own_figures() }
}

/// Whether the record of its making was struck out.
fn is_undone(hose: &Hose) -> bool {
    let struck = |one: &hosewright_store::Written| one.void && matches!(one.body, Body::AssemblyMade(_));
    hose.assembly.is_none() && hose.history.iter().any(struck)
}

/// Whether what is recorded of its making, or of its tag, contradicts itself.
fn is_contradicted(hose: &Hose) -> bool {
    let of_it = |body: &Body| matches!(body, Body::AssemblyMade(_) | Body::TagWithdrawn(_) | Body::Voided(_));
    hose.history.iter().any(|one| hose.conflicts.contains(&one.event) && of_it(&one.body))
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
    Ok(api.answer(TagOf { tag, text, reprint: hose.labelled }))
}

/// The tag of a hose on record, sealed, and the hose.
fn recorded(api: &mut Api, code: TagCode) -> Result<(TagContent, Hose), ApiError> {
    api.register()?;
    let hose = taggable(api, code)?;
    let content = hose.as_ref().and_then(|hose| tag::of_record(&hose.assembly.as_ref()?.record));
    let (Some(mut content), Some(hose)) = (content, hose) else {
        return Err(ApiError::nothing("code", format!("the register has no record of how {code} was made")));
    };
    seal(api, &mut content, hose.assembly.as_ref().map(|made| &made.record))?;
    Ok((content, hose))
}
