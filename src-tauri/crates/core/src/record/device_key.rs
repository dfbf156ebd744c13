//! The public key of a device, told to those whom its events reach.

use super::DeviceId;
use crate::fleet::{DeviceKey, DevicePublic};
use crate::tag::base32;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The public key of the device that writes it, by which others know whose signature they see.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct DeviceKeyTold {
    /// The key.
    pub public_key: DevicePublic,
    /// Signature (Ed25519, in base 32) of the device's id with this key: whoever wrote it has the private half, and another
    /// device's event does not pass for it.
    pub signature: String,
}

impl DeviceKeyTold {
    /// What a device tells.
    pub fn of(device: DeviceId, key: &DeviceKey) -> Self {
        let public_key = key.public();
        Self { public_key, signature: base32::write(&key.sign(&signed(device, &public_key))) }
    }

    /// Whether the device of that id has the private half.
    pub fn is_of(&self, device: DeviceId) -> bool {
        base32::read(&self.signature)
            .is_some_and(|signature| self.public_key.signed(&signed(device, &self.public_key), &signature))
    }
}

/// No text that hands a fleet on and no tag begins so.
fn signed(device: DeviceId, public_key: &DevicePublic) -> String {
    format!("HOSE DEVICE {device}\nPUBLIC {public_key}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_counts_for_the_device_that_signed_it_and_for_no_other() {
        let [one, other] = [1, 2].map(|byte| DeviceId::from_bytes([byte; 16]));
        let told = DeviceKeyTold::of(one, &DeviceKey::from_bytes([7; 32]));
        assert!(told.is_of(one));
        assert!(!told.is_of(other), "copied into another device's series");
        let stranger = DeviceKey::from_bytes([8; 32]).public();
        assert!(!DeviceKeyTold { public_key: stranger, ..told.clone() }.is_of(one));
        assert!(!DeviceKeyTold { signature: String::new(), ..told }.is_of(one));
    }
}
