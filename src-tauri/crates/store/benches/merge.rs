//! How long an office waits for a hundred thousand events of twenty vans, taken in as they come: van by van.
#![allow(missing_docs, reason = "criterion's macros make public functions without documentation")]
#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    reason = "a test or a bench that can not go on must panic"
)]

use chrono::DateTime;
use criterion::{BatchSize, Criterion, criterion_group, criterion_main};
use hosewright_core::record::DeviceId;
use hosewright_store::{Bundle, Register};

#[path = "../../../../tests/support/van_events.rs"]
#[allow(dead_code, reason = "the tests' own figures")]
mod van_events;

const VANS: u32 = 20;
/// Machines of a van.
const MACHINES: u32 = 20;

/// What each van hands to the others.
fn bundles() -> Vec<Bundle> {
    let folder = tempfile::tempdir().expect("a folder");
    (0..VANS)
        .map(|n| {
            let path = folder.path().join(format!("{n}.db"));
            let mut register = Register::open(path, DeviceId::from_bytes([n as u8 + 1; 16])).expect("opens");
            register.append([van_events::site(n)], DateTime::UNIX_EPOCH).expect("is written");
            for machine in 0..MACHINES {
                register.append(van_events::machine(n, machine), DateTime::UNIX_EPOCH).expect("is written");
            }
            register.bundle().expect("reads")
        })
        .collect()
}

fn bench(criterion: &mut Criterion) {
    let bundles = bundles();
    let events: usize = bundles.iter().map(|bundle| bundle.events.len()).sum();
    let folder = tempfile::tempdir().expect("a folder");
    let mut run = 0_u32;
    let mut fresh = || {
        run += 1;
        let path = folder.path().join(format!("{run}.db"));
        Register::open(path, DeviceId::from_bytes([99; 16])).expect("opens")
    };
    criterion.bench_function(&format!("take in {events} events of {VANS} vans"), |bench| {
        bench.iter_batched(
            &mut fresh,
            |mut register| {
                for bundle in &bundles {
                    register.merge(bundle).expect("merges");
                }
                register
            },
            BatchSize::PerIteration,
        );
    });
}

criterion_group! {
    name = benches;
    config = Criterion::default().sample_size(10);
    targets = bench
}
criterion_main!(benches);
