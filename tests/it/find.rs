//! Readings name what a hose and its ends were, with honest probabilities.

mod effort;
mod errors;
mod explain;
mod kinds;
mod strays;
mod together;

use hosewright_core::catalogue::Catalogue;
use hosewright_core::find::{EndFound, FindError, Found, Part, Readings, find};
use hosewright_core::spec::Role;
use hosewright_tests::calibration::{brier_score, expected_calibration_error, log_score};
use hosewright_tests::find_figures::{self, Answered, ask};
use hosewright_tests::simulated::random::Random;
use hosewright_words::{Language, Words};
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

fn catalogue() -> &'static Catalogue {
    Catalogue::embedded()
}

fn end(found: &Found, role: Role) -> &EndFound {
    found.ends.iter().find(|end| end.role == role).expect("the end was read")
}

/// Probability of an end by family and size, either half, its class counted whole.
fn of_end(found: &Found, family: &str, size: &str) -> f64 {
    let is = |name: (&str, &str)| name == (family, size);
    end(found, Role::A)
        .candidates
        .iter()
        .filter(|class| {
            is((&class.family, &class.size)) || class.also.iter().any(|name| is((&name.family, &name.size)))
        })
        .map(|class| class.probability)
        .sum()
}

fn of_hose(found: &Found, standard: &str, kind: &str, dn: f64) -> f64 {
    found
        .hose
        .iter()
        .filter(|class| {
            let first = (class.standard.as_str(), class.kind.as_str(), class.dn.get());
            let mut also =
                class.also.iter().map(|name| (name.standard.as_str(), name.kind.as_str(), name.dn.get()));
            first == (standard, kind, dn) || also.any(|name| name == (standard, kind, dn))
        })
        .map(|class| class.probability)
        .sum()
}

fn ask_end(readings: Value) -> Found {
    let mut end = readings;
    end["role"] = json!("A");
    ask(catalogue(), &json!({ "ends": [end] }))
}

/// Every miss must be listed here with its reason; there is none today.
const EXPLAINED: [(&str, &str); 0] = [];

#[track_caller]
fn holds_the_bars(what: &str, answered: &[Answered], at_least: usize) {
    assert!(answered.len() >= at_least, "{what}: only {} cases were read", answered.len());
    for case in answered.iter().filter(|case| !case.is_hit()) {
        assert!(
            EXPLAINED.iter().any(|(id, _)| *id == case.id),
            "{what} {}: {} is not among the classes that hold 95 %: {:?}",
            case.id,
            case.published[0],
            case.held
        );
    }
    let figures = find_figures::figures(answered);
    assert!(figures.hits >= 0.95, "{what}: held in {:.1} % of the cases", 100.0 * figures.hits);
    assert!(figures.mean_size <= 4.0, "{what}: the set has {:.2} classes on average", figures.mean_size);
}

#[test]
fn published_connections_are_found() {
    holds_the_bars("connection", &find_figures::connections(catalogue()), 78);
}

#[test]
fn published_hoses_are_found() {
    holds_the_bars("hose", &find_figures::hoses(catalogue()), 25);
}

#[test]
fn example_markings_are_found() {
    holds_the_bars("marking", &find_figures::markings(catalogue()), 25);
}

/// Where the source itself names rivals that its readings can not part, they are shown, and the end is
/// not settled unless they are one class (NPT and NPTF have the same diameters).
#[test]
fn undecidable_connections_show_their_rivals_and_stay_open() {
    let mut undecidable = 0;
    for case in find_figures::connections(catalogue()).iter().filter(|case| case.published.len() > 1) {
        undecidable += 1;
        let is_one_class = case.published.iter().all(|name| case.held[0].0.contains(name));
        assert!(
            !case.settled || is_one_class,
            "{}: {:?} can not be told apart by these readings",
            case.id,
            case.published
        );
        let is_shown =
            case.held.iter().map(|(names, _)| names.len()).sum::<usize>() > 1 || case.lookalikes > 0;
        assert!(is_shown, "{}: no rival is shown beside {:?}", case.id, case.held);
    }
    assert!(undecidable >= 25, "only {undecidable} such cases were read");
}

