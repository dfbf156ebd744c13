//! The key pair of a device (Ed25519, RFC 8032).

use crate::tag::base32;
use ed25519_dalek::{Signature, Signer, SigningKey, VerifyingKey};
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use sha2::{Digest, Sha256};
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// A device's private key.
pub struct DeviceKey(SigningKey);

impl DeviceKey {
    /// From 32 bytes that no one can foresee.
    pub fn from_bytes(bytes: [u8; 32]) -> Self {
        Self(SigningKey::from_bytes(&bytes))
    }

    /// The secret itself, to be kept and for nothing else.
    pub fn bytes(&self) -> [u8; 32] {
        self.0.to_bytes()
    }

    /// The public half, by which others know the device.
    pub fn public(&self) -> DevicePublic {
        DevicePublic(self.0.verifying_key())
    }

    /// The signature of a text in 103 characters.
    pub fn signature(&self, text: &str) -> String {
        base32::write(&self.sign(text))
    }

    /// The signature of a text.
    pub(crate) fn sign(&self, text: &str) -> [u8; 64] {
        self.0.sign(text.as_bytes()).to_bytes()
    }
}

/// Never the secret.
impl fmt::Debug for DeviceKey {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "DeviceKey({})", self.public().mark())
    }
}

/// A device's public key.
#[derive(Debug, Clone, Copy, PartialEq, Eq, JsonSchema, TS)]
#[schemars(with = "String")]
#[ts(as = "String")]
pub struct DevicePublic(VerifyingKey);

/// The text is no public key.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("\"{text}\" is no public key of a device; one has 52 letters and digits")]
pub struct PublicError {
    /// How it begins.
    pub text: String,
}

impl DevicePublic {
    /// From its 52 characters; none where they are no public key.
    pub fn read(text: &str) -> Option<Self> {
        VerifyingKey::from_bytes(&base32::read(text)?).ok().map(Self)
    }

    /// Ten characters that two people compare by eye: the beginning of the key's SHA-256.
    pub fn mark(&self) -> String {
        let hash = base32::write(&Sha256::digest(self.0.as_bytes()));
        format!("{}-{}", &hash[..5], &hash[5..10])
    }

    /// Whether these are the 103 characters of the device's signature of that text.
    pub fn has_signed(&self, text: &str, signature: &str) -> bool {
        base32::read(signature).is_some_and(|signature| self.signed(text, &signature))
    }

    /// Whether the device signed that text. Keys and signatures that several texts fit are refused.
    pub(crate) fn signed(&self, text: &str, signature: &[u8; 64]) -> bool {
        self.0.verify_strict(text.as_bytes(), &Signature::from_bytes(signature)).is_ok()
    }
}

impl fmt::Display for DevicePublic {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.write_str(&base32::write(self.0.as_bytes()))
    }
}

impl FromStr for DevicePublic {
    type Err = PublicError;
    fn from_str(text: &str) -> Result<Self, PublicError> {
        Self::read(text).ok_or_else(|| PublicError { text: super::repeated(text) })
    }
}

impl Serialize for DevicePublic {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for DevicePublic {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        String::deserialize(from)?.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bytes<const N: usize>(hex: &str) -> [u8; N] {
        std::array::from_fn(|at| u8::from_str_radix(&hex[2 * at..2 * at + 2], 16).expect("hexadecimal"))
    }

    /// RFC 8032, section 7.1, test 1 (an empty text) and test 2 (one byte, 72).
    #[test]
    fn keys_and_signatures_are_those_of_rfc_8032() {
        for (secret, public, text, signature) in [
            (
                "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
                "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
                "",
                "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
            ),
            (
                "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
                "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
                "r",
                "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
            ),
        ] {
            let key = DeviceKey::from_bytes(bytes(secret));
            assert_eq!(key.public().0.to_bytes(), bytes::<32>(public));
            assert_eq!(key.sign(text), bytes::<64>(signature));
            assert!(key.public().signed(text, &bytes(signature)));
            assert!(!key.public().signed("another", &bytes(signature)));
            assert_eq!(DevicePublic::read(&key.public().to_string()), Some(key.public()));
            assert!(!format!("{key:?}").contains(&secret[..8]), "{key:?}");
        }
    }
}
