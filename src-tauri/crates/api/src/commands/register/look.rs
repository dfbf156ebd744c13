//! Reading the register.

use super::again::{Again, again};
use crate::commands::Nothing;
use crate::commands::care::{DueLine, DueQuestion, due, stops};
use crate::commands::check::word;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{self, Failures, Finding, OnCircuit, Question};
use hosewright_core::quantity::Bar;
use hosewright_core::record::{DeviceId, MachineId, PlaceId, Track};
use hosewright_core::spec::Spec;
use hosewright_core::tag::TagCode;
use hosewright_store::{
    Contradiction, Counts, DueAsk, Hit, Hose, MachineRow, MachineSheet, Overdue, PlaceSheet, SiteRow, Written,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The register at a glance.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Overview {
    /// Who writes in it.
    pub device: DeviceId,
    /// What people call that device, where it has a name.
    pub device_name: Option<String>,
    /// How much there is.
    pub counts: Counts,
    /// Sites by name.
    pub sites: Vec<SiteRow>,
    /// Machines by site and name.
    pub machines: Vec<MachineRow>,
    /// Hoses that are to be replaced by now, and the machines that are stopped.
    pub overdue: Overdue,
    /// What contradicts itself, for a person to settle.
    pub contradictions: Vec<Contradiction>,
}

/// The register at a glance.
///
/// # Errors
/// The register can not be read.
pub fn overview(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Overview>, ApiError> {
    let today = api.today();
    let register = api.register()?;
    let overview = Overview {
        device: register.device(),
        device_name: register.device_name()?,
        counts: register.counts()?,
        sites: register.sites()?,
        machines: register.machines()?,
        overdue: register.overdue(today)?,
        contradictions: register.contradictions()?,
    };
    Ok(api.answer(overview))
}

/// Which machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct MachineQuestion {
    /// Its id.
    pub machine: MachineId,
}

/// A machine, and what stops it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct MachineSaid {
    /// The machine with its circuits and places, and what sits at each.
    #[serde(flatten)]
    #[ts(flatten)]
    pub sheet: MachineSheet,
    /// What must not run on there: by what was seen, by a rule of the owner's, by what a place asks.
    pub stopped_by: Vec<DueLine>,
    /// What was written of it twice and not alike, for a person to settle.
    pub conflicts: Vec<Written>,
}

/// A machine with its circuits and places, what sits at each, and what stops it.
///
/// # Errors
/// There is no such machine.
pub fn machine(api: &mut Api, asked: MachineQuestion, _: &[u8]) -> Result<Answer<MachineSaid>, ApiError> {
    let sheet = api.register()?.machine(asked.machine)?;
    let sheet = sheet
        .ok_or_else(|| ApiError::nothing("machine", format!("there is no machine {}", asked.machine)))?;
    let stopped_by = stops(api, DueAsk { machine: Some(asked.machine), ..DueAsk::default() })?;
    let conflicts = api.register()?.contradicting(&Track::Machine(asked.machine))?;
    Ok(api.answer(MachineSaid { sheet, stopped_by, conflicts }))
}

/// Which place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PlaceQuestion {
    /// Its id.
    pub place: PlaceId,
    /// A hose that is to go there; without it the one that sits there is held against what belongs there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(optional)]
    pub hose: Option<TagCode>,
}

/// A place, and what it says before the next hose is made for it.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct PlaceSaid {
    /// The place, what sat there, and its circuit.
    #[serde(flatten)]
    #[ts(flatten)]
    pub sheet: PlaceSheet,
    /// What failed there, and which way the next job goes.
    pub failures: Failures,
    /// Failures, the hose beside what belongs there, and the hoses of the same circuit beside it; gravest first.
    pub findings: Vec<Finding>,
    /// What is made where the same is made again.
    pub again: Again,
    /// What must not run on there.
    pub stopped_by: Vec<DueLine>,
}

