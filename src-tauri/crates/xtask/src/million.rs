//! A fleet of a million hoses: made through the register as any fleet is, then asked as a person asks, with the clock running.

use crate::promises::Promise;
use crate::timed::Times;
use chrono::{DateTime, Days, NaiveDate, Utc};
use hosewright_core::check::Verdict;
use hosewright_core::quantity::Bar;
use hosewright_core::record::{
    Assembly, Body, DeviceId, Fitted, Graded, HoursRead, Inspected, Labelled, LabelledHow, Machine,
    MachineId, NotProved, Place, PlaceId, Proof, Site, SiteId, TakenOff,
};
use hosewright_core::spec::{Line, Service, Spec};
use hosewright_core::tag::TagCode;
use hosewright_store::{DueAsk, Register};
use std::io::{Error, Result};
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Instant;

/// How many hoses, and the seed of their fleet.
pub(crate) const HOSES: u64 = 1_000_000;
pub(crate) const SEED: u64 = 9;

/// Places of a machine, and machines of a site.
const PLACES: u64 = 20;
const MACHINES: u64 = 100;
/// Hoses that sat at a place one after the other: two and three by turns.
const HOSES_OF_TWO_PLACES: u64 = 5;
/// Readings of each machine's hour meter.
const READINGS: u64 = 12;
/// Machines that are written down at once.
const AT_ONCE: u64 = 40;
/// Questions of each kind.
const ASKED: u64 = 1000;

/// The bars, in ms.
const TAG_MS: f64 = 2.0;
const PLACE_MS: f64 = 5.0;
const DUE_MS: f64 = 50.0;
const SEARCH_MS: f64 = 50.0;
/// And in MB.
const MEMORY_MB: f64 = 200.0;

/// Makes a register of so many hoses where there is none, and asks it in a process of its own, so that its memory is that
/// of asking alone.
pub fn measure(hoses: u64, file: &Path, seed: u64) -> Result<Vec<Promise>> {
    if file.exists() {
        println!("{} is there and is measured as it is.", file.display());
    } else {
        make(hoses, file, seed)?;
    }
    let own = std::env::current_exe()?;
    let seed = seed.to_string();
    let asking = Command::new(own)
        .arg("million-ask")
        .arg(hoses.to_string())
        .arg(file)
        .arg(seed)
        .stderr(Stdio::inherit())
        .output()?;
    if !asking.status.success() {
        return Err(Error::other("the register could not be asked"));
    }
    serde_json::from_slice(&asking.stdout).map_err(Error::other)
}

/// Numbers that look like chance and are the same for the same seed (SplitMix64, Steele and others 2014).
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    fn below(&mut self, limit: u64) -> u64 {
        self.next() % limit.max(1)
    }
}

fn id(kind: u8, number: u64) -> [u8; 16] {
    let mut bytes = [kind; 16];
    bytes[8..].copy_from_slice(&number.wrapping_mul(0x9e37_79b9_7f4a_7c15).to_be_bytes());
    bytes
}

fn site(number: u64) -> SiteId {
    SiteId::from_bytes(id(1, number))
}
fn machine(number: u64) -> MachineId {
    MachineId::from_bytes(id(2, number))
}
fn place(number: u64) -> PlaceId {
    PlaceId::from_bytes(id(3, number))
}

/// The codes lie as far apart as those of any fleet: an odd factor parts them over all of their bits.
fn code(number: u64) -> TagCode {
    let mixed = number.wrapping_add(1).wrapping_mul(0x9e37_79b9_7f4a_7c15) & ((1 << 50) - 1);
    let mut bytes = [0; 7];
    bytes.copy_from_slice(&mixed.to_be_bytes()[1..]);
    TagCode::from_random(bytes)
}

const SORTS: [&str; 5] = ["excavator", "loader", "forwarder", "crane", "press"];
const NAMES: [&str; 8] = [
    "Boom cylinder, left",
    "Boom cylinder, right",
    "Stick cylinder, rod side",
    "Stick cylinder, base side",
    "Swing motor, A",
    "Swing motor, B",
    "Pump, pressure",
    "Filter, return",
];
const TYPES: [(&str, &str, f64); 6] = [
    ("EN 853", "2SN", 12.0),
    ("EN 853", "2SN", 16.0),
    ("EN 853", "1SN", 19.0),
    ("EN 857", "2SC", 12.0),
    ("EN 856", "4SP", 19.0),
    ("EN 856", "4SH", 25.0),
];

fn spec((standard, kind, dn): (&str, &str, f64), length_mm: u64) -> Result<Spec> {
    let spec = serde_json::json!({
        "hose": {"standard": standard, "type": kind, "dn": dn},
        "ends": [
            {"role": "A", "family": "JIC 37 flare", "size": "-10", "gender": "female"},
            {"role": "B", "family": "ORFS", "size": "-10", "gender": "female", "form": "elbow90"}
        ],
        "overall_length_mm": length_mm
    });
    serde_json::from_value(spec).map_err(Error::other)
}