/// A 24 degree thread is shared by two series; tube or bore decides (ISO 8434-1).
#[rstest]
#[case::thread_alone(json!({}), 0.0)]
#[case::tube_of_the_light(json!({"tube_od_mm": 15.1}), 0.99)]
#[case::bore_of_the_light(json!({"male_bore_mm": 12.0}), 0.9)]
fn light_and_heavy_series_are_told_by_tube_or_bore(#[case] more: Value, #[case] at_least: f64) {
    let mut readings = json!({"gender": "male", "thread_diameter_mm": 21.9, "pitch_mm": 1.5,
        "seat_included_angle_deg": 24, "seal": "cone", "cone": "concave"});
    for (key, value) in more.as_object().expect("an object") {
        readings[key] = value.clone();
    }
    let found = ask_end(readings);
    let (light, heavy) =
        (of_end(&found, "Metric 24 cone L", "L15"), of_end(&found, "Metric 24 cone S", "S14"));
    if at_least == 0.0 {
        assert!((light - heavy).abs() < 0.05 && light > 0.2, "both stay: {light} and {heavy}");
        assert!(!found.settled.a, "an end that may be either is not settled");
    } else {
        assert!(light / (light + heavy) > at_least, "light {light}, heavy {heavy}");
    }
}

#[test]
fn a_flare_is_settled_by_thread_seat_and_seal() {
    let found = ask_end(json!({"gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
        "seat_included_angle_deg": 74, "seal": "cone", "cone": "convex"}));
    assert!(of_end(&found, "JIC 37 flare", "-10") > 0.99, "{:?}", end(&found, Role::A).candidates);
    assert!(found.settled.a, "rivals left: {:?}", end(&found, Role::A).lookalikes);
}

/// A nut G5/8 starts on a 7/8-14 male and strips off it: while the thread alone was read, both stand.
#[test]
fn a_dangerous_partner_is_named_until_a_reading_parts_the_two() {
    let open = ask_end(json!({"gender": "female", "thread_diameter_mm": 20.6, "tpi": 14}));
    assert!(!end(&open, Role::A).lookalikes.is_empty(), "nothing warns of a pair that starts on each other");
    assert!(!open.settled.a);
    let read = ask_end(json!({"gender": "female", "thread_diameter_mm": 20.4, "tpi": 14,
        "seat_included_angle_deg": 74, "seal": "cone", "cone": "concave", "flank_angle_deg": 60}));
    assert!(read.settled.a, "{:?}", end(&read, Role::A).candidates);
    assert!(end(&read, Role::A).lookalikes.is_empty(), "{:?}", end(&read, Role::A).lookalikes);
}

/// 1 in 16 on the diameter (ISO 7-1, ASME B1.20.1): five threads of 14 an inch are 9.07 mm, 0.57 mm
/// on the diameter.
#[rstest]
#[case::taper("male", 21.0, 21.57, "thread", true)]
#[case::parallel("male", 20.85, 20.86, "cone", false)]
#[case::taper_inside("female", 18.8, 18.23, "thread", true)]
fn two_diameters_tell_a_taper(
    #[case] gender: &str,
    #[case] first: f64,
    #[case] second: f64,
    #[case] seal: &str,
    #[case] is_taper: bool,
) {
    let found = ask_end(json!({"gender": gender, "thread_diameter_mm": first, "tpi": 14, "seal": seal,
        "second_thread_diameter_mm": second, "threads_apart": 5}));
    let taper: f64 = ["BSPT", "NPT", "NPTF"].iter().map(|family| of_end(&found, family, "1/2")).sum();
    assert!((taper > 0.9) == is_taper, "taper {taper}: {:?}", &end(&found, Role::A).candidates[..4]);
}

