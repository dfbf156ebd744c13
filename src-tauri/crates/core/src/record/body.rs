//! What an event says.

use super::{
    Assembly, Circuit, DeviceAdmitted, DeviceKeyTold, DeviceWithdrawn, Fitted, HoursRead, Inspected,
    Labelled, Machine, Noted, Overridden, PhotoAdded, Piece, PieceChanged, Place, PolicySet, PriceSet, Proof,
    Site, StockChanged, StockMoved, StockPlaced, Surveyed, TagWithdrawn, TakenOff,
};
use crate::measure::Judged;
use crate::spec::Role;
use crate::stock::{Item, StockKind, Thing};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::str::FromStr;
use thiserror::Error;
use ts_rs::TS;

/// The schema of the bodies this program writes. Raise it when a body gains a field or a kind is
/// added; a program that does not know a kind keeps the event as it is.
pub const SCHEMA: u32 = 5;

/// What happened. Every body is written whole; a correction is a new body of the same kind in an
/// event that builds on the old one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, TS)]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub enum Body {
    /// The writing device got its name.
    DeviceNamed(DeviceNamed),
    /// The writing device told its public key.
    DeviceKey(DeviceKeyTold),
    /// A device was admitted to the fleet, or got another role there.
    DeviceAdmitted(DeviceAdmitted),
    /// A lost device was withdrawn from the fleet.
    DeviceWithdrawn(DeviceWithdrawn),
    /// A site was added or renamed.
    SiteNamed(Site),
    /// A machine was added or changed.
    MachineSet(Machine),
    /// An hour meter was read.
    HoursRead(HoursRead),
    /// A circuit was added or changed.
    CircuitSet(Circuit),
    /// A place was added or changed.
    PlaceSet(Box<Place>),
    /// A hose assembly was made, or one made elsewhere was tagged.
    AssemblyMade(Box<Assembly>),
    /// A hose was fitted.
    Fitted(Fitted),
    /// A hose was taken off.
    TakenOff(TakenOff),
    /// A hose was inspected.
    Inspected(Inspected),
    /// A place was looked at on a walk round its machine.
    Surveyed(Box<Surveyed>),
    /// The owner set limits of age.
    PolicySet(PolicySet),
    /// Counted stock came or went.
    StockChanged(StockChanged),
    /// Counted stock went from one van or shelf to another.
    StockMoved(StockMoved),
    /// A bin or low mark was set.
    StockPlaced(StockPlaced),
    /// A price was set.
    PriceSet(PriceSet),
    /// A piece of hose was taken in, moved or described anew.
    PieceSet(Box<Piece>),
    /// A piece of hose got longer or shorter.
    PieceChanged(PieceChanged),
    /// A limit of prudence was taken on.
    Overridden(Overridden),
    /// A photo was added.
    PhotoAdded(PhotoAdded),
    /// A hose got a label, or was found with one.
    Labelled(Labelled),
    /// A tag was taken out of use.
    TagWithdrawn(TagWithdrawn),
    /// A remark.
    Noted(Noted),
    /// The events this one builds on never happened.
    Voided(Voided),
    /// A kind this program does not know, or a body it can not read: kept and passed on as it is.
    #[serde(skip)]
    #[ts(skip)]
    Unknown {
        /// The kind its writer gave it.
        kind: String,
    },
}

/// The name of the device that writes it, such as `Van 2`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct DeviceNamed {
    /// What people call it.
    pub name: String,
}

/// Strikes out what was recorded in error.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema, TS)]
pub struct Voided {
    /// Why.
    pub reason: String,
}

/// A body that can not be kept.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum BodyError {
    /// No JSON object on one line with a kind.
    #[error("an event's body is a JSON object on one line with the text `kind`: {problem}")]
    Text {
        /// What was wrong.
        problem: String,
    },
    /// Something in it can not be written and read back, such as a number that is not finite.
    #[error("a `{kind}` can not be kept as it is: it does not read back the same; give finite numbers only")]
    Lossy {
        /// Kind of the body.
        kind: String,
    },
    /// A name or reason that says nothing.
    #[error("`{field}` is blank; write what it is, in at most {} characters", Body::LONGEST_TEXT)]
    Blank {
        /// The field.
        field: &'static str,
    },
    /// A text too long.
    #[error("`{field}` is too long; at most {} characters are kept", Body::LONGEST_TEXT)]
    TooLong {
        /// The field.
        field: &'static str,
    },
    /// A crimp that is outside its tolerance, or not what it is said to be.
    #[error(
        "the crimp at end {role:?} is kept only as what its readings say, and one outside its tolerance only \
         with the assembly that failed its proof: crimp again, or make the hose anew"
    )]
    Crimp {
        /// Which end.
        role: Role,
    },
    /// A piece of something else than hose.
    #[error("`hose` is no hose; a piece is one of hose, anything else is counted")]
    NoHose,
    /// No word on how bad a failure would be.
    #[error("`consequence` is {value}; it is a number from 1, a nuisance, to 5, someone may be hurt")]
    Consequence {
        /// What it was.
        value: u8,
    },
    /// A number out of its range.
    #[error("`{field}` is {value}, which can not be; a finite number of at least 0 is expected")]
    Number {
        /// The field.
        field: &'static str,
        /// What it was.
        value: f64,
    },
}

