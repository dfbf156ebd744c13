//! Who belongs to a fleet: whatever planners, technicians, readers and thieves say, in whatever order it comes, every
//! register counts the same events.

use super::fleet::{self, Kept, device, now, write};
use super::histories::{self, Deed, deed};
use hosewright_core::fleet::{DeviceKey, DevicePublic};
use hosewright_core::record::{
    Body, BodyText, DeviceAdmitted, DeviceId, DeviceKeyTold, DeviceWithdrawn, Entry, Event, EventRef, Hash,
    Hlc, LeftOut, MemberRole, Membership, SCHEMA, Standing,
};
use hosewright_store::{Bundle, Error, NewEvent};
use proptest::prelude::*;

fn key(n: u8) -> DeviceKey {
    DeviceKey::from_bytes([n; 32])
}

fn founder() -> DevicePublic {
    key(1).public()
}

fn admitted(who: u8, role: MemberRole, after: u64) -> Body {
    let (device, public_key, signature) = (device(who), key(who).public(), String::new());
    Body::DeviceAdmitted(DeviceAdmitted { founder: founder(), device, public_key, role, after, signature })
}

fn withdrawn(who: u8, after: u64) -> Body {
    let signature = String::new();
    Body::DeviceWithdrawn(DeviceWithdrawn { founder: founder(), device: device(who), after, signature })
}

fn told(who: u8) -> Body {
    Body::DeviceKey(DeviceKeyTold::of(device(who), &key(who)))
}

/// A device of the fleet that the first one founded. It has told its key and waits.
fn joined(who: u8) -> Kept {
    let mut kept = histories::begin(who);
    kept.register
        .change_keys(|keys| {
            keys.device = Some(key(who));
            Ok::<_, Error>(())
        })
        .expect("are kept");
    write(&mut kept, [told(who)]);
    kept.register.believe(Some(founder())).expect("is written");
    kept
}

/// One that only looks, and has written nothing.
fn onlooker() -> Kept {
    let mut kept = fleet::begin(9);
    kept.register.believe(Some(founder())).expect("is written");
    kept
}

fn hear(vans: &mut [Kept], van: usize, from: usize) {
    let bundle = vans[from].register.bundle().expect("reads");
    vans[van].register.merge(&bundle).expect("merges");
}

/// An event in a device's own series that its program would not have written.
fn past_the_guard(kept: &mut Kept, who: u8, body: Body) {
    let events = kept.register.bundle().expect("reads").events;
    let last = events.iter().filter(|event| event.device == device(who)).max_by_key(|event| event.number);
    let number = last.map_or(1, |event| event.number + 1);
    let body = body.signed_for(EventRef { device: device(who), number }, &key(who));
    let event = Event {
        device: device(who),
        number,
        previous: last.map_or(Hash::NONE, |event| event.hash().expect("hashes")),
        builds_on: Vec::new(),
        schema: SCHEMA,
        time: last.map_or(Hlc::default(), |event| Hlc { count: event.time.count + 1, ..event.time }),
        body: BodyText::of(&body).expect("writes"),
    };
    let merged = kept.register.merge(&Bundle { people: vec![], events: vec![event] }).expect("merges");
    assert_eq!(merged.added, 1);
}

/// What happens among five devices.
#[derive(Debug, Clone)]
enum Turn {
    Does(usize, Deed),
    Hears(usize, usize),
    /// One says something of another, through its own program or past it.
    Says {
        by: usize,
        of: usize,
        role: Option<MemberRole>,
        back: u64,
        past_the_guard: bool,
    },
}

fn turn() -> impl Strategy<Value = Turn> {
    let role = prop_oneof![
        2 => Just(None),
        1 => Just(Some(MemberRole::Reader)),
        3 => Just(Some(MemberRole::Technician)),
        3 => Just(Some(MemberRole::Planner)),
    ];
    prop_oneof![
        6 => (0..5_usize, deed()).prop_map(|(van, deed)| Turn::Does(van, deed)),
        4 => (0..5_usize, 1..5_usize).prop_map(|(van, step)| Turn::Hears(van, (van + step) % 5)),
        5 => (prop_oneof![Just(0), 0..5_usize], 0..5_usize, role, 0..4_u64, prop::bool::weighted(0.3)).prop_map(
            |(by, of, role, back, past_the_guard)| Turn::Says { by, of, role, back, past_the_guard }
        ),
    ]
}

