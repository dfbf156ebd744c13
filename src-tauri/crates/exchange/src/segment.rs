//! The file of a segment.
//!
//! ```text
//! {"hosewright_segment":1,...}     the head: one line of JSON, see [`Head`]
//! 8KQ2...                          its signature by the device that wrote the file: 103 characters
//! (bytes)                          the payload, see `payload.rs`; encrypted where the head names a fleet
//! ```

use crate::{PayloadError, SegmentName, payload, sealed};
use hosewright_core::fleet::{DeviceKey, DevicePublic, FleetKey, FleetMark};
use hosewright_core::record::{DeviceId, Event, EventError, Hash};
use serde::{Deserialize, Serialize};
use thiserror::Error;

/// The number of the format.
const FORMAT: u32 = 1;

/// A run of one device's events, and who signed it.
#[derive(Debug, Clone, PartialEq)]
pub struct Segment {
    /// The events, one after the other in their series; never none.
    pub events: Vec<Event>,
    /// Who signed the file.
    pub by: DevicePublic,
}

/// What stands in the first line. The keys and their order are the format.
#[derive(Debug, Clone, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Head {
    /// The number of the format.
    hosewright_segment: u32,
    /// Whose series.
    device: DeviceId,
    /// Number of the first event.
    from: u64,
    /// Number of the last one.
    to: u64,
    /// Hash of the event before the first.
    previous: Hash,
    /// Hash of the last event, which rests on all before it.
    last: Hash,
    /// Mark of the fleet to which the payload is encrypted.
    fleet: Option<FleetMark>,
    /// SHA-256 of the payload as it stands in the file.
    sha256: Hash,
    /// Public key of the device that signed.
    by: String,
}

