//! The care of a fleet: rules over guides, what an inspection does, hours, risk, surveys, and what rests on the tables.

mod stops;

use super::settings::{answer, api};
use hosewright_api::commands::Reply;
use hosewright_api::{Api, Code};
use serde_json::{Value, json};
use tempfile::TempDir;

const OLD: &str = "7KQ4M-2XR9D-D";
const NEW: &str = "3292T-Z4PCD-Q";
const TODAY: &str = "2026-09-21";

/// A register with a machine of two places on a circuit: one hose of 2019, one of 2026.
struct Fleet {
    _folder: TempDir,
    api: Api,
    site: Value,
    machine: Value,
    places: [Value; 2],
}

impl Fleet {
    fn get(&mut self, name: &str, question: Value) -> Value {
        answer(&mut self.api, name, question).expect("an answer")
    }

    fn record(&mut self, bodies: impl IntoIterator<Item = Value>) -> Value {
        let events: Vec<Value> = bodies.into_iter().map(|body| json!({"body": body})).collect();
        self.get("register.record", json!({"events": events}))
    }

    fn due(&mut self, question: Value) -> Vec<Value> {
        let mut asked = json!({"on": TODAY});
        asked.as_object_mut().expect("an object").extend(question.as_object().expect("an object").clone());
        self.get("register.due", asked)["due"].as_array().expect("a list").clone()
    }

    /// What falls due of a hose, of one kind.
    fn of(&mut self, code: &str, what: &str) -> Value {
        let due = self.due(json!({"code": code, "what": [what]}));
        due.into_iter().next().unwrap_or(Value::Null)
    }

    fn file(&mut self, name: &str, question: Value) -> Vec<u8> {
        match self.api.call(name, question, &[]).expect("a file") {
            Reply::File(file) => file.bytes,
            Reply::Document(other) => panic!("{name} answered with {other}"),
        }
    }
}

fn spec() -> Value {
    json!({"hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
           "ends": [{"role": "A", "family": "JIC 37 flare", "size": "-10"}, {"role": "B", "family": "ORFS", "size": "-10"}],
           "overall_length_mm": 1240})
}

fn fleet() -> Fleet {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = api();
    api.open(&folder.path().join("register.db")).expect("the register opens");
    let mut id = || answer(&mut api, "register.id", json!({})).expect("an id")["id"].clone();
    let (site, machine, circuit, places) = (id(), id(), id(), [id(), id()]);
    let mut fleet = Fleet { _folder: folder, api, site, machine, places };
    let (site, machine, places) = (fleet.site.clone(), fleet.machine.clone(), fleet.places.clone());
    let catalogue = fleet.get("tables", json!({}))["catalogue"].clone();
    let mut bodies = vec![
        json!({"kind": "site-named", "site": site, "name": "North pit"}),
        json!({"kind": "machine-set", "machine": machine, "site": site, "name": "Loader 2", "sort": "loader"}),
        json!({"kind": "circuit-set", "circuit": circuit, "machine": machine, "name": "boom", "relief_bar": 150}),
    ];
    for (at, (place, (code, day))) in
        places.iter().zip([(OLD, "2019-03-01"), (NEW, "2026-03-01")]).enumerate()
    {
        bodies.push(
            json!({"kind": "place-set", "place": place, "machine": machine, "number": at + 1, "name": "boom",
            "line": "cylinder", "circuit": circuit}),
        );
        bodies.push(json!({"kind": "assembly-made", "code": code, "spec": spec(), "assembled": day,
            "proof": {"state": "not-proved", "why": "no-rig"}, "catalogue": catalogue, "program": "test"}));
        bodies.push(json!({"kind": "fitted", "code": code, "place": place, "date": day, "hours": 1000.0}));
    }
    fleet.record(bodies);
    fleet
}

