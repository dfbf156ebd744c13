//! What an answer is made of: nothing is lost on the way in, and each figure is its own.

use super::line::{asked, catalogue, changed, checked, end, finding, hose, known, was};
use hosewright_core::check::{CheckError, Evidence, Finding, Verdict, assembly_rating, check};
use hosewright_core::find::{Readings, find};
use hosewright_core::quantity::{Celsius, Millimetres};
use hosewright_core::spec::{Estimated, Role};
use std::collections::BTreeSet;

#[test]
fn what_find_said_goes_whole_into_the_check() {
    let readings: Readings = serde_json::from_value(serde_json::json!({
        "hose": { "id_mm": 15.9, "layers": 2 }, "ends": [{ "role": "A", "thread_diameter_mm": 20.6, "gender": "female" }]
    }))
    .expect("readings");
    let found = find(catalogue(), &readings).expect("is found");
    assert!(!found.hose.is_empty() && !found.ends.is_empty() && !found.next.is_empty());
    let evidence = Evidence::from(found.clone());
    assert_eq!((evidence.hose, evidence.ends), (found.hose, found.ends));
    assert_eq!((evidence.unknown, evidence.next), (found.unknown, found.next));
    assert_eq!(evidence.settled, Some(found.settled));
}

#[test]
fn an_end_given_twice_is_refused_by_its_name() {
    for role in [Role::A, Role::B] {
        let twice = changed(|question| question.spec.ends = vec![end(role, "ORFS", "-10"); 2]);
        assert_eq!(check(catalogue(), &twice), Err(CheckError::EndTwice(role)));
    }
}

#[test]
fn the_rating_alone_is_that_of_the_check() {
    let question = known();
    let rating = assembly_rating(catalogue(), &question).expect("can be asked");
    assert!(rating.is_some());
    assert_eq!(rating, checked(&question).assembly_pressure_bar);
}

#[test]
fn a_limit_names_the_very_caution_it_rests_on() {
    let checked =
        asked(|question| (question.service.surge_pressure_bar, question.service.relief_bar) = (None, None));
    let source = catalogue().cautions.iter().find(|caution| caution.id == "C30").expect("surge counts");
    assert_eq!(finding(&checked, "surge-missing").source, source.provenance.source);
}

#[test]
fn no_hose_is_its_own_alternative_nor_anothers_twin_without_a_row_that_says_so() {
    let rows = catalogue().hoses.iter().filter(|row| [6.3, 16.0, 51.0].contains(&row.dn.get()));
    for row in rows {
        let question = changed(|question| {
            question.spec.hose = Some(hose(row.standard.as_str(), row.kind.as_str(), row.dn.get()))
        });
        for other in checked(&question).alternatives {
            assert_ne!((&other.standard, &other.kind, other.dn), (&row.standard, &row.kind, row.dn));
            let called_twin = other.grounds.iter().any(|why| why.case.key == "alternative-twin-ok");
            let kind = catalogue().hose_type(&row.standard, &row.kind).expect("its type");
            let is_twin = kind
                .interchange
                .iter()
                .any(|with| with.equal && with.standard == other.standard && with.kind == other.kind);
            assert_eq!(
                called_twin, is_twin,
                "{} {} for {} {}",
                other.standard, other.kind, row.standard, row.kind
            );
        }
    }
}

#[test]
fn what_bends_and_carries_just_the_same_is_no_advantage() {
    let twin = checked(&known()).alternatives.into_iter();
    let twin = { twin }.find(|other| (other.standard.as_str(), other.kind.as_str()) == ("ISO 1436", "2SN"));
    let twin = twin.expect("the twin");
    let said = twin.grounds.iter().map(|why| why.case.key).filter(|key| key.starts_with("alternative-"));
    assert_eq!(said.collect::<Vec<_>>(), ["alternative-twin-ok"]);
}

#[test]
fn a_figure_that_was_worked_out_is_said_so_and_needs_a_margin() {
    let routed = |radius: f64| {
        asked(|question| {
            question.service.bend_radius_mm = Some(Millimetres(radius));
            question.service.estimated =
                Some(Estimated { bend_radius_mm: question.service.bend_radius_mm, ..Estimated::default() });
        })
    };
    // The hose may be bent to 200 mm; a tenth of that is the margin of the estimate (common practice).
    for (radius, key, verdict) in [
        (199.0, "bend-too-tight", Verdict::Stop),
        (219.0, "bend-estimated-near", Verdict::Caution),
        (221.0, "bend-estimated-ok", Verdict::Pass),
    ] {
        assert_eq!(finding(&routed(radius), key).verdict, verdict, "{radius} mm");
    }
    let measured_since = asked(|question| {
        question.service.estimated =
            Some(Estimated { bend_radius_mm: Some(Millimetres(219.0)), ..Estimated::default() });
    });
    assert_eq!(finding(&measured_since, "bend-ok").verdict, Verdict::Pass);
    let reckoned = asked(|question| {
        question.service.estimated = Some(Estimated {
            surge_pressure_bar: question.service.surge_pressure_bar,
            ..Estimated::default()
        });
    });
    let told = finding(&reckoned, "surge-reckoned");
    assert_eq!((reckoned.verdict, told.value, told.unit), (Verdict::Caution, Some(250.0), "bar"));
}

/// What is found over hoses of every kind, in oil, water glycol and water, the original being that hose or the next.
fn over_the_tables() -> Vec<Finding> {
    let rows: Vec<_> =
        catalogue().hoses.iter().filter(|row| row.dn.get() == 16.0 || row.vacuum_kpa_abs.is_some()).collect();
    let pairs = rows.iter().zip(rows.iter().cycle().skip(1)).chain(rows.iter().zip(&rows));
    let asked = pairs.flat_map(|(own, original)| {
        [("HM", -10.0), ("HFC", -10.0), ("water", 5.0)].map(|(fluid, coldest)| {
            changed(|question| {
                question.spec.hose = Some(hose(own.standard.as_str(), own.kind.as_str(), own.dn.get()));
                question.service.fluid = Some(fluid.into());
                question.service.fluid_max_c = Some(Celsius(50.0));
                question.service.fluid_min_c = Some(Celsius(coldest));
                question.service.bend_radius_mm = None;
                let evidence = question.found.as_mut().expect("the known line has evidence");
                evidence.hose =
                    vec![was(original.standard.as_str(), original.kind.as_str(), original.dn.get(), 0.99)];
            })
        })
    });
    asked.flat_map(|question| checked(&question).findings).collect()
}

#[test]
fn every_limit_is_told_by_its_own_words_and_every_figure_has_its_unit() {
    let findings = over_the_tables();
    let keys: BTreeSet<&str> = findings.iter().map(|finding| finding.case.key).collect();
    for key in [
        "heat-ok",
        "heat-unverified",
        "cold-ok",
        "cold-unverified",
        "ambient-ok",
        "ambient-unverified",
        "fluid-heat-ok",
        "frost-ok",
        "original-pressure-ok",
        "original-bend-ok",
        "original-vacuum-ok",
    ] {
        assert!(keys.contains(key), "no {key} among {keys:?}");
    }
    for finding in &findings {
        let figures = finding.value.or(finding.limit).is_some();
        assert!(!figures || !finding.unit.is_empty(), "no unit: {finding:?}");
        let of_air = finding.case.key.starts_with("ambient-");
        assert_eq!(of_air, finding.rule == "ambient-temperature", "{finding:?}");
    }
}
