//! Ends, flanges, their ratings, and pairs that must not meet.

use super::{assert_sourced, embedded};
use hosewright_core::catalogue::{Basis, Cone, Connection, Danger, EndRow, Lookalike, Mechanism};
use hosewright_core::find::EndReadings;
use std::collections::BTreeSet;

fn name(row: Connection<'_>) -> String {
    format!("{} {}", row.family(), row.size())
}

/// Families whose rows run over more than one list of sizes.
const SEVERAL_LISTS: [&str; 3] = ["French metric 24 cone", "Washer end metric", "Test point"];

#[test]
fn a_male_thread_is_no_bigger_and_a_female_no_smaller_than_its_basic_size() {
    for end in embedded().ends.iter().filter(|end| !end.taper) {
        let of = format!("{} {}", end.family, end.size);
        if let Some((nominal, band)) = end.male_major_nom_mm.zip(end.male_major_mm) {
            assert!(band.max <= nominal.get(), "{of}: male {band:?} of {nominal:?}");
            assert!(
                nominal.get() - band.min < 0.5,
                "{of}: male {band:?} is within half a millimetre of {nominal:?}"
            );
        }
        if let Some((nominal, band)) = end.female_minor_nom_mm.zip(end.female_minor_mm) {
            assert!(band.min >= nominal.get() - 1e-9, "{of}: female {band:?} of {nominal:?}");
            assert!(band.max - nominal.get() < 0.7, "{of}: female {band:?} is near {nominal:?}");
        }
    }
}

/// Depth of the basic profile over the pitch, on the diameter: 5/8 of the height of the 60 degree
/// triangle (ISO 68-1, ASME B1.1); the height of the 55 degree profile (ISO 228-1).
fn profile(end: &EndRow) -> Option<f64> {
    match end.flank_angle_deg?.get() {
        60.0 => Some(2.0 * 0.625 * 3.0_f64.sqrt() / 2.0),
        55.0 => Some(2.0 * 0.640_327),
        _ => None,
    }
}

#[test]
fn the_basic_female_size_follows_from_the_thread_by_the_published_profile() {
    let mut held = 0;
    for end in embedded().ends.iter().filter(|end| !end.taper) {
        let sizes = (end.male_major_nom_mm, end.female_minor_nom_mm, end.pitch_mm, profile(end));
        let (Some(major), Some(minor), Some(pitch), Some(depth)) = sizes else { continue };
        // The published table of straight pipe threads rounds in another way (0.06 mm).
        let off = if end.family == "NPSM swivel" { 0.06 } else { 0.01 };
        let expected = major.get() - depth * pitch.get();
        let apart = (minor.get() - expected).abs();
        assert!(apart <= off, "{} {}: minor {} and not {expected:.3} mm", end.family, end.size, minor.get());
        held += 1;
    }
    assert!(held > 200, "only {held} threads were held against their profile");
}

#[test]
fn pitch_and_threads_an_inch_are_one_thing() {
    for end in &embedded().ends {
        if let Some((pitch, tpi)) = end.pitch_mm.zip(end.tpi) {
            assert!(
                (25.4 / tpi - pitch.get()).abs() < 0.001,
                "{} {}: {tpi} tpi and {pitch:?}",
                end.family,
                end.size
            );
        }
        assert_eq!(
            end.thread.is_some(),
            end.pitch_mm.is_some(),
            "{} {}: thread and pitch",
            end.family,
            end.size
        );
    }
}

#[test]
fn flanks_are_55_degrees_for_pipe_threads_by_iso_and_60_for_the_others() {
    for end in &embedded().ends {
        let right = match end.thread.as_deref() {
            None => None,
            Some(thread) if thread.starts_with("S12.65") => None,
            Some(thread) if thread.starts_with(['G', 'R']) => Some(55.0),
            Some(_) => Some(60.0),
        };
        assert_eq!(end.flank_angle_deg.map(|flank| flank.get()), right, "{} {}", end.family, end.size);
    }
}

#[test]
fn a_cone_meets_a_hollow() {
    for end in &embedded().ends {
        let right = end.male_cone.map(|cone| match cone {
            Cone::Convex => Cone::Concave,
            Cone::Concave => Cone::Convex,
        });
        assert_eq!(end.female_cone, right, "{} {}", end.family, end.size);
        assert_eq!(
            end.male_cone.is_some(),
            end.seat_included_angle_deg.is_some(),
            "{}: cone and angle",
            end.family
        );
        assert_eq!(end.male_cone.is_none(), end.cone_basis == Basis::None, "{}: cone and basis", end.family);
    }
}