#[test]
fn the_narrowest_rule_holds_says_why_and_names_its_source() {
    let mut fleet = fleet();
    let guide = fleet.of(NEW, "service");
    assert_eq!((&guide["rule"]["whose"], &guide["rule"]["id"]), (&json!("guide"), &json!("L055")));
    assert!(!guide["rule"]["source"].as_str().expect("a source").is_empty(), "{guide}");
    let (machine, site) = (fleet.machine.clone(), fleet.site.clone());
    fleet.record([
        json!({"kind": "policy-set", "scope": "fleet", "service_years": 5.0, "stop": true}),
        json!({"kind": "policy-set", "scope": "fleet", "of": {"line": "cylinder"}, "service_years": 4.0, "stop": true}),
        json!({"kind": "policy-set", "scope": {"site": site}, "of": {"line": "suction"}, "service_years": 1.0}),
    ]);
    let by_line = fleet.of(NEW, "service");
    assert_eq!(
        (&by_line["due"], &by_line["rule"]["of"]),
        (&json!("2030-03-01"), &json!({"line": "cylinder"}))
    );
    assert_eq!(fleet.of(OLD, "service")["verdict"], "stop");
    fleet.record([json!({"kind": "policy-set", "scope": {"machine": machine}, "service_years": 8.0})]);
    let by_machine = fleet.of(OLD, "service");
    assert_eq!((&by_machine["due"], &by_machine["guide_day"]), (&json!("2027-03-01"), &json!("2025-03-01")));
    assert_eq!(by_machine["verdict"], "caution", "the guide is crossed, whatever the owner allows");
    let why = by_machine["rule"]["why"].as_str().expect("words");
    assert!(why.contains("this machine"), "{why}");
    let at = fleet.get("policy.at", json!({"machine": fleet.machine.clone(), "line": "cylinder"}));
    let over: Vec<_> =
        at["service"]["over"].as_array().expect("a list").iter().map(|held| &held["limit"]).collect();
    assert_eq!(over, [&json!(4.0), &json!(5.0)]);
}

#[test]
fn a_rule_is_tried_before_it_is_kept_and_then_does_just_that() {
    let mut fleet = fleet();
    let policy = json!({"scope": "fleet", "service_years": 0.25, "stop": true});
    let tried = fleet.get("policy.try", json!({"policy": policy, "on": TODAY}));
    assert_eq!((&tried["hoses"], &tried["moved"]), (&json!(2), &json!(2)));
    assert_eq!((&tried["before"]["stopped"], &tried["after"]["stopped"]), (&json!(0), &json!(2)));
    assert_eq!(tried["machines_stopped"], 1);
    assert_eq!(fleet.get("policy.list", json!({}))["policies"], json!([]), "trying writes nothing");
    let mut body = policy;
    body["kind"] = json!("policy-set");
    fleet.record([body]);
    for row in tried["rows"].as_array().expect("rows") {
        let now = fleet.of(row["code"].as_str().expect("a code"), "service");
        assert_eq!((&now["due"], &now["verdict"]), (&row["due_after"], &row["verdict_after"]));
    }
    let kept = fleet.get("policy.list", json!({}));
    assert_eq!(kept["policies"][0]["policy"]["service_years"], 0.25);
    let wrong = json!({"policy": {"scope": "fleet", "service_years": -1.0}});
    let refused = answer(&mut fleet.api, "policy.try", wrong).expect_err("no such age");
    assert!(refused.message.contains("service_years"), "{}", refused.message);
}

#[test]
fn hours_count_by_the_machines_own_rate_of_use() {
    let mut fleet = fleet();
    let machine = fleet.machine.clone();
    fleet.record([
        json!({"kind": "policy-set", "scope": {"machine": machine}, "service_hours": 500.0, "stop": true}),
        json!({"kind": "hours-read", "machine": machine, "date": "2026-06-09", "hours": 1200.0}),
    ]);
    // 200 h in 100 days: 2 h a day; 300 h are left, 150 days after the reading.
    let due = fleet.of(NEW, "service");
    assert_eq!((&due["by"], &due["due"]), (&json!("hours"), &json!("2026-11-06")));
    assert_eq!((&due["hours"]["run"], &due["hours"]["per_day"]), (&json!(200.0), &json!(2.0)));
    fleet.record([json!({"kind": "hours-read", "machine": machine, "date": "2026-09-17", "hours": 1600.0})]);
    let past = fleet.of(NEW, "service");
    assert_eq!(
        (&past["verdict"], &past["by"]),
        (&json!("stop"), &json!("hours")),
        "a later reading moves it"
    );
}

