//! What several vans exchange over a storage that is none of ours: segments, who may read them, and what happens when
//! they are cut off, changed, lost, or written by two as one.

mod members;
mod photos;
mod servers;

use super::settings::answer;
use chrono::{DateTime, Utc};
use hosewright_api::{Api, Code, World};
use hosewright_core::fleet::{DeviceKey, FleetKey, hand_on};
use hosewright_core::record::{About, Body, BodyText, DeviceId, Event, Hash, Hlc, Noted, SiteId};
use hosewright_exchange::{Segment, SegmentError};
use hosewright_store::Register;
use hosewright_words::Language;
use proptest::prelude::*;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use tempfile::TempDir;

/// A clock that goes wrong by days from van to van once they have met, and numbers instead of chance.
struct Odd {
    van: u8,
    given: u8,
    /// Whether it goes wrong yet.
    wrong: Arc<AtomicBool>,
}

impl Odd {
    fn new(van: u8) -> Self {
        Self { van, given: 0, wrong: Arc::default() }
    }
}

impl World for Odd {
    fn now(&self) -> DateTime<Utc> {
        let days = if self.wrong.load(Ordering::Relaxed) { i64::from(self.van) * 5 } else { 0 };
        DateTime::from_timestamp(1_790_000_000 + days * 86_400, 0).expect("a time")
    }

    fn random(&mut self) -> [u8; 16] {
        self.given += 1;
        let mut bytes = [self.given; 16];
        bytes[0] = self.van;
        bytes
    }
}

struct Van {
    api: Api,
    path: PathBuf,
    /// Whether its clock goes wrong.
    wrong: Arc<AtomicBool>,
}

/// Vans of one fleet, and the folder through which they exchange.
struct Vans {
    vans: Vec<Van>,
    folder: TempDir,
    /// An open fleet, which has no founder, by its key.
    open: Option<[u8; 32]>,
}

impl Vans {
    /// Of a fleet that is open: every device that has its key counts.
    fn new(count: u8) -> Self {
        Self::with(count, Some([7; 32]))
    }

    /// Of a fleet that the first one founded; it has given every other its nod.
    fn founded(count: u8) -> Self {
        let mut vans = Self::with(count, None);
        (1..usize::from(count)).chain([0]).for_each(|van| {
            vans.exchange(van);
        });
        (1..usize::from(count)).for_each(|van| vans.admit(0, van, "technician"));
        (0..usize::from(count)).for_each(|van| {
            vans.exchange(van);
        });
        vans
    }

    fn with(count: u8, open: Option<[u8; 32]>) -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        std::fs::create_dir(folder.path().join("storage")).expect("made");
        let mut vans = Self { vans: Vec::new(), folder, open };
        (1..=count).for_each(|van| vans.add(van));
        vans.clocks_go_wrong();
        vans
    }

    /// The register of a van, beside its program.
    fn register(&self, van: usize) -> Register {
        Register::open(&self.vans[van].path, DeviceId::from_bytes([0xee; 16])).expect("opens")
    }

    /// The id under which a van writes.
    fn id(&self, van: usize) -> DeviceId {
        self.register(van).device()
    }

    fn admit(&mut self, planner: usize, van: usize, role: &str) {
        let device = self.id(van);
        ask(&mut self.vans[planner].api, "fleet.admit", json!({"device": device, "role": role}));
    }

    fn add(&mut self, van: u8) {
        let path = self.folder.path().join(format!("van-{van}.db"));
        let clock = Odd::new(van);
        let wrong = Arc::clone(&clock.wrong);
        let mut api = Api::new(Language::English, Box::new(clock));
        api.open(&path).expect("the register opens");
        match (self.open, self.vans.first_mut()) {
            (Some(key), _) => {
                let from = DeviceKey::from_bytes([6; 32]);
                let text = hand_on("Vans", &FleetKey::from_bytes(key), None, &from, Odd::new(1).now());
                let asked = json!({"text": text, "from": from.public().mark(), "as": "own"});
                ask(&mut api, "fleet.join", asked);
            }
            (None, None) => {
                ask(&mut api, "fleet.begin", json!({"name": "Vans"}));
            }
            (None, Some(first)) => join(&mut api, &mut first.api),
        }
        ask(&mut api, "share.set", json!({"url": self.url()}));
        self.vans.push(Van { api, path, wrong });
    }

    /// From now on no two clocks agree on the day.
    fn clocks_go_wrong(&self) {
        self.vans.iter().for_each(|van| van.wrong.store(true, Ordering::Relaxed));
    }

    fn storage(&self) -> PathBuf {
        self.folder.path().join("storage")
    }

    fn url(&self) -> String {
        format!("file://{}", self.storage().display())
    }

    fn exchange(&mut self, van: usize) -> Value {
        ask(&mut self.vans[van].api, "share.exchange", json!({}))
    }

    fn site(&mut self, van: usize, name: &str) {
        let id = ask(&mut self.vans[van].api, "register.id", json!({}))["id"].clone();
        let body = json!({"kind": "site-named", "site": id, "name": name});
        ask(&mut self.vans[van].api, "register.record", json!({"events": [{"body": body}]}));
    }

    fn files(&self) -> Vec<PathBuf> {
        let mut files = Vec::new();
        for device in list(&self.storage().join("segments")) {
            files.extend(list(&device));
        }
        files
    }

    /// Everything that each van's register has.
    fn dumps(&self) -> Vec<String> {
        (0..self.vans.len()).map(|van| self.register(van).dump().expect("reads")).collect()
    }
}

