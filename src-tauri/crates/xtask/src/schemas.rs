//! The JSON Schema of every command, kept in the repository; a test compares them with the program.

use hosewright_api::commands::described;
use std::fs;
use std::io;
use std::path::Path;

/// Writes all schemas anew.
pub fn write() -> io::Result<()> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../api/schemas");
    fs::create_dir_all(&folder)?;
    for old in fs::read_dir(&folder)? {
        fs::remove_file(old?.path())?;
    }
    for command in described() {
        for (part, schema) in [("input", command.input), ("output", command.output)] {
            let text = serde_json::to_string_pretty(schema.as_value())? + "\n";
            fs::write(folder.join(format!("{}.{part}.json", command.name)), text)?;
        }
    }
    println!("{}", folder.display());
    Ok(())
}
