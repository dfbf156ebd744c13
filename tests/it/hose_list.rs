//! Lists of hoses as offices keep them: matched, tried, and taken in whole or not at all. Every list here is invented.

use super::settings::{answer, api};
use hosewright_api::commands::Reply;
use hosewright_api::{Api, ApiError, Code};
use serde_json::{Value, json};
use std::io::Read;
use tempfile::TempDir;

fn begin() -> (TempDir, Api) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = api();
    api.open(&folder.path().join("register.db")).expect("the register opens");
    (folder, api)
}

fn call(api: &mut Api, name: &str, asked: Value, list: &str) -> Result<Value, ApiError> {
    match api.call(name, asked, list.as_bytes())? {
        Reply::Document(document) => Ok(document),
        Reply::File(file) => panic!("a file came: {}", file.name),
    }
}

/// As an office might send it: a title, its own words, days and units of its own.
const MESSY: &str = "\
Hoses of the yard (invented)\r
\r
Machine;Description;Hose;End A;End A size;End B;End B size;Length;Pressure;Date installed;Removed;Cause;Our no.\r
Loader 9;Lift left;EN 853 2SN DN 16;ORFS;-10;ORFS;-10;1240;3000;03/04/2020;05/06/2022;ABR;17\r
Loader 9;Lift left;EN 853 2SN DN 16;ORFS;-10;ORFS;-10;1240;3000;05/06/2022;;;18\r
Loader 9;Tilt;EN 853 2SN 5/8\";JIC 37 flare;-10;ORFS;-10;48 13/16 in;207 bar;07/08/2021;;;19\r
Loader 9;Tilt rear;EN 853 2SN DN 16;bayonet;-10;ORFS;-10;1240;3000;07/08/2021;;;20\r
";

fn columns(days: &str) -> Value {
    json!([
        {"column": 0, "is": "machine"}, {"column": 1, "is": "place_name"}, {"column": 2, "is": "hose"},
        {"column": 3, "is": "a_family"}, {"column": 4, "is": "a_size"}, {"column": 5, "is": "b_family"},
        {"column": 6, "is": "b_size"}, {"column": 7, "is": "length_mm", "unit": "mm"},
        {"column": 8, "is": "working_pressure_bar", "unit": "psi"}, {"column": 9, "is": "fitted", "days": days},
        {"column": 10, "is": "removed", "days": days}, {"column": 11, "is": "cause"}])
}

fn asked(dry_run: bool, leave_out: &[usize]) -> Value {
    json!({"name": "yard.csv", "dry_run": dry_run, "columns": columns("day-first"), "fixed": {"site": "Yard"},
        "leave_out": leave_out})
}

#[test]
fn what_may_be_read_two_ways_is_asked_before_anything_is_read() {
    let found = call(&mut api(), "register.match", json!({"name": "yard.csv"}), MESSY).expect("a table");
    assert_eq!((&found["header_row"], &found["rows"]), (&json!(3), &json!(4)));
    let asks = |found: &Value| -> Vec<(String, String)> {
        let columns = found["columns"].as_array().expect("columns");
        let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
        columns
            .iter()
            .filter(|one| !one["asks"].is_null())
            .map(|one| (text(&one["is"]), text(&one["asks"])))
            .collect()
    };
    let pair = |is: &str, asks: &str| (is.to_owned(), asks.to_owned());
    assert_eq!(
        asks(&found),
        [
            pair("length_mm", "unit"),
            pair("working_pressure_bar", "unit"),
            pair("fitted", "days"),
            pair("removed", "days"),
        ]
    );
    assert_eq!(found["missing"], json!(["site"]));
    assert_eq!(found["columns"][12]["is"], Value::Null, "our no. is nothing that is known");

    let said = json!({"name": "yard.csv", "columns": columns("day-first")});
    let found = call(&mut api(), "register.match", said, MESSY).expect("a table");
    assert!(asks(&found).is_empty(), "{found}");
    let without = json!({"name": "yard.csv", "columns": [{"column": 0, "is": "machine"}]});
    let found = call(&mut api(), "register.match", without, MESSY).expect("a table");
    assert!(found["missing"].as_array().expect("a list").contains(&json!("fitted")), "{}", found["missing"]);
}