fn list(folder: &Path) -> Vec<PathBuf> {
    let Ok(entries) = std::fs::read_dir(folder) else { return Vec::new() };
    let mut paths: Vec<_> = entries.map(|entry| entry.expect("an entry").path()).collect();
    paths.sort();
    paths
}

/// Joins the fleet of another device, by the key that it shows.
fn join(api: &mut Api, member: &mut Api) {
    let text = ask(member, "fleet.hand-on", json!({}))["text"].clone();
    let from = ask(member, "fleet.show", json!({}))["device"]["mark"].clone();
    ask(api, "fleet.join", json!({"text": text, "from": from, "as": "own"}));
}

#[track_caller]
fn ask(api: &mut Api, name: &str, input: Value) -> Value {
    answer(api, name, input).unwrap_or_else(|error| panic!("{name}: {error}"))
}

#[test]
fn what_one_van_writes_is_on_the_other_after_both_exchanged() {
    let mut vans = Vans::new(2);
    vans.site(0, "North quarry");
    let shown = ask(&mut vans.vans[0].api, "share.show", json!({}));
    assert_eq!((&shown["written"], &shown["sent"], &shown["last"]), (&json!(2), &json!(0), &Value::Null));
    // Each device tells its public key besides.
    let sent = vans.exchange(0);
    assert_eq!((&sent["went"], &sent["came"], &sent["cut_off"]), (&json!(2), &json!(0), &Value::Null));
    let came = vans.exchange(1);
    assert_eq!((&came["went"], &came["came"]), (&json!(1), &json!(2)));
    assert_eq!(vans.exchange(0)["came"], json!(1));
    assert_eq!(vans.dumps()[0], vans.dumps()[1]);
    // Nothing new: nothing is sent or fetched.
    for van in 0..2 {
        let again = vans.exchange(van);
        assert_eq!((&again["went"], &again["came"], &again["refused"]), (&json!(0), &json!(0), &json!([])));
    }
    assert_eq!(vans.files().len(), 2);
    let shown = ask(&mut vans.vans[1].api, "share.show", json!({}));
    assert_eq!(shown["devices"][0]["events"], json!(2));
}

