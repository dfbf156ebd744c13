//! The report of a fault: what who mends the program needs, and nothing that anyone wrote.

use super::settings::{answer, api};
use hosewright_api::Api;
use hosewright_api::commands::Reply;
use serde_json::{Value, json};
use std::io::{Cursor, Read};

fn report(api: &mut Api) -> (String, Value) {
    let Ok(Reply::File(file)) = api.call("diagnose", json!({}), &[]) else { panic!("no file") };
    let mut archive = zip::ZipArchive::new(Cursor::new(file.bytes)).expect("a zip");
    let mut read = |name: &str| {
        let mut text = String::new();
        archive.by_name(name).expect("it is in it").read_to_string(&mut text).expect("is text");
        text
    };
    let (about, diagnosis) = (read("README.txt"), read("diagnosis.json"));
    let document = serde_json::from_str(&diagnosis).expect("a document");
    (format!("{about}{diagnosis}"), document)
}

#[test]
fn a_report_has_versions_counts_and_faults_and_no_word_that_anyone_wrote() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = api();
    api.open(&folder.path().join("register.db")).expect("opens");
    let list = include_bytes!("../../demo/fleet.csv");
    api.call("register.import", json!({"name": "fleet.csv"}), list).expect("is taken in");
    answer(&mut api, "people.add", json!({"name": "Invented Name"})).expect("is added");
    answer(&mut api, "job.keep", json!({"job": null, "content": {"note": "an invented remark"}}))
        .expect("is kept");
    let stock: Value = serde_json::from_str(include_str!("../../demo/stock.json")).expect("a document");
    answer(&mut api, "stock.change", json!({"changes": stock})).expect("is loaded");
    answer(&mut api, "fleet.begin", json!({"name": "Invented vans"})).expect("begins");
    let Ok(Reply::File(supplier)) = api.call("register.export", json!({"as": "json"}), &[]) else {
        panic!("no list")
    };

    let (text, report) = report(&mut api);
    assert_eq!(report["register"]["stands"]["rows"]["machine"], 12);
    assert_eq!(report["register"]["stands"]["rows"]["person"], 1);
    assert_eq!(report["register"]["verified"]["changed"], 0);
    assert!(report["program"].as_str().is_some_and(|program| program.starts_with("hosewright ")));

    let mut written = vec!["Invented".to_owned(), "remark".to_owned(), folder.path().display().to_string()];
    words(&serde_json::from_slice(&supplier.bytes).expect("a list"), &mut written);
    words(&stock, &mut written);
    let device = answer(&mut api, "register.overview", json!({})).expect("reads")["device"].clone();
    words(&device, &mut written);
    // Each hose says which program recorded it, and the report which one made it: a version.
    written.retain(|word| report["program"] != **word);
    assert!(written.len() > 500, "there is something to be looked for: {}", written.len());
    let found: Vec<_> = written.iter().filter(|word| text.contains(word.as_str())).collect();
    assert_eq!(found, Vec::<&String>::new(), "{text}");
}

/// Names, places, codes: every text of a document that is more than a word of the program's own.
fn words(document: &Value, into: &mut Vec<String>) {
    match document {
        Value::String(text)
            if text.len() > 5 && text.chars().any(|letter| letter.is_uppercase() || letter == ' ') =>
        {
            into.push(text.clone());
        }
        Value::String(text) if text.len() == 32 => into.push(text.clone()),
        Value::Array(list) => list.iter().for_each(|one| words(one, into)),
        // The program's own name and version stand on every record, and in the report on purpose.
        Value::Object(fields) => {
            fields.iter().filter(|(key, _)| *key != "program").for_each(|(_, one)| words(one, into));
        }
        _ => {}
    }
}

#[test]
fn a_register_that_can_not_be_opened_is_reported_without_its_path() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("van of an invented name.db");
    std::fs::write(&path, vec![0xA5; 5000]).expect("writes");
    let mut api = api();
    assert!(api.open(&path).is_err());
    let (text, report) = report(&mut api);
    assert_eq!(report["register"], json!({"open": false, "why": "register-is-none"}));
    assert!(!text.contains("invented name"), "{text}");
}
