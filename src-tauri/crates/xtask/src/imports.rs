//! How long a list of many hoses takes to be tried and taken in.

use crate::promises::Promise;
use crate::timed::{Spent, Times, once};
use chrono::{DateTime, Utc};
use hosewright_api::commands::Reply;
use hosewright_api::{Api, World};
use hosewright_papers::table;
use hosewright_words::Language;
use serde_json::json;
use std::fmt::Write;
use std::io::{Error, Result};

/// How many rows.
pub(crate) const ROWS: usize = 50_000;

/// The bar of taking a list in.
const BAR_MS: f64 = 5000.0;

/// How often each is done; the middle counts.
const RUNS: u64 = 3;

/// Places of a machine, and hoses that sat at each.
const PLACES: usize = 10;
const HOSES: usize = 4;

/// A clock that stands still and chance that is counted: every run takes in the same.
struct Still(u128);

impl World for Still {
    fn now(&self) -> DateTime<Utc> {
        DateTime::from_timestamp(1_795_600_000, 0).unwrap_or_default()
    }

    fn random(&mut self) -> [u8; 16] {
        // Weyl's sequence: no number comes twice.
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835);
        self.0.to_be_bytes()
    }
}

/// Tries a list of so many rows and takes it in, as CSV and as a workbook, each time in a register of its own.
pub fn measure(rows: usize) -> Result<Vec<Promise>> {
    println!("a list of {rows} rows, {PLACES} places a machine and {HOSES} hoses at each");
    let csv = list(rows);
    let cells = table::read(csv.as_bytes(), "list.csv").map_err(Error::other)?;
    let workbook = table::to_xlsx("hoses", &cells).map_err(Error::other)?;
    let mut promises = Vec::new();
    for (name, bytes) in [("list.csv", csv.as_bytes()), ("list.xlsx", &workbook)] {
        for (what, dry_run) in [("tried", true), ("taken in", false)] {
            let what = format!("{name} of {rows} rows {what}");
            promises.push(Promise::time(what, middle(name, bytes, dry_run, rows)?, BAR_MS));
        }
    }
    Ok(promises)
}

fn middle(name: &str, bytes: &[u8], dry_run: bool, rows: usize) -> Result<Spent> {
    let mut times = Times::default();
    for _ in 0..RUNS {
        times.push(taken(name, bytes, dry_run, rows)?);
    }
    Ok(times.middle())
}

/// How long it takes in a register that is new.
fn taken(name: &str, bytes: &[u8], dry_run: bool, rows: usize) -> Result<Spent> {
    let folder = tempfile::tempdir()?;
    let mut api = Api::new(Language::English, Box::new(Still(0)));
    api.open(&folder.path().join("register.db")).map_err(Error::other)?;
    let asked = json!({"name": name, "dry_run": dry_run});
    let (reply, spent) = once(|| api.call("register.import", asked, bytes));
    match reply.map_err(Error::other)? {
        Reply::Document(answer) if answer["hoses"] == rows => Ok(spent),
        other => Err(Error::other(format!("not all rows were taken in: {other:?}"))),
    }
}

/// An invented list: each hose at a place follows the one before it.
fn list(rows: usize) -> String {
    let mut text = String::from(
        "site,machine,kind,place,place_name,line,relief_bar,hose,a_family,a_size,b_family,b_size,length_mm,fitted,removed,\
         cause\n",
    );
    for row in 0..rows {
        let (place, turn) = (row / HOSES, row % HOSES);
        let (machine, number) = (place / PLACES, place % PLACES + 1);
        let fitted = 2010 + 3 * turn;
        let (removed, cause) =
            if turn + 1 < HOSES { (format!("{}-05-01", fitted + 3), "ABR") } else { (String::new(), "") };
        let dn = [10, 12, 16, 19][number % 4];
        let size = ["-6", "-8", "-10", "-12"][number % 4];
        let _ = writeln!(
            text,
            "Yard {},Machine {machine},excavator,{number},Place {number},pressure,210,EN 853 2SN DN {dn},ORFS,{size},ORFS,\
             {size},{},{fitted}-05-01,{removed},{cause}",
            machine % 20,
            800 + 10 * number
        );
    }
    text
}
