//! How long the hoses of a register last.

use super::settings::{answer, api};
use hosewright_api::Api;
use hosewright_api::commands::Reply;
use serde_json::{Value, json};
use tempfile::TempDir;

fn begin() -> (TempDir, Api) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = api();
    api.open(&folder.path().join("register.db")).expect("the register opens");
    (folder, api)
}

/// Takes in a list of hoses and asks how long they last.
fn lives(api: &mut Api, rows: &[&str], by: &str) -> Value {
    let head =
        "site,machine,place,line,standard,type,dn,a_family,a_size,b_family,b_size,fitted,removed,cause";
    let rows: Vec<String> = rows.iter().map(|row| format!("Yard,Loader 9,{row}")).collect();
    let list = format!("{head}\n{}\n", rows.join("\n"));
    api.call("register.import", json!({"name": "list.csv"}), list.as_bytes()).expect("taken in");
    answer(api, "register.life", json!({"by": by, "on": "2026-01-01"})).expect("lives")
}

#[test]
fn lives_are_told_by_type_or_line_and_too_few_are_told_as_such() {
    const TWO_WIRE: &str = "EN 853,2SN,16,ORFS,-10,ORFS,-10";
    const ONE_WIRE: &str = "EN 853,1SN,16,ORFS,-10,ORFS,-10";
    let (_folder, mut api) = begin();
    let rows = [
        format!("1,pressure,{TWO_WIRE},2020-01-01,2021-01-01,ABR"),
        format!("1,pressure,{TWO_WIRE},2021-01-01,2024-01-01,BEND"),
        format!("2,pressure,{TWO_WIRE},2022-01-01,,"),
        format!("3,return,{ONE_WIRE},2022-01-01,2022-01-01,ABR"),
        format!("4,return,{ONE_WIRE},2022-01-01,2023-01-01,"),
    ];
    let rows: Vec<&str> = rows.iter().map(String::as_str).collect();
    let told = lives(&mut api, &rows, "hose");
    let groups = told["groups"].as_array().expect("groups");
    assert_eq!(told["left_out"], 0);
    let two = &groups[0];
    assert_eq!(two["of"], json!({"by": "hose", "standard": "EN 853", "type": "2SN"}));
    assert_eq!((&two["life"]["n"], &two["life"]["failures"]), (&json!(3), &json!(2)));
    assert_eq!(two["life"]["unfitted"], Value::Null);
    let survival = two["life"]["survival"].as_array().expect("steps");
    assert_eq!(survival.len(), two["life"]["survival_ci95"].as_array().expect("bounds").len());
    let close = |value: &Value, wanted: f64| (value.as_f64().expect("a number") - wanted).abs() < 0.01;
    assert!(close(&survival[0][0], 1.0) && close(&survival[0][1], 2.0 / 3.0), "{survival:?}");
    assert!(close(&two["longest"], 4.0), "{}", two["longest"]);
    let one = &groups[1];
    assert_eq!((&one["life"]["n"], &one["life"]["failures"]), (&json!(2), &json!(1)), "one on its first day");
    assert_eq!(one["life"]["unfitted"], "too-few-failures");

    let by_line =
        answer(&mut api, "register.life", json!({"by": "line", "on": "2026-01-01"})).expect("lives");
    let lines: Vec<_> =
        by_line["groups"].as_array().expect("groups").iter().map(|of| &of["of"]["line"]).collect();
    assert_eq!(lines, ["pressure", "return"]);
}

/// Twelve places whose hoses of one type failed at ages about four years, and one where they failed each year.
fn worn() -> Vec<String> {
    const TWO_WIRE: &str = "EN 853,2SN,16,ORFS,-10,ORFS,-10";
    let mut rows = Vec::new();
    for place in 1..=12 {
        let off = 2018 + place % 3;
        rows.push(format!(
            "{place},pressure,{TWO_WIRE},2014-0{}-01,{off}-0{}-15,ABR",
            1 + place % 8,
            1 + place % 9
        ));
        rows.push(format!("{place},pressure,{TWO_WIRE},{off}-1{}-01,,", place % 3));
    }
    for year in 2014..2024 {
        rows.push(format!("13,pressure,{TWO_WIRE},{year}-02-01,{}-01-01,BEND", year + 1));
    }
    rows
}

