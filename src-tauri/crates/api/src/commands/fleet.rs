//! `fleet`: the key that the members of a fleet share, and the key pair of this device. Keys leave this device in one
//! way alone: [`hand_on`], which a person asks for.

use super::Nothing;
use super::member::found_here;
use super::picture::{FrameSize, codes};
use crate::{Answer, Api, ApiError};
use chrono::{DateTime, Utc};
use hosewright_core::fleet::{self, DeviceKey, DevicePublic, FleetKey, FleetMark, HandedOn};
use hosewright_core::record::{Body, DeviceId, DeviceKeyTold, Standing};
use hosewright_store::{FleetKept, Keys};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// This device and the fleets whose key it has.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Fleets {
    /// This device.
    pub device: DeviceShown,
    /// The fleet it makes tags for.
    pub own: Option<Fleet>,
    /// How this device stands in that fleet.
    pub standing: Standing,
    /// Mark of the device that founded the fleet; none where it is open, so that every device of it counts.
    pub founder: Option<String>,
    /// Fleets whose tags it knows.
    pub partners: Vec<Fleet>,
    /// The others whose public key came with their records.
    pub others: Vec<DeviceKnown>,
    /// Where the keys are, and what is not to be had.
    pub kept: String,
}

/// A device as others know it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct DeviceShown {
    /// Its public key.
    pub public_key: DevicePublic,
    /// Ten characters of that, to be compared by eye.
    pub mark: String,
}

/// Another device that told its public key.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct DeviceKnown {
    /// Its id in the records.
    pub device: DeviceId,
    /// What people call it, where it has a name.
    pub name: Option<String>,
    /// Its public key.
    pub public_key: DevicePublic,
    /// Ten characters of that, to be compared by eye.
    pub mark: String,
    /// How it stands in the fleet.
    pub standing: Standing,
    /// The last number of its series that stays, where it was withdrawn.
    #[ts(type = "number | null")]
    pub stays: Option<u64>,
    /// Whether this device's word on it would count.
    pub judged_here: bool,
}

/// A fleet, without its key.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Fleet {
    /// The mark that stands in its seals.
    pub mark: FleetMark,
    /// What its people call it.
    pub name: String,
    /// Since when this device has its key.
    pub since: DateTime<Utc>,
    /// Mark of the device that handed it on; none where it was begun here.
    pub from: Option<String>,
}

impl From<&FleetKept> for Fleet {
    fn from(kept: &FleetKept) -> Self {
        let FleetKept { name, key, since, from, .. } = kept;
        Self { mark: key.mark(), name: name.clone(), since: *since, from: from.clone() }
    }
}

/// This device and its fleets. The device gets its key pair when it is first asked for, and tells the public half in its log.
///
/// # Errors
/// The file of keys or the register can not be read or written.
pub fn show(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let (keys, device) = keys(api)?;
    shown(api, &keys, device)
}

/// A fleet to be begun.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FleetBegin {
    /// What its people call it.
    pub name: String,
}

/// Begins a fleet with a new key; from then on this device's tags carry its seal, and its word says who belongs to the fleet.
///
/// # Errors
/// This device has a fleet already; the name is blank or too long; the file of keys can not be written.
pub fn begin(api: &mut Api, asked: FleetBegin, _: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let name = named(&asked.name)?;
    let (key, since) = (FleetKey::from_bytes(secret(api)), api.world.now());
    let (keys, device) = change(api, |keys| {
        no_fleet_yet(keys)?;
        keys.fleets.push(FleetKept { name, key, own: true, since, from: None });
        Ok(())
    })?;
    found_here(api, device)?;
    shown(api, &keys, device)
}

/// A fleet's key, to be read off this screen by another device.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct FleetHandOn {
    /// The text. It holds the key.
    pub text: String,
    /// The same as a QR code.
    pub svg: String,
    /// Until when it is read; later it is to be shown anew.
    pub until: DateTime<Utc>,
    /// What to mind while it is shown.
    pub caution: String,
}

pub(super) fn no_own_fleet() -> ApiError {
    ApiError::nothing("", "this device has no fleet of its own: begin one, or join one")
}