/// BSPP and East-Asian parallel pipe share thread and angle; the shape of the cone decides, and that
/// of the female is the other way round.
#[rstest]
#[case("male", 13.05, "concave", "BSPP 60 cone")]
#[case("male", 13.05, "convex", "JIS parallel pipe 30 seat")]
#[case("female", 11.6, "convex", "BSPP 60 cone")]
#[case("female", 11.6, "concave", "JIS parallel pipe 30 seat")]
fn the_shape_of_the_cone_is_that_of_the_part_measured(
    #[case] gender: &str,
    #[case] diameter: f64,
    #[case] cone: &str,
    #[case] family: &str,
) {
    let found = ask_end(json!({"gender": gender, "thread_diameter_mm": diameter, "tpi": 19,
        "seat_included_angle_deg": 60, "seal": "cone", "cone": cone}));
    assert!(of_end(&found, family, "1/4") > 0.8, "{:?}", &end(&found, Role::A).candidates[..3]);
}

/// Without a gender both halves are supposed.
#[test]
fn an_unread_gender_leaves_both_halves() {
    let found = ask_end(json!({"thread_diameter_mm": 20.5}));
    let of = |gender: &str| {
        let of_gender = |class: &&hosewright_core::find::EndCandidate| {
            serde_json::to_value(class.gender).expect("a gender") == json!(gender)
        };
        end(&found, Role::A).candidates.iter().filter(of_gender).map(|class| class.probability).sum::<f64>()
    };
    assert!(of("male") > 0.05 && of("female") > 0.05, "male {}, female {}", of("male"), of("female"));
}

/// A sixteenth of an inch is a reading of 1/32 in error, not of a caliper's.
#[test]
fn a_tape_reading_parts_less_than_a_caliper_reading() {
    let by = |diameter: Value| ask_end(json!({"gender": "male", "thread_diameter_mm": diameter, "tpi": 14}));
    let classes = |found: &Found| {
        end(found, Role::A).candidates.iter().filter(|class| class.probability > 0.02).count()
    };
    let (tape, caliper) = (by(json!("14/16 in")), by(json!(22.225)));
    assert!(
        classes(&tape) > classes(&caliper),
        "{} by tape, {} by caliper",
        classes(&tape),
        classes(&caliper)
    );
    let stated = by(json!({"value": 22.225, "error": 0.79}));
    assert!((of_end(&stated, "JIC 37 flare", "-10") - of_end(&tape, "JIC 37 flare", "-10")).abs() < 0.01);
}

#[test]
fn an_agreeing_mate_makes_it_surer_and_a_mismatched_one_is_not_forced() {
    let half = json!({"role": "A", "gender": "female", "thread_diameter_mm": 20.4, "tpi": 14});
    let alone = ask(catalogue(), &json!({"ends": [half]}));
    let agreeing = json!({"role": "A", "gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
        "seat_included_angle_deg": 74, "cone": "convex", "seal": "cone"});
    let both = ask(catalogue(), &json!({"ends": [half], "mates": [agreeing]}));
    let of = |found: &Found| of_end(found, "JIC 37 flare", "-10");
    assert!(of(&both) > of(&alone) + 0.3, "alone {}, with the mate {}", of(&alone), of(&both));
    // A BSPP 5/8 nut that someone ran onto that male: the nut's own readings keep speaking.
    let nut = json!({"role": "A", "gender": "female", "thread_diameter_mm": 20.75, "tpi": 14,
        "seat_included_angle_deg": 60, "cone": "convex", "flank_angle_deg": 55, "seal": "cone"});
    let wrong = ask(catalogue(), &json!({"ends": [nut], "mates": [agreeing]}));
    assert!(of_end(&wrong, "BSPP 60 cone", "5/8") > 0.2, "{:?}", &end(&wrong, Role::A).candidates[..2]);
    assert!(!wrong.settled.a, "two halves that do not belong together settle nothing");
}

#[test]
fn a_mate_alone_names_the_end() {
    let mate = json!({"role": "B", "gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
        "seat_included_angle_deg": 74, "cone": "convex", "seal": "cone"});
    let found = ask(catalogue(), &json!({"mates": [mate]}));
    let best = &end(&found, Role::B).candidates[0];
    assert_eq!((best.family.as_str(), best.size.as_str()), ("JIC 37 flare", "-10"));
    assert_eq!(
        serde_json::to_value(best.gender).expect("a gender"),
        json!("female"),
        "the hose's half is the other one"
    );
}

