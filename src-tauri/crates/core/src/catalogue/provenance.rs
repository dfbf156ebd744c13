//! Where a number comes from and how sure it is.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// How a value came to be known.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Basis {
    /// Stands in the source named and was read there.
    Published,
    /// Computed from a published formula.
    Derived,
    /// Computed by the named general-purpose library.
    ReferenceLibrary,
    /// A rule of the trade with no single source.
    CommonPractice,
    /// For ratings: the lower of two printed figures.
    LowerOfTwo,
    /// For ratings: set from printed figures of neighbouring sizes.
    Bounded,
    /// Recalled by whoever wrote the table; shown as unverified.
    Memory,
    /// For ratings: a figure of another end with the same thread; never enough for a pass.
    Proxy,
    /// Not known: never unlimited.
    None,
    /// Entered by the user.
    Yours,
}

/// The source of a value and its basis.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Provenance {
    /// The publication, table or practice.
    pub source: String,
    /// How it came to be known.
    pub basis: Basis,
}
