//! The visits of a day: what falls due there, against the van, and what is to be loaded.

use super::stock::{Device, device, ferrule, hose, make, orfs};
use serde_json::{Value, json};

fn id(van: &mut Device) -> Value {
    van.get("register.id", json!({}))["id"].clone()
}

/// A machine with two places: one hose from 2019, one from 2026.
fn machine(van: &mut Device) -> (Value, [Value; 2]) {
    let (site, machine) = (id(van), id(van));
    let places = [id(van), id(van)];
    let question = make()["question"].clone();
    let mut events = vec![
        json!({"kind": "site-named", "site": site, "name": "North pit"}),
        json!({"kind": "machine-set", "machine": machine, "site": site, "name": "Loader 2", "sort": "loader"}),
    ];
    for (at, (place, day)) in places.iter().zip(["2019-03-01", "2026-03-01"]).enumerate() {
        let code = ["7KQ4M-2XR9D-D", "3292T-Z4PCD-Q"][at];
        events.push(json!({"kind": "place-set", "place": place, "machine": machine, "number": at + 1, "name": "boom", "line": "pressure",
            "service": question["service"]}));
        events.push(json!({"kind": "assembly-made", "code": code, "spec": question["spec"], "service": question["service"],
            "assembled": day, "proof": {"state": "not-proved", "why": "no-rig"}, "catalogue": "5f0c1d2e", "program": "test",
            "bench": {"settings": make()["settings"]}}));
        events.push(json!({"kind": "fitted", "code": code, "place": place, "date": day}));
    }
    let events: Vec<Value> = events.into_iter().map(|body| json!({"body": body})).collect();
    van.get("register.record", json!({"events": events}));
    (machine, places)
}

fn van() -> Device {
    let mut van = device(1);
    van.change(json!([
        {"do": "load-hose", "store": "Van 2", "hose": hose(), "sort": "reel", "length_mm": 9000},
        {"do": "load", "store": "Van 2", "item": orfs(Some("S1")), "count": 1},
        {"do": "load", "store": "Shop", "item": orfs(Some("S1")), "count": 20},
        {"do": "load", "store": "Van 2", "item": ferrule(), "count": 9},
    ]));
    van
}

#[test]
fn what_is_due_on_the_machines_of_the_day_is_held_against_the_van() {
    let mut van = van();
    let (machine, _) = machine(&mut van);
    let round = van.get("round", json!({"on": "2026-09-21", "machines": [machine], "store": "Van 2"}));
    let visit = &round["visits"][0];
    assert_eq!((&visit["site"], &visit["machine"]), (&json!("North pit"), &json!("Loader 2")));
    // Six years of service life from the day of assembly (DIN 20066, DGUV Regel 113-020).
    assert_eq!(
        (visit["places"].as_array().map(Vec::len), &visit["places"][0]["due"]),
        (Some(1), &json!("2025-03-01"))
    );
    assert_eq!(visit["places"][0]["hose"], "EN 853 2SN DN16");
    let load = round["load"].as_array().expect("a list");
    assert_eq!(load.len(), 1, "{round}");
    assert_eq!(
        (&load[0]["missing"], &load[0]["from"]),
        (&json!("1"), &json!([{"store": "Shop", "quantity": 20}]))
    );
    let ahead = van.get(
        "round",
        json!({"on": "2026-09-21", "machines": [machine], "within_days": 3000, "store": "Van 2"}),
    );
    assert_eq!(ahead["load"][0]["missing"], "3", "four ends wanted, one there");
}

#[test]
fn a_place_that_is_named_is_visited_once_due_or_not() {
    let mut van = van();
    let (machine, places) = machine(&mut van);
    let asked = json!({"on": "2026-09-21", "machines": [machine], "places": places, "store": "Van 2"});
    let round = van.get("round", asked);
    let visited: Vec<_> = round["visits"][0]["places"]
        .as_array()
        .expect("places")
        .iter()
        .map(|place| place["place"].clone())
        .collect();
    assert_eq!(visited, places);
    assert_eq!(round["cuts"][0]["steps"][0]["cuts"].as_array().map(Vec::len), Some(2));
}

