//! The use cases over core, store, papers and sight, with the types of the contract.
//!
//! There is one table of commands ([`commands::TABLE`]). The shell, the command line and the
//! loopback way in all go through [`Api::call`]; nothing of the trade is computed outside.

mod answer;
pub mod commands;
mod error;
pub mod frame;
mod sheet;

pub use answer::{Answer, document, question};
pub use error::{ApiError, Code};

use chrono::{DateTime, NaiveDate, Utc};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::tag;
use hosewright_store::Register;
use hosewright_words::{Language, Words};

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
    world: Box<dyn World>,
    register: Option<Register>,
}

impl std::fmt::Debug for Api {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(to, "Api({PROGRAM}, tables {})", self.catalogue.version)
    }
}

impl Api {
    /// All use cases without a register: what is asked of the tables alone.
    pub fn new(language: Language, world: Box<dyn World>) -> Self {
        Self { catalogue: Catalogue::embedded(), words: Words::of(language), world, register: None }
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

    fn new_code(&mut self) -> tag::Code {
        let random = self.world.random();
        let mut bytes = [0; 7];
        bytes.copy_from_slice(&random[..7]);
        tag::Code::from_random(bytes)
    }
}
