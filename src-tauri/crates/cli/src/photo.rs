//! `register photo`: pictures of machines, places and hoses.

use crate::args::Photo;
use crate::input;
use crate::outcome::Outcome;
use crate::plain::Left;
use hosewright_api::commands::photo::{self as photos, PhotoAdd, PhotoQuestion, PhotoRead};
use hosewright_api::commands::register::{Named, named};
use hosewright_api::{Api, ApiError, Code};
use hosewright_core::record::{About, Hash};

/// Runs what was asked.
///
/// # Errors
/// Whatever the command refuses.
pub fn photo(api: &mut Api, command: &Photo, json: bool) -> Result<Outcome, ApiError> {
    match command {
        Photo::Add { what, picture } => {
            let about = about(api, what)?;
            let added = photos::add(api, PhotoAdd { about }, &input::bytes(picture)?);
            let added = added.map_err(|error| match error.code {
                Code::File => error.about(picture.display().to_string()),
                _ => error,
            })?;
            Outcome::of(&added, json, api.words())
        }
        Photo::List { what } => {
            let about = what.as_deref().map(|what| about(api, what)).transpose()?;
            Outcome::of(&photos::list(api, PhotoQuestion { about }, &[])?, json, api.words())
        }
        Photo::Save { photo, out } => {
            let sha256 = hash_of(api, photo)?;
            let file = photos::read(api, PhotoRead { sha256 }, &[])?;
            input::leave(out, &file.bytes)?;
            Outcome::of(&Left::at(out), json, api.words())
        }
    }
}

/// The thing that a text names.
fn about(api: &mut Api, what: &str) -> Result<About, ApiError> {
    Ok(match named(api, what)? {
        Named::Hose(code) => About::Hose(code),
        Named::Place(place) => About::Place(place),
        Named::Machine(machine) => About::Machine(machine),
    })
}

/// The photo whose hash begins so.
fn hash_of(api: &mut Api, beginning: &str) -> Result<Hash, ApiError> {
    let known = photos::list(api, PhotoQuestion::default(), &[])?.content.photos;
    let mut fits: Vec<Hash> = known.into_iter().map(|photo| photo.sha256).collect();
    fits.retain(|hash| !beginning.is_empty() && hash.to_string().starts_with(&beginning.to_lowercase()));
    fits.sort_unstable();
    fits.dedup();
    match fits.as_slice() {
        [one] => Ok(*one),
        [] => Err(ApiError::nothing("photo", api.words().say("photo-no-such", &[]))),
        many => Err(ApiError::input("photo", api.words().say("photo-many", &[("count", &many.len())]))),
    }
}