fn five_vans(turns: &[Turn]) -> Result<Vec<Kept>, TestCaseError> {
    let mut vans: Vec<Kept> = (1..=5).map(joined).collect();
    write(&mut vans[0], histories::common());
    for van in 1..5 {
        hear(&mut vans, van, 0);
        hear(&mut vans, 0, van);
    }
    write(&mut vans[0], [admitted(2, MemberRole::Planner, 0), admitted(3, MemberRole::Technician, 0)]);
    for turn in turns {
        match turn {
            Turn::Does(van, deed) => deed.apply(&mut vans[*van])?,
            Turn::Hears(van, from) => hear(&mut vans, *van, *from),
            Turn::Says { by, of, role, back, past_the_guard: thief } => {
                let (kept, who) = (&mut vans[*by], *of as u8 + 1);
                let end = kept.register.ends().expect("reads").get(&device(who)).copied().unwrap_or(0);
                let after = end.saturating_sub(*back);
                let body = role.map_or_else(|| withdrawn(who, after), |role| admitted(who, role, after));
                if *thief {
                    past_the_guard(kept, *by as u8 + 1, body);
                } else {
                    match kept.register.append([body], now()) {
                        Ok(_) | Err(Error::PlannersOnly | Error::Reader | Error::Gone | Error::Senior) => {}
                        Err(other) => return Err(TestCaseError::fail(format!("{turn:?}: {other}"))),
                    }
                }
            }
        }
    }
    Ok(vans)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4, ..ProptestConfig::default() })]

    #[test]
    fn whoever_says_what_of_whom_and_whenever_it_comes_the_same_events_count(
        (turns, order) in (prop::collection::vec(turn(), 1..30), any::<u64>())
    ) {
        let mut vans = five_vans(&turns)?;
        let bundles: Vec<Bundle> =
            vans.iter().map(|van| van.register.bundle().expect("reads")).collect();
        let union = |order: &[usize]| {
            let mut kept = onlooker();
            for van in order {
                kept.register.merge(&bundles[*van]).expect("merges");
            }
            kept
        };
        let mut once = union(&[0, 1, 2, 3, 4]);
        let dump = once.register.dump().expect("reads");
        for order in [&[4, 3, 2, 1, 0][..], &[2, 0, 4, 1, 3], &[0, 0, 3, 1, 1, 4, 2, 0]] {
            prop_assert_eq!(&union(order).register.dump().expect("reads"), &dump, "in the order {:?}", order);
        }
        // One by one, in an order that has nothing to do with the one they were written in.
        let mut singles = once.register.bundle().expect("reads").events;
        singles.sort_by_key(|event| {
            let hash = event.hash().expect("hashes").bytes();
            u64::from_le_bytes(hash[..8].try_into().expect("eight bytes")).wrapping_mul(order | 1)
        });
        let mut one_by_one = onlooker();
        for event in singles {
            one_by_one.register.merge(&Bundle { people: vec![], events: vec![event] }).expect("merges");
        }
        prop_assert_eq!(&one_by_one.register.dump().expect("reads"), &dump);
        // Who is believed only once everything has come gets the same.
        let mut late = fleet::begin(9);
        for bundle in &bundles {
            late.register.merge(bundle).expect("merges");
        }
        late.register.believe(Some(founder())).expect("is written");
        prop_assert_eq!(&late.register.dump().expect("reads"), &dump, "believed last");
        prop_assert_eq!(once.register.verify().expect("verifies").faults, []);
        // The devices themselves agree. What one writes that waits counts on itself.
        for van in 0..5 {
            for from in 0..5 {
                hear(&mut vans, van, from);
            }
            let register = &mut vans[van].register;
            prop_assert_eq!(register.verify().expect("verifies").faults, [], "rebuilt, van {} differs", van);
            let here = register.device();
            if register.membership().expect("reads").standing(here) != Standing::Waits {
                prop_assert_eq!(&register.dump().expect("reads"), &dump, "van {} differs", van);
            }
        }
        // Nothing but what is left out is missing, and of everything left out it is said why.
        for left_out in once.register.left_out().expect("reads") {
            let list = once.register.left_out_of(left_out.device, usize::MAX).expect("reads");
            let told = list.iter().filter(|event| event.why == left_out.why).count();
            prop_assert_eq!(told as u64, left_out.count, "{:?}", left_out);
            for event in &list {
                // Not every one that stands as the founder: another may tell the founder's key and sign with its own.
                let founders = event.event.device == device(1);
                prop_assert!(!founders || event.why == LeftOut::Senior, "{:?}", event);
            }
        }
    }
}

