//! Quantities as people type them.

#![no_main]

use hosewright_core::quantity::{Bar, Celsius, Degrees, Dn, LitresPerMinute, Metres, Millimetres, Reading};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let _ = text.parse::<Millimetres>();
    let _ = text.parse::<Metres>();
    let _ = text.parse::<Bar>();
    let _ = text.parse::<Celsius>();
    let _ = text.parse::<Degrees>();
    let _ = text.parse::<LitresPerMinute>();
    let _ = text.parse::<Reading>();
    let _ = text.parse::<Dn>();
});
