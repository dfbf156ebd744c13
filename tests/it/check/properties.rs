//! What holds of any question.

use super::line::{Change, changed, checked, end, end_was, evidence, hose, was};
use hosewright_core::catalogue::LengthPractice;
use hosewright_core::check::{Evidence, Override, Question, Verdict};
use hosewright_core::find::{Settled, UnknownHose};
use hosewright_core::quantity::{Bar, Celsius, Degrees, LitresPerMinute, Millimetres};
use hosewright_core::spec::{Adapter, Cover, Duty, EndSpec, Gender, HoseRef, Line, Role, Service, Spec};
use hosewright_core::tag::{self, Proof, TagCode, TagContent};
use proptest::prelude::*;

/// Fields that can be left out, each with how. Lists in which nothing is a statement of its own
/// (adapters, duties, overrides) and the user's own rating, which stands over a table that is there
/// anyhow, are none of them; nor is a drop, which no limit is held against.
const LEFT_OUT: &[(&str, Change)] = &[
    ("hose", |q| q.spec.hose = None),
    ("end A", |q| q.spec.ends.retain(|end| end.role != Role::A)),
    ("end B", |q| q.spec.ends.retain(|end| end.role != Role::B)),
    ("gender of A", |q| q.spec.ends.iter_mut().take(1).for_each(|end| end.gender = None)),
    ("form of A", |q| q.spec.ends.iter_mut().take(1).for_each(|end| end.form = None)),
    ("cut-off of A", |q| q.spec.ends.iter_mut().take(1).for_each(|end| end.cutoff_mm = None)),
    ("overall length", |q| q.spec.overall_length_mm = None),
    ("turn", |q| q.spec.turn_deg = None),
    ("cover", |q| q.spec.cover = None),
    ("working pressure", |q| q.service.working_pressure_bar = None),
    ("relief", |q| q.service.relief_bar = None),
    ("surge", |q| q.service.surge_pressure_bar = None),
    ("fluid", |q| q.service.fluid = None),
    ("coldest", |q| q.service.fluid_min_c = None),
    ("hottest", |q| q.service.fluid_max_c = None),
    ("air", |q| q.service.ambient_max_c = None),
    ("flow", |q| q.service.flow_l_min = None),
    ("line", |q| q.service.line = None),
    ("bend", |q| q.service.bend_radius_mm = None),
    ("evidence", |q| q.found = None),
    ("what the ends were", |q| q.found.iter_mut().for_each(|found| found.ends.clear())),
    ("what the hose was", |q| {
        q.found.iter_mut().for_each(|found| {
            found.hose.clear();
            found.printed_pressure_bar = None
        })
    }),
    ("what is settled", |q| q.found.iter_mut().for_each(|found| found.settled = None)),
];

fn maybe<T: std::fmt::Debug + Clone + 'static>(
    inner: impl Strategy<Value = T> + 'static,
) -> impl Strategy<Value = Option<T>> {
    proptest::option::weighted(0.9, inner)
}

const HOSES: &[(&str, &str)] = &[
    ("EN 853", "1SN"),
    ("EN 853", "2SN"),
    ("EN 857", "2SC"),
    ("EN 856", "4SP"),
    ("EN 856", "R12"),
    ("SAE J517", "100R7"),
    ("SAE J517", "100R14"),
    ("ISO 1436", "2SN"),
];

const ENDS: &[(&str, &str)] = &[
    ("ORFS", "-10"),
    ("ORFS", "-12"),
    ("JIC 37 flare", "-10"),
    ("Metric 24 cone S", "S20"),
    ("BSPP 60 cone", "5/8"),
    ("ISO 6149 port", "M22x1.5"),
    ("flange 61", "-12"),
];

fn of_list(
    list: &'static [(&'static str, &'static str)],
) -> impl Strategy<Value = (&'static str, &'static str)> {
    proptest::sample::select(list)
}

prop_compose! {
    fn any_end(role: Role)(
        (family, size) in of_list(ENDS),
        gender in maybe(proptest::sample::select(vec![Gender::Female, Gender::Male])),
        form in maybe(proptest::sample::select(vec!["straight", "elbow90"])),
        cutoff in maybe(0.0..700.0f64),
        rating in proptest::option::weighted(0.2, 100.0..500.0f64),
    ) -> EndSpec {
        EndSpec {
            role, family: family.into(), size: size.into(), gender,
            form: form.map(str::to_owned), drop_mm: Some(Millimetres(40.0)),
            cutoff_mm: cutoff.map(Millimetres), rating_bar: rating.map(Bar),
        }
    }
}