/// A word as it lies in the log.
fn entry(by: u8, number: u64, ms: i64, body: Body) -> Entry {
    let at = EventRef { device: device(by), number };
    let body = body.signed_for(at, &key(by));
    Entry { at, time: Hlc { ms, count: 0 }, builds_on: Vec::new(), body, struck_out: Vec::new() }
}

fn at(by: u8, number: u64) -> EventRef {
    EventRef { device: device(by), number }
}

const WORK: Option<MemberRole> = Some(MemberRole::Technician);

#[test]
fn what_a_lost_device_wrote_before_stays_and_the_lowest_number_holds() {
    let said = [
        entry(1, 1, 1, told(1)),
        entry(1, 2, 2, admitted(2, MemberRole::Technician, 0)),
        entry(1, 3, 3, withdrawn(2, 7)),
        entry(1, 4, 4, withdrawn(2, 5)),
        entry(1, 5, 5, withdrawn(2, 9)),
        entry(1, 6, 6, admitted(2, MemberRole::Planner, 6)),
    ];
    let members = Membership::of(founder(), &said);
    assert_eq!(members.judge(at(2, 5), WORK), Ok(()));
    assert_eq!(members.judge(at(2, 6), WORK), Err(LeftOut::Withdrawn));
    assert_eq!(members.judge(at(2, 6), None), Err(LeftOut::Withdrawn), "not even its name");
    assert_eq!(members.standing(device(2)), Standing::Withdrawn, "no later word brings it back");
    assert!(!members.is_planners(&key(2).public()));
}

#[test]
fn a_withdrawn_planners_later_words_never_count_whatever_time_they_claim() {
    let by_two = |number| entry(2, number, 0, admitted(3, MemberRole::Technician, 0));
    let said = |number| {
        vec![
            entry(1, 1, 1, told(1)),
            entry(1, 2, 2, admitted(2, MemberRole::Planner, 0)),
            entry(1, 3, 9, withdrawn(2, 4)),
            by_two(number),
            // It hits back, at the founder and with a clock set back.
            entry(2, 6, 0, withdrawn(1, 0)),
        ]
    };
    assert_eq!(Membership::of(founder(), &said(4)).standing(device(3)), Standing::Technician);
    let members = Membership::of(founder(), &said(5));
    assert_eq!(members.standing(device(3)), Standing::Waits);
    assert_eq!(members.judge(at(1, 3), Some(MemberRole::Planner)), Ok(()));
}

#[test]
fn of_two_planners_that_withdraw_each_other_the_one_before_holds() {
    let mut said = vec![
        entry(1, 1, 1, told(1)),
        entry(1, 2, 2, admitted(2, MemberRole::Planner, 0)),
        entry(1, 3, 3, admitted(3, MemberRole::Planner, 0)),
        entry(3, 8, 4, withdrawn(2, 0)),
        entry(2, 8, 5, withdrawn(3, 2)),
    ];
    for _ in 0..said.len() {
        said.rotate_left(1);
        let members = Membership::of(founder(), &said);
        assert_eq!(members.standing(device(2)), Standing::Planner);
        assert_eq!(members.standing(device(3)), Standing::Withdrawn);
    }
    let members = Membership::of(founder(), &said[..]);
    assert_eq!(members.may_judge(device(2), device(1)), Err(LeftOut::Senior));
    let before: Vec<Entry> = said.into_iter().filter(|entry| entry.at != at(2, 8)).collect();
    let refused = Membership::of(founder(), &before);
    let why = refused.judge(at(3, 8), Some(MemberRole::Planner));
    assert_eq!(why, Err(LeftOut::Senior), "a later planner does not withdraw one before it");
}

