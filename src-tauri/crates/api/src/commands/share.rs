//! `share`: what the devices of a fleet wrote, exchanged over a storage of the fleet's own choice.

mod photos;
mod said;

pub use photos::{PhotosExchanged, PhotosHere};

use super::{Nothing, fleet};
use crate::{Answer, Api, ApiError};
use chrono::{DateTime, Utc};
use hosewright_core::fleet::{DeviceKey, DevicePublic, FleetKey, StorageAccess};
use hosewright_core::record::{Body, DeviceId, Event, EventRef, Standing};
use hosewright_exchange::{Plan, Run, Segment, SegmentName, Storage, plan};
use hosewright_store::{Bundle, Device, Keys, LeftOutOf, Refusal, Register};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use ts_rs::TS;

/// Most events in one segment: some hundred kilobytes, which a poor signal still carries.
const MOST: u64 = 5_000;

/// The setting that holds how the last exchange went.
const LAST: &str = "exchanged";

/// Where a fleet's devices exchange what they wrote.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct ShareSet {
    /// `file:///folder`, `https://server/folder` for WebDAV, or `s3://bucket/folder`. Blank takes the storage away.
    pub url: String,
    /// Address of an S3-compatible service.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub endpoint: Option<String>,
    /// Region of the bucket.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub region: Option<String>,
    /// Name of the account, or id of the key.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub user: Option<String>,
    /// Password, or the key itself. It is kept in the file of keys and never shown again.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub secret: Option<String>,
}

/// What was exchanged, and what waits.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Shared {
    /// Where; none before it was chosen.
    pub url: Option<String>,
    /// Mark of the fleet to which it is encrypted; none where this device has no fleet yet.
    pub fleet: Option<hosewright_core::fleet::FleetMark>,
    /// Events that this device wrote.
    pub written: u64,
    /// Those of them that the storage had at the last exchange.
    pub sent: u64,
    /// The other devices, as far as what they wrote has come here.
    pub devices: Vec<Device>,
    /// How this device stands in its fleet.
    pub standing: Standing,
    /// Photos on record, and those whose pictures are here.
    pub photos: PhotosHere,
    /// What came here and does not count, by device and reason.
    pub left_out: Vec<LeftOutOf>,
    /// What devices told in two ways, for a person to settle.
    pub not_settled: u64,
    /// The last exchange; none before the first.
    pub last: Option<Exchanged>,
}

/// How an exchange went. What came and went before it was cut off stays.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Exchanged {
    /// When.
    pub at: DateTime<Utc>,
    /// Events that were new here.
    pub came: u64,
    /// Own events that went out.
    pub went: u64,
    /// The last own event that the storage has, all before it included.
    pub sent: u64,
    /// Segments that were refused, and why.
    pub refused: Vec<SegmentRefused>,
    /// Devices whose later events wait for earlier ones that nobody has brought yet.
    pub waiting_for: Vec<DeviceId>,
    /// What became of photos.
    #[serde(default)]
    pub photos: PhotosExchanged,
    /// Why it was cut off; none where it was whole.
    pub cut_off: Option<String>,
}

/// A segment that was refused.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct SegmentRefused {
    /// Whose series.
    pub device: DeviceId,
    /// Its first event.
    pub from: u64,
    /// Two programs wrote as that device.
    #[serde(default)]
    pub copied: bool,
    /// Why, in words.
    pub why: String,
}