prop_compose! {
    fn any_service()(
        working in maybe(50.0..260.0f64), relief in maybe(50.0..280.0f64), surge in maybe(50.0..300.0f64),
        fluid in maybe(proptest::sample::select(vec!["HM", "HFC", "water", "HEES", "steam", "milk"])),
        cold in maybe(-50.0..10.0f64), hot in maybe(10.0..130.0f64), air in maybe(0.0..120.0f64),
        flow in maybe(0.1..200.0f64), bend in maybe(100.0..400.0f64),
        line in maybe(proptest::sample::select(vec![Line::Pressure, Line::Return, Line::Suction, Line::Cylinder])),
        duties in proptest::sample::subsequence(vec![Duty::NonConductive, Duty::FlameResistant], 0..=1),
    ) -> Service {
        Service {
            working_pressure_bar: working.map(Bar), relief_bar: relief.map(Bar), surge_pressure_bar: surge.map(Bar),
            fluid: fluid.map(str::to_owned), fluid_min_c: cold.map(Celsius), fluid_max_c: hot.map(Celsius),
            ambient_max_c: air.map(Celsius), flow_l_min: flow.map(LitresPerMinute), line,
            bend_radius_mm: bend.map(Millimetres), vacuum_kpa_abs: None, duties, estimated: None,
        }
    }
}

prop_compose! {
    fn any_evidence(a: EndSpec, b: EndSpec)(
        hoses in proptest::collection::vec((of_list(HOSES), 0.0..1.0f64), 0..3),
        same_a in proptest::bool::weighted(0.9), same_b in proptest::bool::weighted(0.9),
        settled in maybe((proptest::bool::weighted(0.9), proptest::bool::weighted(0.9))),
        printed in proptest::option::weighted(0.3, 100.0..300.0f64),
        unknown in 0.0..0.02f64,
    ) -> Evidence {
        let read = |end: &EndSpec, same: bool| {
            let mut read = end_was(end.role, if same { &end.family } else { "NPTF" }, &end.size);
            read.candidates[0].gender = end.gender;
            read
        };
        Evidence {
            hose: hoses.into_iter().map(|((standard, kind), probability)| was(standard, kind, 16.0, probability)).collect(),
            ends: vec![read(&a, same_a), read(&b, same_b)],
            unknown: UnknownHose { hose: unknown },
            settled: settled.map(|(a, b)| Settled { hose: true, a, b }),
            printed_pressure_bar: printed.map(Bar),
            ..Evidence::default()
        }
    }
}

fn any_question() -> impl Strategy<Value = Question> {
    (any_end(Role::A), any_end(Role::B)).prop_flat_map(|(a, b)| {
        let parts = (of_list(HOSES), maybe(any_evidence(a.clone(), b.clone())), any_service());
        let rest = (maybe(100.0..9000.0f64), maybe(0.0..359.0f64), proptest::bool::weighted(0.5));
        (parts, rest).prop_map(move |(((standard, kind), found, service), (length, turn, covered))| {
            Question {
                spec: Spec {
                    hose: Some(hose(standard, kind, 16.0)),
                    ends: vec![a.clone(), b.clone()],
                    adapters: Vec::new(),
                    overall_length_mm: length.map(Millimetres),
                    turn_deg: turn.map(Degrees),
                    cover: covered.then_some(Cover::NonConductive),
                },
                service,
                found,
                overrides: Vec::new(),
                length_practice: LengthPractice::Din20066,
            }
        })
    })
}

