//! Ends: threaded families, flanges, their ratings as hose ends, torques and look-alike dangers.

use super::table::{CatalogueError, Row};
use super::{Band, Basis, Provenance};
use crate::quantity::{Bar, Degrees, Dn, Millimetres};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// What seals.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Seal {
    /// Metal cone on cone.
    Cone,
    /// O-ring in a flat face.
    ORingFace,
    /// O-ring at the base of the thread.
    ORingShoulder,
    /// O-ring in a cone.
    ORingCone,
    /// Bonded washer under a shoulder.
    BondedWasher,
    /// The thread itself.
    Thread,
    /// Inverted flare.
    InvertedFlare,
    /// Flat gasket or washer.
    FlatGasket,
}

/// Shape of the sealing cone of the part measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Cone {
    /// Stands proud.
    Convex,
    /// Hollow.
    Concave,
}

/// One size of a family of ends.
#[derive(Debug, Clone, PartialEq)]
pub struct EndRow {
    /// Family, such as `JIC 37 flare`.
    pub family: String,
    /// Standard.
    pub standard: String,
    /// Size within the family, such as `-10` or `L15`.
    pub size: String,
    /// Dash size.
    pub dash: Option<i16>,
    /// Hose size it goes with in the standard.
    pub dn: Option<Dn>,
    /// Thread as written, such as `7/8-14 UNF`; none for plain ends.
    pub thread: Option<String>,
    /// Basic major diameter of the male.
    pub male_major_nom_mm: Option<Millimetres>,
    /// Outside diameter of a new male.
    pub male_major_mm: Option<Band>,
    /// Basic minor diameter of the female.
    pub female_minor_nom_mm: Option<Millimetres>,
    /// Inside diameter of a new female.
    pub female_minor_mm: Option<Band>,
    /// Pitch.
    pub pitch_mm: Option<Millimetres>,
    /// Threads an inch, where the thread is named so.
    pub tpi: Option<f64>,
    /// Taper thread (1 in 16).
    pub taper: bool,
    /// Flank angle of the thread: 60 for UN, metric, NPT; 55 for G and R.
    pub flank_angle_deg: Option<Degrees>,
    /// What seals; more than one where the family is used so.
    pub seals: Vec<Seal>,
    /// Included angle of the seat.
    pub seat_included_angle_deg: Option<Degrees>,
    /// Shape of the male half's cone.
    pub male_cone: Option<Cone>,
    /// Shape of the female half's cone.
    pub female_cone: Option<Cone>,
    /// Basis of both shapes.
    pub cone_basis: Basis,
    /// Across flats of the swivel nut; a weak clue.
    pub swivel_hex_mm: Option<Millimetres>,
    /// Outside diameter of the tube that names the size.
    pub tube_od_mm: Option<Millimetres>,
    /// Through bore of the male.
    pub male_bore_mm: Option<Millimetres>,
    /// The tube-fitting ceiling; blank is not known, never unlimited.
    pub max_pressure_bar: Option<Bar>,
    /// Basis of that pressure.
    pub pressure_basis: Basis,
    /// Source and basis of the row.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

pub(super) const END_COLUMNS: &str = "\
    family,standard,size,dash,dn,thread,male_major_nom_mm,male_major_min_mm,male_major_max_mm,\
    female_minor_nom_mm,female_minor_min_mm,female_minor_max_mm,pitch_mm,tpi,taper,flank_angle_deg,\
    seals,seat_included_angle_deg,male_cone,female_cone,cone_basis,swivel_hex_mm,tube_od_mm,\
    male_bore_mm,max_pressure_bar,pressure_basis,source,basis,note";

impl EndRow {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            family: row.text("family")?,
            standard: row.text("standard")?,
            size: row.text("size")?,
            dash: row.optional_value("dash", "a dash size such as -8")?,
            dn: row.dn("dn")?,
            thread: row.optional_text("thread"),
            male_major_nom_mm: row.mm("male_major_nom_mm")?,
            male_major_mm: row.band("male_major_min_mm", "male_major_max_mm")?,
            female_minor_nom_mm: row.mm("female_minor_nom_mm")?,
            female_minor_mm: row.band("female_minor_min_mm", "female_minor_max_mm")?,
            pitch_mm: row.mm("pitch_mm")?,
            tpi: row.optional_number("tpi")?,
            taper: row.yes("taper")?,
            flank_angle_deg: row.degrees("flank_angle_deg")?,
            seals: row.names("seals")?,
            seat_included_angle_deg: row.degrees("seat_included_angle_deg")?,
            male_cone: row.optional_name("male_cone")?,
            female_cone: row.optional_name("female_cone")?,
            cone_basis: row.basis("cone_basis")?,
            swivel_hex_mm: row.mm("swivel_hex_mm")?,
            tube_od_mm: row.mm("tube_od_mm")?,
            male_bore_mm: row.mm("male_bore_mm")?,
            max_pressure_bar: row.bar("max_pressure_bar")?,
            pressure_basis: row.basis("pressure_basis")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}