#[test]
fn what_is_to_come_and_what_it_costs_least_are_told_with_their_bounds() {
    let (_folder, mut api) = begin();
    let rows = worn();
    let told = lives(&mut api, &rows.iter().map(String::as_str).collect::<Vec<_>>(), "hose");
    let group = &told["groups"][0];
    assert_eq!(group["in_service"], 12);
    let expected = &group["expected"];
    let mean = expected["failures"].as_f64().expect("a mean");
    let [low, high] = [0, 1].map(|side| expected["ci95"][side].as_f64().expect("a bound"));
    assert!(low <= mean && mean <= high && mean > 0.0 && high <= 12.0, "{expected}");
    assert_eq!(told["expected"], *expected, "one group is all of them");
    assert_eq!(told["not_expected"], 0);
    assert_eq!(group["least_cost"], Value::Null, "no cost is made up");

    let costs = json!({"on": "2026-01-01", "failure_cost": 2000, "planned_cost": 200});
    let told = answer(&mut api, "register.life", costs).expect("lives");
    let cost = &told["groups"][0]["least_cost"];
    assert_eq!(cost["ratio"], 10.0);
    let curve = cost["curve"].as_array().expect("a curve");
    let least = cost["cost"].as_f64().expect("a cost");
    assert!(curve.iter().all(|point| point[1].as_f64().expect("a cost") >= least - 1e-9), "{cost}");
    for (field, asked) in [
        ("planned_cost", json!({"failure_cost": 10})),
        ("failure_cost", json!({"failure_cost": 10, "planned_cost": 10})),
        ("planned_cost", json!({"failure_cost": 10, "planned_cost": -1})),
    ] {
        let error = answer(&mut api, "register.life", asked).expect_err("refused");
        assert_eq!(error.field, field, "{error}");
    }
}

#[test]
fn a_place_that_fails_each_year_stands_out_and_others_are_left_to_chance() {
    let (_folder, mut api) = begin();
    let rows = worn();
    let told = lives(&mut api, &rows.iter().map(String::as_str).collect::<Vec<_>>(), "hose");
    assert_eq!(told["places_looked_at"], 13);
    let worst = &told["places"][0];
    assert_eq!((&worst["at"]["number"], &worst["excess"]["seen"]), (&json!(13), &json!(10)));
    assert_eq!(worst["stands_out"], true);
    let low = worst["excess"]["ratio_ci95"][0].as_f64().expect("a bound");
    assert!(low > 1.0, "{worst}");
    let others = told["places"].as_array().expect("places").iter().skip(1);
    assert!(others.clone().all(|place| place["stands_out"] == false), "{told}");
}

#[test]
fn hoses_are_put_together_by_line_load_machine_and_place() {
    let (_folder, mut api) = begin();
    let rows = worn();
    lives(&mut api, &rows.iter().map(String::as_str).collect::<Vec<_>>(), "hose");
    for (by, group) in [
        ("machine", json!({"by": "machine", "kind": "other"})),
        ("place", json!({"by": "place", "kind": "other", "name": "13"})),
        ("load", json!({"by": "not-known"})),
    ] {
        let told = answer(&mut api, "register.life", json!({"by": by, "on": "2026-01-01"})).expect("lives");
        let groups = told["groups"].as_array().expect("groups");
        assert!(groups.iter().any(|found| found["of"] == group), "{by}: {groups:?}");
    }
}

#[test]
fn where_records_began_late_hoses_are_counted_from_their_age_then() {
    let (_folder, mut api) = begin();
    let rows = worn();
    let all = lives(&mut api, &rows.iter().map(String::as_str).collect::<Vec<_>>(), "hose");
    let since = json!({"on": "2026-01-01", "since": "2019-06-01"});
    let told = answer(&mut api, "register.life", since).expect("lives");
    let [n, before] = ["n", "failures"].map(|key| told["groups"][0]["life"][key].as_u64().expect("a count"));
    let ended = told["ended_before"].as_u64().expect("a count");
    assert!(ended > 0 && before > 0, "{told}");
    assert_eq!(n + ended, all["groups"][0]["life"]["n"].as_u64().expect("a count"), "each is told once");
}