#[test]
fn without_a_storage_or_a_fleet_it_says_what_to_do_first() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = Api::new(Language::English, Box::new(Odd::new(1)));
    api.open(&folder.path().join("register.db")).expect("opens");
    let error = answer(&mut api, "share.exchange", json!({})).expect_err("no storage");
    assert_eq!((error.code, error.field.as_str()), (Code::Nothing, "url"));
    for wrong in ["somewhere", "ftp://server/x", "file:relative"] {
        let error = answer(&mut api, "share.set", json!({"url": wrong})).expect_err(wrong);
        assert_eq!((error.code, error.field.as_str()), (Code::Input, "url"), "{wrong}");
    }
    let url = format!("file://{}", folder.path().display());
    ask(&mut api, "share.set", json!({"url": url}));
    let error = answer(&mut api, "share.exchange", json!({})).expect_err("no fleet");
    assert_eq!((error.code, error.field.as_str()), (Code::Nothing, "fleet"));
    ask(&mut api, "fleet.begin", json!({"name": "Vans"}));
    // A server that is not there is no reason to lose anything: it is said, and what waits is shown.
    ask(
        &mut api,
        "share.set",
        json!({"url": "http://127.0.0.1:9/folder", "user": "u", "secret": "not to be shown"}),
    );
    let error = answer(&mut api, "share.exchange", json!({})).expect_err("nobody answers");
    assert_eq!(error.code, Code::File);
    assert!(error.message.contains("stays on this device"), "{error}");
    let shown = ask(&mut api, "share.show", json!({})).to_string();
    assert!(
        !shown.contains("not to be shown") && !error.message.contains("not to be shown"),
        "{shown} {error}"
    );
}

#[test]
fn another_fleets_segments_are_refused_in_words_and_change_nothing() {
    let mut ours = Vans::new(1);
    let mut theirs = Vans::new(1);
    theirs.vans.clear();
    theirs.open = Some([8; 32]);
    theirs.add(7);
    theirs.site(0, "Elsewhere");
    ask(&mut theirs.vans[0].api, "share.set", json!({"url": ours.url()}));
    theirs.exchange(0);
    let before = ours.dumps();
    let answer = ours.exchange(0);
    let why = answer["refused"][0]["why"].as_str().expect("refused");
    assert!(why.contains("whose key this device does not have"), "{why}");
    assert_eq!((&answer["came"], ours.dumps()), (&json!(0), before));
}

#[test]
fn a_register_that_was_copied_is_found_out() {
    let mut vans = Vans::new(2);
    vans.site(0, "North");
    vans.exchange(0);
    vans.exchange(1);
    // The file is copied with its keys, and both go on as one device.
    let copy = vans.folder.path().join("copy.db");
    let keys = |path: &Path| PathBuf::from(format!("{}.keys", path.display()));
    let original = vans.vans[0].path.clone();
    let source = Register::open(&original, DeviceId::from_bytes([1; 16])).expect("opens");
    drop(source);
    rusqlite::Connection::open(&original)
        .expect("opens")
        .execute("VACUUM INTO ?1", [copy.display().to_string()])
        .expect("copied");
    std::fs::copy(keys(&original), keys(&copy)).expect("copied");
    let mut api = Api::new(Language::English, Box::new(Odd::new(9)));
    api.open(&copy).expect("opens");
    vans.vans.push(Van { api, path: copy, wrong: Arc::default() });
    vans.site(0, "South");
    vans.site(2, "East");
    vans.exchange(0);
    vans.exchange(1);
    vans.exchange(2);
    // The storage has the first one's event under that number. The copy is told, and nothing of it goes out.
    vans.site(2, "West");
    let told = vans.exchange(2);
    let why = told["refused"][0]["why"].as_str().unwrap_or_default();
    assert!(why.contains("wrote as the same device"), "{told}");
    assert_eq!(told["refused"][0]["copied"], json!(true));
    let shown = ask(&mut vans.vans[2].api, "share.show", json!({}));
    assert_eq!(shown["last"]["refused"][0]["copied"], json!(true), "it is shown until it is settled");
    assert_eq!((&told["came"], &told["went"]), (&json!(0), &json!(0)));
    for van in 0..2 {
        assert_eq!(vans.exchange(van)["refused"], json!([]), "van {van}");
    }
    let dumps = vans.dumps();
    assert_eq!(dumps[0], dumps[1]);
}

/// What happens among vans and in their storage.
#[derive(Debug, Clone)]
enum Turn {
    Writes(usize),
    Exchanges(usize),
    /// A file is cut off, as an upload over a bad line leaves it.
    CutOff(usize),
    /// The storage loses a file.
    Lost(usize),
    /// A file of some other kind lies about.
    Stray,
}

