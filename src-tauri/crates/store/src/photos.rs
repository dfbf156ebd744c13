//! The bytes of photos, beside the register in the folder `REGISTER.photos`, each in a file named by its SHA-256. The
//! log names them by that hash; what nothing names does no harm, and what is named and not here may come later.

use crate::backup::{beside, remove};
use crate::open::{Access, connect};
use crate::{Error, Register, private, rows};
use chrono::{DateTime, Utc};
use hosewright_core::record::{About, EventRef, Hash};
use rusqlite::{Connection, OptionalExtension, params};
use schemars::JsonSchema;
use serde::Serialize;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};
use ts_rs::TS;

/// A photo as it stands on record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PhotoKept {
    /// The events that name it there: more than one where two devices added the same. To take it back is to strike out
    /// all of them.
    pub versions: Vec<EventRef>,
    /// Of what.
    pub about: About,
    /// Hash of its bytes.
    pub sha256: Hash,
    /// Length in bytes.
    #[ts(type = "number")]
    pub length: u64,
    /// When it was added, by the clock of the device that did.
    pub time: DateTime<Utc>,
    /// The name of that device, where it has one.
    pub by: Option<String>,
    /// Whether its bytes are here.
    pub state: PhotoState,
}

/// Whether the bytes of a photo are here.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum PhotoState {
    /// They are.
    Here,
    /// They have not come yet.
    Missing,
    /// They are not what they were, and are never shown.
    Damaged,
}

/// The folder of photos of the register at that path.
pub fn photos_of(register: &Path) -> PathBuf {
    beside(register, "photos")
}

/// Takes the photos that a backup carries into the folder beside the register at that path. One that is not what its
/// name says is left out: it counts as one that has not come.
///
/// # Errors
/// The backup is no register, or there is no room.
pub fn restore_photos(backup: &Path, register: &Path) -> Result<(), Error> {
    let db = connect(backup, Access::Read)?;
    if !carries(&db)? {
        return Ok(());
    }
    let mut statement = db.prepare("SELECT sha256, bytes FROM photo_bytes")?;
    let mut packed = statement.query([])?;
    while let Some(row) = packed.next()? {
        let (hash, bytes): (Hash, Vec<u8>) = (rows::parsed(row, "sha256")?, row.get("bytes")?);
        if Hash::of(&bytes) == hash {
            keep(&photos_of(register), hash, &bytes)?;
        }
    }
    Ok(())
}

/// Puts the photos that are here into a copy of the register, so that the one file carries all.
pub(crate) fn pack(register: &Register, copy: &Path) -> Result<(), Error> {
    let here = register.photos_here()?;
    if here.is_empty() {
        return Ok(());
    }
    let mut db = Connection::open(copy)?;
    let tx = db.transaction()?;
    tx.execute_batch("CREATE TABLE photo_bytes (sha256 TEXT NOT NULL, bytes BLOB NOT NULL) STRICT")?;
    for hash in here {
        match register.photo(hash) {
            Ok(bytes) => {
                tx.prepare_cached("INSERT INTO photo_bytes (sha256, bytes) VALUES (?1, ?2)")?
                    .execute(params![hash.to_string(), bytes])?;
            }
            // What is broken here is not carried on; the storage may have it whole.
            Err(Error::PhotoDamaged { .. } | Error::PhotoMissing { .. }) => {}
            Err(other) => return Err(other),
        }
    }
    Ok(tx.commit()?)
}

/// Takes what a backup carried out of the register made from it: its place is the folder.
pub(crate) fn unpacked(db: &Connection) -> Result<(), Error> {
    if carries(db)? {
        db.execute_batch("DROP TABLE photo_bytes; VACUUM")?;
    }
    Ok(())
}

fn carries(db: &Connection) -> Result<bool, Error> {
    Ok(db.prepare("SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = 'photo_bytes'")?.exists([])?)
}

/// Writes a photo into a folder, whole or not at all.
fn keep(folder: &Path, hash: Hash, bytes: &[u8]) -> Result<(), Error> {
    let path = folder.join(hash.to_string());
    if fs::read(&path).is_ok_and(|had| had == bytes) {
        return Ok(());
    }
    private::folder(folder)
        .and_then(|()| private::replace(&path, bytes))
        .map_err(|source| cannot(&path, source))?;
    remove(&damaged(&path));
    Ok(())
}

/// Where a photo that is not what it was is set aside, so that it can come anew.
fn damaged(path: &Path) -> PathBuf {
    beside(path, "damaged")
}

fn cannot(path: &Path, source: io::Error) -> Error {
    if source.kind() == ErrorKind::StorageFull {
        return Error::DiskFull;
    }
    Error::Photo { path: path.to_owned(), source }
}