#[test]
fn a_failure_that_an_inspection_found_came_about_since_the_last_look() {
    let (_folder, mut api) = begin();
    let rows = [
        "1,pressure,EN 853,2SN,16,ORFS,-10,ORFS,-10,2020-01-01,,",
        "2,pressure,EN 853,2SN,16,ORFS,-10,ORFS,-10,2016-01-01,2021-01-01,ABR",
    ];
    lives(&mut api, &rows, "hose");
    let overview = answer(&mut api, "register.search", json!({"words": "2SN"})).expect("hits");
    let hits = overview["hits"].as_array().expect("hits");
    let hose = hits.iter().find(|hit| hit["what"] == "hose" && !hit["at"].is_null()).expect("the fitted one");
    let (code, place) = (&hose["code"], &hose["at"]["place"]);
    let seen = |date: &str, grade: &str| {
        json!({"body": {"kind": "inspected", "code": code, "date": date,
            "findings": [{"sign": "ABR", "grade": grade}]}})
    };
    let events = json!({"events": [
        seen("2022-01-01", "pass"),
        seen("2023-01-01", "stop"),
        {"body": {"kind": "taken-off", "code": code, "place": place, "date": "2023-02-01", "cause": "ABR"}},
    ]});
    answer(&mut api, "register.record", events).expect("recorded");
    let told = answer(&mut api, "register.life", json!({"on": "2026-01-01"})).expect("lives");
    let life = &told["groups"][0]["life"];
    assert_eq!((&life["failures"], &life["between"]), (&json!(2), &json!(1)), "{life}");
    assert_eq!(life["survival_by"], "turnbull");
    // It failed by the third year, the day of the finding, and not on the day it came off.
    assert!((life["survival"][0][0].as_f64().expect("an age") - 3.0).abs() < 0.01, "{life}");
}

#[test]
fn lives_are_left_as_a_sheet_with_their_curves() {
    let (_folder, mut api) = begin();
    let rows = worn();
    lives(&mut api, &rows.iter().map(String::as_str).collect::<Vec<_>>(), "hose");
    let asked = json!({"lives": {"on": "2026-01-01"}, "paper": "a4", "kind": "svg"});
    let Ok(Reply::File(file)) = api.call("register.life.paper", asked, &[]) else { panic!("no file came") };
    let svg = String::from_utf8(file.bytes).expect("text");
    assert!(svg.contains("EN 853 2SN"), "the group is named");
    assert!(svg.matches("<path").count() + svg.matches("<polyline").count() > 5, "the curves are drawn");

    let mut settings = answer(&mut api, "settings.read", json!({})).expect("settings");
    let fields = settings.as_object_mut().expect("settings");
    for answered in ["catalogue", "program", "unreadable"] {
        fields.remove(answered);
    }
    fields.insert("language".to_owned(), json!("de"));
    answer(&mut api, "settings.write", settings).expect("written");
    api.speak_as_set();
    let asked = json!({"lives": {"on": "2026-01-01"}, "paper": "a4", "kind": "text"});
    let Ok(Reply::File(file)) = api.call("register.life.paper", asked, &[]) else { panic!("no file came") };
    let text = String::from_utf8(file.bytes).expect("text");
    let shape = text.lines().find(|line| line.contains("Formparameter")).expect("a shape");
    assert!(shape.contains(',') && !shape.contains('.'), "{shape}");
}

#[test]
fn a_hose_whose_day_of_fitting_is_not_known_is_in_no_life_and_counted() {
    let (_folder, mut api) = begin();
    let told = lives(&mut api, &["1,pressure,EN 853,2SN,16,ORFS,-10,ORFS,-10,2026-06-01,,"], "hose");
    assert_eq!(
        (&told["groups"], &told["left_out"]),
        (&json!([]), &json!(1)),
        "fitted after the day asked about"
    );
}
