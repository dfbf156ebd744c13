//! Settings of a device and the names of its people.

use chrono::{DateTime, Utc};
use hosewright_api::commands::Reply;
use hosewright_api::{Api, ApiError, Code, World};
use hosewright_words::Language;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use tempfile::TempDir;

/// A clock that stands and numbers instead of chance.
struct Still {
    given: u16,
}

impl World for Still {
    fn now(&self) -> DateTime<Utc> {
        DateTime::from_timestamp(1_790_000_000, 0).expect("a time")
    }

    fn random(&mut self) -> [u8; 16] {
        self.given += 1;
        let [high, low] = self.given.to_be_bytes();
        let mut bytes = [low; 16];
        bytes[0] ^= high;
        bytes
    }
}

/// All use cases without a register.
pub fn api() -> Api {
    Api::new(Language::English, Box::new(Still { given: 0 }))
}

/// What a command answers that answers with a document.
pub fn answer(api: &mut Api, name: &str, input: Value) -> Result<Value, ApiError> {
    match api.call(name, input, &[])? {
        Reply::Document(answer) => Ok(answer),
        Reply::File(file) => panic!("{name} answered with the file {}", file.name),
    }
}

fn open(path: &Path) -> Api {
    let mut api = api();
    api.open(path).expect("the register opens");
    api
}

fn begin() -> (TempDir, Api) {
    let folder = tempfile::tempdir().expect("a folder");
    let api = open(&folder.path().join("register.db"));
    (folder, api)
}

fn read(api: &mut Api) -> Value {
    answer(api, "settings.read", json!({})).expect("settings")
}

fn add(api: &mut Api, name: &str) -> Value {
    answer(api, "people.add", json!({"name": name})).expect("a person")["person"].clone()
}

fn names(api: &mut Api) -> Vec<String> {
    let people = answer(api, "people.list", json!({})).expect("people");
    let people = people["people"].as_array().expect("a list").iter();
    people.map(|person| person["name"].as_str().expect("a name").to_owned()).collect()
}

#[test]
fn settings_are_kept_on_the_device() {
    let (folder, mut api) = begin();
    let first = read(&mut api);
    assert_eq!((&first["length_unit"], &first["pressure_unit"]), (&json!("mm"), &json!("bar")));
    assert_eq!((&first["paper"], &first["caliper_error_mm"]), (&json!("a4"), &json!(0.1)));

    let wanted = json!({"length_unit": "inch", "pressure_unit": "psi", "paper": "letter",
        "label_stocks": [{"name": "Wrap", "width_mm": 50.0, "height_mm": 25.0, "dpi": 300.0, "material": "vinyl", "form": "wrap"}],
        "length_practice": "american", "instruments": {"caliper": "C 7"}});
    let written = answer(&mut api, "settings.write", wanted).expect("written");
    drop(api);
    let mut again = open(&folder.path().join("register.db"));
    let mut kept = read(&mut again);
    assert_eq!(kept.as_object_mut().and_then(|kept| kept.remove("unreadable")), Some(json!([])));
    assert_eq!(kept, written);
    assert_eq!(
        written["instruments"],
        json!({"caliper": "C 7", "thread_gauge": "", "seat_gauge": "", "tape": "", "micrometer": ""})
    );
    assert_eq!(written["gauge_months"], first["gauge_months"], "what was left out is as on the first day");
}

fn stock(name: &str, height_mm: f64, dpi: f64) -> Value {
    json!({"name": name, "width_mm": 60.0, "height_mm": height_mm, "dpi": dpi, "material": "other", "form": "flag"})
}

