//! The text that hands a fleet's key on; what is wrong with one is said without what stands in it.

#![no_main]

use hosewright_core::fleet::{self, DeviceKey};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    // The day of the seed.
    let now = "2026-11-26T20:12:00Z".parse().expect("a time");
    match fleet::read(text, now) {
        Ok(handed) => {
            let again = fleet::hand_on(&handed.name, &handed.key, handed.founder.as_ref(), &DeviceKey::from_bytes([7; 32]), now);
            assert_eq!(fleet::read(&again, now).map(|read| read.key), Ok(handed.key));
        }
        Err(error) => {
            let said = error.to_string();
            // What is long and of a key's letters alone: no message has such a word of its own.
            let of_a_key = |word: &str| {
                word.len() > 8 && word.bytes().all(|c| c.is_ascii_uppercase() || c.is_ascii_digit())
            };
            let key = text.lines().filter_map(|line| line.strip_prefix("KEY ")).find(|key| of_a_key(key));
            assert!(key.is_none_or(|key| !said.contains(key)), "{said}");
        }
    }
});
