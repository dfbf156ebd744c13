//! What stands on a cover becomes fields, whole or worn.

use hosewright_core::catalogue::{Catalogue, HoseRow};
use hosewright_core::print::{PrintError, Printed, read};
use hosewright_core::spec::Cover;
use proptest::prelude::*;
use rstest::rstest;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
struct Case {
    id: String,
    condition: String,
    marking_string: String,
    standard: String,
    #[serde(rename = "type")]
    kind: String,
    dn: Option<f64>,
    dash: Option<u16>,
    pressure_bar: Option<f64>,
    mfg_year: Option<u16>,
    mfg_period: String,
    source: String,
}

fn print(text: &str) -> Printed {
    read(Catalogue::embedded(), text).expect("the print is short enough")
}

/// The period as the cases write it: `Q3`, `M06`, `W22`.
fn period(printed: &Printed) -> String {
    printed.made.map_or_else(String::new, |made| match (made.quarter, made.month, made.week) {
        (Some(quarter), _, _) => format!("Q{quarter}"),
        (_, Some(month), _) => format!("M{month:02}"),
        (_, _, Some(week)) => format!("W{week:02}"),
        _ => String::new(),
    })
}

/// A field as published beside the field as read.
type Fields = [(&'static str, Option<String>, Option<String>); 7];

fn fields(case: &Case, got: &Printed) -> Fields {
    let stated = |text: &str| Some(text.to_owned()).filter(|text| !text.is_empty());
    let number = |number: Option<f64>| number.map(|number| number.to_string());
    [
        ("standard", stated(&case.standard), got.standard.clone()),
        ("type", stated(&case.kind), got.kind.clone()),
        ("dn", number(case.dn), number(got.dn.map(|dn| dn.get()))),
        ("dash", number(case.dash.map(f64::from)), number(got.dash.map(f64::from))),
        ("pressure_bar", number(case.pressure_bar), number(got.pressure_bar.map(|bar| bar.get()))),
        ("year", number(case.mfg_year.map(f64::from)), number(got.made.map(|made| f64::from(made.year)))),
        ("period", stated(&case.mfg_period), stated(&period(got))),
    ]
}

/// Every example of the marking table, each field, empty ones too: a field the print does not say
/// stays empty. A worn marking is published with what its author concludes: "2S." as 2SN, although
/// EN 853 has 2ST at the same sizes and pressures, so that neither DN nor pressure settles the worn
/// letter. Such a conclusion has to stand among the candidates, and is stated only where it is the
/// one that is left.
#[test]
fn every_example_marking_is_read_as_published() {
    let text = include_str!("../vectors/hose_marking_cases.csv");
    let mut wrong = Vec::new();
    let mut cases = 0;
    for case in csv::Reader::from_reader(text.as_bytes()).deserialize::<Case>() {
        let case = case.expect("a row of the table");
        cases += 1;
        let got = print(&case.marking_string);
        let is_candidate = || {
            got.candidates.iter().any(|row| {
                (row.standard.as_str(), row.kind.as_str()) == (case.standard.as_str(), case.kind.as_str())
                    && case.dn.is_none_or(|dn| dn == row.dn.get())
            })
        };
        for (field, published, found) in fields(&case, &got) {
            let is_left_open = found.is_none() && case.condition == "worn" && is_candidate();
            if found != published && !is_left_open {
                wrong.push(format!(
                    "{} \"{}\" ({}): {field} is {found:?}, published is {published:?}",
                    case.id, case.marking_string, case.source
                ));
            }
        }
    }
    assert!(cases >= 28, "only {cases} examples were read");
    assert!(wrong.is_empty(), "of {cases} markings:\n{}", wrong.join("\n"));
}

#[rstest]
// A burst figure is never taken for the working pressure (SAE J517 forbids it on the hose, and it is met).
#[case::burst_before("SAE 100R2AT-8 WP 275 BAR BP 1100 BAR", Some(275.0))]
#[case::burst_alone("EN 853 2SN DN 12 MIN BURST 1100 BAR", None)]
#[case::burst_behind("EN 853 2SN DN 12 1100 BAR BURST", None)]
#[case::burst_first("EN 853 2SN DN 12 BURST 16000 PSI WP 4000 PSI", Some(276.0))]
#[case::burst_dotted("EN 853 2SN DN 12 B.P. 1100 BAR", None)]
// Mixed units: bar is read, psi rounded where it stands alone.
#[case::mixed_units("EN 853 2SN DN 12 4000 PSI 275 BAR 27.5 MPA", Some(275.0))]
#[case::mpa("EN 856 4SH DN 25 38,0 MPA", Some(380.0))]
#[case::worn_unit("EN 853 2SN DN 12 275 BA?", Some(275.0))]
#[case::two_units_of_one("EN 853 2SN DN 12 27.5 MPA / 4000 PSI", Some(275.0))]
#[case::burst_behind_first("EN 853 2SN DN 12 1100 BAR BURST 275 BAR WP", Some(275.0))]
#[case::burst_in_the_better_unit("EN 853 2SN DN 12 4000 PSI 1100 BAR", Some(276.0))]
#[case::four_times_another("EN 853 2SN DN 12 275 BAR 1100 BAR", Some(275.0))]
#[case::burst_max("EN 853 2SN DN 12 BURST MAX 1100 BAR", None)]
#[case::burst_far_before("EN 853 2SN DN 12 MIN BURST PRESSURE OF THE HOSE 1100 BAR", None)]
#[case::burst_unmarked("EN 853 2SN DN 12 1100 BAR", None)]
#[case::burst_worn("* 2SN DN 12 B???? 1100 BAR", None)]
#[case::burst_in_psi_too("EN 853 2SN DN 12 WP 275 BAR 4000 PSI BP 1100 BAR 16000 PSI", Some(275.0))]
#[case::newer_rating_stands("EN 856 4SH DN 31 350 BAR", Some(350.0))]
#[case::stop_for_a_digit("EN 853 2SN DN 16 2.0 BAR", None)]
#[case::design_factor("EN 853 2SN DN 12 275 BAR DESIGN FACTOR 4:1", Some(275.0))]
fn working_pressure_is_read_and_burst_is_not(#[case] text: &str, #[case] bar: Option<f64>) {
    assert_eq!(print(text).pressure_bar.map(|bar| bar.get()), bar, "{text}");
}

#[rstest]
#[case::tube_size_of_r5("SAE 100R5-8", "100R5", 10.0, 8)]
#[case::tube_size_of_r14("SAE 100R14-8", "100R14", 10.0, 8)]
#[case::bore_size_elsewhere("SAE 100R2S-8", "100R2S", 12.0, 8)]
#[case::spoken_short("R2AT-8", "100R2AT", 12.0, 8)]
#[case::mixed_number("EN 853 2SN 1 1/4\"", "2SN", 31.0, 20)]
#[case::mixed_number_dashed("EN 853 2SN 1-1/4 IN", "2SN", 31.0, 20)]
#[case::whole_inches("EN 853 2SN 2\"", "2SN", 51.0, 32)]
#[case::alias_of_31("EN 856 4SP DN32", "4SP", 31.0, 20)]
#[case::alias_of_51("EN 856 4SP DN50", "4SP", 51.0, 32)]
#[case::typographic("EN 853\u{2013}2SN DN\u{a0}16", "2SN", 16.0, 10)]
#[case::lower_case("en 853 2sn dn16", "2SN", 16.0, 10)]
#[case::any_number_of_letters("* 853 2SN DN 16 *", "2SN", 16.0, 10)]
#[case::part_of_a_standard("DIN 20022-4 2SN DN 16", "2SN", 16.0, 10)]
#[case::edition_of_a_standard("EN 853:2015 2SN DN 16", "2SN", 16.0, 10)]
#[case::three_sizes_of_one("EN 853 2SN DN 16 -10 5/8\"", "2SN", 16.0, 10)]
#[case::fraction_letter("EN 853 2SN 1\u{bd}\"", "2SN", 38.0, 24)]
#[case::dots_for_any_number("...853 2SN DN 16...", "2SN", 16.0, 10)]
fn size_is_the_tables_size(#[case] text: &str, #[case] kind: &str, #[case] dn: f64, #[case] dash: u16) {
    let got = print(text);
    assert_eq!(got.kind.as_deref(), Some(kind), "type of {text}");
    assert_eq!((got.dn.map(|dn| dn.get()), got.dash), (Some(dn), Some(dash)), "size of {text}");
}

#[rstest]
#[case::quarter("EN 853 2SN DN 12 3Q24", 2024, "Q3")]
#[case::quarter_full_year("EN 853 2SN DN 12 3Q2024", 2024, "Q3")]
#[case::quarter_slash("EN 853 2SN DN 12 3Q/24", 2024, "Q3")]
#[case::american("SAE 100R2AT-8 2/19/88", 1988, "M02")]
#[case::month("SAE 100R2AT-8 06/24", 2024, "M06")]
#[case::sixteenths_or_march("SAE 100R2AT-8 3/16", 2016, "M03")]
#[case::month_bare("EN 853 2SN DN 12 0624", 2024, "M06")]
#[case::week("EN 853 2SN DN 12 W12/24", 2024, "W12")]
#[case::week_bare("EN 853 2SN DN 12 3824", 2024, "W38")]
#[case::ferrule("275 BAR 1606", 2016, "M06")]
#[case::quarter_first("EN 853 2SN DN 12 Q1 24", 2024, "Q1")]
#[case::year_and_quarter("EN 853 2SN DN 12 24Q1", 2024, "Q1")]
#[case::month_dotted("EN 853 2SN DN 12 03.24", 2024, "M03")]
#[case::iso_week("EN 853 2SN DN 12 24W12", 2024, "W12")]
#[case::week_in_words("EN 853 2SN DN 12 WEEK 12/24", 2024, "W12")]
#[case::year_first("EN 853 2SN DN 12 2024-03", 2024, "M03")]
fn the_date_is_read_in_its_forms(#[case] text: &str, #[case] year: u16, #[case] of_year: &str) {
    let got = print(text);
    assert_eq!((got.made.map(|made| made.year), period(&got).as_str()), (Some(year), of_year), "{text}");
}

/// Month or week: the print does not say which, so both are given. SAE hose has months with a slash.
#[rstest]
#[case("EN 853 2SN DN 12 12/24", &["M12", "W12"])]
#[case("EN 853 2SN DN 12 1224", &["M12", "W12"])]
#[case("EN 853 2SN DN 12 24W12", &["W12", "W24"])]
#[case("EN 853 2SN DN 12 38/24", &["W38"])]
#[case("SAE 100R2AT-8 12/24", &["M12"])]
#[case("EN 853 2SN DN 12 3Q24", &["Q3"])]
fn every_reading_of_a_date_is_given(#[case] text: &str, #[case] periods: &[&str]) {
    let got = print(text);
    let all = got.made.into_iter().chain(got.made_or.iter().copied());
    let read: Vec<String> =
        all.map(|made| period(&Printed { made: Some(made), ..Printed::default() })).collect();
    assert_eq!(read, periods, "{text}");
}

/// The edition of a standard is no date.
#[test]
fn an_edition_is_no_date() {
    assert_eq!(print("EN 853:2015 2SN DN 16").made, None);
}

/// The number behind that of a military standard is a size and no part of the standard: as a dash, or as
/// the nominal diameter that has the same number.
#[test]
fn the_number_behind_a_military_standard_is_a_size() {
    let got = print("MIL-H-8794-6");
    let sizes: Vec<(f64, Option<u16>)> = got.candidates.iter().map(|row| (row.dn.get(), row.dash)).collect();
    assert_eq!(sizes, [(6.0, Some(5)), (8.0, Some(6))]);
}

/// Hose lives longer than the standard it was printed by. The tables name the successors of the
/// withdrawn German ones from memory, and say so.
#[rstest]
#[case("DIN 20022 2ST DN 16", "EN 853", "2ST")]
#[case("DIN 20022-2SN-DN 16", "EN 853", "2SN")]
#[case("DIN 20022-4 2SN DN 16", "EN 853", "2SN")]
#[case("DIN 20023-3 4SP DN 12", "EN 856", "4SP")]
#[case("DIN 20023 4SH DN 25", "EN 856", "4SH")]
#[case("DIN 20021 3TE DN 16", "EN 854", "3TE")]
#[case("DIN EN 853 2SN DN 16", "EN 853", "2SN")]
fn a_withdrawn_standard_is_read_as_its_successor(
    #[case] text: &str,
    #[case] standard: &str,
    #[case] kind: &str,
) {
    let got = print(text);
    assert_eq!((got.standard.as_deref(), got.kind.as_deref()), (Some(standard), Some(kind)), "{text}");
    assert!(got.dn.is_some() && got.unread.is_empty(), "{text}: {got:?}");
    assert!(got.candidates.iter().all(|row| row.standard == standard), "{text}: {:?}", got.candidates);
}

#[test]
fn several_standards_on_one_hose_all_stand_among_the_candidates() {
    let got = print("EN 853 2SN / SAE 100R2AT / ISO 1436 2SN DN 16 -10 250 BAR");
    assert_eq!((got.standard.as_deref(), got.kind.as_deref()), (Some("EN 853"), Some("2SN")));
    for (standard, kind) in [("EN 853", "2SN"), ("SAE J517", "100R2AT"), ("ISO 1436", "2SN")] {
        assert!(
            got.candidates
                .iter()
                .any(|row| row.standard == standard && row.kind == kind && row.dn.get() == 16.0),
            "{standard} {kind} DN 16 is missing among {:?}",
            got.candidates
        );
    }
}

#[test]
fn an_ambiguous_letter_is_left_open() {
    let got = print("2S? DN 16");
    assert_eq!(got.kind, None, "2SN, 2ST and 2SC all fit");
    for kind in ["2SN", "2ST", "2SC"] {
        assert!(got.candidates.iter().any(|row| row.kind == kind), "{kind} is missing");
    }
}

/// EN 853 has 2SN and 2ST in each size at one pressure: no other part of the print tells the letter.
#[rstest]
#[case::size_worn("..N 853 2S. DN 1.", Some("EN 853"), None, None)]
#[case::pressure_worn("..N 853 2S. DN 1. ..50 bar .Q24", Some("EN 853"), None, None)]
#[case::all_else_whole("EN 853 2S. DN 16 250 BAR", Some("EN 853"), None, Some(16.0))]
#[case::one_type_is_left("EN 85. 4SP DN 25", Some("EN 856"), Some("4SP"), Some(25.0))]
#[case::standard_worn_away("... 2SN DN 16", None, Some("2SN"), Some(16.0))]
#[case::figure_of_two_sizes("EN 853 2SN DN ?2", Some("EN 853"), Some("2SN"), None)]
fn a_field_is_stated_only_where_the_worn_letters_leave_no_other(
    #[case] text: &str,
    #[case] standard: Option<&str>,
    #[case] kind: Option<&str>,
    #[case] dn: Option<f64>,
) {
    let got = print(text);
    let stated = (got.standard.as_deref(), got.kind.as_deref(), got.dn.map(|dn| dn.get()));
    assert_eq!(stated, (standard, kind, dn), "{text}");
    let kinds = |kind: &str| got.candidates.iter().any(|row| row.kind == kind);
    assert!(kind.is_some() || kinds("2SN") && kinds("2ST"), "{text}: {:?}", got.candidates);
}

/// A full stop stands for a worn digit too, where the decimal names no size.
#[rstest]
#[case("EN 853 2SN DN 6.3", &[6.0])]
#[case("EN 854 3TE DN 1.0", &[10.0, 100.0])]
fn a_decimal_is_a_size_or_a_worn_digit(#[case] text: &str, #[case] sizes: &[f64]) {
    let got: Vec<f64> = print(text).candidates.iter().map(|row| row.dn.get()).collect();
    assert_eq!(got, sizes, "{text}");
}

/// DN 32 stands on hoses of DN 31.
#[test]
fn a_worn_figure_may_be_any_form_of_its_size() {
    let got = print("EN 853 2SN DN ?2");
    let sizes: Vec<f64> = got.candidates.iter().map(|row| row.dn.get()).collect();
    assert_eq!(sizes, [12.0, 31.0]);
}

#[test]
fn a_worn_size_is_settled_by_its_pressure_among_the_candidates_only() {
    let got = print("EN 853 2SN DN 1. ..50 bar");
    assert_eq!((got.dn, got.pressure_bar), (None, None), "neither figure is whole");
    let sizes: Vec<f64> =
        got.candidates.iter().filter(|row| row.kind == "2SN").map(|row| row.dn.get()).collect();
    assert_eq!(sizes, [16.0], "only DN 16 is rated at a pressure that ends in 50");
}

#[test]
fn a_non_conductive_cover_is_told() {
    assert_eq!(print("SAE 100R7-8 NON-CONDUCTIVE 2000 PSI").cover, Some(Cover::NonConductive));
    assert_eq!(print("SAE 100R7-8 2000 PSI").cover, None);
}

#[test]
fn an_unreadable_print_says_nothing() {
    let got = print("*");
    assert_eq!((got.standard, got.kind, got.dn, got.candidates.len()), (None, None, None, 0));
}

#[test]
fn words_that_say_nothing_are_given_back() {
    assert_eq!(print("XXX EN 853 2SN DN 16 ABC").unread, "XXX ABC");
}

/// GOST 6286-73 writes its types in Roman numbers, with a letter for the wire or Z for the size series.
#[rstest]
#[case("GOST 6286-73 Z-II DN 16", "Z-II")]
#[case("GOST 6286-73 Z-I DN 16", "Z-I")]
#[case("GOST 6286-73 II-A DN 16", "II-A")]
#[case("GOST 6286-73 I-B DN 16", "I-B")]
fn a_type_by_a_roman_number_is_read_whole(#[case] text: &str, #[case] kind: &str) {
    let printed = print(text);
    assert_eq!(printed.kind.as_deref(), Some(kind));
    assert!(printed.candidates.iter().all(|hose| hose.kind == kind), "{:?}", printed.candidates);
    assert_eq!(printed.unread, "");
}

#[test]
fn more_than_stands_on_a_hose_is_refused() {
    let error = read(Catalogue::embedded(), &"2SN ".repeat(200)).expect_err("800 letters");
    assert_eq!(error, PrintError::TooLong { letters: 800, most: 500 });
}

proptest! {
    #[test]
    fn no_text_makes_the_reader_panic(text in any::<String>()) {
        let _ = read(Catalogue::embedded(), &text);
    }

    #[test]
    fn no_print_makes_the_reader_panic(
        parts in prop::collection::vec(
            prop::sample::select(vec![
                "EN", "853", "SAE", "100R2AT", "2SN", "-8", "DN", "12", "1/2", "\"", "BAR", "PSI", "275", "?", "*",
                "...", ".", "3Q24", "W", "/", "-", "GOST 6286-73", "II", "16.5", " ", "BP", "Q", "0624", "\u{b1}",
            ]),
            0..24,
        )
    ) {
        let _ = read(Catalogue::embedded(), &parts.concat());
        let _ = read(Catalogue::embedded(), &parts.join(" "));
    }

    /// Letters wear away: what is still read is never another standard, size or type.
    #[test]
    fn worn_letters_never_turn_a_print_into_another(worn in prop::collection::vec(any::<bool>(), 24)) {
        let whole = "EN 853 2SN DN 16 250 BAR";
        let text: String = whole
            .chars()
            .zip(worn.into_iter().chain(std::iter::repeat(false)))
            .map(|(letter, worn)| if worn && letter != ' ' { '?' } else { letter })
            .collect();
        let got = print(&text);
        prop_assert!(got.standard.as_deref().is_none_or(|name| name == "EN 853" || got.kind.is_some()), "{text}: {got:?}");
        prop_assert!(
            got.candidates.is_empty()
                || got.candidates.iter().any(|row| row.kind == "2SN" && row.dn.get() == 16.0),
            "{text}: 2SN DN 16 is not among {:?}", got.candidates
        );
    }

    /// Wherever letters wear away, what is stated is what the whole print says.
    #[test]
    fn no_field_is_guessed_from_a_worn_print(worn in prop::collection::vec(any::<bool>(), 22)) {
        let whole = "EN 853 2SN DN 16 250 BAR";
        let text: String = whole
            .chars()
            .zip(worn.into_iter().chain(std::iter::repeat(false)))
            .map(|(letter, worn)| if worn && letter.is_ascii_alphanumeric() { '.' } else { letter })
            .collect();
        let got = print(&text);
        let says = |field: Option<&str>, truth: &str| field.is_none_or(|field| field == truth);
        prop_assert!(says(got.standard.as_deref(), "EN 853"), "{text}: {got:?}");
        prop_assert!(says(got.kind.as_deref(), "2SN"), "{text}: {got:?}");
        prop_assert!(got.dn.is_none_or(|dn| dn.get() == 16.0), "{text}: {got:?}");
    }

    /// Worn letters make a print less certain and never another: every hose that the whole print can
    /// mean stands among those of the worn one, if that still says anything.
    #[test]
    fn a_worn_print_means_every_hose_of_the_whole_one(
        (row, size, date, figure) in (any::<prop::sample::Index>(), 0..4_usize, 0..6_usize, 0..7_usize),
        worn in prop::collection::vec(prop::bool::weighted(0.25), 64),
        mark in prop::sample::select(vec!['?', '.']),
    ) {
        let whole = layline(row, size, date, figure);
        let text = wear(&whole, &worn, mark);
        let (whole_print, worn_print) = (print(&whole), print(&text));
        prop_assert!(!whole_print.candidates.is_empty(), "{whole} means no hose");
        if !worn_print.candidates.is_empty() || !says_nothing(&worn_print) {
            for hose in &whole_print.candidates {
                prop_assert!(
                    worn_print.candidates.contains(hose),
                    "{text} (was {whole}) does not mean {hose:?}: {worn_print:?}"
                );
            }
        }
    }

    /// Whatever is worn away, a burst figure never becomes the working pressure.
    #[test]
    fn no_wear_makes_a_burst_figure_the_working_pressure(
        (row, size, date) in (any::<prop::sample::Index>(), 0..4_usize, 0..6_usize),
        figure in 2..7_usize,
        worn in prop::collection::vec(prop::bool::weighted(0.25), 64),
    ) {
        let text = wear(&layline(row, size, date, figure), &worn, '?');
        let hose = row_of(row);
        let (Some(rated), Some(burst)) = (hose.max_working_pressure_bar, hose.min_burst_pressure_bar) else {
            return Ok(());
        };
        if let Some(bar) = print(&text).pressure_bar {
            let is_rated = (bar.get() - rated.get()).abs() <= 3.0_f64.max(0.02 * rated.get());
            prop_assert!(is_rated, "{text}: {} bar is taken for {} (burst {})", bar.get(), rated.get(), burst.get());
        }
    }
}

/// A row of the tables that is printed by a short name and has a rating and a burst pressure.
fn row_of(at: prop::sample::Index) -> &'static HoseRow {
    static ROWS: std::sync::LazyLock<Vec<&'static HoseRow>> = std::sync::LazyLock::new(|| {
        let catalogue = Catalogue::embedded();
        let rows = catalogue.hoses.iter().chain(&catalogue.twins);
        rows.filter(|row| {
            let is_named = row.kind.len() <= 8 && !row.kind.contains([' ', '-']);
            is_named && row.max_working_pressure_bar.is_some() && row.min_burst_pressure_bar.is_some()
        })
        .collect()
    });
    let row: &&HoseRow = at.get(ROWS.as_slice());
    row
}

