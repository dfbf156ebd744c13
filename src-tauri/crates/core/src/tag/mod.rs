//! What a tag says: a spec and its history in plain text, which any phone shows to any person and
//! from which the hose can be rebuilt with no register and no signal.
//!
//! # Grammar, version 3
//!
//! UTF-8 text, one fact a line, lines parted by a line feed, in this order. Only the lines marked
//! `*` are always there. Nothing else may stand in the text, and a fact has only one writing.
//!
//! ```text
//! HOSE TAG 3 7KQ4M-2XR9D-D                    * grammar version, code of the tag
//! HOSE EN 853 2SN DN16, bend 130 mm, vacuum 20 kPa
//!                                               standard, type (one word), nominal diameter; the user's own
//!                                               smallest bend and lowest absolute pressure where given
//! A JIC 37 flare -10, female, elbow90, drop 55 mm, cut-off 32.5 mm, rated 350 bar
//! B flange 62 -12, straight                     family, size (one word); the rest where known
//! ADAPTER test point, rated 400 bar, at A, hose side JIC 37 flare -10, male, machine side ORFS -10, male
//!                                               one line for each; rating, end and its two sides where known
//! LENGTH 1240 mm                                overall, sealing point to sealing point
//! TURN 90 deg                                   from A to B, A's elbow up, clockwise to B's
//! COVER non-conductive                          plain, non-conductive, flame-resistant, antistatic
//! MAX 276 bar (4000 psi)                        pressure of the assembly, its weakest part's
//! LINE pressure                                 pressure, return, suction, case-drain, pilot, cylinder
//! FLUID HM
//! DUTY non-conductive                           what the place asks, parted by spaces
//! MADE 2026-11                                  or 2026-11-25
//! PROVED 552 bar                              * or NOT PROVED, or NOT PROVED: NO RIG
//! CATALOGUE 5f0c1d2e                          * version of the tables it was checked against
//! SEAL 7KQ4M 0123456789ABCDEF                   mark of a fleet and its seal on all above
//! SUM 35Z8E96                                 * CRC-32 of all above, without its line feed
//! ```
//!
//! Lengths are in mm and angles in degrees, with a decimal point. A pressure is in bar or psi,
//! whichever writes it exactly; `MAX` shows the other beside it, rounded as the trade prints it.
//! `rated`, `cut-off`, `bend` and `vacuum` are the user's own figures, from their supplier.
//!
//! In a name, `%2C` is the byte 2C (hexadecimal) of its UTF-8, and a lone `%` an empty name. So
//! are written `%`, `,`, `_`, characters that do not print and spaces that could get lost. In a
//! one-word name a space is written `_`. A form that reads `male` or `female` has its first letter
//! written so.
//!
//! `SUM` is CRC-32 (ISO 3309) in seven characters of Crockford's base 32, most significant first:
//! every single wrong character is caught. `SEAL` is made by [`seal`](fn@seal).
//!
//! Versions 1 and 2 are read too: neither had `SEAL`, nor where an adapter sits. Version 1 had neither `bend` nor `vacuum`, and its `MAX` converted every figure, where
//! now a step of 500 psi is written as the trade prints it (206 bar: 2990 psi then, 3000 psi now).

mod assembled;
pub(crate) mod base32;
mod code;
mod curve;
mod judge;
mod name;
mod read;
mod seal;
mod stock;
mod sum;
mod write;

pub use assembled::{Assembled, AssembledError};
pub use code::{CodeError, TagCode};
pub use curve::{Curve, LEAST_OF_LARGEST, seen};
pub use judge::{
    Off, OnRecord, TagFindingCode, TagRead, TagStanding, beside, findings, of_record, open, proof_of,
};
pub(crate) use name::{name as escaped, unescape as unescaped};
pub use read::{TagError, code_of, read};
pub use seal::{SealError, TagSeal, is_sealed_by};
pub use stock::{LabelDirection, LabelForm, LabelHolds, LabelMaterial, LabelStock, StockError};
pub(crate) use sum::sum;
pub use write::{seal, write};

use crate::quantity::Bar;
use crate::spec::{Duty, Line, Spec};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// The version of the grammar that is written; it and those before it are read.
pub const GRAMMAR: u32 = 3;

/// All that a tag carries. Numbers must be finite: a tag with another is refused when read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(deny_unknown_fields)]
pub struct TagContent {
    /// The tag's own code.
    pub code: TagCode,
    /// The assembly.
    pub spec: Spec,
    /// Pressure of the assembly, its weakest part's; none when that is not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure_bar: Option<Bar>,
    /// What the line does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<Line>,
    /// Fluid by its class (`HM`, `HFC`) or name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fluid: Option<String>,
    /// What the place asks beyond pressure.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub duties: Vec<Duty>,
    /// When the assembly was made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub assembled: Option<Assembled>,
    /// Whether it was proved.
    pub proof: Proof,
    /// Version of the catalogue it was checked against.
    pub catalogue: String,
    /// The seal of the fleet that made it; none where it was made by no fleet. Whether it is true, [`is_sealed_by`] says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal: Option<TagSeal>,
}

/// Whether an assembly was proved.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "state", rename_all = "kebab-case")]
#[ts(rename = "TagProof")]
pub enum Proof {
    /// Held that pressure.
    Proved {
        /// Proof pressure.
        pressure_bar: Bar,
    },
    /// Not proved, for whatever reason.
    NotProved,
    /// Not proved because there was no rig: a state of the record, not a gap in it.
    NoRig,
}

#[cfg(test)]
pub(crate) mod example {
    use super::*;

    /// A tag with every line, for tests.
    pub(crate) fn full() -> TagContent {
        let spec = serde_json::from_str(
            r#"{"hose":{"standard":"EN 853","type":"2SN","dn":16,"min_bend_radius_mm":130,"vacuum_kpa_abs":20},
                "ends":[{"role":"A","family":"JIC 37 flare","size":"-10","gender":"female","form":"elbow90","drop_mm":55,"cutoff_mm":32.5,"rating_bar":350},
                        {"role":"B","family":"flange 62","size":"-12","form":"straight"}],
                "adapters":[{"name":"test point","rating_bar":400,"between":{"role":"A",
                    "hose_side":{"family":"JIC 37 flare","size":"-10","gender":"male"},
                    "machine_side":{"family":"ORFS","size":"-10","gender":"male"}}}],
                "overall_length_mm":1240,"turn_deg":90,"cover":"non-conductive"}"#,
        )
        .expect("a spec");
        TagContent {
            code: TagCode::from_random([1, 2, 3, 4, 5, 6, 7]),
            spec,
            pressure_bar: Some(Bar(276.0)),
            line: Some(Line::CaseDrain),
            fluid: Some("HM".to_owned()),
            duties: vec![Duty::NonConductive, Duty::Antistatic],
            assembled: "2026-11".parse().ok(),
            proof: Proof::Proved { pressure_bar: Bar(552.0) },
            catalogue: "5f0c1d2e".to_owned(),
            seal: None,
        }
    }
}
