//! `people`: names beside the log, which can be erased while the record stays whole.

use super::Nothing;
use crate::{Answer, Api, ApiError};
use hosewright_core::record::PersonId;
use hosewright_store::Person;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Everyone with a name.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct People {
    /// By name.
    pub people: Vec<Person>,
}

/// Everyone with a name.
///
/// # Errors
/// The register can not be read.
pub fn list(api: &mut Api, _: Nothing, _: &[u8]) -> Result<Answer<People>, ApiError> {
    let people = api.register()?.people()?;
    Ok(api.answer(People { people }))
}

/// A person to be entered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct NewPerson {
    /// As the record shows it.
    pub name: String,
}

/// Who was entered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct PersonAdded {
    /// The id by which the record names them.
    pub person: PersonId,
}

/// Enters a person under a new id.
///
/// # Errors
/// The name is blank or too long; the register can not be written.
pub fn add(api: &mut Api, asked: NewPerson, _: &[u8]) -> Result<Answer<PersonAdded>, ApiError> {
    let person = PersonId::from_bytes(api.world.random());
    let now = api.world.now();
    api.register()?.name_person(person, &asked.name, now).map_err(|error| match error {
        hosewright_store::Error::Name { .. } => ApiError::input("name", error),
        other => other.into(),
    })?;
    Ok(api.answer(PersonAdded { person }))
}

/// Whose name is erased.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct PersonErased {
    /// Their id.
    pub person: PersonId,
}

/// Erases a name for good, here and on every device that merges from here.
///
/// # Errors
/// The register can not be written.
pub fn erase(api: &mut Api, asked: PersonErased, _: &[u8]) -> Result<Answer<PersonErased>, ApiError> {
    api.register()?.erase_person(asked.person)?;
    Ok(api.answer(asked))
}