#[test]
fn a_dry_run_tells_what_becomes_of_every_row_and_changes_nothing() {
    let (_folder, mut api) = begin();
    let tried = call(&mut api, "register.import", asked(true, &[]), MESSY).expect("a dry run");
    let rows: Vec<(u64, &str)> = tried["told"]
        .as_array()
        .expect("rows")
        .iter()
        .map(|row| (row["row"].as_u64().expect("a number"), row["is"].as_str().expect("a word")))
        .collect();
    assert_eq!(rows, [(4, "made"), (5, "made"), (6, "made"), (7, "refused")]);
    let why = tried["refused"][0]["why"].as_str().expect("a reason");
    assert!(why.starts_with("End A: ") && why.contains("bayonet"), "{why}");
    let made = (&tried["machines"], &tried["places"], &tried["hoses"]);
    assert_eq!(made, (&json!(1), &json!(2), &json!(3)), "what the list would make without the refused row");
    let error = call(&mut api, "register.import", asked(false, &[]), MESSY).expect_err("all or nothing");
    assert_eq!(error.code, Code::Input);
    let counts = answer(&mut api, "register.overview", json!({})).expect("counts");
    assert_eq!(counts["counts"]["hoses"], 0, "a failed command changes nothing");
}

#[test]
fn days_and_units_are_taken_as_they_were_said() {
    let (_folder, mut api) = begin();
    let taken = call(&mut api, "register.import", asked(false, &[7]), MESSY).expect("the rest is sound");
    assert_eq!((&taken["hoses"], &taken["places"], &taken["machines"]), (&json!(3), &json!(2), &json!(1)));
    let hits = answer(&mut api, "register.search", json!({"words": "Tilt"})).expect("hits");
    let hit =
        hits["hits"].as_array().expect("hits").iter().find(|hit| hit["what"] == "place").expect("a place");
    let place = answer(&mut api, "register.place", json!({"place": hit["at"]["place"]})).expect("a place");
    let stay = &place["stays"][0];
    assert_eq!(stay["on_date"], "2021-08-07", "the day first, as was said: {stay}");
    let hose = answer(&mut api, "register.show", json!({"code": stay["code"]})).expect("a hose");
    let record = &hose["assembly"];
    // 48 13/16 in is 1239.8375 mm by the inch of 25.4 mm.
    let length = record["spec"]["overall_length_mm"].as_f64().expect("a length");
    assert!((length - 1239.8375).abs() < 1e-9, "{length}");
    assert_eq!(
        record["service"]["working_pressure_bar"], 207.0,
        "a unit in the cell stands over its column's"
    );
    let again = call(&mut api, "register.import", asked(true, &[7]), MESSY).expect("twice is nothing new");
    assert_eq!((&again["hoses"], &again["known"], &again["changed"]), (&json!(0), &json!(3), &json!(0)));
}

#[test]
fn a_hose_that_the_list_has_off_and_the_register_on_is_taken_off() {
    let (_folder, mut api) = begin();
    call(&mut api, "register.import", asked(false, &[7]), MESSY).expect("taken in");
    let later = MESSY.replace("07/08/2021;;;19", "07/08/2021;01/02/2024;BEND;19");
    let tried = call(&mut api, "register.import", asked(true, &[7]), &later).expect("a dry run");
    assert_eq!((&tried["changed"], &tried["known"]), (&json!(1), &json!(2)));
    call(&mut api, "register.import", asked(false, &[7]), &later).expect("taken in");
    let told = answer(&mut api, "register.life", json!({"on": "2026-01-01"})).expect("lives");
    assert_eq!(told["groups"][0]["life"]["failures"], 2, "the failure of row 4 and this one");
    let again = call(&mut api, "register.import", asked(true, &[7]), &later).expect("a dry run");
    assert_eq!((&again["changed"], &again["known"]), (&json!(0), &json!(3)));
}

#[test]
fn a_heading_that_is_not_known_is_named_unless_a_person_matched_the_columns() {
    let (_folder, mut api) = begin();
    let error =
        call(&mut api, "register.import", json!({"name": "yard.csv", "fixed": {"site": "Yard"}}), MESSY)
            .expect_err("nobody matched them");
    assert!(error.message.contains("Our no."), "{error}");
}

