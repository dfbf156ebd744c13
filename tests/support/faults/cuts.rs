//! The power fails at random points while every writing command is done.

use super::Outcome;
use super::disk::Disk;
use super::recording::{CALLS, Deed, deeds};
use super::script::{Others, script};
use super::served::{Served, answer};
use super::state::State;
use crate::simulated::random::Random;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// What kind of disk the power is cut from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cut {
    /// One that keeps what it was told to sync.
    Honest,
    /// One that says so and does not: no program keeps anything on it. It shows that a loss would be seen.
    Lying,
}

/// Cuts the power so many times at random points of one recording, and looks what the register holds then.
///
/// # Panics
/// The program or `strace` can not be run.
pub fn cuts(program: &Path, count: usize, seed: u64, disk: Cut) -> Outcome {
    let folder = tempfile::tempdir().expect("a folder");
    let Recorded { at, deeds, states } = recorded(program, folder.path());
    let mut random = Random(seed);
    let mut points: Vec<usize> = (0..count).map(|_| random.below(deeds.len() + 1)).collect();
    points.sort_unstable();
    let mut outcome = Outcome::default();
    let (mut followed, mut done, mut answers) = (Disk::default(), 0, 0);
    for point in points {
        for deed in &deeds[done..point] {
            followed.follow(deed, disk == Cut::Lying);
            answers += usize::from(*deed == Deed::Answer);
        }
        done = point;
        let left = folder.path().join("left");
        if left.exists() {
            fs::remove_dir_all(&left).expect("is emptied");
        }
        fs::create_dir(&left).expect("a folder");
        followed.cut(&at, &left, &mut random);
        let found = State::after_fault(&left.join("register.db"));
        let what = format!("power cut at {point} of {}, {answers} answers", deeds.len());
        outcome.count(&what, found, &states[answers], states.get(answers + 1));
    }
    outcome
}

struct Recorded {
    /// Where the program wrote.
    at: PathBuf,
    deeds: Vec<Deed>,
    /// What stood after so many answers.
    states: Vec<State>,
}

/// Does every writing command once under `strace`.
fn recorded(program: &Path, folder: &Path) -> Recorded {
    let others = Others::made(program, folder);
    let (at, trace) = (folder.join("van"), folder.join("trace"));
    fs::create_dir(&at).expect("a folder");
    let register = at.join("register.db");
    let mut under = Command::new("strace");
    under
        .args(["-f", "-qq", "-xx", "-s", "67108864", "-e", "signal=none", "-e"])
        .arg(format!("trace={CALLS}"));
    under.arg("-o").arg(&trace).arg(program);
    let mut served = Served::start(under, &register);
    let mut states = vec![State::read(&register).expect("it reads")];
    script(&others, |name, input, bytes| {
        let answered = answer(served.begin(name, &input, bytes)).expect("it is answered");
        states.push(State::read(&register).expect("it reads"));
        answered.document
    });
    end_traced(&mut served);
    let recording = fs::read_to_string(&trace).expect("the recording");
    let deeds = deeds(&recording, &at);
    let answers = deeds.iter().filter(|deed| **deed == Deed::Answer).count();
    assert_eq!(answers + 1, states.len(), "every answer is in the recording");
    Recorded { at, deeds, states }
}

/// Ends the program that is traced; the tracer then ends by itself and has written all.
fn end_traced(served: &mut Served) {
    let tracer = served.id();
    let children = fs::read_to_string(format!("/proc/{tracer}/task/{tracer}/children")).expect("its child");
    for child in children.split_whitespace() {
        Command::new("kill").args(["-KILL", child]).status().expect("is killed");
    }
    served.wait();
}
