//! A fleet's seal on a tag: its members know their own, and see when one was altered.
//!
//! The seal is HMAC-SHA-256 (RFC 2104) with the fleet's key over all lines above it, without the last line feed,
//! cut to its first 80 bits. A forger who can only try tags on members' devices is right once in 2^80 tries.

use super::base32;
use crate::fleet::{FleetKey, FleetMark};
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// The line of a tag that holds its seal begins so.
pub(super) const KEY: &str = "SEAL ";

/// A seal as it stands on a tag: `7KQ4M 0123456789ABCDEF`, the fleet's mark and sixteen characters.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, JsonSchema, TS)]
#[schemars(with = "String")]
#[ts(as = "String")]
pub struct TagSeal {
    fleet: FleetMark,
    code: [u8; 10],
}

/// The text is no seal.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{text}\" is no seal; a fleet's mark and sixteen letters and digits are expected")]
pub struct SealError {
    /// What was given.
    pub text: String,
}

impl TagSeal {
    /// The fleet whose seal it claims to be.
    pub fn fleet(&self) -> FleetMark {
        self.fleet
    }

    fn fits(&self, lines: &str, key: &FleetKey) -> bool {
        key.begins(lines.as_bytes(), &self.code)
    }

    /// The seal of that key over these lines.
    pub(super) fn of(key: &FleetKey, lines: &str) -> Self {
        let whole = key.code(lines.as_bytes());
        Self { fleet: key.mark(), code: std::array::from_fn(|at| whole[at]) }
    }
}

/// Whether a tag's text carries the seal of that key over its own lines, under the mark of that key. Space around the
/// whole and line ends of any kind are forgiven, as when it is read.
pub fn is_sealed_by(text: &str, key: &FleetKey) -> bool {
    parts(text).is_some_and(|(above, seal)| seal.fleet == key.mark() && seal.fits(&above, key))
}

/// Whether the seal is that key's, whatever mark stands before it.
pub(super) fn is_made_by(text: &str, key: &FleetKey) -> bool {
    parts(text).is_some_and(|(above, seal)| seal.fits(&above, key))
}

/// The lines that a seal is set on, and the seal.
fn parts(text: &str) -> Option<(String, TagSeal)> {
    let lines: Vec<&str> = super::read::lines(text);
    let at = lines.iter().position(|line| line.starts_with(KEY))?;
    Some((lines[..at].join("\n"), lines[at][KEY.len()..].parse().ok()?))
}

impl fmt::Display for TagSeal {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{} {}", self.fleet, base32::write(&self.code))
    }
}

impl FromStr for TagSeal {
    type Err = SealError;
    fn from_str(text: &str) -> Result<Self, SealError> {
        let read = || {
            let (fleet, code) = text.split_once(' ')?;
            Some(Self { fleet: fleet.parse().ok()?, code: base32::read(code)? })
        };
        read().ok_or_else(|| SealError { text: crate::fleet::repeated(text) })
    }
}

impl Serialize for TagSeal {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for TagSeal {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        String::deserialize(from)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::super::{example, read, seal, write};
    use super::*;

    #[test]
    fn a_seal_is_the_first_eighty_bits_of_the_code_over_the_lines_above_it() {
        let key = FleetKey::from_bytes([3; 32]);
        let mut tag = example::full();
        seal(&mut tag, &key);
        let text = write(&tag);
        let (above, below) = text.split_once("\nSEAL ").expect("a seal");
        let code = key.code(above.as_bytes());
        let line = below.lines().next().expect("a line");
        assert_eq!(line, format!("{} {}", key.mark(), base32::write(&code[..10])));
        assert!(
            is_sealed_by(&text, &key)
                && is_sealed_by(&format!("\r\n{}\r\n", text.replace('\n', "\r\n")), &key)
        );
        assert!(!is_sealed_by(&text, &FleetKey::from_bytes([4; 32])));
        let other = FleetKey::from_bytes([4; 32]).mark().to_string();
        assert!(!is_sealed_by(
            &text.replacen(&format!("SEAL {}", key.mark()), &format!("SEAL {other}"), 1),
            &key
        ));
        assert_eq!(read(&text), Ok(tag));
    }
}
