//! How well `find` names parts whose answer was published: the figures, and every miss.

// A broken table of cases fails the test that asked for it, and says so by panicking.
#![allow(clippy::expect_used)]

use hosewright_core::catalogue::Catalogue;
use hosewright_core::find::{Found, Readings, find};
use serde::Deserialize;
use serde_json::{Map, Value, json};

/// What a set of classes must hold together to be counted on.
pub const HELD: f64 = 0.95;

/// One published case, asked and answered.
#[derive(Debug, Clone)]
pub struct Answered {
    /// The case.
    pub id: String,
    /// What was published, alternatives included, as `family size`.
    pub published: Vec<String>,
    /// The classes that together hold [`HELD`], likeliest first, each with all its names.
    pub held: Vec<(Vec<String>, f64)>,
    /// Whether the part counts as settled.
    pub settled: bool,
    /// Ends that start on it and must not.
    pub lookalikes: usize,
}

impl Answered {
    /// Whether the first published answer is in the set.
    pub fn is_hit(&self) -> bool {
        self.published.first().is_some_and(|name| self.holds(name))
    }

    /// Whether a name is in the set.
    pub fn holds(&self, name: &str) -> bool {
        self.held.iter().any(|(names, _)| names.iter().any(|held| held == name))
    }
}

/// Figures over a list of cases.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figures {
    /// Cases asked.
    pub cases: usize,
    /// Share of cases with the published answer in the set.
    pub hits: f64,
    /// Mean number of classes in the set.
    pub mean_size: f64,
}

/// The figures of answered cases.
pub fn figures(answered: &[Answered]) -> Figures {
    let cases = answered.len();
    let hits = answered.iter().filter(|case| case.is_hit()).count();
    let sizes: usize = answered.iter().map(|case| case.held.len()).sum();
    Figures { cases, hits: hits as f64 / cases as f64, mean_size: sizes as f64 / cases as f64 }
}

#[derive(Debug, Deserialize)]
struct ConnectionCase {
    id: Option<String>,
    case_id: Option<String>,
    part: String,
    measure: String,
    value: f64,
    unit: String,
    value2: Option<f64>,
    tpi: Option<f64>,
    pitch_mm: Option<f64>,
    taper: String,
    seat_included_angle_deg: Option<f64>,
    seal_observed: String,
    answer_family: String,
    answer_size: String,
    alternatives: String,
}

/// The published connections, asked with what the case read and nothing else.
pub fn connections(catalogue: &Catalogue) -> Vec<Answered> {
    rows::<ConnectionCase>(include_str!("../vectors/connection_cases.csv"))
        .into_iter()
        .map(|case| {
            let found = ask(catalogue, &json!({ "ends": [connection_readings(&case)] }));
            let end = found.ends.first().expect("the end was read");
            let classes = end.candidates.iter().map(|candidate| {
                let mut names = vec![format!("{} {}", candidate.family, candidate.size)];
                names.extend(candidate.also.iter().map(|name| format!("{} {}", name.family, name.size)));
                (names, candidate.probability)
            });
            let mut published = vec![format!("{} {}", case.answer_family, case.answer_size)];
            let alternatives = case.alternatives.split(';').filter(|name| !name.is_empty());
            published.extend(alternatives.map(|name| name.replacen(':', " ", 1)));
            Answered {
                id: case.id.or(case.case_id).unwrap_or_default(),
                published,
                held: held(classes),
                settled: found.settled.a,
                lookalikes: end.lookalikes.len(),
            }
        })
        .collect()
}

fn connection_readings(case: &ConnectionCase) -> Value {
    let mm = if case.unit == "in" { 25.4 } else { 1.0 };
    let mut end = Map::new();
    let mut read = |key: &str, value: Value| {
        end.insert(key.to_owned(), value);
    };
    read("role", json!("A"));
    if case.part != "flange" {
        read("gender", json!(case.part));
    }
    match case.measure.as_str() {
        "bolt_spacing_long" => read("bolt_long_mm", json!(case.value * mm)),
        "head_od" => read("head_od_mm", json!(case.value * mm)),
        _ => read("thread_diameter_mm", json!(case.value * mm)),
    }
    if let Some(short) = case.value2 {
        read("bolt_short_mm", json!(short * mm));
    }
    if let Some(tpi) = case.tpi {
        read("tpi", json!(tpi));
    }
    if let Some(pitch) = case.pitch_mm {
        read("pitch_mm", json!(pitch));
    }
    if !case.taper.is_empty() {
        read("taper", json!(true));
    }
    if let Some(angle) = case.seat_included_angle_deg {
        read("seat_included_angle_deg", json!(angle));
    }
    if !case.seal_observed.is_empty() {
        read("seal", json!(case.seal_observed));
    }
    Value::Object(end)
}

