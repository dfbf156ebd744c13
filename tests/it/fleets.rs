//! Who made a tag and what it is worth: seals, keys and how they are handed on, tags held against the record, tags taken
//! in, and the log of scans.

use super::settings::{answer, api};
use super::supplier::{begin, question};
use chrono::{DateTime, Utc};
use hosewright_api::commands::Reply;
use hosewright_api::{Api, Code, World};
use hosewright_core::check::Verdict;
use hosewright_core::fleet::FleetKey;
use hosewright_core::record::{Body, LabelledHow};
use hosewright_core::tag::{self, TagCode, TagContent, TagStanding};
use hosewright_words::Language;
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

const PLACE: &str = "11111111111111111111111111111111";
const OTHER: &str = "22222222222222222222222222222222";

#[track_caller]
fn ask(api: &mut Api, name: &str, input: Value) -> Value {
    answer(api, name, input).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn refused(api: &mut Api, name: &str, input: Value) -> String {
    answer(api, name, input).expect_err("refused").message
}

/// A tag as that device makes it.
fn made(api: &mut Api) -> (Value, String) {
    let made = ask(api, "tag.make", json!({"question": question()}));
    (made["tag"].clone(), made["text"].as_str().expect("a text").to_owned())
}

fn record(api: &mut Api, bodies: Value) {
    let events: Vec<Value> =
        bodies.as_array().expect("a list").iter().map(|body| json!({"body": body})).collect();
    ask(api, "register.record", json!({"events": events}));
}

/// The hose of a tag as it stands on record, and two places.
fn on_record(api: &mut Api, tag: &Value, proof: Value) {
    let machine = "33333333333333333333333333333333";
    record(
        api,
        json!([
            {"kind": "machine-set", "machine": machine, "name": "Loader 7", "sort": "loader"},
            {"kind": "place-set", "place": PLACE, "machine": machine, "number": 1, "name": "Tilt, left"},
            {"kind": "place-set", "place": OTHER, "machine": machine, "number": 2, "name": "Tilt, right"},
            of_tag(tag, proof)
        ]),
    );
}

/// The record of a tag's hose.
fn of_tag(tag: &Value, proof: Value) -> Value {
    let service = json!({"line": tag.get("line"), "fluid": tag.get("fluid"), "duties": tag.get("duties").unwrap_or(&json!([]))});
    json!({"kind": "assembly-made", "code": tag["code"], "spec": tag["spec"], "service": service, "verdict": "pass",
           "assembled": tag.get("assembled"), "pressure_bar": tag.get("pressure_bar"), "proof": proof,
           "catalogue": "c", "program": "p"})
}

/// A tag that says something else, with no seal.
fn written(tag: &Value, change: impl FnOnce(&mut Value)) -> String {
    let mut other = tag.clone();
    other["seal"] = Value::Null;
    change(&mut other);
    tag::write(&serde_json::from_value(other).expect("a tag"))
}

fn no_rig() -> Value {
    json!({"state": "not-proved", "why": "no-rig"})
}

fn fitted(code: &Value) -> Value {
    json!({"kind": "fitted", "code": code, "place": PLACE, "date": "2026-09-01", "hours": null, "already_there": false})
}

fn open(api: &mut Api, text: &str) -> Value {
    ask(api, "tag.open", json!({"text": text}))["judged"].clone()
}

fn codes(judged: &Value) -> Vec<&str> {
    judged["findings"].as_array().expect("findings").iter().filter_map(|one| one["code"].as_str()).collect()
}

/// A device with a fleet of that name; its keys differ from those of any other.
fn with_fleet(name: &str, chance: usize) -> (tempfile::TempDir, Api) {
    let (folder, mut api) = begin();
    for _ in 0..chance {
        ask(&mut api, "register.id", json!({}));
    }
    ask(&mut api, "fleet.begin", json!({"name": name}));
    (folder, api)
}

/// The text with its checksum made to fit, as a forger would.
fn with_sum(text: &str) -> String {
    match tag::read(text) {
        Err(tag::TagError::Sum { found, right, .. }) => {
            let at = text.rfind("SUM ").expect("a checksum");
            text[..at].to_owned() + &text[at..].replacen(&found, &right, 1)
        }
        _ => text.to_owned(),
    }
}

#[test]
fn own_partners_foreign_and_unsealed_tags_each_open_with_their_own_words() {
    let (_a, mut own) = with_fleet("Northern vans", 0);
    let (_b, mut partner) = with_fleet("Quarry fleet", 40);
    let (_c, mut foreign) = with_fleet("Somebody", 80);
    let (_d, mut none) = begin();
    let key = ask(&mut partner, "fleet.hand-on", json!({}))["text"].clone();
    let from = ask(&mut own, "fleet.look", json!({"text": key}))["from"].clone();
    ask(&mut own, "fleet.join", json!({"text": key, "from": from, "as": "partner"}));

    let mut said = Vec::new();
    for (device, standing, verdict) in [
        (0, "own", "caution"),
        (1, "partner", "caution"),
        (2, "foreign", "caution"),
        (3, "unsealed", "caution"),
    ] {
        let text = match device {
            0 => made(&mut own).1,
            1 => made(&mut partner).1,
            2 => made(&mut foreign).1,
            _ => made(&mut none).1,
        };
        let judged = open(&mut own, &text);
        assert_eq!(
            (&judged["standing"], &judged["verdict"]),
            (&json!(standing), &json!(verdict)),
            "{judged}"
        );
        assert_eq!((&judged["known"], &judged["adopt"]), (&json!(false), &json!(true)), "{standing}");
        said.push(judged["says"].as_str().expect("words").to_owned());
    }
    assert!(said[0].contains("Northern vans") && said[1].contains("Quarry fleet"), "{said:?}");
    let different: std::collections::HashSet<_> = said.iter().collect();
    assert_eq!(different.len(), 4, "{said:?}");

    let altered = made(&mut own).1.replace("1240 mm", "1340 mm");
    for text in [altered.clone(), with_sum(&altered)] {
        assert_ne!(made(&mut own).1, text);
        let scan = ask(&mut own, "tag.open", json!({"text": text}));
        assert_eq!(
            (&scan["judged"]["standing"], &scan["judged"]["verdict"]),
            (&json!("altered"), &json!("stop"))
        );
        assert_eq!(
            (&scan["spec"], &scan["judged"]["adopt"]),
            (&Value::Null, &json!(false)),
            "nothing on it counts"
        );
        assert!(!scan["problem"].as_str().expect("why").is_empty());
    }
    // A fleet that is left is unknown again.
    let mark = ask(&mut own, "fleet.show", json!({}))["partners"][0]["mark"].clone();
    ask(&mut own, "fleet.leave", json!({"mark": mark}));
    assert_eq!(open(&mut own, &made(&mut partner).1)["standing"], "foreign");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Whatever character of a sealed tag is altered, it is seen and nothing of it is taken for true. Who makes the checksum
    /// fit again can at most hide the seal: the tag is then one that nobody vouches for, never one of the fleet.
    #[test]
    fn a_sealed_tag_altered_anywhere_is_seen(at in any::<prop::sample::Index>(), wrong in "[ -~]", key: [u8; 32]) {
        let key = FleetKey::from_bytes(key);
        let mut content: TagContent = serde_json::from_value(json!({
            "code": "7KQ4M-2XR9D-D", "spec": question()["spec"], "pressure_bar": 276, "proof": {"state": "proved", "pressure_bar": 552}, "catalogue": "5f0c1d2e"
        })).expect("a tag");
        tag::seal(&mut content, &key);
        let text = tag::write(&content);
        prop_assert_eq!(tag::open(&text, Some(&key), &[]).map(|read| read.standing), Some(TagStanding::Own));
        let at = at.index(text.len());
        let mut altered = text.clone();
        altered.replace_range(at..=at, &wrong);
        prop_assume!(altered != text);
        // A wrong checksum made to fit is the tag as it was.
        let one = altered;
        for altered in [one.clone(), with_sum(&one)].into_iter().filter(|altered| *altered != text) {
            if let Some(read) = tag::open(&altered, Some(&key), &[]) {
                let hidden = read.standing == TagStanding::Unsealed && altered == with_sum(&altered) && !altered.contains("\nSEAL ");
                let seen = matches!(read.standing, TagStanding::Altered | TagStanding::Newer) && read.content.is_none();
                prop_assert!(seen || hidden, "{:?}", read);
                prop_assert!(seen || tag::read(&one).is_err(), "without a new checksum it is seen: {:?}", read);
                // Of a hose that the own fleet has on record nothing altered reads as in order.
                let made: hosewright_core::record::Assembly = serde_json::from_value(json!({
                    "code": content.code, "spec": content.spec, "pressure_bar": 276, "verdict": "pass", "catalogue": "5f0c1d2e", "program": "p",
                    "proof": {"state": "proved", "pressure_bar": 552, "hold_s": 60, "gauge": "G1"}
                })).expect("a record");
                let known = tag::OnRecord { made: Some(&made), ..tag::OnRecord::default() };
                let gravest = tag::findings(&read, Some(&known), None, true).first().map(|code| code.verdict());
                prop_assert!(gravest > Some(Verdict::Pass), "{:?}", read);
            }
        }
    }
}

#[test]
fn the_secrets_are_for_their_owner_alone_and_in_no_register_backup_bundle_or_export() {
    let (folder, mut api) = with_fleet("Northern vans", 0);
    made(&mut api);
    let path = folder.path().join("register.db.keys");
    let keys: Value = serde_json::from_slice(&std::fs::read(&path).expect("keys")).expect("JSON");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let mode = || std::fs::metadata(&path).expect("a file").permissions().mode() & 0o777;
        assert_eq!(mode(), 0o600);
        std::fs::set_permissions(&path, std::fs::Permissions::from_mode(0o644)).expect("opened to all");
        ask(&mut api, "fleet.show", json!({}));
        assert_eq!(mode(), 0o600, "it is closed again before it is used");
    }
    let handed = ask(&mut api, "fleet.hand-on", json!({}))["text"].as_str().expect("a text").to_owned();
    let key = handed.lines().find_map(|line| line.strip_prefix("KEY ")).expect("the key").to_owned();
    let secrets: Vec<Vec<u8>> = [&keys["device"], &keys["fleets"][0]["key"]]
        .into_iter()
        .map(|secret| serde_json::from_value(secret.clone()).expect("bytes"))
        .chain([key.clone().into_bytes()])
        .collect();
    let mut texts: Vec<(String, Vec<u8>)> = Vec::new();
    for name in ["fleet.show", "settings.read", "register.overview", "scan.list"] {
        texts.push((name.to_owned(), ask(&mut api, name, json!({})).to_string().into_bytes()));
    }
    for (name, asked) in [
        ("register.bundle", json!({})),
        ("register.backup", json!({})),
        ("register.export", json!({"as": "json"})),
        ("register.export", json!({"as": "csv"})),
    ] {
        let Reply::File(file) = api.call(name, asked, &[]).expect("a file") else { panic!("{name}") };
        texts.push((name.to_owned(), file.bytes));
    }
    // Given to whatever field of whatever command, it is repeated by no error.
    let mut given = 0;
    // On a device of its own: what is written there on purpose, such as a name, is no matter of errors.
    let (_other, mut api_of_other) = begin();
    for command in hosewright_api::commands::described() {
        let fields = command.input.get("properties").and_then(Value::as_object).cloned().unwrap_or_default();
        for copied in [handed.clone(), format!("\u{feff}{handed}")] {
            for field in fields.keys() {
                let asked = json!({field: copied});
                if let Err(error) = api_of_other.call(command.name, asked, &[]) {
                    let said = format!("{} {}", error.field, error.message);
                    assert!(
                        !said.contains(&key[..13]) && !said.contains(&key[20..33]),
                        "{}: {said}",
                        command.name
                    );
                    given += 1;
                }
            }
        }
    }
    assert!(given > 100, "{given}");
    // A scanned key goes into no answer and no log.
    let scanned = answer(&mut api, "tag.open", json!({"text": handed})).expect_err("no tag");
    assert!(scanned.message.contains("key of a fleet"), "{scanned}");
    texts.push(("error".to_owned(), scanned.message.into_bytes()));
    let png = hosewright_papers::code(&handed)
        .expect("a code")
        .to_png(300.0, hosewright_papers::Ink::Dots)
        .expect("png");
    let Reply::Document(read) = api.call("tag.read", json!({"raw": true}), &png).expect("read") else {
        panic!()
    };
    assert_eq!((&read["codes"][0]["text"], &read["codes"][0]["judged"]), (&json!(""), &Value::Null));
    texts.push(("tag.read".to_owned(), read.to_string().into_bytes()));
    drop(api);
    texts.push((
        "register.db".to_owned(),
        std::fs::read(folder.path().join("register.db")).expect("the register"),
    ));
    for (name, text) in &texts {
        for secret in &secrets {
            let written = secret.iter().map(u8::to_string).collect::<Vec<_>>().join(",");
            assert!(!text.windows(secret.len()).any(|part| part == secret), "{name} holds a secret");
            assert!(!String::from_utf8_lossy(text).contains(&written), "{name} holds a secret");
        }
    }
    assert_eq!(texts.len(), 11);
}

