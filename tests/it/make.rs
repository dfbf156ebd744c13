//! What whoever makes the hose needs: lengths that add up, steps in their order with their cautions,
//! the proof, and nothing put in the place of what only the user's own supplier can give.
#![allow(clippy::expect_used, reason = "what a test can not do without fails it")]

use hosewright_core::catalogue::{Basis, Catalogue, Caution, Provenance, Step, Table, TorqueMethod};
use hosewright_core::check::{Evidence, Question, Verdict, check};
use hosewright_core::find::{EndCandidate, EndFound, HoseCandidate, Settled};
use hosewright_core::make::{BuildSheet, EndSettings, MISSING, MakeError, Missing, Part, Skive, codes, make};
use hosewright_core::quantity::{Bar, Celsius, Degrees, Dn, LitresPerMinute, Millimetres};
use hosewright_core::spec::{Adapter, Cover, EndSpec, Gender, HoseRef, Line, Role, Service, Spec};
use hosewright_words::{Language, Words};
use proptest::prelude::*;
use rstest::rstest;

fn catalogue() -> &'static Catalogue {
    Catalogue::embedded()
}

fn end(role: Role, family: &str, size: &str) -> EndSpec {
    EndSpec {
        role,
        family: family.into(),
        size: size.into(),
        gender: Some(Gender::Female),
        form: Some("straight".into()),
        drop_mm: Some(Millimetres(40.0)),
        cutoff_mm: Some(Millimetres(if role == Role::A { 30.0 } else { 45.5 })),
        rating_bar: None,
    }
}

fn was(end: &EndSpec) -> EndFound {
    EndFound {
        role: end.role,
        candidates: vec![EndCandidate {
            family: end.family.clone(),
            standard: String::new(),
            size: end.size.clone(),
            dash: None,
            thread: None,
            gender: end.gender,
            probability: 1.0,
            also: Vec::new(),
        }],
        lookalikes: Vec::new(),
        unknown: 0.0,
        changed: 0.0,
        mate: None,
    }
}

/// Two-wire hose of DN 16 (250 bar) with a face-seal end and a 37 degree one (206 bar).
fn question() -> Question {
    let hose = HoseRef::named("EN 853", "2SN", Dn::new(16.0).expect("a size"));
    let ends = vec![end(Role::B, "JIC 37 flare", "-10"), end(Role::A, "ORFS", "-10")];
    Question {
        found: Some(Evidence {
            hose: vec![HoseCandidate {
                standard: hose.standard.clone(),
                kind: hose.kind.clone(),
                dn: hose.dn,
                dash: None,
                probability: 1.0,
                also: Vec::new(),
            }],
            ends: ends.iter().map(was).collect(),
            settled: Some(Settled { hose: true, a: true, b: true }),
            ..Evidence::default()
        }),
        spec: Spec {
            hose: Some(hose),
            ends,
            overall_length_mm: Some(Millimetres(1240.0)),
            ..Spec::default()
        },
        service: Service {
            working_pressure_bar: Some(Bar(180.0)),
            relief_bar: Some(Bar(200.0)),
            surge_pressure_bar: Some(Bar(206.0)),
            fluid: Some("HM".into()),
            fluid_min_c: Some(Celsius(-20.0)),
            fluid_max_c: Some(Celsius(80.0)),
            ambient_max_c: Some(Celsius(40.0)),
            flow_l_min: Some(LitresPerMinute(60.0)),
            line: Some(Line::Pressure),
            bend_radius_mm: Some(Millimetres(220.0)),
            ..Service::default()
        },
        ..Question::default()
    }
}

fn settings(role: Role) -> EndSettings {
    EndSettings {
        source: Some("my supplier's table, spring".into()),
        insertion_mm: Some(Millimetres(28.0)),
        skive: Some(Skive::None),
        ferrule: Some("no-skive, DN 16".into()),
        lubricant: Some("soap water".into()),
        die_set: Some("26".into()),
        crimp_diameter_mm: Some(Millimetres(27.4)),
        crimp_tolerance_mm: Some(Millimetres(0.15)),
        ..EndSettings::unknown(role)
    }
}

