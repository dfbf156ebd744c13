//! A history of failures as CSV.

#![no_main]

use hosewright_core::life::read_csv;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let _ = read_csv(text);
});
