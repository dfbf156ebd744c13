//! Each way a reading errs is a named row of a table, and counts in its own direction alone.

use super::catalogue;
use hosewright_core::catalogue::{Catalogue, Direction, PartKind, ReadingTerm, Table};
use hosewright_core::find::{Part, Why, explain, find};
use hosewright_core::spec::Gender;
use serde_json::{Value, json};

/// The tables without one of the terms.
fn without(term: &ReadingTerm) -> Catalogue {
    let mut catalogue = Catalogue::read(Table::embedded).expect("the embedded tables can be read");
    let before = catalogue.reading_terms.len();
    catalogue.reading_terms.retain(|row| row != term);
    assert_eq!(catalogue.reading_terms.len(), before - 1);
    catalogue
}

/// Where a new part of a known row would read: limits of that reading, and the other readings that make
/// the row lead.
fn subject(term: &ReadingTerm) -> (f64, f64, Value, &'static str) {
    let tables = catalogue();
    if term.part == PartKind::Hose {
        let row = tables
            .hoses
            .iter()
            .find(|row| row.standard == "EN 853" && row.kind == "2SN" && row.dn.get() == 16.0);
        let row = row.expect("the hose is in the tables");
        let id = row.id_mm.expect("a bore");
        let over = |min: Option<hosewright_core::quantity::Millimetres>| min.expect("a limit").get();
        let (min, max) = match term.reading.as_str() {
            "id_mm" => (id.min, id.max),
            "reinforcement_od_mm" => (over(row.reinforcement_od_min_mm), over(row.reinforcement_od_max_mm)),
            other => panic!("{other} has a term and no subject"),
        };
        return (min, max, json!({"print": "EN 853 2SN DN 16"}), "EN 853 2SN DN16");
    }
    let row = tables
        .ends
        .iter()
        .find(|row| row.family == "Metric 24 cone L" && row.size == "L15")
        .expect("the end");
    let male = term.half != Some(Gender::Female) && term.reading != "swivel_hex_mm";
    let band = |nominal: f64, below: f64, above: f64| (nominal - below, nominal + above);
    let (min, max) = match term.reading.as_str() {
        "thread_diameter_mm" => {
            let band = if male { row.male_major_mm } else { row.female_minor_mm }.expect("limits");
            (band.min, band.max)
        }
        "swivel_hex_mm" => band(row.swivel_hex_mm.expect("a hex").get(), 0.4, 0.1),
        "male_bore_mm" => band(row.male_bore_mm.expect("a bore").get(), 0.75, 0.75),
        "tube_od_mm" => band(row.tube_od_mm.expect("a tube").get(), 0.15, 0.3),
        other => panic!("{other} has a term and no subject"),
    };
    let mut others = json!({"role": "A", "gender": if male { "male" } else { "female" }, "pitch_mm": 1.5,
        "flank_angle_deg": 60, "seat_included_angle_deg": 24, "taper": false, "seal": "cone"});
    let major = if male { row.male_major_mm } else { row.female_minor_mm }.expect("limits");
    others["thread_diameter_mm"] = json!(0.5 * (major.min + major.max));
    others["tube_od_mm"] = json!(15.05);
    (min, max, others, "Metric 24 cone L L15")
}

/// What a reading says for the row against a part of which nothing is known.
fn bits(tables: &Catalogue, term: &ReadingTerm, value: f64) -> f64 {
    let (.., others, name) = subject(term);
    let mut part = others;
    part[&term.reading] = json!(value);
    let document = match term.part {
        PartKind::Hose => json!({"hose": part}),
        PartKind::End => json!({"ends": [part]}),
    };
    let readings = serde_json::from_value(document).expect("readings by the contract");
    let found = find(tables, &readings).expect("readings that can be");
    let (of, place) = match term.part {
        PartKind::Hose => {
            let is = |standard: &str, kind: &str| format!("{standard} {kind} DN16") == name;
            (Part::Hose, found.hose.iter().position(|class| is(&class.standard, &class.kind)))
        }
        PartKind::End => {
            let is = |family: &str, size: &str| format!("{family} {size}") == name;
            (Part::A, found.ends[0].candidates.iter().position(|class| is(&class.family, &class.size)))
        }
    };
    let candidate = place.unwrap_or_else(|| panic!("{}: {name} is among the candidates", term.term));
    let why = Why { readings, of, candidate, rival: Some(usize::MAX) };
    let explained = explain(tables, &why).expect("readings that can be").expect("the candidate is there");
    assert_eq!(explained.rival, None, "the rival is none of these");
    let key = if term.reading == "tpi" { "pitch_mm" } else { &term.reading };
    explained.readings.iter().find(|said| said.reading == key).expect("the reading is explained").bits
}

/// A reading that errs as the term says speaks more for its part with the term than without it; one that
/// errs the other way does not.
#[test]
fn each_term_counts_in_its_own_direction() {
    // A cover's limits are one-sided in most rows, and its two terms go both ways: told below.
    let terms = catalogue().reading_terms.iter().filter(|term| term.reading != "cover_od_mm");
    let mut tried = 0;
    for term in terms {
        let less = without(term);
        let (min, max, ..) = subject(term);
        let far = term.mean_mm + 0.25;
        let (its_way, other_way) = match term.direction {
            Direction::Smaller => (min - far, max + far),
            Direction::Larger => (max + far, min - far),
        };
        let (with, without) = (bits(catalogue(), term, its_way), bits(&less, term, its_way));
        assert!(with > without + 0.01, "{} {}: {with} with it, {without} without", term.term, term.reading);
        let (with, without) = (bits(catalogue(), term, other_way), bits(&less, term, other_way));
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