#[test]
fn a_place_of_which_nobody_knows_the_hose_is_said_and_the_round_goes_on() {
    let mut van = van();
    let (machine, places) = machine(&mut van);
    let bare = id(&mut van);
    van.get("register.record", json!({"events": [{"body": {"kind": "place-set", "place": bare, "machine": machine, "number": 9, "name": "tilt"}}]}));
    let round = van.get("round", json!({"on": "2026-09-21", "places": [bare, places[0]], "store": "Van 2"}));
    let places = round["visits"][0]["places"].as_array().expect("places");
    assert_eq!(places.len(), 2);
    assert!(places[1]["why_not"].as_str().is_some_and(|why| why.contains("not known")), "{round}");
    let said = |code: &str| round["said"].as_array().expect("a list").iter().any(|said| said["code"] == code);
    assert_eq!(
        (&round["parts"][0]["wanted"], said("kerf-not-known"), said("hose-age-not-known")),
        (&json!(1177), true, true)
    );
    assert!(van.ask("round", json!({"machines": ["00".repeat(16)], "store": "Van 2"})).is_err());
}

#[test]
fn a_hose_whose_cut_offs_nobody_knows_is_loaded_by_its_finished_length_and_not_cut() {
    let mut van = van();
    let (machine, _) = machine(&mut van);
    let place = id(&mut van);
    let mut spec = make()["question"]["spec"].clone();
    for end in spec["ends"].as_array_mut().expect("ends") {
        end.as_object_mut().expect("an end").remove("cutoff_mm");
    }
    let body = json!({"kind": "place-set", "place": place, "machine": machine, "number": 9, "name": "tilt", "spec": spec,
        "service": make()["question"]["service"]});
    van.get("register.record", json!({"events": [{"body": body}]}));
    let round = van.get("round", json!({"places": [place], "store": "Van 2"}));
    assert_eq!((&round["parts"][0]["wanted"], &round["parts"][0]["state"]), (&json!(1240), &json!("there")));
    assert_eq!(round["cuts"][0]["steps"], json!([]), "nothing is cut by a length that is not the one to cut");
    assert!(round["said"].to_string().contains("overall-taken"), "{round}");
}

/// The hose of the first place came off, for that cause and on that day.
fn failed(van: &mut Device, place: &Value, code: &str, date: &str) {
    let off = json!({"kind": "taken-off", "code": code, "place": place, "date": date, "cause": "kinked"});
    van.get("register.record", json!({"events": [{"body": off}]}));
}

#[test]
fn where_hoses_failed_more_than_once_nothing_is_loaded_before_the_cause_is_known() {
    let mut van = van();
    let (_, places) = machine(&mut van);
    failed(&mut van, &places[0], "7KQ4M-2XR9D-D", "2026-03-01");
    let asked = json!({"on": "2026-09-21", "places": [places[0]], "store": "Van 2"});
    let once = van.get("round", asked.clone());
    assert_eq!(
        once["visits"][0]["places"][0]["why_not"],
        Value::Null,
        "the last that sat there is made again: {once}"
    );
    let fitted = json!({"kind": "fitted", "code": "7KQ4M-2XR9D-D", "place": places[0], "date": "2026-03-02"});
    van.get("register.record", json!({"events": [{"body": fitted}]}));
    failed(&mut van, &places[0], "7KQ4M-2XR9D-D", "2026-04-01");
    let twice = van.get("round", asked);
    let why = twice["visits"][0]["places"][0]["why_not"].as_str().expect("a reason");
    assert!(why.contains("2 hoses failed here"), "{why}");
    assert_eq!(twice["parts"], json!([]), "{twice}");
    let place = van.get("register.place", json!({"place": places[0]}));
    assert_eq!(place["again"]["why_not"], why, "the place says the same");
}

#[test]
fn a_duty_that_the_old_hose_was_made_for_is_kept() {
    let mut van = van();
    let (_, places) = machine(&mut van);
    let place = van.get("register.place", json!({"place": places[0]}));
    let hose = van.get("register.show", json!({"code": place["again"]["replaces"]}));
    let mut made = hose["assembly"]["record"].clone();
    if made.is_null() {
        made = hose["assembly"].clone();
    }
    made["service"]["duties"] = json!(["non-conductive"]);
    made["service"]["fluid"] = json!("HFC");
    made["kind"] = json!("assembly-made");
    let builds_on = hose["assembly"]["version"].clone();
    van.get("register.record", json!({"events": [{"body": made, "builds_on": [builds_on]}]}));
    let again = van.get("register.place", json!({"place": places[0]}))["again"].clone();
    assert_eq!(again["service"]["duties"], json!(["non-conductive"]), "{again}");
    assert_eq!(
        again["service"]["fluid"],
        make()["question"]["service"]["fluid"],
        "what is known of the place stands over what the old hose was checked for"
    );
    assert_eq!(again["settings"].as_array().map(Vec::len), Some(2), "its crimps are known");
}
