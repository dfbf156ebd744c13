//! Photos over a storage: only what is missing moves, after the events, which never wait for it.

use super::{Vans, ask, list};
use crate::photos::from_a_phone;
use hosewright_api::Code;
use hosewright_api::commands::Reply;
use serde_json::{Value, json};
use std::fs;
use std::path::PathBuf;

/// A site with a photo of it, added on a van. Gives the photo's hash.
fn photographed(vans: &mut Vans, van: usize, shade: u8) -> Value {
    let api = &mut vans.vans[van].api;
    let site = ask(api, "register.id", json!({}))["id"].clone();
    let body = json!({"kind": "site-named", "site": site, "name": "Photographed"});
    ask(api, "register.record", json!({"events": [{"body": body}]}));
    match api.call("photo.add", json!({"about": {"site": site}}), &from_a_phone(shade)).expect("is kept") {
        Reply::Document(added) => added["sha256"].clone(),
        Reply::File(_) => panic!("a file came"),
    }
}

fn state(vans: &mut Vans, van: usize) -> Value {
    ask(&mut vans.vans[van].api, "photo.list", json!({}))["photos"][0]["state"].clone()
}

fn counts(exchanged: &Value) -> (u64, u64, u64, Option<u64>) {
    let photos = &exchanged["photos"];
    let count = |name: &str| photos[name].as_u64();
    (
        count("came").expect("counted"),
        count("went").expect("counted"),
        count("to_come").expect("counted"),
        count("to_go"),
    )
}

fn object(vans: &Vans, sha256: &Value) -> PathBuf {
    vans.storage().join("photos").join(sha256.as_str().expect("a hash"))
}

#[test]
fn a_photo_of_one_van_is_on_the_other_and_nothing_moves_twice() {
    let mut vans = Vans::new(2);
    let sha256 = photographed(&mut vans, 0, 1);
    assert_eq!(counts(&vans.exchange(0)), (0, 1, 0, Some(0)));
    assert_eq!(counts(&vans.exchange(1)), (1, 0, 0, Some(0)));
    let read = |vans: &mut Vans, van: usize| match vans.vans[van]
        .api
        .call("photo.read", json!({"sha256": sha256}), &[])
        .expect("is here")
    {
        Reply::File(file) => file.bytes,
        Reply::Document(_) => panic!("a document came"),
    };
    let picture = read(&mut vans, 0);
    assert_eq!(picture, read(&mut vans, 1));
    let sealed = fs::read(object(&vans, &sha256)).expect("lies there");
    let shows = sealed.windows(64).any(|part| part == &picture[600..664]);
    assert!(!shows && image::load_from_memory(&sealed).is_err(), "nothing of it can be seen there");
    for van in 0..2 {
        assert_eq!(counts(&vans.exchange(van)), (0, 0, 0, Some(0)), "van {van}");
        let shown = ask(&mut vans.vans[van].api, "share.show", json!({}));
        assert_eq!(shown["photos"], json!({"named": 1, "here": 1}));
    }
}

#[test]
fn events_come_before_their_pictures_and_a_picture_that_has_not_come_is_said() {
    let mut vans = Vans::new(2);
    let sha256 = photographed(&mut vans, 0, 2);
    vans.exchange(0);
    let there = fs::read(object(&vans, &sha256)).expect("lies there");
    fs::remove_file(object(&vans, &sha256)).expect("is lost");
    let exchanged = vans.exchange(1);
    assert_eq!((&exchanged["came"], counts(&exchanged)), (&json!(3), (0, 0, 1, Some(0))));
    assert_eq!(state(&mut vans, 1), "missing");
    let asked = json!({"sha256": sha256});
    let error = vans.vans[1].api.call("photo.read", asked, &[]).expect_err("has not come");
    assert_eq!((error.code, error.message.contains("not come yet")), (Code::Nothing, true), "{error}");
    // Cut off on its way up: whoever has it writes it again, nobody takes it.
    fs::write(object(&vans, &sha256), &there[..there.len() / 2]).expect("written");
    assert_eq!(counts(&vans.exchange(1)), (0, 0, 1, Some(0)));
    assert_eq!(counts(&vans.exchange(0)), (0, 1, 0, Some(0)));
    assert_eq!(counts(&vans.exchange(1)), (1, 0, 0, Some(0)));
    assert_eq!(state(&mut vans, 1), "here");
    assert_eq!(fs::read(object(&vans, &sha256)).expect("lies there"), there);
}

#[test]
fn a_changed_picture_is_refused_and_a_damaged_one_comes_anew() {
    let mut vans = Vans::new(2);
    let sha256 = photographed(&mut vans, 0, 3);
    vans.exchange(0);
    let there = fs::read(object(&vans, &sha256)).expect("lies there");
    let mut changed = there.clone();
    changed[100] ^= 1;
    fs::write(object(&vans, &sha256), changed).expect("written");
    let refused = vans.exchange(1);
    assert_eq!((&refused["photos"]["refused"], counts(&refused)), (&json!([sha256]), (0, 0, 1, Some(0))));
    assert_eq!(state(&mut vans, 1), "missing");
    fs::write(object(&vans, &sha256), there).expect("written");
    assert_eq!(counts(&vans.exchange(1)), (1, 0, 0, Some(0)));
    // What breaks on a van is fetched again once it is seen to be broken.
    let file = list(&hosewright_store::photos_of(&vans.vans[1].path)).remove(0);
    let mut bytes = fs::read(&file).expect("is there");
    bytes[200] ^= 1;
    fs::write(&file, bytes).expect("written");
    let broken = vans.vans[1].api.call("photo.read", json!({"sha256": sha256}), &[]).expect_err("is broken");
    assert!(broken.message.contains("damaged"), "{broken}");
    assert_eq!(counts(&vans.exchange(1)), (1, 0, 0, Some(0)));
    assert_eq!(state(&mut vans, 1), "here");
}

#[test]
fn pictures_that_can_not_go_hold_no_event_back_and_go_later() {
    let mut vans = Vans::new(2);
    photographed(&mut vans, 0, 4);
    // Where the folder of photos should be lies something else.
    fs::write(vans.storage().join("photos"), "in the way").expect("written");
    let cut = vans.exchange(0);
    assert!(cut["cut_off"].is_string() && cut["went"] == json!(3), "{cut}");
    assert_eq!(vans.exchange(1)["came"], json!(3));
    assert_eq!(state(&mut vans, 1), "missing");
    fs::remove_file(vans.storage().join("photos")).expect("is out of the way");
    assert_eq!(counts(&vans.exchange(0)), (0, 1, 0, Some(0)));
    assert_eq!(counts(&vans.exchange(1)), (1, 0, 0, Some(0)));
}
