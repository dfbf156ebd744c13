//! The types of the screens, kept in the repository; a test compares them with the program.

use hosewright_api::commands::typescript;
use std::fs;
use std::io;
use std::path::Path;

/// Writes the types anew.
pub fn write() -> io::Result<()> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../ui/src/backend/types.ts");
    fs::write(&file, typescript())?;
    println!("{}", file.display());
    Ok(())
}
