//! A small invented fleet to record.

use chrono::{DateTime, NaiveDate, Utc};
use hosewright_core::quantity::Bar;
use hosewright_core::record::{
    About, Assembly, Body, Circuit, CircuitId, DeviceId, Fitted, Machine, MachineId, NotProved, Noted,
    OilLine, PersonId, Place, PlaceId, Proof, Site, SiteId, TakenOff,
};
use hosewright_core::spec::{Line, Service, Spec};
use hosewright_core::tag::TagCode;
use hosewright_store::{NewEvent, Register};
use std::path::PathBuf;
use tempfile::TempDir;

/// A register in a folder that goes when it is dropped.
pub struct Kept {
    pub register: Register,
    pub folder: TempDir,
}

impl Kept {
    pub fn path(&self) -> PathBuf {
        self.folder.path().join("register.db")
    }
}

pub fn begin(device_number: u8) -> Kept {
    let folder = tempfile::tempdir().expect("a folder");
    let register = Register::open(folder.path().join("register.db"), device(device_number)).expect("opens");
    Kept { register, folder }
}

pub fn device(n: u8) -> DeviceId {
    DeviceId::from_bytes([n; 16])
}
pub fn site(n: u8) -> SiteId {
    SiteId::from_bytes([n; 16])
}
pub fn machine(n: u8) -> MachineId {
    MachineId::from_bytes([n; 16])
}
pub fn circuit(n: u8) -> CircuitId {
    CircuitId::from_bytes([n; 16])
}
pub fn place(n: u8) -> PlaceId {
    PlaceId::from_bytes([n; 16])
}
pub fn person(n: u8) -> PersonId {
    PersonId::from_bytes([n; 16])
}
/// The code whose first characters are these, filled up with zeros: `A1` is A1000-00000 and its check
/// character, whichever fits.
pub fn code(text: &str) -> TagCode {
    let data = format!("{:0<10}", text.replace('-', ""));
    let mut whole = "0123456789ABCDEFGHJKMNPQRSTVWXYZ".chars().map(|check| format!("{}{check}", &data[..10]));
    whole.find_map(|text| text.parse().ok()).expect("one check character fits")
}
/// The first characters of a code, without what filled it up.
pub fn short(code: TagCode) -> String {
    let text = code.to_string();
    text[..text.len() - 2].replace('-', "").trim_end_matches('0').to_owned()
}
pub fn day(text: &str) -> NaiveDate {
    text.parse().expect("a day")
}

/// Some time in November 2026.
pub fn now() -> DateTime<Utc> {
    later(0)
}
pub fn later(seconds: i64) -> DateTime<Utc> {
    DateTime::from_timestamp(1_795_600_000 + seconds, 0).expect("a time")
}

pub fn a_site(n: u8, name: &str) -> Body {
    Body::SiteNamed(Site { site: site(n), name: name.into() })
}

pub fn a_machine(n: u8, at: u8, name: &str) -> Body {
    Body::MachineSet(Machine {
        machine: machine(n),
        site: Some(site(at)),
        name: name.into(),
        sort: "excavator".into(),
        demand: None,
    })
}

pub fn a_circuit(n: u8, of: u8, relief_bar: f64) -> Body {
    Body::CircuitSet(Circuit {
        circuit: circuit(n),
        machine: machine(of),
        name: "boom".into(),
        relief_bar: Some(Bar(relief_bar)),
    })
}

pub fn a_place(n: u8, on: u8, name: &str) -> Body {
    Body::PlaceSet(Box::new(Place {
        place: place(n),
        machine: machine(on),
        number: u32::from(n),
        name: name.into(),
        line: Some(Line::Cylinder),
        circuit: None,
        spec: Some(spec(1240.0)),
        service: Service { working_pressure_bar: Some(Bar(200.0)), ..Service::default() },
        ports: Some(
            serde_json::from_value(serde_json::json!({
                "facing": "u", "closed": {"gap_mm": 300}, "open": {"gap_mm": 420}, "a": {"rigid_mm": 62}
            }))
            .expect("ports"),
        ),
        oil: Some(OilLine { iso_vg: Some(46.0), elbows_90: Some(2), ..OilLine::default() }),
        demand: None,
        stakes: None,
        consequence: None,
    }))
}

pub fn spec(length_mm: f64) -> Spec {
    serde_json::from_value(serde_json::json!({
        "hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
        "ends": [
            {"role": "A", "family": "JIC 37 flare", "size": "-10", "gender": "female"},
            {"role": "B", "family": "ORFS", "size": "-10", "gender": "female", "form": "elbow90"}
        ],
        "overall_length_mm": length_mm
    }))
    .expect("a spec")
}

pub fn an_assembly(tag: &str, assembled: Option<&str>) -> Assembly {
    Assembly {
        code: code(tag),
        spec: spec(1240.0),
        service: Service::default(),
        hose_made: None,
        assembled: assembled.map(day),
        proof: Proof::NotProved { why: NotProved::NoRig },
        verdict: None,
        bench: None,
        pressure_bar: Some(Bar(206.8)),
        catalogue: "tables".into(),
        rests_on: Vec::new(),
        program: "test".into(),
        taken_in: None,
    }
}

pub fn made(tag: &str, assembled: &str) -> Body {
    Body::AssemblyMade(Box::new(an_assembly(tag, Some(assembled))))
}

pub fn fitted(tag: &str, on: u8, date: &str) -> Body {
    Body::Fitted(Fitted {
        code: code(tag),
        place: place(on),
        date: day(date),
        already_there: false,
        hours: None,
    })
}

pub fn taken_off(tag: &str, from: u8, date: &str, cause: Option<&str>) -> Body {
    Body::TakenOff(TakenOff {
        code: code(tag),
        place: place(from),
        date: day(date),
        hours: None,
        cause: cause.map(str::to_owned),
        note: None,
    })
}

pub fn a_note(about: About, text: &str) -> Body {
    Body::Noted(Noted { about, text: text.into() })
}

/// One site, one machine with three places and a circuit, two hoses of which one is fitted.
pub fn fleet() -> Vec<Body> {
    vec![
        a_site(1, "North Quarry"),
        a_machine(1, 1, "Excavator 3"),
        a_circuit(1, 1, 350.0),
        a_place(1, 1, "Boom cylinder, left"),
        a_place(2, 1, "Stick cylinder, rod side"),
        a_place(3, 1, "Swing motor, A"),
        made("7KQ4M2XR9D", "2021-05-04"),
        made("A1", "2026-11-20"),
        fitted("7KQ4M2XR9D", 2, "2021-06-01"),
    ]
}

/// Writes these and expects them to be taken.
#[track_caller]
pub fn write<E: Into<NewEvent>>(
    kept: &mut Kept,
    events: impl IntoIterator<Item = E>,
) -> Vec<hosewright_core::record::EventRef> {
    kept.register.append(events, now()).expect("is written")
}
