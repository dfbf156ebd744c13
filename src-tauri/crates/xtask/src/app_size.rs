//! How large the built program is, how fast it starts and what memory it holds: driven in its window, as
//! the shell's tests drive it.

use std::io::{Error, Result};
use std::path::Path;
use std::process::Command;

/// Measures a program that is built already.
pub fn print(program: &Path) -> Result<()> {
    let program = program.canonicalize().map_err(|error| {
        Error::new(error.kind(), format!("{}: {error}; build the release first", program.display()))
    })?;
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../tests/shell/measure.mjs");
    let ran = Command::new("node").arg(script).env("HOSEWRIGHT_APP", program).status()?;
    if ran.success() { Ok(()) } else { Err(Error::other("it could not be measured")) }
}
