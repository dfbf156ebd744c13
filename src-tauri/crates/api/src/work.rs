//! Work that takes a while: how far it is, and a way to stop it while it goes on.
//!
//! A way in asks this beside the use cases, which answer one call at a time.

use crate::commands::Reply;
use crate::{Answer, ApiError};
use hosewright_core::catalogue::Catalogue;
use schemars::JsonSchema;
use serde::Serialize;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering::Relaxed};
use ts_rs::TS;

/// The work that a use case is at; a copy is the same work.
#[derive(Debug, Clone, Default)]
pub struct Work(Arc<State>);

#[derive(Debug, Default)]
struct State {
    done: AtomicUsize,
    of: AtomicUsize,
    stopped: AtomicBool,
}

/// How far the work is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct WorkDone {
    /// Steps that are done.
    pub done: usize,
    /// Steps in all; 0: nothing is going on.
    pub of: usize,
}

impl Work {
    /// Answers `work.look` and `work.stop`; none is another command.
    pub fn call(&self, name: &str) -> Option<Result<Reply, ApiError>> {
        match name {
            "work.look" => {}
            "work.stop" => self.0.stopped.store(true, Relaxed),
            _ => return None,
        }
        let answer = serde_json::to_value(Answer::new(self.done(), Catalogue::embedded()));
        Some(answer.map(Reply::Document).map_err(|error| ApiError::input("", error)))
    }

    /// How far it is.
    pub fn done(&self) -> WorkDone {
        WorkDone { done: self.0.done.load(Relaxed), of: self.0.of.load(Relaxed) }
    }

    /// Begins work of so many steps; what was stopped before counts no more.
    pub(crate) fn begin(&self, of: usize) -> Going<'_> {
        self.0.stopped.store(false, Relaxed);
        self.0.done.store(0, Relaxed);
        self.0.of.store(of, Relaxed);
        Going(self)
    }
}

/// Work that goes on until this is dropped.
pub(crate) struct Going<'a>(&'a Work);

impl Going<'_> {
    /// So many steps are done. Whether it goes on: nobody stopped it.
    pub(crate) fn at(&self, done: usize) -> bool {
        self.0.0.done.store(done, Relaxed);
        !self.0.0.stopped.load(Relaxed)
    }
}

impl Drop for Going<'_> {
    fn drop(&mut self) {
        self.0.0.of.store(0, Relaxed);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn work_says_how_far_it_is_and_is_stopped_from_beside() {
        let work = Work::default();
        assert_eq!(work.done(), WorkDone { done: 0, of: 0 });
        let beside = work.clone();
        let going = work.begin(10);
        assert!(going.at(3));
        assert_eq!(beside.done(), WorkDone { done: 3, of: 10 });
        assert!(beside.call("work.stop").is_some());
        assert!(!going.at(4));
        drop(going);
        assert_eq!(beside.done().of, 0);
        assert!(work.begin(2).at(1), "what was stopped before counts no more");
        assert!(work.call("tables").is_none());
    }
}
