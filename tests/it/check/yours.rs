//! The user's own figures of a hose stand over the table's, as their rating of an end does.

use super::line::{asked, catalogue, changed, finding, has, hose};
use hosewright_core::catalogue::Basis;
use hosewright_core::check::{CheckError, Question, Verdict, check};
use hosewright_core::quantity::Millimetres;
use hosewright_core::spec::Line;
use hosewright_words::{Language, Words};

/// A hose of the tables of which that is not known.
fn without(known: fn(&hosewright_core::catalogue::HoseRow) -> bool) -> hosewright_core::spec::HoseRef {
    let rows = &catalogue().hoses;
    let row = rows.iter().find(|row| !known(row)).expect("a row that lacks it");
    hose(&row.standard, &row.kind, row.dn.get())
}

fn bent(question: &mut Question, own: Option<f64>) {
    question.spec.hose = Some(without(|row| row.min_bend_radius_mm.is_some()));
    question.service.bend_radius_mm = Some(Millimetres(220.0));
    question.spec.hose.as_mut().expect("a hose").min_bend_radius_mm = own.map(Millimetres);
}

#[test]
fn a_bend_radius_that_the_table_lacks_stops_until_the_user_enters_theirs() {
    let unknown = asked(|question| bent(question, None));
    assert_eq!(finding(&unknown, "bend-limit-unknown").verdict, Verdict::Stop);
    let enough = asked(|question| bent(question, Some(200.0)));
    let held = finding(&enough, "bend-ok");
    assert_eq!((held.verdict, held.limit, held.basis), (Verdict::Pass, Some(200.0), Basis::Yours));
    assert_eq!(held.source, "yours");
    let tight = asked(|question| bent(question, Some(240.0)));
    assert_eq!(finding(&tight, "bend-too-tight").verdict, Verdict::Stop);
}

#[test]
fn a_bend_radius_of_the_users_stands_over_the_tables() {
    // EN 853 2SN DN 16: 200 mm in the table.
    let own = |radius: f64| {
        asked(|question| {
            question.spec.hose.as_mut().expect("a hose").min_bend_radius_mm = Some(Millimetres(radius));
        })
    };
    assert_eq!(finding(&own(230.0), "bend-too-tight").basis, Basis::Yours, "stricter");
    assert_eq!(finding(&own(150.0), "bend-ok").basis, Basis::Yours, "less strict");
}

/// The original, 2SN DN 16, bends to 200 mm by the tables.
#[test]
fn what_is_compared_with_the_original_says_whose_figure_it_is() {
    let own = |radius: Option<f64>| {
        let checked = asked(|question| {
            question.service.bend_radius_mm = None;
            question.spec.hose.as_mut().expect("a hose").min_bend_radius_mm = radius.map(Millimetres);
        });
        let held = finding(&checked, "original-bend-ok");
        (held.value, held.basis, held.source.clone())
    };
    assert_eq!(own(Some(150.0)), (Some(150.0), Basis::Yours, "yours".to_owned()));
    let (value, basis, source) = own(None);
    assert_eq!((value, basis == Basis::Yours), (Some(200.0), false));
    assert!(source.contains("853"), "{source}");
}

fn sucked(question: &mut Question, own: Option<f64>) {
    question.service.line = Some(Line::Suction);
    question.service.vacuum_kpa_abs = Some(80.0);
    question.spec.hose.as_mut().expect("a hose").vacuum_kpa_abs = own;
}

#[test]
fn a_vacuum_that_the_table_lacks_stops_until_the_user_enters_theirs() {
    assert_eq!(finding(&asked(|question| sucked(question, None)), "vacuum-unrated").verdict, Verdict::Stop);
    let enough = asked(|question| sucked(question, Some(60.0)));
    let held = finding(&enough, "vacuum-ok");
    assert_eq!((held.verdict, held.limit, held.basis), (Verdict::Pass, Some(60.0), Basis::Yours));
    assert!(has(&enough, "suction-helix-missing"), "a figure makes no helix");
    let deep = asked(|question| sucked(question, Some(90.0)));
    assert_eq!(finding(&deep, "vacuum-too-deep").verdict, Verdict::Stop);
}

#[test]
fn the_users_figures_are_of_their_hose_and_no_other() {
    let stopped = asked(|question| {
        sucked(question, Some(60.0));
        question.service.working_pressure_bar = None;
    });
    let others = stopped.alternatives.iter().flat_map(|other| &other.grounds);
    let held: Vec<_> = others.filter(|ground| ground.rule == "vacuum" || ground.rule == "bend").collect();
    assert!(!held.is_empty(), "others are held to a vacuum or bend of their own");
    assert!(held.iter().all(|ground| ground.basis != Basis::Yours), "{held:?}");
}

#[test]
fn the_cure_names_the_field() {
    let words = Words::of(Language::English);
    for (case, field) in [
        ("bend-limit-unknown", "min_bend_radius_mm"),
        ("bend-unverified", "min_bend_radius_mm"),
        ("vacuum-unrated", "vacuum_kpa_abs"),
        ("vacuum-unverified", "vacuum_kpa_abs"),
    ] {
        let cure = words.say(&format!("cure-{case}"), &[]);
        assert!(cure.contains(field), "{case}: {cure}");
    }
}

#[test]
fn figures_that_can_not_be_are_refused_by_their_field() {
    type Change = fn(&mut Question);
    let fields: [(&str, Change); 3] = [
        ("spec.hose.min_bend_radius_mm", |question| bent(question, Some(0.0))),
        ("spec.hose.min_bend_radius_mm", |question| bent(question, Some(f64::NAN))),
        ("spec.hose.vacuum_kpa_abs", |question| sucked(question, Some(-1.0))),
    ];
    for (field, change) in fields {
        let refused = check(catalogue(), &changed(change)).expect_err("was taken");
        assert!(matches!(refused, CheckError::Number { .. }), "{refused}");
        assert_eq!(refused.field(), field);
    }
}