#[test]
fn the_bigger_end_of_a_family_has_the_bigger_thread() {
    for pair in embedded().ends.windows(2) {
        let [small, big] = pair else { unreachable!("windows of two") };
        if small.family != big.family || SEVERAL_LISTS.contains(&small.family.as_str()) {
            continue;
        }
        if let Some((small_mm, big_mm)) = small.male_major_nom_mm.zip(big.male_major_nom_mm) {
            assert!(small_mm < big_mm, "{} {} against {}", big.family, big.size, small.size);
        }
        if let Some((small_mm, big_mm)) = small.tube_od_mm.zip(big.tube_od_mm) {
            assert!(small_mm < big_mm, "tube of {} {} against {}", big.family, big.size, small.size);
        }
    }
}

#[test]
fn the_bigger_flange_of_a_code_has_the_bigger_head_and_spacing() {
    for pair in embedded().flanges.windows(2) {
        let [small, big] = pair else { unreachable!("windows of two") };
        if small.family != big.family || small.family == "flange square" {
            continue;
        }
        let of = format!("{} {} against {}", big.family, big.size, small.size);
        assert!(small.bolt_long_mm < big.bolt_long_mm, "long spacing of {of}");
        assert!(small.bolt_short_mm < big.bolt_short_mm, "short spacing of {of}");
        if let Some((small, big)) = small.head_od_mm.zip(big.head_od_mm) {
            assert!(small < big, "head of {of}");
        }
    }
    for flange in &embedded().flanges {
        assert!(flange.bolt_long_mm >= flange.bolt_short_mm, "{} {}", flange.family, flange.size);
        assert_eq!(flange.head_od_mm.is_none(), flange.head_od_basis == Basis::None, "{} head", flange.size);
    }
}

#[test]
fn a_rating_is_known_with_a_basis_or_not_known_and_never_unlimited() {
    for row in embedded().connections() {
        let rating = embedded().rating(row.family(), row.size()).expect("every end has a rating row");
        let of = name(row);
        assert_eq!(
            rating.max_pressure_bar.is_none(),
            rating.provenance.basis == Basis::None,
            "{of}: {rating:?}"
        );
        if let Some(bar) = rating.max_pressure_bar {
            assert!((10.0..=700.0).contains(&bar.get()), "{of}: {bar:?} is no pressure of hydraulics");
            let ceiling = row.ceiling().max_pressure_bar.unwrap_or(bar);
            assert!(bar <= ceiling, "{of}: {bar:?} as a hose end is above {ceiling:?} of the connection");
        }
        assert_sourced(&of, &rating.provenance);
    }
}

#[test]
fn a_stand_in_for_a_rating_is_marked_as_one() {
    for family in ["Metric 30 seat", "SAE 45 flare", "French metric 24 cone", "BSPT"] {
        for row in embedded().connections().filter(|row| row.family() == family) {
            let rating = embedded().rating(family, row.size()).expect("in the table");
            assert!(
                matches!(rating.provenance.basis, Basis::Proxy | Basis::None),
                "{}: no figure of this end was found, so its basis can't be {:?}",
                name(row),
                rating.provenance.basis
            );
        }
    }
}

/// What is only recalled may name an end and never carries it: the figure is a low stand-in or none.
#[test]
fn an_end_that_is_only_recalled_rates_no_pressure() {
    let recalled = embedded().ends.iter().filter(|end| end.provenance.basis == Basis::Memory);
    let mut held = 0;
    for end in recalled {
        assert!(
            matches!(end.pressure_basis, Basis::Proxy | Basis::None),
            "{} {} is recalled, and its pressure says {:?}",
            end.family,
            end.size,
            end.pressure_basis
        );
        held += 1;
    }
    assert!(held > 40, "only {held} ends are recalled");
}

#[test]
fn ratings_and_torques_are_of_ends_in_the_tables() {
    for rating in &embedded().ratings {
        let found = embedded().connection(&rating.family, &rating.size).expect("a rating of an end");
        assert_eq!((found.family(), found.size()), (rating.family.as_str(), rating.size.as_str()));
    }
    for torque in &embedded().torques {
        match &torque.size {
            Some(size) => {
                let found = embedded().connection(&torque.family, size).expect("a torque of an end");
                assert_eq!((found.family(), found.size()), (torque.family.as_str(), size.as_str()));
            }
            None => assert!(
                embedded().families.iter().any(|row| row.family == torque.family),
                "{} is no family",
                torque.family
            ),
        }
    }
}

#[test]
fn every_family_says_what_its_halves_look_like() {
    let with_looks: BTreeSet<_> = embedded().families.iter().map(|row| row.family.as_str()).collect();
    let with_rows: BTreeSet<_> = embedded().connections().map(Connection::family).collect();
    assert_eq!(with_looks, with_rows, "families with looks and families with rows");
}

