//! A document and bytes in one body: the length of the JSON in four bytes, little-endian, the JSON in
//! UTF-8, then the bytes as they are. Pictures and papers go so; a call without bytes is plain JSON.

use crate::ApiError;
use serde_json::Value;

const HEAD: usize = 4;

/// Packs a document and its bytes.
///
/// # Errors
/// A document of more than four gigabytes.
pub fn pack(document: &Value, bytes: &[u8]) -> Result<Vec<u8>, ApiError> {
    let json = document.to_string();
    let length = u32::try_from(json.len()).map_err(|_| ApiError::input("", "the document is too long"))?;
    Ok([&length.to_le_bytes(), json.as_bytes(), bytes].concat())
}

/// Takes a frame apart.
///
/// # Errors
/// When it is cut short or its document is no JSON.
pub fn unpack(frame: &[u8]) -> Result<(Value, &[u8]), ApiError> {
    let short = || ApiError::input("", "the message is cut short; send it again");
    let (head, rest) = frame.split_first_chunk::<HEAD>().ok_or_else(short)?;
    let length = usize::try_from(u32::from_le_bytes(*head)).map_err(|_| short())?;
    let (json, bytes) = rest.split_at_checked(length).ok_or_else(short)?;
    let document = serde_json::from_slice(json)
        .map_err(|error| ApiError::input("", format!("the message is no JSON document: {error}")))?;
    Ok((document, bytes))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_frame_comes_apart_as_it_was_put_together(text in ".*", bytes: Vec<u8>) {
            let document = serde_json::json!({ "text": text });
            let frame = pack(&document, &bytes).unwrap();
            let (read, rest) = unpack(&frame).unwrap();
            prop_assert_eq!(read, document);
            prop_assert_eq!(rest, &bytes[..]);
        }

        #[test]
        fn no_bytes_make_it_panic(bytes: Vec<u8>) {
            let _ = unpack(&bytes);
        }
    }
}
