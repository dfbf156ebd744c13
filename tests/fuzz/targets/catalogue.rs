//! One table of the catalogue, the others as they are. The first line of the input is the name of its
//! file.

#![no_main]

use hosewright_core::catalogue::{Catalogue, Table};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let Some((file, rows)) = text.split_once('\n') else { return };
    let Some(&table) = Table::ALL.iter().find(|table| table.file() == file) else { return };
    let _ = Catalogue::read(|other| if other == table { rows } else { other.embedded() });
});