#[test]
fn a_strange_part_is_called_unknown() {
    // 29.2 mm at 7 threads an inch is in no table, and neither is a braid hose of 42 mm bore.
    let found = ask_end(json!({"gender": "male", "thread_diameter_mm": 29.2, "tpi": 7, "taper": false}));
    assert!(end(&found, Role::A).unknown > 0.5, "unknown {}", end(&found, Role::A).unknown);
    let hose = ask(
        catalogue(),
        &json!({"hose": {"id_mm": 42.0, "reinforcement_od_mm": 80.0, "cover_od_mm": 95.0,
        "reinforcement": "wire-braid", "layers": 2}}),
    );
    assert!(hose.unknown.hose > 0.5, "unknown {}", hose.unknown.hose);
}

/// A cone of 60 degrees and 19 threads an inch are those of pipe ends of 1/4 and 3/8 (ISO 228-1: 13.157 and
/// 16.662 mm): at 28.2 mm it is none of them, and no slip is likelier than that.
#[test]
fn a_known_family_of_a_size_that_no_table_has_is_called_unknown() {
    let found = ask_end(json!({"kind": "male", "gender": "male", "thread_diameter_mm": 28.2, "tpi": 19,
        "flank_angle_deg": 55, "seal": "cone", "seat_included_angle_deg": 60, "cone": "concave"}));
    let end = end(&found, Role::A);
    assert!(end.candidates.iter().all(|class| class.probability < end.unknown), "{end:?}");
}

#[test]
fn a_look_at_the_face_parts_a_washer_end_from_a_cone_on_the_same_thread() {
    let of = |cone: &str| {
        let found = ask_end(json!({"kind": "nut", "gender": "female", "thread_diameter_mm": 18.9, "tpi": 14,
            "flank_angle_deg": 55, "cone": cone}));
        (of_end(&found, "Washer end G", "1/2"), of_end(&found, "BSPP 60 cone", "1/2"))
    };
    let (washer, cone) = of("flat");
    assert!(washer > 10.0 * cone, "flat: washer end {washer}, cone {cone}");
    let (washer, cone) = of("convex");
    assert!(cone > 10.0 * washer, "proud: washer end {washer}, cone {cone}");
}

#[test]
fn a_print_lowers_rivals_and_never_forces() {
    let measured = json!({"id_mm": 15.9, "reinforcement_od_mm": 23.0, "cover_od_mm": 25.2, "reinforcement": "wire-braid", "layers": 2});
    let mut printed = measured.clone();
    printed["print"] = json!("EN 853 2SN DN 16 250 BAR 3Q24");
    let found = ask(catalogue(), &json!({ "hose": printed }));
    assert!(of_hose(&found, "EN 853", "2SN", 16.0) > 0.99 && found.settled.hose);
    // A cover of another hose: three diameters outweigh it.
    printed["print"] = json!("EN 856 4SH DN 32");
    let found = ask(catalogue(), &json!({ "hose": printed }));
    let (measured, printed) =
        (of_hose(&found, "EN 853", "2SN", 16.0), of_hose(&found, "EN 856", "4SH", 31.0));
    assert!(measured > 0.3 && printed < 0.01, "measured {measured}, printed {printed}");
    assert!(!found.settled.hose, "a print against the readings settles nothing");
}

/// Twins of other standards are one class until the print parts them.
#[test]
fn twins_of_two_standards_are_one_class() {
    let found = ask(catalogue(), &json!({"hose": {"print": "2SN DN 16"}}));
    let first = &found.hose[0];
    assert_eq!((first.standard.as_str(), first.kind.as_str()), ("EN 853", "2SN"));
    assert!(
        first.also.iter().any(|name| name.standard == "ISO 1436" && name.kind == "2SN"),
        "{:?}",
        first.also
    );
    let found = ask(catalogue(), &json!({"hose": {"print": "ISO 1436 2SN DN 16"}}));
    assert_eq!(found.hose[0].standard, "ISO 1436");
}