/// Shows the fleet's key for another device to read, for a day. It is made when it is asked for and kept nowhere.
///
/// # Errors
/// This device has no fleet of its own.
pub fn hand_on(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<FleetHandOn>, ApiError> {
    let (keys, _) = keys(api)?;
    let (Some(own), Some(device)) = (keys.own(), &keys.device) else {
        return Err(no_own_fleet());
    };
    let now = api.world.now();
    let members = api.register()?.membership()?;
    let text = fleet::hand_on(&own.name, &own.key, members.founder(), device, now);
    let svg = hosewright_papers::code(&text)
        .ok_or_else(|| ApiError::input("", "the fleet's name is too long for a QR code"))?
        .to_svg();
    let caution = api.words.say("fleets-hand-on-caution", &[("fleet", &own.name)]);
    Ok(api.answer(FleetHandOn { text, svg, until: fleet::until(now), caution }))
}

/// A fleet's key to be looked at: its text, or a picture of its QR code.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields, default)]
pub struct FleetLook {
    /// The text; none where a picture goes with the question.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub text: Option<String>,
    /// The picture is a frame of a live camera of that size; a file without.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub frame: Option<FrameSize>,
}

/// A fleet's key as it was read, without the key. Whoever made the text put all of it there: two people compare it with
/// what stands on the other device's screen.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct FleetSeen {
    /// What its people call it.
    pub name: String,
    /// The fleet's mark.
    pub mark: FleetMark,
    /// Mark of the device that hands it on.
    pub from: String,
    /// What people call that device, where its key came with its records.
    pub from_name: Option<String>,
    /// Mark of the device that founded the fleet; none where it is open.
    pub founder: Option<String>,
}

/// Reads a fleet's key that another device shows. Nothing is kept.
///
/// # Errors
/// The picture or text hands no fleet on, was changed, or was shown more than a day ago.
pub fn look(api: &mut Api, asked: FleetLook, picture: &[u8]) -> Result<Answer<FleetSeen>, ApiError> {
    let HandedOn { key, name, founder, from } = handed_on(api, asked.text.as_deref(), asked.frame, picture)?;
    let known = api.register()?.devices()?.into_iter().find(|device| device.public_key == Some(from));
    let from_name = known.and_then(|device| device.name);
    let (mark, from, founder) = (key.mark(), from.mark(), founder.map(|founder| founder.mark()));
    Ok(api.answer(FleetSeen { name: named(&name)?, mark, from, from_name, founder }))
}

/// A fleet to be joined, once its key was looked at and compared.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FleetJoin {
    /// The text; none where a picture goes with the question.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub text: Option<String>,
    /// The picture is a frame of a live camera of that size; a file without.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub frame: Option<FrameSize>,
    /// Mark of the device that hands it on, as a person compared it with that device's own screen.
    pub from: String,
    /// As what.
    #[serde(rename = "as")]
    pub role: FleetRole,
}

/// What a fleet is to this device.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FleetRole {
    /// The fleet it makes tags for.
    Own,
    /// One whose tags it knows.
    Partner,
}

/// Joins a fleet whose key another device shows. The signature on it says that its text is whole; who made it, only the
/// mark says that two people compared. A fleet of its own that was open until now gets its founder by joining it again.
///
/// # Errors
/// The picture or text hands no fleet on, was changed, was shown more than a day ago, or comes from another device; this device
/// has the key already, or another fleet of its own.
pub fn join(api: &mut Api, asked: FleetJoin, picture: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let HandedOn { key, name, founder, from } = handed_on(api, asked.text.as_deref(), asked.frame, picture)?;
    let name = named(&name)?;
    if from.mark() != asked.from.trim() {
        let why = "the key was handed on by another device than the one that was compared: look at it again";
        return Err(ApiError::input("from", why));
    }
    let (own, since) = (asked.role == FleetRole::Own, api.world.now());
    let open = api.register()?.membership()?.founder().is_none();
    let (keys, device) = change(api, |keys| {
        if own && open && founder.is_some() && keys.own().is_some_and(|own| own.key == key) {
            return Ok(());
        }
        if let Some(known) = keys.fleets.iter().find(|fleet| fleet.key == key) {
            let why = format!("this device has the key of {} already", known.name);
            return Err(ApiError::input("text", why));
        }
        if own {
            no_fleet_yet(keys)?;
        }
        keys.fleets.push(FleetKept { name, key, own, since, from: Some(from.mark()) });
        Ok(())
    })?;
    if own {
        api.register()?.believe(founder)?;
    }
    shown(api, &keys, device)
}

fn handed_on(
    api: &Api,
    text: Option<&str>,
    frame: Option<FrameSize>,
    picture: &[u8],
) -> Result<HandedOn, ApiError> {
    let read =
        |text: &str| fleet::read(text, api.world.now()).map_err(|error| ApiError::input("text", error));
    if let Some(text) = text {
        return read(text);
    }
    let found = codes(frame, picture)?;
    let texts: Vec<&str> = found.iter().map(|found| found.text.as_str()).collect();
    let text = texts.iter().find(|text| fleet::is_one(text)).or(texts.first());
    match text {
        Some(text) => read(text),
        None => Err(ApiError::nothing(
            "",
            "there is no code in this picture that can be read; take it nearer and square on",
        )),
    }
}

/// A fleet to be left.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FleetLeave {
    /// Its mark.
    pub mark: FleetMark,
}

