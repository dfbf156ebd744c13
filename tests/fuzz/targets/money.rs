//! Prices as people type them: what is read is written and read again as the same.

#![no_main]

use hosewright_core::stock::money::{MOST_DIGITS, parse, written};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    for digits in 0..=MOST_DIGITS {
        if let Ok(minor) = parse(text, digits) {
            assert_eq!(parse(&written(minor, digits), digits), Ok(minor));
        }
    }
});
