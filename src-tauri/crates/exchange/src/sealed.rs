//! Encryption to a fleet: XChaCha20-Poly1305 under a key derived from the fleet's (HKDF-Expand, RFC 5869).
//!
//! The nonce is a keyed hash of what is encrypted, so the same segment gives the same bytes and no device needs a good
//! source of chance: two texts never share one but by a collision of 192 bits.

use chacha20poly1305::aead::{Aead, Payload};
use chacha20poly1305::{Key, KeyInit, XChaCha20Poly1305, XNonce};
use hosewright_core::fleet::FleetKey;

/// Bytes of a nonce.
const NONCE: usize = 24;

/// Bytes by which what is encrypted is longer: the nonce, and the 16 of the tag (RFC 8439).
pub(crate) const MORE: u64 = NONCE as u64 + 16;

/// The text encrypted, its nonce before it.
pub(crate) fn write(key: &FleetKey, bound: &str, text: &[u8]) -> Vec<u8> {
    let whole = key.keyed_hash("HOSE SEGMENT NONCE", &[bound.as_bytes(), b"\n", text].concat());
    let nonce = whole.get(..NONCE).unwrap_or_default();
    // It fails for texts of more than 256 GiB alone.
    let encrypted = cipher(key)
        .encrypt(XNonce::from_slice(nonce), Payload { msg: text, aad: bound.as_bytes() })
        .unwrap_or_default();
    [nonce, &encrypted].concat()
}

/// The text again; none where the key is another or a bit was changed.
pub(crate) fn read(key: &FleetKey, bound: &str, bytes: &[u8]) -> Option<Vec<u8>> {
    let (nonce, encrypted) = bytes.split_at_checked(NONCE)?;
    cipher(key).decrypt(XNonce::from_slice(nonce), Payload { msg: encrypted, aad: bound.as_bytes() }).ok()
}

fn cipher(key: &FleetKey) -> XChaCha20Poly1305 {
    XChaCha20Poly1305::new(&Key::from(key.derived("HOSE SEGMENT KEY")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_fleet_reads_it_and_nothing_of_it_may_be_changed() {
        let (ours, theirs) = (FleetKey::from_bytes([7; 32]), FleetKey::from_bytes([8; 32]));
        let sealed = write(&ours, "a/1-9", b"the text");
        assert_eq!(read(&ours, "a/1-9", &sealed).as_deref(), Some(b"the text".as_slice()));
        assert_eq!(read(&theirs, "a/1-9", &sealed), None);
        assert_eq!(read(&ours, "a/1-8", &sealed), None);
        assert_eq!(write(&ours, "a/1-9", b"the text"), sealed, "the same text gives the same bytes");
        for at in 0..sealed.len() {
            let mut changed = sealed.clone();
            if let Some(byte) = changed.get_mut(at) {
                *byte ^= 1;
            }
            assert_eq!(read(&ours, "a/1-9", &changed), None, "changed at {at}");
            assert_eq!(read(&ours, "a/1-9", sealed.get(..at).unwrap_or_default()), None, "cut at {at}");
        }
    }
}