impl Body {
    /// Longest name, reason or remark, in characters.
    pub const LONGEST_TEXT: usize = 4000;

    /// What a text of that kind says, as far as this program knows. The kind is known, so the text is gone through once.
    pub fn of(kind: &str, text: &str) -> Self {
        fn read<'a, T: Deserialize<'a>>(text: &'a str, body: fn(T) -> Body) -> Option<Body> {
            serde_json::from_str(text).ok().map(body)
        }
        let known = match kind {
            "device-named" => read(text, Body::DeviceNamed),
            "device-key" => read(text, Body::DeviceKey),
            "site-named" => read(text, Body::SiteNamed),
            "machine-set" => read(text, Body::MachineSet),
            "hours-read" => read(text, Body::HoursRead),
            "circuit-set" => read(text, Body::CircuitSet),
            "place-set" => read(text, Body::PlaceSet),
            "assembly-made" => read(text, Body::AssemblyMade),
            "fitted" => read(text, Body::Fitted),
            "taken-off" => read(text, Body::TakenOff),
            "inspected" => read(text, Body::Inspected),
            "labelled" => read(text, Body::Labelled),
            "stock-changed" => read(text, Body::StockChanged),
            // The others are few.
            _ => serde_json::from_str(text).ok(),
        };
        known.unwrap_or_else(|| Body::Unknown { kind: kind.to_owned() })
    }

    /// Whether it may be written: names say something, numbers can be.
    ///
    /// # Errors
    /// Names the field and what would be right.
    pub fn check(&self) -> Result<(), BodyError> {
        match self {
            Body::DeviceNamed(device) => text("name", &device.name),
            Body::SiteNamed(site) => text("name", &site.name),
            Body::MachineSet(machine) => text("name", &machine.name).and(text("sort", &machine.sort)),
            Body::HoursRead(read) => number("hours", Some(read.hours)),
            Body::CircuitSet(circuit) => text("name", &circuit.name)
                .and(number("relief_bar", circuit.relief_bar.map(|pressure| pressure.get()))),
            Body::PlaceSet(place) => text("name", &place.name).and(consequence(place.consequence)),
            Body::AssemblyMade(made) => {
                number("pressure_bar", made.pressure_bar.map(|pressure| pressure.get())).and(crimps(made))
            }
            Body::Fitted(fitted) => number("hours", fitted.hours),
            Body::TakenOff(off) => number("hours", off.hours).and(optional("note", off.note.as_deref())),
            Body::Inspected(seen) => seen.findings.iter().try_for_each(|finding| text("sign", &finding.sign)),
            Body::PolicySet(policy) => number("service_years", policy.service_years)
                .and(number("service_hours", policy.service_hours))
                .and(number("storage_years", policy.storage_years))
                .and(number("inspection_years", policy.inspection_years))
                .and(number("inspection_hours", policy.inspection_hours)),
            Body::Surveyed(seen) => optional("note", seen.note.as_deref()),
            Body::StockChanged(stock) => {
                text("store", &stock.store).and(item(&stock.item)).and(optional("bin", Some(&stock.bin)))
            }
            Body::StockMoved(moved) => text("from", &moved.from)
                .and(text("to", &moved.to))
                .and(item(&moved.item))
                .and(optional("from_bin", Some(&moved.from_bin)))
                .and(optional("to_bin", Some(&moved.to_bin)))
                .and(above_nothing("count", moved.count)),
            Body::StockPlaced(placed) => text("store", &placed.store)
                .and(item(&placed.item))
                .and(optional("bin", Some(&placed.bin)))
                .and(number("low", placed.low.map(|low| low as f64))),
            Body::PriceSet(price) => item(&price.item)
                .and(text("currency", &price.currency))
                .and(number("minor", price.minor.map(|minor| minor as f64))),
            Body::PieceSet(piece) => text("store", &piece.store)
                .and(hose(&piece.hose))
                .and(optional("bin", Some(&piece.bin)))
                .and(optional("label", Some(&piece.label))),
            Body::PieceChanged(_) => Ok(()),
            Body::Overridden(over) => text("rule", &over.rule).and(text("reason", &over.reason)),
            Body::PhotoAdded(photo) => text("mime", &photo.mime),
            Body::TagWithdrawn(withdrawn) => text("reason", &withdrawn.reason),
            Body::Noted(note) => text("text", &note.text),
            Body::Voided(voided) => text("reason", &voided.reason),
            Body::DeviceKey(_)
            | Body::DeviceAdmitted(_)
            | Body::DeviceWithdrawn(_)
            | Body::Labelled(_)
            | Body::Unknown { .. } => Ok(()),
        }
    }
}

