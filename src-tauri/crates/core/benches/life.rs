//! How long the answer for a fleet of 100,000 hoses takes.
#![allow(missing_docs, reason = "criterion's macros make public functions without documentation")]
#![allow(clippy::unwrap_used, reason = "the histories are made here and right")]

use criterion::{Criterion, criterion_group, criterion_main};
use hosewright_core::life::{Record, Weibull, life, read_csv};
use std::fmt::Write;
use std::hint::black_box;

/// Lives at the quantiles of a law, many taken off whole before; with `entered_old` one in three was entered old.
fn fleet(count: u32, entered_old: bool) -> Vec<Record> {
    let law = Weibull { shape: 2.4, scale: 6500.0 };
    (0..count)
        .map(|i| {
            let life = law.quantile((f64::from(i) + 0.5) / f64::from(count));
            let taken_off = f64::from(i.wrapping_mul(2_654_435_761) % 12_000) + 1.0;
            let time = life.min(taken_off);
            let entered = if entered_old && i % 3 == 0 { 0.4 * time } else { 0.0 };
            Record::new(time, life <= taken_off, entered).unwrap()
        })
        .collect()
}

fn lives(bench: &mut Criterion) {
    let (new, old) = (fleet(100_000, false), fleet(100_000, true));
    let mut table = String::from("time,failed\n");
    for record in &new {
        writeln!(table, "{},{}", record.time(), u8::from(record.failed())).unwrap();
    }
    let mut group = bench.benchmark_group("100,000 hoses");
    group.sample_size(10);
    group.bench_function("life", |b| b.iter(|| life(black_box(&new))));
    group.bench_function("life, a third entered old", |b| b.iter(|| life(black_box(&old))));
    group.bench_function("reading the table", |b| b.iter(|| read_csv(black_box(&table)).unwrap()));
    group.finish();
}

criterion_group!(benches, lives);
criterion_main!(benches);