/// One thing wrong, or nothing, with the line of which everything is known: so that leaving out is
/// tried where a pass is near.
fn nearly_known() -> impl Strategy<Value = Question> {
    let spoils: Vec<Change> = vec![
        |_| (),
        |q| q.service.surge_pressure_bar = Some(Bar(300.0)),
        |q| q.service.relief_bar = Some(Bar(300.0)),
        |q| q.service.relief_bar = Some(Bar(150.0)),
        |q| q.service.surge_pressure_bar = Some(Bar(100.0)),
        |q| q.service.working_pressure_bar = Some(Bar(300.0)),
        |q| q.service.fluid = Some("HEES".into()),
        |q| q.service.fluid_max_c = Some(Celsius(130.0)),
        |q| q.service.fluid_min_c = Some(Celsius(-60.0)),
        |q| q.service.ambient_max_c = Some(Celsius(130.0)),
        |q| q.service.flow_l_min = Some(LitresPerMinute(300.0)),
        |q| q.service.line = Some(Line::Suction),
        |q| q.service.bend_radius_mm = Some(Millimetres(100.0)),
        |q| q.spec.overall_length_mm = Some(Millimetres(20.0)),
        |q| q.spec.ends[0].cutoff_mm = Some(Millimetres(2000.0)),
        |q| q.spec.ends[0].gender = Some(Gender::Male),
        |q| q.spec.ends[0] = end(Role::A, "JIC 37 flare", "-10"),
        |q| {
            q.spec.ends.iter_mut().for_each(|end| {
                end.form = Some("elbow45".into());
                end.drop_mm = Some(Millimetres(30.0))
            })
        },
        |q| {
            q.spec.cover = Some(Cover::FlameResistant);
            q.service.duties = vec![Duty::FlameResistant]
        },
        |q| evidence(q).settled = Some(Settled { hose: true, a: false, b: true }),
        |q| evidence(q).hose = vec![was("EN 856", "4SP", 16.0, 1.0)],
        |q| evidence(q).printed_pressure_bar = Some(Bar(400.0)),
        |q| evidence(q).unknown.hose = 0.5,
    ];
    proptest::sample::select(spoils).prop_map(changed)
}

/// A change for the worse by some amount.
type Worsen = fn(&mut Question, f64);

