//! How a hose stands, and when it falls due.

use crate::project::Before;
use crate::query::{PlaceAt, place_at};
use crate::{Error, rows};
use chrono::NaiveDate;
use hosewright_core::care::{
    Aged, DueRow, Inspection, Meter, OnSince, Rules, Spot, Standing, grade, standing,
};
use hosewright_core::catalogue::{Catalogue, Demand, Stake};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Millimetres;
use hosewright_core::spec::{HoseRef, Line};
use hosewright_core::tag::TagCode;
use rusqlite::{Connection, Row, params};

/// What is known of a hose, with the names of where it sits. The question's own condition follows.
pub(crate) const FACTS: &str = include_str!("facts.sql");

/// A stop that never comes.
const NEVER: &str = "9999-12-31";

/// What is known of a hose.
pub(crate) struct Facts {
    /// Its code.
    pub code: TagCode,
    /// Where it stands in its life, by the name in the contract.
    pub state: String,
    /// Its standard, type and size.
    pub hose: Option<HoseRef>,
    /// Its length.
    pub length_mm: Option<Millimetres>,
    /// The first day it was in service; none where it may have been before.
    pub new_on: Option<NaiveDate>,
    /// Where it sits.
    pub at: Option<PlaceAt>,
    /// As far as rules go.
    pub spot: Spot,
    /// Its age.
    pub aged: Aged,
    /// The gravest that its last inspection found.
    pub grade: Option<Verdict>,
    /// What a failure there puts at risk; none where nobody has said.
    pub stakes: Option<Vec<Stake>>,
    /// The owner's own word on that.
    pub consequence: Option<u8>,
}

impl Facts {
    /// All that falls due of it.
    pub fn due(&self, rules: &Rules<'_>, on: NaiveDate) -> Vec<DueRow> {
        if ages(self.at.is_some(), &self.state) { self.aged.due(rules, &self.spot, on) } else { Vec::new() }
    }
}

/// Whether a hose falls due at all: one that sits somewhere, or waits to.
fn ages(sits: bool, state: &str) -> bool {
    sits || state == "made"
}

/// The facts in a row of [`FACTS`].
pub(crate) fn facts(row: &Row<'_>) -> rusqlite::Result<Facts> {
    let place: Option<String> = row.get("place")?;
    let at = place.map(|_| place_at(row)).transpose()?;
    let stakes: Option<String> = row.get("stakes")?;
    Ok(Facts {
        code: rows::parsed(row, "code")?,
        state: row.get("state")?,
        hose: rows::hose(row)?,
        length_mm: row.get::<_, Option<f64>>("length_mm")?.map(Millimetres),
        new_on: rows::optional(row, "new_on")?,
        spot: spot(row)?,
        aged: Aged {
            too_much: row.get("too_much")?,
            ..aged(row, rows::optional(row, "inspected")?, rows::json(row, "standing")?)?
        },
        grade: rows::named(row, "grade")?,
        stakes: stakes.and_then(|text| serde_json::from_str(&text).ok()),
        consequence: row.get("consequence")?,
        at,
    })
}

/// Where it sits, as far as rules go.
fn spot(row: &Row<'_>) -> rusqlite::Result<Spot> {
    Ok(Spot {
        place: rows::optional(row, "place")?,
        machine: rows::optional(row, "machine")?,
        site: rows::optional(row, "site")?,
        line: rows::named::<Line>(row, "line")?,
        demand: rows::named::<Demand>(row, "demand")?,
    })
}

/// How old it is, with what was seen on it; what its place asks is not looked at.
fn aged(row: &Row<'_>, inspected: Option<NaiveDate>, standing: Vec<Standing>) -> rusqlite::Result<Aged> {
    let read_on: Option<NaiveDate> = rows::optional(row, "read_on")?;
    let meter = match read_on {
        Some(read_on) => Some(Meter { read_on, hours: row.get("hours")?, per_day: row.get("per_day")? }),
        None => None,
    };
    let on = match row.get::<_, Option<String>>("place")? {
        Some(_) => Some(OnSince {
            day: rows::optional(row, "on_date")?,
            already_there: row.get("already_there")?,
            hours: row.get("on_hours")?,
        }),
        None => None,
    };
    Ok(Aged {
        assembled: rows::optional(row, "assembled")?,
        hose_made: rows::optional(row, "hose_made")?,
        on,
        inspected,
        standing,
        meter,
        too_much: false,
    })
}

/// A hose whose rows were worked out.
pub(super) struct Projected {
    /// Whether it had rows.
    pub before: Before,
    /// The words by which it is found; none where nothing is recorded of it any more.
    pub words: Option<String>,
}

