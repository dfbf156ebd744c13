//! Names of people: beside the log, and gone when they are erased.

use super::fleet::{self, begin, later, now, person, write};
use hosewright_core::record::{Body, Overridden};
use hosewright_store::{Bundle, Error};
use std::fs;
use std::path::Path;

const NAME: &str = "Quillon Vasterby";

fn files_hold(folder: &Path, text: &str) -> bool {
    fs::read_dir(folder).expect("the folder is there").any(|file| {
        let bytes = fs::read(file.expect("a file").path()).expect("reads");
        bytes.windows(text.len()).any(|window| window == text.as_bytes())
    })
}

#[test]
fn an_erased_name_is_gone_from_the_file_and_the_log_stays_whole() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    kept.register.name_person(person(1), NAME, now()).expect("is named");
    let body = Overridden {
        code: fleet::code("A1"),
        rule: "flow-speed".into(),
        reason: "short line".into(),
        by: person(1),
    };
    write(&mut kept, [Body::Overridden(body)]);
    let name = |kept: &fleet::Kept| {
        let hose = kept.register.hose(&fleet::code("A1")).expect("reads").expect("is there");
        hose.overrides[0].name.clone()
    };
    assert_eq!(name(&kept).as_deref(), Some(NAME));
    assert!(files_hold(kept.folder.path(), NAME), "the test looks in the wrong files");

    kept.register.erase_person(person(1)).expect("is erased");
    assert_eq!(name(&kept), None);
    assert_eq!(kept.register.people().expect("reads"), []);
    assert!(!files_hold(kept.folder.path(), NAME), "the erased name still stands in the file");
    assert_eq!(kept.register.verify().expect("verifies").faults, []);
}

#[test]
fn an_erased_name_does_not_come_back_by_merging() {
    let (mut one, mut two) = (begin(1), begin(2));
    one.register.name_person(person(1), NAME, now()).expect("is named");
    let old = one.register.bundle().expect("reads");
    two.register.merge(&old).expect("merges");
    assert_eq!(two.register.people().expect("reads").len(), 1);

    one.register.erase_person(person(1)).expect("is erased");
    let erased = one.register.bundle().expect("reads");
    two.register.merge(&erased).expect("merges");
    for van in [&mut one, &mut two] {
        van.register.merge(&old).expect("merges");
        assert_eq!(van.register.people().expect("reads"), []);
        let again = van.register.name_person(person(1), NAME, later(9));
        assert!(matches!(again, Err(Error::Erased { .. })), "{again:?}");
    }
    assert_eq!(one.register.bundle().expect("reads"), two.register.bundle().expect("reads"));
}

#[test]
fn the_later_of_two_names_stands_on_both_devices() {
    let (mut one, mut two) = (begin(1), begin(2));
    one.register.name_person(person(1), "First", now()).expect("is named");
    two.register.merge(&one.register.bundle().expect("reads")).expect("merges");
    // The second device's clock runs behind, and its change is the later one all the same.
    two.register.name_person(person(1), "Second", later(-1000)).expect("is named");
    let bundles: Vec<Bundle> =
        [&one, &two].map(|van| van.register.bundle().expect("reads")).into_iter().collect();
    for van in [&mut one, &mut two] {
        for bundle in &bundles {
            van.register.merge(bundle).expect("merges");
        }
        let names: Vec<_> = van.register.people().expect("reads").into_iter().map(|p| p.name).collect();
        assert_eq!(names, [Some("Second".to_owned())]);
    }
}

#[test]
fn a_blank_name_is_refused() {
    let mut kept = begin(1);
    assert!(matches!(kept.register.name_person(person(1), "  ", now()), Err(Error::Name { .. })));
}
