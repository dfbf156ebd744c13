//! Twenty vans and an office, over lines that are cut and servers that are killed.

use super::office::{kept, office};
use super::postgres::Postgres;
use super::{Dice, Line, Server, object_storage, webdav};
use crate::share::{Van, Vans, answer, ask, is_honest};
use chrono::DateTime;
use hosewright_core::record::{DeviceId, Hash};
use hosewright_exchange::{Segment, SegmentName};
use hosewright_store::Register;
use hosewright_tests::van_events;
use serde_json::{Value, json};
use std::path::PathBuf;
use std::time::{Duration, Instant};

const VANS: u8 = 20;
const ROUNDS: usize = 3;

/// About how many events all vans write together; `HOSEWRIGHT_VANS_EVENTS` asks for more.
fn events() -> usize {
    std::env::var("HOSEWRIGHT_VANS_EVENTS").map_or(0, |text| text.parse().expect("a number of events"))
}

/// The office: a member of the fleet that writes nothing, and its database.
struct Desk {
    register: PathBuf,
    postgres: Postgres,
    line: Line,
    killed: u32,
    failed: u32,
}

impl Desk {
    fn at(van: Van) -> Self {
        let postgres = Postgres::start();
        postgres.database("office");
        let line = Line::to(postgres.server.port);
        line.is_bad_in(30);
        Self { register: van.path, postgres, line, killed: 0, failed: 0 }
    }

    fn address(&self) -> String {
        Postgres::address("office", self.line.port)
    }

    /// Keeps the database, and is killed while it does, or loses its database, or neither.
    fn keep(&mut self, dice: &mut Dice) {
        let (kill, stop) = (dice.below(3) == 0, dice.below(8) == 0);
        let mut under_way = office(&self.register, &self.address())
            .stdout(std::process::Stdio::null())
            .stderr(std::process::Stdio::null())
            .spawn()
            .expect("starts");
        std::thread::sleep(Duration::from_millis(dice.below(700)));
        if stop {
            self.postgres.server.kill();
        }
        if kill && under_way.try_wait().expect("is known").is_none() {
            under_way.kill().expect("killed");
            self.killed += 1;
        }
        self.failed += u32::from(!under_way.wait().expect("ended").success());
        if stop {
            self.postgres.server.again();
            self.postgres.wait();
        }
    }

    /// Over a good line the copy is whole, the same as one that was made at once, and of the register's own log.
    fn is_equal_to(&self, vans: &Vans) {
        let last = kept(&self.register, &self.address()).expect("kept over a good line");
        let has: u64 = register(&vans.vans[0]).ends().expect("reads").values().sum();
        assert_eq!(last["events"], json!(has), "{last}");
        let again = kept(&self.register, &self.address()).expect("kept");
        assert_eq!((&again["came"], &again["written"], &again["removed"]), (&json!(0), &json!(0), &json!(0)));
        self.postgres.database("at_once");
        let at_once = Postgres::address("at_once", self.postgres.server.port);
        kept(&self.register, &at_once).expect("kept");
        assert!(self.postgres.dump("office") == self.postgres.dump("at_once"), "the copies differ");
        let log = self.postgres.ask(
            "office",
            "SELECT string_agg(device || '/' || number || ' ' || hash, ',' ORDER BY device COLLATE \"C\", number)
             FROM hosewright.log",
        );
        let bundle = register(&vans.vans[0]).bundle().expect("reads");
        let mut events: Vec<_> = bundle.events.iter().collect();
        events.sort_by_key(|event| event.at());
        let own: Vec<_> =
            events.iter().map(|event| format!("{} {}", event.at(), event.hash().expect("hashes"))).collect();
        assert!(log == own.join(","), "the office has another log than the vans");
    }
}

fn register(van: &Van) -> Register {
    Register::open(&van.path, DeviceId::from_bytes([0xee; 16])).expect("opens")
}

/// What stands for everything that a van's register has.
fn digest(van: &Van) -> Hash {
    Hash::of(register(van).dump().expect("reads"))
}