/// A place with every hose that ever sat there, what failed, and how its sisters on the circuit stand beside it.
///
/// # Errors
/// There is no such place, or no hose of that code.
pub fn place(api: &mut Api, asked: PlaceQuestion, _: &[u8]) -> Result<Answer<PlaceSaid>, ApiError> {
    let catalogue = api.catalogue;
    let register = api.register()?;
    let sheet = register.place(asked.place)?;
    let sheet =
        sheet.ok_or_else(|| ApiError::nothing("place", format!("there is no place {}", asked.place)))?;
    let sits = sheet.stays.iter().find(|stay| stay.off.is_none()).map(|stay| stay.code);
    let sits = sits.map(|code| register.hose(&code)).transpose()?.flatten().and_then(|hose| hose.assembly);
    let failures = Failures::of(catalogue, sheet.stays.iter().filter_map(|stay| stay.cause.as_deref()));
    let own = OnCircuit {
        place: sheet.place.record.number,
        pressure: carries(
            catalogue,
            sits.as_ref().and_then(|hose| hose.record.pressure_bar),
            sits.as_ref().map(|hose| &hose.record.spec).or(sheet.place.record.spec.as_ref()),
        ),
    };
    let sisters = sheet.sisters.iter().map(|sister| OnCircuit {
        place: sister.number,
        pressure: carries(catalogue, sister.pressure_bar, sister.spec.as_ref()),
    });
    // A place has its own setting where it has a valve of its own.
    let relief = sheet.place.record.service.relief_bar;
    let relief = relief.or(sheet.circuit.as_ref().and_then(|circuit| circuit.record.relief_bar));
    let mut findings: Vec<Finding> = failures.finding().into_iter().collect();
    let carried = match asked.hose {
        Some(code) => hose(api, code)?.assembly,
        None => sits,
    };
    if let (Some(there), Some(carried)) = (&sheet.place.record.spec, carried) {
        findings.extend(check::belongs(catalogue, there, &carried.record.spec));
    }
    findings.extend(check::circuit(catalogue, &own, relief, &sisters.collect::<Vec<_>>()));
    findings.sort_by_key(|finding| std::cmp::Reverse(finding.verdict));
    for finding in &mut findings {
        word(&api.words, finding);
    }
    let again = again(api, &sheet, &failures)?;
    let stopped_by = stops(api, DueAsk { place: Some(asked.place), ..DueAsk::default() })?;
    Ok(api.answer(PlaceSaid { sheet, failures, findings, again, stopped_by }))
}

/// What a hose carries: as it was recorded, or by its parts. None is not known.
fn carries(catalogue: &Catalogue, recorded: Option<Bar>, spec: Option<&Spec>) -> Option<Bar> {
    recorded.or_else(|| {
        let question = Question { spec: spec?.clone(), ..Question::default() };
        check::assembly_rating(catalogue, &question).ok().flatten()
    })
}

/// Which hose.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct ShowQuestion {
    /// Its code, as it stands on the tag.
    pub code: TagCode,
}

/// A hose by its code, with all that became of it.
///
/// # Errors
/// [`ApiError::nothing`] when the register does not know it.
pub fn show(api: &mut Api, asked: ShowQuestion, _: &[u8]) -> Result<Answer<HoseShown>, ApiError> {
    let hose = hose(api, asked.code)?;
    let today = api.today();
    let asked = DueQuestion { code: Some(asked.code), ..DueQuestion::default() };
    let due = due(api, asked, &[])?.content.due;
    Ok(api.answer(HoseShown { clocks: clocks(&hose, today), hose, due }))
}

fn hose(api: &mut Api, code: TagCode) -> Result<Hose, ApiError> {
    api.register()?.hose(&code)?.ok_or_else(|| {
        let why = format!(
            "the register has no hose {code}; merge the device that tagged it, or read the words on its tag"
        );
        ApiError::nothing("code", why)
    })
}

/// A hose with all that is recorded of it, its three clocks, and what falls due.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseShown {
    /// The hose.
    #[serde(flatten)]
    #[ts(flatten)]
    pub hose: Hose,
    /// Hose made, assembled, fitted.
    pub clocks: HoseClocks,
    /// What falls due of it.
    pub due: Vec<DueLine>,
}

/// The three clocks of a hose.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseClocks {
    /// Since the hose itself was made.
    pub hose_made: HoseClock,
    /// Since it was made into an assembly.
    pub assembled: HoseClock,
    /// Since it was fitted where it sits.
    pub fitted: HoseClock,
}

/// One clock.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct HoseClock {
    /// The day it runs from; none is not known.
    pub day: Option<NaiveDate>,
    /// Years since then.
    pub years: Option<f64>,
    /// It has run longer: the hose was found in place on that day.
    pub at_least: bool,
}

