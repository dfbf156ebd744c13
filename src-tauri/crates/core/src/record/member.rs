//! Words on who belongs to a fleet. A planner's device signs each for its own place in its series, so that nobody else's
//! copy of it counts, nor the same one anywhere else.

use super::{Body, DeviceId, EventRef};
use crate::fleet::{DeviceKey, DevicePublic};
use crate::tag::base32;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::fmt;
use ts_rs::TS;

/// What a member may do. Each may do what those before it may.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum MemberRole {
    /// Reads. What it writes counts for nothing.
    Reader,
    /// Everything of the job.
    Technician,
    /// Admits and withdraws devices, gives roles and sets the owner's limits.
    Planner,
}

impl MemberRole {
    /// As it is written; its JSON is the same.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Reader => "reader",
            Self::Technician => "technician",
            Self::Planner => "planner",
        }
    }
}

impl fmt::Display for MemberRole {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.write_str(self.name())
    }
}

/// A device is admitted to a fleet, or gets another role there.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct DeviceAdmitted {
    /// The founder of the fleet it is about.
    pub founder: DevicePublic,
    /// Which device.
    pub device: DeviceId,
    /// The public key that it told.
    pub public_key: DevicePublic,
    /// As what.
    pub role: MemberRole,
    /// What it wrote after this number is judged by that role.
    #[ts(type = "number")]
    pub after: u64,
    /// Signature (Ed25519, in base 32) by the device that writes it, for its place in that device's series. The register
    /// signs as it writes.
    #[serde(default)]
    pub signature: String,
}

/// A lost device belongs to the fleet no more. What it wrote before stays.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct DeviceWithdrawn {
    /// The founder of the fleet it is about.
    pub founder: DevicePublic,
    /// Which device.
    pub device: DeviceId,
    /// The last number of its series that stays.
    #[ts(type = "number")]
    pub after: u64,
    /// Signature as of [`DeviceAdmitted::signature`].
    #[serde(default)]
    pub signature: String,
}

/// A word on a device: what is signed of both kinds.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Word<'a> {
    pub founder: &'a DevicePublic,
    pub device: DeviceId,
    /// Key and role; none where it is withdrawn.
    pub admitted: Option<(&'a DevicePublic, MemberRole)>,
    pub after: u64,
    signature: &'a str,
}

impl<'a> Word<'a> {
    pub(crate) fn of(body: &'a Body) -> Option<Self> {
        match body {
            Body::DeviceAdmitted(said) => Some(Self {
                founder: &said.founder,
                device: said.device,
                admitted: Some((&said.public_key, said.role)),
                after: said.after,
                signature: &said.signature,
            }),
            Body::DeviceWithdrawn(said) => Some(Self {
                founder: &said.founder,
                device: said.device,
                admitted: None,
                after: said.after,
                signature: &said.signature,
            }),
            _ => None,
        }
    }

    /// No other text that is signed begins so.
    fn signed(&self, at: EventRef) -> String {
        let Self { founder, device, admitted, after, .. } = self;
        let what = match admitted {
            Some((public_key, role)) => format!("ADMITTED {role}\nPUBLIC {public_key}"),
            None => "WITHDRAWN".to_owned(),
        };
        format!("HOSE MEMBER {device}\nFOUNDER {founder}\nBY {at}\nAFTER {after}\n{what}")
    }

    /// Whether the owner of that key wrote it there.
    pub(crate) fn is_signed(&self, at: EventRef, by: &DevicePublic) -> bool {
        base32::read(self.signature).is_some_and(|signature| by.signed(&self.signed(at), &signature))
    }
}

impl Body {
    /// The device that a word on membership is about.
    pub fn member(&self) -> Option<DeviceId> {
        Word::of(self).map(|word| word.device)
    }

    /// A word on membership signed by that key for that place; any other body as it is.
    #[must_use]
    pub fn signed_for(mut self, at: EventRef, key: &DeviceKey) -> Self {
        let signed = Word::of(&self).map(|word| base32::write(&key.sign(&word.signed(at))));
        if let (
            Some(signed),
            Self::DeviceAdmitted(DeviceAdmitted { signature, .. })
            | Self::DeviceWithdrawn(DeviceWithdrawn { signature, .. }),
        ) = (signed, &mut self)
        {
            *signature = signed;
        }
        self
    }

    /// The role that a device needs for what it writes to count; none for its own name and key.
    pub fn needs(&self) -> Option<MemberRole> {
        match self {
            Self::DeviceNamed(_) | Self::DeviceKey(_) => None,
            Self::PolicySet(_) | Self::DeviceAdmitted(_) | Self::DeviceWithdrawn(_) => {
                Some(MemberRole::Planner)
            }
            _ => Some(MemberRole::Technician),
        }
    }
}
