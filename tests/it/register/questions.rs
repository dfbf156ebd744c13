//! What screens ask: a hose by its code, a machine, a place, what falls due, search, counts.

use super::fleet::{
    self, Kept, a_machine, a_note, a_place, a_site, begin, code, day, device, fitted, machine, made, place,
    site, taken_off, write,
};
use chrono::NaiveDate;
use hosewright_core::care::{CountedFrom, DueFor, DueRow};
use hosewright_core::check::Verdict;
use hosewright_core::record::{
    About, Body, DeviceNamed, Fitted, Graded, HoursRead, Inspected, JobId, PolicyOf, PolicySet, Scope,
    TagWithdrawn, Voided,
};
use hosewright_store::{Begun, Due, DueAsk, Hit, NewEvent, Register, Status};

const OLD: &str = "7KQ4M2XR9D";

/// All that falls due, by the guides of the tables (L055, L054, L066) and the owner's policies.
fn all_due(register: &Register, on: NaiveDate) -> Vec<Due> {
    let rules = register.rules().expect("reads");
    register.due(on, &DueAsk::default(), &rules).expect("reads")
}

fn some() -> Kept {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    kept
}

#[test]
fn a_hose_comes_with_its_whole_history() {
    let mut kept = some();
    write(
        &mut kept,
        [
            Body::DeviceNamed(DeviceNamed { name: "Van 2".into() }),
            Body::Inspected(Inspected {
                code: code(OLD),
                date: day("2024-06-01"),
                findings: vec![
                    Graded { sign: "COVER".into(), grade: Verdict::Caution },
                    Graded { sign: "ABR".into(), grade: Verdict::Stop },
                ],
                opened: false,
            }),
            taken_off(OLD, 2, "2024-06-02", Some("ABR")),
            fitted("A1", 2, "2026-11-25"),
            a_note(About::Hose(code(OLD)), "cover worn through at the clamp"),
        ],
    );
    let hose = kept.register.hose(&code("7kq4m-2xr9d-2")).expect("reads").expect("is there");
    assert_eq!(hose.status, Status::TakenOff);
    assert_eq!(hose.assembly.expect("was made").record, fleet::an_assembly(OLD, Some("2021-05-04")));
    let [stay] = hose.stays.as_slice() else { panic!("one stay is expected: {:?}", hose.stays) };
    assert_eq!(stay.at.place_name.as_deref(), Some("Stick cylinder, rod side"));
    assert_eq!(stay.at.site_name.as_deref(), Some("North Quarry"));
    assert_eq!((stay.on_date, stay.off_date), (Some(day("2021-06-01")), Some(day("2024-06-02"))));
    assert_eq!(stay.cause.as_deref(), Some("ABR"));
    let signs: Vec<_> = hose.inspections[0].findings.iter().map(|finding| finding.sign.as_str()).collect();
    assert_eq!(signs, ["COVER", "ABR"], "findings lost their order");
    assert_eq!(hose.notes[0].text, "cover worn through at the clamp");
    assert_eq!(hose.history.len(), 5, "{:?}", hose.history);
    assert!(hose.history.iter().all(|written| written.by.as_deref() == Some("Van 2")));
    assert_eq!(hose.conflicts, []);

    let fresh = kept.register.hose(&code("A1")).expect("reads").expect("is there");
    assert_eq!(fresh.status, Status::Fitted);
    assert_eq!(kept.register.hose(&code("NONE")).expect("reads"), None);
}

#[test]
fn a_correction_replaces_what_was_recorded_and_both_stay_in_the_history() {
    let mut kept = some();
    let events = write(&mut kept, [fitted("A1", 1, "2026-11-25")]);
    write(&mut kept, [NewEvent::on(fitted("A1", 3, "2026-11-24"), [events[0]])]);
    let hose = kept.register.hose(&code("A1")).expect("reads").expect("is there");
    assert_eq!(hose.stays.iter().map(|stay| stay.at.place).collect::<Vec<_>>(), [place(3)]);
    assert_eq!(hose.history.len(), 3);
    assert_eq!(hose.conflicts, []);
}