#[test]
fn an_inspection_moves_the_day_or_stops_the_machine_and_is_tried_first() {
    let mut fleet = fleet();
    let found = |sign: &str, grade: &str| json!({"code": NEW, "date": "2026-09-01", "findings": [{"sign": sign, "grade": grade}]});
    let worn = fleet.get("inspect.try", found("ABR-SCUFF", "caution"));
    assert_eq!((&worn["due_after"], &worn["machine_stopped"]), (&json!("2026-11-30"), &json!(false)));
    let bare = fleet.get("inspect.try", found("ABR-WIRE", "pass"));
    assert_eq!(
        (&bare["grade"], &bare["machine_stopped"]),
        (&json!("stop"), &json!(true)),
        "never below the table"
    );
    assert_eq!(bare["machine"]["name"], "Loader 2");
    assert_eq!(fleet.of(NEW, "finding"), Value::Null, "trying writes nothing");

    let mut body = found("ABR-WIRE", "stop");
    body["kind"] = json!("inspected");
    let written = fleet.record([body])["written"][0].clone();
    assert_eq!(fleet.of(NEW, "finding")["verdict"], "stop");
    let machine = fleet.machine.clone();
    let sheet = fleet.get("register.machine", json!({"machine": machine}));
    assert_eq!(sheet["stopped_by"][0]["finding"]["sign"], "ABR-WIRE");
    // Another look that does not find it heals no hose.
    fleet.record([json!({"kind": "inspected", "code": NEW, "date": "2026-09-05", "findings": []})]);
    assert_eq!(fleet.of(NEW, "finding")["verdict"], "stop");
    let place = fleet.places[1].clone();
    let events =
        json!({"events": [{"body": {"kind": "voided", "reason": "another hose"}, "builds_on": [written]}]});
    fleet.get("register.record", events);
    assert_eq!(fleet.of(NEW, "finding"), Value::Null, "struck out");
    fleet.record([
        json!({"kind": "inspected", "code": NEW, "date": "2026-09-06", "findings": [{"sign": "LEAK-HOSE", "grade": "stop"}]}),
        json!({"kind": "taken-off", "code": NEW, "place": place, "date": "2026-09-07", "cause": "PINHOLE"}),
    ]);
    let sheet = fleet.get("register.machine", json!({"machine": machine}));
    assert_eq!(sheet["stopped_by"], json!([]), "off is off");
}

#[test]
fn risk_puts_the_graver_place_first_and_says_what_its_chance_is() {
    let mut fleet = fleet();
    let listed = |fleet: &mut Fleet| {
        let list = fleet.get("register.due", json!({"on": TODAY, "by": "risk", "what": ["service"]}));
        assert_eq!(list["chances"]["from"], "age", "no failures, no chance: {}", list["chances"]);
        let rows = list["due"].as_array().expect("rows").clone();
        rows.iter().map(|row| (row["code"].clone(), row["risk"]["consequence"].clone())).collect::<Vec<_>>()
    };
    assert_eq!(
        listed(&mut fleet),
        [(json!(OLD), json!(3)), (json!(NEW), json!(3))],
        "nobody has said: the middle"
    );
    let (machine, place) = (fleet.machine.clone(), fleet.places[0].clone());
    let mut body = json!({"kind": "place-set", "place": place, "machine": machine, "number": 1, "name": "boom", "stakes": []});
    fleet.record([body.clone()]);
    assert_eq!(listed(&mut fleet)[0], (json!(OLD), json!(1)), "still the older by far");
    body["consequence"] = json!(5);
    fleet.record([body]);
    assert_eq!(listed(&mut fleet)[0], (json!(OLD), json!(5)), "the owner's word stands over the table");
}

