//! The clock and chance of the machine the program runs on.

use chrono::{DateTime, Utc};
use hosewright_api::World;

/// This machine.
pub(crate) struct Machine;

impl World for Machine {
    fn now(&self) -> DateTime<Utc> {
        Utc::now()
    }

    fn random(&mut self) -> [u8; 16] {
        *uuid::Uuid::new_v4().as_bytes()
    }
}