/// The size of the hose and of its ends go together (a hint that readings outweigh).
#[test]
fn the_hose_hints_at_the_size_of_its_ends() {
    let end = json!({"role": "A", "gender": "female"});
    let of_ten =
        |hose: Value| of_end(&ask(catalogue(), &json!({"hose": hose, "ends": [end]})), "JIC 37 flare", "-10");
    let (near, far) = (of_ten(json!({"id_mm": 15.9})), of_ten(json!({"id_mm": 50.8})));
    assert!(near > 3.0 * far, "on a DN 16 hose {near}, on a DN 51 hose {far}");
}

#[test]
fn the_origin_is_a_hint_and_never_a_proof() {
    let of = |origin: &str, readings: Value| {
        let mut end = readings;
        end["role"] = json!("A");
        ask(catalogue(), &json!({"ends": [end], "origin": origin}))
    };
    let open = json!({"gender": "male", "thread_diameter_mm": 13.05, "tpi": 19, "seat_included_angle_deg": 60, "seal": "cone"});
    let jis = |found: &Found| of_end(found, "JIS parallel pipe 30 seat", "1/4");
    assert!(jis(&of("east-asia", open.clone())) > jis(&of("europe", open.clone())) + 0.2);
    let mut shut = open;
    shut["cone"] = json!("concave");
    assert!(of_end(&of("east-asia", shut), "BSPP 60 cone", "1/4") > 0.8, "a reading outweighs the hint");
}

#[test]
fn the_next_reading_is_the_one_that_tells_most() {
    let found = ask_end(json!({"gender": "male", "thread_diameter_mm": 22.1, "tpi": 14}));
    let next: Vec<&str> = found
        .next
        .iter()
        .filter(|next| serde_json::to_value(next.of).expect("a part") == json!("A"))
        .map(|next| next.reading.as_str())
        .collect();
    assert!(next.contains(&"seal"), "37, 45 and O-ring ends share 7/8-14: {next:?}");
    assert!(["kind", "cone", "seal"].contains(&next[0]), "a look costs less than a gauge: {next:?}");
    let looked = ask_end(
        json!({"kind": "male", "gender": "male", "thread_diameter_mm": 22.1, "tpi": 14, "seal": "cone"}),
    );
    let of_a: Vec<&str> =
        looked.next.iter().filter(|next| next.of == Part::A).map(|next| next.reading.as_str()).collect();
    assert_eq!(of_a[..2], ["cone", "seat_included_angle_deg"], "{:?}", proposed(&looked));
    assert!(!next.contains(&"pitch_mm") && !next.contains(&"thread_diameter_mm"), "taken already: {next:?}");
}

/// What is proposed, in order, by part.
fn proposed(found: &Found) -> Vec<(Part, &str)> {
    found.next.iter().map(|next| (next.of, next.reading.as_str())).collect()
}

/// 2SN and 2ST differ in the cover alone (EN 853). An end that nothing was read of has more to tell
/// than that, and still does not crowd it out.
#[test]
fn the_reading_that_parts_two_hoses_is_proposed_beside_an_end_nobody_has_read() {
    let found = ask(
        catalogue(),
        &json!({"hose": {"id_mm": 15.9, "reinforcement_od_mm": 23.0, "reinforcement": "wire-braid", "layers": 2},
            "ends": [{"role": "A", "gender": "male", "thread_diameter_mm": 22.2, "tpi": 14,
                "seat_included_angle_deg": 74}]}),
    );
    let (sn, st) = (of_hose(&found, "EN 853", "2SN", 16.0), of_hose(&found, "EN 853", "2ST", 16.0));
    assert!(sn > 0.3 && st > 0.3, "both are open: 2SN {sn}, 2ST {st}");
    let next = proposed(&found);
    assert_eq!(next.first(), Some(&(Part::Hose, "cover_od_mm")), "the hose is in the hand: {next:?}");
    assert_eq!(next.get(1).map(|next| next.0), Some(Part::B), "{next:?}");
    assert_eq!(next.get(2).map(|next| next.0), Some(Part::A), "a look-alike of end A is possible: {next:?}");
}

