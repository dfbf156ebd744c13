//! Stock of vans and shelves: what a user can count on, in whatever order things are done and merged. Every name of a
//! supplier's part here is invented.

mod bins;
mod histories;
mod needs;
mod takes;

use super::settings::{answer, api};
use super::supplier;
use chrono::{DateTime, TimeDelta, Utc};
use hosewright_api::commands::Reply;
use hosewright_api::commands::stock::SaidCode;
use hosewright_api::{Api, ApiError, Code, World, key};
use hosewright_core::record::{Body, BodyText};
use hosewright_core::stock::Item;
use hosewright_words::{Language, Words};
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};
use std::cell::Cell;
use std::collections::BTreeMap;
use tempfile::TempDir;

thread_local! {
    /// Seconds of the one clock that all devices of a test go by: what is done later has a later time.
    static NOW: Cell<i64> = const { Cell::new(0) };
}

/// The test's clock, and numbers in place of chance, which no other device gives.
struct OfDevice {
    device: u8,
    given: u32,
}

impl World for OfDevice {
    fn now(&self) -> DateTime<Utc> {
        let seconds = NOW.get() + 1;
        NOW.set(seconds);
        DateTime::UNIX_EPOCH + TimeDelta::days(20_700) + TimeDelta::seconds(seconds)
    }

    fn random(&mut self) -> [u8; 16] {
        self.given += 1;
        let mut bytes = [self.device; 16];
        bytes[..4].copy_from_slice(&self.given.to_be_bytes());
        bytes
    }
}

/// Counts by store and name.
type Counts = BTreeMap<(String, String), i64>;

/// Store and length in tenths of a millimetre by piece.
type Lengths = BTreeMap<String, (String, i64)>;

/// A device with a register of its own.
pub struct Device {
    pub api: Api,
    _folder: TempDir,
}

pub fn device(number: u8) -> Device {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = Api::new(Language::English, Box::new(OfDevice { device: number, given: 0 }));
    api.open(&folder.path().join("register.db")).expect("the register opens");
    Device { api, _folder: folder }
}

impl Device {
    pub fn ask(&mut self, name: &str, input: Value) -> Result<Value, ApiError> {
        answer(&mut self.api, name, input)
    }

    #[track_caller]
    pub fn get(&mut self, name: &str, input: Value) -> Value {
        self.ask(name, input).unwrap_or_else(|error| panic!("{name}: {} {error}", error.field))
    }

    #[track_caller]
    pub fn change(&mut self, changes: Value) -> Value {
        self.get("stock.change", json!({"changes": changes}))
    }

    fn hear(&mut self, other: &mut Device) {
        let Ok(Reply::File(bundle)) = other.api.call("register.bundle", json!({}), &[]) else {
            panic!("no bundle")
        };
        self.api.call("register.merge", json!({}), &bundle.bytes).expect("merges");
    }

    /// The codes of what a person must see of the stock.
    fn said(&mut self) -> Vec<String> {
        let list = self.get("stock.list", json!({}));
        let said = list["said"].as_array().expect("said").iter();
        said.map(|said| said["code"].as_str().expect("a code").to_owned()).collect()
    }

    /// What the device's list says of everything, used up or not.
    fn counts(&mut self) -> (Counts, Lengths) {
        let list = self.get("stock.list", json!({"all": true}));
        let text = |value: &Value| value.as_str().expect("a text").to_owned();
        let items = list["items"].as_array().expect("items").iter();
        let items = items
            .map(|item| {
                ((text(&item["store"]), text(&item["name"])), item["in_store"].as_i64().expect("a count"))
            })
            .collect();
        let mut pieces = BTreeMap::new();
        for hose in list["hoses"].as_array().expect("hoses") {
            for piece in hose["pieces"].as_array().expect("pieces") {
                let tenths = (piece["length_mm"].as_f64().expect("a length") * 10.0).round() as i64;
                let before = pieces.insert(text(&piece["piece"]), (text(&hose["store"]), tenths));
                assert_eq!(before, None, "a piece is in two places");
            }
        }
        (items, pieces)
    }
}