#[test]
fn what_was_recorded_in_error_is_struck_out_and_stays_readable() {
    let mut kept = some();
    let events = write(&mut kept, [fitted("A1", 1, "2026-11-25")]);
    write(&mut kept, [NewEvent::on(Body::Voided(Voided { reason: "wrong hose".into() }), [events[0]])]);
    let hose = kept.register.hose(&code("A1")).expect("reads").expect("is there");
    assert_eq!((hose.status, hose.stays.len()), (Status::Made, 0));
    let struck: Vec<_> = hose.history.iter().map(|written| written.void).collect();
    assert_eq!(struck, [false, true, false], "made, fitted (void), voided");
    // The place is free again.
    write(&mut kept, [made("B2", "2026-11-25"), fitted("B2", 1, "2026-11-25")]);
}

#[test]
fn a_machine_comes_with_its_places_and_what_sits_there() {
    let mut kept = some();
    write(
        &mut kept,
        [
            Body::HoursRead(HoursRead { machine: machine(1), hours: 6700.0, date: day("2026-10-01") }),
            Body::Fitted(Fitted {
                code: code("A1"),
                place: place(1),
                date: day("2026-11-25"),
                already_there: false,
                hours: Some(6812.0),
            }),
        ],
    );
    let sheet = kept.register.machine(machine(1)).expect("reads").expect("is there");
    assert_eq!(sheet.machine.record.name, "Excavator 3");
    assert_eq!(sheet.site.expect("has one").record.name, "North Quarry");
    assert_eq!(sheet.hours.expect("was read").hours, 6812.0, "hours noted with a hose count");
    assert_eq!(sheet.circuits[0].record.relief_bar.map(|bar| bar.get()), Some(350.0));
    let sits: Vec<_> = sheet
        .places
        .iter()
        .map(|row| {
            (
                row.place.record.number,
                row.hoses.iter().map(|stay| fleet::short(stay.code)).collect::<Vec<_>>(),
            )
        })
        .collect();
    assert_eq!(sits, [(1, vec!["A1".to_owned()]), (2, vec![OLD.to_owned()]), (3, vec![])]);
    assert_eq!(kept.register.machine(machine(9)).expect("reads"), None);
}

#[test]
fn a_place_shows_every_hose_that_sat_there() {
    let mut kept = some();
    write(
        &mut kept,
        [
            taken_off(OLD, 2, "2024-06-02", Some("ABR")),
            fitted("A1", 2, "2024-06-02"),
            taken_off("A1", 2, "2026-11-25", None),
        ],
    );
    let sheet = kept.register.place(place(2)).expect("reads").expect("is there");
    assert_eq!(sheet.place.record.spec, Some(fleet::spec(1240.0)));
    let stays: Vec<_> = sheet
        .stays
        .iter()
        .map(|stay| (fleet::short(stay.code), stay.cause.as_deref(), stay.off_date))
        .collect();
    let expected = [
        (OLD.to_owned(), Some("ABR"), Some(day("2024-06-02"))),
        ("A1".to_owned(), None, Some(day("2026-11-25"))),
    ];
    assert_eq!(stays, expected);
    assert_eq!(kept.register.stays().expect("reads").len(), 2);
}

/// Code, what, day due, verdict.
type Row = (String, DueFor, Option<String>, Verdict);

fn due(kept: &Kept, today: &str) -> Vec<Row> {
    let due = all_due(&kept.register, day(today));
    due.into_iter()
        .map(|due| {
            (fleet::short(due.code), due.row.what, due.row.due.map(|day| day.to_string()), due.row.verdict)
        })
        .collect()
}

fn row(code: &str, what: DueFor, due: Option<&str>, verdict: Verdict) -> Row {
    (code.into(), what, due.map(str::to_owned), verdict)
}

