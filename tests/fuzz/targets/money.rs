//! Prices as people type them: what is read is written and read again as the same.

#![no_main]

use hosewright_core::stock::money::{parse, written};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    for digits in 0..=4 {
        if let Ok(minor) = parse(text, digits) {
            assert_eq!(parse(&written(minor, digits), digits), Ok(minor));
        }
    }
});
