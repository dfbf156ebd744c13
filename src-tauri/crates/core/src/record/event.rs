//! One event of a device's series, its line of text and its hash.

use super::id::text;
use super::{BodyError, BodyText, DeviceId, Hash, HexError, Hlc};
use schemars::JsonSchema;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use serde_json::value::RawValue;
use std::fmt;
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// An event by its device and its number there, written `device/number`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, TS)]
#[ts(as = "String")]
pub struct EventRef {
    /// Who wrote it.
    pub device: DeviceId,
    /// Its number in that device's series, from 1.
    pub number: u64,
}

impl fmt::Display for EventRef {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{}/{}", self.device, self.number)
    }
}

impl FromStr for EventRef {
    type Err = EventError;
    fn from_str(text: &str) -> Result<Self, EventError> {
        let wrong = || EventError::Reference { text: crate::fleet::repeated(text) };
        let (device, number) = text.split_once('/').ok_or_else(wrong)?;
        let number =
            number.parse().ok().filter(|n| (1..=Event::LAST_NUMBER).contains(n)).ok_or_else(wrong)?;
        Ok(Self { device: device.parse()?, number })
    }
}

text!(EventRef, "An event: its device and its number there, with a slash between.");

/// One entry of the log.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// Who wrote it.
    pub device: DeviceId,
    /// Its number in that device's series, from 1 without a gap.
    pub number: u64,
    /// Hash of the event before it in the series; [`Hash::NONE`] for the first.
    pub previous: Hash,
    /// The events it builds on, as its writer saw them: none for a new thing, one for a change, both
    /// sides of a conflict to settle it.
    pub builds_on: Vec<EventRef>,
    /// The schema of bodies its program wrote, see [`super::SCHEMA`].
    pub schema: u32,
    /// When, by the hybrid logical clock.
    pub time: Hlc,
    /// What happened.
    pub body: BodyText,
}

