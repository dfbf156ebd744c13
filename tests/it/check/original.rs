//! Doubt about the hose that was there.

use super::line::{asked, dn, evidence, finding, has, hose, name, objections, was};
use hosewright_core::check::{Evidence, Verdict};
use hosewright_core::find::{Found, HoseName, Settled};
use hosewright_core::quantity::{Bar, Celsius, Millimetres};
use hosewright_core::spec::Line;
use rstest::rstest;

#[test]
fn every_original_that_is_still_plausible_must_be_satisfied() {
    // 2SN DN 16 (250 bar) for what may have been 2SN or 4SP (350 bar).
    let doubt = |likely: f64, unlikely: f64, unknown: f64| {
        asked(|question| {
            let found = evidence(question);
            found.hose = vec![was("EN 856", "4SP", 16.0, unlikely), was("EN 853", "2SN", 16.0, likely)];
            found.unknown.hose = unknown;
        })
    };
    let stopped = doubt(0.985, 0.011, 0.004);
    let rival = finding(&stopped, "original-pressure-above");
    assert_eq!(rival.verdict, Verdict::Stop);
    assert_eq!((rival.value, rival.limit), (Some(250.0), Some(350.0)));
    assert_eq!(name(rival, "rival"), Some("EN 856 4SP DN 16"), "the finding names what drove it");
    let settled = doubt(0.99, 0.006, 0.004);
    assert_eq!(settled.verdict, Verdict::Pass, "99 % is enough: {:?}", objections(&settled));
}

#[test]
fn every_twin_of_a_plausible_class_must_be_satisfied() {
    let checked = asked(|question| {
        evidence(question).hose[0].also =
            vec![HoseName { standard: "EN 856".into(), kind: "4SP".into(), dn: dn(16.0), dash: None }];
    });
    assert_eq!(finding(&checked, "original-pressure-above").verdict, Verdict::Stop);
}

#[rstest]
#[case::unlikely(0.01, false)]
#[case::likely(0.0101, true)]
fn an_original_that_may_be_none_of_the_tables_is_a_caution(#[case] unknown: f64, #[case] said: bool) {
    let checked = asked(|question| evidence(question).unknown.hose = unknown);
    assert_eq!(has(&checked, "original-unknown"), said);
}

#[test]
fn an_original_this_catalogue_does_not_have_is_a_caution() {
    let checked = asked(|question| evidence(question).hose = vec![was("EN 853", "9XX", 16.0, 1.0)]);
    assert_eq!(objections(&checked), ["original-unknown"]);
}

#[test]
fn an_original_whose_pressure_nobody_knows_needs_the_printed_one() {
    let ask = |printed: Option<Bar>| {
        asked(|question| {
            evidence(question).hose = vec![was("ISO 18752", "AC", 16.0, 1.0)];
            evidence(question).printed_pressure_bar = printed;
        })
    };
    assert_eq!(finding(&ask(None), "original-pressure-unknown").verdict, Verdict::Caution);
    let printed = ask(Some(Bar(210.0)));
    assert!(!has(&printed, "original-pressure-unknown"));
    assert_eq!(finding(&printed, "printed-pressure-ok").limit, Some(210.0));
}

#[rstest]
#[case::larger(19.0, "original-bore-larger", Verdict::Stop)]
#[case::smaller(12.0, "original-bore-smaller", Verdict::Caution)]
#[case::same(16.0, "original-bore-ok", Verdict::Pass)]
fn the_bore_is_that_of_the_original(#[case] size: f64, #[case] key: &str, #[case] verdict: Verdict) {
    let checked = asked(|question| evidence(question).hose = vec![was("EN 853", "1SN", size, 1.0)]);
    assert_eq!(finding(&checked, key).verdict, verdict);
}

#[test]
fn of_two_originals_the_larger_bore_counts() {
    let checked = asked(|question| {
        evidence(question).hose = vec![was("EN 853", "1SN", 12.0, 0.5), was("EN 853", "1SN", 19.0, 0.5)];
    });
    let bore = finding(&checked, "original-bore-larger");
    assert_eq!((bore.value, bore.limit), (Some(16.0), Some(19.0)));
    assert_eq!(name(bore, "rival"), Some("EN 853 1SN DN 19"));
}

