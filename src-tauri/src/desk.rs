//! The use cases over the register's file, one call at a time but for those that wait for a network.

use crate::world::Machine;
use hosewright_api::commands::{Reply, SLOW};
use hosewright_api::{Api, ApiError, Work};
use hosewright_words::Language;
use serde_json::Value;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// The use cases; a copy is the same desk.
#[derive(Clone)]
pub(crate) struct Desk {
    open: Arc<Mutex<Open>>,
    /// What the use case in hand is at; it is asked and stopped beside it.
    work: Work,
}

struct Open {
    api: Api,
    register: PathBuf,
    is_open: bool,
}

impl Desk {
    /// Over a register at that path, which is not opened yet.
    pub(crate) fn new(register: PathBuf) -> Self {
        let open = Open::over(register);
        let work = open.api.work();
        Self { open: Arc::new(Mutex::new(open)), work }
    }

    /// Opens the register. Where it can not be, the first call that needs it tries again and says why.
    pub(crate) fn open(&self) {
        let _ = self.lock().open();
    }

    /// Calls a use case.
    ///
    /// # Errors
    /// What the use case refuses, and why the register can not be opened where it needs one.
    pub(crate) fn call(&self, name: &str, input: Value, bytes: &[u8]) -> Result<Reply, ApiError> {
        if let Some(answered) = self.work.call(name) {
            return answered;
        }
        if SLOW.contains(&name) {
            let register = self.lock().register.clone();
            return Open::over(register).call(name, input, bytes);
        }
        self.lock().call(name, input, bytes)
    }

    /// A call that panicked left the register as its transaction found it, so the next may go on.
    fn lock(&self) -> MutexGuard<'_, Open> {
        self.open.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

/// The field of an error that says no register is open.
const REGISTER: &str = "db";

impl Open {
    fn over(register: PathBuf) -> Self {
        let mut api = Api::new(Language::English, Box::new(Machine));
        api.speak_as_set();
        Self { api, register, is_open: false }
    }

    fn open(&mut self) -> Result<(), ApiError> {
        if self.is_open {
            return Ok(());
        }
        if let Some(folder) = self.register.parent() {
            std::fs::create_dir_all(folder)
                .map_err(|error| ApiError::file(folder.display().to_string(), error))?;
        }
        self.api.open(&self.register)?;
        self.is_open = true;
        Ok(())
    }

    fn call(&mut self, name: &str, input: Value, bytes: &[u8]) -> Result<Reply, ApiError> {
        if !self.is_open {
            match self.api.call(name, input.clone(), bytes) {
                Err(error) if error.field == REGISTER => self.open()?,
                answered => return answered,
            }
        }
        self.api.call(name, input, bytes)
    }
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn a_register_that_can_not_be_opened_says_why_and_the_tables_still_answer() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("register.db");
        std::fs::write(&path, "some other file").expect("written");
        let desk = Desk::new(path.clone());
        desk.open();
        let error = desk.call("register.overview", json!({}), &[]).expect_err("no register");
        assert!(error.message.contains("is not a register"), "{error}");
        assert!(desk.call("tables", json!({}), &[]).is_ok());

        std::fs::remove_file(&path).expect("removed");
        let now = desk.call("register.overview", json!({}), &[]);
        assert!(now.is_ok(), "it opens as soon as it can: {now:?}");
    }
}
