//! Who belongs to a fleet, over a storage: what waits for the office's nod, what a lost van may still send, and what is
//! refused and why.

use super::{Vans, answer, ask, join, series};
use hosewright_core::fleet::{DeviceKey, FleetKey};
use hosewright_core::record::{Event, EventRef};
use hosewright_exchange::Segment;
use serde_json::{Value, json};

fn sites(vans: &mut Vans, van: usize) -> String {
    ask(&mut vans.vans[van].api, "register.overview", json!({}))["sites"].to_string()
}

fn all_exchange(vans: &mut Vans, order: &[usize]) {
    for van in order {
        vans.exchange(*van);
    }
}

fn standing(vans: &mut Vans, van: usize) -> Value {
    ask(&mut vans.vans[van].api, "share.show", json!({}))["standing"].clone()
}

fn left_out(vans: &mut Vans, van: usize) -> Value {
    ask(&mut vans.vans[van].api, "share.show", json!({}))["left_out"].clone()
}

#[test]
fn what_a_van_writes_waits_for_the_offices_nod_and_counts_with_it() {
    let mut vans = Vans::founded(2);
    vans.vans[0].wrong.store(false, std::sync::atomic::Ordering::Relaxed);
    vans.add(3);
    assert_eq!((standing(&mut vans, 0), standing(&mut vans, 1)), (json!("founder"), json!("technician")));
    assert_eq!(standing(&mut vans, 2), json!("waits"));
    vans.site(2, "Written while it waits");
    vans.site(0, "Of the office");
    all_exchange(&mut vans, &[0, 2, 0, 1, 2]);
    assert!(sites(&mut vans, 2).contains("Written while it waits"), "on itself it counts");
    assert!(sites(&mut vans, 2).contains("Of the office"), "it can read");
    let id = vans.id(2);
    for van in 0..2 {
        assert!(!sites(&mut vans, van).contains("Written while it waits"));
        assert_eq!(
            left_out(&mut vans, van),
            json!([{"device": id, "name": null, "why": "waits", "count": 1}])
        );
    }
    let list = ask(&mut vans.vans[0].api, "share.left-out", json!({"device": id}));
    assert_eq!(list["events"][0]["about"]["name"], "Written while it waits");
    assert_eq!(list["events"][0]["why"], "waits");
    let known = ask(&mut vans.vans[0].api, "fleet.show", json!({}));
    let waits = known["others"].as_array().expect("a list").iter().find(|other| other["device"] == json!(id));
    let mark = ask(&mut vans.vans[2].api, "fleet.show", json!({}))["device"]["mark"].clone();
    assert_eq!(waits.map(|waits| (&waits["mark"], &waits["standing"])), Some((&mark, &json!("waits"))));
    vans.admit(0, 2, "technician");
    all_exchange(&mut vans, &[0, 1, 2]);
    for van in 0..3 {
        assert!(sites(&mut vans, van).contains("Written while it waits"), "van {van}");
        assert_eq!(left_out(&mut vans, van), json!([]));
    }
    let dumps = vans.dumps();
    assert!(dumps.iter().all(|dump| *dump == dumps[0]));
}

#[test]
fn what_a_lost_van_signs_later_counts_nowhere_also_where_it_had_come_before() {
    let mut vans = Vans::founded(3);
    vans.site(2, "Before it was lost");
    all_exchange(&mut vans, &[2, 0, 1]);
    // Whoever found it goes on; one van hears of that before it hears of the withdrawal.
    let lost = vans.id(2);
    ask(&mut vans.vans[0].api, "fleet.withdraw", json!({"device": lost}));
    vans.site(2, "By whoever found it");
    all_exchange(&mut vans, &[2, 1]);
    assert!(sites(&mut vans, 1).contains("By whoever found it"), "nobody has told it yet");
    let told = vans.exchange(0);
    let why = told["refused"][0]["why"].as_str().unwrap_or_default();
    assert!(why.contains("after the device was withdrawn"), "{told}");
    vans.exchange(1);
    for van in 0..2 {
        let shown = sites(&mut vans, van);
        assert!(shown.contains("Before it was lost") && !shown.contains("By whoever found it"), "{shown}");
        let left_out = left_out(&mut vans, van);
        assert_eq!((&left_out[0]["why"], &left_out[0]["count"]), (&json!("withdrawn"), &json!(1)));
    }
    let dumps = vans.dumps();
    assert_eq!(dumps[0], dumps[1]);
    // Its own program, where it hears of it, says so and writes no more.
    vans.exchange(2);
    assert_eq!(standing(&mut vans, 2), json!("withdrawn"));
    let id = ask(&mut vans.vans[2].api, "register.id", json!({}))["id"].clone();
    let site = json!({"events": [{"body": {"kind": "site-named", "site": id, "name": "More"}}]});
    let error = answer(&mut vans.vans[2].api, "register.record", site).expect_err("it is withdrawn");
    assert!(error.message.contains("was withdrawn from its fleet"), "{error}");
    let error = answer(&mut vans.vans[0].api, "fleet.admit", json!({"device": lost, "role": "technician"}))
        .expect_err("it does not come back");
    assert!(error.message.contains("does not come back"), "{error}");
}

