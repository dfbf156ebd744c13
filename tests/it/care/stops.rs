//! What must not run on is carried to wherever its hose, place, machine or site is listed.

use super::{Fleet, NEW, OLD, TODAY, fleet};
use serde_json::{Value, json};

/// The place of the second hose with what it asks.
fn asks(fleet: &Fleet, bar: f64) -> Value {
    json!({"kind": "place-set", "place": fleet.places[1], "machine": fleet.machine, "number": 2, "name": "boom",
           "line": "cylinder", "service": {"working_pressure_bar": bar}})
}

/// What stops, as each list has it: the hoses of what falls due, of the machine and of the place, and how many are counted
/// of the machine and on the site.
#[track_caller]
fn stopped(fleet: &mut Fleet) -> (Vec<String>, u64) {
    let codes = |lines: &Value| -> Vec<String> {
        let lines = lines.as_array().expect("a list").iter();
        lines.map(|line| line["code"].as_str().expect("a code").to_owned()).collect()
    };
    let (machine, places) = (fleet.machine.clone(), fleet.places.clone());
    let listed = fleet.get("register.due", json!({"stopped": true, "glance": true}));
    let of_machine = fleet.get("register.machine", json!({"machine": machine}))["stopped_by"].clone();
    let of_places: Vec<String> = places
        .iter()
        .flat_map(|place| codes(&fleet.get("register.place", json!({"place": place}))["stopped_by"]))
        .collect();
    let overview = fleet.get("register.overview", json!({}));
    let machine = machine.as_str().expect("an id");
    let count = overview["overdue"]["stopped"][machine].as_u64().unwrap_or(0);
    let mut stops = codes(&listed["due"]);
    assert_eq!(listed["glance"]["counts"]["stopped"], stops.len(), "the count is that of the list");
    assert_eq!(listed["glance"]["sites"][0]["stopped"], stops.len(), "and that of the site");
    assert_eq!(codes(&of_machine), stops, "and the machine's");
    stops.sort();
    let mut at_places = of_places;
    at_places.sort();
    assert_eq!(at_places, stops, "and the places'");
    let shown: Vec<String> = [NEW, OLD]
        .into_iter()
        .filter(|code| {
            let due = fleet.get("register.show", json!({"code": code}))["due"].clone();
            due.as_array().expect("a list").iter().any(|line| line["verdict"] == "stop")
        })
        .map(str::to_owned)
        .collect();
    stops.dedup();
    assert_eq!(shown, stops, "and what a hose shows");
    assert_eq!(count, u64::try_from(stops.len()).expect("fits"), "each hose is counted once");
    (stops, count)
}

#[test]
fn a_stop_stands_on_the_hose_the_place_the_machine_the_site_and_in_the_list_whatever_it_comes_from() {
    let mut fleet = fleet();
    assert_eq!(stopped(&mut fleet), (vec![], 0));
    // An inspection.
    fleet.record([json!({"kind": "inspected", "code": NEW, "date": "2026-04-01",
        "findings": [{"sign": "ABR-WIRE", "grade": "stop"}]})]);
    assert_eq!(stopped(&mut fleet), (vec![NEW.to_owned()], 1));
    // A rule of the owner's, for the other hose.
    fleet.record([json!({"kind": "policy-set", "scope": "fleet", "service_years": 5.0, "stop": true})]);
    assert_eq!(stopped(&mut fleet), (vec![NEW.to_owned(), OLD.to_owned()], 2));
    // What the place asks: a second reason, of a hose that is counted already.
    let body = asks(&fleet, 420.0);
    fleet.record([body]);
    let list = fleet.due(json!({"stopped": true}));
    let what: Vec<&str> = list.iter().map(|line| line["what"].as_str().expect("what")).collect();
    assert_eq!(what.len(), 3, "{what:?}");
    let overview = fleet.get("register.overview", json!({}));
    assert_eq!(overview["overdue"]["hoses"], 2, "two hoses, however many reasons");
}

#[test]
fn what_a_place_asks_too_much_stops_with_the_figures_until_the_place_asks_less() {
    let mut fleet = fleet();
    assert_eq!(fleet.of(NEW, "asked"), Value::Null);
    let (much, less) = (asks(&fleet, 420.0), asks(&fleet, 100.0));
    fleet.record([much]);
    assert_eq!(stopped(&mut fleet), (vec![NEW.to_owned()], 1));
    let line = fleet.of(NEW, "asked");
    assert_eq!((&line["verdict"], &line["asked"]["rule"]), (&json!("stop"), &json!("pressure")));
    assert_eq!(line["asked"]["value"], 420.0, "{}", line["asked"]);
    assert!(line["asked"]["why"].as_str().is_some_and(|why| why.contains("420")), "{}", line["asked"]);
    let again = fleet.due(json!({}));
    fleet.get("register.rebuild", json!({}));
    assert_eq!(fleet.due(json!({})), again, "a rebuild gives the same");
    fleet.record([less]);
    assert_eq!(fleet.of(NEW, "asked"), Value::Null);
}

#[test]
fn a_relief_setting_that_is_raised_stops_the_hoses_of_its_circuit() {
    let mut fleet = fleet();
    let (machine, place) = (fleet.machine.clone(), fleet.places[0].clone());
    let circuit = fleet.get("register.place", json!({"place": place}))["circuit"]["circuit"].clone();
    let set = |bar: f64| json!({"kind": "circuit-set", "circuit": circuit, "machine": machine, "name": "boom", "relief_bar": bar});
    fleet.record([set(600.0)]);
    assert_eq!(stopped(&mut fleet).0, [NEW, OLD]);
    fleet.record([set(150.0)]);
    assert_eq!(stopped(&mut fleet).0, Vec::<String>::new());
}

#[test]
fn what_must_not_run_on_stands_first_by_day_and_by_risk_page_by_page() {
    let mut fleet = fleet();
    let body = asks(&fleet, 420.0);
    fleet.record([body]);
    for by in ["date", "risk"] {
        let whole = fleet.due(json!({"by": by}));
        assert_eq!((&whole[0]["what"], &whole[0]["verdict"]), (&json!("asked"), &json!("stop")), "{by}");
        assert!(whole[1..].iter().all(|line| line["verdict"] != "stop"), "{by}");
        let pages: Vec<Value> =
            (0..whole.len()).flat_map(|at| fleet.due(json!({"by": by, "offset": at, "limit": 1}))).collect();
        assert_eq!(pages, whole, "{by}");
    }
}

#[test]
fn a_rule_longer_than_the_guide_says_what_leaves_the_list_and_counts_what_it_speaks_of() {
    let mut fleet = fleet();
    let tried = |fleet: &mut Fleet, years: f64, stop: bool| {
        let policy = json!({"scope": "fleet", "service_years": years, "stop": stop});
        fleet.get("policy.try", json!({"policy": policy, "on": TODAY}))
    };
    let longer = tried(&mut fleet, 9.0, false);
    assert_eq!(longer["what"], json!(["service"]), "inspections are not counted");
    assert_eq!((&longer["before"]["past"], &longer["after"]["past"]), (&json!(1), &json!(0)));
    assert_eq!(
        (&longer["put_off"], &longer["past_guide"], &longer["moved"]),
        (&json!(1), &json!(2), &json!(2))
    );
    let same = tried(&mut fleet, 6.0, true);
    assert_eq!((&same["moved"], &same["changed"]), (&json!(0), &json!(1)), "a verdict is no day");
    assert_eq!((&same["put_off"], &same["past_guide"]), (&json!(0), &json!(0)));
    assert_eq!(same["machines_stopped"], 1);
}
