//! What the program said was saved is there after it was killed; backups, and going on from one.

use super::fleet::{self, a_note, begin, device, machine, now, write};
use hosewright_core::record::About;
use hosewright_store::{Error, Register, restore};
use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};

const CHILD: &str = "HOSEWRIGHT_TEST_APPENDS_TO";

/// Not a test of its own: the process that the test below starts and kills.
#[test]
#[ignore = "runs as the child of a_killed_program_loses_nothing_that_it_said_was_saved"]
fn child_that_appends_until_it_is_killed() {
    let Ok(path) = std::env::var(CHILD) else { return };
    let mut register = Register::open(path, device(1)).expect("opens");
    for n in 1_u32.. {
        let note = a_note(About::Machine(machine(1)), &format!("note {n}"));
        let written = register.append([note], now()).expect("is written");
        println!("saved {}", written[0].number);
    }
}

#[test]
fn a_killed_program_loses_nothing_that_it_said_was_saved() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let (path, folder) = (kept.path(), kept.folder);
    drop(kept.register);
    for kills in 1..=3_u32 {
        let mut child = Command::new(std::env::current_exe().expect("the test's own program"))
            .args(["--ignored", "--exact", "register::kept::child_that_appends_until_it_is_killed"])
            .args(["--nocapture", "--test-threads=1"])
            .env(CHILD, &path)
            .stdout(Stdio::piped())
            .spawn()
            .expect("starts");
        let mut lines = BufReader::new(child.stdout.take().expect("its output")).lines();
        let mut saved: Vec<u64> = Vec::new();
        while saved.len() < 20 * kills as usize {
            let line = lines.next().expect("the child ended by itself").expect("reads");
            saved.extend(line.split("saved ").nth(1).and_then(|number| number.trim().parse::<u64>().ok()));
        }
        child.kill().expect("is killed");
        child.wait().expect("ends");
        // What it still said before the signal reached it counts as well.
        let rest = lines.map_while(Result::ok);
        saved.extend(rest.filter_map(|line| line.split("saved ").nth(1)?.trim().parse::<u64>().ok()));

        let mut register = Register::open(&path, device(9)).expect("opens after the kill");
        let events = register.bundle().expect("reads").events;
        for number in &saved {
            assert!(
                events.iter().any(|event| event.number == *number),
                "event {number} was said to be saved and is gone"
            );
        }
        assert_eq!(register.verify().expect("verifies").faults, []);
    }
    drop(folder);
}

#[test]
fn nothing_of_a_batch_is_written_when_one_of_it_is_refused() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let before = kept.register.dump().expect("reads");
    let batch = [fleet::a_site(2, "South"), fleet::fitted("N0SACH", 1, "2026-11-25")];
    assert!(kept.register.append(batch, now()).is_err());
    assert_eq!(kept.register.dump().expect("reads"), before);
}

#[test]
fn a_restored_backup_goes_on_as_a_new_device_and_its_number_is_never_used_twice() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let backup = kept.folder.path().join("backup.db");
    kept.register.backup(&backup).expect("is backed up");
    // Written after the backup and handed to nobody: the restored register does not know of it.
    write(&mut kept, [fleet::a_site(2, "South")]);

    let to = kept.folder.path().join("restored.db");
    // Keys of another device that were left there are none of the restored one.
    let keys = kept.folder.path().join("restored.db.keys");
    std::fs::write(&keys, "another device's").expect("writes");
    let mut restored = restore(&backup, &to, device(5)).expect("restores");
    assert_eq!(restored.device(), device(5));
    assert!(!keys.exists() && restored.keys().expect("none").device.is_none());
    let aside = std::fs::read(kept.folder.path().join("restored.db.keys.before-1")).expect("set aside");
    assert_eq!(aside, b"another device's");
    let written = restored.append([fleet::a_site(3, "West")], now()).expect("is written");
    assert_eq!((written[0].device, written[0].number), (device(5), 1));

    // Had it gone on as the old device, the two would now contradict each other.
    let merged = kept.register.merge(&restored.bundle().expect("reads")).expect("merges");
    assert_eq!((merged.added, merged.refused), (1, vec![]));
    let merged = restored.merge(&kept.register.bundle().expect("reads")).expect("merges");
    assert_eq!((merged.added, merged.refused), (1, vec![]));
    assert_eq!(restored.dump().expect("reads"), kept.register.dump().expect("reads"));
}

#[test]
fn a_backup_is_one_file_that_is_replaced_only_by_a_whole_new_one() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let backup = kept.folder.path().join("backup.db");
    kept.register.backup(&backup).expect("is backed up");
    write(&mut kept, [fleet::a_site(2, "South")]);
    kept.register.backup(&backup).expect("is backed up again");
    let beside: Vec<_> = std::fs::read_dir(kept.folder.path())
        .expect("reads")
        .map(|file| file.expect("a file").file_name().to_string_lossy().into_owned())
        .filter(|name| name.starts_with("backup.db"))
        .collect();
    assert_eq!(beside, ["backup.db"]);
    let restored = restore(&backup, kept.folder.path().join("r.db"), device(5)).expect("restores");
    assert_eq!(restored.dump().expect("reads"), kept.register.dump().expect("reads"));
}

#[test]
fn backing_up_and_restoring_overwrite_nothing_else() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let photo = kept.folder.path().join("photo.jpg");
    std::fs::write(&photo, b"\xff\xd8 a photo of a burst hose, long enough to look at").expect("writes");
    let before = std::fs::read(&photo).expect("reads");
    assert!(matches!(kept.register.backup(&photo), Err(Error::NotARegister { .. })));
    assert!(matches!(kept.register.backup(kept.path()), Err(Error::Exists { .. })));
    assert!(matches!(
        restore(&photo, kept.folder.path().join("r.db"), device(5)),
        Err(Error::NotARegister { .. })
    ));
    assert!(matches!(restore(kept.path(), &photo, device(5)), Err(Error::Exists { .. })));
    assert_eq!(std::fs::read(&photo).expect("reads"), before);
    let same = restore(kept.path(), kept.folder.path().join("r.db"), device(1));
    assert!(matches!(same, Err(Error::DeviceKnown { .. })), "{same:?}");
    assert!(!kept.folder.path().join("r.db").exists());
}
