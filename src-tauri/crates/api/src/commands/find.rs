//! `find`: readings -> what it was.

use super::contradiction::contradicted;
use super::{lookalike, stray};
use crate::{Answer, Api, ApiError};
use hosewright_core::find::{self, Explained, Found, NextReading, Part, Readings, Why};
use hosewright_core::spec::{Gender, Role};
use hosewright_words::Words;

/// Readings of a failed hose -> a ranked list of what it can have been, and what to read next.
///
/// # Errors
/// Names the reading that can not be.
pub fn find(api: &mut Api, readings: Readings, _: &[u8]) -> Result<Answer<Found>, ApiError> {
    let mut found =
        find::find(api.catalogue, &readings).map_err(|error| ApiError::input(error.field(), &error))?;
    for like in found.ends.iter_mut().flat_map(|end| &mut end.lookalikes) {
        lookalike::write(&api.words, like);
    }
    for next in &mut found.next {
        next.how = how(&api.words, next, gender(&readings, next.of));
    }
    for stray in &mut found.strays {
        stray.words = stray::said(stray, &api.words);
    }
    for contradiction in &mut found.contradictions {
        contradiction.words = contradicted(contradiction, &api.words);
    }
    Ok(api.answer(found))
}

/// A candidate of `find`'s answer against a rival -> what each reading says for it.
///
/// # Errors
/// Names the reading that can not be; says where the list has no such candidate.
pub fn explain(api: &mut Api, why: Why, _: &[u8]) -> Result<Answer<Explained>, ApiError> {
    let explained =
        find::explain(api.catalogue, &why).map_err(|error| ApiError::input(error.field(), &error))?;
    let explained = explained.ok_or_else(|| {
        ApiError::nothing("candidate", format!("there is no candidate {}; 0 is the likeliest", why.candidate))
    })?;
    Ok(api.answer(explained))
}

/// Which half of an end was measured, where it was said.
fn gender(readings: &Readings, part: Part) -> Option<Gender> {
    let role = match part {
        Part::Hose => return None,
        Part::A => Role::A,
        Part::B => Role::B,
    };
    readings.ends.iter().find(|end| end.role == role)?.gender
}

/// Where the jaws go. Some readings are taken differently on the two halves.
fn how(words: &Words, next: &NextReading, gender: Option<Gender>) -> String {
    let plain = format!("how-{}", next.reading);
    let of_half = match gender {
        Some(Gender::Male) => format!("{plain}-male"),
        Some(Gender::Female) => format!("{plain}-female"),
        None => plain.clone(),
    };
    words.say(if words.has(&of_half) { &of_half } else { &plain }, &[])
}
