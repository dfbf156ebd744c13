//! What hoses cost by the user's own prices: exact, and what has no price is said and never nothing.

use super::stock::{Device, build, device, ferrule, hose, loaded, make, orfs};
use hosewright_api::commands::Reply;
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

fn pricing(van: &mut Device, change: &[(&str, Value)]) {
    let mut settings = van.get("settings.read", json!({}));
    for own in ["catalogue", "program", "unreadable"] {
        settings.as_object_mut().expect("settings").remove(own);
    }
    settings["pricing"] = json!({"currency": "EUR", "tax_hundredths": 1900, "labour_rate": "72",
        "labour": [{"name": "crimp", "per": "hose", "minutes": 25}, {"name": "travel", "per": "job", "minutes": 40}]});
    for (field, value) in change {
        match *field {
            "language" => settings["language"] = value.clone(),
            field => settings["pricing"][field] = value.clone(),
        }
    }
    van.get("settings.write", settings);
}

fn prices(van: &mut Device, hose_price: &str) {
    van.change(json!([
        {"do": "price", "item": hose(), "price": hose_price},
        {"do": "price", "item": orfs(Some("S1")), "price": "8,25"},
        {"do": "price", "item": ferrule(), "price": "1.99"},
    ]));
}

fn quote(van: &mut Device, count: u32) -> Value {
    van.get("quote", json!({"hoses": [{"name": "boom", "make": make(), "count": count}]}))
}

fn minor(value: &Value) -> i64 {
    value["minor"].as_i64().unwrap_or_else(|| panic!("no money: {value}"))
}

#[test]
fn every_line_is_exact_and_the_total_is_its_sum_and_tax() {
    let mut van = device(1);
    loaded(&mut van);
    pricing(&mut van, &[]);
    prices(&mut van, "9.99");
    let quote = quote(&mut van, 2);
    let amounts: Vec<i64> =
        quote["lines"].as_array().expect("lines").iter().map(|line| minor(&line["amount"])).collect();
    // By hand: 2.36 m at 9.99 is 23.5764; four ends at 8.25; four ferrules at 1.99; 50 and 40 minutes at 72.00 an hour.
    assert_eq!(amounts, [2358, 3300, 796, 6000, 4800]);
    // 172.54; 19 % of it is 32.7826.
    assert_eq!((minor(&quote["sum"]), minor(&quote["tax"]), minor(&quote["total"])), (17254, 3278, 20532));
    assert_eq!((&quote["total"]["text"], &quote["not_priced"]), (&json!("205.32 EUR"), &json!([])));
    assert_eq!(quote["lines"][0]["quantity"], "2.36 m");
}

#[test]
fn what_has_no_price_is_not_priced_and_there_is_no_total() {
    let mut van = device(1);
    loaded(&mut van);
    pricing(&mut van, &[]);
    prices(&mut van, "9.99");
    van.change(json!([{"do": "price", "item": ferrule(), "price": null}]));
    let quote = quote(&mut van, 1);
    assert_eq!((&quote["lines"][2]["price"], &quote["lines"][2]["amount"]), (&Value::Null, &Value::Null));
    assert_eq!((&quote["not_priced"], &quote["total"]), (&json!(["F-10 DN16"]), &Value::Null));
    van.change(json!([{"do": "price", "item": ferrule(), "price": "0"}]));
    let free = van.get("quote", json!({"hoses": [{"name": "boom", "make": make()}]}));
    assert_eq!(minor(&free["lines"][2]["amount"]), 0, "a price of nothing is the user's own");
    assert!(!free["total"].is_null());
}

#[rstest]
#[case::no_tax("tax_hundredths", Value::Null, "tax-not-said")]
#[case::no_rate("labour_rate", Value::Null, "no-labour-rate")]
#[case::no_currency("currency", json!(""), "currency-not-said")]
#[case::another_currency("currency", json!("CHF"), "other-currency")]
fn what_is_missing_is_said_and_leaves_no_total(
    #[case] field: &str,
    #[case] value: Value,
    #[case] code: &str,
) {
    let mut van = device(1);
    loaded(&mut van);
    pricing(&mut van, &[]);
    prices(&mut van, "9.99");
    pricing(&mut van, &[(field, value)]);
    let quote = quote(&mut van, 1);
    assert_eq!((&quote["said"][0]["code"], &quote["total"]), (&json!(code), &Value::Null), "{quote}");
}

