//! What each part may carry, and the weakest of them.

use super::Weakest;
use super::subject::{End, Subject, yours};
use crate::catalogue::{Basis, Catalogue, Connection, Provenance};
use crate::quantity::Bar;
use crate::spec::Role;

/// A part of the assembly and what it may carry.
pub(super) struct Rated {
    pub(super) part: Weakest,
    /// What it is called; only adapters have a name.
    pub(super) name: Option<String>,
    /// Its rating; none is not known, never unlimited.
    pub(super) pressure: Option<Bar>,
    pub(super) provenance: Provenance,
}

impl Rated {
    /// A figure without a basis is no figure, and no figure has a basis.
    fn new(part: Weakest, pressure: Option<Bar>, provenance: Provenance) -> Self {
        let pressure = pressure.filter(|_| provenance.basis != Basis::None);
        let basis = if pressure.is_some() { provenance.basis } else { Basis::None };
        Self { part, name: None, pressure, provenance: Provenance { basis, ..provenance } }
    }
}

/// Every part of the spec: hose, ends, adapters.
pub(super) fn parts(subject: &Subject<'_>) -> Vec<Rated> {
    let hose = subject.hose.map(|hose| {
        Rated::new(Weakest::Hose, hose.row.max_working_pressure_bar, hose.row.pressure_provenance())
    });
    let ends = subject.ends.iter().map(|end| rated_end(subject.catalogue, end));
    let adapters = subject.spec.adapters.iter().map(|adapter| Rated {
        name: Some(adapter.name.clone()),
        ..Rated::new(Weakest::Adapter, adapter.rating_bar, yours())
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
    let part = match end.spec.role {
        Role::A => Weakest::A,
        Role::B => Weakest::B,
    };
    match end.spec.rating_bar {
        Some(own) => Rated::new(part, Some(own), yours()),
        None => {
            let (pressure, provenance) = of_table(catalogue, end.connection);
            Rated::new(part, pressure, provenance)
        }
    }
}

fn of_table(catalogue: &Catalogue, connection: Connection<'_>) -> (Option<Bar>, Provenance) {
    let ceiling = connection.ceiling();
    let of_hose_end = catalogue
        .ratings
        .iter()
        .find(|row| row.family == connection.family() && row.size == connection.size());
    let Some(rating) = of_hose_end else {
        return (ceiling.max_pressure_bar, ceiling.provenance);
    };
    match (rating.max_pressure_bar, ceiling.max_pressure_bar) {
        (Some(own), Some(limit)) if limit < own => {
            // A ceiling lowers a stand-in and never makes a rating of it.
            let stand_in = rating.provenance.basis == Basis::Proxy;
            let basis = if stand_in { Basis::Proxy } else { ceiling.provenance.basis };
            (Some(limit), Provenance { basis, ..ceiling.provenance })
        }
        (own, _) => (own, rating.provenance.clone()),
    }
}
