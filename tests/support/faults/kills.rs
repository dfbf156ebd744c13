//! The program is killed at random moments of every writing command.

use super::Outcome;
use super::script::{Others, script};
use super::served::{Served, answer};
use super::state::State;
use crate::simulated::random::Random;
use std::fs;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

/// A kill comes as late as this many times what the command took undisturbed: some come when it was answered.
const PAST_THE_END: f64 = 1.2;

/// Kills the program so many times, spread over every writing command, and looks what the register holds then.
///
/// # Panics
/// The program can not be run, or refuses a command that is not disturbed.
pub fn kills(program: &Path, count: usize, seed: u64) -> Outcome {
    let folder = tempfile::tempdir().expect("a folder");
    let others = Others::made(program, folder.path());
    let (whole, before, tried) =
        (folder.path().join("whole"), folder.path().join("before"), folder.path().join("tried"));
    fs::create_dir(&whole).expect("a folder");
    let register = whole.join("register.db");
    let served = Served::start(Command::new(program), &register);
    let mut random = Random(seed);
    let mut outcome = Outcome::default();
    let mut steps = 0;
    script(&others, |_, _, _| {
        steps += 1;
        serde_json::Value::Null
    });
    let mut step = 0;
    script(&others, |name, input, bytes| {
        copy(&whole, &before);
        let was = State::read(&register).expect("it reads");
        let began = Instant::now();
        let answered = answer(served.begin(name, &input, bytes)).expect("it is answered");
        let took = began.elapsed();
        let is = State::read(&register).expect("it reads");
        let so_many = count * (step + 1) / steps - count * step / steps;
        step += 1;
        for _ in 0..so_many {
            copy(&before, &tried);
            let register = tried.join("register.db");
            let moment = took.mul_f64(random.between(0.0, PAST_THE_END));
            let acknowledged =
                killed_after(program, &register, moment, |served| served.begin(name, &input, bytes));
            let found = State::after_fault(&register);
            let what = format!("{name} killed after {moment:?}");
            match acknowledged {
                true => outcome.count(&what, found, &is, Some(&is)),
                false => outcome.count(&what, found, &was, Some(&is)),
            }
        }
        answered.document
    });
    outcome
}

/// Starts the program, calls it and kills it after that time. Whether it had answered by then.
fn killed_after(
    program: &Path,
    register: &Path,
    moment: Duration,
    call: impl Fn(&Served) -> std::net::TcpStream,
) -> bool {
    let mut served = Served::start(Command::new(program), register);
    let stream = call(&served);
    std::thread::sleep(moment);
    served.kill();
    answer(stream).is_some()
}

/// Copies a register and what stands beside it; the file that its programs share in memory is none of it.
fn copy(from: &Path, to: &Path) {
    if to.exists() {
        fs::remove_dir_all(to).expect("is emptied");
    }
    fs::create_dir(to).expect("a folder");
    for file in fs::read_dir(from).expect("reads") {
        let file = file.expect("a file").path();
        let name = file.file_name().expect("a name").to_owned();
        if file.is_dir() {
            copy(&file, &to.join(name));
        } else if !name.to_string_lossy().ends_with("-shm") {
            fs::copy(&file, to.join(name)).expect("is copied");
        }
    }
}