#[test]
fn a_page_a_filter_and_a_glance_agree_with_the_whole() {
    let mut fleet = fleet();
    let whole = fleet.due(json!({}));
    assert_eq!(whole.len(), 4);
    let pages: Vec<Value> = (0..4).flat_map(|at| fleet.due(json!({"offset": at, "limit": 1}))).collect();
    assert_eq!(pages, whole);
    let first = fleet.get("register.due", json!({"on": TODAY, "limit": 1, "glance": true}));
    assert_eq!((&first["more"], &first["glance"]["counts"]["total"]), (&json!(true), &json!(4)));
    let past = whole.iter().filter(|row| row["due"].as_str().is_some_and(|day| day <= TODAY)).count();
    assert_eq!(first["glance"]["counts"]["past"], past);
    assert_eq!(first["glance"]["sites"][0]["name"], "North pit");
    let site = fleet.site.clone();
    assert_eq!(fleet.due(json!({"site": site})).len(), 4);
    assert_eq!(fleet.due(json!({"site": "00000000000000000000000000000000"})), Vec::<Value>::new());
}

#[test]
fn a_page_and_a_filter_by_risk_agree_with_the_whole() {
    let mut fleet = fleet();
    let whole = fleet.due(json!({"by": "risk"}));
    assert_eq!(whole.len(), 4);
    let pages: Vec<Value> =
        (0..4).flat_map(|at| fleet.due(json!({"by": "risk", "offset": at, "limit": 1}))).collect();
    assert_eq!(pages, whole);
    for (limit, more) in [(3, true), (4, false)] {
        let page = fleet.get("register.due", json!({"on": TODAY, "by": "risk", "limit": limit}));
        assert_eq!(page["more"], more, "{limit}");
    }
    // What a filter leaves is what it leaves by day, in the order of the whole.
    for filter in [
        json!({"what": ["inspection"]}),
        json!({"code": OLD}),
        json!({"within_days": 0}),
        json!({"site": "00000000000000000000000000000000"}),
    ] {
        let mut asked = filter.clone();
        let by_day = fleet.due(asked.clone());
        asked["by"] = json!("risk");
        let by_risk = fleet.due(asked);
        let key = |row: &Value| (row["code"].clone(), row["what"].clone());
        let days: Vec<_> = by_day.iter().map(key).collect();
        let left: Vec<_> = whole.iter().map(key).filter(|row| days.contains(row)).collect();
        assert_eq!(by_risk.iter().map(key).collect::<Vec<_>>(), left, "{filter}");
    }
}

#[test]
fn the_desk_sorts_filters_and_exports() {
    let mut fleet = fleet();
    let table = fleet.get("desk.hoses", json!({"on": TODAY, "sort": "age", "descending": true}));
    let codes: Vec<_> = table["rows"].as_array().expect("rows").iter().map(|row| &row["code"]).collect();
    assert_eq!((codes, &table["total"]), (vec![&json!(OLD), &json!(NEW)], &json!(2)));
    let past = fleet.get("desk.codes", json!({"on": TODAY, "filter": {"past": true}}));
    assert_eq!(past["codes"], json!([OLD]));
    let found = fleet
        .get("desk.hoses", json!({"on": TODAY, "filter": {"words": "load 2sn", "type": "2SN"}, "limit": 1}));
    assert_eq!((&found["total"], found["rows"].as_array().map(Vec::len)), (&json!(2), Some(1)));
    let glance = fleet.get("desk.glance", json!({"on": TODAY}));
    assert_eq!((&glance["hoses"], &glance["in_service"], &glance["past"]), (&json!(2), &json!(2), &json!(1)));
    assert_eq!(glance["ages"], json!([{"years": 0, "count": 1}, {"years": 7, "count": 1}]));
    let list =
        String::from_utf8(fleet.file("desk.export", json!({"codes": [OLD], "as": "csv"}))).expect("text");
    assert!(list.lines().count() == 2 && list.contains(OLD), "{list}");
    let missing = fleet.api.call("desk.export", json!({"codes": ["A1000-00000-W"], "as": "csv"}), &[]);
    assert!(missing.is_err(), "a code that is not there is said");
}

