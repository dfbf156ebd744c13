//! One target under libFuzzer: that which the environment names.

#![no_main]

use hosewright_fuzz::{TARGETS, Target};
use libfuzzer_sys::fuzz_target;
use std::sync::LazyLock;

/// The target that `HOSEWRIGHT_TARGET` names.
static TARGET: LazyLock<&Target> = LazyLock::new(|| {
    let asked = std::env::var("HOSEWRIGHT_TARGET").unwrap_or_default();
    let found = TARGETS.iter().find(|target| target.name == asked);
    found.expect("HOSEWRIGHT_TARGET names a target")
});

fuzz_target!(|bytes: &[u8]| (TARGET.holds)(bytes));
