//! What becomes of a register when the program is killed or the power fails while it writes.
//!
//! The program is the real one, asked over its loopback way in. [`kills`] ends it at random moments of every writing
//! command. [`cuts`] records every change it makes to files (`strace`) and then takes the power away at random points of
//! the recording: what was not synced by then is kept or lost piece by piece, as a disk may. A recording and not a
//! file system of SQLite's own: it needs no unsafe code, and it sees the files that SQLite never touches as well (keys,
//! backups, renames). Linux only, as the tests are.

mod cuts;
mod disk;
mod kills;
mod recording;
mod sample;
mod script;
mod served;
mod state;

pub use cuts::{Cut, cuts};
pub use kills::kills;
pub use sample::{sample, sample_name};
pub use script::{READING, WRITING};
pub use state::State;

/// What became of many faults.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Outcome {
    /// How often the program was cut short.
    pub faults: usize,
    /// How often what it had said was saved, or had saved before, was not there whole afterwards.
    pub lost: Vec<String>,
    /// How often the register could not be opened or did not verify.
    pub corrupt: Vec<String>,
    /// How often what was under way was there, and how often it was not: both must have been seen.
    pub after: usize,
    /// See `after`.
    pub before: usize,
}

impl Outcome {
    /// Counts one fault: the register that was found, and what it may be. `acknowledged` is the state that the program
    /// had answered for; `next` the one it was on the way to.
    fn count(
        &mut self,
        what: &str,
        found: Result<state::State, String>,
        acknowledged: &state::State,
        next: Option<&state::State>,
    ) {
        self.faults += 1;
        match found {
            Err(why) => self.corrupt.push(format!("{what}: {why}")),
            Ok(found) if Some(&found) == next => self.after += 1,
            Ok(found) if found == *acknowledged => self.before += 1,
            Ok(found) if next.is_some_and(|next| acknowledged.keys_go_first(&found, next)) => {}
            Ok(found) => self.lost.push(format!("{what}: {}", found.unlike(acknowledged))),
        }
    }
}