/// A device whose clock stands at that time, in seconds.
struct At(i64, u8);

impl World for At {
    fn now(&self) -> DateTime<Utc> {
        DateTime::from_timestamp(self.0, 0).expect("a time")
    }

    fn random(&mut self) -> [u8; 16] {
        self.1 += 1;
        [self.1; 16]
    }
}

/// A device of its own whose clock stands at that time.
fn device(second: i64, chance: u8) -> (tempfile::TempDir, Api) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = Api::new(Language::English, Box::new(At(second, chance)));
    api.open(&folder.path().join("register.db")).expect("opens");
    (folder, api)
}

#[test]
fn the_mark_of_a_device_whose_records_came_is_told_with_its_name() {
    let (_a, mut first) = device(1_790_000_000, 0);
    let (_b, mut second) = device(1_790_000_000, 100);
    ask(&mut first, "fleet.begin", json!({"name": "Northern vans"}));
    record(&mut first, json!([{"kind": "device-named", "name": "Van 1"}]));
    let handed = ask(&mut first, "fleet.hand-on", json!({}));
    let look = json!({"text": handed["text"]});
    assert_eq!(ask(&mut second, "fleet.look", look.clone())["from_name"], Value::Null, "not merged yet");
    let bundle = file(&mut first, "register.bundle");
    second.call("register.merge", json!({}), &bundle).expect("merged");
    let looked = ask(&mut second, "fleet.look", look);
    let mark = ask(&mut first, "fleet.show", json!({}))["device"]["mark"].clone();
    assert_eq!((&looked["from_name"], &looked["from"]), (&json!("Van 1"), &mark));
    let others = ask(&mut second, "fleet.show", json!({}))["others"].clone();
    assert_eq!((&others[0]["name"], &others[0]["mark"]), (&json!("Van 1"), &mark));
    assert_eq!(others.as_array().map(Vec::len), Some(1), "it is not among the others itself");
    let before = file(&mut first, "register.bundle");
    ask(&mut first, "fleet.show", json!({}));
    assert_eq!(file(&mut first, "register.bundle"), before, "a key is told once");
}