/// Why a file is no segment that can be taken in.
#[derive(Debug, Error)]
pub enum SegmentError {
    /// Some other file.
    #[error("this is no segment of a register; a segment begins with a line that names its format")]
    NoHead,
    /// A format this program does not know.
    #[error("the segment has format {found}, which this program does not know; update this program")]
    Format {
        /// Its format.
        found: u32,
    },
    /// Cut off, or changed on the way.
    #[error("the segment is not whole: it was cut off or changed on the way; it is fetched again")]
    NotWhole,
    /// The signature does not fit.
    #[error("the segment's signature does not fit: whoever made it is not the device it names")]
    Signature,
    /// Encrypted to a fleet whose key is not here.
    #[error(
        "the segment is encrypted to fleet {fleet}, whose key this device does not have; join that fleet"
    )]
    Foreign {
        /// Which.
        fleet: FleetMark,
    },
    /// The events are not those that the head names.
    #[error("the segment's events are not those that its head names: it was made wrongly or forged")]
    OtherEvents,
    /// No events.
    #[error("a segment holds at least one event")]
    Empty,
    /// An event that can not be read.
    #[error(transparent)]
    Event(#[from] EventError),
    /// What is inside can not be read.
    #[error(transparent)]
    Payload(#[from] PayloadError),
}

/// What only the head of a file can say before it is opened.
#[derive(Deserialize)]
struct Version {
    hosewright_segment: u32,
}

impl Segment {
    /// The file of these events, which are of one series and follow each other, signed by this device and, where
    /// there is a fleet, readable by its members alone. The same events give the same file.
    ///
    /// # Errors
    /// There are no events, they do not follow each other, or one holds no JSON.
    pub fn write(
        events: &[Event],
        by: &DeviceKey,
        fleet: Option<&FleetKey>,
    ) -> Result<Vec<u8>, SegmentError> {
        let (Some(first), Some(last)) = (events.first(), events.last()) else {
            return Err(SegmentError::Empty);
        };
        if !follow(events)? {
            return Err(SegmentError::OtherEvents);
        }
        let packed = payload::write(events)?;
        let bound = bound(first.device, first.number, last.number);
        let payload = fleet.map_or_else(|| packed.clone(), |key| sealed::write(key, &bound, &packed));
        let head = Head {
            hosewright_segment: FORMAT,
            device: first.device,
            from: first.number,
            to: last.number,
            previous: first.previous,
            last: last.hash()?,
            fleet: fleet.map(FleetKey::mark),
            sha256: Hash::of(&payload),
            by: by.public().to_string(),
        };
        let head = serde_json::to_string(&head).map_err(EventError::from)?;
        let signature = by.signature(&head);
        Ok([head.as_bytes(), b"\n", signature.as_bytes(), b"\n", &payload].concat())
    }

    /// Reads a file. The keys are those of the fleets that this device belongs to or knows.
    ///
    /// # Errors
    /// Says what is wrong with it: cut off, changed, forged, or not for this device.
    pub fn read(file: &[u8], keys: &[FleetKey]) -> Result<Self, SegmentError> {
        let (head_text, rest) = line(file).ok_or(SegmentError::NoHead)?;
        let version: Version = serde_json::from_str(head_text).map_err(|_| SegmentError::NoHead)?;
        if version.hosewright_segment != FORMAT {
            return Err(SegmentError::Format { found: version.hosewright_segment });
        }
        let head: Head = serde_json::from_str(head_text).map_err(|_| SegmentError::NotWhole)?;
        let (signature, payload) = line(rest).ok_or(SegmentError::NotWhole)?;
        let by = DevicePublic::read(&head.by).ok_or(SegmentError::Signature)?;
        if !by.has_signed(head_text, signature) {
            return Err(SegmentError::Signature);
        }
        if head.sha256 != Hash::of(payload) {
            return Err(SegmentError::NotWhole);
        }
        let events = events(&head, payload, keys)?;
        Ok(Self { events, by })
    }

    /// The name under which a storage keeps the file of these events.
    ///
    /// # Errors
    /// There are none, or one holds no JSON.
    pub fn name(events: &[Event], file: &[u8]) -> Result<SegmentName, SegmentError> {
        let (Some(first), Some(last)) = (events.first(), events.last()) else {
            return Err(SegmentError::Empty);
        };
        Ok(SegmentName {
            device: first.device,
            from: first.number,
            to: last.number,
            last: last.hash()?,
            bytes: file.len() as u64,
        })
    }
}

/// The events that the payload holds, each of which continues the one before it up to the hash that was signed.
fn events(head: &Head, payload: &[u8], keys: &[FleetKey]) -> Result<Vec<Event>, SegmentError> {
    let opened;
    let packed = match head.fleet {
        None => payload,
        Some(fleet) => {
            let bound = bound(head.device, head.from, head.to);
            // Two fleets may have the same mark: whichever key opens it is the one.
            opened = keys
                .iter()
                .filter(|key| key.mark() == fleet)
                .find_map(|key| sealed::read(key, &bound, payload))
                .ok_or(SegmentError::Foreign { fleet })?;
            &opened
        }
    };
    let events = payload::read(packed, head.device, head.from, head.previous)?;
    let ends = events.last().map(|event| event.number) == Some(head.to);
    let fits = match events.last() {
        Some(last) => ends && last.hash()? == head.last,
        None => false,
    };
    if fits { Ok(events) } else { Err(SegmentError::OtherEvents) }
}

/// Whether they are of one series and each continues the one before it.
fn follow(events: &[Event]) -> Result<bool, EventError> {
    for pair in events.windows(2) {
        if let [one, next] = pair
            && (next.device != one.device || next.number != one.number + 1 || next.previous != one.hash()?)
        {
            return Ok(false);
        }
    }
    Ok(true)
}

/// What the encryption is bound to, so that a payload can not be put under another head.
fn bound(device: DeviceId, from: u64, to: u64) -> String {
    format!("{device}/{from}-{to}")
}

/// The text up to the next line's end, and what follows it.
fn line(bytes: &[u8]) -> Option<(&str, &[u8])> {
    let end = bytes.iter().position(|byte| *byte == b'\n')?;
    let (line, rest) = bytes.split_at(end);
    Some((std::str::from_utf8(line).ok()?, rest.get(1..)?))
}
