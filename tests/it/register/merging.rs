//! Merging: a union, the same in any order, with contradictions shown and not decided.

use super::fleet::{self, Kept, begin, code, device, fitted, place, taken_off, write};
use super::histories::{self, Deed, deed};
use hosewright_core::record::{Body, Event, Machine, Track};
use hosewright_store::{Bundle, Conflict, Hit, Merged, NewEvent, Refusal, Refused};
use proptest::prelude::*;

/// What happens among three vans: one of them does something, or hears from another.
#[derive(Debug, Clone)]
enum Turn {
    Does(usize, Deed),
    Hears(usize, usize),
}

fn turn() -> impl Strategy<Value = Turn> {
    prop_oneof![
        4 => (0..3_usize, deed()).prop_map(|(van, deed)| Turn::Does(van, deed)),
        1 => (0..3_usize, 1..3_usize).prop_map(|(van, step)| Turn::Hears(van, (van + step) % 3)),
    ]
}

/// Three vans that began with the same fleet and then went their ways.
fn three_vans(turns: &[Turn]) -> Result<Vec<Kept>, TestCaseError> {
    let mut vans: Vec<Kept> = (1..=3).map(histories::begin).collect();
    write(&mut vans[0], histories::common());
    for van in 1..3 {
        hear(&mut vans, van, 0);
    }
    for turn in turns {
        match turn {
            Turn::Does(van, deed) => deed.apply(&mut vans[*van])?,
            Turn::Hears(van, from) => {
                hear(&mut vans, *van, *from);
            }
        }
    }
    Ok(vans)
}

fn hear(vans: &mut [Kept], van: usize, from: usize) -> Merged {
    let text = vans[from].register.bundle().expect("reads").write().expect("writes");
    let merged = vans[van].register.merge(&Bundle::read(&text).expect("reads")).expect("merges");
    assert_eq!(merged.refused, [], "a van's own series was refused");
    merged
}

/// A fresh register that takes the bundles in that order.
fn union<'a>(bundles: impl IntoIterator<Item = &'a Bundle>) -> (Kept, Merged) {
    let mut kept = begin(9);
    let mut last = Merged::default();
    for bundle in bundles {
        last = kept.register.merge(bundle).expect("merges");
        assert_eq!(last.refused, [], "honest events were refused");
    }
    (kept, last)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 16, ..ProptestConfig::default() })]

    #[test]
    fn merging_is_the_same_in_any_order_and_twice(turns in prop::collection::vec(turn(), 1..40)) {
        let mut vans = three_vans(&turns)?;
        let [a, b, c] = [0, 1, 2].map(|van| vans[van].register.bundle().expect("reads"));
        let dump = |bundles: &[&Bundle]| union(bundles.iter().copied()).0.register.dump().expect("reads");
        let once = dump(&[&a, &b, &c]);
        for (order, dumped) in [
            ("c b a", dump(&[&c, &b, &a])),
            ("b a c", dump(&[&b, &a, &c])),
            ("a b a c c b", dump(&[&a, &b, &a, &c, &c, &b])),
            ("(a b) into c", {
                let ab = union([&a, &b]).0.register.bundle().expect("reads");
                dump(&[&c, &ab])
            }),
        ] {
            prop_assert_eq!(&dumped, &once, "merged in the order {}", order);
        }
        // And the vans themselves come to agree, rebuilt or not.
        for (van, from) in [(0, 1), (0, 2), (1, 0), (2, 0)] {
            hear(&mut vans, van, from);
        }
        for van in &mut vans {
            prop_assert_eq!(&van.register.dump().expect("reads"), &once, "a van differs");
            prop_assert_eq!(van.register.verify().expect("verifies").faults, []);
        }
    }

    #[test]
    fn events_that_arrive_singly_in_any_order_give_the_same(
        (turns, order) in (prop::collection::vec(turn(), 1..25), any::<u64>())
    ) {
        let mut vans = three_vans(&turns)?;
        hear(&mut vans, 0, 1);
        hear(&mut vans, 0, 2);
        let whole = vans[0].register.bundle().expect("reads");
        let mut singles: Vec<Bundle> = whole
            .events
            .iter()
            .map(|event| Bundle { people: vec![], events: vec![event.clone()] })
            .collect();
        // Shuffled by a multiplier that is odd, so that it is a permutation of the hashes' order.
        singles.sort_by_key(|bundle| {
            let hash = bundle.events[0].hash().expect("hashes").bytes();
            u64::from_le_bytes(hash[..8].try_into().expect("eight bytes")).wrapping_mul(order | 1)
        });
        let (kept, last) = union(&singles);
        prop_assert_eq!(last.held, 0, "events were held though all had arrived");
        prop_assert_eq!(kept.register.dump().expect("reads"), vans[0].register.dump().expect("reads"));
    }
}

