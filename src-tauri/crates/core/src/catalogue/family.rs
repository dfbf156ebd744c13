//! Families of ends: what they serve as, and what their halves look like.

use super::table::{CatalogueError, Row};
use super::{Provenance, Seal};
use crate::spec::Gender;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A family of ends and what its halves look like.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Family {
    /// Name.
    pub family: String,
    /// What it serves as.
    pub part: FamilyPart,
    /// Where a stud's ring lies and what the port's mouth is; none where the family has no such thing.
    pub shoulder: Option<Shoulder>,
    /// What the male half looks like.
    pub male_looks: String,
    /// What the female half looks like.
    pub female_looks: String,
    /// Source and basis of these looks.
    pub provenance: Provenance,
}

/// What a family serves as.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FamilyPart {
    /// An end of a hose and its mate.
    HoseEnd,
    /// A port of the machine and the stud in it.
    Port,
    /// A plain tube.
    Tube,
    /// A hollow bolt with an eye.
    Banjo,
    /// A flange.
    Flange,
    /// A quick coupling.
    Coupling,
    /// A test point.
    TestPoint,
    /// A plug held by a staple.
    Staple,
    /// Water supply, never hydraulics.
    Water,
}

/// What one half of an end is at a glance.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum EndKind {
    /// A thread outside that seals at its nose, its mouth or on itself.
    Male,
    /// A loose nut over a nose, a seat or a flat sleeve.
    Nut,
    /// A thread outside with a shoulder and a ring or washer behind it.
    Stud,
    /// A thread inside a body.
    Socket,
    /// An eye or its hollow bolt.
    Banjo,
    /// A plain tube.
    Tube,
    /// A flange head.
    Flange,
    /// A half of a quick coupling.
    Coupling,
    /// A plug or socket for a staple.
    Staple,
    /// A test point or its small nut.
    TestPoint,
}

/// What lies at the shoulder of a stud and at the mouth of its port.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Shoulder {
    /// The mouth is a chamfer that takes an O-ring; the stud's ring lies right behind its thread.
    Chamfered,
    /// Mouth and collar are flat; a ring in the collar's face, an edge or a washer seals.
    Flat,
}

pub(super) const FAMILY_COLUMNS: &str = "family,part,shoulder,male_looks,female_looks,source,basis";

impl Family {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            family: row.text("family")?,
            part: row.name("part")?,
            shoulder: row.optional_name("shoulder")?,
            male_looks: row.text("male_looks")?,
            female_looks: row.text("female_looks")?,
            provenance: row.provenance()?,
        })
    }

    /// What a half of it is at a glance, of a row that seals so.
    #[must_use]
    pub fn kind(&self, gender: Option<Gender>, seals: &[Seal]) -> EndKind {
        // A thread that seals by itself, and a flared nut's, are screwed into a body.
        let is_in_body = matches!(seals.first(), Some(Seal::Thread | Seal::InvertedFlare));
        match (self.part, gender) {
            (FamilyPart::Port, Some(Gender::Female)) => EndKind::Socket,
            (FamilyPart::Port, _) => EndKind::Stud,
            (FamilyPart::HoseEnd | FamilyPart::Water, Some(Gender::Female)) if is_in_body => EndKind::Socket,
            (FamilyPart::HoseEnd | FamilyPart::Water, Some(Gender::Female)) => EndKind::Nut,
            (FamilyPart::HoseEnd | FamilyPart::Water, _) => EndKind::Male,
            (FamilyPart::Tube, _) => EndKind::Tube,
            (FamilyPart::Banjo, _) => EndKind::Banjo,
            (FamilyPart::Flange, _) => EndKind::Flange,
            (FamilyPart::Coupling, _) => EndKind::Coupling,
            (FamilyPart::TestPoint, _) => EndKind::TestPoint,
            (FamilyPart::Staple, _) => EndKind::Staple,
        }
    }
}