#[test]
fn what_was_measured_counts_over_what_the_original_could_bear() {
    // R12 bears 120 C and 2SN 100 C; R12 is for 280 bar, so the spec is 4SP (350 bar, 100 C, 250 mm).
    let ask = |heat: Option<f64>| {
        asked(|question| {
            question.spec.hose = Some(hose("EN 856", "4SP", 16.0));
            question.service.bend_radius_mm = Some(Millimetres(300.0));
            question.service.fluid_max_c = heat.map(Celsius);
            evidence(question).hose = vec![was("EN 856", "R12", 16.0, 1.0)];
        })
    };
    assert_eq!(finding(&ask(None), "original-heat-above").verdict, Verdict::Stop);
    let measured = ask(Some(80.0));
    let heat = finding(&measured, "original-heat-measured");
    assert_eq!((heat.verdict, heat.value, heat.limit), (Verdict::Caution, Some(100.0), Some(120.0)));
}

#[test]
fn cold_and_bend_of_the_original_count_until_they_are_measured() {
    // 100R14 bears -54 C, 2SN -40 C.
    let cold = |coldest: Option<f64>| {
        asked(|question| {
            question.service.fluid_min_c = coldest.map(Celsius);
            evidence(question).hose = vec![was("SAE J517", "100R14", 16.0, 1.0)];
        })
    };
    assert_eq!(finding(&cold(None), "original-cold-below").verdict, Verdict::Stop);
    assert_eq!(finding(&cold(Some(-20.0)), "original-cold-measured").verdict, Verdict::Caution);
    assert_eq!(finding(&asked(|_| ()), "original-cold-ok").limit, Some(-40.0));
    // 2SC of DN 16 bends to 170 mm, 2SN to 200 mm.
    let bend = |radius: Option<f64>| {
        asked(|question| {
            question.service.bend_radius_mm = radius.map(Millimetres);
            evidence(question).hose = vec![was("EN 857", "2SC", 16.0, 1.0)];
        })
    };
    let unmeasured = bend(None);
    let tighter = finding(&unmeasured, "original-bend-tighter");
    assert_eq!((tighter.verdict, tighter.value, tighter.limit), (Verdict::Stop, Some(200.0), Some(170.0)));
    assert_eq!(bend(Some(200.0)).verdict, Verdict::Pass, "{:?}", objections(&bend(Some(200.0))));
    let same = asked(|question| question.service.bend_radius_mm = None);
    assert_eq!(finding(&same, "original-bend-ok").limit, Some(200.0));
}

#[test]
fn an_original_made_for_suction_is_not_replaced_in_silence() {
    let ask = |line: Option<Line>| {
        asked(|question| {
            question.spec.hose = Some(hose("EN 853", "2SN", 25.0));
            question.service.line = line;
            evidence(question).hose = vec![was("SAE J517", "100R4", 25.0, 1.0)];
        })
    };
    assert_eq!(finding(&ask(None), "original-vacuum-deeper").verdict, Verdict::Stop);
    assert_eq!(finding(&ask(Some(Line::Return)), "original-vacuum-not-asked").verdict, Verdict::Caution);
    let same = asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R4", 25.0));
        evidence(question).hose = vec![was("SAE J517", "100R4", 25.0, 1.0)];
    });
    assert_eq!(finding(&same, "original-vacuum-ok").value, Some(17.0));
    let shallower = asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R4", 63.0));
        question.service.line = None;
        evidence(question).hose =
            vec![was("SAE J517", "100R4", 51.0, 0.5), was("SAE J517", "100R4", 63.0, 0.5)];
    });
    let deeper = finding(&shallower, "original-vacuum-deeper");
    assert_eq!((deeper.value, deeper.limit), (Some(44.0), Some(17.0)), "the deepest original counts");
}

#[test]
fn what_find_answers_is_evidence() {
    let settled = Settled { hose: true, a: true, b: false };
    let found = Found { settled, hose: vec![was("EN 853", "2SN", 16.0, 1.0)], ..Found::default() };
    let evidence = Evidence::from(found);
    assert_eq!(evidence.settled, Some(settled));
    assert_eq!(evidence.hose.len(), 1);
    assert_eq!(evidence.printed_pressure_bar, None);
}