#[test]
fn without_a_policy_the_guide_of_six_years_is_a_caution() {
    let kept = some();
    let expected = |service, inspection| {
        [
            row(OLD, DueFor::Inspection, Some("2022-06-01"), inspection),
            row(OLD, DueFor::Service, Some("2027-05-04"), service),
            row("A1", DueFor::Storage, Some("2028-11-20"), Verdict::Pass),
        ]
    };
    // The day before, the day itself: DIN 20066 counts from assembly, not from fitting.
    assert_eq!(due(&kept, "2022-05-31"), expected(Verdict::Pass, Verdict::Pass));
    assert_eq!(due(&kept, "2027-05-03"), expected(Verdict::Pass, Verdict::Caution));
    assert_eq!(due(&kept, "2027-05-04"), expected(Verdict::Caution, Verdict::Caution));
}

#[test]
fn the_owners_narrowest_policy_holds_and_may_stop() {
    let mut kept = some();
    let policy = |scope, service_years, stop| {
        Body::PolicySet(PolicySet { service_years, stop, ..PolicySet::none(scope, PolicyOf::ALL) })
    };
    write(&mut kept, [policy(Scope::Fleet, Some(5.0), true)]);
    let service = |kept: &Kept| {
        let due = all_due(&kept.register, day("2026-11-25"));
        due.into_iter().map(|due| due.row).find(|row| row.what == DueFor::Service).expect("is due some day")
    };
    let scope = |row: &DueRow| row.rule.as_ref().and_then(|rule| rule.scope.clone());
    let fleet_wide = service(&kept);
    assert_eq!((fleet_wide.due, fleet_wide.verdict), (Some(day("2026-05-04")), Verdict::Stop));
    assert_eq!(scope(&fleet_wide), Some(Scope::Fleet));

    write(&mut kept, [policy(Scope::Machine(machine(1)), None, false)]);
    assert_eq!(scope(&service(&kept)), Some(Scope::Fleet), "a scope that says nothing took over");

    write(&mut kept, [policy(Scope::Site(site(1)), Some(7.5), false)]);
    write(&mut kept, [policy(Scope::Place(place(2)), Some(5.5), false)]);
    let at_place = service(&kept);
    assert_eq!((at_place.due, at_place.verdict), (Some(day("2026-11-04")), Verdict::Caution));
    assert_eq!(scope(&at_place), Some(Scope::Place(place(2))));
}

/// The same with a hose, X1, that sat at place 3 when it was found there.
fn some_with_an_unknown_age() -> Kept {
    let mut kept = some();
    let unknown = Body::AssemblyMade(Box::new(fleet::an_assembly("X1", None)));
    let found = Body::Fitted(Fitted {
        code: code("X1"),
        place: place(3),
        date: day("2026-11-25"),
        already_there: true,
        hours: None,
    });
    write(&mut kept, [unknown, found]);
    kept
}

#[test]
fn a_hose_whose_age_is_not_known_is_never_a_quiet_pass() {
    let kept = some_with_an_unknown_age();
    let due = all_due(&kept.register, day("2026-11-25"));
    let of = |what| due.iter().find(|due| due.code == code("X1") && due.row.what == what).expect("is listed");
    let service = of(DueFor::Service);
    assert_eq!((service.row.counted_from, service.row.verdict), (CountedFrom::Fitted, Verdict::Caution));
    let inspection = of(DueFor::Inspection);
    assert_eq!((inspection.row.due, inspection.row.verdict), (None, Verdict::Caution));
    assert_eq!(due[0].code, code("X1"), "what can not be reckoned comes first");
}

#[test]
fn a_withdrawn_tag_does_not_take_a_fitted_hose_off_the_list() {
    let mut kept = some();
    let withdrawn = |tag: &str| Body::TagWithdrawn(TagWithdrawn { code: code(tag), reason: "torn".into() });
    write(&mut kept, [withdrawn(OLD), withdrawn("A1")]);
    let codes: Vec<_> = due(&kept, "2026-11-25").into_iter().map(|row| (row.0, row.1)).collect();
    assert_eq!(codes, [(OLD.to_owned(), DueFor::Inspection), (OLD.to_owned(), DueFor::Service)]);
}

#[test]
fn an_inspection_moves_the_next_one() {
    let mut kept = some();
    let seen = Inspected { code: code(OLD), date: day("2026-10-01"), findings: vec![], opened: false };
    write(&mut kept, [Body::Inspected(seen)]);
    assert!(due(&kept, "2026-11-25").contains(&row(
        OLD,
        DueFor::Inspection,
        Some("2027-10-01"),
        Verdict::Pass
    )));
}

