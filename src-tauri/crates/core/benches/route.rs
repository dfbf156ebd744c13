//! How long a routing takes: one pose from nothing, one that follows from its neighbour, and a travel.
#![allow(missing_docs, reason = "criterion's macros make public functions without documentation")]

use criterion::{Criterion, black_box};
use hosewright_core::quantity::Millimetres;
use hosewright_core::route::{Layout, Port, Pose, Span, Vector, route};

/// A hose that leaves its port at a right angle to the other one, with an offset in all three directions.
fn span(offset_mm: f64) -> Span {
    Span {
        gap_mm: Vector([300.0 + offset_mm, 250.0, 120.0]),
        start: Vector([1.0, 0.0, 0.0]),
        end: Vector([0.0, 1.0, 0.0]),
        length_mm: 520.0,
    }
}

/// A boom that swings its port by a quarter turn in forty poses.
fn boom() -> Layout {
    let port = |position: [f64; 3], direction: [f64; 3]| {
        Some(Port {
            position_mm: position.map(Millimetres),
            direction,
            up: None,
            rigid_mm: Some(Millimetres(40.0)),
        })
    };
    let swing = |number: i32| {
        let (sin, cos) = (f64::from(number) / 39.0 * std::f64::consts::FRAC_PI_2).sin_cos();
        Pose { a: None, b: port([250.0 * cos, 250.0 * sin, 150.0], [-0.3, sin, -cos]) }
    };
    Layout {
        a: port([0.0; 3], [1.0, 0.0, 0.0]),
        poses: (0..40).map(swing).collect(),
        free_length_mm: Some(Millimetres(650.0)),
        hose_od_mm: Some(Millimetres(25.0)),
        min_bend_radius_mm: Some(Millimetres(80.0)),
        length_change_pct: Some([-4.0, 2.0]),
        ..Layout::default()
    }
}

fn main() {
    let mut criterion = Criterion::default().sample_size(20).configure_from_args();
    criterion.bench_function("one pose, cold", |bench| bench.iter(|| black_box(span(0.0)).settle()));
    if let Ok(settled) = span(0.0).settle() {
        criterion.bench_function("one pose, followed", |bench| {
            bench.iter(|| black_box(span(5.0)).follow(&settled.shape));
        });
    }
    let boom = boom();
    criterion
        .bench_function("forty poses with length change", |bench| bench.iter(|| route(black_box(&boom))));
    let sought = Layout { free_length_mm: None, ..boom };
    criterion
        .bench_function("shortest length over forty poses", |bench| bench.iter(|| route(black_box(&sought))));
    criterion.final_summary();
}