#[test]
fn no_tax_is_a_tax_of_nothing() {
    let mut van = device(1);
    loaded(&mut van);
    pricing(&mut van, &[("tax_hundredths", json!(0)), ("labour", json!([]))]);
    prices(&mut van, "10");
    let quote = quote(&mut van, 1);
    assert_eq!((minor(&quote["tax"]), minor(&quote["total"])), (0, 1180 + 1650 + 398));
}

#[test]
fn a_job_is_priced_by_what_went_into_it() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    pricing(&mut van, &[("labour", json!([]))]);
    prices(&mut van, "10.00");
    let code = build(&mut van, &reel, false).expect("recorded")["code"].clone();
    let quote = van.get("quote", json!({"codes": [code]}));
    assert_eq!(minor(&quote["sum"]), 1180 + 1650 + 398, "{quote}");
    van.get("bench.undo", json!({"code": code, "reason": "slip"}));
    assert!(van.ask("quote", json!({"codes": [code]})).is_err(), "it was never made");
    let bare = json!({"kind": "assembly-made", "code": "7KQ4M-2XR9D-D", "spec": {"ends": []}, "service": {},
        "proof": {"state": "not-proved", "why": "no-rig"}, "catalogue": "5f0c1d2e", "program": "test"});
    van.get("register.record", json!({"events": [{"body": bare}]}));
    let nothing = van.get("quote", json!({"codes": ["7KQ4M-2XR9D-D"]}));
    assert_eq!((&nothing["said"][0]["code"], &nothing["total"]), (&json!("nothing-used"), &Value::Null));
}

#[test]
fn work_alone_is_no_total_for_a_hose_whose_parts_nobody_recorded() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    pricing(&mut van, &[]);
    prices(&mut van, "10.00");
    let made = build(&mut van, &reel, false).expect("recorded")["code"].clone();
    let bare = json!({"kind": "assembly-made", "code": "7KQ4M-2XR9D-D", "spec": {"ends": []}, "service": {},
        "proof": {"state": "not-proved", "why": "no-rig"}, "catalogue": "5f0c1d2e", "program": "test"});
    van.get("register.record", json!({"events": [{"body": bare}]}));
    assert_ne!(van.get("quote", json!({"codes": [made]}))["total"], Value::Null, "all of this one is known");
    let both = van.get("quote", json!({"codes": [made, "7KQ4M-2XR9D-D"]}));
    assert_eq!(both["total"], Value::Null, "{both}");
    assert_eq!(both["not_priced"], json!(["Parts of 7KQ4M-2XR9D-D, not on record"]));
}

