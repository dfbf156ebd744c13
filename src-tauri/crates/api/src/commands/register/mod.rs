//! `register`: machines, places, hoses and what became of them.

mod again;
mod copies;
mod life;
mod list;
mod look;
mod write;

pub use again::Again;
pub use copies::{Merged, RefusedSeries, Verified, backup, export_bundle, merge, rebuild, restore, verify};
pub(in crate::commands) use life::record as record_of_life;
pub use life::{
    Group, Lives, LivesBy, LivesOf, LivesPaper, LivesQuestion, Load, PlaceLives, life, paper as life_paper,
};
pub use list::{
    Export, ExportKind, Import, Imported, ListMatchQuestion, ListMatches, RowIs, RowRefused, RowTold, export,
    import, matches,
};
pub use look::{
    Hits, HoseClock, HoseClocks, HoseShown, MachineQuestion, Named, Overview, PlaceQuestion, PlaceSaid,
    Search, ShowQuestion, machine, named, overview, place, search, show,
};
pub use write::{Id, Record, RecordEvent, Recorded, id, record};

pub(super) use again::again;

use crate::{Api, ApiError};
use hosewright_store::{Error, Register};

impl From<Error> for ApiError {
    fn from(error: Error) -> Self {
        match error {
            Error::NotKnown { .. } => ApiError::nothing("", error),
            Error::NotARegister { .. }
            | Error::NewerSchema { .. }
            | Error::Locked
            | Error::DiskFull
            | Error::ReadOnly
            | Error::CannotOpen { .. }
            | Error::Keys { .. }
            | Error::Damaged
            | Error::Exists { .. }
            | Error::BackupDamaged { .. }
            | Error::DeviceKnown { .. }
            | Error::Row(_)
            | Error::Database(_) => ApiError::file("", error),
            _ => ApiError::input("", error),
        }
    }
}

impl Api {
    /// The register that is open.
    pub(super) fn register(&mut self) -> Result<&mut Register, ApiError> {
        self.register.as_mut().ok_or_else(|| ApiError::file("db", "no register is open; name its file"))
    }
}
