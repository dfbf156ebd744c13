//! `round`: the visits of a day -> what each place takes, all of it against the van, and what to load.

use super::batch::{BatchCut, BatchHose, One, ones, plan};
use super::care::lines;
use super::make::MakeQuestion;
use super::register::again;
use super::stock::{Elsewhere, NeedLine, Said, SaidCode, Shelf, amount};
use crate::{Answer, Api, ApiError};
use chrono::{Days, NaiveDate};
use hosewright_core::care::DueFor;
use hosewright_core::check::{Failures, Question, Verdict};
use hosewright_core::record::{MachineId, PlaceId, StockUnit};
use hosewright_core::stock::{Stands, Thing};
use hosewright_core::tag::TagCode;
use hosewright_store::{Due, DueAsk, PlaceAt};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Where the day goes.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct RoundQuestion {
    /// The day; today without.
    pub on: Option<NaiveDate>,
    /// Machines that are visited, for what is due on them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(as = "Option<Vec<MachineId>>")]
    pub machines: Vec<MachineId>,
    /// How many days ahead counts as due on those machines; none without.
    pub within_days: Option<u32>,
    /// Places whose hose is replaced, due or not.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(as = "Option<Vec<PlaceId>>")]
    pub places: Vec<PlaceId>,
    /// Hoses beside those, such as of jobs that are begun.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[ts(as = "Option<Vec<BatchHose>>")]
    pub hoses: Vec<BatchHose>,
    /// The van; the one this device works from without.
    pub store: Option<String>,
}

/// The round of a day.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Round {
    /// The day.
    pub on: NaiveDate,
    /// The van.
    pub store: String,
    /// Machine by machine, by site and name.
    pub visits: Vec<Visit>,
    /// What all of it takes against the van.
    pub parts: Vec<NeedLine>,
    /// What the van lacks.
    pub load: Vec<LoadLine>,
    /// What would be cut from what, of hoses whose length to cut is known.
    pub cuts: Vec<BatchCut>,
    /// What a person must see.
    pub said: Vec<Said>,
}

/// A machine that is visited.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
#[ts(rename = "RoundVisit")]
pub struct Visit {
    /// Where it works; blank is not said.
    pub site: String,
    /// Its name; blank is not said.
    pub machine: String,
    /// Which.
    pub machine_id: Option<MachineId>,
    /// What is replaced on it.
    pub places: Vec<VisitPlace>,
}

/// A place whose hose is replaced.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct VisitPlace {
    /// Which.
    pub place: PlaceId,
    /// Its number and name.
    pub name: String,
    /// What sits there; none is not known.
    pub code: Option<TagCode>,
    /// The hose that would be made; none where nobody knows.
    pub hose: Option<String>,
    /// The day it fell or falls due; none where it is replaced without, or no day is known.
    pub due: Option<NaiveDate>,
    /// What the check says of making the same again.
    pub verdict: Option<Verdict>,
    /// Why nothing is loaded for it, in words.
    pub why_not: Option<String>,
}

/// Something that the van lacks.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct LoadLine {
    /// It in words.
    pub name: String,
    /// How much is wanted, is there, and is missing, in words with its unit.
    pub wanted: String,
    /// How much the van has.
    pub there: String,
    /// What is missing.
    pub missing: String,
    /// Counted in.
    pub unit: StockUnit,
    /// Who has some.
    pub from: Vec<Elsewhere>,
    /// Whether it is known to be missing: what was never kept or is not known well enough is to be looked at.
    pub state: Stands,
}

/// A place of the round before its hose is checked.
struct Stop {
    at: PlaceAt,
    name: String,
    code: Option<TagCode>,
    due: Option<NaiveDate>,
    /// What is made for it, or in words why nothing is.
    make: Result<Box<MakeQuestion>, String>,
}

/// What the day's places take, against the van, and what to load.
///
/// # Errors
/// No such machine or place; no such store; the register can not be read.
pub fn round(api: &mut Api, asked: RoundQuestion, _: &[u8]) -> Result<Answer<Round>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let shelf = Shelf::of(api, asked.store.as_deref())?;
    let mut stops = Vec::new();
    for due in due_on(api, &asked, on)? {
        let Some(at) = &due.at else { continue };
        stops.push(stop(api, at.place, due.row.due, due.row.due.is_none())?);
    }
    for place in &asked.places {
        if !stops.iter().any(|stop: &Stop| stop.at.place == *place) {
            stops.push(stop(api, *place, None, false)?);
        }
    }
    stops.sort_by(|one, other| {
        let key =
            |at: &PlaceAt| (at.site_name.clone(), at.machine_name.clone(), at.machine, at.number, at.place);
        key(&one.at).cmp(&key(&other.at))
    });
    let (mut all, mut visits): (Vec<One>, Vec<Visit>) = (Vec::new(), Vec::new());
    for stop in stops {
        let place = visited(api, &stop, &mut all)?;
        match visits.last_mut().filter(|visit| visit.machine_id == stop.at.machine) {
            Some(visit) => visit.places.push(place),
            None => visits.push(Visit {
                site: stop.at.site_name.unwrap_or_default(),
                machine: stop.at.machine_name.unwrap_or_default(),
                machine_id: stop.at.machine,
                places: vec![place],
            }),
        }
    }
    all.extend(ones(api, asked.hoses)?);
    let cuts = plan(api, &shelf, &all)?.cuts;
    let taken = by_overall_length(api, &mut all);
    let mut planned = plan(api, &shelf, &all)?;
    planned.said.extend(taken);
    let load = planned.parts.iter().filter(|part| part.state != Stands::There).map(load_line).collect();
    Ok(api.answer(Round {
        on,
        store: planned.store,
        visits,
        parts: planned.parts,
        load,
        cuts,
        said: planned.said,
    }))
}