fn file(api: &mut Api, name: &str) -> Vec<u8> {
    match api.call(name, json!({}), &[]) {
        Ok(Reply::File(file)) => file.bytes,
        other => panic!("{name}: {other:?}"),
    }
}

#[test]
fn a_fleets_key_is_joined_for_a_day_after_it_was_shown() {
    let (_folder, mut first) = with_fleet("Northern vans", 0);
    let handed = ask(&mut first, "fleet.hand-on", json!({}));
    let shown = first_second(&handed["until"]) - 24 * 3600;
    for (after, joined) in [(23 * 3600, true), (25 * 3600, false), (-2 * 3600, false)] {
        let (_folder, mut second) = device(shown + after, 100);
        let looked = answer(&mut second, "fleet.look", json!({"text": handed["text"]}));
        let from = ask(&mut first, "fleet.show", json!({}))["device"]["mark"].clone();
        let asked = json!({"text": handed["text"], "from": from, "as": "own"});
        let done = answer(&mut second, "fleet.join", asked);
        assert_eq!((looked.is_ok(), done.is_ok()), (joined, joined), "{after} s after");
        if let Err(error) = done {
            assert!(error.message.contains("have it shown anew"), "{error}");
            assert_eq!(ask(&mut second, "fleet.show", json!({}))["own"], Value::Null);
        }
    }
}

fn first_second(time: &Value) -> i64 {
    time.as_str().expect("a time").parse::<DateTime<Utc>>().expect("a time").timestamp()
}

