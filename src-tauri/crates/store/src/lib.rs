//! The register: one append-only log in SQLite and the tables projected from it.
//!
//! A [`Register`] is one file in which one device writes. [`Register::append`] writes events and
//! changes the tables that screens read in the same transaction; when it returns, the events are on
//! the disk (write-ahead log, `synchronous=FULL`). [`Register::merge`] takes in what other devices
//! wrote: a union, the same in any order. The tables of a thing are computed from that thing's track
//! of events alone, so [`Register::rebuild`] gives exactly the live tables.
//!
//! The crate has no clock and no randomness: times and ids come in as arguments.

mod append;
mod backup;
mod bundle;
mod derive;
mod diagnosis;
mod drafts;
mod error;
mod flat;
mod guard;
mod keys;
mod left_out;
mod log;
mod members;
mod merge;
mod open;
mod people;
mod photos;
mod private;
mod project;
mod query;
mod rebuild;
mod rotation;
mod rows;
mod scans;
mod series;
mod settings;
mod suppliers;
mod unfinished;
mod verify;

pub use append::NewEvent;
pub use backup::{replace, restore};
pub use bundle::{Bundle, BundleError, Person};
pub use diagnosis::Diagnosis;
pub use drafts::Draft;
pub use error::Error;
pub use flat::{Cell, FlatTable, Moment};
pub use keys::{FleetKept, Keys};
pub use left_out::{LeftOutOf, Unheard};
pub use merge::{Merged, Refusal, Refused};
pub use open::Register;
pub use photos::{PhotoKept, PhotoState, photos_of, restore_photos};
pub use query::{
    AgeCount, Conflict, Contradiction, Counts, Device, Due, DueAsk, DueCounts, DueHose, DueSite, Found, Hit,
    Hose, HoseFilter, HoseInspection, HoseNote, HoseOverride, HosePhoto, HoseRow, HoseSort, HoseState,
    HosesGlance, MachineRow, MachineSheet, Overdue, PieceKept, PlaceAt, PlaceDue, PlaceInspected, PlaceRow,
    PlaceSheet, Resting, Sister, SiteRow, Spell, Status, Stay, Stock, StockConflict, StockUsed, Told,
    UsedWhat, Versioned, Written,
};
pub use rotation::{BackupKept, backup_due, backup_late, backups, backups_of, keep_backup};
pub use scans::{ScanKept, ScanWay, Scanned};
pub use settings::SettingsKept;
pub use suppliers::{SupplierCounts, SupplierKept, SupplierRemoval};
pub use unfinished::{Begun, Unfinished};
pub use verify::{Fault, Problem, Verified};
