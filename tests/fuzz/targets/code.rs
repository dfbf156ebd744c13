//! The code of a tag, typed by hand; what is read comes back from how it is written.

#![no_main]

use hosewright_core::tag::TagCode;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    if let Ok(code) = text.parse::<TagCode>() {
        assert_eq!(code.to_string().parse(), Ok(code));
    }
});
