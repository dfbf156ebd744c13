//! Photos in a storage: one object each, `photos/HASH`, encrypted to the fleet as segments are.
//!
//! What a photo is stands in the log, which is signed; its hash proves the bytes, whoever brought them.

use crate::sealed;
use hosewright_core::fleet::FleetKey;
use hosewright_core::record::Hash;
use std::collections::{BTreeMap, BTreeSet};

/// The folder that holds all of them.
pub(crate) const FOLDER: &str = "photos";

/// What an exchange does with photos.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct PhotoPlan {
    /// Named by the register, not here, and whole in the storage.
    pub fetch: Vec<Hash>,
    /// Named by the register and here, and not whole in the storage.
    pub publish: Vec<Hash>,
    /// Named by the register, and neither here nor there: they come after the device that has them exchanged.
    pub wait: Vec<Hash>,
}

/// Decides what becomes of the photos that the register names, each with its length in bytes. `here` are those whose bytes
/// this device has, `listed` the objects of the storage with their sizes. An object of another size than the photo's was
/// cut off on its way up: it counts as none, and whoever has the photo writes it again.
pub fn plan_photos(
    named: &BTreeMap<Hash, u64>,
    here: &BTreeSet<Hash>,
    listed: &BTreeMap<Hash, u64>,
) -> PhotoPlan {
    let mut plan = PhotoPlan::default();
    for (hash, length) in named {
        let whole = listed.get(hash) == Some(&length.saturating_add(sealed::MORE));
        match (here.contains(hash), whole) {
            (true, true) => {}
            (true, false) => plan.publish.push(*hash),
            (false, true) => plan.fetch.push(*hash),
            (false, false) => plan.wait.push(*hash),
        }
    }
    plan
}

/// The object of a photo. The same photo gives the same bytes, whoever writes it.
pub fn seal_photo(bytes: &[u8], fleet: &FleetKey) -> Vec<u8> {
    let hash = Hash::of(bytes);
    sealed::write(fleet, &path(hash), bytes)
}

/// The photo of that hash in an object; none where it is another, was changed or cut off, or is another fleet's.
pub fn open_photo(object: &[u8], hash: Hash, fleet: &FleetKey) -> Option<Vec<u8>> {
    let bytes = sealed::read(fleet, &path(hash), object)?;
    (Hash::of(&bytes) == hash).then_some(bytes)
}

/// Where it lies in a storage.
pub(crate) fn path(hash: Hash) -> String {
    format!("{FOLDER}/{hash}")
}

/// The photo whose path that is.
pub(crate) fn of_path(path: &str) -> Option<Hash> {
    path.strip_prefix(FOLDER)?.strip_prefix('/')?.parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn hash(number: u8) -> Hash {
        Hash::from_bytes([number; 32])
    }

    proptest! {
        /// Whatever is named, here and listed: each photo has one of four fates, nothing that nobody names moves, and
        /// after doing what the plan says the next one has nothing to do.
        #[test]
        fn only_what_is_missing_moves_and_an_exchange_leaves_nothing_to_do(
            photos in proptest::collection::vec((any::<bool>(), any::<bool>(), 0_u8..3), 0..40),
        ) {
            let (mut named, mut here, mut listed) = (BTreeMap::new(), BTreeSet::new(), BTreeMap::new());
            for (number, (is_named, is_here, there)) in (0_u8..).zip(&photos) {
                let length = u64::from(number) + 1;
                if *is_named {
                    named.insert(hash(number), length);
                }
                if *is_here {
                    here.insert(hash(number));
                }
                match there {
                    0 => {}
                    1 => drop(listed.insert(hash(number), length + sealed::MORE)),
                    _ => drop(listed.insert(hash(number), length)),
                }
            }
            let plan = plan_photos(&named, &here, &listed);
            let whole = |hash: &Hash| listed.get(hash).is_some_and(|size| *size == named[hash] + sealed::MORE);
            prop_assert!(plan.fetch.iter().all(|hash| !here.contains(hash) && whole(hash)));
            prop_assert!(plan.publish.iter().all(|hash| here.contains(hash) && !whole(hash)));
            prop_assert!(plan.wait.iter().all(|hash| !here.contains(hash) && !whole(hash)));
            let settled = named.keys().filter(|hash| here.contains(hash) && whole(hash)).count();
            prop_assert_eq!(plan.fetch.len() + plan.publish.len() + plan.wait.len() + settled, named.len());
            here.extend(&plan.fetch);
            listed.extend(plan.publish.iter().map(|hash| (*hash, named[hash] + sealed::MORE)));
            let next = plan_photos(&named, &here, &listed);
            prop_assert_eq!((next.fetch, next.publish, next.wait), (vec![], vec![], plan.wait));
        }

        #[test]
        fn a_photo_comes_back_and_nothing_else_passes_for_it(bytes: Vec<u8>, at: prop::sample::Index) {
            let (ours, theirs) = (FleetKey::from_bytes([7; 32]), FleetKey::from_bytes([8; 32]));
            let named = Hash::of(&bytes);
            let object = seal_photo(&bytes, &ours);
            prop_assert_eq!(object.len() as u64, bytes.len() as u64 + sealed::MORE);
            prop_assert_eq!(open_photo(&object, named, &ours), Some(bytes.clone()));
            prop_assert_eq!(open_photo(&object, named, &theirs), None);
            prop_assert_eq!(open_photo(&object, hash(1), &ours), None);
            let mut changed = object.clone();
            let at = at.index(changed.len());
            changed[at] ^= 1;
            prop_assert_eq!(open_photo(&changed, named, &ours), None);
            prop_assert_eq!(open_photo(&object[..at], named, &ours), None);
            prop_assert_eq!(of_path(&path(named)), Some(named));
        }
    }
}