#[test]
fn what_is_wrong_is_named_by_the_heading_that_the_list_has_over_it() {
    let (_folder, mut api) = begin();
    let mut why = |from: &str, to: &str| -> String {
        let list = MESSY.replacen(from, to, 1);
        assert_ne!(list, MESSY, "{from} stands in the list");
        let tried = call(&mut api, "register.import", asked(true, &[7]), &list).expect("a dry run");
        tried["refused"][0]["why"].as_str().unwrap_or_default().to_owned()
    };
    for (from, to, begins) in [
        ("Lift left;EN 853 2SN DN 16", "Lift left;", "Hose: it is blank"),
        ("9;Lift left", "9;", "Description: it is blank"),
        ("05/06/2022;ABR", "05/06/2019;ABR", "Removed: 2019-06-05 is before 2020-04-03"),
    ] {
        let why = why(from, to);
        assert!(why.starts_with(begins), "{why}");
    }
    let beside = why("05/06/2022;;;18", "05/06/2021;;;18");
    assert!(beside.contains(r#"correct "Date installed" and "Removed" of one of them"#), "{beside}");
}

#[test]
fn what_the_list_has_no_column_for_is_named_in_words() {
    let (_folder, mut api) = begin();
    call(&mut api, "register.import", asked(false, &[7]), MESSY).expect("taken in");
    let other = MESSY.replace("48 13/16 in", "49 13/16 in");
    let tried = call(&mut api, "register.import", asked(true, &[7]), &other).expect("a dry run");
    let why = tried["refused"][0]["why"].as_str().expect("another hose sits there");
    assert!(why.contains(r#"write that code in "code of the tag", else correct "Date installed""#), "{why}");
}

#[test]
fn work_that_is_stopped_leaves_nothing_behind() {
    let (_folder, mut api) = begin();
    let head = "site,machine,place,hose,a_family,a_size,b_family,b_size,fitted\n";
    let row = |n: usize| format!("Yard,Loader {n},1,EN 853 2SN DN 16,ORFS,-10,ORFS,-10,2020-01-01\n");
    let list: String = std::iter::once(head.to_owned()).chain((0..3000).map(row)).collect();
    let work = api.work();
    let stopper = std::thread::spawn(move || {
        // Stops it as soon as something is going on.
        while work.done().of == 0 {
            std::thread::yield_now();
        }
        work.call("work.stop").expect("it is answered").expect("it stops");
    });
    let stopped = call(&mut api, "register.import", json!({"name": "list.csv"}), &list);
    stopper.join().expect("it stopped");
    // It may have stopped between the reading and the writing; either way all is there or nothing.
    let hoses = answer(&mut api, "register.overview", json!({})).expect("counts")["counts"]["hoses"].clone();
    match stopped {
        Err(error) => {
            assert!(error.message.contains("stopped"), "{error}");
            assert_eq!(hoses, 0);
        }
        Ok(taken) => assert_eq!(hoses, taken["hoses"]),
    }
    assert_eq!(api.work().done().of, 0, "nothing goes on any more");
}

#[test]
fn everything_is_written_out_with_hoses_that_were_never_fitted() {
    let (_folder, mut api) = begin();
    call(&mut api, "register.import", asked(false, &[7]), MESSY).expect("taken in");
    let code = "FTYKH-7MAXC-5";
    let made = json!({"kind": "assembly-made", "code": code, "proof": {"state": "not-proved", "why": "no-rig"},
        "spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16}, "ends": []},
        "catalogue": "tables", "program": "test"});
    answer(&mut api, "register.record", json!({"events": [{"body": made}]})).expect("recorded");
    let mut export = |kind: &str| match api.call("register.export", json!({"as": kind}), &[]) {
        Ok(Reply::File(file)) => file,
        other => panic!("no file came: {other:?}"),
    };
    let all: Value = serde_json::from_slice(&export("json").bytes).expect("a document");
    let hoses = all["hoses"].as_array().expect("hoses");
    assert_eq!(hoses.len(), 4);
    assert!(hoses.iter().any(|hose| hose["code"] == code && hose["stays"] == json!([])), "{code}");
    for part in ["sites", "machines", "log"] {
        assert!(!all[part].as_array().expect("a list").is_empty(), "{part}");
    }
    let zip = export("zip");
    assert_eq!(zip.name, "register.zip");
    let mut archive = zip::ZipArchive::new(std::io::Cursor::new(zip.bytes)).expect("an archive");
    let mut rows = |name: &str| {
        let mut text = String::new();
        archive.by_name(name).expect("a table").read_to_string(&mut text).expect("text");
        text.lines().count()
    };
    assert_eq!(
        (rows("hoses.csv"), rows("stays.csv"), rows("places.csv")),
        (5, 4, 3),
        "a row each beneath the head"
    );
}