#[test]
fn search_finds_by_code_machine_place_site_and_size() {
    let mut kept = some();
    write(
        &mut kept,
        [
            a_site(2, "\u{d6}stliche Grube"),
            a_machine(2, 2, "Loader 1"),
            a_place(7, 2, "Lift cylinder, right"),
        ],
    );
    let found = |text: &str| -> Vec<String> {
        kept.register
            .search(text, 50)
            .expect("reads")
            .into_iter()
            .map(|hit| match hit {
                Hit::Hose { code, at, .. } => {
                    format!("hose {}{}", fleet::short(code), if at.is_some() { " fitted" } else { "" })
                }
                Hit::Place { at, .. } => format!("place {}", at.number.unwrap_or_default()),
                Hit::Machine { name, .. } => format!("machine {name}"),
                Hit::Site { name, .. } => format!("site {name}"),
            })
            .collect()
    };
    let old = format!("hose {OLD} fitted");
    for text in ["7kq4m", "7KQ4M2XR9D", "7kq4m2xr9dd", "2xr9d"] {
        assert_eq!(found(text), [old.as_str()], "searched for {text}");
    }
    assert_eq!(found("stick 2sn excavator"), [old.as_str()], "words of hose, place and machine together");
    assert_eq!(found("dn16 jic"), [old.as_str(), "hose A1"], "what was recorded last comes first");
    assert_eq!(found("\u{f6}stliche"), ["place 7", "machine Loader 1", "site \u{d6}stliche Grube"]);
    assert_eq!(found("1240 swing"), Vec::<String>::new());
    assert_eq!(found("swing"), ["place 3"]);
    assert_eq!(found("a1")[0], "hose A1", "a code that begins so");
    for nothing in ["", "   ", "%", "_", "'", "\"", "zzz"] {
        assert_eq!(found(nothing), Vec::<String>::new(), "searched for `{nothing}`");
    }
    assert_eq!(kept.register.search("e", 2).expect("reads").len(), 2);
}

#[test]
fn lists_and_counts_tell_what_the_register_holds() {
    let mut kept = some();
    write(&mut kept, [a_site(2, "East Yard"), a_machine(2, 2, "Loader 1")]);
    let sites: Vec<_> =
        kept.register.sites().expect("reads").into_iter().map(|s| (s.name, s.machines, s.hoses)).collect();
    assert_eq!(sites, [("East Yard".to_owned(), 1, 0), ("North Quarry".to_owned(), 1, 1)]);
    let machines: Vec<_> =
        kept.register.machines().expect("reads").into_iter().map(|m| (m.name, m.places, m.hoses)).collect();
    assert_eq!(machines, [("Loader 1".to_owned(), 0, 0), ("Excavator 3".to_owned(), 3, 1)]);
    let counts = kept.register.counts().expect("reads");
    assert_eq!(
        (counts.sites, counts.machines, counts.places, counts.hoses, counts.in_service, counts.events),
        (2, 2, 3, 2, 1, 11)
    );
    let devices = kept.register.devices().expect("reads");
    assert_eq!(devices.iter().map(|d| (d.device, d.events)).collect::<Vec<_>>(), [(device(1), 11)]);
}

#[test]
fn what_was_begun_is_kept_with_its_file_until_it_is_done() {
    let mut kept = begin(1);
    let sheet = Begun::SupplierSheet;
    let keep = |kept: &mut Kept, column: &str, file: Option<&[u8]>| {
        let content = serde_json::json!({ "column": column });
        kept.register.keep_unfinished(sheet, &content, file, fleet::now()).expect("is kept");
    };
    keep(&mut kept, "?", Some(b"DN;Crimp"));
    keep(&mut kept, "dn", None);
    let read = kept.register.unfinished(sheet).expect("reads").expect("it was begun");
    assert_eq!(read.content["column"], "dn");
    assert_eq!(kept.register.unfinished_file(sheet).expect("reads").as_deref(), Some(&b"DN;Crimp"[..]));
    assert_eq!(kept.register.unfinished(Begun::SupplierRow).expect("reads"), None, "one of each kind");
    kept.register.close_unfinished(sheet).expect("is closed");
    assert_eq!(kept.register.unfinished(sheet).expect("reads"), None);
    assert_eq!(kept.register.unfinished_file(sheet).expect("reads"), None);
}