/// A register as the program of file schema 4 left it, with these settings and no other.
fn older(settings: &[(&str, &str)]) -> (TempDir, PathBuf) {
    let sample = Path::new(env!("CARGO_MANIFEST_DIR")).join("databases/file-4-tables-3-events-3.db");
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("register.db");
    std::fs::copy(sample, &path).expect("is copied");
    let db = rusqlite::Connection::open(&path).expect("opens");
    db.execute("DELETE FROM setting", []).expect("cleared");
    for (key, value) in settings {
        db.execute("INSERT INTO setting (key, value) VALUES (?1, ?2)", (key, value)).expect("kept");
    }
    (folder, path)
}

/// A register of before had one size of label: it is the first of the stocks now.
#[test]
fn the_one_size_of_an_older_register_becomes_a_stock() {
    let old = [("label_width_mm", "50.5"), ("label_dpi", "300"), ("pressure_unit", "\"psi\"")];
    for (kept, expected) in [
        (&old[..], Some(("50.5 x 40", 50.5, 40.0, 300.0))),
        (
            &[("label_height_mm", "25.0"), ("label_width_mm", "{torn")][..],
            Some(("60 x 25", 60.0, 25.0, 203.0)),
        ),
        (&old[2..], None),
    ] {
        let (_folder, path) = older(kept);
        let db = rusqlite::Connection::open(&path).expect("opens");
        db.execute_batch("DROP TABLE scan; DROP TABLE labelled; PRAGMA user_version = 3")
            .expect("as of schema 3");
        drop(db);
        let read = read(&mut open(&path));
        let first = &read["label_stocks"][0];
        let (name, width, height, dpi) = expected.unwrap_or(("60 x 40", 60.0, 40.0, 203.0));
        assert_eq!(
            (&first["name"], &first["width_mm"], &first["height_mm"], &first["dpi"]),
            (&json!(name), &json!(width), &json!(height), &json!(dpi)),
            "{kept:?}"
        );
        assert_eq!(read["unreadable"], json!([]), "{kept:?}");
    }
}

#[test]
fn the_rate_of_an_older_register_becomes_the_amount_as_it_is_typed() {
    for (kept, rate) in [
        (
            json!({"currency": "EUR", "currency_digits": 2, "labour_rate": 7250, "tax_hundredths": 1900}),
            json!("72.50"),
        ),
        (json!({"currency": "JPY", "currency_digits": 0, "labour_rate": 6000}), json!("6000")),
        (json!({"currency": "EUR", "currency_digits": 2, "labour_rate": null}), Value::Null),
    ] {
        let (_folder, path) = older(&[("pricing", &kept.to_string())]);
        let read = read(&mut open(&path));
        assert_eq!((&read["pricing"]["labour_rate"], &read["unreadable"]), (&rate, &json!([])), "{kept}");
        assert_eq!(read["pricing"]["currency"], kept["currency"]);
    }
}

/// What is told of a hose that nobody named.
fn said(api: &mut Api) -> String {
    answer(api, "check", json!({"spec": {}})).expect("checked").to_string()
}

#[test]
fn the_core_speaks_the_language_of_the_settings_where_it_is_followed() {
    let (folder, mut api) = begin();
    answer(&mut api, "settings.write", json!({"language": "de"})).expect("written");
    assert!(said(&mut api).contains("No hose is named."), "the command line stays as it began");
    api.speak_as_set();
    assert!(said(&mut api).contains("Kein Schlauch ist genannt."));
    drop(api);

    let mut again = self::api();
    again.speak_as_set();
    again.open(&folder.path().join("register.db")).expect("the register opens");
    assert!(said(&mut again).contains("Kein Schlauch ist genannt."), "after the program was started anew");
    answer(&mut again, "settings.write", json!({"language": "en"})).expect("written");
    assert!(said(&mut again).contains("No hose is named."), "at once, without starting anew");
}