fn turn() -> impl Strategy<Value = Turn> {
    prop_oneof![
        5 => (0..5_usize).prop_map(Turn::Writes),
        4 => (0..5_usize).prop_map(Turn::Exchanges),
        1 => any::<usize>().prop_map(Turn::CutOff),
        1 => any::<usize>().prop_map(Turn::Lost),
        1 => Just(Turn::Stray),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 8, ..ProptestConfig::default() })]
    #[test]
    fn whatever_happens_to_the_storage_all_vans_end_with_the_same_register(
        turns in proptest::collection::vec(turn(), 1..40), founded: bool,
    ) {
        let mut vans = if founded { Vans::founded(5) } else { Vans::new(5) };
        let mut written = 0;
        for (at, turn) in turns.iter().enumerate() {
            let files = vans.files();
            match turn {
                Turn::Writes(van) => {
                    vans.site(*van, &format!("Site {at}"));
                    written += 1;
                }
                Turn::Exchanges(van) => {
                    let answer = vans.exchange(*van);
                    prop_assert!(is_honest(&answer), "{answer}");
                }
                Turn::CutOff(pick) if !files.is_empty() => {
                    let path = &files[pick % files.len()];
                    let bytes = std::fs::read(path).expect("reads");
                    std::fs::write(path, &bytes[..bytes.len() / 2]).expect("writes");
                }
                Turn::Lost(pick) if !files.is_empty() => {
                    std::fs::remove_file(&files[pick % files.len()]).expect("removed");
                }
                Turn::Stray => {
                    let folder = vans.storage().join("segments/odd");
                    std::fs::create_dir_all(&folder).expect("made");
                    std::fs::write(folder.join("1-2-3-x"), "odd").expect("written");
                }
                Turn::CutOff(_) | Turn::Lost(_) => {}
            }
        }
        // Twice round: the first brings everything to the storage, the second everything back.
        for van in (0..5).chain(0..5) {
            vans.exchange(van);
        }
        let dumps = vans.dumps();
        for dump in &dumps {
            prop_assert_eq!(dump, &dumps[0]);
        }
        let has: u64 = vans.register(0).ends().expect("reads").values().sum();
        let of_members = if founded { 4 } else { 0 };
        prop_assert_eq!(has, written + 5 + of_members, "an event was lost; each van told its key besides");
        let shown = ask(&mut vans.vans[3].api, "share.show", json!({}));
        prop_assert_eq!(&shown["written"], &shown["sent"]);
    }
}

/// Whether an exchange refused nothing. What another device sent for one that lost it may come before the other has told
/// its key: it is fetched again.
fn is_honest(answer: &Value) -> bool {
    let refused = answer["refused"].as_array().expect("a list");
    refused
        .iter()
        .all(|refused| refused["why"].as_str().is_some_and(|why| why.contains("told nobody its key")))
}

#[test]
fn what_a_restored_device_had_written_is_sent_for_it() {
    let mut vans = Vans::new(2);
    vans.exchange(0);
    vans.site(0, "Written before the phone was lost");
    let backup = vans.folder.path().join("backup.db");
    vans.vans[0].api.backup_to(&backup).expect("backed up");
    let path = vans.folder.path().join("restored.db");
    let mut api = Api::new(Language::English, Box::new(Odd::new(9)));
    api.restore_from(&backup, &path).expect("restored");
    vans.vans[1].wrong.store(false, Ordering::Relaxed);
    join(&mut api, &mut vans.vans[1].api);
    ask(&mut api, "share.set", json!({"url": vans.url()}));
    vans.vans[0] = Van { api, path, wrong: Arc::default() };
    vans.exchange(0);
    let came = vans.exchange(1);
    assert!(is_honest(&came), "{came}");
    let hits = ask(&mut vans.vans[1].api, "register.overview", json!({}));
    assert!(hits.to_string().contains("Written before the phone was lost"), "{hits}");
}

#[test]
fn two_devices_that_sent_each_others_lost_segments_are_both_believed() {
    let mut vans = Vans::new(3);
    vans.site(0, "North");
    for van in [0, 1, 0] {
        vans.exchange(van);
    }
    // The storage loses everything: the second sends it all, and the first what the second had sent of its own.
    vans.files().iter().for_each(|file| std::fs::remove_file(file).expect("removed"));
    vans.exchange(1);
    std::fs::remove_file(&vans.files()[1]).expect("removed");
    vans.exchange(0);
    assert_eq!(vans.files().len(), 2);
    let came = vans.exchange(2);
    assert_eq!((&came["refused"], &came["came"]), (&json!([]), &json!(3)));
}