fn sheet_of(question: &Question, settings: &[EndSettings]) -> Result<BuildSheet, MakeError> {
    let checked = check(catalogue(), question).expect("the question can be asked");
    make(catalogue(), &checked, settings, Vec::new(), None)
}

fn made(change: impl FnOnce(&mut Question)) -> BuildSheet {
    let mut question = question();
    change(&mut question);
    sheet_of(&question, &[settings(Role::A), settings(Role::B)]).unwrap_or_else(|error| panic!("{error}"))
}

/// The steps of one part of the job.
fn steps(sheet: &BuildSheet, step: Step) -> Vec<&str> {
    sheet.steps.iter().filter(|at| at.step == step).map(|at| at.code).collect()
}

fn place(sheet: &BuildSheet, code: &str, role: Option<Role>) -> usize {
    let at = sheet.steps.iter().position(|step| step.code == code && step.role == role);
    at.unwrap_or_else(|| panic!("no step {code} {role:?}"))
}

#[test]
fn the_cut_is_the_overall_length_less_both_cut_offs_each_shown() {
    let cut = made(|_| ()).cut;
    assert_eq!(cut.overall_length_mm, Millimetres(1240.0));
    assert_eq!((cut.cutoff_a_mm, cut.cutoff_b_mm), (Some(Millimetres(30.0)), Some(Millimetres(45.5))));
    assert_eq!(cut.cut_length_mm, Some(Millimetres(1164.5)));
    // Common practice of the trade: the assembly's tolerance is not the cut's.
    assert_eq!((cut.aim.value, cut.aim.unit, cut.aim.basis), (2.0, "mm", Basis::CommonPractice));
    // DIN 20066, up to DN 25, 630 to 1250 mm.
    assert_eq!(cut.length_tolerance_mm, Some([-4.0, 12.0]));
    // Rubber hose handbook IP-2 (2003), bore up to 19 mm.
    assert_eq!(cut.out_of_square.map(|figure| (figure.value, figure.unit)), Some((1.6, "mm")));
}

#[test]
fn a_missing_cut_off_leaves_the_cut_open_and_says_how_to_get_it() {
    let sheet = made(|question| question.spec.ends[0].cutoff_mm = None);
    assert_eq!(sheet.cut.cut_length_mm, None, "nothing is put in its place");
    assert_eq!(sheet.missing, [Missing { code: "cutoff", role: Some(Role::B) }]);
    assert_eq!(sheet.verdict, Verdict::Caution);
    assert!(sheet.cautions.iter().any(|finding| finding.case.key == "cutoff-missing"));
}

#[test]
fn everything_there_leaves_nothing_missing() {
    let sheet = made(|_| ());
    assert_eq!(sheet.missing, []);
    assert_eq!(sheet.verdict, Verdict::Pass);
    assert_eq!(sheet.cautions, []);
    assert_eq!(sheet.settings, [settings(Role::A), settings(Role::B)]);
    assert_eq!(sheet.catalogue, catalogue().version);
}

#[test]
fn what_only_the_supplier_can_give_is_missing_and_never_made_up() {
    let sheet = sheet_of(&question(), &[settings(Role::B)]).expect("it may be made");
    let missing: Vec<_> = sheet.missing.iter().map(|missing| (missing.code, missing.role)).collect();
    let of_a = |code| (code, Some(Role::A));
    assert_eq!(
        missing,
        [
            of_a("insertion"),
            of_a("skive"),
            of_a("ferrule"),
            of_a("lubricant"),
            of_a("die-set"),
            of_a("crimp-diameter"),
            of_a("crimp-tolerance"),
        ]
    );
    assert_eq!(sheet.settings, [EndSettings::unknown(Role::A), settings(Role::B)]);
}

