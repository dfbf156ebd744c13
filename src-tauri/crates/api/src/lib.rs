//! The use cases over core, store, papers and sight, with the types of the contract.
//!
//! There is one table of commands ([`commands::TABLE`]). The shell, the command line and the
//! loopback way in all go through [`Api::call`]; nothing of the trade is computed outside.

mod answer;
mod certificate;
pub mod commands;
mod error;
pub mod frame;
mod sheet;
mod typescript;
mod work;

pub use answer::{Answer, document, question};
pub use error::{ApiError, Code};
pub use sheet::{end_name, key, sheet};
pub use work::{Work, WorkDone};

use chrono::{DateTime, NaiveDate, Utc};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::record::DeviceId;
use hosewright_core::tag;
use hosewright_store::Register;
use hosewright_words::{Language, Words};
use std::path::{Path, PathBuf};

/// Name and version, as every answer and paper carries it.
pub const PROGRAM: &str = concat!("hosewright ", env!("CARGO_PKG_VERSION"));

/// What the API needs from outside: the time and chance. Nothing below it has a clock.
pub trait World: Send {
    /// The present moment.
    fn now(&self) -> DateTime<Utc>;
    /// Bytes that no one can foresee.
    fn random(&mut self) -> [u8; 16];
}

/// All use cases, over one register where one is open.
pub struct Api {
    catalogue: &'static Catalogue,
    words: Words,
    /// Whether the language of the settings is spoken as soon as it is known.
    speaks_as_set: bool,
    world: Box<dyn World>,
    register: Option<Register>,
    work: Work,
    /// Where the register is; it stays where one could not be opened, so that a backup can be put there.
    register_path: Option<PathBuf>,
}

impl std::fmt::Debug for Api {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(to, "Api({PROGRAM}, tables {})", self.catalogue.version)
    }
}

impl Api {
    /// All use cases without a register: what is asked of the tables alone.
    pub fn new(language: Language, world: Box<dyn World>) -> Self {
        Self {
            catalogue: Catalogue::embedded(),
            words: Words::of(language),
            speaks_as_set: false,
            world,
            register: None,
            work: Work::default(),
            register_path: None,
        }
    }

    /// From now on everything is said in the language that the open register's settings name, for people who read
    /// screens and papers. Without this the language stays that of the beginning, whatever the register says.
    pub fn speak_as_set(&mut self) {
        self.speaks_as_set = true;
        self.speak();
    }

    /// Opens the register at that path, or begins one there.
    ///
    /// # Errors
    /// The file is something else, is damaged, in use, can not be written, or a newer program's.
    pub fn open(&mut self, path: &Path) -> Result<(), ApiError> {
        self.register_path = Some(path.to_owned());
        let device = DeviceId::from_bytes(self.world.random());
        let register =
            Register::open(path, device).map_err(|error| named(path, error).in_words(&self.words))?;
        self.register = Some(register);
        self.speak();
        Ok(())
    }

    /// Closes the open register and takes its file away where nothing was ever written in it: a command that
    /// began one and then failed leaves none behind.
    ///
    /// # Errors
    /// The file can not be read or taken away.
    pub fn discard_if_empty(&mut self) -> Result<(), ApiError> {
        match self.register.take() {
            Some(register) => Ok(register.discard_if_empty()?),
            None => Ok(()),
        }
    }

    /// Copies the open register to a file.
    ///
    /// # Errors
    /// The file is there already or can not be written.
    pub fn backup_to(&self, to: &Path) -> Result<(), ApiError> {
        let register = self.register.as_ref().ok_or_else(|| ApiError::file("db", "no register is open"))?;
        register.backup(to).map_err(|error| named(to, error))
    }

    /// Leaves the photos that are here beside a bundle, in the folder `BUNDLE.photos`; none where there are none.
    ///
    /// # Errors
    /// The folder can not be written.
    pub fn give_photos(&self, bundle: &Path) -> Result<(), ApiError> {
        let register = self.register.as_ref().ok_or_else(|| ApiError::file("db", "no register is open"))?;
        Ok(register.give_photos(&hosewright_store::photos_of(bundle))?)
    }

    /// Takes the photos that are named and not here from the folder beside a bundle.
    ///
    /// # Errors
    /// A photo can not be read or kept.
    pub fn take_photos(&self, bundle: &Path) -> Result<(), ApiError> {
        let register = self.register.as_ref().ok_or_else(|| ApiError::file("db", "no register is open"))?;
        Ok(register.take_photos(&hosewright_store::photos_of(bundle))?)
    }

    /// Begins a register at a path from a backup and opens it; it goes on as a new device.
    ///
    /// # Errors
    /// The path is there already; the backup is no register, is damaged, or a newer program's.
    pub fn restore_from(&mut self, backup: &Path, to: &Path) -> Result<(), ApiError> {
        let device = DeviceId::from_bytes(self.world.random());
        let register = hosewright_store::restore(backup, to, device).map_err(|error| named(backup, error))?;
        hosewright_store::restore_photos(backup, to).map_err(|error| named(backup, error))?;
        self.register = Some(register);
        self.register_path = Some(to.to_owned());
        self.speak();
        Ok(())
    }

    /// The work that a use case is at, to be asked from beside.
    pub fn work(&self) -> Work {
        self.work.clone()
    }

    /// The words of the language in use.
    pub fn words(&self) -> &Words {
        &self.words
    }

    /// The tables.
    pub fn catalogue(&self) -> &'static Catalogue {
        self.catalogue
    }

    fn answer<T>(&self, content: T) -> Answer<T> {
        Answer::new(content, self.catalogue)
    }

    fn today(&self) -> NaiveDate {
        self.world.now().date_naive()
    }

    fn new_code(&mut self) -> tag::TagCode {
        let random = self.world.random();
        let mut bytes = [0; 7];
        bytes.copy_from_slice(&random[..7]);
        tag::TagCode::from_random(bytes)
    }
}

/// An error of the store, with the file it is about.
fn named(path: &Path, error: hosewright_store::Error) -> ApiError {
    ApiError::from(error).about(path.display().to_string())
}