/// A crimp is kept as its readings say, whoever claims what; one outside goes with scrap alone.
fn crimps(made: &Assembly) -> Result<(), BodyError> {
    let scrap = matches!(made.proof, Proof::Failed { .. });
    let crimps = made.bench.iter().flat_map(|bench| &bench.crimps);
    for done in crimps {
        let kept = done
            .judged()
            .is_ok_and(|read| read.verdict == done.verdict && (scrap || read.verdict != Judged::Stop));
        if !kept {
            return Err(BodyError::Crimp { role: done.role });
        }
    }
    Ok(())
}

/// From 1 to 5.
fn consequence(word: Option<u8>) -> Result<(), BodyError> {
    match word {
        Some(word) if !(1..=5).contains(&word) => Err(BodyError::Consequence { value: word }),
        _ => Ok(()),
    }
}

fn item(item: &Item) -> Result<(), BodyError> {
    if item.is_blank() {
        return Err(BodyError::Blank { field: "item" });
    }
    optional("item", Some(&item.key()))
}

/// A piece is one of hose.
fn hose(thing: &Thing) -> Result<(), BodyError> {
    if thing.kind() == StockKind::Hose { item(&thing.clone().into()) } else { Err(BodyError::NoHose) }
}

fn above_nothing(field: &'static str, value: i64) -> Result<(), BodyError> {
    if value > 0 { Ok(()) } else { Err(BodyError::Number { field, value: value as f64 }) }
}

fn text(field: &'static str, value: &str) -> Result<(), BodyError> {
    if value.trim().is_empty() {
        return Err(BodyError::Blank { field });
    }
    optional(field, Some(value))
}

fn optional(field: &'static str, value: Option<&str>) -> Result<(), BodyError> {
    match value {
        Some(value) if value.chars().count() > Body::LONGEST_TEXT => Err(BodyError::TooLong { field }),
        _ => Ok(()),
    }
}

fn number(field: &'static str, value: Option<f64>) -> Result<(), BodyError> {
    match value {
        Some(value) if !value.is_finite() || value < 0.0 => Err(BodyError::Number { field, value }),
        _ => Ok(()),
    }
}

/// A body as its writer wrote it: JSON text that is never written anew.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BodyText {
    kind: String,
    text: String,
}

impl BodyText {
    /// Writes a body.
    ///
    /// # Errors
    /// The body fails [`Body::check`], or does not read back the same.
    pub fn of(body: &Body) -> Result<Self, BodyError> {
        body.check()?;
        let text = serde_json::to_string(body).map_err(|e| BodyError::Text { problem: e.to_string() })?;
        // The kind stands first in what this program writes, so that a long body is not gone through for it.
        let kind =
            text.strip_prefix(r#"{"kind":""#).and_then(|rest| Some(rest.split_once('"')?.0.to_owned()));
        let written = match kind {
            Some(kind) => Self { kind, text },
            None => text.parse()?,
        };
        if written.read() == *body { Ok(written) } else { Err(BodyError::Lossy { kind: written.kind }) }
    }

    /// Which kind of body.
    pub fn kind(&self) -> &str {
        &self.kind
    }

    /// The text, byte for byte.
    pub fn as_str(&self) -> &str {
        &self.text
    }

    /// What it says, as far as this program knows.
    pub fn read(&self) -> Body {
        Body::of(&self.kind, &self.text)
    }
}

/// Takes a text that some program wrote: a JSON object on one line with a text `kind`.
impl FromStr for BodyText {
    type Err = BodyError;
    fn from_str(text: &str) -> Result<Self, BodyError> {
        #[derive(Deserialize)]
        struct Kind {
            kind: String,
        }
        let wrong = |problem: String| BodyError::Text { problem };
        if text.bytes().any(|byte| byte < b' ') {
            return Err(wrong("it has a control character".into()));
        }
        let Kind { kind } = serde_json::from_str(text).map_err(|e| wrong(e.to_string()))?;
        // The text must be the value and nothing round it, or it would not come back byte for byte.
        if !text.starts_with('{') || !text.ends_with('}') {
            return Err(wrong("it is not an object and nothing else".into()));
        }
        Ok(Self { kind, text: text.to_owned() })
    }
}

#[cfg(test)]
mod tests {
    use super::super::MachineId;
    use super::*;
    use crate::tag::TagCode;
    use chrono::NaiveDate;

