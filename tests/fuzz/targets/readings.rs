//! Readings as a JSON document, and what they are answered with.

#![no_main]

use hosewright_api::{document, question};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::find::{Readings, find};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    if let Ok(readings) = document(text).and_then(question::<Readings>) {
        let _ = find(Catalogue::embedded(), &readings);
    }
});
