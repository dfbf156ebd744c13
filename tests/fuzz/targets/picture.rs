//! A picture of a tag, PNG or JPEG.

#![no_main]

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let _ = hosewright_sight::read(bytes);
});
