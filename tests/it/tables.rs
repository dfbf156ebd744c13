//! What the screens offer and draw is what the catalogue has, under the keys that readings have.

use crate::settings::{answer, api};
use hosewright_api::commands::described;
use hosewright_core::catalogue::Catalogue;
use hosewright_words::{Language, Words};
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// The screens ask once and keep it; a phone reads this much at once.
const LARGEST_BYTES: usize = 450_000;

fn tables() -> Value {
    answer(&mut api(), "tables", json!({})).expect("tables")
}

fn list<'v>(tables: &'v Value, key: &str) -> &'v Vec<Value> {
    tables[key].as_array().unwrap_or_else(|| panic!("no list `{key}`"))
}

fn texts(tables: &Value, key: &str) -> BTreeSet<String> {
    list(tables, key).iter().map(|text| text.as_str().expect("text").to_owned()).collect()
}

fn row<'v>(rows: &'v [Value], family: &str, size: &str) -> &'v Value {
    rows.iter().find(|row| row["family"] == family && row["size"] == size).expect("the row is there")
}

/// The definition of a type in the schemas of the commands.
fn schema(command: &str, name: &str) -> Value {
    let described = described();
    let command = described.iter().find(|known| known.name == command).expect("the command");
    command.input.as_value()["$defs"][name].clone()
}

#[test]
fn every_row_of_the_catalogue_can_be_chosen() {
    let (tables, catalogue) = (tables(), Catalogue::embedded());
    let sizes: usize = list(&tables, "hoses").iter().map(|kind| list(kind, "sizes").len()).sum();
    assert_eq!(sizes, catalogue.hoses.len() + catalogue.twins.len(), "sizes of hoses");
    for (key, rows) in [
        ("ends", catalogue.ends.len()),
        ("flanges", catalogue.flanges.len()),
        ("hoses", catalogue.types.len()),
        ("fluids", catalogue.fluid_classes.len()),
        ("causes", catalogue.causes.len()),
    ] {
        assert_eq!(list(&tables, key).len(), rows, "{key}");
    }
    let bytes = tables.to_string().len();
    assert!(bytes < LARGEST_BYTES, "{bytes} bytes");
}

#[test]
fn dimensions_stand_under_the_key_of_the_reading_that_measures_them() {
    let tables = tables();
    let (of_hose, of_end) = (texts(&tables, "hose_readings"), texts(&tables, "end_readings"));
    let sizes = list(&tables, "hoses").iter().flat_map(|kind| list(kind, "sizes"));
    let halves = list(&tables, "ends").iter().flat_map(|end| list(end, "halves"));
    let parts = sizes
        .map(|size| (&of_hose, size))
        .chain(halves.map(|half| (&of_end, half)))
        .chain(list(&tables, "flanges").iter().map(|flange| (&of_end, flange)));
    let mut seen = 0;
    for (readings, part) in parts {
        for (key, limits) in part["dimensions"].as_object().expect("dimensions") {
            assert!(readings.contains(key), "{key} is no reading");
            let (min, max) = (limits[0].as_f64(), limits[1].as_f64());
            assert!(min.or(max).is_some_and(|size| size > 0.0), "{key}: {limits}");
            assert!(min.zip(max).is_none_or(|(min, max)| min <= max), "{key}: {limits}");
            seen += 1;
        }
    }
    assert!(seen > 1000, "only {seen} dimensions");
}

#[test]
fn a_dimension_is_that_of_its_own_row_and_half() {
    let tables = tables();
    let jic = row(list(&tables, "ends"), "JIC 37 flare", "-10");
    let halves: Vec<(&Value, &Value)> = list(jic, "halves")
        .iter()
        .map(|half| (&half["gender"], &half["dimensions"]["thread_diameter_mm"]))
        .collect();
    // 7/8-14 UNF: class 2A major 21.93 to 22.19, class 2B minor 20.27 to 20.67 (ASME B1.1).
    let [(male, outside), (female, inside)] = halves[..] else { panic!("two halves, not {halves:?}") };
    assert_eq!((male, female), (&json!("male"), &json!("female")));
    let holds = |limits: &Value, size: f64| {
        limits[0].as_f64().expect("a limit") <= size && size <= limits[1].as_f64().expect("a limit")
    };
    assert!(holds(outside, 22.1) && !holds(outside, 20.5), "{outside}");
    assert!(holds(inside, 20.5) && !holds(inside, 22.1), "{inside}");
    // SAE J518: code 61, 3/4 in: head 38.1, bolts 47.6 by 22.2.
    let flange = &row(list(&tables, "flanges"), "flange 61", "-12")["dimensions"];
    for (key, size) in [("head_od_mm", 38.1), ("bolt_long_mm", 47.6), ("bolt_short_mm", 22.2)] {
        assert_eq!(flange[key], json!([size, size]), "{key}");
    }
}

#[test]
fn every_reading_duty_and_line_is_offered() {
    let tables = tables();
    let keys = |name| -> BTreeSet<String> {
        let schema = schema("find", name);
        schema["properties"].as_object().expect("properties").keys().cloned().collect()
    };
    assert_eq!(texts(&tables, "hose_readings"), keys("HoseReadings"));
    let mut of_end = keys("EndReadings");
    assert!(of_end.remove("role"), "the role says which end, and is not read");
    assert_eq!(texts(&tables, "end_readings"), of_end);
    for (key, name) in [("duties", "Duty"), ("lines", "Line")] {
        let schema = schema("check", name);
        let all = schema["oneOf"].as_array().expect("choices").iter();
        assert_eq!(
            texts(&tables, key),
            all.map(|choice| choice["const"].as_str().expect("text").to_owned()).collect(),
            "{key}"
        );
    }
}

#[test]
fn every_form_of_an_end_has_words() {
    let words = Words::of(Language::English);
    for form in texts(&tables(), "forms") {
        assert!(
            words.form(&form) != form || words.has(&format!("form-{form}")),
            "common.ftl has no form-{form}"
        );
    }
}
