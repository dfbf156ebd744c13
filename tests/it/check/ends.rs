//! Ends that are settled and ends that are not, sizes and turn.

use super::line::{asked, end, end_was, evidence, finding, objections};
use hosewright_core::check::{Override, Question, Verdict};
use hosewright_core::find::{EndCandidate, EndName, Settled};
use hosewright_core::quantity::{Degrees, Millimetres};
use hosewright_core::spec::{Gender, Role};

#[test]
fn an_end_that_is_not_settled_stops_and_nobody_can_take_that_on() {
    let over = |question: &mut Question| {
        question.overrides =
            vec![Override { rule: "end-unsettled".into(), by: "the boss".into(), reason: "hurry".into() }];
    };
    for (settled, read) in [
        (Some(Settled { hose: true, a: false, b: true }), true),
        (Some(Settled { hose: true, a: false, b: true }), false),
        (None, true),
    ] {
        let checked = asked(|question| {
            evidence(question).settled = settled;
            if !read {
                evidence(question).ends.clear();
            }
            over(question);
        });
        assert_eq!(finding(&checked, "end-unsettled").verdict, Verdict::Stop, "{settled:?}, read: {read}");
        assert_eq!(finding(&checked, "override-refused").verdict, Verdict::Stop);
    }
}

#[test]
fn an_end_other_than_the_one_read_stops() {
    let with =
        |candidate: EndCandidate| asked(|question| evidence(question).ends[0].candidates = vec![candidate]);
    let read = end_was(Role::A, "ORFS", "-10").candidates.remove(0);
    let family = with(EndCandidate { family: "JIC 37 flare".into(), ..read.clone() });
    assert_eq!(finding(&family, "end-differs").verdict, Verdict::Stop);
    let size = with(EndCandidate { size: "-12".into(), ..read.clone() });
    assert_eq!(finding(&size, "end-differs").verdict, Verdict::Stop);
    let gender = with(EndCandidate { gender: Some(Gender::Male), ..read.clone() });
    assert_eq!(finding(&gender, "end-differs").verdict, Verdict::Stop);
    let genderless = with(EndCandidate { gender: None, ..read.clone() });
    assert_eq!(genderless.verdict, Verdict::Pass, "a flange has no gender");
    let also = vec![EndName { family: "ORFS".into(), size: "-10".into() }];
    let twin = with(EndCandidate { family: "JIC 37 flare".into(), size: "-10".into(), also, ..read.clone() });
    assert_eq!(twin.verdict, Verdict::Pass, "the class that was read holds it");
    let half = vec![
        EndName { family: "ORFS".into(), size: "-12".into() },
        EndName { family: "NPTF".into(), size: "-10".into() },
    ];
    let no_twin = with(EndCandidate { family: "NPTF".into(), size: "1/2".into(), also: half, ..read });
    assert_eq!(finding(&no_twin, "end-differs").verdict, Verdict::Stop, "neither name of it is the spec's");
}

#[test]
fn the_likeliest_end_counts_in_whatever_order_they_come() {
    let checked = asked(|question| {
        let mut unlikely = end_was(Role::A, "JIC 37 flare", "-10").candidates.remove(0);
        unlikely.probability = 0.001;
        evidence(question).ends[0].candidates.insert(0, unlikely);
    });
    assert_eq!(checked.verdict, Verdict::Pass, "{:?}", objections(&checked));
}

#[test]
fn a_jump_size_is_a_caution() {
    let checked = asked(|question| {
        question.spec.ends[0] = end(Role::A, "ORFS", "-12");
        evidence(question).ends[0] = end_was(Role::A, "ORFS", "-12");
    });
    assert_eq!(objections(&checked), ["size-jump"]);
    let jump = finding(&checked, "size-jump");
    assert_eq!((jump.value, jump.limit, jump.unit), (Some(19.0), Some(16.0), "DN"));
}

#[test]
fn two_bent_ends_need_their_turn_and_one_does_not() {
    let bend = |both: bool, turn: Option<f64>| {
        asked(|question| {
            for end in question.spec.ends.iter_mut().take(if both { 2 } else { 1 }) {
                end.form = Some("elbow90".into());
                end.drop_mm = Some(Millimetres(40.0));
            }
            question.spec.turn_deg = turn.map(Degrees);
        })
    };
    assert_eq!(objections(&bend(true, None)), ["turn-missing"]);
    assert_eq!(finding(&bend(true, Some(0.0)), "turn-ok").value, Some(0.0));
    assert_eq!(bend(true, Some(90.0)).verdict, Verdict::Pass);
    assert_eq!(bend(false, None).verdict, Verdict::Pass);
}
