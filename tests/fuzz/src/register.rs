//! What comes from another device: bundles, segments, a fleet's key.

use chrono::{DateTime, Utc};
use hosewright_core::fleet::{self as fleets, DeviceKey};
use hosewright_exchange::Segment;
use hosewright_store::Bundle;
use serde_json::json;
use sha2::{Digest, Sha256};

/// A bundle of a register. A changed one hardly ever has the right checksum, so it is read as it is and again with the
/// right one as its last line.
pub(crate) fn bundle(bytes: &[u8]) {
    let Some(text) = crate::text(bytes) else { return };
    let _ = Bundle::read(text);
    let text = text.strip_suffix('\n').unwrap_or(text);
    let body = match text.rsplit_once('\n') {
        Some((body, last)) if last.starts_with("{\"sha256\"") => format!("{body}\n"),
        _ => format!("{text}\n"),
    };
    if let Ok(bundle) = Bundle::read(&format!("{body}{{\"sha256\":\"{}\"}}\n", sum(body.as_bytes()))) {
        let _ = bundle.write();
    }
}

/// A segment: the bytes as they are, and as the lines of events inside one that was signed, which is as far as a
/// member's own device can go.
pub(crate) fn segment(bytes: &[u8]) {
    let _ = Segment::read(bytes, &[]);
    let Ok(payload) = zstd::bulk::compress(bytes, 1) else { return };
    let key = DeviceKey::from_bytes([7; 32]);
    let device = "0".repeat(31) + "1";
    let (none, sha256, by) = ("0".repeat(64), sum(&payload), key.public().to_string());
    let head = json!({
        "hosewright_segment": 1, "device": device, "from": 1, "to": 2, "previous": none, "last": none,
        "fleet": null, "sha256": sha256, "by": by,
    })
    .to_string();
    let signature = key.signature(&head);
    let _ = Segment::read(&[head.as_bytes(), b"\n", signature.as_bytes(), b"\n", &payload].concat(), &[]);
}

/// The text that hands a fleet's key on; what is wrong with one is said without what stands in it.
pub(crate) fn fleet(bytes: &[u8]) {
    let Some(text) = crate::text(bytes) else { return };
    // The day of the seed.
    let now: DateTime<Utc> = DateTime::from_timestamp(1_795_723_920, 0).unwrap_or_default();
    match fleets::read(text, now) {
        Ok(handed) => {
            let again = fleets::hand_on(
                &handed.name,
                &handed.key,
                handed.founder.as_ref(),
                &DeviceKey::from_bytes([7; 32]),
                now,
            );
            assert_eq!(fleets::read(&again, now).map(|read| read.key), Ok(handed.key));
        }
        Err(error) => {
            let said = error.to_string();
            // What is long and of a key's letters alone: no message has such a word of its own.
            let of_a_key = |word: &str| {
                word.len() > 8 && word.bytes().all(|c| c.is_ascii_uppercase() || c.is_ascii_digit())
            };
            let key = text.lines().filter_map(|line| line.strip_prefix("KEY ")).find(|key| of_a_key(key));
            assert!(key.is_none_or(|key| !said.contains(key)), "{said}");
        }
    }
}

/// SHA-256 in hexadecimal digits.
fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