/// Works the rows of a hose out anew. One of which nothing is recorded any more has none.
pub(super) fn project(db: &Connection, code: TagCode, rules: &Rules<'_>) -> Result<Projected, Error> {
    let key = code.to_string();
    let mut statement = db.prepare_cached(include_str!("stands.sql"))?;
    let mut found = statement.query([&key])?;
    let row = found.next()?.ok_or(rusqlite::Error::QueryReturnedNoRows)?;
    let before = if row.get("stood")? { Before::Rows } else { Before::Nothing };
    if before == Before::Rows {
        db.prepare_cached("DELETE FROM due WHERE code = ?1")?.execute([&key])?;
        db.prepare_cached("DELETE FROM hose WHERE code = ?1")?.execute([&key])?;
    }
    let (made, sat): (bool, bool) = (row.get("made")?, row.get("sat")?);
    if !made && !sat {
        return Ok(Projected { before, words: None });
    }
    let inspections = if row.get("looked_at")? { inspections(db, &key)? } else { Vec::new() };
    let last = inspections.iter().max_by_key(|inspection| inspection.date);
    let standing = standing(Catalogue::embedded(), &inspections);
    let seen = Seen {
        inspected: last.map(|last| last.date),
        grade: last.map(worst),
        standing: serde_json::to_string(&standing)?,
    };
    let (state, spot) = (state(row, sat)?, spot(row)?);
    let due = if ages(spot.place.is_some(), state) {
        let too_much = match spot.place {
            Some(place) => super::asked::is_too_much(db, code, place)?,
            None => false,
        };
        Aged { too_much, ..aged(row, seen.inspected, standing)? }.due(rules, &spot, NaiveDate::MIN)
    } else {
        Vec::new()
    };
    insert(db, &key, row, state, &seen, &due)?;
    let mut insert = db.prepare_cached(
        "INSERT INTO due (code, what, day, stop_day, machine, site) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
    )?;
    for row in &due {
        insert.execute(params![
            key,
            row.what.name(),
            day(row.due),
            row.stop_from.map_or_else(|| NEVER.to_owned(), |day| day.to_string()),
            spot.machine.map(|machine| machine.to_string()),
            spot.site.map(|site| site.to_string()),
        ])?;
    }
    Ok(Projected { before, words: Some(row.get("words")?) })
}

/// What inspections saw of it.
struct Seen {
    inspected: Option<NaiveDate>,
    grade: Option<Verdict>,
    /// What stands, JSON.
    standing: String,
}

fn day(due: Option<NaiveDate>) -> String {
    due.map(|day| day.to_string()).unwrap_or_default()
}

/// The gravest thing that an inspection found.
fn worst(inspection: &Inspection) -> Verdict {
    let grades = inspection.findings.iter().map(|finding| grade(Catalogue::embedded(), finding));
    grades.max().unwrap_or(Verdict::Pass)
}

fn inspections(db: &Connection, key: &str) -> Result<Vec<Inspection>, Error> {
    let mut statement = db.prepare_cached(include_str!("../query/hose_inspections.sql"))?;
    let inspections = statement.query_map([key], |row| {
        Ok(Inspection { date: rows::parsed(row, "date")?, findings: rows::json(row, "findings")? })
    })?;
    Ok(inspections.collect::<Result<_, _>>()?)
}

/// Where it stands in its life.
fn state(row: &Row<'_>, sat: bool) -> rusqlite::Result<&'static str> {
    Ok(match () {
        () if row.get("withdrawn")? => "withdrawn",
        () if row.get::<_, Option<String>>("place")?.is_some() => "fitted",
        () if row.get::<_, Option<bool>>("failed_proof")?.unwrap_or(false) => "failed-proof",
        () if sat => "taken-off",
        () => "made",
    })
}

/// Writes how it stands.
fn insert(
    db: &Connection,
    key: &str,
    row: &Row<'_>,
    state: &str,
    seen: &Seen,
    due: &[DueRow],
) -> Result<(), Error> {
    let new_on: Option<String> = if row.get("was_old")? { None } else { row.get("new_on")? };
    let text = |column: &str| row.get::<_, Option<String>>(column);
    let next = due.iter().min_by_key(|row| (row.due, row.what));
    db.prepare_cached(
        "INSERT INTO hose (code, state, standard, kind, dn, length_mm, hose_made, assembled, new_on, place, machine,
                           site, line, demand, on_date, already_there, on_hours, inspected, grade, standing, next_day,
                           next_what)
         VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19, ?20, ?21, ?22)",
    )?
    .execute(params![
        key,
        state,
        text("standard")?,
        text("kind")?,
        row.get::<_, Option<f64>>("dn")?,
        row.get::<_, Option<f64>>("length_mm")?,
        text("hose_made")?,
        text("assembled")?,
        new_on,
        text("place")?,
        text("machine")?,
        text("site")?,
        text("line")?,
        text("demand")?,
        text("on_date")?,
        row.get::<_, bool>("already_there")?,
        row.get::<_, Option<f64>>("on_hours")?,
        seen.inspected.map(|day| day.to_string()),
        seen.grade.map(crate::project::grade_name),
        seen.standing,
        next.map(|next| day(next.due)),
        next.map(|next| next.what.name()),
    ])?;
    Ok(())
}
