//! Who made a tag: the key of a fleet, which its members share, and the key pair of a device.
//!
//! Secret bytes go in and out in one place each ([`FleetKey::bytes`], [`DeviceKey::bytes`]); none of the types that
//! hold them can be written as JSON or shown.

mod device;
mod hand_on;
mod key;
mod storage;

pub use device::{DeviceKey, DevicePublic, PublicError};
pub(crate) use hand_on::repeated;
pub use hand_on::{FleetError, HandedOn, hand_on, is_one, read, until};
pub use key::{FleetKey, FleetMark, MarkError, secret};
pub use storage::StorageAccess;