#[test]
fn the_end_in_the_hand_is_read_before_another_is_taken_up() {
    let found = ask_end(json!({"gender": "male", "thread_diameter_mm": 22.1}));
    let parts: Vec<Part> = found.next.iter().map(|next| next.of).collect();
    assert_eq!(parts[..3], [Part::A, Part::B, Part::Hose], "{:?}", proposed(&found));
}

/// The best reading of each open part, then the second best of each: a few of each part at most.
#[test]
fn every_open_part_has_its_best_reading_among_the_first() {
    let found = ask(catalogue(), &json!({}));
    assert_eq!(proposed(&found)[..3], [(Part::A, "kind"), (Part::B, "kind"), (Part::Hose, "cover_od_mm")]);
    for part in [Part::Hose, Part::A, Part::B] {
        let readings = found.next.iter().filter(|next| next.of == part).count();
        assert_eq!(readings, 3, "{part:?}: {:?}", proposed(&found));
    }
}

#[test]
fn nothing_more_is_asked_of_a_part_that_is_settled() {
    let found = ask(
        catalogue(),
        &json!({"hose": {"print": "EN 853 2SN DN 16 250 BAR 3Q24"},
            "ends": [{"role": "A", "gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
                "seat_included_angle_deg": 74, "seal": "cone", "cone": "convex"}]}),
    );
    assert!(found.settled.hose && found.settled.a);
    assert!(found.next.iter().all(|next| next.of == Part::B), "{:?}", proposed(&found));
}

/// A partner that would blow off is unlikely by now, and the end is open for it alone: it is said how
/// the two are told apart, however little is expected of it.
#[test]
fn an_end_that_is_open_for_a_lookalike_alone_has_a_reading_proposed() {
    let found = ask_end(json!({"gender": "male", "thread_diameter_mm": 22.1, "tpi": 14,
        "seat_included_angle_deg": 74}));
    assert!(!found.settled.a && end(&found, Role::A).candidates[0].probability > 0.95);
    assert!(found.next.iter().any(|next| next.of == Part::A), "{:?}", proposed(&found));
}

/// The plain answer of the command line.
fn plain(readings: &Value) -> String {
    let mut command = assert_cmd::Command::cargo_bin("hosewright").expect("the command line is built");
    let output = command.args(["find", "-"]).write_stdin(readings.to_string()).output().expect("it runs");
    String::from_utf8(output.stdout).expect("text")
}

#[rstest]
#[case::nothing(json!({}))]
#[case::twins_and_lookalikes(json!({"ends": [{"role": "A", "thread_diameter_mm": 22.2}]}))]
#[case::pipe_threads(json!({"ends": [{"role": "B", "gender": "male", "thread_diameter_mm": 21.0, "tpi": 14}]}))]
#[case::flange(json!({"ends": [{"role": "A", "bolt_long_mm": 58.7}]}))]
fn the_plain_answer_fits_a_terminal_of_80_columns(#[case] readings: Value) {
    let text = plain(&readings);
    assert!(text.contains("Read next:"), "{text}");
    for line in text.lines() {
        assert!(line.chars().count() <= 80, "{} columns: {line}", line.chars().count());
    }
}

/// One name in both halves is two candidates: the plain answer says which is which.
#[test]
fn the_plain_answer_says_which_half_while_both_are_possible() {
    let end = json!({"role": "A", "thread_diameter_mm": 21.4, "tpi": 14, "seat_included_angle_deg": 74});
    let text = plain(&json!({"ends": [end]}));
    assert!(text.contains("JIC 37 flare -10, male") && text.contains("JIC 37 flare -10, female"), "{text}");
}

#[test]
fn every_reading_has_words_for_how_it_is_taken() {
    let words = Words::of(Language::English);
    let schema = include_str!("../../src-tauri/crates/api/schemas/find.input.json");
    let schema: Value = serde_json::from_str(schema).expect("a schema");
    let keys = ["HoseReadings", "EndReadings"].map(|of| {
        let properties = schema["$defs"][of]["properties"].as_object().expect("fields");
        properties.keys().filter(|key| *key != "role").cloned().collect::<Vec<_>>()
    });
    assert!(keys.concat().len() > 20, "only {keys:?}");
    for key in keys.concat() {
        assert!(words.has(&format!("how-{key}")), "find.ftl has no how-{key}");
    }
}

