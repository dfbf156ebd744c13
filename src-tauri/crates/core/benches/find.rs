//! How long it takes to name a hose and its ends over the whole catalogue.

#![allow(missing_docs, clippy::expect_used)]

use criterion::{Criterion, criterion_group, criterion_main};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::find::{Readings, candidates, find};
use std::hint::black_box;

const JOBS: [(&str, &str); 4] = [
    ("nothing read", "{}"),
    (
        "hose measured",
        r#"{"hose":{"id_mm":15.9,"cover_od_mm":25.2,"reinforcement_od_mm":23.0,"reinforcement":"wire-braid","layers":2}}"#,
    ),
    (
        "print and one diameter",
        r#"{"hose":{"print":"EN 853 2SN DN16 3Q24"},"ends":[{"role":"A","gender":"male","thread_diameter_mm":22.2}]}"#,
    ),
    (
        "hose and both ends measured",
        r#"{"hose":{"id_mm":15.9,"cover_od_mm":25.2,"reinforcement_od_mm":23.0,"reinforcement":"wire-braid","layers":2},
            "ends":[{"role":"A","gender":"female","thread_diameter_mm":20.5,"tpi":14},
                    {"role":"B","gender":"male","thread_diameter_mm":22.2,"tpi":14,"seat_included_angle_deg":74}]}"#,
    ),
];

fn jobs(criterion: &mut Criterion) {
    let catalogue = Catalogue::embedded();
    for (name, text) in JOBS {
        let readings: Readings = serde_json::from_str(text).expect("readings");
        criterion.bench_function(&format!("candidates: {name}"), |bench| {
            bench.iter(|| candidates(black_box(catalogue), black_box(&readings)));
        });
        criterion.bench_function(&format!("find with next reading: {name}"), |bench| {
            bench.iter(|| find(black_box(catalogue), black_box(&readings)));
        });
    }
}

criterion_group!(benches, jobs);
criterion_main!(benches);