/// How a service can be made harder, or a part worse.
const WORSE: &[(&str, Worsen)] = &[
    ("more working pressure", |q, by| {
        q.service.working_pressure_bar = q.service.working_pressure_bar.map(|was| Bar(was.get() + by))
    }),
    ("more relief", |q, by| q.service.relief_bar = q.service.relief_bar.map(|was| Bar(was.get() + by))),
    ("more surge", |q, by| {
        q.service.surge_pressure_bar = q.service.surge_pressure_bar.map(|was| Bar(was.get() + by))
    }),
    ("hotter", |q, by| q.service.fluid_max_c = q.service.fluid_max_c.map(|was| Celsius(was.get() + by))),
    ("colder", |q, by| q.service.fluid_min_c = q.service.fluid_min_c.map(|was| Celsius(was.get() - by))),
    ("hotter air", |q, by| {
        q.service.ambient_max_c = q.service.ambient_max_c.map(|was| Celsius(was.get() + by))
    }),
    ("more flow", |q, by| {
        q.service.flow_l_min = q.service.flow_l_min.map(|was| LitresPerMinute(was.get() + by))
    }),
    ("tighter", |q, by| {
        q.service.bend_radius_mm = q.service.bend_radius_mm.map(|was| Millimetres((was.get() - by).max(0.0)))
    }),
    ("weaker end", |q, by| {
        q.spec.ends[0].rating_bar = q.spec.ends[0].rating_bar.map(|was| Bar((was.get() - by).max(0.0)))
    }),
    ("one more adapter", |q, by| {
        q.spec.adapters.push(Adapter { name: "tee".into(), rating_bar: Some(Bar(by)), between: None })
    }),
    ("an adapter nobody rates", |q, _| {
        q.spec.adapters.push(Adapter { name: "tee".into(), rating_bar: None, between: None })
    }),
    ("one more duty", |q, _| q.service.duties.push(Duty::Antistatic)),
    ("a stronger original", |q, by| {
        q.found.iter_mut().for_each(|found| {
            found.printed_pressure_bar = found.printed_pressure_bar.map(|was| Bar(was.get() + by))
        })
    }),
    ("one more original", |q, _| {
        q.found
            .iter_mut()
            .filter(|found| !found.hose.is_empty())
            .for_each(|found| found.hose.push(was("EN 856", "4SP", 16.0, 1.0)))
    }),
];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn nothing_is_talked_into_a_pass_by_leaving_a_field_out(question in prop_oneof![any_question(), nearly_known()]) {
        let whole = checked(&question).verdict;
        for (field, leave_out) in LEFT_OUT {
            let mut less = question.clone();
            leave_out(&mut less);
            let without = checked(&less);
            prop_assert!(
                without.verdict != Verdict::Pass || whole == Verdict::Pass,
                "without {field} it passes and with it it is {whole:?}"
            );
        }
    }

    #[test]
    fn a_pass_needs_every_field(question in nearly_known()) {
        if checked(&question).verdict == Verdict::Pass {
            for (field, leave_out) in LEFT_OUT.iter().filter(|(field, _)| !["turn", "cover"].contains(field)) {
                let mut less = question.clone();
                leave_out(&mut less);
                prop_assert!(checked(&less).verdict != Verdict::Pass, "it passes without {field}");
            }
        }
    }

    #[test]
    fn a_worse_part_or_a_harder_service_never_betters_the_verdict(
        question in prop_oneof![any_question(), nearly_known()],
        by in 0.1..200.0f64,
    ) {
        let whole = checked(&question);
        // More of a relief that stood below the working pressure mends what was said, and is no worsening.
        prop_assume!(!whole.findings.iter().any(|finding| finding.rule == "pressure-contradiction"));
        let before = whole.verdict;
        for (what, worsen) in WORSE {
            let mut worse = question.clone();
            worsen(&mut worse, by);
            let after = checked(&worse).verdict;
            prop_assert!(after >= before, "{what} by {by}: {before:?} becomes {after:?}");
        }
    }

    #[test]
    fn the_pressure_of_the_whole_never_passes_that_of_a_part(question in any_question()) {
        let checked = checked(&question);
        if let Some(whole) = checked.assembly_pressure_bar {
            for part in checked.findings.iter().filter(|finding| finding.rule == "pressure") {
                prop_assert!(part.limit.is_some_and(|rating| rating >= whole.get()), "{part:?} against {whole:?}");
            }
            prop_assert!(checked.weakest.is_some());
        } else {
            prop_assert_eq!(checked.verdict, Verdict::Stop);
        }
    }

    #[test]
    fn no_override_betters_a_stop_that_is_none_of_prudence(question in any_question(), rule in "[a-z-]{1,20}") {
        let before = checked(&question);
        let mut over = question.clone();
        let rules = before.findings.iter().map(|finding| finding.rule.clone()).chain([rule]);
        over.overrides = rules.map(|rule| Override { rule, by: "b".into(), reason: "r".into() }).collect();
        let after = checked(&over);
        prop_assert!(after.verdict >= before.verdict);
        for stop in before.findings.iter().filter(|finding| finding.verdict == Verdict::Stop) {
            prop_assert!(after.findings.contains(stop), "{} is gone", stop.case.key);
        }
    }

    #[test]
    fn a_spec_read_from_its_tag_is_judged_as_it_was(
        question in any_question(), bend in maybe(50.0..400.0f64), vacuum in maybe(1.0..100.0f64), adapter in maybe(maybe(100.0..500.0f64)),
    ) {
        let mut question = question;
        if let Some(hose) = &mut question.spec.hose {
            hose.min_bend_radius_mm = bend.map(Millimetres);
            hose.vacuum_kpa_abs = vacuum;
        }
        let rated = |rating: Option<f64>| Adapter { name: "tee".into(), rating_bar: rating.map(Bar), between: None };
        question.spec.adapters = adapter.map(rated).into_iter().collect();
        let before = checked(&question);
        let made = TagContent {
            code: TagCode::from_random([7; 7]), spec: before.spec.clone(), pressure_bar: before.assembly_pressure_bar,
            line: None, fluid: None, duties: Vec::new(), assembled: None, proof: Proof::NotProved, catalogue: "c".into(), seal: None,
        };
        let read = tag::read(&tag::write(&made)).map_err(|error| TestCaseError::fail(error.to_string()))?;
        question.spec = read.spec;
        let after = checked(&question);
        prop_assert_eq!(after.findings, before.findings);
        prop_assert_eq!((after.verdict, after.assembly_pressure_bar), (before.verdict, before.assembly_pressure_bar));
    }

    #[test]
    fn an_alternative_is_judged_as_if_it_were_asked_for(question in any_question()) {
        for other in checked(&question).alternatives {
            let mut asked = question.clone();
            asked.spec.hose = Some(HoseRef::named(other.standard, other.kind, other.dn));
            prop_assert_eq!(checked(&asked).verdict, other.verdict);
        }
    }
}