/// A file in the storage that some program of ours would not have made.
fn leave(vans: &Vans, events: &[Event], by: &DeviceKey) {
    let keys = std::fs::read_to_string(format!("{}.keys", vans.vans[0].path.display())).expect("reads");
    let keys: Value = serde_json::from_str(&keys).expect("JSON");
    let fleet: [u8; 32] = serde_json::from_value(keys["fleets"][0]["key"].clone()).expect("a key");
    let file = Segment::write(events, by, Some(&FleetKey::from_bytes(fleet))).expect("writes");
    let path = vans.storage().join(Segment::name(events, &file).expect("a name").to_string());
    std::fs::create_dir_all(path.parent().expect("a folder")).expect("made");
    std::fs::write(path, file).expect("written");
}

/// The key by which that van signs.
fn key(vans: &Vans, van: usize) -> DeviceKey {
    let keys = std::fs::read_to_string(format!("{}.keys", vans.vans[van].path.display())).expect("reads");
    let keys: Value = serde_json::from_str(&keys).expect("JSON");
    DeviceKey::from_bytes(serde_json::from_value(keys["device"].clone()).expect("a key"))
}

/// What the series of a van would go on with.
fn next(vans: &Vans, van: usize, text: &str) -> Event {
    let device = vans.id(van);
    let register = vans.register(van);
    let number = register.ends().expect("reads")[&device];
    let last = register.series(device, number..=number).expect("reads").remove(0);
    let remark = series(&[text.to_owned()]).remove(0);
    Event { device, number: number + 1, previous: last.hash().expect("hashes"), time: last.time, ..remark }
}

#[test]
fn a_member_does_not_write_in_the_series_of_another_nor_does_a_stranger() {
    let mut vans = Vans::founded(3);
    let forged = next(&vans, 0, "never said by the office");
    let stranger = DeviceKey::from_bytes([9; 32]);
    for by in [key(&vans, 2), stranger] {
        leave(&vans, std::slice::from_ref(&forged), &by);
        let before = vans.dumps();
        let told = vans.exchange(1);
        let why = told["refused"][0]["why"].as_str().unwrap_or_default();
        assert!(why.contains("signed by another device than the one that wrote it"), "{told}");
        assert_eq!((&told["came"], vans.dumps()), (&json!(0), before));
    }
    // A planner's device sends it for one that can not any more.
    leave(&vans, std::slice::from_ref(&next(&vans, 2, "sent for it")), &key(&vans, 0));
    let told = vans.exchange(1);
    assert_eq!((&told["came"], told["refused"].as_array().map(Vec::len)), (&json!(1), Some(1)), "{told}");
}

#[test]
fn whoever_knows_the_fleets_key_and_no_more_makes_no_member() {
    let mut vans = Vans::founded(2);
    // A stranger tells a key for the id of a member, and for one of its own.
    let stranger = DeviceKey::from_bytes([9; 32]);
    let own = series(&["a".to_owned()]).remove(0);
    for event in [next(&vans, 1, "a"), own] {
        let told = hosewright_core::record::DeviceKeyTold::of(event.device, &stranger);
        let body = hosewright_core::record::Body::DeviceKey(told);
        let body = hosewright_core::record::BodyText::of(&body).expect("writes");
        leave(&vans, &[Event { body, ..event }], &stranger);
    }
    let told = vans.exchange(0);
    assert_eq!(told["came"], json!(1), "its own series waits: {told}");
    assert!(told["refused"].to_string().contains("signed by another device"), "{told}");
    let known = ask(&mut vans.vans[0].api, "fleet.show", json!({}))["others"].clone();
    let standings: Vec<&Value> = known.as_array().expect("a list").iter().map(|o| &o["standing"]).collect();
    assert!(standings.contains(&&json!("waits")) && standings.contains(&&json!("technician")), "{known}");
}

