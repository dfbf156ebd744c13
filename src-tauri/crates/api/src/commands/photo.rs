//! `photo`: pictures of a site, a machine, a place or a hose. Their bytes stand beside the register; the log names them.

use crate::commands::File;
use crate::{Answer, Api, ApiError};
use hosewright_core::record::{About, Body, Hash, PhotoAdded};
use hosewright_store::PhotoKept;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What every photo is kept as.
const MIME: &str = "image/jpeg";

/// What a photo is of. Its bytes come beside the question.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PhotoAdd {
    /// The thing in the picture.
    pub about: About,
}

/// A photo that is on record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PhotoOnRecord {
    /// Hash of its bytes as they are kept.
    pub sha256: Hash,
    /// Their length.
    #[ts(type = "number")]
    pub length: u64,
    /// The same picture was on record of the same thing already: nothing was written.
    pub known: bool,
}

/// Keeps a picture: upright, at most 1600 pixels on its longer side, as a JPEG without what its file tells besides (place,
/// device, names). What is answered is on the disk.
///
/// # Errors
/// The bytes are no picture; there is no such thing; this device may not write.
pub fn add(api: &mut Api, asked: PhotoAdd, picture: &[u8]) -> Result<Answer<PhotoOnRecord>, ApiError> {
    let bytes = hosewright_sight::kept(picture)?;
    let now = api.world.now();
    let register = api.register()?;
    // The bytes first: what the log names is here, and bytes that nothing names do no harm.
    let sha256 = register.keep_photo(&bytes)?;
    let length = bytes.len() as u64;
    let known = register.has_photo(&asked.about, sha256)?;
    if !known {
        let added = PhotoAdded { about: asked.about, sha256, mime: MIME.to_owned(), length };
        register.append([Body::PhotoAdded(added)], now)?;
    }
    Ok(api.answer(PhotoOnRecord { sha256, length, known }))
}

/// Whose photos.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PhotoQuestion {
    /// Of this thing alone; all without.
    #[serde(default)]
    #[ts(optional)]
    pub about: Option<About>,
}

/// Photos on record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct Photos {
    /// The newest first.
    pub photos: Vec<PhotoKept>,
}

/// The photos on record, whether or not their bytes are here.
///
/// # Errors
/// The register can not be read.
pub fn list(api: &mut Api, asked: PhotoQuestion, _: &[u8]) -> Result<Answer<Photos>, ApiError> {
    let photos = api.register()?.photos(asked.about.as_ref())?;
    Ok(api.answer(Photos { photos }))
}

/// Which photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PhotoRead {
    /// Hash of its bytes.
    pub sha256: Hash,
}

/// A photo's bytes, proved by their hash.
///
/// # Errors
/// [`ApiError::nothing`] where no photo has that hash, or its bytes have not come yet; they are damaged.
pub fn read(api: &mut Api, asked: PhotoRead, _: &[u8]) -> Result<File, ApiError> {
    let PhotoRead { sha256 } = asked;
    let register = api.register()?;
    if !register.photos_named()?.contains_key(&sha256) {
        return Err(ApiError::nothing("sha256", api.words.say("photo-no-such", &[])));
    }
    let bytes = register.photo(sha256)?;
    let short: String = sha256.to_string().chars().take(12).collect();
    Ok(File { name: format!("photo-{short}.jpg"), mime: MIME, bytes })
}
