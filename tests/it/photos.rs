//! Photos of machines, places and hoses: kept small and without what a phone writes beside them, found again, taken back,
//! and never shown where they are not what they were.

use super::settings::answer;
use assert_cmd::Command;
use chrono::{DateTime, Utc};
use hosewright_api::commands::Reply;
use hosewright_api::{Api, ApiError, Code, World};
use hosewright_store::photos_of;
use hosewright_words::Language;
use image::{ImageFormat, Rgb, RgbImage};
use serde_json::{Value, json};
use std::fs;
use std::io::Cursor;
use std::path::PathBuf;
use tempfile::TempDir;

/// A clock that goes on by a minute at each look, and numbers instead of chance.
struct Ticking {
    given: u8,
    looks: std::cell::Cell<i64>,
}

impl World for Ticking {
    fn now(&self) -> DateTime<Utc> {
        self.looks.set(self.looks.get() + 1);
        DateTime::from_timestamp(1_790_000_000 + self.looks.get() * 60, 0).expect("a time")
    }

    fn random(&mut self) -> [u8; 16] {
        self.given += 1;
        [self.given; 16]
    }
}

/// A picture as a phone leaves it: lying on its side, with a text that tells where and by whom it was taken.
pub fn from_a_phone(shade: u8) -> Vec<u8> {
    let mut file = Vec::new();
    RgbImage::from_fn(2400, 1800, |x, y| Rgb([shade, (x / 10) as u8, (y / 10) as u8]))
        .write_to(&mut Cursor::new(&mut file), ImageFormat::Jpeg)
        .expect("a picture");
    let mut exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0".to_vec();
    exif.extend(b"52.5200 N 13.4050 E, telephone of N. N.");
    let length = u16::try_from(exif.len() + 2).expect("it is short").to_be_bytes();
    [&file[..2], &[0xff, 0xe1], &length, &exif, &file[2..]].concat()
}

struct Yard {
    folder: TempDir,
    api: Api,
    site: Value,
}

impl Yard {
    fn new() -> Self {
        let folder = tempfile::tempdir().expect("a folder");
        let mut api = Api::new(Language::English, Box::new(Ticking { given: 0, looks: 0.into() }));
        api.open(&folder.path().join("yard.db")).expect("opens");
        let site = answer(&mut api, "register.id", json!({})).expect("an id")["id"].clone();
        let mut yard = Self { folder, api, site };
        let named = json!({"kind": "site-named", "site": yard.site, "name": "Ostrel Quarry"});
        yard.ask("register.record", json!({"events": [{"body": named}]})).expect("is written");
        yard
    }

    fn ask(&mut self, name: &str, input: Value) -> Result<Value, ApiError> {
        answer(&mut self.api, name, input)
    }

    fn about(&self) -> Value {
        json!({"site": self.site})
    }

    fn add(&mut self, picture: &[u8]) -> Result<Value, ApiError> {
        let asked = json!({"about": self.about()});
        match self.api.call("photo.add", asked, picture)? {
            Reply::Document(answer) => Ok(answer),
            Reply::File(_) => panic!("a file came"),
        }
    }

    fn photos(&mut self) -> Vec<Value> {
        let about = self.about();
        let listed = self.ask("photo.list", json!({"about": about})).expect("lists");
        listed["photos"].as_array().expect("a list").clone()
    }

    fn bytes(&mut self, name: &str, asked: Value) -> Result<Vec<u8>, ApiError> {
        match self.api.call(name, asked, &[])? {
            Reply::File(file) => Ok(file.bytes),
            Reply::Document(_) => panic!("a document came"),
        }
    }

    fn read(&mut self, sha256: &Value) -> Result<Vec<u8>, ApiError> {
        self.bytes("photo.read", json!({"sha256": sha256}))
    }

    fn file(&self, sha256: &Value) -> PathBuf {
        photos_of(&self.folder.path().join("yard.db")).join(sha256.as_str().expect("a hash"))
    }
}

