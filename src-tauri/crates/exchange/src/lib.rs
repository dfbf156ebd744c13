//! What several vans exchange: segments of their series, and the storage that carries them.
//!
//! A [`Segment`] is one immutable file: a run of one device's events, compressed, chained by hashes, signed, and
//! encrypted to a fleet where there is one. [`plan`] decides, from what a register has and what a storage holds, what is
//! to be fetched and what published; it is a pure function, and so is [`plan_photos`] for the photos that the events
//! name. A [`Storage`] carries the files: a folder, WebDAV, or
//! S3-compatible object storage, none of them a server of ours.

mod name;
mod payload;
mod photo;
mod plan;
mod sealed;
mod segment;
mod storage;

pub use name::{NameError, SegmentName};
pub use payload::PayloadError;
pub use photo::{PhotoPlan, open_photo, plan_photos, seal_photo};
pub use plan::{Gap, Plan, Run, plan};
pub use segment::{Segment, SegmentError};
pub use storage::{Storage, StorageError};