/// Mean length of a year.
const YEAR_DAYS: f64 = 365.25;

fn clocks(hose: &Hose, today: NaiveDate) -> HoseClocks {
    let clock = |day: Option<NaiveDate>, at_least| HoseClock {
        day,
        years: day.map(|day| (today - day).num_days() as f64 / YEAR_DAYS),
        at_least,
    };
    let made = hose.assembly.as_ref().map(|made| &made.record);
    let sits = hose.stays.iter().rev().find(|stay| stay.off.is_none());
    HoseClocks {
        hose_made: clock(made.and_then(|made| made.hose_made), false),
        assembled: clock(made.and_then(|made| made.assembled), false),
        fitted: clock(sits.and_then(|stay| stay.on_date), sits.is_some_and(|stay| stay.already_there)),
    }
}

/// What a text names in the register.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Named {
    /// A hose, by its code.
    Hose(TagCode),
    /// A place, by its id or words.
    Place(PlaceId),
    /// A machine, by its id or words.
    Machine(MachineId),
}

/// What a text names: a tag's code; the id of a place or machine; its name; or words that only one of them has.
///
/// # Errors
/// Nothing is named so, or more than one thing.
pub fn named(api: &mut Api, text: &str) -> Result<Named, ApiError> {
    let no_code = match text.parse() {
        Ok(code) => return Ok(Named::Hose(code)),
        Err(error) => error,
    };
    let register = api.register()?;
    if let Ok(place) = text.parse()
        && register.place(place)?.is_some()
    {
        return Ok(Named::Place(place));
    }
    if let Ok(machine) = text.parse()
        && register.machine(machine)?.is_some()
    {
        return Ok(Named::Machine(machine));
    }
    // All of them: one more of its name may be the last.
    let hits = register.search_things(text, u32::MAX)?;
    let found: Vec<(Named, String)> = hits.into_iter().filter_map(named_by).collect();
    let called = |(_, name): &&(Named, String)| name.eq_ignore_ascii_case(text.trim());
    match (found.as_slice(), found.iter().filter(called).collect::<Vec<_>>().as_slice()) {
        ([(one, _)], _) | (_, [(one, _)]) => Ok(*one),
        ([], _) => Err(ApiError::nothing(
            "what",
            format!("\"{text}\" is in no name of a place or machine, and no code: {no_code}"),
        )),
        (many, _) => {
            let names: Vec<&str> = many.iter().take(NAMED).map(|(_, name)| name.as_str()).collect();
            Err(ApiError::input(
                "what",
                format!(
                    "\"{text}\" can be any of {} places and machines ({}); give more words",
                    many.len(),
                    names.join("; ")
                ),
            ))
        }
    }
}

/// Names that a message gives where a text names more than one thing.
const NAMED: usize = 5;

/// A place or machine with its name.
fn named_by(hit: Hit) -> Option<(Named, String)> {
    match hit {
        Hit::Place { at, .. } => {
            let number = at.number.map(|number| number.to_string());
            let parts = [at.machine_name, number, at.place_name];
            Some((Named::Place(at.place), parts.into_iter().flatten().collect::<Vec<_>>().join(", ")))
        }
        Hit::Machine { machine, name, .. } => Some((Named::Machine(machine), name)),
        Hit::Hose { .. } | Hit::Site { .. } => None,
    }
}

/// What is looked for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct Search {
    /// Beginnings of words: code, machine, place, site, size.
    pub words: String,
    /// So many at most; 100 without.
    #[serde(default)]
    #[ts(optional)]
    pub limit: Option<u32>,
}

/// What was found.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Hits {
    /// Hoses, places, machines, sites; in each what was recorded last first.
    pub hits: Vec<Hit>,
}

/// Most hits that are shown; more would not be read.
const MOST_HITS: u32 = 100;

/// Hoses, places, machines and sites by the beginnings of words.
///
/// # Errors
/// The register can not be read.
pub fn search(api: &mut Api, asked: Search, _: &[u8]) -> Result<Answer<Hits>, ApiError> {
    let hits = api.register()?.search(&asked.words, asked.limit.unwrap_or(MOST_HITS).min(MOST_HITS))?;
    Ok(api.answer(Hits { hits }))
}
