//! How long a check takes, with every other hose of the size tried beside it.
#![allow(missing_docs, clippy::expect_used, reason = "a bench has no users and fails where it can not go on")]

use criterion::{Criterion, criterion_group, criterion_main};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{Question, check};
use std::hint::black_box;

const QUESTION: &str = r#"{
    "spec": {
        "hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
        "ends": [
            {"role": "A", "family": "ORFS", "size": "-10", "gender": "female", "form": "straight", "cutoff_mm": 30},
            {"role": "B", "family": "JIC 37 flare", "size": "-10", "gender": "female", "form": "straight", "cutoff_mm": 30}
        ],
        "overall_length_mm": 1240
    },
    "service": {
        "working_pressure_bar": 180, "relief_bar": 200, "surge_pressure_bar": 206, "fluid": "HM",
        "fluid_min_c": -20, "fluid_max_c": 80, "ambient_max_c": 40, "flow_l_min": 60, "line": "pressure",
        "bend_radius_mm": 220
    },
    "found": {
        "hose": [{"standard": "EN 853", "type": "2SN", "dn": 16, "dash": 10, "probability": 0.996, "also": []}]
    }
}"#;

fn one_question(criterion: &mut Criterion) {
    let catalogue = Catalogue::embedded();
    let question: Question = serde_json::from_str(QUESTION).expect("a question");
    criterion.bench_function("check a hose and its alternatives", |bencher| {
        bencher.iter(|| check(catalogue, black_box(&question)));
    });
}

criterion_group!(benches, one_question);
criterion_main!(benches);
