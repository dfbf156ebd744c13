//! What each part may carry, and the weakest of them.

use super::Weakest;
use super::subject::{End, Subject};
use crate::catalogue::{Basis, Catalogue, Connection, Provenance};
use crate::quantity::Bar;
use crate::spec::Role;

/// A part of the assembly and what it may carry.
pub(super) struct Rated {
    pub(super) part: Weakest,
    /// What it is called in words.
    pub(super) name: String,
    /// Its rating; none is not known, never unlimited.
    pub(super) pressure: Option<Bar>,
    pub(super) provenance: Provenance,
}

/// Every part of the spec: hose, ends, adapters.
pub(super) fn parts(subject: &Subject<'_>) -> Vec<Rated> {
    let hose = subject.hose.map(|hose| Rated {
        part: Weakest::Hose,
        name: "hose".to_owned(),
        pressure: hose.row.max_working_pressure_bar,
        provenance: hose.row.pressure_provenance(),
    });
    let ends = subject.ends.iter().map(|end| rated_end(subject.catalogue, end));
    let adapters = subject.spec.adapters.iter().map(|adapter| Rated {
        part: Weakest::Adapter,
        name: adapter.name.clone(),
        pressure: adapter.rating_bar,
        provenance: yours(adapter.rating_bar),
    });
    hose.into_iter().chain(ends).chain(adapters).collect()
}

/// Rating of the whole and the part that sets it. None while a part is missing or its rating is
/// not known.
pub(super) fn assembly(subject: &Subject<'_>) -> Option<(Bar, Weakest)> {
    subject.hose?;
    subject.end(Role::A)?;
    subject.end(Role::B)?;
    let rated = parts(subject).into_iter().map(|part| Some((part.pressure?, part.part)));
    let rated = rated.collect::<Option<Vec<_>>>()?;
    rated.into_iter().min_by(|(a, _), (b, _)| a.get().total_cmp(&b.get()))
}

/// The user's own rating stands over the table's; then the hose-fitting standards' figure, with the
/// connection's as its ceiling.
fn rated_end(catalogue: &Catalogue, end: &End<'_>) -> Rated {
    let (pressure, provenance) = match end.spec.rating_bar {
        Some(own) => (Some(own), yours(Some(own))),
        None => of_table(catalogue, end.connection),
    };
    let part = match end.spec.role {
        Role::A => Weakest::A,
        Role::B => Weakest::B,
    };
    Rated { part, name: format!("{:?}", end.spec.role), pressure, provenance }
}

fn of_table(catalogue: &Catalogue, connection: Connection<'_>) -> (Option<Bar>, Provenance) {
    let ceiling = connection.ceiling();
    let is_it = |row: &&crate::catalogue::EndRating| {
        row.family == connection.family() && row.size == connection.size()
    };
    let Some(rating) = catalogue.ratings.iter().find(is_it) else {
        return (ceiling.max_pressure_bar, ceiling.provenance);
    };
    match (rating.max_pressure_bar, ceiling.max_pressure_bar) {
        (Some(own), Some(limit)) if limit < own => {
            // A ceiling lowers a stand-in and never makes a rating of it.
            let basis = if rating.provenance.basis == Basis::Proxy { Basis::Proxy } else { ceiling.provenance.basis };
            (Some(limit), Provenance { basis, ..ceiling.provenance })
        }
        (own, _) => (own, rating.provenance.clone()),
    }
}

fn yours(rating: Option<Bar>) -> Provenance {
    let basis = if rating.is_some() { Basis::Yours } else { Basis::None };
    Provenance { source: "yours".to_owned(), basis }
}
