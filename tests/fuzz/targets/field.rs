//! A routing as a technician says it never panics, and what it answers can be written down.
#![no_main]

use hosewright_core::catalogue::Catalogue;
use hosewright_core::route::field::{FieldQuestion, field};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|question: &[u8]| {
    if let Ok(question) = serde_json::from_slice::<FieldQuestion>(question)
        && let Ok(routed) = field(Catalogue::embedded(), &question)
    {
        serde_json::to_string(&routed).expect("an answer can be written down");
    }
});
