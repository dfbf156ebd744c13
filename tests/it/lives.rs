//! How long the hoses of a register last.

use super::settings::{answer, api};
use hosewright_api::Api;
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

#[test]
fn a_hose_whose_day_of_fitting_is_not_known_is_in_no_life_and_counted() {
    let (_folder, mut api) = begin();
    let told = lives(&mut api, &["1,pressure,EN 853,2SN,16,ORFS,-10,ORFS,-10,2030-01-01,,"], "hose");
    assert_eq!(
        (&told["groups"], &told["left_out"]),
        (&json!([]), &json!(1)),
        "fitted after the day asked about"
    );
}