#[test]
fn a_fleet_that_is_open_says_so_until_it_is_founded() {
    let mut vans = Vans::new(3);
    vans.site(1, "Of the first van");
    vans.site(2, "Of the second van");
    all_exchange(&mut vans, &[0, 1, 2, 0, 1, 2]);
    assert_eq!(standing(&mut vans, 0), json!("open"));
    let seen = |vans: &mut Vans| {
        let text = ask(&mut vans.vans[0].api, "fleet.hand-on", json!({}))["text"].clone();
        ask(&mut vans.vans[1].api, "fleet.look", json!({"text": text}))["founder"].clone()
    };
    vans.vans.iter().for_each(|van| van.wrong.store(false, std::sync::atomic::Ordering::Relaxed));
    assert_eq!(seen(&mut vans), Value::Null);
    let id = vans.id(1);
    let error = answer(&mut vans.vans[0].api, "fleet.withdraw", json!({"device": id})).expect_err("is open");
    assert!(error.message.contains("open"), "{error}");
    let before = sites(&mut vans, 0);
    let founded = ask(&mut vans.vans[0].api, "fleet.found", json!({}));
    assert_eq!((&founded["standing"], &founded["founder"]), (&json!("founder"), &founded["device"]["mark"]));
    assert_eq!(sites(&mut vans, 0), before, "what counted goes on counting");
    assert_eq!(seen(&mut vans), founded["founder"]);
    let error = answer(&mut vans.vans[0].api, "fleet.found", json!({})).expect_err("once");
    assert!(error.message.contains("a founder already"), "{error}");
    vans.exchange(0);
    // The others go on as before, until they read the key once more.
    vans.exchange(1);
    assert_eq!(standing(&mut vans, 1), json!("open"));
    for van in 1..3 {
        let (first, rest) = vans.vans.split_at_mut(1);
        join(&mut rest[van - 1].api, &mut first[0].api);
        vans.exchange(van);
        assert_eq!(standing(&mut vans, van), json!("technician"));
    }
    let dumps = vans.dumps();
    assert!(dumps.iter().all(|dump| *dump == dumps[0]));
    assert!(dumps[0].contains("Of the first van") && dumps[0].contains("Of the second van"));
}

#[test]
fn where_the_founder_is_lost_another_begins_the_fleet_anew_and_nothing_is_lost() {
    let mut vans = Vans::founded(3);
    vans.admit(0, 1, "planner");
    vans.site(0, "Of the founder");
    vans.site(2, "Of the other van");
    let fleet = json!({"kind": "policy-set", "scope": "fleet", "service_years": 6.0, "stop": true});
    ask(&mut vans.vans[0].api, "register.record", json!({"events": [{"body": fleet}]}));
    all_exchange(&mut vans, &[0, 2, 1]);
    let founder = vans.id(0);
    let error =
        answer(&mut vans.vans[1].api, "fleet.withdraw", json!({"device": founder})).expect_err("before it");
    assert!(error.message.contains("begin the fleet anew"), "{error}");
    let (before, due) = (sites(&mut vans, 1), ask(&mut vans.vans[1].api, "policy.list", json!({})));
    let mark = ask(&mut vans.vans[1].api, "fleet.show", json!({}))["own"]["mark"].clone();
    ask(&mut vans.vans[1].api, "fleet.leave", json!({"mark": mark}));
    ask(&mut vans.vans[1].api, "fleet.begin", json!({"name": "Vans again"}));
    assert_eq!(standing(&mut vans, 1), json!("founder"));
    assert_eq!(sites(&mut vans, 1), before);
    let now = ask(&mut vans.vans[1].api, "policy.list", json!({}));
    assert_eq!(
        now.to_string().matches("service_years").count(),
        due.to_string().matches("service_years").count()
    );
    ask(&mut vans.vans[1].api, "fleet.withdraw", json!({"device": founder}));
    assert_eq!(sites(&mut vans, 1), before, "what it wrote stays");
    let at = EventRef { device: founder, number: 99 };
    let members = vans.register(1).membership().expect("reads");
    assert!(members.judge(at, None).is_err());
}