#[test]
fn a_fleet_is_joined_by_a_picture_of_its_key_and_then_makes_the_same_seals() {
    let (_a, mut first) = with_fleet("Northern vans", 0);
    let (_b, mut second) = begin();
    for _ in 0..9 {
        ask(&mut second, "register.id", json!({}));
    }
    let handed = ask(&mut first, "fleet.hand-on", json!({}));
    assert!(handed["caution"].as_str().expect("words").contains("Northern vans"));
    let text = handed["text"].as_str().expect("a text");
    let png = hosewright_papers::code(text)
        .expect("a code")
        .to_png(300.0, hosewright_papers::Ink::Smooth)
        .expect("png");
    let Reply::Document(seen) = second.call("fleet.look", json!({}), &png).expect("seen") else { panic!() };
    let (device, mark) = {
        let shown = ask(&mut first, "fleet.show", json!({}));
        (shown["device"]["mark"].clone(), shown["own"]["mark"].clone())
    };
    assert_eq!((&seen["name"], &seen["mark"], &seen["from"]), (&json!("Northern vans"), &mark, &device));
    // Looked at, nothing is kept; and what was not compared is not joined.
    assert_eq!(ask(&mut second, "fleet.show", json!({}))["own"], Value::Null);
    let own = ask(&mut second, "fleet.show", json!({}))["device"]["mark"].clone();
    for from in [own, json!(""), seen["mark"].clone()] {
        let error =
            second.call("fleet.join", json!({"as": "own", "from": from}), &png).expect_err("not compared");
        assert_eq!((error.code, error.field.as_str()), (Code::Input, "from"), "{error}");
    }
    assert_eq!(ask(&mut second, "fleet.show", json!({}))["own"], Value::Null);
    // Whoever makes a key of their own can put any name on it, and their own mark shows.
    let (_c, mut forger) = with_fleet("Northern vans", 40);
    let forged = ask(&mut forger, "fleet.hand-on", json!({}))["text"].clone();
    let forged = ask(&mut second, "fleet.look", json!({"text": forged}));
    assert!(forged["name"] == seen["name"] && forged["from"] != device && forged["mark"] != mark, "{forged}");
    let Reply::Document(joined) =
        second.call("fleet.join", json!({"as": "own", "from": device}), &png).expect("joined")
    else {
        panic!()
    };
    let shown = ask(&mut first, "fleet.show", json!({}));
    assert_eq!(joined["own"]["mark"], shown["own"]["mark"]);
    assert_eq!(joined["own"]["from"], shown["device"]["mark"], "who handed it on can be compared by eye");
    assert_ne!(joined["device"], shown["device"], "each device has its own key pair");
    assert_eq!(open(&mut first, &made(&mut second).1)["standing"], "own");
    assert_eq!(open(&mut second, &made(&mut first).1)["standing"], "own");

    let again = refused(&mut second, "fleet.join", json!({"text": text, "from": device, "as": "partner"}));
    assert!(again.contains("already"), "{again}");
    let other = refused(&mut second, "fleet.begin", json!({"name": "Another"}));
    assert!(other.contains("Northern vans"), "{other}");
    for wrong in [made(&mut first).1, text.replace("NAME Northern", "NAME Southern"), text[..100].to_owned()]
    {
        let error = answer(&mut second, "fleet.join", json!({"text": wrong, "from": device, "as": "own"}))
            .expect_err("refused");
        assert!(error.code == Code::Input && !error.message.contains("KEY "), "{error}");
    }
}

#[test]
fn a_device_keeps_its_key_pair_and_its_fleet() {
    let (folder, mut api) = with_fleet("Northern vans", 0);
    let before = ask(&mut api, "fleet.show", json!({}));
    let mark = before["own"]["mark"].clone();
    let text = made(&mut api).1;
    assert!(text.contains(&format!("\nSEAL {} ", mark.as_str().expect("a mark"))), "{text}");
    drop(api);
    let mut again = super::settings::api();
    again.open(&folder.path().join("register.db")).expect("opens");
    assert_eq!(ask(&mut again, "fleet.show", json!({})), before);
    std::fs::write(folder.path().join("register.db.keys"), "torn").expect("written");
    let error = answer(&mut again, "tag.make", json!({"question": question()})).expect_err("no seal, no tag");
    assert!(error.code == Code::File && !error.message.contains("torn"), "{error}");
}

/// Caller's word and record: what the record says of the proof stands.
#[rstest]
#[case(no_rig(), json!({"state": "no-rig"}), true)]
#[case(json!({"state": "not-proved", "why": "made-elsewhere"}), json!({"state": "not-proved"}), true)]
#[case(json!({"state": "proved", "pressure_bar": 412.0, "hold_s": 60.0, "gauge": "G1"}), json!({"state": "proved", "pressure_bar": 412.0}), true)]
#[case(json!({"state": "proved", "pressure_bar": 600.0, "hold_s": 60.0, "gauge": "G1"}), json!({"state": "proved", "pressure_bar": 600.0}), false)]
fn a_hose_that_the_record_calls_not_proved_is_never_labelled_proved(
    #[case] recorded: Value,
    #[case] on_tag: Value,
    #[case] contradicts: bool,
) {
    let (_folder, mut api) = begin();
    let (tag, _) = made(&mut api);
    on_record(&mut api, &tag, recorded);
    let claim = json!({"state": "proved", "pressure_bar": 600.0});
    let asked = json!({"question": question(), "code": tag["code"], "proof": claim});
    let again = ask(&mut api, "tag.make", asked);
    assert_eq!((&again["tag"]["proof"], &again["proof_from"]), (&on_tag, &json!("record")));
    let notices: Vec<&str> =
        again["notices"].as_array().expect("a list").iter().filter_map(|one| one["code"].as_str()).collect();
    assert_eq!(notices.contains(&"other-proof"), contradicts, "{notices:?}");
    assert_eq!(ask(&mut api, "tag.of", json!({"code": tag["code"]}))["tag"]["proof"], on_tag);

    let mut forged = again["tag"].clone();
    forged["proof"] = claim;
    let label = json!({"tag": forged, "stock": stock(), "as": "png"});
    for name in ["tag.preview", "tag.label"] {
        let done = api.call(name, label.clone(), &[]);
        assert_eq!(done.is_err(), contradicts, "{name}: {done:?}");
    }
    // Of a hose that nobody has recorded the one who made it says it.
    let new = ask(
        &mut api,
        "tag.make",
        json!({"question": question(), "proof": {"state": "proved", "pressure_bar": 600.0}}),
    );
    assert_eq!((&new["tag"]["proof"]["state"], &new["proof_from"]), (&json!("proved"), &json!("given")));
}

fn stock() -> Value {
    json!({"name": "Flag", "width_mm": 60, "height_mm": 40, "dpi": 300, "material": "paper", "form": "flag"})
}