/// What was exchanged, and what waits. Nothing is asked of the storage.
///
/// # Errors
/// The register or its file of keys can not be read.
pub fn show(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Shared>, ApiError> {
    let register = api.register()?;
    let keys = register.keys()?;
    let last: Option<Exchanged> =
        register.settings()?.read.get(LAST).and_then(|value| serde_json::from_value(value.clone()).ok());
    let (own, others): (Vec<_>, Vec<_>) =
        register.devices()?.into_iter().partition(|device| device.device == register.device());
    let shared = Shared {
        url: keys.storage.as_ref().map(|storage| storage.url.clone()),
        fleet: keys.own().map(|fleet| fleet.key.mark()),
        written: own.first().map_or(0, |device| device.events),
        sent: last.as_ref().map_or(0, |last| last.sent),
        devices: others,
        standing: register.membership()?.standing(register.device()),
        photos: PhotosHere {
            named: register.photos_named()?.len() as u64,
            here: register.photos_here()?.len() as u64,
        },
        left_out: register.left_out()?,
        not_settled: u64::try_from(register.conflicts()?.len()).unwrap_or(u64::MAX),
        last,
    };
    Ok(api.answer(shared))
}

/// Chooses the storage, or takes it away. The storage itself is not asked; what the last one had counts no more.
///
/// # Errors
/// The address names no storage; the file of keys can not be written.
pub fn set(api: &mut Api, asked: ShareSet, _: &[u8]) -> Result<Answer<Shared>, ApiError> {
    let ShareSet { url, endpoint, region, user, secret } = asked;
    let url = url.trim().to_owned();
    let storage = (!url.is_empty()).then_some(StorageAccess { url, endpoint, region, user, secret });
    if let Some(storage) = &storage {
        Storage::open(storage)?;
    }
    api.register()?.change_keys(|keys| {
        keys.storage = storage;
        Ok::<_, ApiError>(())
    })?;
    api.keep_last(None)?;
    show(api, Nothing {}, &[])
}

/// Fetches what others wrote and publishes what this device wrote. It may take a minute: the shell calls it beside the
/// other commands.
///
/// # Errors
/// No storage or no fleet was chosen, or the storage does not answer at all. One that goes away in between is no error:
/// the answer says so, and what was done stays done.
pub fn exchange(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<Exchanged>, ApiError> {
    let keys = fleet::keys_of_device(api)?;
    let (Some(access), Some(device)) = (&keys.storage, &keys.device) else {
        return Err(said::no_storage());
    };
    let Some(own) = keys.own() else {
        return Err(said::no_fleet());
    };
    let storage = Storage::open(access)?;
    let listed = storage.list()?;
    let mut under_way = Exchange {
        storage,
        reading: reading(&keys),
        done: Exchanged {
            at: api.world.now(),
            came: 0,
            went: 0,
            sent: 0,
            refused: Vec::new(),
            waiting_for: Vec::new(),
            photos: PhotosExchanged::default(),
            cut_off: None,
        },
        listed,
        told: Vec::new(),
    };
    under_way.run(api, device, &own.key)?;
    let done = under_way.done;
    api.keep_last(Some(&done))?;
    Ok(api.answer(done))
}

/// The keys that open segments: the own fleet's alone. A partner's tags are read; its records are its own.
fn reading(keys: &Keys) -> Vec<FleetKey> {
    keys.own().map(|own| own.key.clone()).into_iter().collect()
}

/// An exchange under way.
struct Exchange {
    storage: Storage,
    reading: Vec<FleetKey>,
    listed: BTreeSet<SegmentName>,
    /// Keys that devices tell of themselves in what was fetched. Two that sent each other's lost segments vouch for one
    /// another: neither's key is in the register yet.
    told: Vec<(DeviceId, DevicePublic)>,
    done: Exchanged,
}

impl Exchange {
    fn run(&mut self, api: &mut Api, device: &DeviceKey, fleet: &FleetKey) -> Result<(), ApiError> {
        let own = api.register()?.device();
        let Plan { fetch, publish, gaps } = plan(own, &api.register()?.ends()?, &self.listed, MOST);
        let forked = self.refuse_forks(api)?;
        self.done.waiting_for = gaps.into_iter().map(|gap| gap.device).collect();
        // Who signed one may be told by a later one.
        let mut of_strangers = Vec::new();
        for name in fetch {
            match self.storage.fetch(&name) {
                Ok(file) => of_strangers.extend(self.take_in(api, &name, &file)?),
                Err(error) => {
                    self.done.cut_off = Some(api.told(error));
                    break;
                }
            }
        }
        for segment in self.until_nothing_changes(api, of_strangers)? {
            if let Some(stranger) = self.merge(api, segment, Trust::WhoTellsItsOwn)?
                && let Some(first) = stranger.events.first()
            {
                let why = if key_of(api.register()?, first.device)?.is_some() {
                    "share-not-its-own"
                } else {
                    "share-stranger"
                };
                self.refuse(first.device, first.number, api.words.say(why, &[]));
            }
        }
        let for_others = may_send_for_others(api.register()?, device)?;
        for run in publish {
            // What a copied register wrote continues nothing that the others have.
            if forked.contains(&run.device) || (run.device != own && !for_others) {
                continue;
            }
            if self.done.cut_off.is_some() {
                break;
            }
            self.publish(api, run, device, fleet)?;
        }
        self.done.sent = self.sent(own);
        self.exchange_photos(api, fleet)
    }

    /// Takes a file in. Gives its segment back where nobody here knows who signed it.
    fn take_in(
        &mut self,
        api: &mut Api,
        name: &SegmentName,
        file: &[u8],
    ) -> Result<Option<Segment>, ApiError> {
        match Segment::read(file, &self.reading) {
            Ok(segment) => {
                self.told.extend(segment.events.iter().filter_map(told));
                self.merge(api, segment, Trust::Members)
            }
            Err(error) => {
                self.refuse(name.device, name.from, api.told(error));
                Ok(None)
            }
        }
    }

    /// Takes in what members wrote until nothing more comes of it: who belongs to the fleet may be said by a later one.
    fn until_nothing_changes(
        &mut self,
        api: &mut Api,
        mut waiting: Vec<Segment>,
    ) -> Result<Vec<Segment>, ApiError> {
        loop {
            let before = waiting.len();
            let mut still = Vec::new();
            for segment in waiting {
                still.extend(self.merge(api, segment, Trust::Members)?);
            }
            if still.len() == before {
                return Ok(still);
            }
            waiting = still;
        }
    }

    /// Whether whoever signed a segment is believed for the series in it. In a fleet that is open every device vouches for
    /// every other. In one that has a founder a device vouches for itself, by the key it was admitted with, and a planner for
    /// others; who has not been admitted, by the key it told first, once all that members sent is here.
    fn is_believed(&self, api: &mut Api, segment: &Segment, trust: Trust) -> Result<bool, ApiError> {
        let Some(series) = segment.events.first().map(|event| event.device) else { return Ok(false) };
        let register = api.register()?;
        let members = register.membership()?;
        let Some(founder) = members.founder() else {
            let told = self.told.iter().any(|(_, key)| *key == segment.by);
            return Ok(told || register.knows_key(&segment.by)?);
        };
        if segment.by == *founder || members.is_planners(&segment.by) {
            return Ok(true);
        }
        Ok(match key_of(register, series)? {
            Some(known) => known == segment.by,
            None => trust == Trust::WhoTellsItsOwn && self.told.contains(&(series, segment.by)),
        })
    }

    fn merge(&mut self, api: &mut Api, segment: Segment, trust: Trust) -> Result<Option<Segment>, ApiError> {
        if !self.is_believed(api, &segment, trust)? {
            return Ok(Some(segment));
        }
        self.say_what_came_too_late(api, &segment)?;
        let merged = api.register()?.merge(&Bundle { people: Vec::new(), events: segment.events })?;
        self.done.came += merged.added;
        for series in merged.refused {
            self.refuse_series(api, series.device, series.from, series.why);
        }
        Ok(None)
    }

    /// What a device signed after it was withdrawn is kept, counts nowhere, and is said.
    fn say_what_came_too_late(&mut self, api: &mut Api, segment: &Segment) -> Result<(), ApiError> {
        let Some(last) = segment.events.last() else { return Ok(()) };
        let members = api.register()?.membership()?;
        let first = segment.events.iter().find(|event| members.judge(event.at(), None).is_err());
        if let Some(first) = first.filter(|_| members.standing(last.device) == Standing::Withdrawn) {
            self.refuse(first.device, first.number, api.words.say("share-withdrawn", &[]));
        }
        Ok(())
    }

    /// Segments that end in another event than the one that stands here under that number: someone wrote as the same
    /// device. Gives which.
    fn refuse_forks(&mut self, api: &mut Api) -> Result<BTreeSet<DeviceId>, ApiError> {
        let mut forked = BTreeSet::new();
        for SegmentName { device, from, to, last, .. } in self.listed.clone() {
            let at = EventRef { device, number: to };
            if api.register()?.has(at, last)? == Some(false) {
                self.refuse_series(api, device, from, Refusal::Fork);
                forked.insert(device);
            }
        }
        Ok(forked)
    }

    fn refuse(&mut self, device: DeviceId, from: u64, why: String) {
        self.done.refused.push(SegmentRefused { device, from, copied: false, why });
    }

    fn refuse_series(&mut self, api: &Api, device: DeviceId, from: u64, why: Refusal) {
        let copied = why == Refusal::Fork;
        let why = api.words.say(&format!("share-{}", why.code()), &[]);
        self.done.refused.push(SegmentRefused { device, from, copied, why });
    }

    fn publish(
        &mut self,
        api: &mut Api,
        run: Run,
        device: &DeviceKey,
        fleet: &FleetKey,
    ) -> Result<(), ApiError> {
        let register = api.register()?;
        let own = run.device == register.device();
        let events: Vec<Event> = register.series(run.device, run.numbers)?;
        let file = Segment::write(&events, device, Some(fleet))?;
        let name = Segment::name(&events, &file)?;
        match self.storage.publish(&name, file) {
            Ok(()) => {
                self.done.went += if own { events.len() as u64 } else { 0 };
                self.listed.insert(name);
            }
            Err(error) => self.done.cut_off = Some(api.told(error)),
        }
        Ok(())
    }

    /// The number up to which the storage has the whole of a series.
    fn sent(&self, device: DeviceId) -> u64 {
        // Sorted by where they begin: each that continues leads on.
        self.listed
            .iter()
            .filter(|name| name.device == device)
            .fold(0, |sent, name| if name.from <= sent + 1 { sent.max(name.to) } else { sent })
    }
}

/// The public key that an event tells of the device that wrote it.
fn told(event: &Event) -> Option<(DeviceId, DevicePublic)> {
    match event.body.read() {
        Body::DeviceKey(told) if told.is_of(event.device) => Some((event.device, told.public_key)),
        _ => None,
    }
}

/// The key by which a device is known here: the one it was admitted with, or the one it told.
fn key_of(register: &Register, device: DeviceId) -> Result<Option<DevicePublic>, ApiError> {
    match register.membership()?.key_of(device) {
        Some(key) => Ok(Some(*key)),
        None => Ok(register.device_key(device)?),
    }
}

/// Whether others believe this device for what it has of a device that can not send it any more.
fn may_send_for_others(register: &Register, device: &DeviceKey) -> Result<bool, ApiError> {
    let members = register.membership()?;
    Ok(members.founder().is_none() || members.is_planners(&device.public()))
}

/// Who is believed for what.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Trust {
    /// Members of the fleet.
    Members,
    /// Whoever tells its own key in its own series, too: it waits for a planner's nod.
    WhoTellsItsOwn,
}

impl Api {
    fn keep_last(&mut self, last: Option<&Exchanged>) -> Result<(), ApiError> {
        let value = serde_json::to_value(last).map_err(|error| ApiError::file("", error))?;
        self.register()?.keep_settings(&serde_json::Map::from_iter([(LAST.to_owned(), value)]))?;
        Ok(())
    }
}