pub fn hose() -> Value {
    json!({"kind": "hose", "standard": "EN 853", "type": "2SN", "dn": 16})
}

/// The end of [`supplier::question`] as it is kept.
pub fn orfs(series: Option<&str>) -> Value {
    let mut end = json!({"kind": "end", "family": "ORFS", "size": "-10", "gender": "female", "form": "straight", "dn": 16});
    if let Some(series) = series {
        end["series"] = json!(series);
    }
    end
}

pub fn ferrule() -> Value {
    json!({"kind": "ferrule", "name": "F-10", "dn": 16})
}

pub fn settings(role: &str) -> Value {
    json!({"role": role, "source": "my supplier's table (invented)", "series": "S1", "insertion_mm": 34, "skive": "none",
        "ferrule": "F-10", "lubricant": "oil", "die_set": "28", "crimp_diameter_mm": 28.5, "crimp_tolerance_mm": 0.1})
}

/// 1177 mm of hose, two ends, two ferrules, a kerf of 3 mm.
pub fn make() -> Value {
    let mut question = supplier::question();
    for end in question["spec"]["ends"].as_array_mut().expect("ends") {
        end["cutoff_mm"] = json!(31.5);
    }
    json!({"question": question, "settings": [settings("A"), settings("B")], "kerf_mm": 3})
}

fn work(failed: bool) -> Value {
    let crimp = |role: &str| json!({"role": role, "readings_mm": vec![28.5; 12], "instrument": {"name": "micrometer 3", "error_mm": 0.01}});
    let proof = match failed {
        true => json!({"rig": true, "failed": "burst", "gauge": "G7"}),
        false => json!({"rig": false}),
    };
    json!({"crimps": [crimp("A"), crimp("B")], "cut_length_mm": 1177, "finished": {"length_mm": 1243}, "proof": proof})
}

/// Records a build that used a piece and two ends and ferrules of the van; its code.
pub fn build(device: &mut Device, piece: &Value, failed: bool) -> Result<Value, ApiError> {
    let used = json!({"store": "Van 2", "pieces": [{"piece": piece, "length_mm": 1177}],
        "items": [{"item": orfs(Some("S1")), "count": 2}, {"item": ferrule(), "count": 2}]});
    device.ask("bench.record", json!({"make": make(), "bench": work(failed), "used": used}))
}

