//! Questions as JSON documents, and what they are answered with.

use hosewright_api::{document, frame as framed, question};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::check::{self, Question};
use hosewright_core::find::{self, Readings};
use hosewright_core::route::field::{self, FieldQuestion};

/// Readings.
pub(crate) fn readings(bytes: &[u8]) {
    if let Some(Ok(readings)) = crate::text(bytes).map(|text| document(text).and_then(question::<Readings>)) {
        let _ = find::find(Catalogue::embedded(), &readings);
    }
}

/// The question of a check.
pub(crate) fn check(bytes: &[u8]) {
    if let Some(Ok(asked)) = crate::text(bytes).map(|text| document(text).and_then(question::<Question>)) {
        let _ = check::check(Catalogue::embedded(), &asked);
    }
}

/// A routing as a technician says it; what is answered can be written down.
pub(crate) fn field(bytes: &[u8]) {
    if let Ok(asked) = serde_json::from_slice::<FieldQuestion>(bytes)
        && let Ok(routed) = field::field(Catalogue::embedded(), &asked)
    {
        assert!(serde_json::to_string(&routed).is_ok(), "{routed:?}");
    }
}

/// A document and bytes in one body.
pub(crate) fn frame(bytes: &[u8]) {
    let _ = framed::unpack(bytes);
}
