//! What can go wrong with a storage or a segment, as every way in says it.

use crate::error::Said;
use crate::{Api, ApiError};
use hosewright_exchange::{SegmentError, StorageError};

impl From<StorageError> for ApiError {
    fn from(error: StorageError) -> Self {
        let (id, values) = match &error {
            StorageError::Address { url } => ("share-address", vec![("url", url.clone())]),
            StorageError::Away { cause } => ("share-away", vec![("cause", cause.clone())]),
            StorageError::Refused => ("share-refuses", vec![]),
            StorageError::Gone { name } => ("share-gone", vec![("name", name.clone())]),
        };
        let plain = match error {
            StorageError::Address { .. } => ApiError::input("url", error),
            _ => ApiError::file("", error),
        };
        ApiError { words: Some(Said { id, values }), ..plain }
    }
}

impl From<SegmentError> for ApiError {
    fn from(error: SegmentError) -> Self {
        let (id, values) = match &error {
            SegmentError::NoHead => ("share-no-segment", vec![]),
            SegmentError::Format { found } => ("share-newer", vec![("found", found.to_string())]),
            SegmentError::NotWhole => ("share-not-whole", vec![]),
            SegmentError::Signature => ("share-not-signed", vec![]),
            SegmentError::Foreign { fleet } => ("share-other-fleet", vec![("fleet", fleet.to_string())]),
            SegmentError::OtherEvents => ("share-other-events", vec![]),
            SegmentError::Empty => ("share-empty", vec![]),
            SegmentError::Event(_) | SegmentError::Payload(_) => ("share-unreadable", vec![]),
        };
        ApiError { words: Some(Said { id, values }), ..ApiError::file("", error) }
    }
}

/// No storage was chosen.
pub(super) fn no_storage() -> ApiError {
    let plain = ApiError::nothing("url", "no storage is chosen yet: share set tells where the fleet's is");
    ApiError { words: Some(Said { id: "share-choose-first", values: vec![] }), ..plain }
}

/// The device has no fleet to write to.
pub(super) fn no_fleet() -> ApiError {
    let plain = ApiError::nothing("fleet", "this device belongs to no fleet: begin one or join one first");
    ApiError { words: Some(Said { id: "share-join-first", values: vec![] }), ..plain }
}

impl Api {
    /// An error in the language in use, for an answer that tells of it.
    pub(super) fn told(&self, error: impl Into<ApiError>) -> String {
        error.into().in_words(&self.words).message
    }
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;
    use hosewright_core::fleet::FleetKey;
    use hosewright_words::{Language, Words};

    #[test]
    fn every_fault_of_an_exchange_is_said_in_every_language() {
        let unreadable = "x".parse().map(|_: hosewright_core::record::BodyText| ()).expect_err("no body");
        let faults = [
            StorageError::Address { url: "odd".into() }.into(),
            StorageError::Away { cause: "timed out".into() }.into(),
            StorageError::Refused.into(),
            StorageError::Gone { name: "segments/1".into() }.into(),
            SegmentError::NoHead.into(),
            SegmentError::Format { found: 9 }.into(),
            SegmentError::NotWhole.into(),
            SegmentError::Signature.into(),
            SegmentError::Foreign { fleet: FleetKey::from_bytes([1; 32]).mark() }.into(),
            SegmentError::OtherEvents.into(),
            SegmentError::Empty.into(),
            SegmentError::Event(hosewright_core::record::EventError::Body(unreadable)).into(),
            no_storage(),
            no_fleet(),
        ];
        for fault in faults {
            let in_words = |language| ApiError::clone(&fault).in_words(&Words::of(language)).message;
            let english = in_words(Language::English);
            // What lies beneath a segment that can not be read stays in the plain error.
            if !matches!(&fault.words, Some(Said { id: "share-unreadable", .. })) {
                assert_eq!(english, fault.message);
            }
            for language in [Language::German, Language::Spanish] {
                let said = in_words(language);
                assert!(said != english && !said.starts_with("share-"), "{said}");
            }
        }
    }
}