/// A van with a reel of 20 m, ten ends, ten ferrules; the reel's id.
pub fn loaded(device: &mut Device) -> Value {
    let loaded = device.change(json!([
        {"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "reel", "length_mm": 20000, "made": "2026-04-01", "bin": "R1"},
        {"do": "load", "store": "Van 2", "item": orfs(Some("S1")), "count": 10, "bin": "C4"},
        {"do": "load", "store": "Van 2", "item": ferrule(), "count": 10, "bin": "C5"},
    ]));
    loaded["pieces"][0].clone()
}

fn quantity(device: &mut Device, text: &str) -> Value {
    let list = device.get("stock.list", json!({"text": text, "all": true}));
    list["items"][0]["quantity"].clone()
}

fn length(device: &mut Device) -> Value {
    device.get("stock.list", json!({"all": true}))["hoses"][0]["pieces"][0]["length_mm"].clone()
}

#[test]
fn a_hose_is_recorded_as_made_of_its_own_hose_and_parts_alone() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let other = van.change(json!([{"do": "load-hose", "store": "Van 2",
        "hose": {"kind": "hose", "standard": "EN 853", "type": "1SN", "dn": 16}, "sort": "reel", "length_mm": 9000}]));
    let error = build(&mut van, &other["pieces"][0], false).expect_err("another hose");
    assert_eq!(error.field, "used.pieces[0]");
    assert!(error.message.contains("1SN") && error.message.contains("2SN"), "{error}");

    let jic = json!({"kind": "end", "family": "JIC 37 flare", "size": "-10", "gender": "female", "form": "straight", "dn": 16});
    let used = json!({"store": "Van 2", "items": [{"item": jic, "count": 1}]});
    let error = van
        .ask("bench.record", json!({"make": make(), "bench": work(false), "used": used}))
        .expect_err("another end");
    assert_eq!(error.field, "used.items[0]");
    let list = van.get("stock.list", json!({"text": "2SN"}));
    assert_eq!(list["hoses"][0]["pieces"][0]["length_mm"], 20000.0, "nothing is taken by what is refused");

    // The day its hose was made comes from the piece.
    let made = build(&mut van, &reel, false).expect("recorded");
    assert_eq!(made["assembly"]["hose_made"], "2026-04-01");
    let unknown = van.change(
        json!([{"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "reel", "length_mm": 9000}]),
    );
    let made = build(&mut van, &unknown["pieces"][0], false).expect("recorded");
    assert_eq!(made["said"][0]["code"], "hose-age-not-known", "{made}");
}

#[test]
fn the_van_is_loaded_three_hoses_are_built_and_a_second_device_counts_the_same() {
    let (mut one, mut two) = (device(1), device(2));
    let reel = loaded(&mut one);
    two.hear(&mut one);
    for _ in 0..2 {
        build(&mut one, &reel, false).expect("recorded");
    }
    build(&mut two, &reel, false).expect("recorded");
    one.hear(&mut two);
    two.hear(&mut one);
    for device in [&mut one, &mut two] {
        // 20000 less three times 1177 and a kerf of 3.
        assert_eq!(length(device), 16460.0);
        assert_eq!((quantity(device, "orfs"), quantity(device, "F-10")), (json!(4), json!(4)));
        assert_eq!(device.get("stock.list", json!({}))["said"], json!([]));
    }
}

#[test]
fn more_taken_than_there_was_is_written_and_said() {
    let (mut one, mut two) = (device(1), device(2));
    let short = one.change(json!([
        {"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "offcut", "length_mm": 1500, "made": "2026-04-01"},
        {"do": "load", "store": "Van 2", "item": orfs(Some("S1")), "count": 2},
        {"do": "load", "store": "Van 2", "item": ferrule(), "count": 4},
    ]));
    two.hear(&mut one);
    // Each sees one piece that is long enough; together they cut it twice.
    assert_eq!(build(&mut one, &short["pieces"][0], false).expect("recorded")["said"], json!([]));
    assert_eq!(build(&mut two, &short["pieces"][0], false).expect("recorded")["said"], json!([]));
    one.hear(&mut two);
    let list = one.get("stock.list", json!({}));
    let said: Vec<_> =
        list["said"].as_array().expect("said").iter().map(|said| said["code"].clone()).collect();
    assert_eq!(said, ["negative", "negative-piece"], "{list}");
    assert_eq!(list["items"][0]["quantity"], -2);
    assert_eq!(list["hoses"][0]["pieces"][0]["length_mm"], -860.0);
    let third = build(&mut one, &short["pieces"][0], false).expect("recorded");
    assert!(third["said"].to_string().contains("Measure it"), "said at once: {third}");
}

#[test]
fn an_undone_build_gives_back_once_however_often_it_is_undone() {
    let (mut one, mut two) = (device(1), device(2));
    let reel = loaded(&mut one);
    let code = build(&mut one, &reel, false).expect("recorded")["code"].clone();
    two.hear(&mut one);
    let undo = json!({"code": code, "reason": "a slip"});
    let back = one.get("bench.undo", undo.clone());
    assert_eq!(back["given_back"].as_array().map(Vec::len), Some(3), "{back}");
    two.get("bench.undo", undo.clone());
    one.hear(&mut two);
    two.hear(&mut one);
    for device in [&mut one, &mut two] {
        assert_eq!((length(device), quantity(device, "orfs")), (json!(20000.0), json!(10)));
        assert_eq!(device.ask("bench.undo", undo.clone()).expect_err("it is gone").code, Code::Nothing);
    }
}

#[test]
fn what_failed_its_proof_is_scrap_and_does_not_come_back_unless_it_is_said() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let code = build(&mut van, &reel, true).expect("scrap is recorded too")["code"].clone();
    let other = build(&mut van, &reel, true).expect("scrap is recorded too")["code"].clone();
    let undone = van.get("bench.undo", json!({"code": code, "reason": "another hose"}));
    assert_eq!(undone["given_back"], json!([]));
    assert_eq!((length(&mut van), quantity(&mut van, "orfs")), (json!(17640.0), json!(6)));
    van.get("bench.undo", json!({"code": other, "reason": "never made", "give_back": true}));
    assert_eq!((length(&mut van), quantity(&mut van, "orfs")), (json!(18820.0), json!(8)));
}

#[test]
fn a_build_that_is_struck_out_by_hand_gives_back_too_and_a_correction_of_its_record_does_not() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let kept = build(&mut van, &reel, false).expect("recorded");
    let mut body = kept["assembly"].clone();
    body["kind"] = json!("assembly-made");
    body["hose_made"] = json!("2026-01-01");
    let written =
        van.get("register.record", json!({"events": [{"body": body, "builds_on": [kept["written"]]}]}));
    let void = |event: &Value| json!({"events": [{"body": {"kind": "voided", "reason": "slip"}, "builds_on": [event]}]});
    van.get("register.record", void(&written["written"][0]));
    assert_eq!(quantity(&mut van, "orfs"), 8, "the first record of the build still stands");
    van.get("register.record", void(&kept["written"]));
    assert_eq!((length(&mut van), quantity(&mut van, "orfs")), (json!(20000.0), json!(10)));
}

#[test]
fn a_hose_that_was_fitted_is_not_undone() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let code = build(&mut van, &reel, false).expect("recorded")["code"].clone();
    let machine = van.get("register.id", json!({}))["id"].clone();
    let place = van.get("register.id", json!({}))["id"].clone();
    van.get(
        "register.record",
        json!({"events": [
        {"body": {"kind": "machine-set", "machine": machine, "name": "Loader", "sort": "loader"}},
        {"body": {"kind": "place-set", "place": place, "machine": machine, "number": 1, "name": "boom"}},
        {"body": {"kind": "fitted", "code": code, "place": place, "date": "2026-09-21"}}]}),
    );
    let error = van.ask("bench.undo", json!({"code": code, "reason": "slip"})).expect_err("it sits there");
    assert!(error.message.contains("fitted"), "{error}");
    assert_eq!(quantity(&mut van, "orfs"), 8);
}

#[test]
fn a_record_that_is_refused_takes_nothing() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let kept = build(&mut van, &reel, false).expect("recorded");
    let again = json!({"make": make(), "bench": work(false), "code": kept["code"],
        "used": {"store": "Van 2", "pieces": [{"piece": reel, "length_mm": 1177}]}});
    van.ask("bench.record", again).expect_err("the code is taken");
    let unknown = json!({"make": make(), "bench": work(false),
        "used": {"store": "Van 2", "items": [{"item": ferrule(), "count": 2}], "pieces": [{"piece": "00".repeat(16), "length_mm": 1}]}});
    let error = van.ask("bench.record", unknown).expect_err("no such piece");
    assert_eq!((error.field.as_str(), error.code), ("used.pieces[0]", Code::Nothing));
    assert_eq!((length(&mut van), quantity(&mut van, "F-10")), (json!(18820.0), json!(8)));
}

