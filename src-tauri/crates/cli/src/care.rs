//! What falls due, inspections, surveys, the owner's rules.

use crate::args::{DueBy, DueWhat, HosesBy, Policy, Register};
use crate::input;
use crate::outcome::Outcome;
use crate::plain::{DueShown, Left};
use crate::run::{ending, no_such_kind};
use crate::world::Machine;
use hosewright_api::commands::care::{
    self, AffectedQuestion, DeskQuestion, DueExport, DueOrder, DueQuestion, InspectTry, ListKind,
    PolicyAtQuestion, PolicyTry, SurveyQuestion,
};
use hosewright_api::commands::register::{self, Named, Record, RecordEvent, named};
use hosewright_api::commands::{Nothing, tables};
use hosewright_api::{Api, ApiError, World};
use hosewright_core::care::DueFor;
use hosewright_core::catalogue::nearest;
use hosewright_core::check::Verdict;
use hosewright_core::record::{Body, Graded, Inspected, PolicySet, SiteId};
use hosewright_core::tag::TagCode;
use hosewright_store::{HoseFilter, HoseSort};

/// What falls due; left as a file where one is asked for.
pub fn due(api: &mut Api, command: &Register, json: bool) -> Result<Outcome, ApiError> {
    let Register::Due { on, by, what, at, site, within_days, ahead_days, out, all } = command else {
        return Err(ApiError::input("", "no question of what falls due"));
    };
    let mut asked = DueQuestion {
        on: *on,
        by: Some(match by {
            DueBy::Date => DueOrder::Date,
            DueBy::Risk => DueOrder::Risk,
        }),
        what: what.iter().map(|what| kind(*what)).collect(),
        within_days: *within_days,
        ahead_days: *ahead_days,
        glance: Some(true),
        ..DueQuestion::default()
    };
    match at.as_deref().map(|at| named(api, at)).transpose()? {
        None => {}
        Some(Named::Machine(machine)) => asked.machine = Some(machine),
        Some(Named::Place(place)) => asked.place = Some(place),
        Some(Named::Hose(code)) => asked.code = Some(code),
    }
    asked.site = site.as_deref().map(|site| site_named(api, site)).transpose()?;
    if let Some(out) = out {
        let kind = match ending(out).as_str() {
            "ics" => ListKind::Ics,
            "csv" => ListKind::Csv,
            "xlsx" => ListKind::Xlsx,
            other => return Err(no_such_kind(out, other, "ics, csv or xlsx")),
        };
        input::leave(out, &care::due_export(api, DueExport { due: asked, kind }, &[])?.bytes)?;
        return Outcome::of(&Left::at(out), json, api.words());
    }
    let list = care::due(api, asked, &[])?;
    Outcome::of(&DueShown { list, all: *all }, json, api.words())
}

fn kind(what: DueWhat) -> DueFor {
    match what {
        DueWhat::Service => DueFor::Service,
        DueWhat::Storage => DueFor::Storage,
        DueWhat::Inspection => DueFor::Inspection,
        DueWhat::Finding => DueFor::Finding,
        DueWhat::Asked => DueFor::Asked,
    }
}

/// The one site that is called so.
fn site_named(api: &mut Api, text: &str) -> Result<SiteId, ApiError> {
    let sites = register::overview(api, Nothing {}, &[])?.content.sites;
    let called = |name: &str| name.to_lowercase().contains(&text.trim().to_lowercase());
    let exact = sites.iter().find(|site| site.name.eq_ignore_ascii_case(text.trim()));
    let found: Vec<_> = sites.iter().filter(|site| called(&site.name)).collect();
    let only = match found.as_slice() {
        [site] => Some(*site),
        _ => None,
    };
    match exact.or(only) {
        Some(site) => Ok(site.site),
        None => {
            let names: Vec<&str> = sites.iter().map(|site| site.name.as_str()).collect();
            Err(ApiError::input(
                "site",
                format!("\"{text}\" is not one site; there are {}", names.join(", ")),
            ))
        }
    }
}

/// An inspection: what it does, and without --dry-run its record.
pub fn inspect(api: &mut Api, command: &Register, json: bool) -> Result<Outcome, ApiError> {
    let Register::Inspect { code, sign, on, opened, dry_run } = command else {
        return Err(ApiError::input("", "no inspection"));
    };
    let code: TagCode = code.parse().map_err(|error| ApiError::input("code", error))?;
    let date = on.unwrap_or_else(|| Machine.now().date_naive());
    let findings = sign.iter().map(|sign| graded(api, sign)).collect::<Result<Vec<_>, _>>()?;
    let tried =
        care::inspect_try(api, InspectTry { code, date, findings: findings.clone(), opened: *opened }, &[])?;
    if !*dry_run {
        let body = Body::Inspected(Inspected { code, date, findings, opened: *opened });
        let events = vec![RecordEvent { body, builds_on: None }];
        register::record(api, Record { events }, &[])?;
    }
    Outcome::of(&tried, json, api.words())
}