/// Of a hose whose cut-offs nobody knows yet the finished length is taken, which is more than is cut: enough is loaded.
fn by_overall_length(api: &Api, all: &mut [One]) -> Vec<Said> {
    let mut said = Vec::new();
    for one in all.iter_mut().filter(|one| one.build.cut_mm.is_none()) {
        one.build.cut_mm = one.build.question.spec.overall_length_mm.filter(|overall| overall.get() > 0.0);
        if one.build.cut_mm.is_some() {
            said.push(Said::of(api.words(), SaidCode::OverallTaken, &[("name", &one.name)]));
        }
    }
    said
}

/// What is due on the machines of the round, each hose once. One of no known age is among them.
fn due_on(api: &mut Api, asked: &RoundQuestion, on: NaiveDate) -> Result<Vec<Due>, ApiError> {
    if asked.machines.is_empty() {
        return Ok(Vec::new());
    }
    for machine in &asked.machines {
        let known = api.register()?.machine(*machine)?;
        known.ok_or_else(|| ApiError::nothing("machines", format!("there is no machine {machine}")))?;
    }
    let until = on.checked_add_days(Days::new(u64::from(asked.within_days.unwrap_or(0))));
    let until = until.ok_or_else(|| ApiError::input("within_days", "that day is past every calendar"))?;
    let mut here: Vec<Due> = Vec::new();
    for machine in &asked.machines {
        let ask = DueAsk {
            what: vec![DueFor::Service, DueFor::Finding, DueFor::Asked],
            machine: Some(*machine),
            until: Some(until),
            ..DueAsk::default()
        };
        for line in lines(api, on, &ask)? {
            // What was seen and what has grown old is one hose to replace.
            if !here.iter().any(|due| due.code == line.due.code) {
                here.push(line.due);
            }
        }
    }
    Ok(here)
}

fn stop(
    api: &mut Api,
    place: PlaceId,
    due: Option<NaiveDate>,
    age_not_known: bool,
) -> Result<Stop, ApiError> {
    let sheet = api.register()?.place(place)?;
    let sheet = sheet.ok_or_else(|| ApiError::nothing("places", format!("there is no place {place}")))?;
    let causes = sheet.stays.iter().filter_map(|stay| stay.cause.as_deref());
    let failures = Failures::of(api.catalogue, causes);
    let again = again(api, &sheet, &failures)?;
    let make = match (again.spec, again.why_not) {
        _ if age_not_known => Err(api.words().say("round-age-not-known", &[])),
        (_, Some(why)) => Err(why),
        (None, None) => Err(api.words().say("round-hose-not-known", &[])),
        (Some(spec), None) => Ok(Box::new(MakeQuestion {
            question: Question { spec, service: again.service, ..Question::default() },
            settings: again.settings,
            ..MakeQuestion::default()
        })),
    };
    let name = [sheet.at.number.map(|number| number.to_string()), sheet.at.place_name.clone()];
    let name = name.into_iter().flatten().collect::<Vec<_>>().join(" ");
    Ok(Stop { at: sheet.at, name, code: again.replaces, due, make })
}

/// A place in the answer; a hose that can be made for it goes into the batch.
fn visited(api: &mut Api, stop: &Stop, all: &mut Vec<One>) -> Result<VisitPlace, ApiError> {
    let mut place = VisitPlace {
        place: stop.at.place,
        name: stop.name.clone(),
        code: stop.code,
        hose: None,
        due: stop.due,
        verdict: None,
        why_not: None,
    };
    let make = match &stop.make {
        Ok(make) => make.as_ref().clone(),
        Err(why) => {
            place.why_not = Some(why.clone());
            return Ok(place);
        }
    };
    let name = [stop.at.machine_name.as_deref(), Some(stop.name.as_str())];
    let name = name.into_iter().flatten().collect::<Vec<_>>().join(", ");
    let hose = BatchHose { name, make, count: None, more: Vec::new() };
    match ones(api, vec![hose]) {
        Ok(made) => {
            for one in made {
                let checked = &one.build.checked;
                place.verdict = Some(checked.verdict);
                place.hose = one.build.hose.as_ref().map(Thing::name);
                if checked.verdict == Verdict::Stop {
                    let stops = checked.findings.iter().filter(|finding| finding.verdict == Verdict::Stop);
                    let why: Vec<&str> = stops.map(|finding| finding.why.as_str()).collect();
                    place.why_not = Some(why.join(" "));
                }
                all.push(one);
            }
        }
        // What was recorded of it is not in the tables: it is said and the round goes on.
        Err(error) => place.why_not = Some(error.message),
    }
    Ok(place)
}

fn load_line(part: &NeedLine) -> LoadLine {
    LoadLine {
        name: part.name.clone(),
        wanted: amount(part.wanted, part.unit),
        there: amount(part.quantity, part.unit),
        missing: amount((part.wanted - part.quantity).max(0), part.unit),
        unit: part.unit,
        from: part.elsewhere.clone(),
        state: part.state,
    }
}