#[test]
fn names_are_the_tables_own_and_a_store_or_thing_is_not_kept_twice_under_two_writings() {
    let mut van = device(1);
    van.change(json!([
        {"do": "load", "store": "Van 2", "item": {"kind": "ferrule", "name": "F-10"}, "count": 1},
        {"do": "load", "store": " van 2", "item": {"kind": "ferrule", "name": " f-10 "}, "count": 2},
        {"do": "load", "store": "Van 2", "item": "Assembly oil 1 l", "count": 1},
    ]));
    van.change(
        json!([{"do": "load", "store": "VAN 2", "item": {"kind": "ferrule", "name": "f-10"}, "count": 4}]),
    );
    let (items, _) = van.counts();
    let counts: Vec<i64> = items.values().copied().collect();
    assert_eq!(items.len(), 2, "{items:?}");
    assert_eq!(counts, [1, 7]);
    let error = van
        .ask(
            "stock.change",
            json!({"changes": [{"do": "load-hose", "store": "Van 2", "sort": "reel", "length_mm": 1,
            "hose": {"kind": "hose", "standard": "EN 853", "type": "2SX", "dn": 16}}]}),
        )
        .expect_err("no such hose");
    assert!(error.field.starts_with("changes[0]") && error.message.contains("2SX"), "{error:?}");
}