impl Register {
    /// The photos on record, the newest first: of one thing, or all.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn photos(&self, about: Option<&About>) -> Result<Vec<PhotoKept>, Error> {
        let mut statement = self.db.prepare_cached(include_str!("query/photos.sql"))?;
        let about = about.map(ToString::to_string);
        let listed = statement.query_map([about], |row| {
            let (hash, length) = (rows::parsed(row, "sha256")?, rows::unsigned(row, "length")?);
            Ok(PhotoKept {
                versions: rows::json(row, "versions")?,
                about: rows::json(row, "about")?,
                sha256: hash,
                length,
                time: DateTime::from_timestamp_millis(row.get("ms")?).unwrap_or_default(),
                by: row.get("name")?,
                state: self.state(hash, length),
            })
        })?;
        Ok(listed.collect::<Result<_, _>>()?)
    }

    /// The photos that the register names, each with its length in bytes.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn photos_named(&self) -> Result<BTreeMap<Hash, u64>, Error> {
        let mut statement =
            self.db.prepare_cached("SELECT sha256, max(length) AS length FROM photo GROUP BY sha256")?;
        let named = statement
            .query_map([], |row| Ok((rows::parsed(row, "sha256")?, rows::unsigned(row, "length")?)))?;
        Ok(named.collect::<Result<_, _>>()?)
    }

    /// Those of them whose bytes are here.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn photos_here(&self) -> Result<BTreeSet<Hash>, Error> {
        let named = self.photos_named()?.into_iter();
        let here = named.filter(|(hash, length)| self.state(*hash, *length) == PhotoState::Here);
        Ok(here.map(|(hash, _)| hash).collect())
    }

    /// The bytes of a photo, which are those that its hash names.
    ///
    /// # Errors
    /// [`Error::PhotoMissing`] where they have not come; [`Error::PhotoDamaged`] where they are not what they were: these
    /// are set aside, and count as not here from then on.
    pub fn photo(&self, hash: Hash) -> Result<Vec<u8>, Error> {
        let path = self.photo_path(hash);
        let bytes = match fs::read(&path) {
            Ok(bytes) => bytes,
            Err(missing) if missing.kind() == ErrorKind::NotFound => {
                return Err(match damaged(&path).exists() {
                    true => Error::PhotoDamaged { sha256: hash },
                    false => Error::PhotoMissing { sha256: hash },
                });
            }
            Err(other) => return Err(cannot(&path, other)),
        };
        if Hash::of(&bytes) == hash {
            return Ok(bytes);
        }
        // Where it can not be moved it is found broken again.
        let _ = fs::rename(&path, damaged(&path));
        Err(Error::PhotoDamaged { sha256: hash })
    }

    /// Keeps the bytes of a photo and gives the hash that names them. When it returns they are on the disk.
    ///
    /// # Errors
    /// There is no room, or the folder can not be written.
    pub fn keep_photo(&self, bytes: &[u8]) -> Result<Hash, Error> {
        let hash = Hash::of(bytes);
        keep(&photos_of(self.path()), hash, bytes)?;
        Ok(hash)
    }

    /// Leaves the photos that are here in a folder, for another device; none is made where there are none.
    ///
    /// # Errors
    /// The register can not be read, or there is no room.
    pub fn give_photos(&self, folder: &Path) -> Result<(), Error> {
        for hash in self.photos_here()? {
            match self.photo(hash) {
                Ok(bytes) => keep(folder, hash, &bytes)?,
                Err(Error::PhotoDamaged { .. } | Error::PhotoMissing { .. }) => {}
                Err(other) => return Err(other),
            }
        }
        Ok(())
    }

    /// Takes the photos that are named and not here from a folder that another device left. One that is not what its
    /// name says is left there.
    ///
    /// # Errors
    /// The register can not be read, or there is no room.
    pub fn take_photos(&self, folder: &Path) -> Result<(), Error> {
        for (hash, length) in self.photos_named()? {
            let file = folder.join(hash.to_string());
            let fits = fs::metadata(&file).is_ok_and(|meta| meta.len() == length);
            if !fits || self.state(hash, length) == PhotoState::Here {
                continue;
            }
            let bytes = fs::read(&file).map_err(|source| cannot(&file, source))?;
            if Hash::of(&bytes) == hash {
                keep(&photos_of(self.path()), hash, &bytes)?;
            }
        }
        Ok(())
    }

    /// Whether the register has that photo of that thing.
    ///
    /// # Errors
    /// The register can not be read.
    pub fn has_photo(&self, about: &About, hash: Hash) -> Result<bool, Error> {
        let mut statement = self.db.prepare_cached("SELECT 1 FROM photo WHERE about = ?1 AND sha256 = ?2")?;
        Ok(statement.query_row([about.to_string(), hash.to_string()], |_| Ok(())).optional()?.is_some())
    }

    fn photo_path(&self, hash: Hash) -> PathBuf {
        photos_of(self.path()).join(hash.to_string())
    }

    /// By name and length alone: what lies there is proved when it is read.
    fn state(&self, hash: Hash, length: u64) -> PhotoState {
        let path = self.photo_path(hash);
        match fs::metadata(&path) {
            Ok(meta) if meta.len() == length => PhotoState::Here,
            Ok(_) => PhotoState::Damaged,
            Err(_) if damaged(&path).exists() => PhotoState::Damaged,
            Err(_) => PhotoState::Missing,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_core::record::{Body, DeviceId, PhotoAdded, Site, SiteId};

    fn begun() -> (tempfile::TempDir, Register, About) {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("register.db");
        let mut register = Register::open(path, DeviceId::from_bytes([1; 16])).expect("opens");
        let site = SiteId::from_bytes([2; 16]);
        let named = Body::SiteNamed(Site { site, name: "Quarry".into() });
        register.append([named], DateTime::UNIX_EPOCH).expect("is written");
        (folder, register, About::Site(site))
    }

    fn add(register: &mut Register, about: &About, bytes: &[u8]) -> Hash {
        let sha256 = register.keep_photo(bytes).expect("is kept");
        let (about, mime) = (about.clone(), "image/jpeg".to_owned());
        let added = Body::PhotoAdded(PhotoAdded { about, sha256, mime, length: bytes.len() as u64 });
        register.append([added], DateTime::UNIX_EPOCH).expect("is written");
        sha256
    }

    fn state(register: &Register) -> PhotoState {
        register.photos(None).expect("lists").pop().expect("one").state
    }

    #[test]
    fn a_photo_is_here_missing_or_damaged_and_a_damaged_one_is_never_given() {
        let (_folder, mut register, about) = begun();
        let hash = add(&mut register, &about, b"a picture");
        assert_eq!(register.photo(hash).expect("reads"), b"a picture");
        assert_eq!(state(&register), PhotoState::Here);
        let file = register.photo_path(hash);
        fs::write(&file, b"a pictura").expect("writes");
        assert!(matches!(register.photo(hash), Err(Error::PhotoDamaged { .. })));
        assert!(matches!(register.photo(hash), Err(Error::PhotoDamaged { .. })), "it stays so");
        assert_eq!(state(&register), PhotoState::Damaged);
        register.keep_photo(b"a picture").expect("it comes anew");
        assert_eq!((state(&register), register.photo(hash).is_ok()), (PhotoState::Here, true));
        fs::remove_file(&file).expect("is taken away");
        assert!(matches!(register.photo(hash), Err(Error::PhotoMissing { .. })));
        assert_eq!(state(&register), PhotoState::Missing);
    }

    #[test]
    fn bytes_that_nothing_names_are_nobodys_photo() {
        let (_folder, mut register, about) = begun();
        register.keep_photo(b"no event came of it").expect("is kept");
        assert_eq!(register.photos(None).expect("lists"), []);
        let hash = add(&mut register, &about, b"named");
        assert_eq!(register.photos_here().expect("reads"), BTreeSet::from([hash]));
    }

    #[cfg(unix)]
    #[test]
    fn nobody_else_looks_into_them() {
        use std::os::unix::fs::PermissionsExt;
        let (_folder, register, _) = begun();
        let hash = register.keep_photo(b"a picture").expect("is kept");
        let mode = |path: &Path| fs::metadata(path).expect("is there").permissions().mode() & 0o777;
        assert_eq!(mode(&photos_of(register.path())), 0o700);
        assert_eq!(mode(&register.photo_path(hash)), 0o600);
    }

    #[test]
    fn a_backup_carries_the_photos_and_a_restored_register_has_them_in_its_folder() {
        let (folder, mut register, about) = begun();
        let hash = add(&mut register, &about, b"a picture");
        let (backup, to) = (folder.path().join("copy.hosewright"), folder.path().join("new.db"));
        register.backup(&backup).expect("is copied");
        restore_photos(&backup, &to).expect("they come over");
        let restored = crate::restore(&backup, &to, DeviceId::from_bytes([3; 16])).expect("is restored");
        assert_eq!(restored.photo(hash).expect("reads"), b"a picture");
        assert!(!carries(&restored.db).expect("reads"), "the register itself holds no picture");
    }
}