#[test]
fn a_setting_that_can_not_be_is_refused_by_its_name() {
    let (_folder, mut api) = begin();
    let before = read(&mut api);
    for (field, wrong) in [
        ("label_stocks", json!({"label_stocks": []})),
        ("label_stocks[0]", json!({"label_stocks": [stock("Flag", 0.0, 203.0)]})),
        ("label_stocks[0]", json!({"label_stocks": [stock("Flag", 40.0, 1e9)]})),
        ("label_stocks[0]", json!({"label_stocks": [stock(" ", 40.0, 203.0)]})),
        (
            "label_stocks[1].name",
            json!({"label_stocks": [stock("Flag", 40.0, 203.0), stock("Flag ", 30.0, 203.0)]}),
        ),
        ("caliper_error_mm", json!({"caliper_error_mm": 0.0})),
        ("tape_error_mm", json!({"tape_error_mm": "a bit"})),
        ("length_unit", json!({"length_unit": "cubit"})),
        ("language", json!({"language": "xx"})),
        ("instruments.tape", json!({"instruments": {"tape": "x".repeat(61)}})),
        ("person", json!({"person": "07".repeat(16)})),
        ("units", json!({"units": "mm"})),
    ] {
        let error = answer(&mut api, "settings.write", wrong.clone()).expect_err("refused");
        assert_eq!((error.code, error.field.as_str()), (Code::Input, field), "{wrong}: {error}");
    }
    assert_eq!(read(&mut api), before, "nothing was half written");
}

#[test]
fn one_setting_that_can_not_be_read_hides_no_other_and_is_named() {
    let (folder, mut api) = begin();
    let first = read(&mut api);
    answer(&mut api, "settings.write", json!({"pressure_unit": "psi", "paper": "letter", "gauge_months": 6}))
        .expect("written");
    drop(api);
    let path = folder.path().join("register.db");
    let db = rusqlite::Connection::open(&path).expect("opens");
    for (key, value) in [("caliper_error_mm", "0.0"), ("paper", "\"parchment\""), ("tape_error_mm", "{torn")]
    {
        db.execute("UPDATE setting SET value = ?2 WHERE key = ?1", (key, value)).expect("spoilt");
    }
    drop(db);
    let kept = read(&mut open(&path));
    let mut unreadable: Vec<_> = kept["unreadable"].as_array().expect("a list").clone();
    unreadable.sort_by_key(|key| key.to_string());
    assert_eq!(unreadable, ["caliper_error_mm", "paper", "tape_error_mm"]);
    assert_eq!((&kept["pressure_unit"], &kept["gauge_months"]), (&json!("psi"), &json!(6)));
    for key in ["caliper_error_mm", "paper", "tape_error_mm"] {
        assert_eq!(kept[key], first[key], "{key} is as on the first day");
    }
}

#[test]
fn settings_are_in_no_bundle_and_no_event() {
    let (_folder, mut api) = begin();
    answer(&mut api, "settings.write", json!({"instruments": {"caliper": "caliper-of-this-van"}}))
        .expect("written");
    let Reply::File(bundle) = api.call("register.bundle", json!({}), &[]).expect("a bundle") else {
        panic!("a bundle is a file");
    };
    let text = String::from_utf8(bundle.bytes).expect("text");
    assert!(text.contains("\"events\":0"), "{text}");
    assert!(!text.contains("caliper-of-this-van"), "{text}");
}

#[test]
fn who_works_is_someone_with_a_name() {
    let (_folder, mut api) = begin();
    let blank = answer(&mut api, "people.add", json!({"name": "  "})).expect_err("a blank name");
    assert_eq!((blank.code, blank.field.as_str()), (Code::Input, "name"));
    let (one, _) = (add(&mut api, "B. Fitter"), add(&mut api, "A. Fitter"));
    assert_eq!(names(&mut api), ["A. Fitter", "B. Fitter"]);

    answer(&mut api, "settings.write", json!({"person": one})).expect("written");
    assert_eq!(read(&mut api)["person"], one);
    answer(&mut api, "people.erase", json!({"person": one})).expect("erased");
    assert_eq!(names(&mut api), ["A. Fitter"]);
    assert_eq!(read(&mut api)["person"], Value::Null, "an erased name is nobody's who works");
}
