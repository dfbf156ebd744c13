//! On and off: where a hose sat, from when to when, and why it came off.

use super::{Arranged, Body, EventRef, PlaceId};
use crate::tag::TagCode;
use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// A hose put on a place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Fitted {
    /// Which hose.
    pub code: TagCode,
    /// Where.
    pub place: PlaceId,
    /// When; where `already_there`, the day it was found.
    pub date: NaiveDate,
    /// It was found in place on that day, fitted at some earlier time that nobody knows.
    #[serde(default)]
    pub already_there: bool,
    /// Hours on the machine's meter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hours: Option<f64>,
}

/// A hose taken off a place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
pub struct TakenOff {
    /// Which hose.
    pub code: TagCode,
    /// From where.
    pub place: PlaceId,
    /// When.
    pub date: NaiveDate,
    /// Hours on the machine's meter.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hours: Option<f64>,
    /// Why it failed, by the code of the failure causes; none: it had not failed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cause: Option<String>,
    /// What was seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

/// One stay of a hose at a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Stint {
    /// How it came there; none where only its end is recorded.
    pub on: Option<(EventRef, Fitted)>,
    /// How it came off; none while it is there.
    pub off: Option<(EventRef, TakenOff)>,
}

/// The stays of one hose, from its whereabouts in order.
pub fn stints(whereabouts: &Arranged) -> Vec<Stint> {
    let mut stints: Vec<Stint> = Vec::new();
    let mut of_node: Vec<Option<usize>> = Vec::new();
    // A line's nodes need not come in order of time (a clock was wrong): first all that came on.
    for node in &whereabouts.nodes {
        of_node.push(None);
        if let (Body::Fitted(fitted), Some(slot)) = (&node.current.body, of_node.last_mut()) {
            *slot = Some(stints.len());
            stints.push(Stint { on: Some((node.current.at, fitted.clone())), off: None });
        }
    }
    for node in &whereabouts.nodes {
        let Body::TakenOff(off) = &node.current.body else { continue };
        let off = Some((node.current.at, off.clone()));
        let ended = node.follows.and_then(|node| of_node.get(node).copied().flatten());
        match ended.and_then(|stint| stints.get_mut(stint)) {
            Some(stint) => stint.off = off,
            None => stints.push(Stint { on: None, off }),
        }
    }
    stints
}