#[test]
fn what_falls_due_goes_out_as_calendar_and_list() {
    let mut fleet = fleet();
    let calendar =
        String::from_utf8(fleet.file("register.due.export", json!({"due": {"on": TODAY}, "as": "ics"})))
            .expect("text");
    assert_eq!(calendar.matches("BEGIN:VEVENT").count(), 4, "{calendar}");
    let calendar = calendar.replace("\r\n ", "");
    let mut overdue = 0;
    for event in calendar.split("BEGIN:VEVENT").skip(1) {
        let value = |name: &str| {
            let line = event.lines().find_map(|line| line.strip_prefix(name));
            line.unwrap_or_else(|| panic!("{name} is in {event}")).to_owned()
        };
        let (day, said) = (value("DTSTART;VALUE=DATE:"), value("SUMMARY:"));
        assert!(day.as_str() >= "20260921", "no calendar shows what is past: {event}");
        if let Some(since) = said.strip_prefix("Overdue since ") {
            assert!(since < TODAY, "{event}");
            assert_eq!(day, "20260921", "it stands on the day it was written out: {event}");
            overdue += 1;
        }
    }
    assert!(overdue > 0, "the hose of 2019 is overdue: {calendar}");
    let list =
        fleet.file("register.due.export", json!({"due": {"on": TODAY, "what": ["service"]}, "as": "csv"}));
    let list = String::from_utf8(list).expect("text");
    assert_eq!(list.lines().count(), 3, "{list}");
    assert!(list.starts_with("due,what,verdict,code,"), "{list}");
    let book = fleet.file("register.due.export", json!({"due": {"on": TODAY}, "as": "xlsx"}));
    assert!(book.starts_with(b"PK"), "a workbook is a zip");
}

#[test]
fn a_survey_reads_in_place_and_leaves_open_what_was_not_opened() {
    let mut fleet = fleet();
    let (machine, places) = (fleet.machine.clone(), fleet.places.clone());
    let before = fleet.get("register.survey", json!({"machine": machine}));
    assert_eq!((&before["done"], &before["left"]), (&json!(0), &json!(2)));
    fleet.record([
        json!({"kind": "surveyed", "place": places[0], "date": TODAY, "state": "not-opened",
               "readings": {"ends": [{"role": "A", "swivel_hex_mm": 27.0}]}}),
        json!({"kind": "surveyed", "place": places[1], "date": TODAY, "state": "not-reached"}),
    ]);
    let walked = fleet.get("register.survey", json!({"machine": machine}));
    assert_eq!((&walked["done"], &walked["left"]), (&json!(1), &json!(1)), "what was not reached is left");
    let first = &walked["places"][0];
    assert_eq!((&first["last"]["state"], &first["settled"]["A"]), (&json!("not-opened"), &json!(false)));
    assert!(first["found"]["A"].is_string(), "{first}");
    assert!(!first["next"].as_array().expect("readings").is_empty(), "{first}");
}

#[test]
fn a_hose_tells_its_three_clocks() {
    let mut fleet = fleet();
    let hose = fleet.get("register.show", json!({"code": OLD}));
    assert_eq!(hose["clocks"]["hose_made"]["day"], Value::Null, "not known is not known");
    assert_eq!(hose["clocks"]["assembled"]["day"], "2019-03-01");
    assert_eq!(
        hose["clocks"]["fitted"],
        json!({"day": "2019-03-01", "years": hose["clocks"]["fitted"]["years"], "at_least": false})
    );
    assert_eq!(hose["due"].as_array().map(Vec::len), Some(2));
}

