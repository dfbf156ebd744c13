//! How long the tables take to read and join, and a name to be found. A program start should spend
//! no more than 20 ms on the first.
#![allow(missing_docs, reason = "criterion's macros make public functions without documentation")]

use criterion::Criterion;
use hosewright_core::catalogue::{Catalogue, Table};
use hosewright_core::quantity::Dn;
use std::hint::black_box;

fn reading_and_finding(criterion: &mut Criterion) {
    criterion.bench_function("read the catalogue", |bench| bench.iter(|| Catalogue::read(Table::embedded)));
    let tables = Catalogue::embedded();
    criterion.bench_function("find a hose by a name people use", |bench| {
        bench.iter(|| {
            Dn::new(13.0).map(|dn| tables.hose(black_box("DIN EN 853"), black_box("2sn"), dn).is_ok())
        })
    });
    criterion.bench_function("find an end by a name people use", |bench| {
        bench.iter(|| tables.connection(black_box("24 degree light"), black_box("15L")).is_ok())
    });
}

fn main() {
    let mut criterion = Criterion::default().configure_from_args();
    reading_and_finding(&mut criterion);
    criterion.final_summary();
}
