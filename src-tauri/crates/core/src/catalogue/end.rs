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

/// A four-bolt flange. Its family is `flange` and the code: `flange 61`, `flange 62`.
#[derive(Debug, Clone, PartialEq)]
pub struct Flange {
    /// Family, such as `flange 61`.
    pub family: String,
    /// Standard.
    pub standard: String,
    /// Size as written, such as `-12`; the bolt circle (`BC40`) for the square pump flanges.
    pub size: String,
    /// Dash size.
    pub dash: Option<i16>,
    /// Hose size.
    pub dn: Option<Dn>,
    /// Diameter of the flange head.
    pub head_od_mm: Option<Millimetres>,
    /// Thickness of the flange head.
    pub head_thickness_mm: Option<Millimetres>,
    /// Bolt spacing, long side, centre to centre.
    pub bolt_long_mm: Option<Millimetres>,
    /// Bolt spacing, short side.
    pub bolt_short_mm: Option<Millimetres>,
    /// Metric bolt.
    pub bolt_metric: Option<String>,
    /// Inch bolt.
    pub bolt_inch: Option<String>,
    /// Bore of the port.
    pub port_bore_mm: Option<Millimetres>,
    /// O-ring inside diameter.
    pub oring_id_mm: Option<Millimetres>,
    /// O-ring section.
    pub oring_section_mm: Option<Millimetres>,
    /// Rating; blank is not known, never unlimited.
    pub max_pressure_bar: Option<Bar>,
    /// Source and basis of the row.
    pub provenance: Provenance,
    /// Basis of the head's diameter, which differs from row to row.
    pub head_od_basis: Basis,
    /// Basis of the head's thickness.
    pub head_thickness_basis: Basis,
    /// Basis of the bolt spacing.
    pub bolt_spacing_basis: Basis,
    /// Basis of the pressure.
    pub pressure_basis: Basis,
    /// Remarks.
    pub note: String,
}

/// The rating of an end as a hose end, from hose-fitting standards.
#[derive(Debug, Clone, PartialEq)]
pub struct EndRating {
    /// Family.
    pub family: String,
    /// Size.
    pub size: String,
    /// Rating; blank is not known, never unlimited.
    pub max_pressure_bar: Option<Bar>,
    /// Standard of the rating.
    pub standard: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// An end or a flange.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Connection<'c> {
    /// A threaded or plain end.
    End(&'c EndRow),
    /// A four-bolt flange.
    Flange(&'c Flange),
}

impl<'c> Connection<'c> {
    /// The family's name.
    pub fn family(self) -> &'c str {
        match self {
            Self::End(end) => &end.family,
            Self::Flange(flange) => &flange.family,
        }
    }

    /// The size within the family.
    pub fn size(self) -> &'c str {
        match self {
            Self::End(end) => &end.size,
            Self::Flange(flange) => &flange.size,
        }
    }

    /// The standard.
    pub fn standard(self) -> &'c str {
        match self {
            Self::End(end) => &end.standard,
            Self::Flange(flange) => &flange.standard,
        }
    }

    /// The dash size.
    pub fn dash(self) -> Option<i16> {
        match self {
            Self::End(end) => end.dash,
            Self::Flange(flange) => flange.dash,
        }
    }

    /// The hose size it goes with in the standard.
    pub fn dn(self) -> Option<Dn> {
        match self {
            Self::End(end) => end.dn,
            Self::Flange(flange) => flange.dn,
        }
    }

    /// The rating of the connection itself, which no hose end on it can pass.
    pub fn ceiling(self) -> EndRating {
        let (pressure, basis, source, note) = match self {
            Self::End(row) => (row.max_pressure_bar, row.pressure_basis, &row.provenance.source, &row.note),
            Self::Flange(row) => {
                (row.max_pressure_bar, row.pressure_basis, &row.provenance.source, &row.note)
            }
        };
        EndRating {
            family: self.family().to_owned(),
            size: self.size().to_owned(),
            max_pressure_bar: pressure,
            standard: self.standard().to_owned(),
            provenance: Provenance { source: source.clone(), basis },
            note: note.clone(),
        }
    }
}

/// How an end is tightened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum TorqueMethod {
    /// Nm on a torque spanner.
    Torque,
    /// Flats of the hex from finger tight.
    FlatsFromFingerTight,
    /// Degrees from where the force rises.
    Angle,
}

/// A tightening value of a table. The maker's figure comes first.
#[derive(Debug, Clone, PartialEq)]
pub struct Torque {
    /// Family.
    pub family: String,
    /// Size.
    pub size: String,
    /// What the value is.
    pub method: TorqueMethod,
    /// Lower value.
    pub min: Option<f64>,
    /// Upper value.
    pub max: Option<f64>,
    /// Material, lubrication, screw.
    pub condition: String,
    /// Source and basis.
    pub provenance: Provenance,
    /// Remarks.
    pub note: String,
}

/// Two ends of which the female of one starts on the male of the other, and must not.
#[derive(Debug, Clone, PartialEq)]
pub struct Lookalike {
    /// Family of the half with the nut or port.
    pub female_family: String,
    /// Its size.
    pub female_size: String,
    /// Family of the male it starts on.
    pub male_family: String,
    /// Its size.
    pub male_size: String,
    /// Which starts on which, in the table's words.
    pub starts: String,
    /// What happens, in the table's words.
    pub danger: String,
    /// Which reading parts the two, in the table's words.
    pub separates: String,
    /// Source and basis.
    pub provenance: Provenance,
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

pub(super) const FLANGE_COLUMNS: &str = "\
    family,standard,size,dash,dn,head_od_mm,head_thickness_mm,bolt_long_mm,bolt_short_mm,bolt_metric,\
    bolt_inch,port_bore_mm,oring_id_mm,oring_section_mm,max_pressure_bar,head_od_basis,\
    head_thickness_basis,bolt_spacing_basis,pressure_basis,source,basis,note";

impl Flange {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            family: row.text("family")?,
            standard: row.text("standard")?,
            size: row.text("size")?,
            dash: row.optional_value("dash", "a dash size such as -8")?,
            dn: row.dn("dn")?,
            head_od_mm: row.mm("head_od_mm")?,
            head_thickness_mm: row.mm("head_thickness_mm")?,
            bolt_long_mm: row.mm("bolt_long_mm")?,
            bolt_short_mm: row.mm("bolt_short_mm")?,
            bolt_metric: row.optional_text("bolt_metric"),
            bolt_inch: row.optional_text("bolt_inch"),
            port_bore_mm: row.mm("port_bore_mm")?,
            oring_id_mm: row.mm("oring_id_mm")?,
            oring_section_mm: row.mm("oring_section_mm")?,
            max_pressure_bar: row.bar("max_pressure_bar")?,
            provenance: row.provenance()?,
            head_od_basis: row.basis("head_od_basis")?,
            head_thickness_basis: row.basis("head_thickness_basis")?,
            bolt_spacing_basis: row.basis("bolt_spacing_basis")?,
            pressure_basis: row.basis("pressure_basis")?,
            note: row.note("note"),
        })
    }
}

pub(super) const RATING_COLUMNS: &str = "\
    family,size,max_pressure_bar,standard,source,basis,note";

impl EndRating {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            family: row.text("family")?,
            size: row.text("size")?,
            max_pressure_bar: row.bar("max_pressure_bar")?,
            standard: row.text("standard")?,
            provenance: row.provenance()?,
            note: row.note("note"),
        })
    }
}
