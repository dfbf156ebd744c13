//! The picture that comes with a question: a file, or a frame of a live camera as it is.

use crate::ApiError;
use crate::error::Said;
use hosewright_sight::{Found, SightError};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Says that the bytes are no file but a frame of a live camera: the light of each pixel, 0 to 255, row by row.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct FrameSize {
    /// Pixels in a row.
    pub width: u32,
    /// Rows.
    pub height: u32,
}

impl From<SightError> for ApiError {
    fn from(error: SightError) -> Self {
        let (id, values) = match &error {
            SightError::Kind => ("picture-is-none", vec![]),
            SightError::TooLarge { width, height, limit } => (
                "picture-too-large",
                vec![
                    ("width", width.to_string()),
                    ("height", height.to_string()),
                    ("limit", limit.to_string()),
                ],
            ),
            SightError::Broken(cause) => ("picture-broken", vec![("cause", cause.clone())]),
        };
        ApiError { words: Some(Said { id, values }), ..ApiError::file("", error) }
    }
}

/// Every code in a picture; of a frame, those that the short way finds.
pub(super) fn codes(frame: Option<FrameSize>, bytes: &[u8]) -> Result<Vec<Found>, ApiError> {
    let Some(FrameSize { width, height }) = frame else {
        return Ok(hosewright_sight::read(bytes)?);
    };
    let pixels = u64::from(width) * u64::from(height);
    if pixels != bytes.len() as u64 {
        let why = format!(
            "a frame of {width} x {height} has {pixels} bytes, one a pixel, and {} came",
            bytes.len()
        );
        return Err(ApiError::input("frame", why));
    }
    Ok(hosewright_sight::read_frame(width as usize, height as usize, bytes))
}

#[cfg(test)]
mod tests {
    use super::*;
    use hosewright_words::{Language, Words};

    #[test]
    fn what_is_wrong_with_a_picture_is_said_in_every_language_and_in_english_as_the_reader_says_it() {
        for error in [
            SightError::Kind,
            SightError::TooLarge { width: 9000, height: 8000, limit: 64 },
            SightError::Broken("it ends early".to_owned()),
        ] {
            let plain = error.to_string();
            let error = ApiError::from(error);
            let said = |language| error.clone().in_words(&Words::of(language)).message;
            assert_eq!(said(Language::English), plain);
            for language in [Language::German, Language::Spanish] {
                assert!(said(language) != plain && !said(language).starts_with("picture-"), "{plain}");
            }
        }
    }

    #[test]
    fn a_frame_of_another_size_than_it_says_is_refused_and_one_without_a_code_says_nothing() {
        let frame = Some(FrameSize { width: 4, height: 3 });
        let error = codes(frame, &[0; 11]).expect_err("a byte is missing");
        assert_eq!(error.field, "frame");
        assert!(error.message.contains("12 bytes") && error.message.contains("11 came"), "{error}");
        let wide = Some(FrameSize { width: u32::MAX, height: u32::MAX });
        assert!(codes(wide, &[]).is_err());
        assert_eq!(codes(frame, &[0; 12]).map(|found| found.len()), Ok(0));
    }
}