fn first_day() -> NaiveDate {
    NaiveDate::from_ymd_opt(2016, 1, 4).unwrap_or_default()
}

fn today() -> NaiveDate {
    NaiveDate::from_ymd_opt(2026, 11, 25).unwrap_or_default()
}

fn after(day: NaiveDate, days: u64) -> NaiveDate {
    day.checked_add_days(Days::new(days)).unwrap_or(NaiveDate::MAX)
}

fn make(hoses: u64, file: &Path, seed: u64) -> Result<()> {
    let begun = Instant::now();
    let mut register = Register::open(file, DeviceId::from_bytes([1; 16])).map_err(Error::other)?;
    let places = hoses * 2 / HOSES_OF_TWO_PLACES;
    let machines = places.div_ceil(PLACES);
    let mut chance = Chance(seed);
    let (mut events, mut bodies) = (0, Vec::new());
    for number in 0..machines.div_ceil(MACHINES) {
        bodies.push(Body::SiteNamed(Site { site: site(number), name: format!("Quarry {number}") }));
    }
    for number in 0..machines {
        machine_of(number, &mut chance, &mut bodies)?;
        if (number + 1) % AT_ONCE == 0 || number + 1 == machines {
            // A second a transaction: what was recorded last is known.
            let now = DateTime::from_timestamp(1_600_000_000 + number as i64, 0)
                .unwrap_or(DateTime::<Utc>::MIN_UTC);
            events += bodies.len();
            register.append(bodies.drain(..), now).map_err(Error::other)?;
        }
        if (number + 1) % (machines / 10).max(1) == 0 {
            println!("{events} events in {:.0} s", begun.elapsed().as_secs_f64());
        }
    }
    println!("{hoses} hoses, {events} events made in {:.0} s.", begun.elapsed().as_secs_f64());
    Ok(())
}

/// A machine with its places, the hoses that sat there, and its hours.
fn machine_of(number: u64, chance: &mut Chance, bodies: &mut Vec<Body>) -> Result<()> {
    let sort = SORTS[(number % SORTS.len() as u64) as usize];
    bodies.push(Body::MachineSet(Machine {
        machine: machine(number),
        site: Some(site(number / MACHINES)),
        name: format!("{sort} {number}"),
        sort: sort.to_owned(),
        demand: None,
    }));
    for reading in 0..READINGS {
        let (date, hours) = (after(first_day(), reading * 330), reading as f64 * 900.0);
        bodies.push(Body::HoursRead(HoursRead { machine: machine(number), hours, date }));
    }
    for at in 0..PLACES {
        let own = number * PLACES + at;
        let kind = TYPES[(own % TYPES.len() as u64) as usize];
        let length = 400 + 10 * chance.below(200);
        bodies.push(Body::PlaceSet(Box::new(Place {
            place: place(own),
            machine: machine(number),
            number: at as u32 + 1,
            name: NAMES[(own % NAMES.len() as u64) as usize].to_owned(),
            line: Some(if own % 8 == 7 { Line::Return } else { Line::Cylinder }),
            circuit: None,
            spec: Some(spec(kind, length)?),
            service: Service::default(),
            ports: None,
            oil: None,
            demand: None,
            stakes: None,
            consequence: None,
        })));
        let first = own * HOSES_OF_TWO_PLACES / 2;
        let last = (own + 1) * HOSES_OF_TWO_PLACES / 2;
        let mut on = after(first_day(), chance.below(700));
        for hose in first..last {
            let off = after(on, 300 + chance.below(900));
            hose_of(hose, own, kind, length, (on, (hose + 1 < last).then_some(off)), chance, bodies)?;
            on = off;
        }
    }
    Ok(())
}

/// A hose: made, labelled, fitted, looked at, and taken off where another came after it.
fn hose_of(
    hose: u64,
    at: u64,
    kind: (&str, &str, f64),
    length: u64,
    (on, off): (NaiveDate, Option<NaiveDate>),
    chance: &mut Chance,
    bodies: &mut Vec<Body>,
) -> Result<()> {
    let code = code(hose);
    bodies.push(Body::AssemblyMade(Box::new(Assembly {
        code,
        spec: spec(kind, length)?,
        service: Service::default(),
        hose_made: None,
        assembled: Some(on),
        proof: Proof::NotProved { why: NotProved::NoRig },
        verdict: None,
        pressure_bar: Some(Bar(206.8)),
        bench: None,
        catalogue: "million".to_owned(),
        rests_on: Vec::new(),
        program: "million".to_owned(),
        taken_in: None,
    })));
    bodies.push(Body::Labelled(Labelled { code, how: LabelledHow::Printed }));
    bodies.push(Body::Fitted(Fitted { code, place: place(at), date: on, already_there: false, hours: None }));
    let found = match chance.below(50) {
        0 => vec![Graded { sign: "ABR-SCUFF".to_owned(), grade: Verdict::Caution }],
        1 if off.is_none() && chance.below(5) == 0 => {
            vec![Graded { sign: "ABR-WIRE".to_owned(), grade: Verdict::Stop }]
        }
        _ => Vec::new(),
    };
    let date = after(on, 30 + chance.below(250));
    bodies.push(Body::Inspected(Inspected { code, date, findings: found, opened: false }));
    if let Some(date) = off {
        let cause = (chance.below(3) == 0).then(|| "ABR".to_owned());
        let place = place(at);
        bodies.push(Body::TakenOff(TakenOff { code, place, date, hours: None, cause, note: None }));
    }
    Ok(())
}

