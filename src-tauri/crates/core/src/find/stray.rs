//! Readings that the likeliest answer does not explain: a slip of the finger, the wrong place, another part.

use super::Part;
use super::model::Model;
use super::truth::Seen;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A reading that goes with the likeliest answer only as a stray. Nothing is settled while it stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Stray {
    /// Of which part.
    pub of: Part,
    /// The key of the reading.
    pub reading: String,
    /// What was read, in the unit of its key.
    pub read: f64,
    /// Least that would go with it; none where it has no such thing.
    pub least: Option<f64>,
    /// Most.
    pub most: Option<f64>,
    /// The likeliest answer it does not go with.
    pub named: String,
    /// All that in words, and what to do; empty until the edge writes it.
    #[serde(default)]
    pub words: String,
}

/// The strays among the readings of one part, by the hypothesis that leads there.
pub(super) fn strays(
    of: Part,
    model: &Model,
    seen: &[(usize, Seen)],
    leader: usize,
    named: &str,
) -> Vec<Stray> {
    let each = seen.iter().filter_map(|&(column, seen)| {
        let column = &model.columns[column];
        let Seen::Value { value, .. } = seen else { return None };
        let limits = column.limits_of_stray(seen, leader)?;
        let (least, most) = limits.unzip();
        let reading = column.key.to_owned();
        Some(Stray { of, reading, read: value, least, most, named: named.to_owned(), words: String::new() })
    });
    each.collect()
}