/// All vans write and exchange over a line that is bad and a server that is killed in between, and the office keeps its
/// database; then the lines are mended.
fn over(name: &str, mut vans: Vans, mut server: Server, line: &Line, mut desk: Desk) {
    let begun = Instant::now();
    let mut dice = Dice(3);
    let (mut written, mut tried, mut downs, mut failed) = (0_usize, 0, 0, 0);
    let machines = events() / van_events::EVENTS_OF_MACHINE / usize::from(VANS) / ROUNDS;
    line.is_bad_in(30);
    for round in 0..ROUNDS {
        for van in 0..usize::from(VANS) {
            // By count: whether a line that is cut ends an exchange is luck, since each request is tried again.
            let down = tried % 13 == 5;
            if down {
                server.kill();
                downs += 1;
            }
            for n in 0..dice.below(4) {
                vans.site(van, &format!("Site {round}-{van}-{n}"));
                written += 1;
            }
            written += works(&vans.vans[van], van as u32 + 1, round * machines, machines);
            tried += 1;
            failed += u32::from(!whole(&mut vans, van));
            if down {
                server.again();
            }
            if van % 4 == 0 {
                desk.keep(&mut dice);
            }
        }
    }
    assert!(downs > 0 && failed >= downs, "an exchange went through with a server that was down");
    assert!(desk.killed > 0 && desk.failed > desk.killed, "the office was not disturbed");
    line.is_bad_in(0);
    desk.line.is_bad_in(0);
    kept(&desk.register, &desk.address()).expect("kept over a good line");
    for van in (0..usize::from(VANS)).chain(0..usize::from(VANS)) {
        assert!(whole(&mut vans, van), "van {van} could not exchange over a good line");
    }
    // Of the few events of a short run these figures say nothing.
    let merged = if machines > 0 { fresh(&mut vans, written) } else { String::new() };
    let first = digest(&vans.vans[0]);
    for (van, other) in vans.vans.iter().enumerate() {
        assert_eq!(digest(other), first, "van {van} has another register");
    }
    desk.is_equal_to(&vans);
    let has: u64 = register(&vans.vans[0]).ends().expect("reads").values().sum();
    assert_eq!(
        has,
        written as u64 + u64::from(VANS) + 1,
        "events were lost; vans and office told their keys besides"
    );
    #[allow(clippy::print_stdout, reason = "the figures are what the run is for")]
    {
        println!(
            "{name}: {VANS} vans, {written} events, {tried} exchanges under faults of which {failed} were cut off ({downs} servers \
             down), the office's copy killed {} times and cut off {} times; all registers and the copy equal after one good round \
             trip; {merged}{:.0} s",
            desk.killed,
            desk.failed - desk.killed,
            begun.elapsed().as_secs_f64()
        );
    }
}

/// What a van writes of so many machines. Gives how many events.
fn works(van: &Van, number: u32, from: usize, machines: usize) -> usize {
    if machines == 0 {
        return 0;
    }
    let mut register = Register::open(&van.path, DeviceId::from_bytes([0xee; 16])).expect("opens");
    let mut bodies = if from == 0 { vec![van_events::site(number)] } else { Vec::new() };
    for machine in from..from + machines {
        bodies.extend(van_events::machine(number, machine as u32));
    }
    let now = DateTime::from_timestamp(1_790_000_000, 0).expect("a time");
    register.append(bodies, now).expect("is written").len()
}

/// How long all that was written takes to be read from segments and merged, and how many bytes of a segment an event has.
fn fresh(vans: &mut Vans, written: usize) -> String {
    let access = register(&vans.vans[0]).keys().expect("reads");
    let own = access.own().expect("a fleet").key.clone();
    let device = access.device.expect("a key");
    let donor = register(&vans.vans[0]);
    let files: Vec<(SegmentName, Vec<u8>)> = donor
        .ends()
        .expect("reads")
        .into_iter()
        .map(|(of, end)| {
            let events = donor.series(of, 1..=end).expect("reads");
            let file = Segment::write(&events, &device, Some(&own)).expect("writes");
            (Segment::name(&events, &file).expect("named"), file)
        })
        .collect();
    let bytes: usize = files.iter().map(|(_, file)| file.len()).sum();
    let path = vans.folder.path().join("fresh.db");
    let mut register = Register::open(&path, DeviceId::from_bytes([0xdd; 16])).expect("opens");
    let begun = Instant::now();
    for (_, file) in &files {
        let events = Segment::read(file, std::slice::from_ref(&own)).expect("reads").events;
        register.merge(&hosewright_store::Bundle { people: Vec::new(), events }).expect("merges");
    }
    let took = begun.elapsed().as_secs_f64();
    format!("read and merged anew in {took:.2} s, {} bytes an event in a segment; ", bytes / written.max(1))
}

/// Whether an exchange went through whole. What it refuses it says; nothing honest is ever refused.
fn whole(vans: &mut Vans, van: usize) -> bool {
    match answer(&mut vans.vans[van].api, "share.exchange", json!({})) {
        Ok(answer) => {
            assert!(is_honest(&answer), "{answer}");
            answer["cut_off"] == Value::Null
        }
        Err(_) => false,
    }
}

#[test]
#[ignore = "needs servers: tests/vans/run installs and starts them"]
fn twenty_vans_over_webdav_end_with_the_same_register() {
    let vans = Vans::new(VANS + 1);
    let server = webdav(vans.folder.path());
    let line = Line::to(server.port);
    let url = format!("http://127.0.0.1:{}/", line.port);
    let access = json!({"url": url, "user": "van", "secret": "let me in"});
    begin("WebDAV (lighttpd)", vans, server, &line, &access);
}

#[test]
#[ignore = "needs servers: tests/vans/run installs and starts them"]
fn twenty_vans_over_object_storage_end_with_the_same_register() {
    let vans = Vans::new(VANS + 1);
    let server = object_storage(vans.folder.path());
    let line = Line::to(server.port);
    let endpoint = format!("http://127.0.0.1:{}", line.port);
    let access =
        json!({"url": "s3://hoses/vans", "endpoint": endpoint, "user": "S3RVER", "secret": "S3RVER"});
    begin("S3-compatible (s3rver)", vans, server, &line, &access);
}

/// Tells all of them where the storage is, and begins. The last of them is the office.
fn begin(name: &str, mut vans: Vans, server: Server, line: &Line, access: &Value) {
    for van in &mut vans.vans {
        ask(&mut van.api, "share.set", access.clone());
    }
    let desk = Desk::at(vans.vans.pop().expect("the office is the last of them"));
    over(name, vans, server, line, desk);
}
