//! `bench`: what was read, measured and proved -> whether the hose may be tagged, and its record.

use super::make::{MakeQuestion, Prepared};
use super::stock::{Build, Said, Taken, Used, used_bodies};
use super::tag::taggable;
use crate::{Answer, Api, ApiError, PROGRAM};
use chrono::NaiveDate;
use hosewright_core::bench::{self, Bench, BenchError, BenchJudged};
use hosewright_core::check::Question;
use hosewright_core::make::BuildSheet;
use hosewright_core::record::{Assembly, Body, EventRef, Labelled, LabelledHow, Proof};
use hosewright_core::tag::TagCode;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

impl From<BenchError> for ApiError {
    fn from(error: BenchError) -> Self {
        ApiError::input(error.field(), &error)
    }
}

/// What was made, and what was read, measured and proved of it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct BenchQuestion {
    /// What was to be made, by which settings.
    pub make: MakeQuestion,
    /// What was done.
    pub bench: Bench,
}

/// Judges crimps, finished length and turn, and the proof.
///
/// # Errors
/// The check says stop; a reading or figure that can not be.
pub fn judge(api: &mut Api, asked: BenchQuestion, _: &[u8]) -> Result<Answer<BenchJudged>, ApiError> {
    let prepared = Prepared::of(api, asked.make)?;
    let (_, judged) = judged(api, &prepared, &asked.bench)?;
    Ok(api.answer(judged))
}

/// The sheet of what was made, and the bench, judged by it.
fn judged(api: &mut Api, prepared: &Prepared, bench: &Bench) -> Result<(BuildSheet, BenchJudged), ApiError> {
    let sheet = prepared.sheet(api)?;
    let months = api.settings()?.gauge_months;
    let judged = bench::judge(&sheet, bench, api.today(), months)?;
    Ok((sheet, judged))
}

/// An assembly to be recorded with all that was done at the bench.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct BenchRecordQuestion {
    /// What was to be made, by which settings.
    pub make: MakeQuestion,
    /// What was done.
    pub bench: Bench,
    /// The code of its tag; a new one without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub code: Option<TagCode>,
    /// When it was assembled; the present day without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembled: Option<NaiveDate>,
    /// First day of the period printed on the hose; that of the piece it was cut from without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose_made: Option<NaiveDate>,
    /// It has its label already: another one will say that it is a reprint.
    #[serde(default)]
    pub labelled: bool,
    /// What it used; nothing is taken from stock without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub used: Option<Used>,
}

/// What was recorded.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct BenchRecorded {
    /// Its code.
    pub code: TagCode,
    /// The event; it is on the disk.
    pub written: EventRef,
    /// What stands on record.
    pub assembly: Assembly,
    /// What a person must see of the stock.
    pub said: Vec<Said>,
}

/// Records an assembly with settings, readings, finished length and turn, steps and proof. One that failed its proof is
/// recorded as scrap; any other must be such that it may be tagged. What it used is taken from stock with it, all or none.
///
/// # Errors
/// The check says stop; the bench is not such that it may be tagged; the code's tag was withdrawn, its record struck out or
/// its hose failed its proof; the register can not be written.
pub fn record(
    api: &mut Api,
    asked: BenchRecordQuestion,
    _: &[u8],
) -> Result<Answer<BenchRecorded>, ApiError> {
    if let Some(code) = asked.code {
        taggable(api, code)?;
    }
    let prepared = Prepared::of(api, asked.make)?;
    let (sheet, judged) = judged(api, &prepared, &asked.bench)?;
    let proof = judged.proof_record(&asked.bench);
    let proof = match proof {
        Some(proof) if judged.tag || matches!(proof, Proof::Failed { .. }) => proof,
        _ => {
            let open: Vec<String> =
                judged.why_not.iter().map(|code| api.words.say(&format!("bench-why-{code}"), &[])).collect();
            return Err(ApiError::input("bench", open.join(" ")));
        }
    };
    let Question { spec, service, .. } = prepared.asked.question.clone();
    let code = asked.code.unwrap_or_else(|| api.new_code());
    let taken = match asked.used {
        Some(used) => {
            let build = Build::of(api.catalogue, prepared, Vec::new())?;
            used_bodies(api, used, &build, code)?
        }
        None => Taken::default(),
    };
    let assembly = Assembly {
        code,
        rests_on: api.catalogue.marks(&spec),
        spec,
        service,
        hose_made: asked.hose_made.or(taken.made),
        assembled: Some(asked.assembled.unwrap_or_else(|| api.today())),
        proof,
        verdict: Some(sheet.verdict),
        pressure_bar: Some(sheet.proof.working_pressure_bar),
        bench: Some(Box::new(judged.record(&sheet, &asked.bench))),
        catalogue: api.catalogue.version.clone(),
        program: PROGRAM.to_owned(),
        taken_in: None,
    };
    let mut events = vec![Body::AssemblyMade(Box::new(assembly.clone()))];
    if asked.labelled {
        events.push(Body::Labelled(Labelled { code, how: LabelledHow::Printed }));
    }
    events.extend(taken.bodies);
    let now = api.world.now();
    let written = api.register()?.append(events, now)?;
    let written = written.into_iter().next().ok_or_else(|| ApiError::file("db", "nothing was written"))?;
    Ok(api.answer(BenchRecorded { code, written, assembly, said: taken.said }))
}
