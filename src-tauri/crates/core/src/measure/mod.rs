//! Measuring: what an instrument's error leaves of a tolerance, and what many readings say together.

mod guard;
mod instrument;
mod robust;
mod spread;

pub use guard::{Fit, Judged, Lies, Tolerance};
pub use instrument::{ErrorIs, Instrument, InstrumentError};
pub use robust::{Robust, robust};
pub use spread::Spread;
