//! Files and folders beside the register that their owner alone may read, where a system has owners of files.

use crate::backup::beside;
use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::path::Path;

/// Puts a new file in the place of the old one, whole or not at all.
pub(crate) fn replace(path: &Path, text: &[u8]) -> io::Result<()> {
    let part = beside(path, "part");
    // One that was left by an attempt that was cut short would be in the way.
    match fs::remove_file(&part) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(error),
        _ => {}
    }
    let mut file = begin(&part)?;
    file.write_all(text)?;
    file.sync_all()?;
    fs::rename(&part, path)?;
    sync_folder_of(path)
}

/// A folder that nobody but its owner may look into; one that is there stays as it is.
pub(crate) fn folder(path: &Path) -> io::Result<()> {
    if path.is_dir() {
        return Ok(());
    }
    match new_folder(path) {
        Err(error) if error.kind() != io::ErrorKind::AlreadyExists => Err(error),
        _ => sync_folder_of(path),
    }
}

#[cfg(unix)]
fn new_folder(path: &Path) -> io::Result<()> {
    use std::os::unix::fs::DirBuilderExt;
    fs::DirBuilder::new().mode(0o700).create(path)
}

#[cfg(not(unix))]
fn new_folder(path: &Path) -> io::Result<()> {
    fs::create_dir(path)
}

/// A new name is on the disk once its folder is; only unix lets a folder be synced.
#[cfg(unix)]
fn sync_folder_of(path: &Path) -> io::Result<()> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
    File::open(folder.unwrap_or(Path::new(".")))?.sync_all()
}

#[cfg(not(unix))]
fn sync_folder_of(_: &Path) -> io::Result<()> {
    Ok(())
}

/// A new file that nobody but its owner may read from its first byte on.
#[cfg(unix)]
fn begin(path: &Path) -> io::Result<File> {
    use std::os::unix::fs::OpenOptionsExt;
    OpenOptions::new().write(true).create_new(true).mode(0o600).open(path)
}

#[cfg(not(unix))]
fn begin(path: &Path) -> io::Result<File> {
    OpenOptions::new().write(true).create_new(true).open(path)
}
