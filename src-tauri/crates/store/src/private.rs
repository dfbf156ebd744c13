//! Files and folders beside the register that their owner alone may read, where a system has owners of files.

use crate::backup::beside;
use std::fs::{self, DirBuilder, File, OpenOptions};
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
    let mut new = DirBuilder::new();
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut new, 0o700);
    match new.create(path) {
        Err(error) if error.kind() != io::ErrorKind::AlreadyExists => Err(error),
        _ => sync_folder_of(path),
    }
}

/// A new name is on the disk once its folder is; only unix lets a folder be synced.
fn sync_folder_of(path: &Path) -> io::Result<()> {
    #[cfg(unix)]
    File::open(path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new(".")))?
        .sync_all()?;
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