#[test]
fn a_half_finished_job_is_offered_until_it_is_closed() {
    let mut kept = begin(1);
    let job = JobId::from_bytes([3; 16]);
    let keep = |kept: &mut Kept, typed: &str| {
        kept.register.keep_draft(job, &serde_json::json!({"typed": typed}), fleet::now()).expect("is kept");
    };
    keep(&mut kept, "13");
    keep(&mut kept, "13/1");
    let drafts = kept.register.drafts().expect("reads");
    assert_eq!(drafts.iter().map(|d| d.content["typed"].clone()).collect::<Vec<_>>(), ["13/1"]);
    kept.register.close_draft(job).expect("is closed");
    assert_eq!(kept.register.drafts().expect("reads"), []);
    keep(&mut kept, "13/16");
    assert_eq!(kept.register.drafts().expect("reads").len(), 1, "a job taken up again is not offered");
    assert_eq!(kept.register.conflicts().expect("reads"), []);
}

#[test]
fn the_count_of_what_is_past_is_that_of_the_list_and_holds_no_unknown_age() {
    let kept = some_with_an_unknown_age();
    // What lies in the store is on no machine.
    for (today, hoses, on_machine) in [("2027-05-03", 0, 0), ("2027-05-04", 1, 1), ("2032-11-25", 3, 2)] {
        let today = day(today);
        let overdue = kept.register.overdue(today).expect("reads");
        let counted = (overdue.hoses, overdue.machines.get(&machine(1)).copied().unwrap_or(0));
        assert_eq!(counted, (hoses, on_machine));
        let of_age = [DueFor::Service, DueFor::Storage];
        let due = all_due(&kept.register, today);
        let listed = due.iter().filter(|due| of_age.contains(&due.row.what) && due.row.is_past(today));
        assert_eq!(listed.count(), hoses as usize, "the list counts another way");
    }
}

#[test]
fn a_place_tells_the_stay_that_ended_last() {
    let mut kept = some();
    let last_off = |kept: &Kept| {
        let sheet = kept.register.machine(machine(1)).expect("reads").expect("is there");
        let rows = sheet.places.into_iter();
        rows.filter_map(|row| {
            row.last_off.map(|stay| (row.place.record.number, fleet::short(stay.code), stay.cause))
        })
        .collect::<Vec<_>>()
    };
    assert_eq!(last_off(&kept), []);
    write(&mut kept, [taken_off(OLD, 2, "2024-06-02", Some("ABR"))]);
    assert_eq!(last_off(&kept), [(2, OLD.to_owned(), Some("ABR".to_owned()))]);
    write(&mut kept, [fitted("A1", 2, "2024-06-03"), taken_off("A1", 2, "2026-11-25", None)]);
    assert_eq!(last_off(&kept), [(2, "A1".to_owned(), None)]);
}

#[test]
fn a_spell_begins_only_where_the_day_of_fitting_is_known() {
    let mut kept = some();
    let found = Body::Fitted(Fitted {
        code: code("A1"),
        place: place(3),
        date: day("2026-11-25"),
        already_there: true,
        hours: None,
    });
    write(&mut kept, [taken_off(OLD, 2, "2024-06-02", Some("ABR")), found]);
    let spells: Vec<_> = kept
        .register
        .spells()
        .expect("reads")
        .into_iter()
        .map(|spell| {
            (fleet::short(spell.code), spell.fitted, spell.off, spell.failed, spell.hose, spell.line)
        })
        .collect();
    let hose = || Some(("EN 853".to_owned(), "2SN".to_owned()));
    let line = || Some("cylinder".to_owned());
    let expected = [
        (OLD.to_owned(), Some(day("2021-06-01")), Some(day("2024-06-02")), true, hose(), line()),
        ("A1".to_owned(), None, None, false, hose(), line()),
    ];
    assert_eq!(spells, expected);
}
