//! `office`: the register as tables of an office's database.

use crate::bench::open;
use crate::outcome::Outcome;
use hosewright_api::commands::Nothing;
use hosewright_api::commands::share::{self as shares, Exchanged};
use hosewright_api::{Answer, Api, ApiError, PROGRAM, World};
use hosewright_core::record::DeviceId;
use hosewright_office::{Address, Kept, Office, OfficeError};
use hosewright_store::Register;
use serde::Serialize;
use std::path::Path;

/// What was brought over, and the exchange that went before it.
#[derive(Serialize)]
pub struct OfficeKept {
    /// What was brought over.
    #[serde(flatten)]
    pub kept: Kept,
    /// The exchange; none where no storage is chosen or it failed.
    pub exchanged: Option<Exchanged>,
    /// Why there was no exchange, though a storage is chosen.
    pub not_exchanged: Option<String>,
}

/// Exchanges with the fleet where a storage is chosen, and brings the office's database up to the register.
///
/// # Errors
/// The database does not answer or refuses. A failed exchange is none: the copy is then of what is here.
pub fn office(api: &mut Api, db: &Path, to: &str, json: bool) -> Result<Outcome, ApiError> {
    // The variable that every program of PostgreSQL reads: what stands on a command line, others see.
    let password = std::env::var("PGPASSWORD").ok();
    let address = Address::read(to, password.as_deref()).map_err(said)?;
    open(api, db)?;
    let (exchanged, not_exchanged) = match exchange(api)? {
        Some(Ok(exchanged)) => (Some(exchanged), None),
        Some(Err(error)) => (None, Some(error.message)),
        None => (None, None),
    };
    let mut world = crate::world::Machine;
    let register = Register::open(db, DeviceId::from_bytes(world.random()))?;
    let mut office = Office::open(&address).map_err(said)?;
    let kept = office.keep(&register, PROGRAM, world.now()).map_err(said)?;
    let answer = Answer::new(OfficeKept { kept, exchanged, not_exchanged }, api.catalogue());
    Outcome::of(&answer, json, api.words())
}

/// An exchange, where a storage is chosen.
fn exchange(api: &mut Api) -> Result<Option<Result<Exchanged, ApiError>>, ApiError> {
    let is_chosen = shares::show(api, Nothing {}, &[])?.content.url.is_some();
    Ok(is_chosen.then(|| Ok(shares::exchange(api, Nothing {}, &[])?.content)))
}

fn said(error: OfficeError) -> ApiError {
    match error {
        OfficeError::Address { .. } | OfficeError::Prefer => ApiError::input("to", error),
        OfficeError::Register(error) => error.into(),
        other => ApiError::file("", other),
    }
}