/// Two vans that know the same fleet.
fn two_vans() -> (Kept, Kept) {
    let (mut one, mut two) = (begin(1), begin(2));
    write(&mut one, fleet::fleet());
    two.register.merge(&one.register.bundle().expect("reads")).expect("merges");
    (one, two)
}

fn exchange(one: &mut Kept, two: &mut Kept) {
    let (from_one, from_two) = (one.register.bundle().expect("reads"), two.register.bundle().expect("reads"));
    one.register.merge(&from_two).expect("merges");
    two.register.merge(&from_one).expect("merges");
}

fn named(name: &str) -> Body {
    fleet::a_machine(1, 1, name)
}

#[test]
fn two_changes_of_one_machine_are_shown_to_a_person_until_settled() {
    let (mut one, mut two) = two_vans();
    let left = write(&mut one, [named("Excavator 3a")])[0];
    let right = write(&mut two, [named("Excavator 3b")])[0];
    exchange(&mut one, &mut two);
    for van in [&one, &two] {
        let conflicts = van.register.conflicts().expect("reads");
        let [Conflict::Events { events }] = conflicts.as_slice() else {
            panic!("one conflict is expected: {conflicts:?}");
        };
        let mut seen: Vec<_> = events.iter().map(|written| written.event).collect();
        seen.sort();
        assert_eq!(seen, [left, right]);
        assert_eq!(van.register.counts().expect("reads").conflicts, 1);
        let told = van.register.contradictions().expect("reads").remove(0).told;
        let names: Vec<_> = told.into_iter().filter_map(|told| told.says).collect();
        assert_eq!(names, ["Excavator 3a", "Excavator 3b"], "neither name is lost");
        let of_it = van.register.contradicting(&Track::Machine(fleet::machine(1))).expect("reads");
        assert_eq!(of_it.len(), 2);
        let hits = van.register.search("excavator", 10).expect("reads");
        assert!(hits.iter().any(|hit| matches!(hit, Hit::Machine { unsettled: true, .. })), "{hits:?}");
    }
    write(&mut two, [NewEvent::on(named("Excavator 3"), [left, right])]);
    exchange(&mut one, &mut two);
    for van in [&one, &two] {
        assert_eq!(van.register.conflicts().expect("reads"), []);
        let sheet = van.register.machine(fleet::machine(1)).expect("reads").expect("is there");
        let machine: Machine = sheet.machine.record;
        assert_eq!(machine.name, "Excavator 3");
    }
}

#[test]
fn a_change_made_after_hearing_of_the_other_is_no_conflict_whatever_the_clocks_say() {
    let (mut one, mut two) = two_vans();
    one.register.append([named("First")], fleet::later(86_400 * 400)).expect("is written");
    exchange(&mut one, &mut two);
    two.register.append([named("Second")], fleet::later(-86_400 * 400)).expect("is written");
    exchange(&mut one, &mut two);
    assert_eq!(one.register.conflicts().expect("reads"), []);
    let sheet = one.register.machine(fleet::machine(1)).expect("reads").expect("is there");
    assert_eq!(sheet.machine.record.name, "Second");
}

#[test]
fn one_hose_taken_off_by_two_vans_is_a_conflict() {
    let (mut one, mut two) = two_vans();
    write(&mut one, [taken_off("7KQ4M2XR9D", 2, "2026-11-24", Some("ABR"))]);
    write(&mut two, [taken_off("7KQ4M2XR9D", 2, "2026-11-25", None)]);
    exchange(&mut one, &mut two);
    let hose = one.register.hose(&code("7KQ4M2XR9D")).expect("reads").expect("is there");
    assert_eq!(hose.conflicts.len(), 2, "{:?}", hose.conflicts);
}

#[test]
fn two_hoses_at_one_place_are_a_conflict_and_both_are_shown() {
    let (mut one, mut two) = two_vans();
    write(&mut one, [fleet::made("B2", "2026-11-25"), fitted("B2", 1, "2026-11-25")]);
    write(&mut two, [fitted("A1", 1, "2026-11-25")]);
    exchange(&mut one, &mut two);
    let conflicts = two.register.conflicts().expect("reads");
    let [Conflict::Place { stays }] = conflicts.as_slice() else {
        panic!("one conflict is expected: {conflicts:?}");
    };
    assert_eq!(stays.iter().map(|stay| fleet::short(stay.code)).collect::<Vec<_>>(), ["A1", "B2"]);
    let sheet = one.register.machine(fleet::machine(1)).expect("reads").expect("is there");
    let row = sheet.places.iter().find(|row| row.place.record.place == place(1)).expect("the place");
    assert_eq!(row.hoses.len(), 2, "a hose at a place that is taken twice is hidden");
}