    #[test]
    fn a_body_reads_back_the_same() {
        let body = Body::HoursRead(HoursRead {
            machine: MachineId::from_bytes([1; 16]),
            hours: 6812.1,
            date: NaiveDate::from_ymd_opt(2026, 11, 25).expect("a date"),
        });
        let text = BodyText::of(&body).expect("writes");
        assert_eq!(text.kind(), "hours-read");
        assert_eq!(text.read(), body);
    }

    #[test]
    fn a_body_of_a_known_kind_is_read_as_any_other() {
        let (id, code) = ("07".repeat(16), TagCode::from_random([1; 7]));
        for text in [
            r#"{"kind":"device-named","name":"Van 2"}"#.to_owned(),
            format!(r#"{{"kind":"site-named","site":"{id}","name":"Pit"}}"#),
            format!(r#"{{"kind":"machine-set","machine":"{id}","name":"Press","sort":"press"}}"#),
            format!(r#"{{"kind":"hours-read","machine":"{id}","hours":1.5,"date":"2026-11-25"}}"#),
            format!(r#"{{"kind":"circuit-set","circuit":"{id}","machine":"{id}","name":"boom"}}"#),
            format!(r#"{{"kind":"place-set","place":"{id}","machine":"{id}","number":3,"name":"Stick"}}"#),
            format!(
                r#"{{"kind":"assembly-made","code":"{code}","spec":{{}},"proof":{{"state":"not-proved","why":"no-rig"}},"catalogue":"c","program":"p"}}"#
            ),
            format!(r#"{{"kind":"fitted","code":"{code}","place":"{id}","date":"2026-11-25"}}"#),
            format!(r#"{{"kind":"taken-off","code":"{code}","place":"{id}","date":"2026-11-25"}}"#),
            format!(r#"{{"kind":"inspected","code":"{code}","date":"2026-11-25","findings":[]}}"#),
            format!(r#"{{"kind":"labelled","code":"{code}","how":"printed"}}"#),
            r#"{"kind":"stock-changed","store":"Van","item":"oil","unit":"pieces","difference":2}"#
                .to_owned(),
        ] {
            let read = text.parse::<BodyText>().expect("a body").read();
            assert!(!matches!(read, Body::Unknown { .. }), "{text}");
            assert_eq!(read, serde_json::from_str::<Body>(&text).expect("reads"), "{text}");
        }
        let odd = r#"{"kind":"fitted","code":7}"#.parse::<BodyText>().expect("a body").read();
        assert_eq!(odd, Body::Unknown { kind: "fitted".into() });
    }

    #[test]
    fn what_can_not_be_kept_is_refused_and_named() {
        let hours = |hours| {
            Body::HoursRead(HoursRead {
                machine: MachineId::from_bytes([1; 16]),
                hours,
                date: NaiveDate::MIN,
            })
        };
        for value in [f64::NAN, f64::INFINITY, -1.0] {
            let error = BodyText::of(&hours(value)).expect_err("no hours");
            assert!(error.to_string().contains("`hours`"), "{error}");
        }
        let blank =
            Body::TagWithdrawn(TagWithdrawn { code: TagCode::from_random([1; 7]), reason: " ".into() });
        assert_eq!(BodyText::of(&blank), Err(BodyError::Blank { field: "reason" }));
    }

    #[test]
    fn a_number_inside_a_spec_that_is_not_finite_is_refused() {
        let mut made = super::super::assembly::tests::assembly(TagCode::from_random([1; 7]));
        made.spec.overall_length_mm = Some(crate::quantity::Millimetres(f64::NAN));
        assert_eq!(
            BodyText::of(&Body::AssemblyMade(Box::new(made))),
            Err(BodyError::Lossy { kind: "assembly-made".into() })
        );
    }

    #[test]
    fn only_an_object_on_one_line_with_a_kind_is_a_body() {
        for text in
            ["", "[]", "{}", r#"{"kind":1}"#, "{\"kind\":\n\"a\"}", r#" {"kind":"a"}"#, r#"{"kind":"a"} "#]
        {
            assert!(text.parse::<BodyText>().is_err(), "`{text}` was taken for a body");
        }
    }
}
