//! `inspect.try`: what an inspection would do, before it is written down.

use super::words;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::care::{DueFor, Inspection, grade, standing};
use hosewright_core::check::Verdict;
use hosewright_core::record::{Graded, MachineId};
use hosewright_core::tag::TagCode;
use hosewright_store::{DueAsk, PlaceAt};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// An inspection as it would be written down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct InspectTry {
    /// Which hose.
    pub code: TagCode,
    /// When.
    pub date: NaiveDate,
    /// What was seen.
    #[serde(default)]
    pub findings: Vec<Graded>,
    /// Whether its ends were opened, which changes nothing of what it does.
    #[serde(default)]
    #[ts(optional, as = "Option<bool>")]
    pub opened: bool,
}

/// What it would do.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct InspectTried {
    /// The gravest of it.
    pub grade: Verdict,
    /// The soonest day the hose falls due now; none is not known, or nothing falls due.
    pub due_before: Option<NaiveDate>,
    /// And with it.
    pub due_after: Option<NaiveDate>,
    /// What is seen stops the machine.
    pub machine_stopped: bool,
    /// The machine.
    pub machine: Option<MachineNamed>,
    /// Each thing that was seen, and what is done about it.
    pub said: Vec<InspectSaid>,
}

/// A machine and its name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct MachineNamed {
    /// Which.
    pub machine: MachineId,
    /// What people call it.
    pub name: String,
}

/// What was seen and what is done about it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct InspectSaid {
    /// The sign, by its code.
    pub code: String,
    /// How grave it counts.
    pub grade: Verdict,
    /// What it is and what to do, in words.
    pub words: String,
}

/// What an inspection would do. Nothing is written.
///
/// # Errors
/// There is no such hose.
pub fn inspect_try(api: &mut Api, asked: InspectTry, _: &[u8]) -> Result<Answer<InspectTried>, ApiError> {
    let (catalogue, today) = (api.catalogue, api.today().max(asked.date));
    let register = api.register()?;
    let hose = register.hose(&asked.code)?;
    let hose =
        hose.ok_or_else(|| ApiError::nothing("code", format!("the register has no hose {}", asked.code)))?;
    let mut inspections: Vec<Inspection> = hose
        .inspections
        .into_iter()
        .map(|seen| Inspection { date: seen.date, findings: seen.findings })
        .collect();
    inspections.push(Inspection { date: asked.date, findings: asked.findings.clone() });
    let stands = standing(catalogue, &inspections);
    let rules = register.rules()?;
    let ask = DueAsk { code: Some(asked.code), ..DueAsk::default() };
    let due = register.due(today, &ask, &rules)?;
    // Without its standing findings and with the new ones; its next inspection counts from this one.
    let others = due.iter().filter(|due| !matches!(due.row.what, DueFor::Finding | DueFor::Inspection));
    let next = due.iter().find(|due| due.row.what == DueFor::Inspection).and_then(|due| {
        let years = due.row.years?;
        let last = inspections.iter().map(|seen| seen.date).max()?;
        hosewright_core::care::after_years(last, years)
    });
    let seen = stands.iter().map(|standing| standing.due);
    let due_after = others.filter_map(|due| due.row.due).chain(next).chain(seen).min();
    let at: Option<PlaceAt> = hose.stays.into_iter().find(|stay| stay.off.is_none()).map(|stay| stay.at);
    let machine = at.and_then(|at| Some(MachineNamed { machine: at.machine?, name: at.machine_name? }));
    let words = &api.words;
    let said = asked.findings.iter().map(|finding| {
        let (name, grade) = (words::sign(words, &finding.sign), grade(catalogue, finding));
        let act = format!("sign-{}-act", finding.sign);
        let act = if words.has(&act) { words.say(&act, &[]) } else { words.say("sign-OTHER-act", &[]) };
        InspectSaid { code: finding.sign.clone(), grade, words: format!("{name}: {act}") }
    });
    let said: Vec<InspectSaid> = said.collect();
    let tried = InspectTried {
        grade: said.iter().map(|said| said.grade).max().unwrap_or(Verdict::Pass),
        due_before: due.iter().filter_map(|due| due.row.due).min(),
        due_after,
        machine_stopped: machine.is_some() && stands.iter().any(|standing| standing.grade == Verdict::Stop),
        machine,
        said,
    };
    Ok(api.answer(tried))
}
