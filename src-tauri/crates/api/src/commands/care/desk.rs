//! `desk`: all hoses in one table, and at a glance.

use super::list::{ListKind, file};
use crate::commands::File;
use crate::sheet::key;
use crate::{Answer, Api, ApiError};
use chrono::NaiveDate;
use hosewright_core::tag::TagCode;
use hosewright_store::{HoseFilter, HoseRow, HoseSort, HosesGlance};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Which hoses, in which order, which page.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct DeskQuestion {
    /// As of that day; today without.
    pub on: Option<NaiveDate>,
    /// Which hoses.
    #[ts(as = "Option<HoseFilter>")]
    pub filter: HoseFilter,
    /// In which order.
    #[ts(as = "Option<HoseSort>")]
    pub sort: HoseSort,
    /// The other way round.
    #[ts(as = "Option<bool>")]
    pub descending: bool,
    /// So many from the first are left out.
    pub offset: Option<u32>,
    /// So many at most: 100 without, 500 at most; of codes 10 000.
    pub limit: Option<u32>,
}

/// A page of hoses.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct DeskTable {
    /// As of that day.
    pub on: NaiveDate,
    /// How many the filter has.
    pub total: u32,
    /// This page.
    pub rows: Vec<HoseRow>,
}

/// Codes of hoses.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct HoseCodes {
    /// In the order of the table.
    pub codes: Vec<TagCode>,
    /// There are more.
    pub more: bool,
}

/// Which hoses, at a glance.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
#[ts(optional_fields)]
pub struct GlanceQuestion {
    /// As of that day; today without.
    pub on: Option<NaiveDate>,
    /// Which hoses.
    #[ts(as = "Option<HoseFilter>")]
    pub filter: HoseFilter,
}

/// Hoses at a glance.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema, TS)]
pub struct Glance {
    /// As of that day.
    pub on: NaiveDate,
    /// How many, how old, how many due.
    #[serde(flatten)]
    #[ts(flatten)]
    pub hoses: HosesGlance,
    /// Why hoses failed in the last 12 months, the commonest first.
    pub causes: Vec<GlanceCause>,
    /// The service limit of the fleet, in years.
    pub limit_years: Option<f64>,
}

/// How often hoses failed for one cause.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct GlanceCause {
    /// By its code.
    pub cause: String,
    /// What it is called.
    pub name: String,
    /// How often.
    pub count: u32,
}

const PAGE: u32 = 100;
const LONGEST_PAGE: u32 = 500;
const MOST_CODES: u32 = 10_000;

/// A page of hoses.
///
/// # Errors
/// The register can not be read.
pub fn hoses(api: &mut Api, asked: DeskQuestion, _: &[u8]) -> Result<Answer<DeskTable>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let page = (asked.offset.unwrap_or(0), asked.limit.unwrap_or(PAGE).min(LONGEST_PAGE));
    let register = api.register()?;
    let rules = register.rules()?;
    let rows = register.hoses(on, &asked.filter, (asked.sort, asked.descending), page, &rules)?;
    let total = register.hoses_count(on, &asked.filter)?;
    Ok(api.answer(DeskTable { on, total, rows }))
}

/// The codes of hoses, for what is done with many at once.
///
/// # Errors
/// The register can not be read.
pub fn codes(api: &mut Api, asked: DeskQuestion, _: &[u8]) -> Result<Answer<HoseCodes>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let limit = asked.limit.unwrap_or(MOST_CODES).min(MOST_CODES);
    let page = (asked.offset.unwrap_or(0), limit + 1);
    let mut codes = api.register()?.hose_codes(on, &asked.filter, (asked.sort, asked.descending), page)?;
    let more = codes.len() > limit as usize;
    codes.truncate(limit as usize);
    Ok(api.answer(HoseCodes { codes, more }))
}

/// Hoses at a glance.
///
/// # Errors
/// The register can not be read.
pub fn glance(api: &mut Api, asked: GlanceQuestion, _: &[u8]) -> Result<Answer<Glance>, ApiError> {
    let on = asked.on.unwrap_or_else(|| api.today());
    let register = api.register()?;
    let (hoses, causes) = (register.hoses_glance(on, &asked.filter)?, register.failures(on, &asked.filter)?);
    let spot = hosewright_core::care::Spot {
        site: asked.filter.site,
        machine: asked.filter.machine,
        line: asked.filter.line,
        ..Default::default()
    };
    let rule = register.rules()?.at(hosewright_core::care::DueFor::Service, &spot);
    let causes = causes.into_iter().map(|(cause, count)| {
        let id = format!("cause-{cause}");
        let name = if api.words.has(&id) { api.words.say(&id, &[]) } else { cause.clone() };
        GlanceCause { cause, name, count }
    });
    let causes = causes.collect();
    Ok(api.answer(Glance { on, hoses, causes, limit_years: rule.years.map(|held| held.limit) }))
}

/// Chosen hoses as a list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct DeskExport {
    /// Which.
    pub codes: Vec<TagCode>,
    /// The kind of file; a calendar has no hoses.
    #[serde(rename = "as")]
    pub kind: ListKind,
}

/// Chosen hoses as a list.
///
/// # Errors
/// A calendar was asked for; a code that the register does not have.
pub fn export(api: &mut Api, asked: DeskExport, _: &[u8]) -> Result<File, ApiError> {
    let on = api.today();
    let register = api.register()?;
    let rules = register.rules()?;
    let found = register.hoses_of(on, &asked.codes, &rules)?;
    if let Some(code) = asked.codes.iter().find(|code| !found.iter().any(|row| row.code == **code)) {
        return Err(ApiError::nothing("codes", format!("the register has no hose {code}")));
    }
    let head = [
        "code",
        "state",
        "site",
        "machine",
        "place",
        "place_name",
        "standard",
        "type",
        "dn",
        "length_mm",
        "line",
        "hose_made",
        "assembled",
        "fitted",
        "age_years",
        "due",
        "due_what",
        "verdict",
        "failures",
    ];
    let mut rows = vec![head.map(str::to_owned).to_vec()];
    rows.extend(found.iter().map(cells));
    file(&asked.kind, "chosen-hoses", &rows)
}

fn cells(row: &HoseRow) -> Vec<String> {
    let at = row.at.as_ref();
    let text = |value: Option<&String>| value.cloned().unwrap_or_default();
    let day = |value: Option<NaiveDate>| value.map(|day| day.to_string()).unwrap_or_default();
    vec![
        row.code.to_string(),
        row.state.clone(),
        text(at.and_then(|at| at.site_name.as_ref())),
        text(at.and_then(|at| at.machine_name.as_ref())),
        at.and_then(|at| at.number).map(|number| number.to_string()).unwrap_or_default(),
        text(at.and_then(|at| at.place_name.as_ref())),
        text(row.standard.as_ref()),
        text(row.kind.as_ref()),
        row.dn.map(|dn| dn.to_string()).unwrap_or_default(),
        row.length_mm.map(|length| length.get().to_string()).unwrap_or_default(),
        row.line.map(|line| key(&line)).unwrap_or_default(),
        day(row.hose_made),
        day(row.assembled),
        day(row.fitted),
        row.age_years.map(|years| format!("{years:.1}")).unwrap_or_default(),
        day(row.due),
        row.due_what.map(|what| key(&what)).unwrap_or_default(),
        row.verdict.map(|verdict| key(&verdict)).unwrap_or_default(),
        row.failures.to_string(),
    ]
}
