//! Several hoses at once: one cut list, parts against the van, an order in which the press is changed least, one sheet
//! of labels.

use super::stock::{Device, device, hose, loaded, make};
use hosewright_api::ApiError;
use hosewright_api::commands::Reply;
use serde_json::{Value, json};
use std::io::Write;
use std::process::Command;

/// A hose of the batch with that overall length, crimped with those dies.
fn hosed(name: &str, overall: u32, dies: [Option<&str>; 2]) -> Value {
    let mut make = make();
    make["question"]["spec"]["overall_length_mm"] = json!(overall);
    for (at, die) in dies.into_iter().enumerate() {
        make["settings"][at]["die_set"] = json!(die);
    }
    json!({"name": name, "make": make})
}

fn plan(van: &mut Device, hoses: &[Value]) -> Value {
    van.get("batch", json!({"hoses": hoses, "store": "Van 2"}))
}

#[test]
fn every_hose_is_cut_once_and_parts_are_summed_against_the_van() {
    let mut van = device(1);
    loaded(&mut van);
    van.change(json!([{"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "offcut", "length_mm": 2000, "bin": "O3"}]));
    let mut twice = hosed("boom", 1240, [Some("28"); 2]);
    twice["count"] = json!(2);
    twice["more"] = json!([{"item": {"kind": "sleeve", "name": "Sleeve 30"}, "count": 1}]);
    // 700 less twice 31.5 is 637: with 1177 and two kerfs of 3 it is 1820 of the offcut's 2000.
    let planned = plan(&mut van, &[twice, hosed("stick", 700, [Some("28"); 2])]);
    let cut = &planned["cuts"][0];
    let steps = cut["steps"].as_array().expect("steps");
    let mut cut_once: Vec<&str> = steps
        .iter()
        .flat_map(|step| step["cuts"].as_array().expect("cuts"))
        .map(|cut| cut["name"].as_str().expect("a name"))
        .collect();
    cut_once.sort_unstable();
    assert_eq!(cut_once, ["boom 1/2", "boom 2/2", "stick"]);
    let offcut = steps.iter().find(|step| step["sort"] == "offcut").expect("it is used before new hose");
    assert_eq!(
        (&offcut["left_mm"], &offcut["bin"], &cut["reel_mm"]),
        (&json!(180.0), &json!("O3"), &json!(1180.0))
    );
    let part = |kind: &str| {
        planned["parts"]
            .as_array()
            .expect("parts")
            .iter()
            .find(|part| part["part"] == kind)
            .expect("it is there")
            .clone()
    };
    assert_eq!((&part("end")["wanted"], &part("end")["state"]), (&json!(6), &json!("there")));
    assert_eq!((&part("sleeve")["wanted"], &part("sleeve")["state"]), (&json!(2), &json!("not-kept")));
    assert_eq!((&part("hose")["wanted"], &part("hose")["state"]), (&json!(3000), &json!("there")));
}

#[test]
fn a_hose_that_the_check_stops_is_neither_cut_nor_crimped_and_the_rest_is() {
    let mut van = device(1);
    loaded(&mut van);
    let mut stopped = hosed("wrong", 1240, [Some("28"); 2]);
    stopped["make"]["question"]["service"]["working_pressure_bar"] = json!(400);
    let planned = plan(&mut van, &[stopped, hosed("right", 1240, [Some("28"); 2])]);
    assert_eq!(planned["hoses"][0]["verdict"], "stop");
    assert!(planned["hoses"][0]["stops"].to_string().contains("400 bar"), "{planned}");
    for list in ["cuts", "presses", "parts"] {
        assert!(!planned[list].to_string().contains("wrong"), "{list}");
    }
    assert_eq!(planned["parts"][1]["wanted"], 2, "two ends, of the one that is made");
}

#[test]
fn each_set_of_dies_goes_into_the_press_once_and_what_has_none_comes_last() {
    let mut van = device(1);
    loaded(&mut van);
    let planned = plan(
        &mut van,
        &[
            hosed("one", 1240, [Some("28"), Some("30")]),
            hosed("two", 1100, [None, Some("28")]),
            hosed("three", 1000, [Some(" 30 "), Some("28")]),
        ],
    );
    let dies: Vec<&Value> =
        planned["presses"].as_array().expect("setups").iter().map(|setup| &setup["die_set"]).collect();
    assert_eq!(dies, [&json!("28"), &json!("30"), &Value::Null]);
    assert_eq!(planned["die_changes"], 2);
    let crimps: usize = planned["presses"]
        .as_array()
        .expect("setups")
        .iter()
        .map(|setup| setup["crimps"].as_array().map_or(0, Vec::len))
        .sum();
    assert_eq!(crimps, 6, "both ends of each hose");
    assert!(planned["rule"].as_str().expect("a rule").contains("once"));
}

#[test]
fn what_no_piece_can_give_and_a_length_that_nobody_knows_are_said() {
    let mut van = device(1);
    van.change(
        json!([{"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "offcut", "length_mm": 1200}]),
    );
    let mut unknown = hosed("unknown", 1240, [Some("28"); 2]);
    unknown["make"]["question"]["spec"]["ends"][0].as_object_mut().expect("an end").remove("cutoff_mm");
    let planned = plan(
        &mut van,
        &[hosed("long", 3000, [Some("28"); 2]), hosed("short", 1240, [Some("28"); 2]), unknown],
    );
    assert_eq!(planned["cuts"][0]["unmade"], json!([{"name": "long", "length_mm": 2937.0}]));
    assert!(planned["said"].to_string().contains("unknown: a length or cut-off is missing"), "{planned}");
    assert_eq!(planned["parts"][0]["state"], "not-known");
}

#[test]
fn a_batch_that_is_none_is_refused_by_its_hose() {
    let mut van = device(1);
    loaded(&mut van);
    let mut bad = hosed("bad", 1240, [Some("28"); 2]);
    bad["make"]["question"]["spec"]["hose"]["type"] = json!("2SX");
    let error =
        van.ask("batch", json!({"hoses": [hosed("good", 1240, [None; 2]), bad]})).expect_err("no such hose");
    assert!(error.field.starts_with("hoses[1]"), "{}", error.field);
    let mut many = hosed("many", 1240, [Some("28"); 2]);
    many["count"] = json!(201);
    assert_eq!(van.ask("batch", json!({"hoses": [many]})).expect_err("too many").field, "hoses[0].count");
}

fn file(van: &mut Device, name: &str, asked: Value) -> Result<Vec<u8>, ApiError> {
    match van.api.call(name, asked, &[])? {
        Reply::File(file) => Ok(file.bytes),
        Reply::Document(_) => panic!("a document came"),
    }
}

fn told_by(program: &str, pdf: &[u8], last: Option<&str>) -> String {
    let mut file = tempfile::NamedTempFile::new().expect("a file");
    file.write_all(pdf).expect("written");
    let output = Command::new(program).arg(file.path()).args(last).output().expect("poppler is here");
    String::from_utf8(output.stdout).expect("text")
}

#[test]
fn the_batch_is_a_paper_for_the_bench() {
    let mut van = device(1);
    loaded(&mut van);
    let batch = json!({"hoses": [hosed("boom", 1240, [Some("28"), Some("30")])], "store": "Van 2"});
    let asked = json!({"batch": batch, "subject": "Loader 2", "paper": "a4", "as": "pdf"});
    let pdf = file(&mut van, "batch.paper", asked).expect("a paper");
    let text = told_by("pdftotext", &pdf, Some("-"));
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    for wanted in [
        "Loader 2",
        "Reel of 20000 mm (R1): 1177 mm (boom); 18820 mm left",
        "Die set 28: boom A",
        "ORFS -10",
        "C4",
        "The instructions of the makers",
        "Then, with each hose",
    ] {
        assert!(text.contains(wanted), "{wanted} is not on the paper: {text}");
    }
}

#[test]
fn the_sheet_of_a_batch_carries_the_cautions_of_its_steps_and_of_its_hoses() {
    let mut van = device(1);
    loaded(&mut van);
    let mut near = hosed("stick", 1240, [Some("28"), Some("28")]);
    near["make"]["question"]["service"]["working_pressure_bar"] = Value::Null;
    let batch = json!({"hoses": [hosed("boom", 1240, [Some("28"), Some("30")]), near], "store": "Van 2"});
    let planned = van.get("batch", batch.clone());
    let steps = planned["steps"].as_array().expect("steps");
    let of = |code: &str| steps.iter().find(|step| step["code"] == code).expect("the step is there").clone();
    let asked = json!({"batch": batch, "subject": "", "paper": "a4", "as": "text"});
    let text = String::from_utf8(file(&mut van, "batch.paper", asked).expect("a paper")).expect("text");
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    // One of each part of the job: at the saw, at the press, behind the guard of the rig, at the label.
    for code in ["cut", "crimp", "close-guard", "label"] {
        let cautions = of(code)["cautions"].as_array().expect("cautions").clone();
        assert!(!cautions.is_empty(), "{code} has none");
        for caution in cautions {
            let caution = caution["caution"].as_str().expect("words");
            assert!(text.contains(caution), "{code}: {caution}: {text}");
        }
    }
    for hose in planned["hoses"].as_array().expect("hoses") {
        for caution in hose["cautions"].as_array().expect("cautions") {
            let caution = caution.as_str().expect("words");
            assert!(text.contains(caution), "{caution}: {text}");
        }
    }
    let cautions: usize = planned["hoses"]
        .as_array()
        .expect("hoses")
        .iter()
        .map(|hose| hose["cautions"].as_array().map_or(0, Vec::len))
        .sum();
    assert!(cautions > 0, "{planned}");
}

#[test]
fn the_hoses_are_told_as_they_were_asked_whatever_their_number() {
    let mut van = device(1);
    loaded(&mut van);
    let mut twice = hosed("boom", 1240, [None; 2]);
    twice["count"] = json!(2);
    let planned = plan(&mut van, &[twice, hosed("stick", 900, [None; 2])]);
    let names: Vec<_> =
        planned["hoses"].as_array().expect("hoses").iter().map(|hose| hose["name"].clone()).collect();
    assert_eq!(names, ["boom", "stick"]);
}
