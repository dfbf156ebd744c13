//! What is refused, and that each refusal names the way out and changes nothing.

use super::fleet::{
    self, a_circuit, a_machine, a_place, a_site, begin, circuit, code, day, device, fitted, machine, made,
    now, person, place, site, taken_off, write,
};
use hosewright_core::record::{Body, HoursRead, Overridden, Place, TagWithdrawn, Voided};
use hosewright_store::{Error, NewEvent, Register};
use rusqlite::Connection;
use std::fs;

#[test]
fn an_older_program_leaves_a_newer_programs_file_as_it_is() {
    let kept = begin(1);
    let path = kept.path();
    drop(kept.register);
    Connection::open(&path).expect("opens").pragma_update(None, "user_version", 99).expect("is set");
    let before = fs::read(&path).expect("reads");
    let error = Register::open(&path, device(1)).expect_err("was opened");
    assert!(matches!(error, Error::NewerSchema { found: 99, .. }), "{error}");
    assert!(error.to_string().contains("update this program"), "{error}");
    assert_eq!(fs::read(&path).expect("reads"), before, "the file was changed");
}

#[test]
fn other_files_are_no_register() {
    let folder = tempfile::tempdir().expect("a folder");
    let photo = folder.path().join("photo.jpg");
    fs::write(&photo, vec![0xd8; 5000]).expect("writes");
    let other = folder.path().join("other.db");
    Connection::open(&other).expect("opens").execute("CREATE TABLE a (b)", []).expect("is made");
    for path in [&photo, &other] {
        let before = fs::read(path).expect("reads");
        let error = Register::open(path, device(1)).expect_err("was opened");
        assert!(matches!(error, Error::NotARegister { .. }), "{error}");
        assert_eq!(fs::read(path).expect("reads"), before, "{} was changed", path.display());
    }
    for path in [folder.path().to_owned(), folder.path().join("no/such/folder.db")] {
        let error = Register::open(path, device(1)).expect_err("was opened");
        assert!(matches!(error, Error::CannotOpen { .. }), "{error}");
    }
}

#[test]
fn a_register_that_another_program_writes_in_is_locked() {
    let mut kept = begin(1);
    let other = Connection::open(kept.path()).expect("opens");
    other.execute_batch("BEGIN IMMEDIATE").expect("begins");
    let error = kept.register.append([a_site(1, "North")], now()).expect_err("was written");
    assert!(matches!(error, Error::Locked), "{error}");
    other.execute_batch("ROLLBACK").expect("ends");
    write(&mut kept, [a_site(1, "North")]);
}

#[test]
fn a_file_that_may_not_be_written_is_read_only() {
    let kept = begin(1);
    let path = kept.path();
    drop(kept.register);
    let mut permissions = fs::metadata(&path).expect("is there").permissions();
    permissions.set_readonly(true);
    fs::set_permissions(&path, permissions).expect("is set");
    let error = Register::open(&path, device(1)).expect_err("was opened");
    assert!(matches!(error, Error::ReadOnly), "{error}");
}

/// Each line: what is written, and what the refusal says.
#[test]
fn what_contradicts_the_register_is_refused_in_words() {
    let mut kept = begin(1);
    let events = write(&mut kept, fleet::fleet());
    write(&mut kept, [a_site(2, "South"), a_machine(2, 2, "Loader 1"), a_circuit(2, 2, 250.0)]);
    write(&mut kept, [made("W1", "2026-01-01")]);
    write(&mut kept, [Body::TagWithdrawn(TagWithdrawn { code: code("W1"), reason: "torn".into() })]);
    let before = kept.register.dump().expect("reads");
    let foreign_circuit = match a_place(4, 1, "Bucket") {
        Body::PlaceSet(place) => Body::PlaceSet(Box::new(Place { circuit: Some(circuit(2)), ..*place })),
        other => other,
    };
    let hours = |machine, hours| Body::HoursRead(HoursRead { machine, hours, date: day("2026-11-25") });
    let over =
        Overridden { code: code("A1"), rule: "flow-speed".into(), reason: "short".into(), by: person(9) };
    let void = Body::Voided(Voided { reason: "typed twice".into() });
    let cases: Vec<(NewEvent, String)> = vec![
        (a_machine(3, 9, "Crane").into(), format!("no site {}", site(9))),
        (a_place(9, 9, "Lift").into(), format!("no machine {}", machine(9))),
        (foreign_circuit.into(), "another machine".into()),
        (hours(machine(9), 1.0).into(), "no machine".into()),
        (hours(machine(1), f64::NAN).into(), "`hours`".into()),
        (hours(machine(1), -1.0).into(), "`hours`".into()),
        (a_site(3, "  ").into(), "`name` is blank".into()),
        (made("A1", "2026-11-25").into(), "is taken".into()),
        (fitted("N0SACH", 1, "2026-11-25").into(), "no hose N0SAC-H0000".into()),
        (fitted("A1", 9, "2026-11-25").into(), format!("no place {}", place(9))),
        (fitted("A1", 2, "2026-11-25").into(), "hose 7KQ4M-2XR9D-D is fitted at place".into()),
        (fitted("7KQ4M2XR9D", 1, "2026-11-25").into(), "taken off there first".into()),
        (fitted("W1", 1, "2026-11-25").into(), "was withdrawn".into()),
        (taken_off("A1", 1, "2026-11-25", None).into(), "not fitted at place".into()),
        (taken_off("7KQ4M2XR9D", 2, "2021-05-31", None).into(), "before it was fitted".into()),
        (Body::Overridden(over).into(), format!("no person {}", person(9))),
        (void.clone().into(), "name the event".into()),
        (NewEvent::on(void, []), "name the event".into()),
        (NewEvent::on(a_site(2, "West"), [events[0]]), "something else".into()),
    ];
    for (new, words) in cases {
        let error = kept.register.append([new.clone()], now()).expect_err(&format!("taken: {new:?}"));
        assert!(error.to_string().contains(&words), "`{error}` does not say `{words}`");
        assert_eq!(kept.register.dump().expect("reads"), before, "{new:?} left something behind");
    }
}
