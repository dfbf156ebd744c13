//! What can go wrong with a register, and the way out.

use crate::bundle::BundleError;
use hosewright_core::record::{BodyError, DeviceId, EventError, EventRef, Hash, PersonId, PlaceId};
use hosewright_core::tag::TagCode;
use rusqlite::ErrorCode;
use std::path::PathBuf;
use thiserror::Error;

/// What can go wrong with a register. Nothing is changed by a call that fails.
#[derive(Debug, Error)]
pub enum Error {
    /// Some other file.
    #[error("{path} is not a register; choose a register's own file, or a new name to begin one")]
    NotARegister {
        /// Which file.
        path: PathBuf,
    },
    /// A newer program wrote it.
    #[error(
        "{path} was written by a newer program (schema {found}, this program knows {known}); it was left as it is: update this program"
    )]
    NewerSchema {
        /// Which file.
        path: PathBuf,
        /// Its schema.
        found: i64,
        /// The newest this program knows.
        known: i64,
    },
    /// Another program is writing and did not finish in time.
    #[error("another program is using the register; close it or wait for it to finish, and try again")]
    Locked,
    /// No room.
    #[error("the disk is full and nothing was written; make room and try again")]
    DiskFull,
    /// The person stopped it.
    #[error("it was stopped, and nothing was written; begin again when it suits")]
    Stopped,
    /// The disk itself fails.
    #[error(
        "the disk fails to read or write the register; nothing more was written: take the latest backup to another device and restore it there"
    )]
    DiskFails,
    /// Not allowed to write.
    #[error("the register can not be written; check the file's and its folder's permissions")]
    ReadOnly,
    /// No such folder, no permission, or not a file.
    #[error("{path} can not be opened; check that its folder exists and may be written")]
    CannotOpen {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// The file of this device's keys can not be read or written.
    #[error(
        "the file of keys {path} can not be used ({source}); check its permissions, or take it away and join the fleet again"
    )]
    Keys {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// A photo's file can not be read or written.
    #[error("the photo {path} can not be read or written ({source}); check its folder's permissions")]
    Photo {
        /// Which file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// A photo's bytes are not here.
    #[error("the picture has not come yet: it comes with the next exchange after the device that took it")]
    PhotoMissing {
        /// Which.
        sha256: Hash,
    },
    /// A photo's bytes are not what they were.
    #[error(
        "the picture's file is damaged on this device and is not shown; the next exchange fetches it again where the storage has it"
    )]
    PhotoDamaged {
        /// Which.
        sha256: Hash,
    },
    /// The file is broken.
    #[error(
        "the register's file is damaged and was left as it is; restore the latest backup: in its place on the screens (Van, Backup), under a new name on the command line"
    )]
    Damaged,
    /// A file would be overwritten.
    #[error("{path} is there already and is not overwritten; give a new name")]
    Exists {
        /// Which file.
        path: PathBuf,
    },
    /// What another register had not yet taken into its file.
    #[error(
        "{path} holds records of a register that was here before or is in use; close whatever uses it and move the file away, or give a new name"
    )]
    LogLeft {
        /// The log of that register.
        path: PathBuf,
    },
    /// A backup that does not verify.
    #[error(
        "the backup {path} does not verify ({faults} faults); it was left as it is: restore an older one"
    )]
    BackupDamaged {
        /// Which file.
        path: PathBuf,
        /// How many faults.
        faults: usize,
    },
    /// A restored register must go on under an id that nobody has used.
    #[error("device {device} has written in this register before; give a new id")]
    DeviceKnown {
        /// Which.
        device: DeviceId,
    },
    /// An event names something the register does not have.
    #[error("the register has no {what} {id}; record it first")]
    NotKnown {
        /// What it is.
        what: &'static str,
        /// Which.
        id: String,
    },
    /// A tag's code was given to a hose before.
    #[error("tag {code} is taken; make a new code, or correct the hose that has it")]
    CodeTaken {
        /// Which.
        code: TagCode,
    },
    /// The hose sits somewhere.
    #[error("hose {code} is fitted at place {place}; record it as taken off there first")]
    AlreadyFitted {
        /// Which hose.
        code: TagCode,
        /// Where it sits.
        place: PlaceId,
    },
    /// Another hose sits there.
    #[error("hose {code} is fitted at place {place}; record it as taken off first")]
    Occupied {
        /// The place.
        place: PlaceId,
        /// What sits there.
        code: TagCode,
    },
    /// The hose does not sit there.
    #[error("hose {code} is not fitted at place {place}; record it as found there first")]
    NotFittedThere {
        /// Which hose.
        code: TagCode,
        /// The place named.
        place: PlaceId,
    },
    /// Taken off before it was fitted.
    #[error("hose {code} can not be taken off before it was fitted; correct one of the dates")]
    OffBeforeOn {
        /// Which hose.
        code: TagCode,
    },
    /// The assembly is scrap.
    #[error("hose {code} failed its proof: it is scrap and is never fitted; make it anew")]
    ProofFailed {
        /// Which.
        code: TagCode,
    },
    /// The tag was taken out of use.
    #[error("tag {code} was withdrawn; give the hose a new tag")]
    Withdrawn {
        /// Which.
        code: TagCode,
    },
    /// A circuit of another machine.
    #[error("circuit {circuit} belongs to another machine; choose a circuit of the place's own machine")]
    OtherMachine {
        /// The circuit.
        circuit: String,
    },
    /// Nothing is struck out.
    #[error("name the event that is struck out")]
    NothingVoided,
    /// A public key that is not this device's.
    #[error("the key is not signed by this device for itself; a device tells no key but its own")]
    OthersKey,
    /// This device only reads.
    #[error(
        "this device is a reader in its fleet and writes nothing; a planner of the fleet can make it a technician"
    )]
    Reader,
    /// What a planner alone writes.
    #[error("only a planner of the fleet does that; have it done on a planner's device")]
    PlannersOnly,
    /// This device was withdrawn.
    #[error(
        "this device was withdrawn from its fleet: what it writes counts no more; back it up and restore the backup, which goes on as a new device, and have that admitted"
    )]
    Gone,
    /// A word on a device that stands before this one.
    #[error(
        "that device was a planner before this one, and only those before it judge it; where the founder's device is lost, begin the fleet anew"
    )]
    Senior,
    /// A word on membership where nobody is believed first.
    #[error(
        "this fleet is open: it has no founder yet whose word on its members would count; found it first"
    )]
    OpenFleet,
    /// A word on membership is never struck out.
    #[error(
        "a word on who belongs to the fleet is not struck out; give the device another role, or admit or withdraw it"
    )]
    WordStays,
    /// A word can not be signed.
    #[error("this device has no key of its own yet; begin a fleet or join one first")]
    NoKey,
    /// An event that has nothing to do with what is written.
    #[error("event {event} is about something else; build on an event about the same thing")]
    OtherTrack {
        /// The event named.
        event: EventRef,
    },
    /// An erased name is not written again.
    #[error("the name of person {person} was erased for good; enter the person anew")]
    Erased {
        /// Who.
        person: PersonId,
    },
    /// A name that says nothing.
    #[error("a person's name is blank or longer than {longest} characters")]
    Name {
        /// Longest name kept.
        longest: usize,
    },
    /// A body that can not be kept.
    #[error(transparent)]
    Body(#[from] BodyError),
    /// A line that is no event.
    #[error(transparent)]
    Event(#[from] EventError),
    /// A file that is no bundle.
    #[error(transparent)]
    Bundle(#[from] BundleError),
    /// A projected row that can not be read.
    #[error("a table of the register can not be read ({0}); rebuild it from its log")]
    Row(#[from] serde_json::Error),
    /// Anything else SQLite says.
    #[error("the register's database: {0}")]
    Database(#[source] rusqlite::Error),
}

impl From<rusqlite::Error> for Error {
    fn from(error: rusqlite::Error) -> Self {
        match error.sqlite_error_code() {
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Error::Locked,
            Some(ErrorCode::DiskFull) => Error::DiskFull,
            Some(ErrorCode::SystemIoFailure) => Error::DiskFails,
            // SQLite can not make its log in a folder that may not be written.
            Some(ErrorCode::ReadOnly | ErrorCode::PermissionDenied | ErrorCode::CannotOpen) => {
                Error::ReadOnly
            }
            Some(ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase) => Error::Damaged,
            _ => Error::Database(error),
        }
    }
}
