//! Several tables in one archive.

use super::{TableError, to_csv};
use std::io::{Cursor, Write};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

/// Tables by their names as CSV files in one ZIP archive.
///
/// # Errors
/// When the archive can not be written.
pub fn to_zip(tables: &[(&str, Vec<Vec<String>>)]) -> Result<Vec<u8>, TableError> {
    let failed = |error: &dyn std::fmt::Display| TableError::Writing(error.to_string());
    let mut archive = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, rows) in tables {
        archive
            .start_file(format!("{name}.csv"), SimpleFileOptions::default())
            .map_err(|error| failed(&error))?;
        archive.write_all(&to_csv(rows)).map_err(|error| failed(&error))?;
    }
    Ok(archive.finish().map_err(|error| failed(&error))?.into_inner())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read;

    #[test]
    fn every_table_stands_in_the_archive_under_its_name() {
        let rows = vec![vec!["code".to_owned(), "size".to_owned()], vec!["A".to_owned(), "-10".to_owned()]];
        let bytes = to_zip(&[("hoses", rows.clone()), ("sites", Vec::new())]).unwrap();
        let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).unwrap();
        let mut text = String::new();
        archive.by_name("hoses.csv").unwrap().read_to_string(&mut text).unwrap();
        assert_eq!(super::super::read(text.as_bytes(), "hoses.csv").unwrap(), rows);
        assert_eq!(archive.by_name("sites.csv").unwrap().size(), 0);
    }
}