#[test]
fn an_end_without_a_torque_and_a_length_without_a_tolerance_are_missing_too() {
    let sheet = made(|question| {
        // Staple ends have no torque in the tables; nor a rating, so the user's own stands.
        question.spec.ends[1] =
            EndSpec { rating_bar: Some(Bar(250.0)), ..end(Role::A, "Staple end", "DN12") };
        question.found = None;
    });
    assert_eq!(sheet.missing, [Missing { code: "torque", role: Some(Role::A) }]);
    let large = made(|question| {
        question.spec.hose = Some(HoseRef::named("SAE J517", "100R4", Dn::new(76.0).expect("a size")));
        question.spec.ends = vec![end(Role::A, "flange 61", "-48"), end(Role::B, "flange 61", "-48")];
        question.found = None;
        let low = Some(Bar(3.0));
        let service = &mut question.service;
        (service.working_pressure_bar, service.relief_bar, service.surge_pressure_bar) = (low, low, low);
        service.bend_radius_mm = Some(Millimetres(1000.0));
    });
    assert_eq!(large.missing, [Missing { code: "length-tolerance", role: None }]);
}

#[test]
fn the_proof_is_twice_the_weakest_parts_rating_for_half_a_minute_to_a_minute() {
    let proof = made(|_| ()).proof;
    // SAE J517, ISO 1402, trade summary of SAE J343: twice the working pressure, 30 to 60 s.
    assert_eq!(proof.working_pressure_bar, Bar(206.0), "that of end B");
    assert_eq!(proof.proof_pressure_bar, Bar(412.0));
    assert_eq!((proof.ratio.value, proof.ratio.basis), (2.0, Basis::Published));
    assert_eq!((proof.hold_from.value, proof.hold_from.unit), (30.0, "s"));
    assert_eq!((proof.hold_to.value, proof.hold_to.unit), (60.0, "s"));
}

#[test]
fn the_parts_are_hose_ends_and_adapters() {
    let sheet = made(|question| {
        question.spec.cover = Some(Cover::FlameResistant);
        question.spec.adapters =
            vec![Adapter { name: "tee".into(), rating_bar: Some(Bar(400.0)), between: None }];
    });
    let parts: Vec<_> = sheet
        .parts
        .iter()
        .map(|part| match part {
            Part::Hose { hose, cover } => format!("{} {} {} {cover:?}", hose.standard, hose.kind, hose.dn),
            Part::End { end } => format!("{:?} {} {}", end.role, end.family, end.size),
            Part::Adapter { adapter } => adapter.name.clone(),
        })
        .collect();
    assert_eq!(parts, ["EN 853 2SN 16 Some(FlameResistant)", "A ORFS -10", "B JIC 37 flare -10", "tee"]);
}

#[test]
fn the_steps_stand_in_the_order_of_the_job() {
    let sheet = made(|_| ());
    let order: Vec<Step> = sheet.steps.iter().map(|at| at.step).collect();
    assert!(order.is_sorted(), "before, make, prove, tag, fit: {order:?}");
    for step in [Step::Before, Step::Make, Step::Prove, Step::Tag, Step::Fit] {
        assert!(!steps(&sheet, step).is_empty(), "{step:?} has steps");
    }
    let (a, b) = (Some(Role::A), Some(Role::B));
    let in_order = [
        place(&sheet, "release-pressure", None),
        place(&sheet, "loosen", None),
        place(&sheet, "cut", None),
        place(&sheet, "clean-bore", None),
        place(&sheet, "mark-insertion", a),
        place(&sheet, "push-on", a),
        place(&sheet, "crimp", a),
        place(&sheet, "measure-crimp", a),
        place(&sheet, "sleeves", None),
        place(&sheet, "mark-insertion", b),
        place(&sheet, "push-on", b),
        place(&sheet, "crimp", b),
        place(&sheet, "measure-crimp", b),
        place(&sheet, "mark-not-moved", None),
        place(&sheet, "bore-gauge", None),
        place(&sheet, "nuts-free", None),
        place(&sheet, "measure-length", None),
        place(&sheet, "flush-and-cap", None),
        place(&sheet, "hold-pressure", None),
        place(&sheet, "no-rig", None),
        place(&sheet, "mark-ferrule", None),
        place(&sheet, "tighten", None),
        place(&sheet, "leak-check", None),
        place(&sheet, "log-hours", None),
    ];
    assert!(in_order.is_sorted(), "sleeves before the second end, and all the rest: {in_order:?}");
}

