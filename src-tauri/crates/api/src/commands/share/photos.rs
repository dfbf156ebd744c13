//! Photos in an exchange: after the events, which never wait for them.

use super::Exchange;
use crate::{Api, ApiError};
use hosewright_core::fleet::FleetKey;
use hosewright_core::record::Hash;
use hosewright_exchange::{StorageError, open_photo, plan_photos, seal_photo};
use hosewright_store::Error;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Photos on record, and how many of them are on this device.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PhotosHere {
    /// On record.
    pub named: u64,
    /// Those whose pictures are here.
    pub here: u64,
}

/// What became of photos in an exchange.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct PhotosExchanged {
    /// Pictures that came.
    pub came: u64,
    /// Pictures that went.
    pub went: u64,
    /// On record, and still not here.
    pub to_come: u64,
    /// Here, and still not in the storage; none is not known, because it was cut off before.
    pub to_go: Option<u64>,
    /// What lies in the storage under these is not what it was.
    pub refused: Vec<Hash>,
}

impl Exchange {
    /// Fetches the pictures that are lacking here and publishes those that are lacking there, one by one: what came and
    /// went before it is cut off stays.
    pub(super) fn exchange_photos(&mut self, api: &mut Api, fleet: &FleetKey) -> Result<(), ApiError> {
        let register = api.register()?;
        let (named, here) = (register.photos_named()?, register.photos_here()?);
        self.done.photos.to_come = (named.len() - here.len()) as u64;
        if named.is_empty() {
            self.done.photos.to_go = Some(0);
        }
        if named.is_empty() || self.done.cut_off.is_some() {
            return Ok(());
        }
        let Some(listed) = self.reached(api, |exchange| exchange.storage.list_photos()) else {
            return Ok(());
        };
        let plan = plan_photos(&named, &here, &listed);
        self.done.photos.to_go = Some(plan.publish.len() as u64);
        for hash in plan.fetch {
            let Some(object) = self.reached(api, |exchange| exchange.storage.fetch_photo(hash)) else {
                break;
            };
            match open_photo(&object, hash, fleet) {
                Some(bytes) => {
                    api.register()?.keep_photo(&bytes)?;
                    self.done.photos.came += 1;
                    self.done.photos.to_come -= 1;
                }
                None => self.done.photos.refused.push(hash),
            }
        }
        for hash in plan.publish {
            let object = match api.register()?.photo(hash) {
                Ok(bytes) => seal_photo(&bytes, fleet),
                // What is broken here is not sent, and is fetched again where somebody has it whole.
                Err(Error::PhotoDamaged { .. } | Error::PhotoMissing { .. }) => {
                    self.count_one_less(|photos| photos.to_come += 1);
                    continue;
                }
                Err(other) => return Err(other.into()),
            };
            let sent = self.reached(api, |exchange| exchange.storage.publish_photo(hash, object));
            if sent.is_none() {
                break;
            }
            self.count_one_less(|photos| photos.went += 1);
        }
        Ok(())
    }

    /// One of those that were to go does not wait any more.
    fn count_one_less(&mut self, becomes: impl FnOnce(&mut PhotosExchanged)) {
        let photos = &mut self.done.photos;
        photos.to_go = photos.to_go.map(|left| left.saturating_sub(1));
        becomes(photos);
    }

    /// What the storage answers; where it does not, the exchange is cut off and says why.
    fn reached<T>(&mut self, api: &Api, ask: impl FnOnce(&Self) -> Result<T, StorageError>) -> Option<T> {
        if self.done.cut_off.is_some() {
            return None;
        }
        ask(self).map_err(|error| self.done.cut_off = Some(api.told(error))).ok()
    }
}
