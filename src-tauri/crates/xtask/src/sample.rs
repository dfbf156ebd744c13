//! Leaves a register of the present program for the tests of later ones.

use hosewright_tests::faults;
use std::path::Path;

/// Makes the file, named by its schemas.
///
/// # Errors
/// It can not be read again.
pub fn leave(program: &Path) -> std::io::Result<()> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../tests/databases");
    std::fs::create_dir_all(&folder)?;
    let made = folder.join("new.db");
    faults::sample(program, &made);
    let named = folder.join(faults::sample_name());
    std::fs::rename(&made, &named)?;
    println!("{}", named.display());
    Ok(())
}
