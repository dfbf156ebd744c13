//! A table, CSV or XLSX, as bytes.

#![no_main]

use hosewright_papers::table;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let _ = table::read(bytes, "list");
});
