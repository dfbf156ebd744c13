//! What falls due as a file: a calendar, a list.

use super::due::{DueLine, DueQuestion, due};
use crate::commands::File;
use crate::sheet::key;
use crate::{Api, ApiError};
use chrono::NaiveDate;
use hosewright_papers::{calendar, table};
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The question of `register.due` with the kind of file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct DueExport {
    /// What is written.
    #[serde(default)]
    #[ts(as = "Option<DueQuestion>", optional)]
    pub due: DueQuestion,
    /// The kind of file.
    #[serde(rename = "as")]
    pub kind: ListKind,
}

/// Kinds of files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum ListKind {
    /// For a calendar: what has a day.
    Ics,
    /// A list.
    Csv,
    /// The same as a workbook.
    Xlsx,
}

/// What falls due as a file.
///
/// # Errors
/// The register can not be read.
pub fn export(api: &mut Api, asked: DueExport, _: &[u8]) -> Result<File, ApiError> {
    let list = due(api, asked.due, &[])?.content;
    if asked.kind == ListKind::Ics {
        let entries: Vec<calendar::Due> =
            list.due.iter().filter_map(|line| entry(line, api.today(), &api.words)).collect();
        let bytes = calendar::write(&entries, api.world.now()).into_bytes();
        return Ok(File { name: "due.ics".to_owned(), mime: "text/calendar; charset=utf-8", bytes });
    }
    let head = [
        "due",
        "what",
        "verdict",
        "code",
        "site",
        "machine",
        "place",
        "place_name",
        "standard",
        "type",
        "dn",
        "since",
        "counted_from",
        "years",
        "by",
        "seen",
        "rule",
        "source",
        "chance",
        "consequence",
        "risk",
    ];
    let mut rows = vec![head.map(str::to_owned).to_vec()];
    rows.extend(list.due.iter().map(cells));
    file(&asked.kind, "due", &rows)
}

/// Rows as a file of that kind.
pub(super) fn file(kind: &ListKind, name: &str, rows: &[Vec<String>]) -> Result<File, ApiError> {
    let wrong = |error: table::TableError| ApiError::file("", error);
    let (ending, mime, bytes) = match kind {
        ListKind::Csv => ("csv", "text/csv; charset=utf-8", table::to_csv(rows)),
        ListKind::Xlsx => (
            "xlsx",
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
            table::to_xlsx(name, rows).map_err(wrong)?,
        ),
        ListKind::Ics => {
            return Err(ApiError::input(
                "as",
                "a calendar holds days that fall due; csv or xlsx is right here",
            ));
        }
    };
    Ok(File { name: format!("{name}.{ending}"), mime, bytes })
}

fn cells(line: &DueLine) -> Vec<String> {
    let (row, at) = (&line.due.row, line.due.at.as_ref());
    let text = |value: Option<&String>| value.cloned().unwrap_or_default();
    let day = |value: Option<NaiveDate>| value.map(|day| day.to_string()).unwrap_or_default();
    let number = |value: Option<f64>| value.map(|value| value.to_string()).unwrap_or_default();
    let hose = line.due.hose.as_ref();
    vec![
        day(row.due),
        key(&row.what),
        key(&row.verdict),
        line.due.code.to_string(),
        text(at.and_then(|at| at.site_name.as_ref())),
        text(at.and_then(|at| at.machine_name.as_ref())),
        at.and_then(|at| at.number).map(|number| number.to_string()).unwrap_or_default(),
        text(at.and_then(|at| at.place_name.as_ref())),
        text(hose.map(|hose| &hose.standard)),
        text(hose.map(|hose| &hose.kind)),
        hose.map(|hose| hose.dn.to_string()).unwrap_or_default(),
        day(row.since),
        key(&row.counted_from),
        number(row.years),
        key(&row.by),
        why(line),
        text(row.rule.as_ref().map(|rule| &rule.why)),
        text(row.rule.as_ref().map(|rule| &rule.source)),
        number(line.risk.as_ref().map(|risk| risk.chance)),
        line.risk.as_ref().map(|risk| risk.consequence.to_string()).unwrap_or_default(),
        number(line.risk.as_ref().map(|risk| risk.product)),
    ]
}

/// What was seen, or what is asked too much; blank where it is neither.
fn why(line: &DueLine) -> String {
    let seen = line.seen.as_ref().map(|seen| seen.name.clone());
    seen.or(line.asked.as_ref().map(|asked| asked.why.clone())).unwrap_or_default()
}

/// A day in the calendar; none for what has no day. What is overdue stands on today, where whoever opens the calendar sees
/// it, and says since when; taken in again later, it moves along.
fn entry(line: &DueLine, today: NaiveDate, words: &Words) -> Option<calendar::Due> {
    let (row, at) = (&line.due.row, line.due.at.as_ref());
    let what = key(&row.what);
    let name = |text: Option<&String>| text.cloned().unwrap_or_default();
    let machine = name(at.and_then(|at| at.machine_name.as_ref()));
    let place = name(at.and_then(|at| at.place_name.as_ref()));
    let code = line.due.code.to_string();
    let due = row.due?;
    let act = words.say(&format!("due-{what}"), &[("machine", &machine), ("place", &place), ("code", &code)]);
    let said = [Some(name(at.and_then(|at| at.site_name.as_ref()))), Some(why(line))];
    Some(calendar::Due {
        key: format!("{code} {what}"),
        on: due.max(today),
        link: format!("hosewright:{code}"),
        summary: if due < today {
            words.say("due-overdue", &[("day", &due.to_string()), ("what", &act)])
        } else {
            act
        },
        description: said
            .into_iter()
            .flatten()
            .filter(|text| !text.is_empty())
            .collect::<Vec<_>>()
            .join("; "),
    })
}
