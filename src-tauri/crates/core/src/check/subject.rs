//! What the rules look at: the question with its names already found in the tables.

use super::fluid::{self, Fluid};
use super::rivals::Rivals;
use super::{CheckError, Evidence, Question};
use crate::catalogue::{
    Basis, Catalogue, Connection, HoseRow, HoseType, OutOfScope, Provenance, UnknownName,
};
use crate::find::EndFound;
use crate::quantity::Millimetres;
use crate::spec::{EndSpec, HoseRef, Role, Service, Spec};

/// A spec in its service, with its rows of the tables.
pub(super) struct Subject<'a> {
    pub(super) catalogue: &'a Catalogue,
    pub(super) question: &'a Question,
    /// Its hose is that of the question; [`Subject::hose`] is the one looked at.
    pub(super) spec: &'a Spec,
    pub(super) service: &'a Service,
    pub(super) hose: Option<Hose<'a>>,
    pub(super) ends: Vec<End<'a>>,
    pub(super) fluid: Option<Fluid<'a>>,
    /// Why the fluid is none of this trade's.
    pub(super) refused: Option<&'a OutOfScope>,
    pub(super) rivals: Rivals<'a>,
}

/// The hose by size row and type.
#[derive(Clone, Copy)]
pub(super) struct Hose<'a> {
    pub(super) row: &'a HoseRow,
    pub(super) kind: &'a HoseType,
    /// The spec's own hose, with the user's figures; none for any other.
    spec: Option<&'a HoseRef>,
}

/// An end and its row.
#[derive(Clone, Copy)]
pub(super) struct End<'a> {
    pub(super) spec: &'a EndSpec,
    pub(super) connection: Connection<'a>,
}

impl<'a> Subject<'a> {
    /// Finds every name of the question in the tables.
    pub(super) fn of(catalogue: &'a Catalogue, question: &'a Question) -> Result<Self, CheckError> {
        let spec = &question.spec;
        let service = &question.service;
        let hose = spec.hose.as_ref().map(|name| Hose::named(catalogue, name)).transpose()?;
        let ends = spec.ends.iter().map(|end| End::of(catalogue, end)).collect::<Result<_, _>>()?;
        let fluid = service.fluid.as_deref().and_then(|asked| Fluid::named(catalogue, asked));
        let refused = service.fluid.as_deref().and_then(|asked| fluid::refused(catalogue, asked));
        let found = question.found.as_ref();
        let rivals = found.map(|found| Rivals::plausible(catalogue, found)).unwrap_or_default();
        Ok(Self { catalogue, question, spec, service, hose, ends, fluid, refused, rivals })
    }

    /// The same with another hose.
    pub(super) fn with(&self, hose: Hose<'a>) -> Self {
        Self { hose: Some(hose), ends: self.ends.clone(), rivals: self.rivals.clone(), ..*self }
    }

    pub(super) fn end(&self, role: Role) -> Option<&End<'a>> {
        self.ends.iter().find(|end| end.spec.role == role)
    }

    pub(super) fn found(&self) -> Option<&'a Evidence> {
        self.question.found.as_ref()
    }

    /// What was read of that end, if it was read.
    pub(super) fn end_found(&self, role: Role) -> Option<&'a EndFound> {
        self.found()?.ends.iter().find(|end| end.role == role)
    }

    /// Where a caution of the trade comes from.
    pub(super) fn caution(&self, id: &str) -> Provenance {
        let caution = self.catalogue.cautions.iter().find(|caution| caution.id == id);
        caution.map_or_else(practice, |caution| caution.provenance.clone())
    }
}

impl<'a> Hose<'a> {
    fn named(catalogue: &'a Catalogue, name: &'a HoseRef) -> Result<Self, CheckError> {
        let unknown = |name| unknown("spec.hose", name);
        Ok(Self {
            row: catalogue.hose(&name.standard, &name.kind, name.dn).map_err(unknown)?,
            kind: catalogue.hose_type(&name.standard, &name.kind).map_err(unknown)?,
            spec: Some(name),
        })
    }

    /// That row with its type. None where the tables do not have the type.
    pub(super) fn of(catalogue: &'a Catalogue, row: &'a HoseRow) -> Option<Self> {
        Some(Self { row, kind: catalogue.hose_type(&row.standard, &row.kind).ok()?, spec: None })
    }

    /// How tight it may be bent: the user's own figure, or the table's.
    pub(super) fn min_bend_radius(&self) -> (Option<Millimetres>, Provenance) {
        match self.spec.and_then(|spec| spec.min_bend_radius_mm) {
            Some(own) => (Some(own), yours()),
            None => (self.row.min_bend_radius_mm, self.row.bend_provenance()),
        }
    }

    /// The lowest absolute pressure it bears inside, in kPa: the user's own figure, or the table's.
    pub(super) fn vacuum_kpa_abs(&self) -> (Option<f64>, Provenance) {
        match self.spec.and_then(|spec| spec.vacuum_kpa_abs) {
            Some(own) => (Some(own), yours()),
            None => (self.row.vacuum_kpa_abs, self.row.vacuum_provenance()),
        }
    }
}

impl<'a> End<'a> {
    fn of(catalogue: &'a Catalogue, spec: &'a EndSpec) -> Result<Self, CheckError> {
        let unknown = |name| unknown(&format!("spec.ends.{:?}", spec.role), name);
        Ok(Self { spec, connection: catalogue.connection(&spec.family, &spec.size).map_err(unknown)? })
    }

    /// Whether the end is bent. None while nobody said.
    pub(super) fn bent(&self) -> Option<bool> {
        bent(self.spec)
    }
}

/// A name that the tables do not have, said of the very key it stands under.
fn unknown(part: &str, name: UnknownName) -> CheckError {
    CheckError::Unknown { field: format!("{part}.{}", name.what), name }
}

/// Whether an end is bent, so that it has a direction and a drop. None while nobody said.
pub(crate) fn bent(end: &EndSpec) -> Option<bool> {
    let form = end.form.as_deref()?.to_lowercase();
    Some(["elbow", "compact", "block"].iter().any(|bent| form.starts_with(bent)))
}

/// How a hose is called in words.
pub(crate) fn hose_name(row: &HoseRow) -> String {
    format!("{} {} DN {}", row.standard, row.kind, row.dn)
}

/// A figure of the user's own, from their supplier.
pub(crate) fn yours() -> Provenance {
    Provenance { source: "yours".to_owned(), basis: Basis::Yours }
}

/// A rule of the trade with no single source.
pub(crate) fn practice() -> Provenance {
    Provenance { source: "trade practice".to_owned(), basis: Basis::CommonPractice }
}
