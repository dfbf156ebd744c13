//! Tolerances of the overall length.

use super::line::{asked, finding, has, hose};
use hosewright_core::catalogue::LengthPractice;
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Millimetres;
use rstest::rstest;

/// DIN 20066 (public copy of its table); American: rubber hose handbook IP-2 (2003) table 4-8.
#[rstest]
#[case::short(LengthPractice::Din20066, 16.0, 630.0, Some([-3.0, 7.0]))]
#[case::middle(LengthPractice::Din20066, 16.0, 630.1, Some([-4.0, 12.0]))]
#[case::middle_end(LengthPractice::Din20066, 25.0, 1250.0, Some([-4.0, 12.0]))]
#[case::long(LengthPractice::Din20066, 25.0, 2500.0, Some([-6.0, 20.0]))]
#[case::dn_31_is_32(LengthPractice::Din20066, 31.0, 630.0, Some([-4.0, 12.0]))]
#[case::dn_38(LengthPractice::Din20066, 38.0, 1250.0, Some([-6.0, 20.0]))]
#[case::dn_51_is_50(LengthPractice::Din20066, 51.0, 2500.0, Some([-6.0, 25.0]))]
#[case::percent(LengthPractice::Din20066, 16.0, 4000.0, Some([-20.0, 60.0]))]
#[case::percent_of_the_longest(LengthPractice::Din20066, 16.0, 10_000.0, Some([-100.0, 300.0]))]
#[case::american_short(LengthPractice::American, 16.0, 305.0, Some([-3.2, 3.2]))]
#[case::american(LengthPractice::American, 16.0, 1240.0, Some([-12.7, 12.7]))]
#[case::american_long(LengthPractice::American, 16.0, 2000.0, Some([-20.0, 20.0]))]
fn the_length_tolerance_is_that_of_the_practice(
    #[case] practice: LengthPractice,
    #[case] size: f64,
    #[case] overall: f64,
    #[case] expected: Option<[f64; 2]>,
) {
    let checked = asked(|question| {
        question.spec.hose = Some(hose("EN 853", "2SN", size));
        question.spec.overall_length_mm = Some(Millimetres(overall));
        question.length_practice = practice;
    });
    let same = |a: [f64; 2], b: [f64; 2]| (a[0] - b[0]).abs() < 1e-9 && (a[1] - b[1]).abs() < 1e-9;
    let given = checked.length_tolerance_mm;
    assert!(given.zip(expected).is_some_and(|(a, b)| same(a, b)), "{given:?}, {expected:?} by the table");
    let table = match practice {
        LengthPractice::Din20066 => "DIN 20066",
        LengthPractice::American => "IP-2",
    };
    let from = checked.length_source.expect("a tolerance says where it is from").source;
    assert!(from.contains(table), "{from}");
}

#[test]
fn where_the_practice_gives_no_tolerance_the_check_says_so() {
    let checked = asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R4", 76.0));
        question.spec.overall_length_mm = Some(Millimetres(1000.0));
    });
    assert_eq!(checked.length_tolerance_mm, None);
    assert_eq!(finding(&checked, "length-tolerance-unknown").verdict, Verdict::Caution);
    assert!(!has(&asked(|_| ()), "length-tolerance-unknown"));
    let no_length = asked(|question| question.spec.overall_length_mm = None);
    assert!(!has(&no_length, "length-tolerance-unknown"), "a missing length is said once");
    let no_hose = asked(|question| question.spec.hose = None);
    assert!(!has(&no_hose, "length-tolerance-unknown"), "a missing hose is said once");
}