#[test]
fn a_segment_of_a_device_that_told_nobody_its_key_is_refused() {
    let mut vans = Vans::new(1);
    vans.exchange(0);
    let keys = std::fs::read_to_string(format!("{}.keys", vans.vans[0].path.display())).expect("reads");
    let keys: Value = serde_json::from_str(&keys).expect("JSON");
    let key: [u8; 32] = serde_json::from_value(keys["fleets"][0]["key"].clone()).expect("a key");
    let events = series(&["forged".to_owned()]);
    // Whoever has the fleet's key and no more signs with a key that no device of the fleet ever told.
    let file = Segment::write(&events, &DeviceKey::from_bytes([9; 32]), Some(&FleetKey::from_bytes(key)))
        .expect("writes");
    let path = vans.storage().join(Segment::name(&events, &file).expect("a name").to_string());
    std::fs::create_dir_all(path.parent().expect("a folder")).expect("made");
    std::fs::write(path, file).expect("written");
    let before = vans.dumps();
    let answer = vans.exchange(0);
    assert!(
        answer["refused"][0]["why"].as_str().is_some_and(|why| why.contains("told nobody its key")),
        "{answer}"
    );
    assert_eq!((&answer["came"], vans.dumps()), (&json!(0), before));
}

/// A series of remarks.
fn series(texts: &[String]) -> Vec<Event> {
    let device = DeviceId::from_bytes([5; 16]);
    let mut previous = Hash::NONE;
    let about = About::Site(SiteId::from_bytes([1; 16]));
    let mut events = Vec::new();
    for (number, text) in (1..).zip(texts) {
        let body = Body::Noted(Noted { about: about.clone(), text: text.clone() });
        let event = Event {
            device,
            number,
            previous,
            builds_on: Vec::new(),
            schema: 1,
            time: Hlc { ms: 1_790_000_000_000 + number as i64 * 37, count: 0 },
            body: BodyText::of(&body).expect("writes"),
        };
        previous = event.hash().expect("hashes");
        events.push(event);
    }
    events
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 32, ..ProptestConfig::default() })]
    #[test]
    fn a_segment_comes_back_and_a_changed_one_never_does(
        texts in proptest::collection::vec("x[^\u{0}]{0,40}", 1..8),
        sealed: bool,
        at: prop::sample::Index,
        bit in 0..8_u8,
    ) {
        let events = series(&texts);
        let (device, fleet) = (DeviceKey::from_bytes([1; 32]), FleetKey::from_bytes([2; 32]));
        let to = sealed.then_some(&fleet);
        let file = Segment::write(&events, &device, to).expect("writes");
        prop_assert_eq!(&Segment::write(&events, &device, to).expect("writes"), &file, "the same events, another file");
        let read = Segment::read(&file, std::slice::from_ref(&fleet)).expect("reads");
        prop_assert_eq!(read.events, events.clone());
        prop_assert_eq!(read.by, device.public());
        let mut changed = file.clone();
        changed[at.index(file.len())] ^= 1 << bit;
        prop_assert!(Segment::read(&changed, std::slice::from_ref(&fleet)).is_err(), "a changed file was taken");
        let cut = &file[..at.index(file.len())];
        prop_assert!(Segment::read(cut, std::slice::from_ref(&fleet)).is_err(), "a cut file was taken");
        let foreign = Segment::read(&file, &[FleetKey::from_bytes([3; 32])]);
        prop_assert_eq!(matches!(foreign, Err(SegmentError::Foreign { .. })), sealed);
    }
}

#[test]
fn events_that_do_not_follow_each_other_are_no_segment() {
    let device = DeviceKey::from_bytes([1; 32]);
    let events = series(&["a".to_owned(), "b".to_owned(), "c".to_owned()]);
    assert!(matches!(Segment::write(&[], &device, None), Err(SegmentError::Empty)));
    let gap = [events[0].clone(), events[2].clone()];
    assert!(matches!(Segment::write(&gap, &device, None), Err(SegmentError::OtherEvents)));
}