#[test]
fn a_code_that_sits_elsewhere_is_said_and_one_that_was_withdrawn_is_refused() {
    let (_folder, mut api) = with_fleet("Northern vans", 0);
    let (tag, text) = made(&mut api);
    on_record(&mut api, &tag, no_rig());
    let known = open(&mut api, &text);
    assert_eq!(codes(&known), ["not-proved"], "made and not fitted");
    record(&mut api, json!([fitted(&tag["code"])]));

    let asked = |place: Option<&str>| json!({"text": text, "place": place});
    let there = ask(&mut api, "tag.open", asked(None))["judged"].clone();
    assert_eq!(codes(&there), ["not-proved", "sits"]);
    assert_eq!(there["at"]["place_name"], "Tilt, left");
    let here = ask(&mut api, "tag.open", asked(Some(PLACE)))["judged"].clone();
    assert_eq!(codes(&here), ["not-proved"]);
    let elsewhere = ask(&mut api, "tag.open", asked(Some(OTHER)))["judged"].clone();
    assert_eq!((codes(&elsewhere)[0], &elsewhere["verdict"]), ("fitted-elsewhere", &json!("stop")));
    assert!(elsewhere["findings"][0]["why"].as_str().expect("words").contains("Loader 7, 1, Tilt, left"));
    // The code alone, typed, says the same.
    let typed = ask(&mut api, "tag.open", json!({"code": tag["code"], "place": OTHER}))["judged"].clone();
    assert_eq!(
        (&typed["standing"], codes(&typed)),
        (&json!("code-alone"), vec!["fitted-elsewhere", "not-proved"])
    );

    record(&mut api, json!([{"kind": "tag-withdrawn", "code": tag["code"], "reason": "Tag lost"}]));
    let withdrawn = open(&mut api, &text);
    assert_eq!((codes(&withdrawn)[0], &withdrawn["verdict"]), ("withdrawn", &json!("stop")));
    assert!(withdrawn["findings"][0]["why"].as_str().expect("words").contains("Tag lost"));
    let again = json!({"question": question(), "code": tag["code"]});
    assert!(refused(&mut api, "tag.make", again).contains("withdrawn"));
    assert!(refused(&mut api, "tag.of", json!({"code": tag["code"]})).contains("withdrawn"));
    let label = json!({"tag": tag, "stock": stock(), "as": "png"});
    assert!(api.call("tag.label", label, &[]).expect_err("no label").message.contains("withdrawn"));
}

/// No day on tag or record is never a quiet pass; of a code alone the record tells it.
#[test]
fn a_tag_of_a_hose_whose_age_nobody_knows_says_so() {
    let (_folder, mut api) = with_fleet("Northern vans", 0);
    let (tag, text) = made(&mut api);
    assert!(!codes(&open(&mut api, &text)).contains(&"age-not-known"), "it says its day");
    let ageless = written(&tag, |tag| tag["assembled"] = Value::Null);
    let unknown = open(&mut api, &ageless);
    assert!(codes(&unknown).contains(&"age-not-known"), "{unknown}");
    let found = unknown["findings"].as_array().expect("findings");
    let found = found.iter().find(|one| one["code"] == "age-not-known").expect("it is there");
    assert_eq!(found["verdict"], "caution");
    assert!(found["cure"].as_str().expect("words").contains("layline"), "{found}");

    let mut other = tag.clone();
    other["assembled"] = Value::Null;
    on_record(&mut api, &other, no_rig());
    let typed = ask(&mut api, "tag.open", json!({"code": tag["code"]}))["judged"].clone();
    assert!(codes(&typed).contains(&"age-not-known"), "the record has no day either: {typed}");
    assert!(!codes(&open(&mut api, &text)).contains(&"age-not-known"), "the tag has it");
}

#[test]
fn a_code_known_with_another_spec_a_scrapped_hose_and_a_missing_seal_are_said() {
    let (_folder, mut api) = begin();
    let (tag, unsealed) = made(&mut api);
    on_record(&mut api, &tag, no_rig());
    assert_eq!(codes(&open(&mut api, &unsealed)), ["not-proved"], "no fleet, no seal missed");
    ask(&mut api, "fleet.begin", json!({"name": "Northern vans"}));
    assert_eq!(codes(&open(&mut api, &unsealed)), ["seal-missing", "not-proved"]);

    let mut other = question();
    other["spec"]["overall_length_mm"] = json!(900);
    let other = ask(&mut api, "tag.make", json!({"question": other, "code": tag["code"]}));
    assert_eq!(other["notices"][0]["code"], "other-spec");
    assert_eq!(
        (&other["verdict"], &other["tag"], &other["text"]),
        (&json!("stop"), &Value::Null, &Value::Null)
    );
    let judged = open(&mut api, &written(&tag, |tag| tag["spec"]["overall_length_mm"] = json!(900)));
    assert_eq!((codes(&judged)[0], &judged["verdict"]), ("other-spec", &json!("stop")));

    let (scrap, text) = made(&mut api);
    let failed = json!({"state": "failed", "what": "burst"});
    record(
        &mut api,
        json!([{"kind": "assembly-made", "code": scrap["code"], "spec": scrap["spec"], "proof": failed, "catalogue": "c", "program": "p"}]),
    );
    let judged = open(&mut api, &text);
    assert_eq!((codes(&judged)[0], &judged["verdict"]), ("failed-proof", &json!("stop")));
}

#[test]
fn a_tag_never_seen_opens_as_a_spec_that_is_checked_rebuilt_and_taken_in() {
    let (_a, mut maker) = with_fleet("Somebody", 60);
    let (_b, mut api) = with_fleet("Northern vans", 0);
    let (_, text) = made(&mut maker);
    let scan = ask(&mut api, "tag.open", json!({"text": text}));
    let checked = ask(&mut api, "check", json!({"spec": scan["spec"], "service": question()["service"]}));
    assert_eq!(checked["assembly_pressure_bar"], scan["pressure_bar"], "the spec stands there whole");
    ask(&mut api, "make", json!({"question": {"spec": scan["spec"], "service": question()["service"]}}));

    let taken = ask(&mut api, "tag.adopt", json!({"text": text}));
    assert_eq!((&taken["code"], &taken["assembly"]["spec"]), (&scan["code"], &scan["spec"]));
    assert_eq!(
        taken["assembly"]["proof"],
        json!({"state": "not-proved", "why": "made-elsewhere"}),
        "a tag is no record of a proof"
    );
    let hose = ask(&mut api, "register.show", json!({"code": scan["code"]}));
    assert_eq!((&hose["labelled"], hose["notes"].as_array().map(Vec::len)), (&json!(true), Some(1)));
    let twice = answer(&mut api, "tag.adopt", json!({"text": text})).expect_err("known");
    assert_eq!(twice.code, Code::Input, "{twice}");
    assert_eq!(open(&mut api, &text)["known"], true);

    for wrong in
        [text.replace("1240", "1250"), scan["code"].as_str().expect("a code").to_owned(), String::new()]
    {
        assert!(answer(&mut api, "tag.adopt", json!({"text": wrong})).is_err(), "{wrong}");
    }
}

