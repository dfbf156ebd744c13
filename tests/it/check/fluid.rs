//! Fluids and duties of the place.

use super::line::{asked, finding, has, hose, name, objections};
use hosewright_core::check::Verdict;
use hosewright_core::spec::{Cover, Duty};
use rstest::rstest;

#[rstest]
#[case::destroyed("HEES", "fluid-destroys-tube", Verdict::Stop)]
#[case::excluded_by_the_standard("HFDR", "fluid-excluded", Verdict::Stop)]
#[case::limited("HFDU", "fluid-limited", Verdict::Caution)]
#[case::not_named_by_the_standard("HEPG", "fluid-not-named", Verdict::Caution)]
#[case::unknown("unicorn milk", "fluid-unknown", Verdict::Stop)]
#[case::steam("steam", "out-of-scope", Verdict::Stop)]
#[case::brakes("DOT 4", "out-of-scope", Verdict::Stop)]
#[case::brakes_by_the_tables_own_name("DOT 5 silicone brake fluid", "out-of-scope", Verdict::Stop)]
#[case::air("compressed air", "out-of-scope", Verdict::Stop)]
#[case::oxygen("oxygen", "out-of-scope", Verdict::Stop)]
#[case::refrigerant("R134a", "out-of-scope", Verdict::Stop)]
#[case::fuel_gas("LPG", "out-of-scope", Verdict::Stop)]
#[case::jetting("water jetting", "out-of-scope", Verdict::Stop)]
fn a_fluid_that_does_not_suit_the_hose_is_said_so(
    #[case] fluid: &str,
    #[case] key: &str,
    #[case] verdict: Verdict,
) {
    let checked = asked(|question| question.service.fluid = Some(fluid.into()));
    assert_eq!(finding(&checked, key).verdict, verdict);
    assert_eq!(checked.verdict, verdict, "{:?}", objections(&checked));
}

#[test]
fn a_fluid_in_scope_is_not_refused_as_another_trades() {
    for fluid in ["HM", "mineral oil", "water", "diesel", "ATF", "HFC"] {
        let checked = asked(|question| question.service.fluid = Some(fluid.into()));
        assert!(!has(&checked, "out-of-scope"), "{fluid} is this trade's");
    }
}

#[test]
fn every_material_the_tube_may_be_of_must_stand_the_fluid() {
    // R7 is of PA or TPE-E: PA stands HFDU, TPE-E only for weak duty.
    let checked = asked(|question| {
        question.spec.hose = Some(hose("SAE J517", "100R7", 16.0));
        question.service.fluid = Some("HFDU".into());
    });
    let tubes: Vec<_> = checked
        .findings
        .iter()
        .filter(|finding| finding.rule == "fluid")
        .filter_map(|finding| Some((name(finding, "tube")?, finding.case.key)))
        .collect();
    assert_eq!(tubes, [("TPE-E", "fluid-limited"), ("PA", "fluid-ok")]);
}

#[rstest]
#[case::thermoplastic(("SAE J517", "100R7"), Some(Cover::NonConductive), Duty::NonConductive, "duty-ok")]
#[case::cover_not_said(("SAE J517", "100R7"), None, Duty::NonConductive, "duty-cover-missing")]
#[case::other_cover(("SAE J517", "100R7"), Some(Cover::FlameResistant), Duty::NonConductive, "duty-cover-missing")]
#[case::wire_braid(("EN 853", "2SN"), Some(Cover::NonConductive), Duty::NonConductive, "duty-wire-conducts")]
#[case::wire_spiral(("EN 856", "4SP"), Some(Cover::NonConductive), Duty::NonConductive, "duty-wire-conducts")]
#[case::steel_over_ptfe(("SAE J517", "100R14"), Some(Cover::NonConductive), Duty::NonConductive, "duty-wire-conducts")]
#[case::textile(("EN 854", "2TE"), Some(Cover::NonConductive), Duty::NonConductive, "duty-ok")]
#[case::flame(("EN 853", "2SN"), Some(Cover::FlameResistant), Duty::FlameResistant, "duty-ok")]
#[case::flame_not_said(("EN 853", "2SN"), Some(Cover::Plain), Duty::FlameResistant, "duty-cover-missing")]
#[case::antistatic(("EN 853", "2SN"), Some(Cover::Antistatic), Duty::Antistatic, "duty-ok")]
#[case::antistatic_not_said(("EN 853", "2SN"), None, Duty::Antistatic, "duty-cover-missing")]
fn a_duty_of_the_place_is_kept_or_the_hose_is_not_made(
    #[case] (standard, kind): (&str, &str),
    #[case] cover: Option<Cover>,
    #[case] duty: Duty,
    #[case] key: &str,
) {
    let checked = asked(|question| {
        question.spec.hose = Some(hose(standard, kind, 16.0));
        question.spec.cover = cover;
        question.service.duties = vec![duty];
    });
    let verdict = if key == "duty-ok" { Verdict::Pass } else { Verdict::Stop };
    assert_eq!(finding(&checked, key).verdict, verdict);
}

#[test]
fn every_duty_is_looked_at() {
    let checked = asked(|question| {
        question.spec.cover = Some(Cover::FlameResistant);
        question.service.duties = vec![Duty::FlameResistant, Duty::Antistatic];
    });
    assert!(has(&checked, "duty-ok") && has(&checked, "duty-cover-missing"), "{:?}", objections(&checked));
}

#[test]
fn a_maker_free_reinforcement_may_hold_wire() {
    let checked = asked(|question| {
        question.spec.hose = Some(hose("ISO 18752", "AC 210", 16.0));
        question.spec.cover = Some(Cover::NonConductive);
        question.service.duties = vec![Duty::NonConductive];
    });
    assert!(has(&checked, "duty-wire-conducts"), "{:?}", objections(&checked));
}