#[rstest]
#[case(json!({"ends": [{"role": "A", "thread_diameter_mm": -22.0}]}), "ends[0].thread_diameter_mm")]
#[case(json!({"ends": [{"role": "A"}, {"role": "B", "tube_od_mm": 4000.0}]}), "ends[1].tube_od_mm")]
#[case(json!({"ends": [{"role": "A"}, {"role": "A"}]}), "ends[1].role")]
#[case(json!({"mates": [{"role": "B"}, {"role": "B"}]}), "mates[1].role")]
#[case(json!({"ends": [{"role": "A", "tpi": 0.0}]}), "ends[0].tpi")]
#[case(json!({"ends": [{"role": "A", "seat_included_angle_deg": 37}]}), "ends[0].seat_included_angle_deg")]
#[case(json!({"ends": [{"role": "A", "thread_diameter_mm": {"value": 22.0, "error": -0.1}}]}), "ends[0].thread_diameter_mm.error")]
#[case(json!({"hose": {"id_mm": 0.0}}), "hose.id_mm")]
#[case(json!({"hose": {"layers": 0}}), "hose.layers")]
#[case(json!({"caliper_error_mm": 0.0}), "caliper_error_mm")]
#[case(json!({"overall_length_mm": -1.0}), "overall_length_mm")]
fn readings_that_can_not_be_are_refused_by_name(#[case] readings: Value, #[case] field: &str) {
    let readings: Readings = serde_json::from_value(readings).expect("readings");
    let error: FindError = find(catalogue(), &readings).expect_err("it can not be");
    assert_eq!(error.field(), field, "{error}");
    assert!(
        error.to_string().contains(field.trim_end_matches(".error")),
        "the message names the field: {error}"
    );
}

/// Worked by hand: bins (0, 0.5] and (0.5, 1] hold 0.2, 0.4 (one true) and 0.9, 0.6 (one true).
#[test]
fn the_scores_are_the_textbooks() {
    let (stated, truth) = ([0.2, 0.4, 0.9, 0.6], [false, true, true, false]);
    let ece = expected_calibration_error(&stated, &truth, 2);
    assert!((ece - (0.4 + 0.5) / 4.0).abs() < 1e-12, "{ece}");
    let brier = brier_score(&stated, &truth);
    assert!((brier - (0.04 + 0.36 + 0.01 + 0.36) / 4.0).abs() < 1e-12, "{brier}");
    let log = log_score(&stated, &truth);
    assert!((log + (0.8_f64 * 0.4 * 0.9 * 0.4).ln() / 4.0).abs() < 1e-12, "{log}");
}

/// Two ends, read with anything, in JSON.
fn any_half() -> impl Strategy<Value = Value> {
    let maybe = |values: std::ops::Range<f64>| prop::option::of(values);
    let seal = prop::option::of(prop::sample::select(vec![
        "cone",
        "o-ring-face",
        "o-ring-shoulder",
        "o-ring-cone",
        "bonded-washer",
        "thread",
        "inverted-flare",
    ]));
    (
        prop::option::of(prop::sample::select(vec!["male", "female"])),
        (maybe(4.0..120.0), maybe(4.0..80.0), maybe(0.5..4.0), maybe(1.0..20.0), maybe(4.0..120.0)),
        (prop::option::of(any::<bool>()), seal, prop::option::of(prop::sample::select(vec![24.0, 60.0, 74.0, 90.0, 55.5]))),
        (maybe(3.0..60.0), maybe(2.0..60.0), maybe(10.0..90.0), maybe(20.0..160.0), maybe(5.0..15.0), maybe(15.0..160.0)),
    )
        .prop_map(|(gender, (diameter, tpi, pitch, apart, second), (taper, seal, seat), rest)| {
            json!({"gender": gender, "thread_diameter_mm": diameter, "tpi": tpi, "pitch_mm": pitch,
                "threads_apart": apart, "second_thread_diameter_mm": second, "taper": taper, "seal": seal,
                "seat_included_angle_deg": seat, "tube_od_mm": rest.0, "male_bore_mm": rest.1,
                "swivel_hex_mm": rest.2, "head_od_mm": rest.3, "head_thickness_mm": rest.4, "bolt_long_mm": rest.5})
        })
}

