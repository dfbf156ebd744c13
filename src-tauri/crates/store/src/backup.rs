//! Copies of a register, and going on from one.

use crate::open::{Access, connect, device_of};
use crate::{Error, Register, log, photos};
use hosewright_core::record::DeviceId;
use rusqlite::Connection;
use rusqlite::backup::Backup;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

/// Pages copied at a time.
const PAGES: std::ffi::c_int = 1024;

impl Register {
    /// Copies the register to that path while it stays in use, with the photos that are here inside the one file. A
    /// backup that is there already is replaced once the new one is whole; any other file is not.
    ///
    /// # Errors
    /// The path is this register or some other file, the disk is full, or nothing can be written there.
    pub fn backup(&self, to: impl AsRef<Path>) -> Result<(), Error> {
        self.copied(to.as_ref(), |part| photos::pack(self, part))
    }

    /// Copies it, and lets `complete` add to the copy before it gets its name.
    fn copied(&self, to: &Path, complete: impl FnOnce(&Path) -> Result<(), Error>) -> Result<(), Error> {
        if to.exists() {
            let same = |path: &Path| fs::canonicalize(path).ok();
            if same(to) == same(&self.path) {
                return Err(Error::Exists { path: to.to_owned() });
            }
            connect(to, Access::Read)?;
        }
        let part = part_of(to);
        copy(&self.db, &part)?;
        if let Err(error) = complete(&part) {
            remove(&part);
            return Err(error);
        }
        put_in_place(&part, to)
    }
}

/// Begins a register at `to` from a backup and goes on as a new device, so that no number is ever
/// used twice. The backup is left as it is; the photos in it are taken over by [`restore_photos`](crate::restore_photos).
///
/// # Errors
/// `to` is there already; the backup is no register, is a newer program's, or does not verify; the
/// new device has written in it before.
pub fn restore(
    backup: impl AsRef<Path>,
    to: impl AsRef<Path>,
    new_device: DeviceId,
) -> Result<Register, Error> {
    let (backup, to) = (backup.as_ref(), to.as_ref());
    if to.exists() {
        return Err(Error::Exists { path: to.to_owned() });
    }
    no_log_beside(to)?;
    let part = part_of(to);
    copy(&connect(backup, Access::Read)?, &part)?;
    let checked = go_on_as(&part, new_device);
    if let Err(error) = checked {
        remove(&part);
        return Err(match error {
            Error::BackupDamaged { faults, .. } => Error::BackupDamaged { path: backup.to_owned(), faults },
            other => other,
        });
    }
    crate::keys::set_aside(to)?;
    put_in_place(&part, to)?;
    Register::open(to, new_device)
}

/// Puts a restored register in the place of the one at `path`, of which a copy stays at `aside`. Whenever it is cut short,
/// one of the two stands at `path`, whole. `open` is the one at `path` where it can be opened, and is closed.
///
/// # Errors
/// No room for the copy, or another program has the register open: it stays as it is.
pub fn replace(restored: &Path, open: Option<Register>, path: &Path, aside: &Path) -> Result<(), Error> {
    match open {
        Some(register) => {
            // Its photos stay where they are, and are those of the restored one.
            register.copied(aside, |_| Ok(()))?;
            // The last connection takes its log with it; a log that is left says that another program has it open.
            register.db.close().map_err(|(_, error)| error)?;
        }
        None => set_aside(path, aside)?,
    }
    put_in_place(restored, path)
}

/// Sets a file aside that can not be opened, with the log that belongs to it, byte by byte.
fn set_aside(path: &Path, aside: &Path) -> Result<(), Error> {
    for ending in ["", "-wal"] {
        let [from, to] = [path, aside].map(|file| ended(file, ending));
        let copied = fs::copy(&from, &to).and_then(|_| fs::File::open(&to)?.sync_all());
        match copied {
            Err(error) if error.kind() != std::io::ErrorKind::NotFound => {
                return Err(Error::CannotOpen { path: to, source: error });
            }
            _ => {}
        }
    }
    for ending in ["-wal", "-shm"] {
        remove(&ended(path, ending));
    }
    Ok(())
}

/// Verifies the copy and makes the new device its writer.
fn go_on_as(part: &Path, new_device: DeviceId) -> Result<(), Error> {
    let mut register = Register::open(part, new_device)?;
    let verified = register.verify()?;
    if !verified.faults.is_empty() {
        return Err(Error::BackupDamaged { path: part.to_owned(), faults: verified.faults.len() });
    }
    let known = device_of(&register.db)? == new_device || log::end(&register.db, new_device)?.number > 0;
    if known {
        return Err(Error::DeviceKnown { device: new_device });
    }
    photos::unpacked(&register.db)?;
    register.db.execute("UPDATE register SET device = ?1", [new_device.to_string()])?;
    if register.membership()?.founder().is_some() {
        // What waited counted on its own device alone, which this one is no more.
        register.rebuild()?;
    }
    one_file(&register.db)
}

pub(crate) fn copy(from: &Connection, part: &Path) -> Result<(), Error> {
    remove(part);
    let mut to = Connection::open(part).map_err(|error| Error::CannotOpen {
        path: part.to_owned(),
        source: std::io::Error::other(error.to_string()),
    })?;
    let copied = Backup::new(from, &mut to)
        .and_then(|backup| backup.run_to_completion(PAGES, Duration::from_millis(5), None))
        .map_err(Error::from)
        .and_then(|()| one_file(&to));
    if copied.is_err() {
        drop(to);
        remove(part);
    }
    copied
}

/// Leaves nothing of a register beside its one file.
fn one_file(db: &Connection) -> Result<(), Error> {
    Ok(db.pragma_update(None, "journal_mode", "DELETE")?)
}

fn no_log_beside(path: &Path) -> Result<(), Error> {
    let log = ended(path, "-wal");
    match fs::metadata(&log) {
        Ok(there) if there.len() > 0 => Err(Error::LogLeft { path: log }),
        _ => Ok(()),
    }
}

/// The path with a point and a word after it.
pub(crate) fn beside(path: &Path, name: &str) -> PathBuf {
    ended(path, &format!(".{name}"))
}

fn ended(path: &Path, ending: &str) -> PathBuf {
    let mut file = path.as_os_str().to_owned();
    file.push(ending);
    PathBuf::from(file)
}

/// Where a copy grows until it is whole: beside its place, so that the last step is a rename.
fn part_of(path: &Path) -> PathBuf {
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(".part");
    path.with_file_name(name)
}

/// Gives a whole copy its name. A log left beside that name by another register is none of this copy's: SQLite would
/// read it into the copy, so it has to be put away first by whoever knows what it holds.
pub(crate) fn put_in_place(part: &Path, to: &Path) -> Result<(), Error> {
    no_log_beside(to)?;
    let cannot = |source| Error::CannotOpen { path: to.to_owned(), source };
    fs::File::open(part).and_then(|file| file.sync_all()).map_err(cannot)?;
    fs::rename(part, to).map_err(cannot)?;
    // The new name itself is on the disk once its folder is; only unix lets a folder be synced.
    #[cfg(unix)]
    if let Some(folder) = to.parent().filter(|folder| !folder.as_os_str().is_empty()) {
        fs::File::open(folder).and_then(|folder| folder.sync_all()).map_err(cannot)?;
    }
    Ok(())
}

pub(crate) fn remove(part: &Path) {
    // A part that is not there needs no removing; one that can not be removed fails the copy.
    let _ = fs::remove_file(part);
}