/// Whose signature it is: a key counts for the device that could sign it, wherever its event came from.
#[test]
fn a_device_is_known_by_the_key_it_told_and_by_no_other() {
    use hosewright_core::fleet::DeviceKey;
    use hosewright_core::record::{DeviceId, DeviceKeyTold};
    let (mut one, mut two) = two_vans();
    let key = DeviceKey::from_bytes([7; 32]);
    let (own, other) = (two.register.device(), one.register.device());
    let told = |device: DeviceId| Body::DeviceKey(DeviceKeyTold::of(device, &key));
    write(&mut two, [told(own)]);
    let refused = two.register.append([told(other)], fleet::now()).expect_err("another device's");
    assert!(refused.to_string().contains("no key but its own"), "{refused}");
    exchange(&mut one, &mut two);
    assert_eq!(one.register.device_key(own).expect("reads"), Some(key.public()));
    assert_eq!(one.register.device_key(other).expect("reads"), None);

    let newer = DeviceKey::from_bytes([8; 32]);
    write(&mut two, [Body::DeviceKey(DeviceKeyTold::of(own, &newer))]);
    let copier = DeviceId::from_bytes([99; 16]);
    let mut bundle = two.register.bundle().expect("a bundle");
    let copied = bundle.events.iter().find(|event| event.body.kind() == "device-key").cloned();
    let mut copied = copied.expect("it is there");
    (copied.device, copied.number) = (copier, 1);
    copied.previous = bundle.events.iter().find(|event| event.number == 1).expect("a first").previous;
    bundle.events.push(copied);
    one.register.merge(&bundle).expect("taken in");
    assert_eq!(one.register.device_key(own).expect("reads"), Some(newer.public()), "the later stands");
    let devices = one.register.devices().expect("reads");
    assert!(devices.iter().any(|device| device.device == copier), "its event is kept");
    assert_eq!(one.register.device_key(copier).expect("reads"), None, "and its key is another's");
}

#[test]
fn a_contradiction_is_named_by_what_it_is_about_and_who_told_it() {
    use hosewright_core::record::DeviceNamed;
    let (mut one, mut two) = two_vans();
    write(&mut one, [Body::DeviceNamed(DeviceNamed { name: "Van 1".into() })]);
    assert_eq!(one.register.device_name().expect("reads").as_deref(), Some("Van 1"));
    assert_eq!(two.register.device_name().expect("reads"), None);
    write(&mut one, [taken_off("7KQ4M2XR9D", 2, "2026-11-24", Some("ABR")), named("Excavator 3a")]);
    write(&mut two, [taken_off("7KQ4M2XR9D", 2, "2026-11-25", None), named("Excavator 3b")]);
    write(&mut one, [fleet::made("B2", "2026-11-25"), fitted("B2", 1, "2026-11-25")]);
    write(&mut two, [fitted("A1", 1, "2026-11-25")]);
    exchange(&mut one, &mut two);
    let seen = one.register.contradictions().expect("reads");
    let said: Vec<_> = seen
        .iter()
        .map(|one| {
            let mut told: Vec<_> = one
                .told
                .iter()
                .map(|told| format!("{} by {}", told.kind, told.by.as_deref().unwrap_or("?")))
                .collect();
            told.sort();
            (
                one.hose.map(fleet::short),
                one.at.as_ref().and_then(|at| at.number),
                one.machine,
                told.join(", "),
            )
        })
        .collect();
    let machine = Some(fleet::machine(1));
    let expected = [
        (None, None, machine, "machine-set by ?, machine-set by Van 1".to_owned()),
        (Some("7KQ4M2XR9D".to_owned()), None, None, "taken-off by ?, taken-off by Van 1".to_owned()),
        (None, Some(1), None, "fitted by ?, fitted by Van 1".to_owned()),
    ];
    assert_eq!(said, expected);
    assert!(seen[0].name.as_deref().is_some_and(|name| name.starts_with("Excavator 3")));
}

