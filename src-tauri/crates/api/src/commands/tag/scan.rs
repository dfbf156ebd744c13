//! A picture or a typed code -> the tag, what it is worth, and the log of what was scanned.

use super::found::{Place, TagFinding, worded};
use super::{believed, on_record};
use crate::commands::picture::{FrameSize, codes};
use crate::{Answer, Api, ApiError};
use hosewright_core::check::Verdict;
use hosewright_core::fleet::FleetMark;
use hosewright_core::record::PlaceId;
use hosewright_core::spec::Spec;
use hosewright_core::tag::{self, TagCode, TagContent, TagRead, TagStanding};
use hosewright_store::{Hose, Keys, PlaceAt, ScanKept, ScanWay, Status, Stay};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How a picture is read.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct ReadQuestion {
    /// The text of any code, ours or not.
    pub raw: bool,
    /// The place at which the person stands.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub place: Option<PlaceId>,
    /// The bytes are a frame of a live camera of that size; a file without.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub frame: Option<FrameSize>,
}

/// What stands in a picture.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Scanned {
    /// Every code that was read.
    pub codes: Vec<Scan>,
}

impl Answer<Scanned> {
    /// The first code alone. `read` gives at least one.
    pub fn first(self) -> Answer<Scan> {
        let content = self.content.codes.into_iter().next().unwrap_or_default();
        Answer { content, catalogue: self.catalogue, program: self.program }
    }
}

/// One code of a picture.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema, TS)]
#[ts(
    type = "{ code: TagCode | null, text: string, problem: string | null, judged: TagJudged | null } & Partial<Omit<TagContent, 'code'>>"
)]
pub struct Scan {
    /// The tag's code, where it is a tag.
    pub code: Option<TagCode>,
    /// All that the tag says; none where it holds its code alone, and of none that was altered.
    #[serde(flatten)]
    pub tag: Option<TagContent>,
    /// The text as it was read.
    pub text: String,
    /// Why the text is no whole tag, where it is none.
    pub problem: Option<String>,
    /// What it is worth; none where it is no tag, and where no register is open to hold it against.
    pub judged: Option<TagJudged>,
}

/// What a tag is worth.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct TagJudged {
    /// Who made it.
    pub standing: TagStanding,
    /// The fleet's name, or its mark where its key is not known here; none without a seal.
    pub fleet: Option<String>,
    /// The gravest thing that is said of it.
    pub verdict: Verdict,
    /// What it is, in words.
    pub says: String,
    /// What is to be said of it, gravest first.
    pub findings: Vec<TagFinding>,
    /// Whether the register has the hose of its code.
    pub known: bool,
    /// Where that hose sits.
    pub at: Option<PlaceAt>,
    /// Whether it may be taken into the register as it is.
    pub adopt: bool,
    /// Its spec as it may be checked, rebuilt and taken in: without its maker's own figures, where no true seal vouches for
    /// them. None where it says none.
    pub spec: Option<Spec>,
}

/// A picture -> the tags in it, or with `raw` the text of every code. With a register open, each tag is judged and
/// stands in the log of scans.
///
/// # Errors
/// [`ApiError::nothing`] when there is no code, or no tag among them; [`ApiError::file`] when it is no picture; a frame of
/// another size than it says.
pub fn read(api: &mut Api, asked: ReadQuestion, picture: &[u8]) -> Result<Answer<Scanned>, ApiError> {
    let found = codes(asked.frame, picture)?;
    if found.is_empty() {
        return Err(ApiError::nothing(
            "",
            "there is no code in this picture that can be read; take it nearer, square on and in focus, or type the code that stands beside it",
        ));
    }
    let mut scans = Vec::with_capacity(found.len());
    for found in found {
        scans.push(scan(api, found.text, ScanWay::Picture, asked.place)?);
    }
    if asked.raw {
        return Ok(api.answer(Scanned { codes: scans }));
    }
    let first_problem = scans.iter().find_map(|scan| scan.problem.clone());
    let codes: Vec<Scan> =
        scans.into_iter().filter(|scan| scan.code.is_some() || scan.judged.is_some()).collect();
    if codes.is_empty() {
        let why = first_problem.unwrap_or_default();
        return Err(ApiError::nothing("", format!("no code in this picture is a hose tag: {why}")));
    }
    Ok(api.answer(Scanned { codes }))
}

/// A tag that was typed or pasted: just one of the two.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct OpenQuestion {
    /// The code that stands beside the QR code.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub code: Option<TagCode>,
    /// A tag's whole text.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub text: Option<String>,
    /// The place at which the person stands.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub place: Option<PlaceId>,
}

/// A typed code or a pasted text -> the tag and what it is worth.
///
/// # Errors
/// Neither or both were given; [`ApiError::nothing`] when the text is no tag.
pub fn open(api: &mut Api, asked: OpenQuestion, _: &[u8]) -> Result<Answer<Scan>, ApiError> {
    let text = match (asked.code, asked.text) {
        (Some(code), None) => code.to_string(),
        (None, Some(text)) => text,
        _ => return Err(ApiError::input("code", "give a code or a text, one of the two")),
    };
    let scan = scan(api, text, ScanWay::Typed, asked.place)?;
    match (&scan.judged, scan.code, &scan.problem) {
        (None, None, problem) => Err(ApiError::nothing("text", problem.clone().unwrap_or_default())),
        _ => Ok(api.answer(scan)),
    }
}

