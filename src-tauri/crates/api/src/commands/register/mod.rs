//! `register`: machines, places, hoses and what became of them.

mod again;
mod backups;
mod copies;
mod life;
mod list;
mod look;
mod said;
mod write;

pub use again::Again;
pub use backups::{
    Backup, Backups, RestoreQuestion, backup, backups, keep_backup, keep_backup_when_due, restore,
};
pub use copies::{Merged, RefusedSeries, Verified, export_bundle, merge, rebuild, verify};
pub(in crate::commands) use life::record as record_of_life;
pub use life::{
    Group, Lives, LivesBy, LivesOf, LivesPaper, LivesQuestion, Load, PlaceLives, life, paper as life_paper,
};
pub use list::{
    Export, ExportKind, Import, Imported, ListMatchQuestion, ListMatches, RowIs, RowRefused, RowTold, export,
    import, matches,
};
pub use look::{
    Hits, HoseClock, HoseClocks, HoseShown, MachineQuestion, MachineSaid, Named, Overview, PlaceQuestion,
    PlaceSaid, Search, ShowQuestion, machine, named, overview, place, search, show,
};
pub use write::{Id, Record, RecordEvent, Recorded, id, record};

pub(super) use again::again;

use crate::{Api, ApiError};
use hosewright_store::Register;
use std::path::Path;

impl Api {
    /// The register that is open.
    pub(super) fn register(&mut self) -> Result<&mut Register, ApiError> {
        self.register.as_mut().ok_or_else(|| ApiError::file("db", "no register is open; name its file"))
    }

    /// Where the register is, be it open or not.
    fn register_path(&self) -> Result<&Path, ApiError> {
        self.register_path
            .as_deref()
            .ok_or_else(|| ApiError::file("db", "no register is open; name its file"))
    }
}