#[test]
fn stock_of_two_vans_adds_up() {
    use hosewright_core::record::{StockChanged, StockUnit};
    let change = |difference| {
        Body::StockChanged(StockChanged {
            store: "Shelf".into(),
            item: hosewright_core::stock::Item::Named("EN 853 2SN DN16".into()),
            unit: StockUnit::Millimetres,
            difference,
            why: None,
            hose: None,
            bin: String::new(),
            seen: None,
        })
    };
    let (mut one, mut two) = two_vans();
    write(&mut one, [change(10_000), change(-1240)]);
    write(&mut two, [change(-980)]);
    exchange(&mut one, &mut two);
    let stock = two.register.stock().expect("reads");
    assert_eq!(stock.iter().map(|row| row.quantity).collect::<Vec<_>>(), [Some(7780)]);
}

#[test]
fn a_series_with_a_gap_waits_for_the_rest() {
    let (mut one, mut two) = (begin(1), begin(2));
    write(&mut one, fleet::fleet());
    let bundle = one.register.bundle().expect("reads");
    let (early, late) = bundle.events.split_at(4);
    let part = |events: &[Event]| Bundle { people: vec![], events: events.to_vec() };
    let merged = two.register.merge(&part(late)).expect("merges");
    assert_eq!((merged.added, merged.held), (0, 5));
    assert_eq!(two.register.counts().expect("reads").in_service, 0, "an event out of turn was shown");
    let merged = two.register.merge(&part(early)).expect("merges");
    assert_eq!((merged.added, merged.held), (9, 0));
    assert_eq!(two.register.dump().expect("reads"), one.register.dump().expect("reads"));
}

#[test]
fn two_programs_that_wrote_as_one_device_are_found_out() {
    let mut one = begin(1);
    write(&mut one, fleet::fleet());
    let copy = one.folder.path().join("copy.db");
    one.register.backup(&copy).expect("is copied");
    let mut copied = hosewright_store::Register::open(&copy, device(7)).expect("opens");
    assert_eq!(copied.device(), device(1), "a copied file is the same device");
    copied.append([named("From the copy")], fleet::now()).expect("is written");
    write(&mut one, [named("From the first")]);

    let merged = one.register.merge(&copied.bundle().expect("reads")).expect("merges");
    assert_eq!(merged.refused, [Refused { device: device(1), from: 10, why: Refusal::Fork }]);
    let sheet = one.register.machine(fleet::machine(1)).expect("reads").expect("is there");
    assert_eq!(sheet.machine.record.name, "From the first");
}

#[test]
fn an_event_that_was_changed_on_the_way_is_refused_and_so_is_what_follows() {
    let (mut one, mut two) = (begin(1), begin(2));
    write(&mut one, fleet::fleet());
    let mut bundle = one.register.bundle().expect("reads");
    let line = bundle.events[1].line().expect("writes").replace("Excavator 3", "Excavator 8");
    bundle.events[1] = Event::from_line(&line).expect("an event");
    let merged = two.register.merge(&bundle).expect("merges");
    assert_eq!(merged.refused, [Refused { device: device(1), from: 3, why: Refusal::BrokenChain }]);
    assert_eq!(merged.added, 2, "more was taken than fits");
}

#[test]
fn what_a_newer_program_wrote_is_kept_and_passed_on_byte_for_byte() {
    let (mut one, mut two) = (begin(1), begin(2));
    write(&mut one, fleet::fleet());
    let last = one.register.bundle().expect("reads").events.pop().expect("an event");
    let body = r#"{ "kind":"oil-sampled",  "machine": "x","iso4406":[19,16,13], "note":"\u00e4" }"#;
    let newer = Event {
        number: last.number + 1,
        previous: last.hash().expect("hashes"),
        builds_on: vec![last.at()],
        schema: 77,
        body: body.parse().expect("a body"),
        ..last
    };
    let merged = one.register.merge(&Bundle { people: vec![], events: vec![newer.clone()] }).expect("merges");
    assert_eq!((merged.added, merged.refused), (1, vec![]));
    // The device goes on after it, and hands it to the next one unchanged.
    write(&mut one, [named("Excavator 4")]);
    let text = one.register.bundle().expect("reads").write().expect("writes");
    assert!(text.contains(body), "the newer event was rewritten");
    let merged = two.register.merge(&Bundle::read(&text).expect("reads")).expect("merges");
    assert_eq!((merged.added, merged.refused), (11, vec![]));
    assert!(two.register.bundle().expect("reads").events.contains(&newer));
    assert_eq!(two.register.verify().expect("verifies").faults, []);
}