/// What a text is: a tag, whole or altered; a tag's code alone; or neither.
fn scan(api: &mut Api, text: String, way: ScanWay, here: Option<PlaceId>) -> Result<Scan, ApiError> {
    if hosewright_core::fleet::is_one(&text) {
        // It holds a key: it is neither shown nor kept.
        let problem = Some(api.words.say("tag-is-a-fleets-key", &[]));
        return Ok(Scan { problem, ..Scan::default() });
    }
    let keys = api.register.as_ref().map(|register| register.keys()).transpose()?.unwrap_or_default();
    let own = keys.own().map(|fleet| &fleet.key);
    let Some(read) = tag::open(&text, own, &keys.partners()) else {
        let problem = tag::read(&text).err().map(|problem| problem.to_string());
        return Ok(Scan { text, problem, ..Scan::default() });
    };
    let judged = judged(api, &read, &keys, here)?;
    if let Some(judged) = &judged {
        let (code, standing, verdict) = (read.code, judged.standing, judged.verdict);
        let now = api.world.now();
        api.register()?.keep_scan(hosewright_store::Scanned { code, way, standing, verdict }, now)?;
    }
    let problem = read.problem.as_ref().map(ToString::to_string);
    let problem = problem.or_else(|| {
        judged.as_ref().filter(|_| read.standing == TagStanding::Altered).map(|judged| judged.says.clone())
    });
    Ok(Scan { code: read.code, tag: read.content, text, problem, judged })
}

/// What a tag is worth; none where no register is open.
fn judged(
    api: &Api,
    read: &TagRead,
    keys: &Keys,
    here: Option<PlaceId>,
) -> Result<Option<TagJudged>, ApiError> {
    let Some(register) = &api.register else { return Ok(None) };
    let hose = read.code.map(|code| register.hose(&code)).transpose()?.flatten();
    let known = hose.as_ref().map(on_record);
    let about = Place {
        at: hose.as_ref().and_then(sits),
        reason: hose.as_ref().and_then(|hose| match &hose.status {
            Status::Withdrawn { reason } => Some(reason.clone()),
            _ => None,
        }),
        off: last_off(hose.as_ref()).and_then(|stay| stay.off_date),
        cause: last_off(hose.as_ref()).and_then(|stay| cause(api, stay)),
        problem: Some(match &read.problem {
            Some(problem) => problem.to_string(),
            None => api.words.say("tag-seal-does-not-fit", &[]),
        }),
        alone: read.standing == TagStanding::CodeAlone,
    };
    let codes = tag::findings(read, known.as_ref(), here, keys.own().is_some());
    let findings: Vec<TagFinding> = codes.into_iter().map(|code| worded(&api.words, code, &about)).collect();
    let fleet = read.fleet.map(|mark| name_of(keys, mark));
    let says = api.words.say(
        &format!("tag-standing-{}", crate::key(&read.standing)),
        &[("fleet", &fleet.clone().unwrap_or_default())],
    );
    let adopt = read.content.is_some() && hose.is_none();
    let verdict = findings.iter().map(|finding| finding.verdict).max().unwrap_or(Verdict::Pass);
    let standing = read.standing;
    Ok(Some(TagJudged {
        standing,
        fleet,
        verdict,
        says,
        findings,
        known: hose.is_some(),
        at: about.at,
        adopt,
        spec: read.content.as_ref().map(|content| believed(content, read.standing)),
    }))
}

/// How a hose came off the last machine it was on.
fn last_off(hose: Option<&Hose>) -> Option<&Stay> {
    hose?.stays.iter().max_by_key(|stay| stay.off_date)
}

/// Why it failed there, as the table of causes has it.
fn cause(api: &Api, stay: &Stay) -> Option<String> {
    let code = stay.cause.as_ref()?;
    let known = api.catalogue.causes.iter().find(|cause| cause.code == *code);
    Some(known.map_or_else(|| code.clone(), |cause| cause.name.clone()))
}

/// Where a hose sits.
pub(super) fn sits(hose: &Hose) -> Option<PlaceAt> {
    hose.stays.iter().find(|stay| stay.off.is_none()).map(|stay| stay.at.clone())
}

fn name_of(keys: &Keys, mark: FleetMark) -> String {
    let known = keys.fleets.iter().find(|fleet| fleet.key.mark() == mark);
    known.map_or_else(|| mark.to_string(), |fleet| fleet.name.clone())
}

/// How many scans are asked for.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct ScanListQuestion {
    /// At most so many; 100 without.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub most: Option<u32>,
}

/// What was scanned on this device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct ScanList {
    /// Newest first.
    pub scans: Vec<ScanKept>,
}

/// Scans that are shown where nobody says how many.
const SHOWN: u32 = 100;

/// What was scanned on this device, newest first.
///
/// # Errors
/// The register can not be read.
pub fn scans(api: &mut Api, asked: ScanListQuestion, _: &[u8]) -> Result<Answer<ScanList>, ApiError> {
    let scans = api.register()?.scans(asked.most.unwrap_or(SHOWN))?;
    Ok(api.answer(ScanList { scans }))
}