/// A sign with its grade: the table's, or a stop where the person says so.
fn graded(api: &mut Api, text: &str) -> Result<Graded, ApiError> {
    let (code, grade) = match text.split_once(':') {
        None => (text, None),
        Some((code, "stop")) => (code, Some(Verdict::Stop)),
        Some((code, "caution")) => (code, Some(Verdict::Caution)),
        Some((_, other)) => {
            return Err(ApiError::input(
                "sign",
                format!("\"{other}\" is no grade; there are caution and stop"),
            ));
        }
    };
    let signs = tables::tables(api, Nothing {}, &[])?.content.signs;
    let code = code.to_uppercase();
    match signs.iter().find(|sign| sign.code == code) {
        Some(sign) => Ok(Graded { sign: code, grade: grade.unwrap_or(sign.grade) }),
        None => {
            let codes: Vec<&str> = signs.iter().map(|sign| sign.code.as_str()).collect();
            let near = nearest(&code, codes.iter().copied()).into_iter().next().unwrap_or_default();
            let why = format!("\"{code}\" is no sign; nearest is {near}; there are {}", codes.join(", "));
            Err(ApiError::input("sign", why))
        }
    }
}

/// The walk round a machine.
pub fn survey(api: &mut Api, machine: &str, json: bool) -> Result<Outcome, ApiError> {
    match named(api, machine)? {
        Named::Machine(machine) => {
            Outcome::of(&care::survey(api, SurveyQuestion { machine }, &[])?, json, api.words())
        }
        _ => Err(ApiError::input("machine", "the name of a machine is expected")),
    }
}

/// The hoses that rest on what has changed.
pub fn affected(api: &mut Api, code: Option<&str>, json: bool) -> Result<Outcome, ApiError> {
    let code = code.map(str::parse).transpose().map_err(|error| ApiError::input("code", error))?;
    Outcome::of(&care::affected(api, AffectedQuestion { code }, &[])?, json, api.words())
}

/// The table of all hoses.
pub fn hoses(api: &mut Api, command: &Register, json: bool) -> Result<Outcome, ApiError> {
    let Register::Hoses { words, sort, descending, past, on, offset, limit } = command else {
        return Err(ApiError::input("", "no table of hoses"));
    };
    let asked = DeskQuestion {
        on: *on,
        filter: HoseFilter { words: words.clone(), past: past.then_some(true), ..HoseFilter::default() },
        sort: match sort {
            HosesBy::Due => HoseSort::Due,
            HosesBy::Age => HoseSort::Age,
            HosesBy::Machine => HoseSort::Machine,
            HosesBy::Type => HoseSort::Type,
            HosesBy::Code => HoseSort::Code,
            HosesBy::Fitted => HoseSort::Fitted,
            HosesBy::Failures => HoseSort::Failures,
        },
        descending: *descending,
        offset: *offset,
        limit: *limit,
    };
    Outcome::of(&care::hoses(api, asked, &[])?, json, api.words())
}

/// The owner's rules.
pub fn policy(api: &mut Api, command: &Policy, json: bool) -> Result<Outcome, ApiError> {
    match command {
        Policy::List => Outcome::of(&care::policies(api, Nothing {}, &[])?, json, api.words()),
        Policy::At { what } => {
            let asked = match named(api, what)? {
                Named::Machine(machine) => {
                    PolicyAtQuestion { machine: Some(machine), ..PolicyAtQuestion::default() }
                }
                Named::Place(place) => PolicyAtQuestion { place: Some(place), ..PolicyAtQuestion::default() },
                Named::Hose(_) => {
                    return Err(ApiError::input("what", "the name of a machine or place is expected"));
                }
            };
            Outcome::of(&care::policy_at(api, asked, &[])?, json, api.words())
        }
        Policy::Try { policy, on, within_days } => {
            let asked = PolicyTry { policy: input::question(policy)?, on: *on, within_days: *within_days };
            Outcome::of(&care::policy_try(api, asked, &[])?, json, api.words())
        }
        Policy::Set { policy } => {
            let policy: PolicySet = input::question(policy)?;
            let events = vec![RecordEvent { body: Body::PolicySet(policy), builds_on: None }];
            Outcome::of(&register::record(api, Record { events }, &[])?, json, api.words())
        }
    }
}