#[test]
fn a_word_that_was_forged_or_copied_elsewhere_counts_for_nothing() {
    let good = entry(1, 2, 2, admitted(2, MemberRole::Planner, 0));
    let begun = [entry(1, 1, 1, told(1)), good.clone()];
    let with = |more: Entry| Membership::of(founder(), &[begun.as_slice(), &[more]].concat());
    // Signed by another; changed; the same once more at another place; written by another device; of another fleet.
    let stranger = Entry {
        body: admitted(3, MemberRole::Planner, 0).signed_for(at(1, 3), &key(3)),
        ..entry(1, 3, 3, told(1))
    };
    assert_eq!(with(stranger.clone()).judge(at(1, 3), Some(MemberRole::Planner)), Err(LeftOut::Forged));
    assert_eq!(with(stranger).standing(device(3)), Standing::Waits);
    let mut changed = entry(1, 3, 3, admitted(3, MemberRole::Reader, 0));
    if let Body::DeviceAdmitted(said) = &mut changed.body {
        said.role = MemberRole::Planner;
    }
    assert_eq!(with(changed).standing(device(3)), Standing::Waits);
    let demoted = entry(1, 3, 3, admitted(2, MemberRole::Reader, 0));
    let again = Entry { at: at(1, 4), time: Hlc { ms: 4, count: 0 }, ..good.clone() };
    let replayed = Membership::of(founder(), &[begun.as_slice(), &[demoted, again]].concat());
    assert_eq!(replayed.standing(device(2)), Standing::Reader, "an old word, copied, gave the role back");
    assert_eq!(replayed.judge(at(1, 4), Some(MemberRole::Planner)), Err(LeftOut::Forged));
    let others = Entry { at: at(2, 3), ..entry(1, 3, 3, withdrawn(3, 0)) };
    assert_eq!(with(others).standing(device(3)), Standing::Waits);
    assert_eq!(Membership::of(key(2).public(), &begun).standing(device(2)), Standing::Waits);
}

#[test]
fn nobody_passes_for_the_founder_by_telling_its_key() {
    let copied = Entry { at: at(3, 1), ..entry(1, 1, 1, told(1)) };
    let members = Membership::of(founder(), &[copied, entry(3, 2, 2, admitted(3, MemberRole::Planner, 0))]);
    assert_eq!(members.standing(device(3)), Standing::Waits);
}

#[test]
fn another_role_holds_from_its_number_on_and_the_latest_word_stands() {
    let said = [
        entry(1, 1, 1, told(1)),
        entry(1, 2, 2, admitted(2, MemberRole::Technician, 0)),
        entry(1, 3, 3, admitted(2, MemberRole::Reader, 10)),
        entry(1, 4, 4, admitted(2, MemberRole::Technician, 20)),
    ];
    let members = Membership::of(founder(), &said);
    for (number, counts) in [(1, true), (10, true), (11, false), (20, false), (21, true)] {
        assert_eq!(members.judge(at(2, number), WORK).is_ok(), counts, "{number}");
    }
    assert_eq!(members.left_out(device(2), 30), [(11..=20, LeftOut::Role)]);
}

/// Two devices of a fleet: the founder's, and one that it has in that role.
fn office_and_van(role: MemberRole) -> (Kept, Kept) {
    let mut two = vec![joined(1), joined(2)];
    hear(&mut two, 0, 1);
    write(&mut two[0], [admitted(2, role, 0)]);
    write(&mut two[0], fleet::fleet());
    hear(&mut two, 1, 0);
    let van = two.pop().expect("the van");
    (two.pop().expect("the office"), van)
}