#[test]
fn skiving_is_a_step_unless_the_supplier_says_there_is_none() {
    let skived = |skive: Option<Skive>| {
        let of_a = EndSettings { skive, ..settings(Role::A) };
        let sheet = sheet_of(&question(), &[of_a, settings(Role::B)]).expect("it may be made");
        sheet.steps.iter().filter(|at| at.code == "skive").map(|at| at.role).collect::<Vec<_>>()
    };
    assert_eq!(skived(Some(Skive::None)), []);
    assert_eq!(skived(None), [Some(Role::A)], "nobody said");
    assert_eq!(skived(Some(Skive::Outer { length_mm: Millimetres(20.0) })), [Some(Role::A)]);
}

#[test]
fn two_bent_ends_are_turned_and_the_turn_is_measured() {
    let bent = |turn: Option<f64>, length: f64| {
        let mut question = question();
        question.spec.ends.iter_mut().for_each(|end| end.form = Some("elbow90".into()));
        question.spec.turn_deg = turn.map(Degrees);
        question.spec.overall_length_mm = Some(Millimetres(length));
        sheet_of(&question, &[])
    };
    // MIL-DTL-83796/5 referring to SAE J517: 3 degrees up to 610 mm, 5 above.
    for (length, tolerance) in [(610.0, 3.0), (610.1, 5.0)] {
        let sheet = bent(Some(90.0), length).expect("it may be made");
        let turn = sheet.turn.clone().expect("both ends are bent");
        assert_eq!(turn.turn_deg, Degrees(90.0));
        assert_eq!(turn.tolerance.map(|figure| (figure.value, figure.unit)), Some((tolerance, "deg")));
        assert!(place(&sheet, "set-turn", None) < place(&sheet, "crimp", Some(Role::B)));
        assert!(steps(&sheet, Step::Make).contains(&"measure-turn"));
    }
    let error = bent(None, 1000.0).expect_err("the angle is not known");
    assert_eq!(error.field(), "spec.turn_deg");
    let straight = made(|question| {
        question.spec.ends[0].form = Some("elbow90".into());
        question.spec.turn_deg = Some(Degrees(90.0));
    });
    assert_eq!(straight.turn, None, "one bent end has no turn");
    assert!(!straight.steps.iter().any(|at| at.code.ends_with("-turn")));
}

#[test]
fn a_flange_is_drawn_down_crosswise_and_other_ends_are_not() {
    let flanged = made(|question| {
        question.spec.ends[1] = EndSpec { gender: None, ..end(Role::A, "flange 61", "-12") };
        question.found = None;
    });
    let at = flanged.steps.get(place(&flanged, "tighten-flange", None)).expect("a step");
    assert!(at.cautions.iter().any(|caution| caution.id == "C59"), "the class of its screws: {at:?}");
    assert!(!made(|_| ()).steps.iter().any(|at| at.code == "tighten-flange"));
}

#[test]
fn every_caution_stands_at_a_step_of_its_own_part_of_the_job() {
    let sheet = made(|question| {
        question.spec.ends[1] = EndSpec { gender: None, ..end(Role::A, "flange 61", "-12") };
        question.found = None;
    });
    for row in &catalogue().cautions {
        let here: Vec<_> =
            sheet.steps.iter().filter(|at| at.cautions.iter().any(|caution| caution.id == row.id)).collect();
        match row.step {
            Step::Before | Step::Make | Step::Prove | Step::Tag | Step::Fit => {
                assert!(here.iter().any(|at| at.step == row.step), "{}: {}", row.id, row.caution);
            }
            Step::Find | Step::Check | Step::Keep => {}
        }
    }
    let most = sheet.steps.iter().map(|at| at.cautions.len()).max().unwrap_or(0);
    assert!(most <= 5, "no wall of text: {most} cautions at one step");
    let cut = sheet.steps.get(place(&sheet, "cut", None)).expect("a step");
    let caution = cut.cautions.iter().find(|caution| caution.id == "C36").expect("the blade");
    let row = catalogue().cautions.iter().find(|row| row.id == "C36").expect("the blade");
    assert_eq!((&caution.caution, &caution.why), (&row.caution, &row.why));
    assert_eq!((&caution.source, caution.basis), (&row.provenance.source, row.provenance.basis));
}