#[derive(Debug, Deserialize)]
struct HoseCase {
    id: String,
    kind: String,
    id_mm: Option<f64>,
    reinforcement_od_mm: Option<f64>,
    cover_od_mm: Option<f64>,
    reinforcement: String,
    layers: Option<u8>,
    other_clue: String,
    expect_standard: String,
    expect_type: String,
    expect_dn: String,
}

/// The published hoses that are to be identified.
pub fn hoses(catalogue: &Catalogue) -> Vec<Answered> {
    rows::<HoseCase>(include_str!("../vectors/hose_cases.csv"))
        .into_iter()
        .filter(|case| case.kind == "identify")
        .map(|case| {
            let found = ask(catalogue, &json!({ "hose": hose_readings(&case) }));
            hose_answered(
                case.id,
                format!("{} {} {}", case.expect_standard, case.expect_type, case.expect_dn),
                &found,
            )
        })
        .collect()
}

fn hose_answered(id: String, published: String, found: &Found) -> Answered {
    let classes = found.hose.iter().map(|candidate| {
        let first = format!("{} {} {}", candidate.standard, candidate.kind, candidate.dn);
        let also = candidate.also.iter().map(|name| format!("{} {} {}", name.standard, name.kind, name.dn));
        (std::iter::once(first).chain(also).collect(), candidate.probability)
    });
    Answered {
        id,
        published: vec![published],
        held: held(classes),
        settled: found.settled.hose,
        lookalikes: 0,
    }
}

fn hose_readings(case: &HoseCase) -> Value {
    let kind = match case.reinforcement.as_str() {
        text if text.contains("spiral") => "wire-spiral",
        text if text.contains("wire braid") => "wire-braid",
        text if text.contains("textile braid") => "textile-braid",
        text => panic!("{}: no reinforcement is called {text}", case.id),
    };
    let print = case.other_clue.strip_prefix("layline reads ");
    json!({
        "id_mm": case.id_mm, "reinforcement_od_mm": case.reinforcement_od_mm, "cover_od_mm": case.cover_od_mm,
        "reinforcement": kind, "layers": case.layers, "print": print
    })
}

/// The example markings that name standard, type and size, asked as a print alone.
pub fn markings(catalogue: &Catalogue) -> Vec<Answered> {
    #[derive(Debug, Deserialize)]
    struct Marking {
        id: String,
        marking_string: String,
        standard: String,
        #[serde(rename = "type")]
        kind: String,
        dn: String,
    }
    rows::<Marking>(include_str!("../vectors/hose_marking_cases.csv"))
        .into_iter()
        .filter(|case| !case.standard.is_empty() && !case.dn.is_empty())
        .map(|case| {
            let found = ask(catalogue, &json!({ "hose": { "print": case.marking_string } }));
            hose_answered(case.id, format!("{} {} {}", case.standard, case.kind, case.dn), &found)
        })
        .collect()
}

fn rows<T: for<'de> Deserialize<'de>>(text: &str) -> Vec<T> {
    csv::Reader::from_reader(text.as_bytes())
        .deserialize()
        .map(|row| row.expect("a row of the cases"))
        .collect()
}

/// Asks `find` in the way a script would.
pub fn ask(catalogue: &Catalogue, readings: &Value) -> Found {
    let readings: Readings = serde_json::from_value(readings.clone()).expect("readings by the contract");
    find(catalogue, &readings).expect("readings that can be")
}

/// The likeliest classes that together hold [`HELD`].
fn held(classes: impl Iterator<Item = (Vec<String>, f64)>) -> Vec<(Vec<String>, f64)> {
    let mut sum = 0.0;
    let mut held = Vec::new();
    for class in classes {
        if sum >= HELD {
            break;
        }
        sum += class.1;
        held.push(class);
    }
    held
}
