//! `share`: the exchange with the other devices of a fleet.

use crate::args::Share;
use crate::bench::open;
use crate::input;
use crate::outcome::Outcome;
use crate::tag::device_named;
use hosewright_api::commands::Nothing;
use hosewright_api::commands::left_out::{LeftOutQuestion, left_out};
use hosewright_api::commands::share::{self as shares, ShareSet};
use hosewright_api::{Api, ApiError};
use std::path::Path;

/// Runs what was asked.
///
/// # Errors
/// Whatever the command refuses.
pub fn share(api: &mut Api, db: &Path, command: Option<&Share>, json: bool) -> Result<Outcome, ApiError> {
    open(api, db)?;
    match command {
        None => Outcome::of(&shares::show(api, Nothing {}, &[])?, json, api.words()),
        Some(Share::Set { url, endpoint, region, user }) => {
            // A secret on the command line would stand in the shell's history.
            let secret = user.as_ref().map(|_| secret()).transpose()?;
            let (url, endpoint, region, user) = (url.clone(), endpoint.clone(), region.clone(), user.clone());
            let asked = ShareSet { url, endpoint, region, user, secret };
            Outcome::of(&shares::set(api, asked, &[])?, json, api.words())
        }
        Some(Share::LeftOut { device }) => {
            let device = device_named(api, device)?;
            Outcome::of(&left_out(api, LeftOutQuestion { device }, &[])?, json, api.words())
        }
        Some(Share::Now) => Outcome::of(&shares::exchange(api, Nothing {}, &[])?, json, api.words()),
    }
}

fn secret() -> Result<String, ApiError> {
    let bytes = input::bytes(Path::new("-"))?;
    let text = String::from_utf8(bytes).map_err(|_| ApiError::input("secret", "a password is text"))?;
    Ok(text.trim_end_matches(['\r', '\n']).to_owned())
}
