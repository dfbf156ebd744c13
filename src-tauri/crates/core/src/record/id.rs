//! Names of things that no two devices give alike: 128 random bits that the caller passes in, and
//! the hash of an event or of a photo.

use super::hex::{self, HexError};
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use sha2::{Digest, Sha256};
use std::fmt;
use std::str::FromStr;
use ts_rs::TS;

/// Gives a type of fixed bytes its writing as hexadecimal digits.
macro_rules! bytes {
    ($(#[$doc:meta])* $name:ident, $length:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, TS)]
        #[ts(as = "String")]
        pub struct $name([u8; $length]);

        impl $name {
            /// From bytes; for an id they are random and made by the caller.
            pub const fn from_bytes(bytes: [u8; $length]) -> Self {
                Self(bytes)
            }

            /// The bytes.
            pub const fn bytes(self) -> [u8; $length] {
                self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
                to.write_str(&hex::write(&self.0))
            }
        }

        impl fmt::Debug for $name {
            fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(to, "{}({self})", stringify!($name))
            }
        }

        impl FromStr for $name {
            type Err = HexError;
            fn from_str(text: &str) -> Result<Self, HexError> {
                hex::read(stringify!($name), text).map(Self)
            }
        }

        text!($name, concat!("Hexadecimal digits of ", $length, " bytes."));
    };
}

/// Gives a type with `Display` and `FromStr` its JSON: a string.
macro_rules! text {
    ($name:ident, $($description:tt)*) => {
        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
                to.collect_str(self)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                let text = std::borrow::Cow::<'de, str>::deserialize(from)?;
                text.parse().map_err(serde::de::Error::custom)
            }
        }

        impl JsonSchema for $name {
            fn schema_name() -> std::borrow::Cow<'static, str> {
                stringify!($name).into()
            }
            fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
                schemars::json_schema!({"type": "string", "description": $($description)*})
            }
        }
    };
}
pub(super) use text;

bytes!(
    /// A device that writes: one register file on one phone or desk computer.
    DeviceId, 16
);
bytes!(
    /// A site: yard, quarry, forest block.
    SiteId, 16
);
bytes!(
    /// A machine.
    MachineId, 16
);
bytes!(
    /// A circuit of a machine, with one relief setting.
    CircuitId, 16
);
bytes!(
    /// A place on a machine where a hose sits.
    PlaceId, 16
);
bytes!(
    /// A person, whose name stands beside the log and can be erased.
    PersonId, 16
);
bytes!(
    /// A job: one visit's work on one hose, from finding to fitting.
    JobId, 16
);
bytes!(
    /// A piece of hose on a van or shelf.
    PieceId, 16
);
bytes!(
    /// A SHA-256 (FIPS 180-4): of an event or of a photo's bytes.
    Hash, 32
);

impl Hash {
    /// What the first event of a series names as the one before it.
    pub const NONE: Hash = Hash([0; 32]);

    /// SHA-256 (FIPS 180-4) of those bytes.
    pub fn of(bytes: impl AsRef<[u8]>) -> Self {
        Hash(Sha256::digest(bytes).into())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_are_written_as_digits_in_json_too() {
        let id = MachineId::from_bytes([0xab; 16]);
        assert_eq!(id.to_string(), "ab".repeat(16));
        let json = serde_json::to_string(&id).expect("writes");
        assert_eq!(serde_json::from_str::<MachineId>(&json).expect("reads"), id);
    }
}