/// Asks a register that [`measure`] made, and prints what was measured as JSON.
pub fn ask(hoses: u64, file: &Path, seed: u64) -> Result<()> {
    let register = Register::open(file, DeviceId::from_bytes([1; 16])).map_err(Error::other)?;
    let counts = register.counts().map_err(Error::other)?;
    let fleet = format!("{} hoses, {} events", counts.hoses, counts.events);
    let mut promises = Vec::new();
    let mut asked = |what: &str, count: u64, limit: f64, ask: &mut dyn FnMut(u64) -> Result<()>| {
        let times = Times::of(count, ask)?;
        promises.push(Promise::time(format!("{fleet}: {what}, p99"), times.at(0.99), limit));
        Ok::<(), Error>(())
    };
    let mut chance = Chance(seed ^ 0x5eed);
    let places = hoses * 2 / HOSES_OF_TWO_PLACES;
    let machines = places.div_ceil(PLACES);
    let sites = machines.div_ceil(MACHINES);
    asked("open by tag", ASKED, TAG_MS, &mut |_| {
        let found = register.hose(&code(chance.below(hoses))).map_err(Error::other)?;
        found.map(|_| ()).ok_or_else(|| Error::other("no hose"))
    })?;
    asked("history of a place", ASKED, PLACE_MS, &mut |_| {
        let found = register.place(place(chance.below(places))).map_err(Error::other)?;
        found.map(|_| ()).ok_or_else(|| Error::other("no place"))
    })?;
    let rules = register.rules().map_err(Error::other)?;
    asked("due, 50 of fleet, site, machine by turns", ASKED, DUE_MS, &mut |number| {
        let whole = DueAsk { limit: Some(50), ..DueAsk::default() };
        let ask = match number % 3 {
            0 => whole,
            1 => DueAsk { site: Some(site(chance.below(sites))), ..whole },
            _ => DueAsk { machine: Some(machine(chance.below(machines))), ..whole },
        };
        register.due(today(), &ask, &rules).map(|_| ()).map_err(Error::other)
    })?;
    for (what, text) in searches() {
        asked(&format!("search, {what}"), ASKED / 5, SEARCH_MS, &mut |_| {
            let text = text(&mut chance, hoses, machines);
            register.search(&text, 100).map(|_| ()).map_err(Error::other)
        })?;
    }
    promises.push(Promise::of(format!("{fleet}: memory at most"), resident_mb()?, "MB", MEMORY_MB));
    println!("{}", serde_json::to_string(&promises).map_err(Error::other)?);
    Ok(())
}

/// What is searched for, of what.
type Text = fn(&mut Chance, u64, u64) -> String;

/// The mix: what people type, from the first letter on.
fn searches() -> [(&'static str, Text); 7] {
    [
        ("a whole code", |chance, hoses, _| code(chance.below(hoses)).to_string()),
        ("the first five of a code", |chance, hoses, _| {
            code(chance.below(hoses)).to_string()[..5].to_owned()
        }),
        ("a machine by its number", |chance, _, machines| format!("excavator {}", chance.below(machines))),
        ("words of hose, place and site", |chance, _, machines| {
            format!("2sn stick quarry {}", chance.below(machines.div_ceil(MACHINES)))
        }),
        ("common words alone", |_, _, _| "stick cylinder 2sn".to_owned()),
        ("beginnings as they are typed", |chance, _, _| {
            "excavator"[..1 + chance.below(9) as usize].to_owned()
        }),
        ("nothing that is there", |chance, _, _| format!("boom zz{}", chance.below(1000))),
    ]
}

/// The most memory this process ever held, as the system says.
fn resident_mb() -> Result<f64> {
    let status = std::fs::read_to_string("/proc/self/status")?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
    let kb = line.and_then(|line| line.split_whitespace().next()).and_then(|kb| kb.parse::<f64>().ok());
    kb.map(|kb| kb / 1000.0).ok_or_else(|| Error::other("the system does not say how much memory is held"))
}
