//! What a place says before the next hose is made for it: its sisters on the circuit, and what failed there.

use super::fleet::*;
use crate::settings::api;
use hosewright_api::commands::register::{PlaceQuestion, PlaceSaid, place as said};
use hosewright_core::check::{Verdict, Way};
use hosewright_core::quantity::Bar;
use hosewright_core::record::Body;
use hosewright_core::tag::TagCode;

/// A place on circuit 1.
fn on_circuit(n: u8, name: &str) -> Body {
    let mut body = a_place(n, 1, name);
    if let Body::PlaceSet(place) = &mut body {
        place.circuit = Some(circuit(1));
    }
    body
}

fn rated(tag: &str, bar: Option<f64>) -> Body {
    let mut assembly = an_assembly(tag, Some("2026-01-05"));
    assembly.pressure_bar = bar.map(Bar);
    if bar.is_none() {
        // An end whose rating nobody knows.
        assembly.spec.ends.clear();
    }
    Body::AssemblyMade(Box::new(assembly))
}

/// Two places on a circuit, each with a hose of that rating.
fn twins(relief: f64, own: f64, sister: Option<f64>) -> Vec<Body> {
    vec![
        a_site(1, "North Quarry"),
        a_machine(1, 1, "Excavator 3"),
        a_circuit(1, 1, relief),
        on_circuit(1, "Boom cylinder, left"),
        on_circuit(2, "Boom cylinder, right"),
        a_place(3, 1, "Swing motor, A"),
        rated("A1", Some(own)),
        rated("A2", sister),
        fitted("A1", 1, "2026-02-01"),
        fitted("A2", 2, "2026-02-01"),
    ]
}

fn told(events: Vec<Body>) -> PlaceSaid {
    told_of(events, None)
}

/// What is said of the first place where that hose is to go there.
#[track_caller]
fn told_of(events: Vec<Body>, hose: Option<TagCode>) -> PlaceSaid {
    let mut kept = begin(1);
    write(&mut kept, events);
    let path = kept.path();
    let folder = kept.folder;
    drop(kept.register);
    let mut api = api();
    api.open(&path).expect("opens");
    let told = said(&mut api, PlaceQuestion { place: place(1), hose }, &[]).expect("is there").content;
    drop(folder);
    told
}

fn cases(told: &PlaceSaid) -> Vec<(&'static str, Verdict)> {
    told.findings.iter().map(|finding| (finding.case.key, finding.verdict)).collect()
}

#[test]
fn sisters_of_the_circuit_stand_beside_the_place() {
    let told = told(twins(210.0, 250.0, Some(250.0)));
    assert_eq!(told.sheet.circuit.as_ref().and_then(|circuit| circuit.record.relief_bar), Some(Bar(210.0)));
    let sisters: Vec<_> =
        told.sheet.sisters.iter().map(|sister| (sister.number, sister.pressure_bar, sister.code)).collect();
    assert_eq!(sisters, [(2, Some(Bar(250.0)), Some(code("A2")))], "the swing motor is on another circuit");
    assert_eq!(cases(&told), [("circuit-ok", Verdict::Pass)]);
}

#[test]
fn a_weaker_sister_is_said_and_what_is_not_known_is_no_pass() {
    assert_eq!(cases(&told(twins(160.0, 250.0, Some(180.0)))), [("circuit-sister-weaker", Verdict::Caution)]);
    assert_eq!(cases(&told(twins(160.0, 180.0, Some(250.0)))), [("circuit-weaker", Verdict::Caution)]);
    let unknown = told(twins(160.0, 180.0, None));
    assert_eq!(cases(&unknown), [("circuit-unknown", Verdict::Caution)]);
    assert!(unknown.findings[0].why.contains("Place 2"), "{}", unknown.findings[0].why);
}

#[test]
fn a_relief_above_a_hose_of_the_circuit_is_a_stop() {
    let told = told(twins(300.0, 350.0, Some(280.0)));
    assert_eq!(told.findings[0].case.key, "circuit-relief-above");
    assert_eq!(told.findings[0].verdict, Verdict::Stop);
    assert!(told.findings[0].why.contains("place 2"), "{}", told.findings[0].why);
}

#[test]
fn repeat_failures_lead_the_long_way_with_counts_and_causes() {
    let mut events = twins(210.0, 250.0, Some(250.0));
    events.push(taken_off("A1", 1, "2026-04-01", Some("abrasion")));
    let once = told(events.clone());
    assert_eq!((once.failures.way, once.failures.times), (Way::Short, 1));
    assert!(once.findings.iter().any(|finding| finding.case.key == "failed-before"));
    events.extend([rated("A3", Some(250.0)), fitted("A3", 1, "2026-04-01")]);
    events.push(taken_off("A3", 1, "2026-06-01", Some("abrasion")));
    let twice = told(events);
    assert_eq!((twice.failures.way, twice.failures.times), (Way::Long, 2));
    assert_eq!(twice.failures.causes[0].times, 2);
    let said =
        twice.findings.iter().find(|finding| finding.case.key == "failed-repeatedly").expect("it is said");
    assert!(said.why.contains("2 times") && said.cure.contains("long way"), "{} {}", said.why, said.cure);
}

#[test]
fn a_hose_that_is_to_go_there_is_held_against_what_belongs_there() {
    let mut events = twins(210.0, 250.0, Some(250.0));
    let mut thin = an_assembly("A4", Some("2026-03-01"));
    if let Some(hose) = &mut thin.spec.hose {
        hose.dn = hosewright_core::quantity::Dn::new(6.0).expect("a size");
    }
    events.push(Body::AssemblyMade(Box::new(thin)));
    assert_eq!(
        cases(&told(events.clone())),
        [("circuit-ok", Verdict::Pass)],
        "what sits there belongs there"
    );

    let told = told_of(events, Some(code("A4")));
    assert_eq!(cases(&told), [("belongs-bore", Verdict::Stop), ("circuit-ok", Verdict::Pass)]);
    let why = &told.findings[0].why;
    assert!(why.contains("2SN DN 6") && why.contains("2SN DN 16"), "{why}");
}

#[test]
fn a_hose_that_sits_where_it_does_not_belong_is_said() {
    let mut events = vec![a_site(1, "North Quarry"), a_machine(1, 1, "Excavator 3"), a_place(1, 1, "Boom")];
    let mut long = an_assembly("A1", Some("2026-01-05"));
    long.spec.overall_length_mm = Some(hosewright_core::quantity::Millimetres(1500.0));
    events.extend([Body::AssemblyMade(Box::new(long)), fitted("A1", 1, "2026-02-01")]);
    assert_eq!(cases(&told(events)), [("belongs-longer", Verdict::Caution)]);
}
