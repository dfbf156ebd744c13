//! What stands on a cover.

#![no_main]

use hosewright_core::catalogue::Catalogue;
use hosewright_core::print;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let _ = print::read(Catalogue::embedded(), text);
});
