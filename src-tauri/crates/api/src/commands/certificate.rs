//! `certificate`: what stands on record of a hose that was made here, as a paper.

use super::File;
use super::make::{PaperKind, PaperSize};
use crate::certificate::{self, Certificate};
use crate::{Api, ApiError};
use hosewright_core::check::{Finding, Override, Question, Verdict};
use hosewright_core::record::{Assembly, Proof};
use hosewright_core::tag::TagCode;
use hosewright_store::HoseOverride;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use ts_rs::TS;

/// A certificate or a report to be made.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct CertificateQuestion {
    /// The hose.
    pub code: TagCode,
    /// Size of the paper.
    pub paper: PaperSize,
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: PaperKind,
    /// Who signs it, as it was drawn on the screen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub signature: Option<Signature>,
}

/// A signature that was drawn on a screen. It goes on the paper and is not kept.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Signature {
    /// Whose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Its strokes: points from 0 to 1 to the right and down, of a box four times as wide as high.
    pub strokes: Vec<Vec<[f64; 2]>>,
}

/// The certificate of a hose as a file.
///
/// # Errors
/// The register has no record of its making; it failed its proof.
pub fn paper(api: &mut Api, asked: CertificateQuestion, _: &[u8]) -> Result<File, ApiError> {
    let certificate = read(api, &asked)?;
    if matches!(certificate.assembly.proof, Proof::Failed { .. }) {
        let why = api.words.say("certificate-failed-refused", &[("code", &asked.code.to_string())]);
        return Err(ApiError::input("code", why));
    }
    let sheet = certificate::certificate(&certificate, &api.words);
    let name = format!("certificate-{}", asked.code);
    super::paper::file(api, &name, &sheet, &api.answer(certificate), asked.paper, asked.kind)
}

/// The report of a hose to share: what it is, whether it was proved, where it sat and what was before it.
///
/// # Errors
/// The register has no record of its making.
pub fn report(api: &mut Api, asked: CertificateQuestion, _: &[u8]) -> Result<File, ApiError> {
    let certificate = read(api, &asked)?;
    let sheet = certificate::report(&certificate, &api.words);
    let name = format!("report-{}", asked.code);
    super::paper::file(api, &name, &sheet, &api.answer(certificate), asked.paper, asked.kind)
}

fn read(api: &mut Api, asked: &CertificateQuestion) -> Result<Certificate, ApiError> {
    let practice = api.settings()?.length_practice;
    let nothing = api.words.say("certificate-nothing", &[("code", &asked.code.to_string())]);
    let register = api.register()?;
    let hose = register.hose(&asked.code)?;
    let Some((made, stays, overrides)) =
        hose.and_then(|hose| Some((hose.assembly?.record, hose.stays, hose.overrides)))
    else {
        return Err(ApiError::nothing("code", nothing));
    };
    let people = register.people()?;
    let names: BTreeMap<_, _> =
        people.into_iter().filter_map(|person| Some((person.id, person.name?))).collect();
    let before = match stays.first() {
        Some(first) => register.place(first.at.place)?.and_then(|place| {
            let earlier = place.stays.into_iter().filter(|stay| stay.code != asked.code);
            earlier
                .filter(|stay| stay.off_date.is_some() && stay.off_date <= first.on_date)
                .max_by_key(|stay| stay.off_date)
        }),
        None => None,
    };
    let tolerance = made.spec.overall_length_mm.zip(made.spec.hose.as_ref()).and_then(|(overall, hose)| {
        let row = api.catalogue.length_tolerance(practice, hose.dn, overall)?;
        Some((row.at(overall), row.provenance.clone()))
    });
    Ok(Certificate {
        found: found(api, &made, overrides),
        assembly: made,
        stays,
        before,
        tolerance: tolerance.map(|(mm, from)| certificate::LengthHeld { mm, from }),
        signed_by: asked.signature.as_ref().and_then(|signature| signature.name.clone()),
        signed_on: asked.signature.as_ref().map(|_| api.today()),
        names,
        strokes: asked.signature.as_ref().map(|signature| signature.strokes.clone()),
    })
}

/// Rules that rest on what was read of the old hose, which is not on record: asked now they would say that nothing was.
const OF_READINGS: [&str; 2] = ["end-unsettled", "original"];

/// What keeps an assembly from a pass by the tables as they are now, but for what rests on readings; none where that can not
/// be asked.
fn found(api: &Api, made: &Assembly, overrides: Vec<HoseOverride>) -> Option<Vec<Finding>> {
    let taken_on = |taken: HoseOverride| Override {
        rule: taken.rule,
        by: taken.name.unwrap_or_else(|| taken.person.to_string()),
        reason: taken.reason,
    };
    let question = Question {
        spec: made.spec.clone(),
        service: made.service.clone(),
        overrides: overrides.into_iter().map(taken_on).collect(),
        ..Question::default()
    };
    let findings = super::check::checked(api, &question).ok()?.findings;
    let counts =
        |found: &Finding| found.verdict != Verdict::Pass && !OF_READINGS.contains(&found.rule.as_ref());
    Some(findings.into_iter().filter(counts).collect())
}