fn with_role(mut half: Value, role: &str) -> Value {
    half["role"] = json!(role);
    half
}

#[track_caller]
fn adds_to_one(found: &Found) {
    let hose: f64 = found.hose.iter().map(|class| class.probability).sum::<f64>() + found.unknown.hose;
    assert!((hose - 1.0).abs() < 1e-9, "the hose's list adds to {hose}");
    for end in &found.ends {
        let sum: f64 = end.candidates.iter().map(|class| class.probability).sum::<f64>() + end.unknown;
        assert!((sum - 1.0).abs() < 1e-9, "the list of end {:?} adds to {sum}", end.role);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    /// Whatever is read, and of whatever many parts: each list adds to one, and nothing panics.
    #[test]
    fn probabilities_add_to_one_whatever_is_read(
        a in any_half(), b in any_half(), mate in any_half(),
        id in prop::option::of(2.0..110.0_f64), cover in prop::option::of(6.0..150.0_f64),
        print in prop::option::of("[0-9A-Z /.?*-]{0,24}"),
    ) {
        adds_to_one(&ask(catalogue(), &json!({
            "hose": {"id_mm": id, "cover_od_mm": cover, "print": print},
            "ends": [with_role(a, "A"), with_role(b, "B")],
            "mates": [with_role(mate, "A")],
        })));
    }

    #[test]
    fn the_order_of_the_ends_does_not_matter(a in any_half(), b in any_half()) {
        let (a, b) = (with_role(a, "A"), with_role(b, "B"));
        let one = ask(catalogue(), &json!({"ends": [a, b]}));
        let other = ask(catalogue(), &json!({"ends": [b, a]}));
        prop_assert_eq!(one, other);
    }
}

/// Males drawn as the model supposes them (band, wear, caliper, leaf gauge): what is stated must be
/// what is observed, within the error of the sample.
#[test]
fn stated_probabilities_are_observed_on_simulated_readings() {
    let mut random = Random(20_261_125);
    let males: Vec<_> = catalogue()
        .ends
        .iter()
        .filter_map(|row| Some((row, row.male_major_mm?, row.pitch_mm?.get())))
        .collect();
    let (mut stated, mut truth) = (Vec::new(), Vec::new());
    let mut held = 0;
    let jobs = 400;
    for _ in 0..jobs {
        let (row, band, pitch) = males[random.below(males.len())];
        let wear = random.exponential(0.1);
        let diameter = random.between(band.min, band.max) - wear + 0.1 * random.normal();
        let mut readings = json!({"gender": "male", "thread_diameter_mm": diameter, "pitch_mm": pitch});
        if let Some(angle) = row.seat_included_angle_deg {
            readings["seat_included_angle_deg"] = json!(angle.get());
        }
        let found = ask_end(readings);
        let mut sum = 0.0;
        let mut is_held = false;
        for class in &end(&found, Role::A).candidates {
            let is_it = |family: &str, size: &str| family == row.family && size == row.size;
            let is_true = is_it(&class.family, &class.size)
                || class.also.iter().any(|name| is_it(&name.family, &name.size));
            is_held |= is_true && sum < 0.95;
            sum += class.probability;
            if class.probability > 0.01 {
                stated.push(class.probability);
                truth.push(is_true);
            }
        }
        held += usize::from(is_held);
    }
    let ece = expected_calibration_error(&stated, &truth, 10);
    assert!(ece < 0.05, "expected calibration error {ece:.3} over {} statements", stated.len());
    assert!(brier_score(&stated, &truth) < 0.25, "no better than saying one half");
    assert!(held as f64 / jobs as f64 > 0.93, "the 95 % set holds the truth in {held} of {jobs}");
}