/// What a maker prints on that hose.
fn layline(at: prop::sample::Index, size: usize, date: usize, figure: usize) -> String {
    let row = row_of(at);
    let standard = if row.standard == "SAE J517" { "SAE" } else { &row.standard };
    let rated = row.max_working_pressure_bar.expect("a rating").get();
    let burst = row.min_burst_pressure_bar.expect("a burst pressure").get();
    let size = match (size, row.dash) {
        (0, Some(dash)) => format!(" -{dash}"),
        (1, Some(dash)) => format!(" DN {} -{dash}", row.dn),
        (2, _) => format!(" DN{}", row.dn),
        _ => format!(" DN {}", row.dn),
    };
    let date = ["", " 3Q24", " Q1 24", " 06/24", " 0624", " W12/24"][date];
    let psi = (rated / 0.068_947_572_931_683_6 / 10.0).round() * 10.0;
    let figure = match figure {
        0 => format!(" {rated} BAR"),
        1 => format!(" WP {rated} BAR {psi} PSI"),
        2 => format!(" WP {rated} BAR BP {burst} BAR"),
        3 => format!(" {rated} BAR MIN BURST {burst} BAR"),
        4 => format!(" {burst} BAR BURST"),
        5 => format!(" B.P. {burst} BAR"),
        _ => format!(" {rated} BAR {burst} BAR"),
    };
    format!("{standard} {}{size}{figure}{date}", row.kind)
}

/// The same with letters worn away.
fn wear(whole: &str, worn: &[bool], mark: char) -> String {
    let is_worn = |at: usize| worn.get(at).copied().unwrap_or(false);
    let wear = |(at, letter): (usize, char)| {
        if is_worn(at) && letter.is_ascii_alphanumeric() { mark } else { letter }
    };
    whole.chars().enumerate().map(wear).collect()
}

fn says_nothing(got: &Printed) -> bool {
    (&got.standard, &got.kind, got.dn, got.dash, got.pressure_bar) == (&None, &None, None, None, None)
}