#[test]
fn a_caution_new_to_the_tables_stands_at_the_first_step_of_its_part_of_the_job() {
    let mut tables = Catalogue::read(Table::embedded).expect("the embedded tables can be read");
    let new = |id: &str, step: Step| Caution {
        id: id.into(),
        step,
        caution: "Mind the gap.".into(),
        why: "it is new".into(),
        provenance: Provenance { source: "a table of the test".into(), basis: Basis::Published },
    };
    tables.cautions.push(new("N1", Step::Prove));
    tables.cautions.push(new("N2", Step::Keep));
    let checked = check(&tables, &question()).expect("the question can be asked");
    let sheet = make(&tables, &checked, &[], Vec::new(), None).expect("it may be made");
    let at = |id: &str| {
        let here = sheet.steps.iter().filter(|at| at.cautions.iter().any(|caution| caution.id == id));
        here.map(|at| at.code).collect::<Vec<_>>()
    };
    assert_eq!(at("N1"), ["connect-rig"]);
    assert_eq!(at("N2"), Vec::<&str>::new(), "what is minded later is no step of the sheet");
}

#[test]
fn each_end_is_tightened_by_every_figure_of_its_size_with_its_condition() {
    let sheet = made(|_| ());
    let roles: Vec<_> = sheet.tighten.iter().map(|of| of.role).collect();
    assert_eq!(roles, [Role::A, Role::B]);
    let of_b = &sheet.tighten[1].values;
    let rows: Vec<_> = catalogue()
        .torques
        .iter()
        .filter(|row| row.family == "JIC 37 flare" && matches!(row.size.as_deref(), None | Some("-10")))
        .collect();
    assert!(rows.len() > 1, "the tables differ by condition");
    assert!(rows.iter().any(|row| row.size.is_none()), "one of them is for every size");
    assert_eq!(of_b.len(), rows.len());
    for (value, row) in of_b.iter().zip(rows) {
        assert_eq!((value.min, value.max, &value.condition), (row.min, row.max, &row.condition));
        assert_eq!((&value.source, value.basis), (&row.provenance.source, row.provenance.basis));
        let unit = match row.method {
            TorqueMethod::Torque => "Nm",
            TorqueMethod::FlatsFromFingerTight => "flats of 60 deg",
            TorqueMethod::Angle => "deg",
        };
        assert_eq!(value.unit, unit);
    }
    // Farm and wood-processing implement manuals, flare table: 62 Nm for -10, lubricated.
    assert!(of_b.iter().any(|value| value.max == 62.0 && value.unit == "Nm"), "{of_b:?}");
}

#[test]
fn nothing_is_made_while_the_check_says_stop() {
    let mut question = question();
    question.service.surge_pressure_bar = Some(Bar(260.0));
    question.service.bend_radius_mm = Some(Millimetres(100.0));
    let error = sheet_of(&question, &[]).expect_err("it stops");
    assert_eq!(error, MakeError::Stopped { rules: vec!["pressure".into(), "bend".into()] });
    assert_eq!(error.field(), "");
    assert!(error.to_string().contains("pressure, bend"), "{error}");
}

#[test]
fn a_finding_that_stops_holds_whatever_the_verdict_was_set_to() {
    let mut question = question();
    question.service.surge_pressure_bar = Some(Bar(260.0));
    let mut checked = check(catalogue(), &question).expect("it can be asked");
    checked.verdict = Verdict::Pass;
    assert!(matches!(make(catalogue(), &checked, &[], Vec::new(), None), Err(MakeError::Stopped { .. })));
    let mut checked = check(catalogue(), &self::question()).expect("it can be asked");
    checked.verdict = Verdict::Stop;
    assert!(matches!(make(catalogue(), &checked, &[], Vec::new(), None), Err(MakeError::Stopped { .. })));
}

#[test]
fn a_sheet_needs_its_length() {
    let mut question = question();
    question.spec.overall_length_mm = None;
    let error = sheet_of(&question, &[]).expect_err("nothing can be cut");
    assert_eq!(error.field(), "spec.overall_length_mm");
}