#[test]
fn a_phones_picture_is_kept_upright_and_small_without_where_it_was_taken() {
    let mut yard = Yard::new();
    let taken = from_a_phone(200);
    let added = yard.add(&taken).expect("is kept");
    let kept = yard.read(&added["sha256"]).expect("is here");
    assert_eq!(added["length"], json!(kept.len()));
    let upright = image::load_from_memory_with_format(&kept, ImageFormat::Jpeg).expect("a JPEG");
    assert_eq!((upright.width(), upright.height()), (1200, 1600));
    let tells = |bytes: &[u8], text: &[u8]| bytes.windows(text.len()).any(|part| part == text);
    for text in [b"Exif".as_slice(), b"52.5200", b"N. N."] {
        assert!(tells(&taken, text) && !tells(&kept, text), "{}", String::from_utf8_lossy(text));
    }
}

#[test]
fn photos_are_listed_newest_first_and_the_same_picture_is_known_already() {
    let mut yard = Yard::new();
    let first = yard.add(&from_a_phone(10)).expect("is kept");
    let second = yard.add(&from_a_phone(250)).expect("is kept");
    assert_eq!((&first["known"], &second["known"]), (&json!(false), &json!(false)));
    assert_eq!(yard.add(&from_a_phone(10)).expect("is known")["known"], json!(true));
    let listed = yard.photos();
    let hashes: Vec<&Value> = listed.iter().map(|photo| &photo["sha256"]).collect();
    assert_eq!(hashes, [&second["sha256"], &first["sha256"]]);
    assert!(listed.iter().all(|photo| photo["state"] == "here" && photo["about"] == yard.about()));
    assert!(listed[0]["time"].as_str() > listed[1]["time"].as_str(), "{listed:?}");
}

#[test]
fn what_is_no_picture_and_what_is_of_nothing_is_refused_in_words_and_leaves_no_photo() {
    let mut yard = Yard::new();
    let whole = from_a_phone(1);
    for (bytes, said) in [(b"a letter".as_slice(), "no PNG or JPEG"), (&whole[..400], "broken")] {
        let error = yard.add(bytes).expect_err("is no picture");
        assert_eq!(error.code, Code::File);
        assert!(error.message.contains(said), "{error}");
    }
    let nowhere = json!({"about": {"place": "00".repeat(16)}});
    let error = yard.api.call("photo.add", nowhere, &whole).expect_err("there is no such place");
    assert_eq!(error.code, Code::Nothing);
    assert_eq!(yard.ask("photo.list", json!({})).expect("lists")["photos"], json!([]));
    let error = yard.read(&json!("00".repeat(32))).expect_err("nothing has that hash");
    assert_eq!((error.code, error.message.contains("no photo on record")), (Code::Nothing, true), "{error}");
}

#[test]
fn a_wrong_photo_is_taken_back_and_may_come_again() {
    let mut yard = Yard::new();
    let added = yard.add(&from_a_phone(3)).expect("is kept");
    let versions = yard.photos()[0]["versions"].clone();
    let struck = json!({"body": {"kind": "voided", "reason": "of another yard"}, "builds_on": versions});
    yard.ask("register.record", json!({"events": [struck]})).expect("is struck out");
    assert_eq!(yard.photos(), Vec::<Value>::new());
    assert!(yard.read(&added["sha256"]).is_err(), "it is shown nowhere any more");
    assert_eq!(yard.add(&from_a_phone(3)).expect("is kept")["known"], json!(false));
    assert_eq!(yard.photos().len(), 1);
}

#[test]
fn a_damaged_picture_is_said_and_never_shown() {
    let mut yard = Yard::new();
    let sha256 = yard.add(&from_a_phone(4)).expect("is kept")["sha256"].clone();
    let mut bytes = fs::read(yard.file(&sha256)).expect("is there");
    *bytes.last_mut().expect("some") ^= 1;
    fs::write(yard.file(&sha256), bytes).expect("written");
    let error = yard.read(&sha256).expect_err("is not what it was");
    assert_eq!((error.code, error.message.contains("damaged")), (Code::File, true), "{error}");
    assert_eq!(yard.photos()[0]["state"], "damaged");
    // Whoever still has the picture may add it again: it is known, and whole from then on.
    assert_eq!(yard.add(&from_a_phone(4)).expect("is kept")["known"], json!(true));
    assert!(yard.read(&sha256).is_ok());
    assert_eq!(yard.photos()[0]["state"], "here");
}

