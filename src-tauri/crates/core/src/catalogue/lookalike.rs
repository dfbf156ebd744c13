//! Ends that start on each other and must not.

use super::Provenance;
use super::table::{CatalogueError, Row};
use super::threads_meet::ThreadFit;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Two ends of which the female of one starts on the male of the other, and must not.
#[derive(Debug, Clone, PartialEq)]
pub struct Lookalike {
    /// Family of the half with the nut, port, body, socket or clamp halves.
    pub female_family: String,
    /// Its size.
    pub female_size: String,
    /// What that half is.
    pub female_part: FemalePart,
    /// Family of the male, tube, nose or flange head it starts on.
    pub male_family: String,
    /// Its size.
    pub male_size: String,
    /// What happens.
    pub mechanism: Mechanism,
    /// How grave that is.
    pub danger: Danger,
    /// How much of the right thread's depth still overlaps, percent; where it was worked out.
    pub thread_overlap_pct: Option<f64>,
    /// Readings that part the two, by the keys of an end's readings (`seat_included_angle_deg`).
    pub separating_readings: Vec<String>,
    /// Which starts on which, in the table's words; empty where the pair was worked out.
    pub starts: String,
    /// What happens, likewise.
    pub happens: String,
    /// Which reading parts the two, likewise.
    pub separates: String,
    /// How the threads meet, where the pair was worked out of the table of ends.
    pub fit: Option<ThreadFit>,
    /// Source and basis.
    pub provenance: Provenance,
}

/// The half that takes the other in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum FemalePart {
    /// A nut.
    Nut,
    /// A threaded port.
    Port,
    /// The body with ring and nut that takes a tube.
    Body,
    /// The socket of a coupling or staple.
    Socket,
    /// The clamp halves of a flange.
    Halves,
}

/// What happens to a wrong pair.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, JsonSchema, TS)]
#[serde(rename_all = "kebab-case")]
pub enum Mechanism {
    /// Runs on with shallow threads, which strip under pressure.
    StripsAndBlowsOff,
    /// Stops with few threads caught.
    FewThreadsCaught,
    /// Pitch differs, or a parallel male meets a taper female: binds, feels tight, leaks.
    BindsAndLeaks,
    /// Taper in parallel or in another taper: wedges and splits the female.
    WedgesAndSplits,
    /// Same taper and pitch, other flanks: weeps along the thread.
    WeepsAlongThread,
    /// Screws home and touches on a line or rim.
    LeaksAtSeat,
    /// Screws home and nothing seals.
    NoSeal,
    /// The ring is not enclosed and is pushed or cut out.
    RingExtrudes,
    /// Ring or staple does not hold: tube or plug comes out.
    PullsOut,
    /// Clamp halves sit skew and bend their screws.
    ScrewsBend,
    /// A coupling that locks half or not.
    HalfLocks,
    /// Made to fit both, so it tells nothing of the mate.
    FitsBoth,
}

/// How grave a wrong pair is: the worst that the table says of it.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
)]
#[serde(rename_all = "kebab-case")]
pub enum Danger {
    /// Spoils the parts.
    Damages,
    /// Leaks.
    Leaks,
    /// Comes apart under pressure.
    BlowsOff,
}

pub(super) const LOOKALIKE_COLUMNS: &str = "\
    female_family,female_size,female_part,male_family,male_size,mechanism,danger,thread_overlap_pct,\
    separating_readings,starts,happens,separates,source,basis";

impl Lookalike {
    pub(super) fn read(row: &Row<'_>) -> Result<Self, CatalogueError> {
        Ok(Self {
            female_family: row.text("female_family")?,
            female_size: row.text("female_size")?,
            female_part: row.name("female_part")?,
            male_family: row.text("male_family")?,
            male_size: row.text("male_size")?,
            mechanism: row.name("mechanism")?,
            danger: row.name("danger")?,
            thread_overlap_pct: row.optional_number("thread_overlap_pct")?,
            separating_readings: row.words("separating_readings"),
            starts: row.text("starts")?,
            happens: row.text("happens")?,
            separates: row.text("separates")?,
            fit: None,
            provenance: row.provenance()?,
        })
    }

    /// Family and size of the female and of the male.
    pub(super) fn names(&self) -> ((&str, &str), (&str, &str)) {
        ((&self.female_family, &self.female_size), (&self.male_family, &self.male_size))
    }
}