#[rstest]
#[case::hose_counted(json!({"do": "load", "store": "V", "item": hose(), "count": 1}), "changes[0].item")]
#[case::nothing(json!({"do": "load", "store": "V", "item": ferrule(), "count": 0}), "changes[0].count")]
#[case::no_store(json!({"do": "load", "store": " ", "item": ferrule(), "count": 1}), "changes[0].store")]
#[case::no_name(json!({"do": "load", "store": "V", "item": " ", "count": 1}), "changes[0].item")]
#[case::length(json!({"do": "load-hose", "store": "V", "hose": hose(), "sort": "reel", "length_mm": -5}), "changes[0].length_mm")]
#[case::to_itself(json!({"do": "move", "item": ferrule(), "from": "V", "to": "v ", "count": 1}), "changes[0].to")]
#[case::no_currency(json!({"do": "price", "item": ferrule(), "price": "1.00"}), "changes[0].price")]
#[case::below_nothing(json!({"do": "correct", "store": "V", "item": ferrule(), "to": -1}), "changes[0].to")]
fn what_can_not_be_is_refused_by_its_field_and_nothing_is_written(
    #[case] change: Value,
    #[case] field: &str,
) {
    let mut van = device(1);
    let before = json!({"do": "load", "store": "V", "item": "oil", "count": 1});
    let changes = if field.ends_with(".to") && change["do"] == "move" {
        json!([change])
    } else {
        json!([change, before])
    };
    if change["do"] == "move" {
        van.change(json!([before]));
    }
    let error = van.ask("stock.change", json!({"changes": changes})).expect_err("refused");
    assert_eq!(error.field, field, "{error}");
    assert_eq!(van.counts().0.len(), usize::from(change["do"] == "move"));
}

#[test]
fn what_is_low_is_listed_and_bins_and_words_narrow_the_list() {
    let mut van = device(1);
    loaded(&mut van);
    van.change(json!([
        {"do": "keep", "store": "Van 2", "item": ferrule(), "low": 10},
        {"do": "keep", "store": "Van 2", "item": hose(), "low": 25000},
        {"do": "keep", "store": "Van 2", "item": {"kind": "seal", "name": "O-ring 21.3 x 2.4"}, "low": 2, "bin": "S1"},
    ]));
    let low = van.get("stock.list", json!({"low": true}));
    assert_eq!(low["items"].as_array().map(Vec::len), Some(2), "what was never counted is low too: {low}");
    assert_eq!((&low["hoses"][0]["low"], &low["stores"][0]["low"]), (&json!(true), &json!(3)));
    let bin = van.get("stock.list", json!({"bin": "c5", "store": "van 2"}));
    assert_eq!((bin["items"][0]["name"].as_str(), &bin["hoses"]), (Some("F-10 DN16"), &json!([])));
    let text = van.get("stock.list", json!({"text": "orfs fem"}));
    assert_eq!(text["items"].as_array().map(Vec::len), Some(1), "{text}");
    let kept = van.change(json!([{"do": "keep", "store": "Van 2", "item": ferrule(), "low": null}]));
    assert_eq!(kept["written"].as_array().map(Vec::len), Some(1));
    assert_eq!(van.get("stock.list", json!({"low": true}))["items"].as_array().map(Vec::len), Some(1));
}

