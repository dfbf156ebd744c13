//! What stands inside a segment: a line of JSON for each event, compressed (Zstandard, RFC 8878).
//!
//! A line is `[builds_on, schema, ms, count, body]`. What the head says already is left out: the device, the numbers, and
//! each hash of the event before, which is reckoned anew. `builds_on` has a number for an event of the same series and
//! `device/number` for one of another; `ms` is the difference to the line before. The body stands byte for byte as its
//! writer wrote it.

use hosewright_core::record::{DeviceId, Event, EventError, EventRef, Hash, Hlc};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use std::io::Read;
use thiserror::Error;

/// How hard it is compressed: beyond it, files of this kind hardly get smaller.
const LEVEL: i32 = 19;

/// Most bytes a payload may unpack to, so that a small file can not fill the memory.
const LARGEST: u64 = 64 << 20;

/// Why a payload can not be read.
#[derive(Debug, Error)]
pub enum PayloadError {
    /// No compressed text.
    #[error("the segment's payload can not be unpacked ({0})")]
    Packed(#[from] std::io::Error),
    /// Too much.
    #[error("the segment unpacks to more than {} MiB: no program writes such a one", LARGEST >> 20)]
    TooLarge,
    /// A line that is no event.
    #[error("event {number} of the segment can not be read")]
    Event {
        /// Its number in the series.
        number: u64,
        /// Why.
        source: EventError,
    },
}

/// Another event: of the same series by its number, of another by its whole name.
#[derive(Serialize, Deserialize)]
#[serde(untagged)]
enum Parent {
    Own(u64),
    Other(EventRef),
}

/// One line.
#[derive(Serialize, Deserialize)]
struct Line<'a>(Vec<Parent>, u32, i64, u32, #[serde(borrow)] &'a RawValue);

/// The payload of these events.
pub(crate) fn write(events: &[Event]) -> Result<Vec<u8>, PayloadError> {
    let mut text = Vec::new();
    let mut ms = 0;
    for event in events {
        line(event, ms, &mut text)
            .map_err(|source| PayloadError::Event { number: event.number, source: source.into() })?;
        ms = event.time.ms;
    }
    Ok(zstd::bulk::compress(&text, LEVEL)?)
}

fn line(event: &Event, ms_before: i64, text: &mut Vec<u8>) -> Result<(), serde_json::Error> {
    let parent = |parent: &EventRef| {
        if parent.device == event.device { Parent::Own(parent.number) } else { Parent::Other(*parent) }
    };
    let builds_on = event.builds_on.iter().map(parent).collect();
    let body: &RawValue = serde_json::from_str(event.body.as_str())?;
    let line = Line(builds_on, event.schema, event.time.ms - ms_before, event.time.count, body);
    serde_json::to_writer(&mut *text, &line)?;
    text.push(b'\n');
    Ok(())
}

/// The events of a payload, from that number on, the first of which continues that hash.
pub(crate) fn read(
    packed: &[u8],
    device: DeviceId,
    from: u64,
    previous: Hash,
) -> Result<Vec<Event>, PayloadError> {
    let text = unpacked(packed)?;
    let mut series = Series { device, number: from, previous, ms: 0 };
    text.split(|byte| *byte == b'\n')
        .filter(|line| !line.is_empty())
        .map(|line| {
            let number = series.number;
            series.next(line).map_err(|source| PayloadError::Event { number, source })
        })
        .collect()
}

fn unpacked(packed: &[u8]) -> Result<Vec<u8>, PayloadError> {
    let mut text = Vec::new();
    zstd::stream::Decoder::new(packed)?.take(LARGEST + 1).read_to_end(&mut text)?;
    if text.len() as u64 > LARGEST { Err(PayloadError::TooLarge) } else { Ok(text) }
}

/// Where a series stands while its lines are read.
struct Series {
    device: DeviceId,
    number: u64,
    previous: Hash,
    ms: i64,
}

impl Series {
    fn next(&mut self, line: &[u8]) -> Result<Event, EventError> {
        let Line(builds_on, schema, ms, count, body) = serde_json::from_slice(line)?;
        let device = self.device;
        let parent = |parent| match parent {
            Parent::Own(number) => EventRef { device, number },
            Parent::Other(event) => event,
        };
        let time = Hlc { ms: self.ms.saturating_add(ms), count };
        let event = Event {
            device,
            number: self.number,
            previous: self.previous,
            builds_on: builds_on.into_iter().map(parent).collect(),
            schema,
            time,
            body: body.get().parse()?,
        };
        if !(1..=Event::LAST_NUMBER).contains(&self.number) || !time.is_plausible() {
            return Err(EventError::Implausible { at: event.at() });
        }
        self.number += 1;
        self.previous = event.hash()?;
        self.ms = time.ms;
        Ok(event)
    }
}