/// What someone unknown wrote on a tag never makes a hose stronger than the tables do.
#[rstest]
#[case("2SN", json!(700), json!(250.0))]
#[case("2SN", json!(100), json!(100.0))]
#[case("2SN", Value::Null, Value::Null)]
#[case("9ZZ", json!(700), Value::Null)]
fn the_pressure_of_an_unknown_maker_is_the_lower_of_its_tag_and_the_tables(
    #[case] kind: &str,
    #[case] said: Value,
    #[case] carried: Value,
) {
    let (_folder, mut api) = begin();
    let (mut tag, _) = made(&mut api);
    tag["spec"]["hose"]["type"] = json!(kind);
    tag["pressure_bar"] = said;
    let content: TagContent = serde_json::from_value(tag).expect("a tag");
    let taken = ask(&mut api, "tag.adopt", json!({"text": tag::write(&content)}));
    assert_eq!(taken["assembly"].get("pressure_bar").cloned().unwrap_or_default(), carried);
}

#[test]
fn every_scan_is_kept_newest_first_and_a_camera_that_reads_on_is_one_scan() {
    let (_folder, mut api) = with_fleet("Northern vans", 0);
    let (tag, text) = made(&mut api);
    let Reply::File(label) =
        api.call("tag.label", json!({"tag": tag, "stock": stock(), "as": "png"}), &[]).expect("a label")
    else {
        panic!("a label is a file")
    };
    for _ in 0..3 {
        api.call("tag.read", json!({"raw": true}), &label.bytes).expect("read");
    }
    ask(&mut api, "tag.open", json!({"code": tag["code"]}));
    ask(&mut api, "tag.open", json!({"text": text.replace("LENGTH 1240", "LENGTH 1241")}));
    answer(&mut api, "tag.open", json!({"text": "https://example.org"})).expect_err("no tag");
    answer(&mut api, "tag.open", json!({})).expect_err("nothing given");
    let list = ask(&mut api, "scan.list", json!({}));
    let device = ask(&mut api, "register.overview", json!({}))["device"].clone();
    let rows: Vec<(&str, &str, &str)> = list["scans"]
        .as_array()
        .expect("a list")
        .iter()
        .map(|scan| {
            assert_eq!((&scan["code"], &scan["device"]), (&tag["code"], &device));
            let text = |key: &str| scan[key].as_str().expect("text");
            (text("way"), text("standing"), text("verdict"))
        })
        .collect();
    assert_eq!(
        rows,
        [("typed", "altered", "stop"), ("typed", "code-alone", "caution"), ("picture", "own", "caution")]
    );
    assert_eq!(ask(&mut api, "scan.list", json!({"most": 1}))["scans"].as_array().map(Vec::len), Some(1));
    let Reply::File(bundle) = api.call("register.bundle", json!({}), &[]).expect("a bundle") else {
        panic!()
    };
    assert!(!String::from_utf8_lossy(&bundle.bytes).contains("\"way\""), "scans stay on their device");
}

#[test]
fn each_standing_and_each_finding_has_words_of_its_own() {
    let words = hosewright_words::Words::of(hosewright_words::Language::English);
    for code in tag::TagFindingCode::ALL {
        let id = format!("tag-found-{}", hosewright_api::key(&code));
        assert!(words.has(&id) && words.has(&format!("{id}-cure")), "{id}");
    }
    assert!(words.has("tag-found-not-known-alone-cure"));
    for standing in [
        TagStanding::Own,
        TagStanding::Partner,
        TagStanding::Foreign,
        TagStanding::Unsealed,
        TagStanding::CodeAlone,
        TagStanding::Altered,
        TagStanding::Newer,
    ] {
        let id = format!("tag-standing-{}", hosewright_api::key(&standing));
        assert!(words.has(&id), "{id}");
    }
    for standing in ["own", "partner", "foreign", "unsealed"] {
        assert!(words.has(&format!("tag-taken-in-{standing}")), "{standing}");
    }
    for how in [LabelledHow::Printed, LabelledHow::Seen] {
        let code: TagCode = "7KQ4M-2XR9D-D".parse().expect("a code");
        let body = Body::Labelled(hosewright_core::record::Labelled { code, how });
        assert_eq!(serde_json::to_value(&body).expect("writes")["how"], how.name());
    }
}

#[test]
fn without_a_register_a_tag_is_read_and_nothing_is_said_of_who_made_it() {
    let (_folder, mut sealed) = with_fleet("Northern vans", 0);
    let (tag, text) = made(&mut sealed);
    let mut api = api();
    let scan = ask(&mut api, "tag.open", json!({"text": text}));
    assert_eq!((&scan["code"], &scan["judged"]), (&tag["code"], &Value::Null));
}