#[test]
fn two_devices_that_move_one_piece_are_shown_to_a_person_until_it_is_set_again() {
    let (mut one, mut two) = (device(1), device(2));
    let reel = loaded(&mut one);
    two.hear(&mut one);
    one.change(json!([{"do": "move-piece", "piece": reel, "to": "Shop"}]));
    two.change(json!([{"do": "move-piece", "piece": reel, "to": "Van 3"}]));
    one.hear(&mut two);
    let list = one.get("stock.list", json!({}));
    assert_eq!(list["said"][0]["code"], "conflict", "{list}");
    let (_, pieces) = one.counts();
    assert_eq!(pieces.len(), 1, "it is in one place");
    let told =
        |van: &mut Device| van.get("register.overview", json!({}))["contradictions"].as_array().map(Vec::len);
    assert_eq!(told(&mut one), Some(1));
    one.change(json!([{"do": "move-piece", "piece": reel, "to": "Shop", "bin": "R9"}]));
    two.hear(&mut one);
    for van in [&mut one, &mut two] {
        assert_eq!((van.said(), told(van)), (vec![], Some(0)), "it is settled");
    }
}

#[test]
fn a_low_mark_or_price_that_two_devices_set_at_once_is_settled_by_setting_it_again_as_it_was() {
    let (mut one, mut two) = (device(1), device(2));
    loaded(&mut one);
    two.hear(&mut one);
    for (van, low, price) in [(&mut one, 3, "2.00"), (&mut two, 5, "2.50")] {
        van.get("settings.write", json!({"pricing": {"currency": "EUR"}}));
        van.change(json!([{"do": "keep", "store": "Van 2", "item": ferrule(), "low": low},
            {"do": "price", "item": ferrule(), "price": price}]));
    }
    one.hear(&mut two);
    assert_eq!(one.said(), ["conflict"]);
    one.change(json!([{"do": "keep", "store": "Van 2", "item": ferrule(), "low": 5}]));
    assert_eq!(one.said(), ["conflict"], "the price is still open");
    one.change(json!([{"do": "price", "item": ferrule(), "price": "2.50"}]));
    assert_eq!(one.said(), Vec::<String>::new());
}

#[test]
fn the_stock_of_an_older_program_still_counts() {
    let old = r#"{"kind":"stock-changed","store":"Van 2","item":"EN 853 2SN DN16","unit":"millimetres","difference":9000}"#;
    let text: BodyText = old.parse().expect("a body");
    let Body::StockChanged(change) = text.read() else { panic!("{:?}", text.read()) };
    assert_eq!((change.item, change.why), (Item::Named("EN 853 2SN DN16".into()), None));
    let mut van = device(1);
    let body: Value = serde_json::from_str(old).expect("json");
    van.get("register.record", json!({"events": [{"body": body}]}));
    let list = van.get("stock.list", json!({}));
    assert_eq!(
        (&list["items"][0]["quantity"], &list["items"][0]["unit"]),
        (&json!(9000), &json!("millimetres"))
    );
}

#[test]
fn everything_that_is_said_has_words() {
    for language in Language::ALL {
        let words = Words::of(language);
        for code in SaidCode::ALL {
            assert!(words.has(&format!("stock-said-{}", key(code))), "{code:?} has no words");
        }
        for state in ["there", "short", "not-kept", "not-known"] {
            assert!(words.has(&format!("stock-state-{state}")), "{state} has no words");
        }
    }
}