#[test]
fn a_hose_is_not_billed_twice_and_no_rest_that_was_thrown_away() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    pricing(&mut van, &[("labour", json!([]))]);
    prices(&mut van, "10.00");
    let offcut = van.change(
        json!([{"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "offcut", "length_mm": 1400}]),
    );
    let used = json!({"store": "Van 2", "pieces": [{"piece": offcut["pieces"][0], "length_mm": 1177, "scrap_rest": true}], "items": []});
    let crimp = |role: &str| json!({"role": role, "readings_mm": vec![28.5; 12], "instrument": {"name": "micrometer 3", "error_mm": 0.01}});
    let bench = json!({"crimps": [crimp("A"), crimp("B")], "cut_length_mm": 1177, "finished": {"length_mm": 1243}, "proof": {"rig": false}});
    let made = van.get("bench.record", json!({"make": make(), "bench": bench, "used": used}))["code"].clone();
    let quote = van.get("quote", json!({"codes": [made]}));
    assert_eq!(
        minor(&quote["sum"]),
        1180,
        "1177 mm and the kerf, not the 220 mm that went to scrap: {quote}"
    );
    let error = van.ask("quote", json!({"codes": [made, made]})).expect_err("twice");
    assert_eq!(error.field, "codes[1]");
    van.get("bench.undo", json!({"code": made, "reason": "slip"}));
    let list = van.get("stock.list", json!({"all": true}));
    assert_eq!(list["hoses"][0]["pieces"][1]["length_mm"], json!(1400.0), "all of it comes back: {list}");
    drop(reel);
}

#[test]
fn a_currency_has_its_own_decimals_and_a_language_its_sign() {
    let mut van = device(1);
    loaded(&mut van);
    for (currency, price, text) in
        [("JPY", "1200", "1200 JPY"), ("KWD", "1.25", "1.250 KWD"), ("EUR", "8,5", "8.50 EUR")]
    {
        pricing(&mut van, &[("currency", json!(currency)), ("labour_rate", Value::Null)]);
        van.change(json!([{"do": "price", "item": ferrule(), "price": price}]));
        let list = van.get("stock.list", json!({"text": "F-10"}));
        assert_eq!(list["items"][0]["price"]["text"], text);
    }
    pricing(&mut van, &[("currency", json!("JPY")), ("labour_rate", Value::Null)]);
    let cents = json!({"changes": [{"do": "price", "item": ferrule(), "price": "8.50"}]});
    assert_eq!(van.ask("stock.change", cents).expect_err("no sen").field, "changes[0].price");
    pricing(&mut van, &[("language", json!("de"))]);
    van.api.speak_as_set();
    let list = van.get("stock.list", json!({"text": "F-10"}));
    assert_eq!(list["items"][0]["price"]["text"], "8,50 EUR");
}

#[test]
fn nothing_is_quoted_that_must_not_be_made() {
    let mut van = device(1);
    loaded(&mut van);
    pricing(&mut van, &[]);
    let mut stopped = make();
    stopped["question"]["service"]["working_pressure_bar"] = json!(400);
    let error = van.ask("quote", json!({"hoses": [{"name": "boom", "make": stopped}]})).expect_err("stopped");
    assert_eq!(error.field, "hoses");
}

#[rstest]
#[case("12.345", "more decimals")]
#[case("-1", "no price")]
#[case("ten", "no price")]
fn a_price_that_is_none_is_refused(#[case] price: &str, #[case] why: &str) {
    let mut van = device(1);
    pricing(&mut van, &[]);
    let change = json!({"changes": [{"do": "price", "item": ferrule(), "price": price}]});
    let error = van.ask("stock.change", change).expect_err("refused");
    assert!(error.field == "changes[0].price" && error.message.contains(why), "{error:?}");
}

#[rstest]
#[case("currency", json!("euro"))]
#[case("tax_hundredths", json!(10001))]
#[case("labour_rate", json!("-1"))]
#[case("labour_rate", json!("72.505"))]
#[case("labour", json!([{"name": " ", "per": "hose", "minutes": 5}]))]
fn a_setting_of_prices_that_can_not_be_is_refused_by_its_name(#[case] field: &str, #[case] value: Value) {
    let mut van = device(1);
    let error = van.ask("settings.write", json!({"pricing": {field: value}})).expect_err("refused");
    assert_eq!(error.field, format!("pricing.{field}"));
}

#[test]
fn a_quote_is_a_paper() {
    let mut van = device(1);
    loaded(&mut van);
    pricing(&mut van, &[]);
    let asked = json!({"quote": {"hoses": [{"name": "boom", "make": make()}]}, "subject": "Loader 2", "paper": "a4", "as": "text"});
    let Ok(Reply::File(file)) = van.api.call("quote.paper", asked, &[]) else { panic!("no paper") };
    let text = String::from_utf8(file.bytes).expect("text");
    for wanted in ["Loader 2", "not priced", "no total", "crimp", "25 min", "30.00 EUR"] {
        assert!(text.contains(wanted), "{wanted} is not on the paper:\n{text}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 16, ..ProptestConfig::default() })]

    /// The sum of many is what whole numbers say, whatever the price.
    #[test]
    fn no_cent_is_lost_between_lines_and_total(cents in 0..100_000_i64, count in 1..6_u32, tax in 0..3000_u32) {
        let mut van = device(1);
        loaded(&mut van);
        pricing(&mut van, &[("tax_hundredths", json!(tax)), ("labour", json!([]))]);
        prices(&mut van, &format!("{}.{:02}", cents / 100, cents % 100));
        let quote = quote(&mut van, count);
        let lines: i64 = quote["lines"].as_array().expect("lines").iter().map(|line| minor(&line["amount"])).sum();
        prop_assert_eq!(minor(&quote["sum"]), lines);
        prop_assert_eq!(minor(&quote["total"]), lines + minor(&quote["tax"]));
        // 1180 mm a hose; twice the exact figures, so that a half is whole.
        let exact = i128::from(cents) * i128::from(count) * 11_800;
        let line = i128::from(minor(&quote["lines"][0]["amount"]));
        prop_assert!((line * 10_000 - exact).abs() * 2 <= 10_000);
        let taxed = i128::from(minor(&quote["tax"]));
        prop_assert!((taxed * 10_000 - i128::from(lines) * i128::from(tax)).abs() * 2 <= 10_000);
    }
}
