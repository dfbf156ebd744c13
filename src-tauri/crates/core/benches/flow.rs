//! How long one answer about a line takes.
#![allow(missing_docs, reason = "criterion's macros make public functions without documentation")]
#![allow(clippy::unwrap_used, reason = "the questions are fixed and right")]

use criterion::{Criterion, criterion_group, criterion_main};
use hosewright_core::flow::{Elbow, FlowQuestion, Fluid, Walther, flow, friction_factor};
use hosewright_core::quantity::{Celsius, Degrees, LitresPerMinute, Metres, Millimetres};
use std::hint::black_box;

fn lines(bench: &mut Criterion) {
    let question = FlowQuestion {
        flow_l_min: LitresPerMinute(120.0),
        bore_mm: Millimetres(19.0),
        length_m: Some(Metres(4.0)),
        fluid: Some(Fluid { iso_vg: Some(46.0), viscosity_index: Some(95.0), ..Fluid::default() }),
        temp_c: Some(Celsius(70.0)),
        roughness_mm: None,
        elbows: vec![Elbow { angle_deg: Some(Degrees(90.0)), ..Elbow::default() }],
    };
    bench.bench_function("pressure drop of a line by grade", |b| {
        b.iter(|| flow(black_box(&question)).unwrap());
    });
    bench.bench_function("Colebrook", |b| b.iter(|| friction_factor(black_box(23_456.0), black_box(1e-4))));
    bench.bench_function("viscosity by grade and index", |b| {
        b.iter(|| Walther::of_grade(black_box(46.0), black_box(95.0)).unwrap().at(Celsius(70.0)));
    });
}

criterion_group!(benches, lines);
criterion_main!(benches);