#[test]
fn a_members_own_program_refuses_what_would_not_count() {
    let limits = || {
        let fleet =
            serde_json::json!({"kind": "policy-set", "scope": "fleet", "service_years": 6.0, "stop": true});
        serde_json::from_value::<Body>(fleet).expect("a policy")
    };
    let site = || fleet::a_site(8, "North");
    let refusal = |kept: &mut Kept, body: Body| kept.register.append([body], now()).err();
    let (mut office, mut van) = office_and_van(MemberRole::Technician);
    assert!(refusal(&mut van, site()).is_none());
    for body in [limits(), admitted(3, MemberRole::Reader, 0), withdrawn(1, 0)] {
        assert!(matches!(refusal(&mut van, body), Some(Error::PlannersOnly)));
    }
    let limit = write(&mut office, [limits()])[0];
    van.register.merge(&office.register.bundle().expect("reads")).expect("merges");
    let void = || Body::Voided(serde_json::from_value(serde_json::json!({"reason": "no"})).expect("a void"));
    let error = van.register.append([NewEvent::on(void(), [limit])], now()).expect_err("a planner's limit");
    assert!(matches!(error, Error::PlannersOnly), "{error}");

    let (mut office, mut reader) = office_and_van(MemberRole::Reader);
    assert!(matches!(refusal(&mut reader, site()), Some(Error::Reader)));
    let name = serde_json::from_value(serde_json::json!({"kind": "device-named", "name": "Desk"}));
    assert!(refusal(&mut reader, name.expect("a name")).is_none(), "its own name is its own");
    let word = write(&mut office, [withdrawn(2, 1)])[0];
    let error = office.register.append([NewEvent::on(void(), [word])], now()).expect_err("a word stays");
    assert!(matches!(error, Error::WordStays), "{error}");
    reader.register.merge(&office.register.bundle().expect("reads")).expect("merges");
    assert!(matches!(refusal(&mut reader, site()), Some(Error::Gone)));
    let mut open = fleet::begin(5);
    assert!(matches!(refusal(&mut open, withdrawn(2, 1)), Some(Error::OpenFleet)));
}

#[test]
fn what_a_stranger_strikes_out_stands() {
    let (mut office, _) = office_and_van(MemberRole::Technician);
    let before = office.register.counts().expect("reads").hoses;
    let mut stranger = joined(4);
    stranger.register.merge(&office.register.bundle().expect("reads")).expect("merges");
    let made: Vec<EventRef> = (office.register.bundle().expect("reads").events.iter())
        .filter(|event| event.body.kind() == "assembly-made")
        .map(|event| event.at())
        .collect();
    assert!(!made.is_empty());
    let void =
        Body::Voided(serde_json::from_value(serde_json::json!({"reason": "never made"})).expect("a void"));
    write(&mut stranger, [NewEvent::on(void, made)]);
    assert!(stranger.register.counts().expect("reads").hoses < before, "on itself alone, while it waits");
    office.register.merge(&stranger.register.bundle().expect("reads")).expect("merges");
    assert_eq!(office.register.counts().expect("reads").hoses, before);
    let left_out = office.register.left_out().expect("reads");
    let [waits] = left_out.as_slice() else { panic!("one device is left out: {left_out:?}") };
    assert_eq!((waits.device, waits.why, waits.count), (device(4), LeftOut::Waits, 1));
    write(&mut office, [admitted(4, MemberRole::Technician, 0)]);
    assert!(office.register.counts().expect("reads").hoses < before, "with the nod it counts");
    assert_eq!(office.register.left_out().expect("reads"), []);
}

#[test]
fn a_restored_register_counts_no_more_what_its_old_device_wrote_while_it_waited() {
    let (mut office, _) = office_and_van(MemberRole::Technician);
    let mut waits = joined(4);
    waits.register.merge(&office.register.bundle().expect("reads")).expect("merges");
    write(&mut waits, [fleet::a_site(77, "Quarry")]);
    let backup = waits.folder.path().join("backup.db");
    waits.register.backup(&backup).expect("is backed up");
    let path = waits.folder.path().join("restored.db");
    let mut restored =
        hosewright_store::restore(&backup, &path, DeviceId::from_bytes([44; 16])).expect("restored");
    assert_eq!(restored.verify().expect("verifies").faults, []);
    office.register.merge(&restored.bundle().expect("reads")).expect("merges");
    assert_eq!(office.register.dump().expect("reads"), restored.dump().expect("reads"));
}
