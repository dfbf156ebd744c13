//! The key that the members of a fleet share.

use crate::tag::base32;
use hmac::{Hmac, Mac};
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use sha2::{Digest, Sha256};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// 32 secret bytes out of four draws of the caller's chance, of which each holds at least 122 bits that no one can
/// foresee.
pub fn secret(draws: [[u8; 16]; 4]) -> [u8; 32] {
    Sha256::digest(draws.as_flattened()).into()
}

/// What the mark is reckoned over. No tag begins so, and what a seal is reckoned over always begins as a tag.
const MARKED: &str = "HOSE FLEET MARK";

/// A fleet's key. Whoever has it can make tags that its members take for their own.
#[derive(Clone, PartialEq, Eq)]
pub struct FleetKey([u8; 32]);

impl FleetKey {
    /// From 32 bytes that no one can foresee.
    pub const fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// The secret itself, to be kept or handed on and for nothing else.
    pub const fn bytes(&self) -> [u8; 32] {
        self.0
    }

    /// The fleet's mark, which stands in its seals.
    pub fn mark(&self) -> FleetMark {
        let whole = self.code(MARKED.as_bytes());
        FleetMark(std::array::from_fn(|at| base32::write(&whole).as_bytes()[at]))
    }

    /// A key of its own for one purpose: the first block of HKDF-Expand (RFC 5869).
    pub fn derived(&self, purpose: &str) -> [u8; 32] {
        self.code(&[purpose.as_bytes(), &[1]].concat())
    }

    /// HMAC-SHA-256 of a text by the key of that purpose.
    pub fn keyed_hash(&self, purpose: &str, text: &[u8]) -> [u8; 32] {
        Self(self.derived(purpose)).code(text)
    }

    /// HMAC-SHA-256 (RFC 2104) of a text.
    pub(crate) fn code(&self, text: &[u8]) -> [u8; 32] {
        self.mac(text).finalize().into_bytes().into()
    }

    /// Whether these are the first bytes of the text's code. It takes as long wherever the first wrong one stands.
    pub(crate) fn begins(&self, text: &[u8], code: &[u8]) -> bool {
        self.mac(text).verify_truncated_left(code).is_ok()
    }

    fn mac(&self, text: &[u8]) -> Hmac<Sha256> {
        // A key of exactly one block, filled up with zeros as RFC 2104 has it, is never refused.
        let mut block = [0; 64];
        block[..32].copy_from_slice(&self.0);
        let mut mac = <Hmac<Sha256> as Mac>::new(&block.into());
        mac.update(text);
        mac
    }
}

/// Never the secret.
impl fmt::Debug for FleetKey {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "FleetKey({})", self.mark())
    }
}

/// Five characters by which a fleet's key is told from others'. They say nothing of the key itself. Two of a million
/// fleets that meet may have the same; their seals differ all the same.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, JsonSchema, TS)]
#[schemars(with = "String")]
#[ts(as = "String")]
pub struct FleetMark([u8; 5]);

/// The text is no mark of a fleet.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{text}\" is no mark of a fleet; it has five letters and digits, such as 7KQ4M")]
pub struct MarkError {
    /// What was given.
    pub text: String,
}

impl fmt::Display for FleetMark {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|letter| write!(to, "{}", char::from(*letter)))
    }
}

impl fmt::Debug for FleetMark {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "FleetMark({self})")
    }
}

impl FromStr for FleetMark {
    type Err = MarkError;
    fn from_str(text: &str) -> Result<Self, MarkError> {
        let wrong = || MarkError { text: crate::fleet::repeated(text) };
        let letters: [u8; 5] = text.as_bytes().try_into().map_err(|_| wrong())?;
        letters.iter().all(|letter| base32::is_letter(*letter)).then_some(Self(letters)).ok_or_else(wrong)
    }
}

impl Serialize for FleetMark {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for FleetMark {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        String::deserialize(from)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use hmac::digest::KeyInit;

    /// HMAC-SHA-256 by RFC 4231: test cases 1 to 7 (case 5 is truncated to 128 bits there), keys of any length.
    #[test]
    fn the_code_is_that_of_rfc_4231() {
        let cases: [(Vec<u8>, Vec<u8>, &str); 7] = [
            (vec![0x0b; 20], b"Hi There".to_vec(), "b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7"),
            (
                b"Jefe".to_vec(),
                b"what do ya want for nothing?".to_vec(),
                "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
            ),
            (vec![0xaa; 20], vec![0xdd; 50], "773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe"),
            (
                (1..=25).collect(),
                vec![0xcd; 50],
                "82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b",
            ),
            (vec![0x0c; 20], b"Test With Truncation".to_vec(), "a3b6167473100ee06e0c796c2955552b"),
            (
                vec![0xaa; 131],
                b"Test Using Larger Than Block-Size Key - Hash Key First".to_vec(),
                "60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54",
            ),
            (
                vec![0xaa; 131],
                b"This is a test using a larger than block-size key and a larger than block-size data. The key needs to be hashed before being used by the HMAC algorithm.".to_vec(),
                "9b09ffa71b942fcb27635fbcd5b0e944bfdc63644f0713938a7f51535c3a35e2",
            ),
        ];
        for (key, text, code) in cases {
            let mut mac = <Hmac<Sha256> as KeyInit>::new_from_slice(&key).expect("any length");
            mac.update(&text);
            let made: String = mac.finalize().into_bytes().iter().map(|byte| format!("{byte:02x}")).collect();
            assert!(made.starts_with(code), "{made} for {code}");
            // Ours holds 32 bytes: the cases of shorter keys are the same key filled up with zeros (RFC 2104).
            if key.len() <= 32 {
                let mut filled = [0; 32];
                filled[..key.len()].copy_from_slice(&key);
                let ours = FleetKey::from_bytes(filled);
                let made: String = ours.code(&text).iter().map(|byte| format!("{byte:02x}")).collect();
                assert!(made.starts_with(code), "{made} for {code}");
            }
        }
    }

    #[test]
    fn a_key_is_never_shown() {
        let key = FleetKey::from_bytes(std::array::from_fn(|at| at as u8));
        let shown = format!("{key:?}");
        assert_eq!(shown, format!("FleetKey({})", key.mark()));
        assert_eq!(key.mark().to_string().parse(), Ok(key.mark()));
        for wrong in ["", "7KQ4", "7KQ4U", "7kq4m", "7KQ4MM", "äKQ4"] {
            assert!(wrong.parse::<FleetMark>().is_err(), "{wrong}");
        }
    }
}
