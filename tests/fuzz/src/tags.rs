//! Tags: their pictures, their text, their code.

use hosewright_core::tag::{self as tags, TagCode, TagError};

/// A picture, PNG or JPEG: its codes, and what is kept of it as a photo.
pub(crate) fn picture(bytes: &[u8]) {
    let _ = hosewright_sight::read(bytes);
    if let Ok(kept) = hosewright_sight::kept(bytes) {
        assert!(hosewright_sight::kept(&kept).is_ok(), "what was kept is a picture");
    }
}

/// The code typed by hand; what is read comes back from how it is written.
pub(crate) fn code(bytes: &[u8]) {
    if let Some(Ok(code)) = crate::text(bytes).map(str::parse::<TagCode>) {
        assert_eq!(code.to_string().parse(), Ok(code));
    }
}

/// The text. A changed one hardly ever has the right checksum, so it is read once more with that; what is read must be
/// written as it was.
pub(crate) fn tag(bytes: &[u8]) {
    let Some(mut text) = crate::text(bytes).map(str::to_owned) else { return };
    let mut read = tags::read(&text);
    if let Err(TagError::Sum { found, right, .. }) = &read {
        let (before, sum) = text.split_at(text.rfind("SUM ").map_or(0, |at| at + "SUM ".len()));
        text = before.to_owned() + &sum.replacen(found.as_str(), right, 1);
        read = tags::read(&text);
    }
    if let Ok(content) = read {
        assert_eq!(tags::read(&tags::write(&content)), Ok(content));
    }
}