#[test]
fn a_changed_row_of_the_tables_lists_the_hoses_that_rested_on_it() {
    let mut fleet = fleet();
    let none = fleet.get("register.affected", json!({}));
    assert_eq!((&none["rows"], &none["hoses"]), (&json!([]), &json!(0)), "{none}");
    let old = |table: &str, row: &str| json!({"table": table, "row": row, "digest": "0000000000000000"});
    let made = |code: &str, marks: Value| {
        json!({"kind": "assembly-made", "code": code, "spec": spec(), "rests_on": marks,
               "proof": {"state": "not-proved", "why": "no-rig"}, "catalogue": "5f0c1d2e", "program": "test"})
    };
    let changed = json!([old("hoses", "EN 853 2SN 16"), old("ends", "no such end")]);
    fleet.record([made("A1000-00000-8", changed), made("B1000-00000-G", json!([]))].into_iter().map(
        |mut body| {
            body["code"] = code(body["code"].as_str().expect("a code"));
            body
        },
    ));
    let affected = fleet.get("register.affected", json!({}));
    let rows: Vec<_> = affected["rows"]
        .as_array()
        .expect("rows")
        .iter()
        .map(|row| (&row["row"], &row["stands"], &row["count"]))
        .collect();
    assert_eq!(
        rows,
        [
            (&json!("no such end"), &json!("gone"), &json!(1)),
            (&json!("EN 853 2SN 16"), &json!("changed"), &json!(1)),
            (&json!(""), &Value::Null, &json!(1)),
        ]
    );
    assert_eq!((&affected["hoses"], &affected["not_known"]), (&json!(2), &json!(1)));
}

/// The code with the check character that fits.
fn code(text: &str) -> Value {
    let data = &text[..11];
    let whole = "0123456789ABCDEFGHJKMNPQRSTVWXYZ".chars().map(|check| format!("{data}-{check}"));
    let mut fits = whole.filter(|text| text.parse::<hosewright_core::tag::TagCode>().is_ok());
    json!(fits.next().expect("one fits"))
}

#[test]
fn a_place_has_its_own_relief_setting_over_that_of_its_circuit() {
    let mut fleet = fleet();
    let (machine, place) = (fleet.machine.clone(), fleet.places[0].clone());
    let stops = |fleet: &mut Fleet| {
        let said = fleet.get("register.place", json!({"place": fleet.places[0].clone()}));
        said["findings"].as_array().expect("findings").iter().any(|finding| finding["verdict"] == "stop")
    };
    assert!(!stops(&mut fleet), "150 bar of the circuit are within what the hoses carry");
    let circuit = fleet.get("register.place", json!({"place": place}))["place"]["circuit"].clone();
    fleet.record([
        json!({"kind": "place-set", "place": place, "machine": machine, "number": 1, "name": "boom",
        "line": "cylinder", "circuit": circuit, "service": {"relief_bar": 600}}),
    ]);
    assert!(stops(&mut fleet), "the place's own valve opens above what its hose carries");
}

#[test]
fn a_round_goes_on_paper_with_the_tags_to_scan() {
    let mut fleet = fleet();
    let machine = fleet.machine.clone();
    fleet.get("settings.write", json!({"store": "Van 2"}));
    let asked = |kind: &str| json!({"round": {"on": TODAY, "machines": [machine], "store": "Van 2"}, "paper": "a4", "kind": kind, "tags": true});
    let sheet = fleet.api.call("round.paper", asked("text"), &[]);
    let Ok(Reply::File(file)) = sheet else { panic!("{sheet:?}") };
    let text = String::from_utf8(file.bytes).expect("text");
    assert!(text.contains("Loader 2") && text.contains(OLD), "{text}");
    assert!(fleet.file("round.paper", asked("pdf")).starts_with(b"%PDF"));
    let svg = String::from_utf8(fleet.file("round.paper", asked("svg"))).expect("text");
    assert!(svg.len() > 2000, "the code is drawn");
}

#[test]
fn what_is_not_there_is_said() {
    let mut fleet = fleet();
    let nobody = json!("00000000000000000000000000000000");
    for (name, question) in [
        ("register.survey", json!({"machine": nobody})),
        ("policy.at", json!({"place": nobody})),
        ("inspect.try", json!({"code": code("A1000-00000-8"), "date": TODAY})),
        ("register.affected", json!({"code": code("A1000-00000-8")})),
    ] {
        let error = answer(&mut fleet.api, name, question).expect_err("there is none");
        assert_eq!(error.code, Code::Nothing, "{name}: {}", error.message);
    }
}
