//! The tables of the catalogue.

use hosewright_core::catalogue::{Catalogue, Table};

/// One table, the others as they are. The first line of the input is the name of its file.
pub(crate) fn catalogue(bytes: &[u8]) {
    let Some((file, rows)) = crate::text(bytes).and_then(|text| text.split_once('\n')) else { return };
    let Some(&table) = Table::ALL.iter().find(|table| table.file() == file) else { return };
    let _ = Catalogue::read(|other| if other == table { rows } else { other.embedded() });
}
