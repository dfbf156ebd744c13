//! `fleet.found`, `fleet.admit`, `fleet.withdraw`: who belongs to the fleet, said by its planners' devices.

use super::Nothing;
use super::fleet::{Fleets, keys, no_own_fleet, shown};
use crate::{Answer, Api, ApiError};
use hosewright_core::fleet::DevicePublic;
use hosewright_core::record::{
    Body, DeviceAdmitted, DeviceId, DeviceWithdrawn, EventRef, MemberRole, Membership, PolicySet, Standing,
};
use hosewright_store::{Device, Error};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Founds the fleet of this device, which has no founder yet: from then on this device's word says who belongs to it. Every
/// other member reads the fleet's key off a member's screen once more.
///
/// # Errors
/// This device has no fleet of its own, or the fleet has a founder.
pub fn found(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let (keys, device) = keys(api)?;
    if keys.own().is_none() {
        return Err(no_own_fleet());
    }
    if api.register()?.membership()?.founder().is_some() {
        return Err(ApiError::input("", "the fleet has a founder already"));
    }
    found_here(api, device)?;
    shown(api, &keys, device)
}

/// Makes this device the founder. What counted until now goes on counting: the devices that wrote it are admitted as
/// technicians, and the owner's limits become the founder's word.
pub(super) fn found_here(api: &mut Api, founder: DevicePublic) -> Result<(), ApiError> {
    let now = api.world.now();
    let register = api.register()?;
    let here = register.device();
    let before = register.membership()?;
    let others: Vec<Device> =
        register.devices()?.into_iter().filter(|device| device.device != here).collect();
    // What this device said itself is its word already.
    let of_others = |policy: &(PolicySet, EventRef)| policy.1.device != here;
    let limits =
        register.policies()?.into_iter().filter(of_others).map(|(policy, _)| Body::PolicySet(policy));
    let words = others.iter().filter_map(|device| carried_over(&before, founder, device));
    let words: Vec<Body> = words.chain(limits).collect();
    Ok(register.found_fleet(founder, words, now)?)
}

/// The founder's word on a device that was here before. One that nobody can sign for any more ends where it ends.
fn carried_over(before: &Membership, founder: DevicePublic, known: &Device) -> Option<Body> {
    let device = known.device;
    let ends =
        |after| Body::DeviceWithdrawn(DeviceWithdrawn { founder, device, after, signature: String::new() });
    let role = match before.standing(device) {
        Standing::Waits => return None,
        Standing::Withdrawn => {
            return before.members().get(&device).and_then(|member| member.withdrawn).map(ends);
        }
        Standing::Reader => MemberRole::Reader,
        Standing::Open | Standing::Technician | Standing::Planner | Standing::Founder => {
            MemberRole::Technician
        }
    };
    Some(match before.key_of(device).copied().or(known.public_key) {
        Some(public_key) => {
            let signature = String::new();
            Body::DeviceAdmitted(DeviceAdmitted { founder, device, public_key, role, after: 0, signature })
        }
        None => ends(known.events),
    })
}

/// A device to be admitted, or to get another role.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FleetAdmit {
    /// Which.
    pub device: DeviceId,
    /// As what.
    pub role: MemberRole,
}

/// Admits a device that waits, with all that it wrote, or gives a member another role from what has come here on.
///
/// # Errors
/// This device is no planner of the fleet; nothing of that device has come here, or it was withdrawn.
pub fn admit(api: &mut Api, asked: FleetAdmit, _: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let FleetAdmit { device, role } = asked;
    let (keys, own) = keys(api)?;
    let now = api.world.now();
    let (members, founder, known) = of_fleet(api, device)?;
    let after = match members.standing(device) {
        Standing::Withdrawn => {
            let why = "that device was withdrawn and does not come back: it goes on as a new device, restored from a backup, and that one is admitted";
            return Err(ApiError::input("device", why));
        }
        Standing::Waits => 0,
        _ => known.events,
    };
    let public_key = members.key_of(device).copied().or(known.public_key).ok_or_else(|| {
        ApiError::nothing(
            "device",
            "that device has told no key yet: have it exchange once, then exchange here",
        )
    })?;
    let signature = String::new();
    let word = DeviceAdmitted { founder, device, public_key, role, after, signature };
    api.register()?.append([Body::DeviceAdmitted(word)], now)?;
    shown(api, &keys, own)
}

/// A lost device to be withdrawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FleetWithdraw {
    /// Which.
    pub device: DeviceId,
    /// The last number of its series that stays; without it, all that has come here does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[ts(type = "number | null")]
    pub after: Option<u64>,
}

/// Withdraws a lost device. What it wrote up to that number stays; what comes of it later counts nowhere.
///
/// # Errors
/// This device is no planner of the fleet; the other is a planner before it, is this one, or wrote nothing that is here.
pub fn withdraw(api: &mut Api, asked: FleetWithdraw, _: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let device = asked.device;
    let (keys, own) = keys(api)?;
    let now = api.world.now();
    let (_, founder, known) = of_fleet(api, device)?;
    let after = asked.after.unwrap_or(known.events);
    if after > known.events {
        let why = format!("only {} of its records have come here: name one of those", known.events);
        return Err(ApiError::input("after", why));
    }
    let word = DeviceWithdrawn { founder, device, after, signature: String::new() };
    api.register()?.append([Body::DeviceWithdrawn(word)], now)?;
    shown(api, &keys, own)
}

/// The members, the founder, and what is known of that device.
fn of_fleet(api: &mut Api, device: DeviceId) -> Result<(Membership, DevicePublic, Device), ApiError> {
    let register = api.register()?;
    let members = register.membership()?;
    let founder = members.founder().copied().ok_or(Error::OpenFleet)?;
    let known = register.devices()?.into_iter().find(|known| known.device == device);
    let known =
        known.ok_or_else(|| ApiError::nothing("device", "nothing of that device has come here yet"))?;
    Ok((members, founder, known))
}