/// A figure of its maker's own stands over the tables': of a tag that nobody known vouches for none does.
#[test]
fn a_strangers_own_figures_are_left_out_of_what_is_checked_rebuilt_and_taken_in() {
    let bare = made(&mut begin().1).0["spec"].clone();
    let mut rated = bare.clone();
    rated["hose"]["min_bend_radius_mm"] = json!(20);
    rated["hose"]["vacuum_kpa_abs"] = json!(1);
    for end in 0..2 {
        rated["ends"][end]["rating_bar"] = json!(900);
        rated["ends"][end]["cutoff_mm"] = json!(3);
    }
    let (_a, mut stranger) = with_fleet("Somebody", 60);
    let tables = ask(&mut stranger, "check", question())["assembly_pressure_bar"].clone();
    for (whose, sealed) in [("foreign", true), ("unsealed", false)] {
        let (_b, mut api) = with_fleet("Northern vans", 0);
        let (tag, _) = made(&mut stranger);
        let text = written(&tag, |tag| {
            tag["spec"] = rated.clone();
            tag["pressure_bar"] = json!(900);
        });
        let mut content = tag::read(&text).expect("a tag");
        if sealed {
            tag::seal(&mut content, &FleetKey::from_bytes([9; 32]));
        }
        let text = tag::write(&content);
        let judged = open(&mut api, &text);
        assert_eq!((&judged["standing"], &judged["spec"]), (&json!(whose), &bare));
        let taken = ask(&mut api, "tag.adopt", json!({"text": text}));
        assert_eq!(taken["assembly"]["spec"], bare, "{whose}");
        assert_eq!(taken["assembly"]["pressure_bar"], tables, "{whose}: no more than the tables");
        assert_eq!(taken["assembly"]["taken_in"], "unknown");
        let notes = ask(&mut api, "register.show", json!({"code": tag["code"]}))["notes"].to_string();
        assert!(notes.contains("rated 900 bar") && notes.contains("cut-off 3 mm"), "{notes}");
        // Its own tag is no other hose for what was left out, and it stays the word of someone unknown.
        let again = open(&mut api, &text);
        assert!(
            codes(&again).contains(&"foreign-figures") && !codes(&again).contains(&"other-spec"),
            "{again}"
        );
        // An adapter of no rating is not known, whatever the tag says of it.
        let text = written(&made(&mut stranger).0, |tag| {
            tag["spec"]["adapters"] = json!([{"name": "test point", "rating_bar": 900}]);
        });
        let taken = ask(&mut api, "tag.adopt", json!({"text": text}));
        assert_eq!(taken["assembly"].get("pressure_bar"), None);
    }
    let (_c, mut api) = with_fleet("Northern vans", 0);
    let own =
        ask(&mut api, "tag.make", json!({"question": {"spec": rated, "service": question()["service"]}}));
    if let Some(text) = own["text"].as_str() {
        let taken = ask(&mut api, "tag.adopt", json!({"text": text}));
        assert_eq!(
            taken["assembly"]["spec"]["ends"][0]["rating_bar"], 900.0,
            "under the own seal they stand"
        );
    }
}

#[test]
fn a_fleets_seal_is_on_nothing_but_what_it_checked_and_what_it_has_on_record() {
    let (_a, mut stranger) = with_fleet("Somebody", 60);
    let (_b, mut api) = with_fleet("Northern vans", 0);
    let preview = |api: &mut Api, tag: &Value| {
        answer(api, "tag.preview", json!({"tag": tag, "stock": stock(), "as": "svg"}))
    };
    let (own, _) = made(&mut api);
    let drawn = preview(&mut api, &own).expect("drawn")["label"].clone();
    assert_eq!(drawn["sealed"], true, "what it has just checked");
    // What was typed, or read off another's tag.
    let mut typed = own.clone();
    typed["seal"] = Value::Null;
    typed["pressure_bar"] = json!(900);
    let drawn = preview(&mut api, &typed).expect("drawn")["label"].clone();
    assert_eq!(drawn["sealed"], false);
    assert!(!drawn["text"].as_str().expect("a text").contains("\nSEAL "), "{drawn}");
    typed["seal"] = own["seal"].clone();
    let error = preview(&mut api, &typed).expect_err("altered");
    assert!(error.message.contains("seal"), "{error}");
    let (foreign, text) = made(&mut stranger);
    let drawn = preview(&mut api, &foreign).expect("drawn")["label"].clone();
    assert_eq!((&drawn["sealed"], &drawn["text"]), (&json!(false), &json!(text)), "a copy stays a copy");
    // Taken in, it is no more ours than before.
    ask(&mut api, "tag.adopt", json!({"text": text}));
    let again = ask(&mut api, "tag.of", json!({"code": foreign["code"]}));
    assert!(!again["text"].as_str().expect("a text").contains("\nSEAL "), "{again}");
    let drawn = preview(&mut api, &again["tag"]).expect("drawn")["label"].clone();
    assert_eq!(drawn["sealed"], false);
    // On record the label is the record's, and nothing else can be had under its code.
    on_record(&mut api, &own, no_rig());
    let mut more = own.clone();
    more["pressure_bar"] = json!(900);
    assert!(preview(&mut api, &more).expect_err("more than on record").message.contains("record"));
    let mut other = own.clone();
    other["spec"]["overall_length_mm"] = json!(900);
    assert!(preview(&mut api, &other).expect_err("another hose").message.contains("record"));
    let drawn = preview(&mut api, &own).expect("drawn")["label"].clone();
    assert_eq!((&drawn["sealed"], &drawn["reprint"]), (&json!(true), &json!(false)));
}

/// A tag of a hose on record that says something else than the record: each is said, the dangerous ones stop.
#[rstest]
#[case("/pressure_bar", json!(400), "higher-pressure", "stop")]
#[case("/pressure_bar", json!(100), "other-figures", "caution")]
#[case("/proof", json!({"state": "proved", "pressure_bar": 600}), "other-proof", "caution")]
#[case("/fluid", json!("HFC"), "other-figures", "caution")]
#[case("/line", json!("suction"), "other-figures", "caution")]
#[case("/duties", json!([]), "other-figures", "caution")]
#[case("/duties", json!(["non-conductive", "antistatic"]), "other-figures", "caution")]
#[case("/assembled", json!("2030-01"), "other-figures", "caution")]
#[case("/spec/overall_length_mm", json!(900), "other-spec", "stop")]
fn what_was_forged_on_a_tag_of_a_hose_on_record_is_said(
    #[case] at: &str,
    #[case] forged: Value,
    #[case] code: &str,
    #[case] verdict: &str,
) {
    let (_folder, mut api) = begin();
    let (mut tag, _) = made(&mut api);
    let proof = json!({"state": "proved", "pressure_bar": 552.0, "hold_s": 60.0, "gauge": "G1"});
    tag["duties"] = json!(["non-conductive"]);
    tag["proof"] = json!({"state": "proved", "pressure_bar": 552.0});
    on_record(&mut api, &tag, proof);
    let right = open(&mut api, &written(&tag, |_| {}));
    assert_eq!((codes(&right), &right["verdict"]), (vec![], &json!("pass")), "as it stands on record");
    let text = written(&tag, |tag| *tag.pointer_mut(at).expect("a field") = forged);
    let judged = open(&mut api, &text);
    assert_eq!((codes(&judged), &judged["verdict"]), (vec![code], &json!(verdict)), "{text}");
}

