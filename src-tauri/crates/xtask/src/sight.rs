//! The reader of codes beside its peers. It is an example of its own crate, so that a release build has it alone.

use std::io::{Error, Result};
use std::path::Path;
use std::process::Command;

/// Builds the comparison for release and runs it. `every`: it fails where a picture is not read by ours, or by no peer.
pub fn print(folder: Option<&Path>, every: bool) -> Result<()> {
    let build = ["run", "--quiet", "--release", "-p", "hosewright-sight", "--example", "photos", "--"];
    let ran =
        Command::new(env!("CARGO")).args(build).args(folder).args(every.then_some("--every")).status()?;
    if ran.success() { Ok(()) } else { Err(Error::other("the comparison failed, or a picture was not read")) }
}