/// How the words of the pairs call a family.
fn called(family: &str) -> &str {
    match family {
        "JIC 37 flare" => "37 deg",
        "SAE 45 flare" => "45 deg",
        "SAE inverted flare" => "inverted flare",
        "SAE ORB" => "ORB",
        "ISO 6149 port" => "ISO 6149",
        "ISO 9974 port" => "ISO 9974",
        "BSPP 60 cone" => "BSPP",
        "G port" => "G",
        "NPSM swivel" => "NPSM",
        "Metric 24 cone L" | "Metric 24 cone S" => "24 deg",
        "Metric 60 cone" => "metric 60 deg",
        "Metric 30 seat" => "metric 30 deg seat",
        "JIS parallel pipe 30 seat" => "JIS parallel",
        "French metric 24 cone" => "French metric",
        "French gas 24 cone" => "French gas",
        "Washer end metric" => "washer end",
        "Washer end G" => "G washer end",
        "Washer end inch" => "hose-thread washer end",
        "Test point" => "test point",
        "Flareless 24 cone inch" => "flareless inch",
        "Quick coupling ISO 14541" => "screw coupling",
        other => other,
    }
}

/// The pairs of the table, with words of their own.
fn listed() -> impl Iterator<Item = &'static Lookalike> {
    embedded().lookalikes.iter().filter(|pair| pair.fit.is_none())
}

#[test]
fn every_pair_names_two_ends_of_the_tables_and_the_right_one_is_the_female() {
    assert_eq!(listed().count(), 290, "every pair was read");
    let mut told_by_thread = 0;
    for pair in listed() {
        let female = embedded()
            .connection(&pair.female_family, &pair.female_size)
            .expect("the female is in the tables");
        let male =
            embedded().connection(&pair.male_family, &pair.male_size).expect("the male is in the tables");
        assert_eq!(
            (female.family(), male.family()),
            (pair.female_family.as_str(), pair.male_family.as_str())
        );
        assert_sourced(&pair.starts, &pair.provenance);
        let (Some(of_female), Some(of_male)) = (thread(female), thread(male)) else { continue };
        let Some((first, second)) = pair.starts.split_once(" starts on male ") else { continue };
        let nut = format!("female {} {} ", called(&pair.female_family), pair.female_size);
        let stud = format!("{} {}", called(&pair.male_family), pair.male_size);
        assert!(first.starts_with(&nut), "the female of \"{}\" is {nut}", pair.starts);
        assert!(second.starts_with(&stud), "the male of \"{}\" is {stud}", pair.starts);
        if pair.starts.contains("same thread") {
            assert_eq!(of_female, of_male, "{}", pair.starts);
            assert!(pair.starts.ends_with(of_female), "{} has the thread {of_female}", pair.starts);
        }
        told_by_thread += 1;
    }
    assert_eq!(told_by_thread, 249, "every pair that is told by its threads was held");
}

fn thread(row: Connection<'_>) -> Option<&str> {
    match row {
        Connection::End(end) => end.thread.as_deref(),
        Connection::Flange(_) => None,
    }
}

#[test]
fn what_parts_a_pair_is_a_reading_of_an_end() {
    for pair in &embedded().lookalikes {
        for key in &pair.separating_readings {
            let value = match key.as_str() {
                "kind" => "\"nut\"",
                "shoulder" => "\"flat\"",
                "seal" => "\"cone\"",
                "cone" => "\"convex\"",
                "taper" => "true",
                _ => "1",
            };
            let reading = format!("{{\"role\":\"A\",\"{key}\":{value}}}");
            let read: Result<EndReadings, _> = serde_json::from_str(&reading);
            assert!(read.is_ok(), "{}: {key} is no reading of an end: {read:?}", pair.starts);
        }
    }
    for pair in listed() {
        // A staple's wire is no reading of an end.
        let blank = pair.female_family == "Staple end";
        assert_eq!(pair.separating_readings.is_empty(), blank, "{}: nothing parts the two", pair.starts);
    }
}

#[test]
fn the_words_of_a_danger_and_its_grade_agree() {
    for pair in listed() {
        let says = |words: &[&str]| words.iter().any(|word| pair.happens.contains(word));
        if says(&["blows off", "blows out", "fly apart", "pulls out or strips", "pulls off", "let go"]) {
            assert_eq!(pair.danger, Danger::BlowsOff, "{}: {}", pair.starts, pair.happens);
        }
        if pair.mechanism == Mechanism::StripsAndBlowsOff {
            let overlap = pair.thread_overlap_pct.expect("the overlap of shallow threads is worked out");
            assert!((30.0..=100.0).contains(&overlap), "{}: {overlap} %", pair.starts);
        }
    }
}
