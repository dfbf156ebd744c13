//! A thing may lie in several bins of one van: each is counted for itself.

use super::*;

/// Bin and number of each row of the ferrules.
fn bins(van: &mut Device) -> Vec<(String, i64)> {
    let list = van.get("stock.list", json!({"text": "F-10", "all": true}));
    let items = list["items"].as_array().expect("items").iter();
    items
        .map(|item| {
            (item["bin"].as_str().expect("a bin").to_owned(), item["quantity"].as_i64().expect("a number"))
        })
        .collect()
}

fn in_bins(expected: &[(&str, i64)]) -> Vec<(String, i64)> {
    expected.iter().map(|(bin, count)| ((*bin).to_owned(), *count)).collect()
}

/// Ten ferrules in C5, as they are loaded, and four in D1.
fn two_bins(van: &mut Device) -> Value {
    let reel = loaded(van);
    van.change(json!([{"do": "load", "store": "Van 2", "item": ferrule(), "count": 4, "bin": "D1"}]));
    assert_eq!(bins(van), in_bins(&[("C5", 10), ("D1", 4)]));
    reel
}

#[test]
fn what_is_counted_in_one_bin_leaves_the_other_as_it_is() {
    let mut van = device(1);
    two_bins(&mut van);
    let taken = van.get(
        "stock.take",
        json!({"store": "Van 2", "bin": "d1", "items": [{"item": ferrule(), "counted": 3}], "save": true}),
    );
    assert_eq!(
        (&taken["rows"][0]["known"], &taken["rows"][0]["bin"], &taken["not_counted"]),
        (&json!(4.0), &json!("D1"), &json!([])),
        "{taken}"
    );
    assert_eq!(bins(&mut van), in_bins(&[("C5", 10), ("D1", 3)]));
    let whole = json!({"store": "Van 2", "items": [{"item": ferrule(), "counted": 13}]});
    let error = van.ask("stock.take", whole).expect_err("which of them?");
    assert!(error.message.contains("C5, D1"), "{error}");
    let each = json!({"store": "Van 2", "items": [{"item": ferrule(), "bin": "C5", "counted": 10},
        {"item": ferrule(), "bin": "D1", "counted": 2}], "save": true});
    assert_eq!(van.get("stock.take", each)["rows"].as_array().map(Vec::len), Some(1));
    assert_eq!(bins(&mut van), in_bins(&[("C5", 10), ("D1", 2)]));
}

#[test]
fn what_is_found_in_another_bin_is_counted_there() {
    let mut van = device(1);
    loaded(&mut van);
    van.get(
        "stock.take",
        json!({"store": "Van 2", "bin": "E7", "items": [{"item": ferrule(), "counted": 2}], "save": true}),
    );
    assert_eq!(bins(&mut van), in_bins(&[("C5", 10), ("E7", 2)]));
}

#[test]
fn a_build_takes_from_the_bins_that_have_some_and_gives_back_to_them() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    van.change(json!([{"do": "correct", "store": "Van 2", "item": ferrule(), "to": 1},
        {"do": "load", "store": "Van 2", "item": ferrule(), "count": 1, "bin": "D1"}]));
    let need = van.get("stock.need", json!({"make": make()}));
    let line = need["lines"].as_array().expect("lines").iter().find(|line| line["part"] == "ferrule");
    let line = line.expect("a line of the ferrules");
    assert_eq!((&line["state"], &line["bins"]), (&json!("there"), &json!(["C5", "D1"])), "{need}");
    let code = build(&mut van, &reel, false).expect("recorded")["code"].clone();
    let left: i64 = bins(&mut van).iter().map(|(_, count)| count).sum();
    assert_eq!((left, van.said()), (0, Vec::<String>::new()), "nothing is below nothing");
    van.get("bench.undo", json!({"code": code, "reason": "slip"}));
    assert_eq!(bins(&mut van), in_bins(&[("C5", 1), ("D1", 1)]));
}

#[test]
fn a_thing_goes_from_bin_to_bin_and_all_of_it_into_one() {
    let mut van = device(1);
    two_bins(&mut van);
    van.change(json!([{"do": "move", "item": ferrule(), "from": "Van 2", "from_bin": "C5", "to": "Van 2", "bin": "D1", "count": 6}]));
    assert_eq!(bins(&mut van), in_bins(&[("C5", 4), ("D1", 10)]));
    let same =
        json!({"changes": [{"do": "move", "item": ferrule(), "from": "Van 2", "to": "Van 2", "count": 1}]});
    assert_eq!(van.ask("stock.change", same).expect_err("to where?").field, "changes[0].to");
    van.change(json!([{"do": "keep", "store": "Van 2", "item": ferrule(), "bin": "D2"}]));
    assert_eq!(bins(&mut van), in_bins(&[("D2", 14)]));
    van.change(json!([{"do": "keep", "store": "Van 2", "item": ferrule(), "bin": "C5"},
        {"do": "load", "store": "Van 2", "item": ferrule(), "count": 1, "bin": "D2"}]));
    assert_eq!(bins(&mut van), in_bins(&[("C5", 14), ("D2", 1)]), "and once more");
}

#[test]
fn low_is_what_all_bins_together_are() {
    let mut van = device(1);
    two_bins(&mut van);
    van.change(json!([{"do": "keep", "store": "Van 2", "item": ferrule(), "low": 12}]));
    let low = |van: &mut Device| van.get("stock.list", json!({}))["stores"][0]["low"].clone();
    assert_eq!(low(&mut van), json!(0), "fourteen are there");
    van.change(json!([{"do": "scrap", "store": "Van 2", "item": ferrule(), "count": 3, "bin": "C5"}]));
    assert_eq!(low(&mut van), json!(1), "one thing, whatever its bins");
}

#[test]
fn what_an_older_program_counted_without_a_bin_lies_in_the_one_that_was_set() {
    let mut van = device(1);
    let events = json!([
        {"body": {"kind": "stock-changed", "store": "Van 2", "item": ferrule(), "unit": "pieces", "difference": 7}},
        {"body": {"kind": "stock-placed", "store": "Van 2", "item": ferrule(), "bin": "C5"}},
    ]);
    van.get("register.record", json!({"events": events}));
    van.change(json!([{"do": "load", "store": "Van 2", "item": ferrule(), "count": 1, "bin": "c5"},
        {"do": "load", "store": "Van 2", "item": ferrule(), "count": 2, "bin": "D1"}]));
    assert_eq!(bins(&mut van), in_bins(&[("C5", 8), ("D1", 2)]));
}