/// A line that is no event.
#[derive(Debug, Error)]
pub enum EventError {
    /// No JSON, or not the keys of an event.
    #[error("this line is no event of the register: {0}")]
    Line(#[from] serde_json::Error),
    /// A number or time no program writes.
    #[error("event {at} is not plausible: numbers run from 1, times from 1970 to 9999")]
    Implausible {
        /// Which.
        at: EventRef,
    },
    /// No reference to an event.
    #[error("`{text}` names no event: `device/number` is expected")]
    Reference {
        /// What stood there.
        text: String,
    },
    /// No id.
    #[error(transparent)]
    Id(#[from] HexError),
    /// No body.
    #[error(transparent)]
    Body(#[from] BodyError),
}

/// The event as a line of JSON, all but its body, which comes last. Its keys and their order never change: the hash
/// rests on them.
#[derive(Serialize)]
struct LineOut<'a> {
    device: DeviceId,
    number: u64,
    previous: Hash,
    builds_on: &'a [EventRef],
    schema: u32,
    time: Hlc,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LineIn<'a> {
    device: DeviceId,
    number: u64,
    previous: Hash,
    builds_on: Vec<EventRef>,
    schema: u32,
    time: Hlc,
    #[serde(borrow)]
    body: &'a RawValue,
}

impl Event {
    /// The highest number a series can reach: what every JSON reader still holds exactly.
    pub const LAST_NUMBER: u64 = (1 << 53) - 1;

    /// The event as others refer to it.
    pub fn at(&self) -> EventRef {
        EventRef { device: self.device, number: self.number }
    }

    /// The event as one line of JSON, without the line's end. The body stands in it byte for byte
    /// as its writer wrote it, so a newer program's event passes through unchanged.
    pub fn line(&self) -> Result<String, EventError> {
        let mut line = serde_json::to_string(&LineOut {
            device: self.device,
            number: self.number,
            previous: self.previous,
            builds_on: &self.builds_on,
            schema: self.schema,
            time: self.time,
        })?;
        // The body's text is known to be an object of JSON: nothing of it is read again.
        line.truncate(line.len() - 1);
        line.push_str(",\"body\":");
        line.push_str(self.body.as_str());
        line.push('}');
        Ok(line)
    }

    /// That of the line.
    pub fn hash(&self) -> Result<Hash, EventError> {
        Ok(Hash::of(self.line()?))
    }

    /// From a line.
    ///
    /// # Errors
    /// The line is no JSON, has other keys than an event's, or claims a number or time that no
    /// program writes.
    pub fn from_line(line: &str) -> Result<Self, EventError> {
        let read: LineIn<'_> = serde_json::from_str(line)?;
        let at = EventRef { device: read.device, number: read.number };
        if !(1..=Self::LAST_NUMBER).contains(&read.number) || !read.time.is_plausible() {
            return Err(EventError::Implausible { at });
        }
        Ok(Self {
            device: read.device,
            number: read.number,
            previous: read.previous,
            builds_on: read.builds_on,
            schema: read.schema,
            time: read.time,
            body: read.body.get().parse()?,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Body, DeviceNamed};
    use super::*;

    fn event() -> Event {
        let body = Body::DeviceNamed(DeviceNamed { name: "Van 2".into() });
        Event {
            device: DeviceId::from_bytes([7; 16]),
            number: 3,
            previous: Hash::from_bytes([9; 32]),
            builds_on: vec![EventRef { device: DeviceId::from_bytes([8; 16]), number: 12 }],
            schema: 1,
            time: Hlc { ms: 1_795_600_000_000, count: 2 },
            body: BodyText::of(&body).expect("writes"),
        }
    }

    #[test]
    fn an_event_comes_back_from_its_line() {
        let line = event().line().expect("writes");
        assert_eq!(Event::from_line(&line).expect("reads"), event());
        // The hash was reckoned over this line by Python's hashlib. A change here breaks every register.
        assert_eq!(
            line,
            format!(
                r#"{{"device":"{}","number":3,"previous":"{}","builds_on":["{}/12"],"schema":1,"time":{{"ms":1795600000000,"count":2}},"body":{{"kind":"device-named","name":"Van 2"}}}}"#,
                "07".repeat(16),
                "09".repeat(32),
                "08".repeat(16)
            )
        );
        assert_eq!(
            event().hash().expect("hashes").to_string(),
            "6cccba2d28ed32808cc00c11f417991ae72e82dd4060eefe0ff798976956a6b6"
        );
    }

    #[test]
    fn a_newer_programs_body_passes_through_byte_for_byte() {
        let body = r#"{ "kind":"robot-fitted",  "b":1.50e3,"a":{"z":null,"\u00e4":[ ]}}"#;
        let newer = Event { schema: 9, body: body.parse().expect("a body"), ..event() };
        let line = newer.line().expect("writes");
        assert!(line.contains(body), "the body was rewritten: {line}");
        let read = Event::from_line(&line).expect("reads");
        assert_eq!(read.hash().expect("hashes"), newer.hash().expect("hashes"));
        assert_eq!(read.body.read(), Body::Unknown { kind: "robot-fitted".into() });
    }

    #[test]
    fn what_no_program_writes_is_refused() {
        let line = event().line().expect("writes");
        for (was, is) in [
            (r#""number":3"#, r#""number":0"#),
            (r#""number":3"#, r#""number":9007199254740992"#),
            (r#""ms":1795600000000"#, r#""ms":-1"#),
            (r#""ms":1795600000000"#, r#""ms":9223372036854775807"#),
            (r#""schema":1"#, r#""schema":1,"more":2"#),
            (r#"/12""#, r#"/0""#),
            (r#""kind":"device-named""#, r#""sort":"device-named""#),
        ] {
            let changed = line.replacen(was, is, 1);
            assert_ne!(changed, line, "{was} is not in the line");
            assert!(Event::from_line(&changed).is_err(), "taken: {changed}");
        }
    }
}