/// Takes a fleet's key off this device. Its tags are then those of a fleet that is not known here.
///
/// # Errors
/// This device has no such key; the file of keys can not be written.
pub fn leave(api: &mut Api, asked: FleetLeave, _: &[u8]) -> Result<Answer<Fleets>, ApiError> {
    let (keys, device) = change(api, |keys| {
        let before = keys.fleets.len();
        keys.fleets.retain(|fleet| fleet.key.mark() != asked.mark);
        if keys.fleets.len() == before {
            let why = format!("this device has no key of a fleet {}", asked.mark);
            return Err(ApiError::nothing("mark", why));
        }
        Ok(())
    })?;
    shown(api, &keys, device)
}

/// The keys, and the public half of the device's own, which is made where there is none.
pub(super) fn keys(api: &mut Api) -> Result<(Keys, DevicePublic), ApiError> {
    let mut keys = api.register()?.keys()?;
    if keys.device.is_none() {
        let fresh = DeviceKey::from_bytes(secret(api));
        let made = |keys: &mut Keys| {
            keys.device.get_or_insert(fresh);
            Ok::<_, ApiError>(())
        };
        (keys, ()) = api.register()?.change_keys(made)?;
    }
    tell(api, &keys)?;
    match keys.device.as_ref().map(DeviceKey::public) {
        Some(public) => Ok((keys, public)),
        None => Err(ApiError::file("", "the file of keys was changed by another program; try again")),
    }
}

/// Changes the keys as they are kept now, in one step: the device has told its own before.
fn change(
    api: &mut Api,
    change: impl FnOnce(&mut Keys) -> Result<(), ApiError>,
) -> Result<(Keys, DevicePublic), ApiError> {
    let (_, public) = keys(api)?;
    let (keys, ()) = api.register()?.change_keys(change)?;
    Ok((keys, public))
}

/// Tells the public half to whom the log reaches, where it was not told yet.
fn tell(api: &mut Api, keys: &Keys) -> Result<(), ApiError> {
    let Some(device) = &keys.device else { return Ok(()) };
    let now = api.world.now();
    let register = api.register()?;
    let id = register.device();
    if register.device_key(id)? != Some(device.public()) {
        register.append([Body::DeviceKey(DeviceKeyTold::of(id, device))], now)?;
    }
    Ok(())
}

/// The keys of this device, its own pair among them.
pub(crate) fn keys_of_device(api: &mut Api) -> Result<Keys, ApiError> {
    keys(api).map(|(keys, _)| keys)
}

/// 32 bytes that no one can foresee.
fn secret(api: &mut Api) -> [u8; 32] {
    fleet::secret(std::array::from_fn(|_| api.world.random()))
}

pub(super) fn shown(api: &mut Api, keys: &Keys, device: DevicePublic) -> Result<Answer<Fleets>, ApiError> {
    let path = api.register()?.keys_path().display().to_string();
    let kept = {
        // Only these systems keep a file to its owner.
        let owner = if cfg!(unix) { "yes" } else { "no" };
        api.words.say("fleets-keys-kept", &[("file", &path), ("owner", &owner)])
    };
    let register = api.register()?;
    let here = register.device();
    let members = register.membership()?;
    let others = register.devices()?.into_iter().filter(|other| other.device != here).filter_map(|other| {
        let id = other.device;
        let public_key = members.key_of(id).copied().or(other.public_key)?;
        Some(DeviceKnown {
            device: id,
            name: other.name,
            mark: public_key.mark(),
            public_key,
            standing: members.standing(id),
            stays: members.members().get(&id).and_then(|member| member.withdrawn),
            judged_here: members.founder().is_some() && members.may_judge(here, id).is_ok(),
        })
    });
    let others = others.collect();
    let (standing, founder) = (members.standing(here), members.founder().map(DevicePublic::mark));
    let device = DeviceShown { mark: device.mark(), public_key: device };
    let partners = keys.fleets.iter().filter(|fleet| !fleet.own).map(Fleet::from).collect();
    let own = keys.own().map(Fleet::from);
    Ok(api.answer(Fleets { device, own, standing, founder, partners, others, kept }))
}

fn no_fleet_yet(keys: &Keys) -> Result<(), ApiError> {
    match keys.own() {
        Some(own) => {
            let (name, mark) = (&own.name, own.key.mark());
            let why =
                format!("this device makes tags for {name} ({mark}); leave that first, or join as a partner");
            Err(ApiError::input("", why))
        }
        None => Ok(()),
    }
}

/// Longest name of a fleet, in characters.
const LONGEST_NAME: usize = 60;

fn named(name: &str) -> Result<String, ApiError> {
    let name = name.trim();
    if name.is_empty() || name.chars().count() > LONGEST_NAME {
        return Err(ApiError::input(
            "name",
            format!("a fleet needs a name of 1 to {LONGEST_NAME} characters"),
        ));
    }
    Ok(name.to_owned())
}