#[rstest]
#[case::twice(vec![settings(Role::A), settings(Role::A)], "settings")]
#[case::insertion(vec![EndSettings { insertion_mm: Some(Millimetres(-1.0)), ..settings(Role::B) }], "insertion_mm")]
#[case::diameter(vec![EndSettings { crimp_diameter_mm: Some(Millimetres(f64::NAN)), ..settings(Role::A) }], "crimp_diameter_mm")]
#[case::tolerance(vec![EndSettings { crimp_tolerance_mm: Some(Millimetres(f64::INFINITY)), ..settings(Role::A) }], "crimp_tolerance_mm")]
fn settings_that_can_not_be_are_an_error(#[case] given: Vec<EndSettings>, #[case] field: &str) {
    let error = sheet_of(&question(), &given).expect_err("it can not be");
    assert_eq!(error.field(), field, "{error}");
}

#[test]
fn every_step_and_everything_missing_has_words_in_every_language() {
    for language in Language::ALL {
        let words = Words::of(language);
        let steps = codes().map(|code| format!("step-{code}"));
        let missing = MISSING.iter().map(|code| format!("missing-{code}"));
        for id in steps.chain(missing) {
            assert!(words.has(&id), "{}: {id}", language.tag());
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn cut_and_cut_offs_make_up_the_overall_length(
        overall in 200.0..9000.0f64,
        a in 0.0..99.0f64,
        b in 0.0..99.0f64,
    ) {
        let sheet = made(|question| {
            question.spec.overall_length_mm = Some(Millimetres(overall));
            question.spec.ends[0].cutoff_mm = Some(Millimetres(b));
            question.spec.ends[1].cutoff_mm = Some(Millimetres(a));
        });
        let cut = sheet.cut.cut_length_mm.expect("all three are known").get();
        prop_assert!((cut + a + b - overall).abs() < 1e-9, "{cut} + {a} + {b} = {overall}");
    }

    #[test]
    fn the_proof_follows_the_weakest_part(own in 206.0..600.0f64) {
        let sheet = made(|question| question.spec.ends[0].rating_bar = Some(Bar(own)));
        let weakest = own.min(250.0);
        prop_assert_eq!(sheet.proof.working_pressure_bar, Bar(weakest));
        prop_assert_eq!(sheet.proof.proof_pressure_bar, Bar(2.0 * weakest));
    }
}

#[test]
fn a_crimp_tolerance_that_a_caliper_can_not_hold_asks_for_a_better_instrument() {
    // Common practice: a caliper beside the press is good to 0.1 mm, and takes half of a tolerance of 0.2 mm.
    for (tolerance, needed) in [(Some(0.1), true), (Some(0.2), true), (Some(0.25), false), (None, false)] {
        let mut given = settings(Role::B);
        given.crimp_tolerance_mm = tolerance.map(Millimetres);
        let mut coarse = settings(Role::A);
        coarse.crimp_tolerance_mm = Some(Millimetres(0.3));
        let sheet = sheet_of(&question(), &[coarse, given]).unwrap_or_else(|error| panic!("{error}"));
        let fine: Vec<_> =
            sheet.steps.iter().filter(|at| at.code == "fine-instrument").map(|at| at.role).collect();
        assert_eq!(fine, if needed { vec![Some(Role::B)] } else { vec![] }, "{tolerance:?}");
        if needed {
            let measured = place(&sheet, "measure-crimp", Some(Role::B));
            assert_eq!(
                place(&sheet, "fine-instrument", Some(Role::B)) + 1,
                measured,
                "just before measuring"
            );
        }
    }
}

#[test]
fn how_clean_it_has_to_be_stands_on_the_sheet_with_its_source() {
    let sheet = made(|_| {});
    let rules: Vec<(&str, &str)> =
        sheet.cleanliness.iter().map(|rule| (rule.rule.as_str(), rule.asks.as_str())).collect();
    assert!(rules.contains(&("cleanliness-general", "19/16/13")), "{rules:?}");
    assert!(rules.iter().any(|(rule, _)| *rule == "clean-after-cutting"), "{rules:?}");
    assert!(sheet.cleanliness.iter().all(|rule| !rule.source.is_empty()), "{:?}", sheet.cleanliness);
}
