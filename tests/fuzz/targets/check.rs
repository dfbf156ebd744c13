//! The question of a check as a JSON document, and its verdict.

#![no_main]

use hosewright_api::{document, question};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{Question, check};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    if let Ok(asked) = document(text).and_then(question::<Question>) {
        let _ = check(Catalogue::embedded(), &asked);
    }
});
