//! Names of segments in a storage.

use hosewright_core::record::{DeviceId, Event, Hash};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;

/// A segment by its name, `segments/<device>/<from>-<to>-<bytes>-<hash of the last event>`. It says all that is needed to
/// decide whether it is to be fetched, and whether it came up whole.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SegmentName {
    /// Whose series.
    pub device: DeviceId,
    /// Number of the first event.
    pub from: u64,
    /// Number of the last event.
    pub to: u64,
    /// Hash of the last event.
    pub last: Hash,
    /// Bytes of the whole file.
    pub bytes: u64,
}

/// A name that is none of a segment.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{text}\" is no name of a segment")]
pub struct NameError {
    /// What was given.
    pub text: String,
}

impl SegmentName {
    /// The folder that holds all of them.
    pub const FOLDER: &str = "segments";
}

impl fmt::Display for SegmentName {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { device, from, to: until, last, bytes } = self;
        write!(to, "{}/{device}/{from}-{until}-{bytes}-{last}", Self::FOLDER)
    }
}

impl FromStr for SegmentName {
    type Err = NameError;
    fn from_str(text: &str) -> Result<Self, NameError> {
        read(text).filter(|name| name.to_string() == text).ok_or_else(|| NameError { text: text.to_owned() })
    }
}

fn read(text: &str) -> Option<SegmentName> {
    let (device, file) = text.strip_prefix(SegmentName::FOLDER)?.strip_prefix('/')?.split_once('/')?;
    let mut parts = file.splitn(4, '-');
    let mut number = || parts.next()?.parse::<u64>().ok();
    let (from, to, bytes) = (number()?, number()?, number()?);
    let name =
        SegmentName { device: device.parse().ok()?, from, to, bytes, last: parts.next()?.parse().ok()? };
    (1 <= from && from <= to && to <= Event::LAST_NUMBER).then_some(name)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn names_come_back_and_nothing_else_is_one(
            device: [u8; 16], last: [u8; 32], from in 1_u64..9_000, more in 0_u64..9_000, bytes: u64, odd in ".*",
        ) {
            let (device, last) = (DeviceId::from_bytes(device), Hash::from_bytes(last));
            let name = SegmentName { device, from, to: from + more, last, bytes };
            prop_assert_eq!(name.to_string().parse(), Ok(name));
            for wrong in [format!("{name}.part"), format!("/{name}"), name.to_string().to_uppercase(), odd] {
                prop_assert!(wrong.parse::<SegmentName>().is_err(), "{}", wrong);
            }
        }
    }
}