#[test]
fn a_hose_that_the_fleet_made_under_the_seal_of_another_stops() {
    let (_a, mut api) = with_fleet("Northern vans", 0);
    let (tag, own) = made(&mut api);
    on_record(&mut api, &tag, no_rig());
    assert_eq!(codes(&open(&mut api, &own)), ["not-proved"]);
    let mut content: TagContent = serde_json::from_value(tag).expect("a tag");
    tag::seal(&mut content, &FleetKey::from_bytes([9; 32]));
    let judged = open(&mut api, &tag::write(&content));
    assert_eq!((codes(&judged)[0], &judged["verdict"]), ("other-seal", &json!("stop")));
}

#[test]
fn a_hose_with_an_adapter_reads_back_as_the_hose_on_record() {
    let (_folder, mut api) = with_fleet("Northern vans", 0);
    let mut asked = question();
    let side = |size: &str| json!({"family": "ORFS", "size": size, "gender": "male"});
    asked["spec"]["adapters"] = json!([{"name": "union", "rating_bar": 400,
        "between": {"role": "A", "hose_side": side("-10"), "machine_side": side("-10")}}]);
    let made = ask(&mut api, "tag.make", json!({"question": asked}));
    let text = made["text"].as_str().expect("a text");
    assert!(
        text.contains(
            "\nADAPTER union, rated 400 bar, at A, hose side ORFS -10, male, machine side ORFS -10, male\n"
        ),
        "{text}"
    );
    on_record(&mut api, &made["tag"], no_rig());
    assert_eq!(codes(&open(&mut api, text)), ["not-proved"]);
}

/// Whatever way the record of a build goes, its tag goes with it.
#[rstest]
#[case(true, "withdrawn")]
#[case(false, "undone")]
fn the_tag_of_a_build_that_was_undone_stops(#[case] undo: bool, #[case] code: &str) {
    let (_folder, mut api) = with_fleet("Northern vans", 0);
    let (tag, text) = made(&mut api);
    on_record(&mut api, &tag, no_rig());
    if undo {
        ask(&mut api, "bench.undo", json!({"code": tag["code"], "reason": "never made"}));
    } else {
        let version =
            ask(&mut api, "register.show", json!({"code": tag["code"]}))["assembly"]["version"].clone();
        let void = json!({"builds_on": [version], "body": {"kind": "voided", "reason": "never made"}});
        ask(&mut api, "register.record", json!({"events": [void]}));
    }
    let typed = ask(&mut api, "tag.open", json!({"code": tag["code"]}))["judged"].clone();
    for judged in [open(&mut api, &text), typed] {
        assert_eq!((codes(&judged)[0], &judged["verdict"]), (code, &json!("stop")), "{judged}");
        assert_eq!(judged["adopt"], false);
    }
    let claim = json!({"state": "proved", "pressure_bar": 600.0});
    refused(&mut api, "tag.make", json!({"question": question(), "code": tag["code"], "proof": claim}));
    refused(&mut api, "tag.adopt", json!({"text": text}));
    let label = json!({"tag": tag, "stock": stock(), "as": "png"});
    assert!(api.call("tag.label", label, &[]).is_err());
}

#[test]
fn a_tag_of_a_hose_on_record_has_the_records_date_or_none() {
    for assembled in [json!("2016-05-04"), Value::Null] {
        let (_folder, mut api) = begin();
        let (mut tag, _) = made(&mut api);
        tag["assembled"] = assembled.clone();
        on_record(&mut api, &tag, no_rig());
        let again = ask(&mut api, "tag.make", json!({"question": question(), "code": tag["code"]}));
        assert_eq!(again["tag"].get("assembled").cloned().unwrap_or_default(), assembled);
    }
}

#[rstest]
#[case(json!("ABR"), "failed-in-use", "stop")]
#[case(Value::Null, "taken-off", "caution")]
fn a_hose_that_came_off_is_said_and_stops_where_it_failed(
    #[case] cause: Value,
    #[case] code: &str,
    #[case] verdict: &str,
) {
    let (_folder, mut api) = begin();
    let (tag, text) = made(&mut api);
    on_record(&mut api, &tag, no_rig());
    record(&mut api, json!([fitted(&tag["code"])]));
    let off = json!({"kind": "taken-off", "code": tag["code"], "place": PLACE, "date": "2026-09-10", "hours": null, "cause": cause});
    record(&mut api, json!([off]));
    let judged = open(&mut api, &text);
    assert_eq!((codes(&judged)[0], &judged["verdict"]), (code, &json!(verdict)));
    assert!(judged["findings"][0]["why"].as_str().expect("words").contains("2026-09-10"), "{judged}");
}

#[test]
fn two_records_that_contradict_each_other_stop_and_get_no_label() {
    let (mut one, mut other) = (super::stock::device(2), super::stock::device(3));
    let (one, other) = (&mut one.api, &mut other.api);
    let (tag, text) = made(one);
    on_record(one, &tag, no_rig());
    let proved = json!({"state": "proved", "pressure_bar": 552.0, "hold_s": 60.0, "gauge": "G1"});
    on_record(other, &tag, proved);
    let Reply::File(bundle) = other.call("register.bundle", json!({}), &[]).expect("a bundle") else {
        panic!()
    };
    one.call("register.merge", json!({}), &bundle.bytes).expect("merged");
    let judged = open(one, &text);
    assert_eq!((codes(&judged)[0], &judged["verdict"]), ("contradicted", &json!("stop")), "{judged}");
    assert!(refused(one, "tag.of", json!({"code": tag["code"]})).contains("contradict"));
}

/// A label says REPRINT where there was a label before, and only there.
#[test]
fn the_first_label_of_a_recorded_hose_is_no_reprint() {
    let (_folder, mut api) = begin();
    let (tag, _) = made(&mut api);
    on_record(&mut api, &tag, no_rig());
    let of = json!({"code": tag["code"]});
    assert_eq!(
        ask(&mut api, "tag.of", of.clone())["reprint"],
        false,
        "recorded, checked here, and not labelled"
    );
    api.call("tag.label", json!({"tag": tag, "stock": stock(), "as": "png"}), &[]).expect("a label");
    assert_eq!(ask(&mut api, "tag.of", of)["reprint"], true);
}