#[test]
fn a_backup_made_by_hand_loses_no_photo() {
    let mut yard = Yard::new();
    let sha256 = yard.add(&from_a_phone(5)).expect("is kept")["sha256"].clone();
    let picture = yard.read(&sha256).expect("is here");
    let backup = yard.bytes("register.backup", json!({})).expect("is backed up");
    // A device of its own, that has nothing.
    let mut other = Yard::new();
    match other.api.call("register.restore", json!({}), &backup).expect("is restored") {
        Reply::Document(verified) => assert_eq!(verified["faults"], json!([])),
        Reply::File(_) => panic!("a file came"),
    }
    assert_eq!(other.read(&sha256).expect("came with it"), picture);
    // The register that goes on is small again: its own next backup has the picture once.
    let again = other.bytes("register.backup", json!({})).expect("is backed up");
    assert!(again.len().abs_diff(backup.len()) < picture.len(), "{} and {}", backup.len(), again.len());
}

#[test]
fn on_the_command_line_photos_are_added_listed_saved_and_go_with_bundle_and_backup() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = |name: &str| folder.path().join(name).display().to_string();
    let run = |db: &str, arguments: &[&str]| {
        let mut command = Command::cargo_bin("hosewright").expect("the command line is built");
        let done = command.args(["register", "--db", db]).args(arguments).output().expect("it runs");
        let text = |bytes: Vec<u8>| String::from_utf8(bytes).expect("text");
        (done.status.code().expect("a code"), text(done.stdout), text(done.stderr))
    };
    let (db, picture) = (at("fleet.db"), at("stick.jpg"));
    fs::write(&picture, from_a_phone(6)).expect("written");
    fs::write(at("letter.txt"), "Dear customer").expect("written");
    assert_eq!(run(&db, &["import", "../demo/fleet.csv"]).0, 0);
    let (exit, said, error) = run(&db, &["photo", "add", "cylinder", &picture]);
    assert_eq!(exit, 2, "many places are called so: {said}{error}");
    let (_, hoses, _) = run(&db, &["hoses", "--limit", "1", "--json"]);
    let hoses: Value = serde_json::from_str(&hoses).expect("JSON");
    let hose = hoses["rows"][0]["code"].as_str().expect("a code");
    let (exit, said, error) = run(&db, &["photo", "add", hose, &picture]);
    assert!(exit == 0 && said.starts_with("Kept as "), "{said}{error}");
    assert!(run(&db, &["photo", "add", hose, &picture]).1.starts_with("Known already"));
    let (exit, _, error) = run(&db, &["photo", "add", hose, &at("letter.txt")]);
    assert!(exit == 4 && error.contains("letter.txt") && error.contains("no PNG or JPEG"), "{exit} {error}");
    let (exit, listed, _) = run(&db, &["photo", "list", hose]);
    assert!(exit == 0 && listed.lines().count() == 1 && listed.contains("here"), "{listed}");
    let short = listed.split_whitespace().nth(2).expect("a hash").to_owned();
    assert_eq!(run(&db, &["photo", "save", &short, "--out", &at("saved.jpg")]).0, 0);
    assert_eq!(image::open(at("saved.jpg")).expect("a picture").height(), 1600);
    assert_eq!(run(&db, &["photo", "save", "ffffffffffff", "--out", &at("none.jpg")]).0, 3);
    // A bundle has its photos in a folder beside it; a backup has them inside.
    assert_eq!(run(&db, &["export", &at("fleet.bundle")]).0, 0);
    assert_eq!(run(&at("other.db"), &["merge", &at("fleet.bundle")]).0, 0);
    assert_eq!(run(&db, &["backup", &at("copy.hosewright")]).0, 0);
    assert_eq!(run(&at("new.db"), &["restore", &at("copy.hosewright")]).0, 0);
    let saved = fs::read(at("saved.jpg")).expect("reads");
    for other in ["other.db", "new.db"] {
        assert_eq!(run(&at(other), &["photo", "save", &short, "--out", &at("again.jpg")]).0, 0, "{other}");
        assert_eq!(fs::read(at("again.jpg")).expect("reads"), saved, "{other}");
    }
}
