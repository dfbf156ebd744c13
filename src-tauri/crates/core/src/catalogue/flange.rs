//! Four-bolt flanges.

use super::table::{CatalogueError, Row};
use super::{Basis, Provenance};
use crate::quantity::{Bar, Dn, Millimetres};

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
