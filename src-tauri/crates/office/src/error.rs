//! Why a copy could not be kept.

use hosewright_core::record::DeviceId;
use thiserror::Error;

/// Why a copy could not be kept. What was brought over before stays. No error repeats the address: a password may
/// stand in it.
#[derive(Debug, Error)]
pub enum OfficeError {
    /// No address of a database.
    #[error("this is no address of a database ({why}); write postgres://user@server/database")]
    Address {
        /// What is wrong with it.
        why: String,
    },
    /// A way of encryption that would not be what it says.
    #[error(
        "sslmode=prefer would go on without encryption where the server has none; \
         leave it out, or write require or disable"
    )]
    Prefer,
    /// Nobody answers, or the line was cut.
    #[error("the office's database does not answer; what was brought over stays, run it again ({cause})")]
    Away {
        /// What was seen.
        cause: String,
    },
    /// It answers with a refusal.
    #[error("the office's database refuses: {why}")]
    Refused {
        /// Its words.
        why: String,
    },
    /// A newer program made its tables.
    #[error(
        "the database's tables are of a newer program (step {found}, this program knows {known}); update this program"
    )]
    Newer {
        /// Their step.
        found: i32,
        /// The last step that is known.
        known: i32,
    },
    /// It has an event that this register has otherwise.
    #[error(
        "the database is the copy of another register: of device {device} it has another event {number} than this \
         register; use a database of its own"
    )]
    Other {
        /// Whose series.
        device: DeviceId,
        /// The event.
        number: u64,
    },
    /// It has events that this register lacks.
    #[error(
        "the database has events of device {device} that this register lacks (up to {number}); exchange first, so that \
         nothing is taken back"
    )]
    Behind {
        /// Whose series.
        device: DeviceId,
        /// The last that the database has.
        number: u64,
    },
    /// Its cursors name no device.
    #[error(
        "the database's table `series` was changed by something else ({what}); drop the schema hosewright and run it again"
    )]
    Changed {
        /// What is wrong.
        what: String,
    },
    /// The register can not be read.
    #[error(transparent)]
    Register(#[from] hosewright_store::Error),
}

impl From<postgres::Error> for OfficeError {
    fn from(error: postgres::Error) -> Self {
        match error.as_db_error() {
            // The classes of errors that pass by themselves: connections, resources, an operator (PostgreSQL, appendix A).
            Some(said)
                if ["08", "53", "57", "40"].iter().any(|class| said.code().code().starts_with(class)) =>
            {
                Self::Away { cause: said.message().to_owned() }
            }
            Some(said) => Self::Refused { why: said.message().to_owned() },
            None => Self::Away { cause: root(&error) },
        }
    }
}

/// What lies at the bottom of an error.
fn root(error: &dyn std::error::Error) -> String {
    let last = std::iter::successors(Some(error), |error| error.source()).last();
    last.map(ToString::to_string).unwrap_or_default()
}

impl From<std::io::Error> for OfficeError {
    fn from(error: std::io::Error) -> Self {
        // What is written to a database over a connection fails with the connection.
        match error.downcast::<postgres::Error>() {
            Ok(error) => error.into(),
            Err(error) => Self::Away { cause: error.to_string() },
        }
    }
}
