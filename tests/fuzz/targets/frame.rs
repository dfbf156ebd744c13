//! A document and bytes in one body.

#![no_main]

use hosewright_api::frame;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let _ = frame::unpack(bytes);
});
