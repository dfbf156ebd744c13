//! What can go wrong with a register, as every way in says it.

use crate::ApiError;
use crate::error::Said;
use hosewright_store::Error;

impl From<Error> for ApiError {
    fn from(error: Error) -> Self {
        let words = said(&error);
        let plain = match error {
            Error::NotKnown { .. } | Error::PhotoMissing { .. } => ApiError::nothing("", error),
            Error::NotARegister { .. }
            | Error::NewerSchema { .. }
            | Error::Locked
            | Error::DiskFull
            | Error::DiskFails
            | Error::ReadOnly
            | Error::CannotOpen { .. }
            | Error::Keys { .. }
            | Error::Photo { .. }
            | Error::PhotoDamaged { .. }
            | Error::Damaged
            | Error::Exists { .. }
            | Error::LogLeft { .. }
            | Error::BackupDamaged { .. }
            | Error::DeviceKnown { .. }
            | Error::Row(_)
            | Error::Database(_) => ApiError::file("", error),
            _ => ApiError::input("", error),
        };
        ApiError { words, ..plain }
    }
}

/// The words of what a file, a disk or another program does to a register, and of what this device may not write.
fn said(error: &Error) -> Option<Said> {
    let (id, values) = match error {
        Error::NotARegister { path } => ("register-is-none", vec![("path", path.display().to_string())]),
        Error::NewerSchema { path, found, known } => (
            "register-is-newer",
            vec![
                ("path", path.display().to_string()),
                ("found", found.to_string()),
                ("known", known.to_string()),
            ],
        ),
        Error::Locked => ("register-is-in-use", vec![]),
        Error::DiskFull => ("register-disk-full", vec![]),
        Error::DiskFails => ("register-disk-fails", vec![]),
        Error::ReadOnly => ("register-read-only", vec![]),
        Error::CannotOpen { path, .. } => {
            ("register-can-not-open", vec![("path", path.display().to_string())])
        }
        Error::Keys { path, source } => (
            "register-keys-unusable",
            vec![("path", path.display().to_string()), ("cause", source.to_string())],
        ),
        Error::Photo { path, source } => {
            ("photo-unusable", vec![("path", path.display().to_string()), ("cause", source.to_string())])
        }
        Error::PhotoMissing { .. } => ("photo-not-here", vec![]),
        Error::PhotoDamaged { .. } => ("photo-damaged", vec![]),
        Error::Damaged => ("register-damaged", vec![]),
        Error::Exists { path } => ("register-exists", vec![("path", path.display().to_string())]),
        Error::LogLeft { path } => ("register-log-left", vec![("path", path.display().to_string())]),
        Error::BackupDamaged { path, faults } => (
            "register-backup-damaged",
            vec![("path", path.display().to_string()), ("faults", faults.to_string())],
        ),
        Error::Reader => ("register-reader", vec![]),
        Error::PlannersOnly => ("register-planners-only", vec![]),
        Error::Gone => ("register-device-gone", vec![]),
        Error::Senior => ("register-senior", vec![]),
        Error::OpenFleet => ("register-open-fleet", vec![]),
        Error::WordStays => ("register-word-stays", vec![]),
        _ => return None,
    };
    Some(Said { id, values })
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;
    use hosewright_core::record::Hash;
    use hosewright_words::{Language, Words};
    use std::io;
    use std::path::PathBuf;

    #[test]
    fn every_fault_of_a_file_and_every_refusal_of_a_member_is_said_in_every_language_and_in_english_as_the_store_says_it()
     {
        let path = || PathBuf::from("/van/fleet.db");
        let faults = [
            Error::NotARegister { path: path() },
            Error::NewerSchema { path: path(), found: 9, known: 4 },
            Error::Locked,
            Error::DiskFull,
            Error::DiskFails,
            Error::ReadOnly,
            Error::CannotOpen { path: path(), source: io::ErrorKind::NotFound.into() },
            Error::Keys { path: path(), source: io::ErrorKind::PermissionDenied.into() },
            Error::Photo { path: path(), source: io::ErrorKind::PermissionDenied.into() },
            Error::PhotoMissing { sha256: Hash::from_bytes([1; 32]) },
            Error::PhotoDamaged { sha256: Hash::from_bytes([1; 32]) },
            Error::Damaged,
            Error::Exists { path: path() },
            Error::LogLeft { path: path() },
            Error::BackupDamaged { path: path(), faults: 3 },
            Error::Reader,
            Error::PlannersOnly,
            Error::Gone,
            Error::Senior,
            Error::OpenFleet,
            Error::WordStays,
        ];
        for fault in faults {
            let plain = fault.to_string();
            let error = ApiError::from(fault);
            let in_words = |language| error.clone().in_words(&Words::of(language)).message;
            assert_eq!(in_words(Language::English), plain);
            for language in [Language::German, Language::Spanish] {
                assert!(
                    in_words(language) != plain
                        && !in_words(language).starts_with("register-")
                        && !in_words(language).starts_with("photo-"),
                    "{plain}"
                );
            }
        }
    }
}
