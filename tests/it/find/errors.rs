//! Each way a reading errs is a named row of a table, and counts in its own direction alone.

use super::catalogue;
use hosewright_core::catalogue::{Catalogue, Direction, PartKind, ReadingTerm, Table};
use hosewright_core::find::{Part, Why, explain, find};
use hosewright_core::quantity::Millimetres;
use hosewright_core::spec::Gender;
use serde_json::json;

/// Sizes of Metric 24 cone L: the one a reading is taken of, and one so far from it that the reading is a stray
/// there with the terms and without, so that what is said against it moves by the terms of the first alone.
/// "None of these" will not do: it may have the size of some row, and moves with the terms of all.
const SIZES: (&str, &str) = ("L15", "L42");
/// The same of EN 853 2SN, by nominal diameter.
const HOSES: (&str, &str) = ("16", "51");

/// The tables with the two rows of each part alone.
fn two_rows() -> Catalogue {
    let mut tables = Catalogue::read(Table::embedded).expect("the embedded tables can be read");
    let is_one = |size: &str, (near, far): (&str, &str)| size == near || size == far;
    tables.ends.retain(|row| row.family == "Metric 24 cone L" && is_one(&row.size, SIZES));
    tables.flanges.clear();
    tables.twins.clear();
    tables
        .hoses
        .retain(|row| row.standard == "EN 853" && row.kind == "2SN" && is_one(&row.dn.to_string(), HOSES));
    assert_eq!((tables.ends.len(), tables.hoses.len()), (2, 2));
    tables
}

/// The same without one of the terms.
fn without(term: &ReadingTerm) -> Catalogue {
    let mut tables = two_rows();
    let before = tables.reading_terms.len();
    tables.reading_terms.retain(|row| row != term);
    assert_eq!(tables.reading_terms.len(), before - 1);
    tables
}

/// Whether the term is asked of a male: of a female what says so, and hexes, which are those of nuts.
fn is_male(term: &ReadingTerm) -> bool {
    term.half != Some(Gender::Female) && term.reading != "swivel_hex_mm"
}

/// Where a new part of the row would read.
fn limits(tables: &Catalogue, term: &ReadingTerm) -> (f64, f64) {
    let millimetres = |value: Option<Millimetres>| value.expect("a size").get();
    if term.part == PartKind::Hose {
        let row = tables.hoses.iter().find(|row| row.dn.to_string() == HOSES.0).expect("the hose");
        let id = row.id_mm.expect("a bore");
        return match term.reading.as_str() {
            "id_mm" => (id.min, id.max),
            "reinforcement_od_mm" => {
                (millimetres(row.reinforcement_od_min_mm), millimetres(row.reinforcement_od_max_mm))
            }
            other => panic!("{other} has a term and no subject"),
        };
    }
    let row = tables.ends.iter().find(|row| row.size == SIZES.0).expect("the end");
    let band = |nominal: Option<Millimetres>, below: f64, above: f64| {
        (millimetres(nominal) - below, millimetres(nominal) + above)
    };
    match term.reading.as_str() {
        "thread_diameter_mm" => {
            let band = if is_male(term) { row.male_major_mm } else { row.female_minor_mm };
            band.map(|band| (band.min, band.max)).expect("limits")
        }
        "swivel_hex_mm" => band(row.swivel_hex_mm, 0.4, 0.1),
        "male_bore_mm" => band(row.male_bore_mm, 0.75, 0.75),
        "tube_od_mm" => band(row.tube_od_mm, 0.15, 0.3),
        other => panic!("{other} has a term and no subject"),
    }
}

/// What a reading says for the row against the far one.
fn bits(tables: &Catalogue, term: &ReadingTerm, value: f64) -> f64 {
    let gender = if is_male(term) { "male" } else { "female" };
    let (of, document) = match term.part {
        PartKind::Hose => (Part::Hose, json!({"hose": {&term.reading: value}})),
        PartKind::End => (Part::A, json!({"ends": [{"role": "A", "gender": gender, &term.reading: value}]})),
    };
    let readings = serde_json::from_value(document).expect("readings by the contract");
    let found = find(tables, &readings).expect("readings that can be");
    let place = |size: &str| match of {
        Part::Hose => found.hose.iter().position(|class| class.dn.to_string() == size),
        _ => found.ends[0].candidates.iter().position(|class| class.size == size),
    };
    let (near, far) = if of == Part::Hose { HOSES } else { SIZES };
    let candidate = place(near).unwrap_or_else(|| panic!("{}: {value} leaves no {near}", term.term));
    let rival = place(far);
    assert!(rival.is_some(), "{}: {value} leaves no {far}", term.term);
    let why = Why { readings, of, candidate, rival };
    let explained = explain(tables, &why).expect("readings that can be").expect("the candidate is there");
    explained.readings.iter().find(|said| said.reading == term.reading).expect("it is explained").bits
}

/// A reading that errs as the term says speaks more for its part with the term than without it; one that
/// errs the other way does not.
#[test]
fn each_term_counts_in_its_own_direction() {
    // A cover's limits are one-sided in most rows, and its two terms go both ways: told below.
    let terms = catalogue().reading_terms.iter().filter(|term| term.reading != "cover_od_mm");
    let mut tried = 0;
    for term in terms {
        let (tables, less) = (two_rows(), without(term));
        let (min, max) = limits(&tables, term);
        let far = term.mean_mm + 0.25;
        let (its_way, other_way) = match term.direction {
            Direction::Smaller => (min - far, max + far),
            Direction::Larger => (max + far, min - far),
        };
        let (with, without) = (bits(&tables, term, its_way), bits(&less, term, its_way));
        assert!(with > without + 0.01, "{} {}: {with} with it, {without} without", term.term, term.reading);
        let (with, without) = (bits(&tables, term, other_way), bits(&less, term, other_way));
        assert!(with <= without + 1e-9, "{} {}: the other way {with}, {without}", term.term, term.reading);
        tried += 1;
    }
    assert!(tried >= 14, "only {tried} terms");
}

#[test]
fn a_cover_is_soaked_or_abraded_and_either_is_allowed_for() {
    let terms: Vec<_> =
        catalogue().reading_terms.iter().filter(|term| term.reading == "cover_od_mm").collect();
    let has = |direction| terms.iter().any(|term| term.direction == direction);
    assert!(has(Direction::Smaller) && has(Direction::Larger));
    let says = |cover: f64| {
        let found = super::ask(
            catalogue(),
            &json!({"hose": {"id_mm": 15.9, "reinforcement_od_mm": 23.0,
            "cover_od_mm": cover, "reinforcement": "wire-braid", "layers": 2}}),
        );
        super::of_hose(&found, "EN 853", "2SN", 16.0) + super::of_hose(&found, "EN 853", "2ST", 16.0)
    };
    for cover in [24.4, 26.9] {
        assert!(says(cover) > 0.5, "a cover of {cover} mm leaves the two-wire hose {}", says(cover));
    }
}

/// Every reading has a source and a basis for how it errs, and no set of terms takes all readings.
#[test]
fn shares_leave_room_for_readings_as_new() {
    for half in [None, Some(Gender::Male), Some(Gender::Female)] {
        for term in &catalogue().reading_terms {
            let same = |row: &&ReadingTerm| {
                row.part == term.part
                    && row.reading == term.reading
                    && (row.half.is_none() || row.half == half)
            };
            let sum: f64 = catalogue().reading_terms.iter().filter(same).map(|row| row.share).sum();
            assert!(sum < 0.9, "{}: {sum}", term.reading);
        }
    }
}
